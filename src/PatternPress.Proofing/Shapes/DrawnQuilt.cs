using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Proofing.Shapes;

/// <summary>The drawing of one size, ready to be compared with.</summary>
internal sealed class DrawnQuilt
{
    private readonly Dictionary<(int Row, int Column), BlockPlace> _places = [];
    private readonly Dictionary<(ColoredBlock Block, Turn Turn), List<SewnPatch>> _patches = new(
        new SameDrawing()
    );

    public DrawnQuilt(Quilt quilt)
    {
        Quilt = quilt;
        foreach (BlockPlace place in quilt.Places)
        {
            _places[(place.Row, place.Column)] = place;
            PatchesOf(place);
        }
        Sashes =
        [
            .. quilt.Sashes.Select(sash =>
                sash.Frame.OnPoint
                    ? SewnPatch.Of(sash.Fabric, sash.Outline.Corners)
                    : PatchOf(sash.Place, sash.Fabric)
            ),
        ];
        Triangles =
        [
            .. quilt.Pieces.Select(piece => SewnPatch.Of(piece.Fabric, piece.Shape.Corners)),
        ];
        Borders =
        [
            .. quilt.Borders.Select(border =>
                (IReadOnlyList<SewnPatch>)
                    [
                        .. border.Pieces.Select(piece =>
                            piece.Mitered is { } mitered
                                ? SewnPatch.Of(piece.Fabric, mitered.Corners)
                                : PatchOf(piece.Place, piece.Fabric)
                        ),
                        .. border
                            .Blocks.SelectMany(block => block.Place.PatchesInFrame())
                            .Select(patch => SewnPatch.Of(patch.Fabric, patch.Shape.Corners)),
                    ]
            ),
        ];
    }

    public Quilt Quilt { get; }

    public IReadOnlyList<SewnPatch> Sashes { get; }

    /// <summary>Side and corner triangles of a setting on point.</summary>
    public IReadOnlyList<SewnPatch> Triangles { get; }

    /// <summary>Strips, corner squares and patches of blocks of each border, from the inside out.</summary>
    public IReadOnlyList<IReadOnlyList<SewnPatch>> Borders { get; }

    public BlockPlace? Place(int row, int column) => _places.GetValueOrDefault((row, column));

    /// <summary>The patches of a block in its place, measured from the upper left corner of its place, as it is sewn: upright.
    /// </summary>
    public IReadOnlyList<SewnPatch> PatchesOf(BlockPlace place)
    {
        var key = (place.Block, place.Turn);
        if (!_patches.TryGetValue(key, out List<SewnPatch>? patches))
        {
            var by = new Point(-place.Place.X, -place.Place.Y);
            patches =
            [
                .. place
                    .PatchesInFrame()
                    .Concat(place.OverlaysInFrame())
                    .Select(patch => SewnPatch.Of(patch.Fabric, patch.Shape.MoveBy(by))),
            ];
            _patches.Add(key, patches);
        }
        return patches;
    }

    public static SewnPatch PatchOf(Rect place, string fabric) => SewnPatch.Of(fabric, place);

    // Blocks of one drawing are shared between their places; comparing the references is enough and fast.
    private sealed class SameDrawing : IEqualityComparer<(ColoredBlock Block, Turn Turn)>
    {
        public bool Equals((ColoredBlock Block, Turn Turn) x, (ColoredBlock Block, Turn Turn) y) =>
            ReferenceEquals(x.Block, y.Block) && x.Turn == y.Turn;

        public int GetHashCode((ColoredBlock Block, Turn Turn) obj) =>
            HashCode.Combine(
                System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(obj.Block),
                obj.Turn.Quarters
            );
    }
}
