using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>
/// A quilt's patches as inexact inches, ready to draw. Equal blocks share the corners of one of them, so that a large
/// quilt is flattened without exact arithmetic for each patch.
/// </summary>
internal sealed class FlatQuilt
{
    /// <summary>A patch: corners, and how far they are moved to lie in the quilt.</summary>
    /// <param name="Place">Index into the quilt's places; −1 for sashing, −2 for borders, −3 for setting triangles.</param>
    public readonly record struct FlatPatch(Spot[] Corners, Spot By, string Fabric, int Place)
    {
        /// <summary>How its print lies where the print has an up.</summary>
        public Turn Print { get; init; }

        /// <summary>0 for patches, 1 and up for shapes that lie on them, from the lowest.</summary>
        public int Layer { get; init; }

        public Spot[] Placed()
        {
            Spot by = By;
            return Array.ConvertAll(Corners, corner => corner + by);
        }
    }

    public const int Sashing = -1;
    public const int Border = -2;
    public const int Triangle = -3;

    public static FlatQuilt Of(Quilt quilt)
    {
        var patches = new List<FlatPatch>();
        var known =
            new Dictionary<(string, Length, Length, int, bool), ImmutableArray<FlatPatch>>();
        for (int i = 0; i < quilt.Places.Length; i++)
        {
            Add(quilt.Places[i], i);
        }
        foreach (Sash sash in quilt.Sashes)
        {
            patches.Add(new(OutlineOf(sash), default, sash.Fabric, Sashing));
        }
        foreach (SettingPiece piece in quilt.Pieces)
        {
            patches.Add(new(ToSpots(piece.Shape), default, piece.Fabric, Triangle));
        }
        foreach (Border border in quilt.Borders)
        {
            foreach (BorderPiece piece in border.Pieces)
            {
                patches.Add(
                    new(
                        piece.Mitered is { } mitered
                            ? ToSpots(mitered)
                            : ToBox(piece.Place).Corners(),
                        default,
                        piece.Fabric,
                        Border
                    )
                );
            }
            foreach (BorderBlock block in border.Blocks)
            {
                Add(block.Place, Border);
            }
        }
        return new FlatQuilt(
            patches,
            quilt.Width.Inches.ToDouble(),
            quilt.Height.Inches.ToDouble()
        );

        void Add(BlockPlace place, int at)
        {
            ColoredBlock block = place.Block;
            bool onPoint = place.Frame.OnPoint;
            var key = (block.Key, block.Width, block.Height, place.Turn.Quarters, onPoint);
            if (!known.TryGetValue(key, out ImmutableArray<FlatPatch> shared))
            {
                shared = PatchesOf(block, place.Turn, onPoint);
                known.Add(key, shared);
            }
            Spot by = ToSpot(place.Frame.ToQuilt(place.Place.UpperLeft));
            foreach (FlatPatch patch in shared)
            {
                patches.Add(patch with { By = by, Place = at });
            }
        }
    }

    /// <summary>A block by itself, its upper left corner at the origin.</summary>
    public static ImmutableArray<FlatPatch> PatchesOf(
        ColoredBlock block,
        Turn turn,
        bool onPoint = false
    )
    {
        Rect room = turn.SwapsSides
            ? new(Length.Zero, Length.Zero, block.Height, block.Width)
            : new(Length.Zero, Length.Zero, block.Width, block.Height);
        var place = new BlockPlace(0, 0, block, turn, room)
        {
            Frame = new Frame(Point.Origin, onPoint),
        };
        return
        [
            .. place
                .Patches()
                .Select(p => new FlatPatch(ToSpots(p.Shape), default, p.Fabric, 0)
                {
                    Print = p.PrintTurn,
                }),
            .. place
                .Overlays()
                .Select(
                    (p, i) =>
                        new FlatPatch(ToSpots(p.Shape), default, p.Fabric, 0) { Layer = i + 1 }
                ),
        ];
    }

    public static Spot ToSpot(Point point) =>
        new(point.X.Inches.ToDouble(), point.Y.Inches.ToDouble());

    /// <summary>The corners, and places along edges that are arcs.</summary>
    public static Spot[] ToSpots(Polygon shape) => [.. shape.Straightened().Corners.Select(ToSpot)];

    /// <summary>A block's edge in the quilt.</summary>
    public static Spot[] OutlineOf(BlockPlace place) =>
        place.Frame.OnPoint ? ToSpots(place.Outline) : ToBox(place.Place).Corners();

    /// <summary>A strip's edge in the quilt.</summary>
    public static Spot[] OutlineOf(Sash sash) =>
        sash.Frame.OnPoint ? ToSpots(sash.Outline) : ToBox(sash.Place).Corners();

    /// <summary>The largest upright box in the middle of a block: of one on point, what lies inside its slanting edges.</summary>
    public static Box RoomIn(BlockPlace place)
    {
        Box box = ToBox(place.Place);
        double share = place.Frame.OnPoint ? Math.Sqrt(0.5) : 1;
        return Box.Around(CenterOf(place), box.Width * share, box.Height * share);
    }

    public static Spot CenterOf(BlockPlace place) => Box.Of(OutlineOf(place)).Center;

    public static Box ToBox(Rect rect) =>
        new(
            rect.X.Inches.ToDouble(),
            rect.Y.Inches.ToDouble(),
            rect.Width.Inches.ToDouble(),
            rect.Height.Inches.ToDouble()
        );

    private FlatQuilt(List<FlatPatch> patches, double width, double height)
    {
        Patches = patches;
        Width = width;
        Height = height;
    }

    public IReadOnlyCollection<FlatPatch> Patches { get; }

    public double Width { get; }

    public double Height { get; }
}
