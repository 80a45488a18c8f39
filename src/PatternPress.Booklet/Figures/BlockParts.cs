using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// A block in one coloring with letters and hatches, and beside it the name of each of its parts with a line to a patch of it.
/// </summary>
public static class BlockParts
{
    /// <summary>Between the block and the names.</summary>
    private const double Lead = 10;

    public static Picture Draw(
        ColoredBlock block,
        Pattern pattern,
        Palette palette,
        FigureRoom room
    )
    {
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        (string Part, Spot[] Shape)[] patches = PatchesOf(block);
        double words = patches
            .Select(p => LabelSize.Width(p.Part, style.Medium.Value))
            .DefaultIfEmpty(0)
            .Max();
        double edge = style.Edge.Value,
            beside = patches.Length == 0 ? 0 : Lead + words + 2;
        double scale = Math.Min(
            (room.Width.Value - edge - beside) / block.Width.Inches.ToDouble(),
            (room.Height.Value - edge) / block.Height.Inches.ToDouble()
        );
        var by = new Spot(edge / 2, edge / 2);
        double width = block.Width.Inches.ToDouble() * scale,
            height = block.Height.Inches.ToDouble() * scale;
        BlockPicture.Paint(draft, block, Turn.None, palette, scale, by, BlockMarking.Letters);
        Box[] letters =
        [
            .. draft.Board.Taken.Select(box => new Box(
                (box.X - by.X) / scale,
                (box.Y - by.Y) / scale,
                box.Width / scale,
                box.Height / scale
            )),
        ];
        List<(string Name, Spot Place)> parts = PartsOf(
            block,
            patches,
            letters,
            style.Medium.Value * 2 / scale
        );
        double line = style.Medium.Value * 1.5,
            last = -line;
        // From the top down, each name clear of the one above and none below the block.
        parts.Sort((a, b) => (a.Place.Y, a.Place.X).CompareTo((b.Place.Y, b.Place.X)));
        for (int i = 0; i < parts.Count; i++)
        {
            Spot target = (parts[i].Place * scale) + by;
            double lowest = height - (line * (parts.Count - i - 0.5));
            double y = Math.Max(last + line, Math.Min(Math.Max(target.Y, line / 2), lowest));
            last = y;
            var from = new Spot(width + edge + Lead - 2, y);
            draft.Lines([(from, target)], style.Pen(Points.Of(1.8), Ink.White));
            draft.Lines([(from, target)], style.Pen(style.Hair));
            draft.Area(
                VectorPath.Circle(Paths.At(target), 1.6),
                style.Ink,
                style.Pen(style.Hair, Ink.White)
            );
            draft.Text(
                parts[i].Name,
                new Spot(width + edge + Lead, y),
                style.Medium,
                LabelSize.Width(parts[i].Name, style.Medium.Value),
                bold: true
            );
        }
        return new(
            draft.Finish(width + edge + beside, Math.Max(height + edge, last + (line / 2))),
            FigureWords.Block(block, pattern)
        );
    }

    /// <summary>Levels at which a line may come in from the right, for each height of the block.</summary>
    private const int Levels = 48;

    /// <summary>How much a line is worth that crosses a patch of another part, for each width of the block.</summary>
    private const double Crossing = 10;

    /// <summary>How much a line is worth that strikes out a letter.</summary>
    private const double Striking = 8;

    /// <summary>How much a line is worth that ends on a seam, where it could mean either patch.</summary>
    private const double Doubtful = 5;

    /// <summary>How much a name is worth that has to make way for another.</summary>
    private const double Crowding = 3;

    private static (string Part, Spot[] Shape)[] PatchesOf(ColoredBlock block) =>
        block.Block is not { } design
            ? []
            :
            [
                .. design
                    .Units.SelectMany(unit =>
                    {
                        Dictionary<string, string> names = unit
                            .Drawn.Parts.Distinct()
                            .ToDictionary(name => name, name => name);
                        return unit.Patches(names).Concat(unit.Overlays(names));
                    })
                    .Select(patch => (patch.Fabric, FlatQuilt.ToSpots(patch.Shape))),
            ];

