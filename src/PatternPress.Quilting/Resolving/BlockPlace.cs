using PatternPress.Quilting.Geometry;

namespace PatternPress.Quilting.Resolving;

/// <summary>A block in its place in the quilt.</summary>
/// <param name="Row">From 0 at the top.</param>
/// <param name="Column">From 0 at the left.</param>
/// <param name="Place">Finished, in the coordinates of its frame, after turning.</param>
public sealed record BlockPlace(int Row, int Column, ColoredBlock Block, Turn Turn, Rect Place)
{
    /// <summary>How the block lies on the quilt: upright, where its place is in quilt coordinates, or on point.</summary>
    public Frame Frame { get; init; }

    /// <summary>The block's edge in quilt coordinates.</summary>
    public Polygon Outline => Frame.ToQuilt(Place.ToPolygon());

    public BlockPlace MovedBy(Point by) =>
        Frame.OnPoint
            ? this with
            {
                Frame = Frame.MovedBy(by),
            }
            : this with
            {
                Place = Place.MoveBy(by),
            };

    /// <summary>The block's patches in quilt coordinates.</summary>
    public IEnumerable<Patch> Patches()
    {
        foreach (Patch patch in PatchesInFrame())
        {
            yield return Frame.OnPoint ? patch with { Shape = Frame.ToQuilt(patch.Shape) } : patch;
        }
    }

    /// <summary>The shapes that lie on its patches, in quilt coordinates.</summary>
    public IEnumerable<Patch> Overlays() =>
        OverlaysInFrame()
            .Select(overlay =>
                Frame.OnPoint ? overlay with { Shape = Frame.ToQuilt(overlay.Shape) } : overlay
            );

    /// <summary>The same in the coordinates of its frame.</summary>
    public IEnumerable<Patch> OverlaysInFrame()
    {
        foreach (BlockUnit unit in Block.Block?.Units ?? [])
        {
            foreach (Patch overlay in unit.Overlays(Block.Coloring.Fabrics))
            {
                yield return overlay with
                {
                    Shape = overlay
                        .Shape.Turned(Turn, Block.Width, Block.Height)
                        .MoveBy(Place.UpperLeft),
                };
            }
        }
    }

    /// <summary>The block's patches in the coordinates of its frame.</summary>
    public IEnumerable<Patch> PatchesInFrame()
    {
        if (Block.Block is null)
        {
            yield return new Patch(
                Place.ToPolygon(),
                Block.Coloring.Fabrics[Model.Coloring.PlainPart]
            )
            {
                PrintTurn = Turn,
            };
            yield break;
        }
        foreach (BlockUnit unit in Block.Block.Units)
        {
            foreach (Patch patch in unit.Patches(Block.Coloring.Fabrics))
            {
                Polygon turned = patch.Shape.Turned(Turn, Block.Width, Block.Height);
                yield return patch with
                {
                    Shape = turned.MoveBy(Place.UpperLeft),
                    PrintTurn = patch.PrintTurn + Turn,
                };
            }
        }
    }
}