    // Each part with the place that a level line from the right reaches with the least of other patches and letters in its way,
    // well inside the patch, and not at the level of another part's.
    private static List<(string Name, Spot Place)> PartsOf(
        ColoredBlock block,
        (string Part, Spot[] Shape)[] patches,
        Box[] letters,
        double line
    )
    {
        var places = new List<(string Name, Spot Place)>();
        double width = block.Width.Inches.ToDouble(),
            height = block.Height.Inches.ToDouble();
        var options = patches
            .GroupBy(patch => patch.Part)
            .Select(part =>
                (
                    Name: part.Key,
                    // Patches too small to lie on any of the levels are pointed at in the middle.
                    Places: PlacesOf(part.Key)
                        .DefaultIfEmpty(
                            (Place: LabelRoom.CentroidOf(part.First().Shape), Cost: Crossing)
                        )
                        .ToList()
                )
            )
            // The part with the least choice is placed first.
            .OrderByDescending(part => part.Places.Min(option => option.Cost))
            .ThenBy(part => part.Places.Count)
            .ThenBy(part => part.Name, StringComparer.Ordinal);
        foreach ((string name, var choices) in options)
        {
            (Spot place, _) = choices
                .OrderBy(option =>
                    Math.Round(
                        option.Cost
                            + places.Sum(taken =>
                                Crowding
                                * Math.Max(0, 1 - (Math.Abs(taken.Place.Y - option.Place.Y) / line))
                            ),
                        4
                    )
                )
                .ThenBy(option => Math.Round(Math.Abs(option.Place.Y - (height / 2)), 4))
                .ThenBy(option => Math.Round(option.Place.Y, 4))
                .First();
            places.Add((name, place));
        }
        return places;

        // For each level the place in the part's patch that lies farthest to the right.
        IEnumerable<(Spot Place, double Cost)> PlacesOf(string part)
        {
            for (int level = 1; level < Levels; level++)
            {
                double y = height * level / Levels;
                (double Left, double Right)? own = null;
                Spot[] ownShape = [];
                foreach ((string of, Spot[] shape) in patches)
                {
                    if (
                        of == part
                        && Across(shape, y) is { } span
                        && span.Right - span.Left > width / Levels
                        && (own is not { } best || span.Right > best.Right)
                    )
                    {
                        own = span;
                        ownShape = shape;
                    }
                }
                if (own is { } found)
                {
                    double inside = Math.Min((found.Right - found.Left) / 3, width / 24);
                    double thin = 1 - Math.Min(1, (found.Right - found.Left) / (width / 6));
                    var place = new Spot(found.Right - inside, y);
                    int struck = letters.Count(box =>
                        box.Right > place.X && box.Y < y && box.Bottom > y
                    );
                    double clear = Math.Min(ClearOf(ownShape, place) / (line / 4), 1);
                    yield return (
                        place,
                        (Crossing * (width - found.Right) / width)
                            + thin
                            + (Striking * struck)
                            + (Doubtful * (1 - clear))
                    );
                }
            }
        }
    }

    // How far a place is from the nearest edge of its patch.
    private static double ClearOf(Spot[] shape, Spot place)
    {
        double least = double.MaxValue;
        for (int i = 0; i < shape.Length; i++)
        {
            Spot a = shape[i],
                along = shape[(i + 1) % shape.Length] - a;
            double length = along.Length;
            if (length == 0)
            {
                continue;
            }
            double at = Math.Clamp(
                (((place.X - a.X) * along.X) + ((place.Y - a.Y) * along.Y)) / (length * length),
                0,
                1
            );
            least = Math.Min(least, (a + (along * at) - place).Length);
        }
        return least;
    }

    // What a level line meets of a patch.
    private static (double Left, double Right)? Across(Spot[] shape, double y)
    {
        double left = double.MaxValue,
            right = double.MinValue;
        for (int i = 0; i < shape.Length; i++)
        {
            (Spot a, Spot b) = (shape[i], shape[(i + 1) % shape.Length]);
            if ((a.Y > y) == (b.Y > y))
            {
                continue;
            }
            double x = a.X + ((b.X - a.X) * (y - a.Y) / (b.Y - a.Y));
            (left, right) = (Math.Min(left, x), Math.Max(right, x));
        }
        return right > left ? (left, right) : null;
    }
}
