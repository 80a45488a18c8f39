using System.Collections.Immutable;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// A block with its units pulled apart in the order they are sewn: units into rows, rows into the block. Rows are
/// numbered; an arrow in each gap shows which way its seam is pressed, neighbouring rows in opposite directions so
/// that their seams nest.
/// </summary>
public static class BlockExploded
{
    private const double GapInRow = 9;
    private const double GapBetweenRows = 12;
    private const double ArrowLength = 7;

    /// <param name="labels">The label of each unit, in the order of the block's units ("1a"), written in its middle. A
    /// plain patch with an empty label is called by its fabric's letter.</param>
    /// <param name="pressing">To one side, or open.</param>
    public static Picture Draw(
        ColoredBlock block,
        IReadOnlyList<string> labels,
        PressingStyle pressing,
        Pattern pattern,
        Palette palette,
        FigureRoom room
    )
    {
        if (block.Block is null)
        {
            return BlockPicture.Draw(block, pattern, palette, room);
        }
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        SewingOrder order = SewingOrder.Of(block.Block);
        double disc = draft.DiscRadius("0") * 2,
            edge = style.Edge.Value;
        bool numbered = order is SewingOrder.Group;
        bool rows = order is not SewingOrder.Group { Level: false };
        double left = (numbered && rows ? disc + 6 : 0) + (edge / 2),
            top = (numbered && !rows ? disc + 6 : 0) + (edge / 2);
        double scale = ScaleFor(
            order,
            block.Block,
            room.Width.Value - left - edge,
            room.Height.Value - top - edge
        );
        var parts = new List<(int Unit, Spot At)>();
        Box whole = Lay(order, block.Block, scale, new Spot(left, top), 0, parts);
        foreach ((int unit, Spot at) in parts)
        {
            PaintUnit(draft, block, unit, palette, scale, at);
        }
        foreach ((int unit, Spot at) in parts)
        {
            string label = unit < labels.Count ? labels[unit] : "";
            Box place = FlatQuilt.ToBox(block.Block.Units[unit].Place);
            Spot middle = at + new Spot(place.Width * scale / 2, place.Height * scale / 2);
            if (label.Length > 0)
            {
                KeyPlate.TryPaint(draft, label, middle, place.Width * scale, place.Height * scale);
            }
            else if (block.FabricsOf(block.Block.Units[unit]) is [{ } only])
            {
                // A plain patch is called by its fabric.
                FabricLook look = palette[only];
                draft.TryLabel(
                    only,
                    [middle],
                    style.Medium,
                    bold: true,
                    look.LetterInk,
                    plate: look.Color,
                    within: new Box(at.X, at.Y, place.Width * scale, place.Height * scale)
                );
            }
        }
        if (order is SewingOrder.Group group)
        {
            PressArrows(draft, group, block.Block, parts, scale, pressing, 0, 0);
            NumberParts(draft, group, block.Block, parts, scale, rows, rows ? left - 6 : top - 6);
        }
        else if (order is SewingOrder.Around { Middle: not null } around)
        {
            NumberInTurn(draft, around, block.Block, parts, labels, scale);
        }
        return new(
            draft.Finish(whole.Right + (edge / 2), whole.Bottom + (edge / 2)),
            FigureWords.BlockExploded(block, order, labels, pressing, pattern)
        );
    }

    private static double Gap(bool level, int depth) =>
        depth == 0 && level ? GapBetweenRows
        : depth < 2 ? GapInRow
        : GapInRow * 0.8;

    // The largest scale at which the parts and the gaps between them fit.
    private static double ScaleFor(SewingOrder order, Block block, double width, double height)
    {
        double low = 0,
            high = Math.Min(
                width / block.Width.Inches.ToDouble(),
                height / block.Height.Inches.ToDouble()
            );
        for (int i = 0; i < 40; i++)
        {
            double middle = (low + high) / 2;
            Box box = Lay(order, block, middle, default, 0, []);
            (low, high) =
                box.Width <= width && box.Height <= height ? (middle, high) : (low, middle);
        }
        return low;
    }

    /// <summary>Lays the parts out and returns what they take up.</summary>
    private static Box Lay(
        SewingOrder order,
        Block block,
        double scale,
        Spot at,
        int depth,
        List<(int Unit, Spot At)> parts
    )
    {
        switch (order)
        {
            case SewingOrder.Unit unit:
                Box place = FlatQuilt.ToBox(block.Units[unit.Index].Place);
                parts.Add((unit.Index, at));
                return new(at.X, at.Y, place.Width * scale, place.Height * scale);
            case SewingOrder.Group group:
                return LayGroup(group, block, scale, at, depth, parts);
            case SewingOrder.Inner inner:
                return Lay(inner.Parts, block, scale, at, Math.Max(depth, 1) + 1, parts);
            case SewingOrder.Around around:
                return LayAround(around, block, scale, at, parts);
            default:
                return new(at.X, at.Y, 0, 0);
        }
    }

    private static Box LayGroup(
        SewingOrder.Group group,
        Block block,
        double scale,
        Spot at,
        int depth,
        List<(int Unit, Spot At)> parts
    )
    {
        // Parts are centered on each other, since one may be pulled further apart than the next.
        Box[] sizes = [.. group.Parts.Select(p => Lay(p, block, scale, default, depth + 1, []))];
        double wide = sizes.Max(s => s.Width),
            high = sizes.Max(s => s.Height),
            gap = Gap(group.Level, depth);
        double along = 0;
        for (int i = 0; i < sizes.Length; i++)
        {
            Spot from = group.Level
                ? new(at.X + ((wide - sizes[i].Width) / 2), at.Y + along)
                : new(at.X + along, at.Y + ((high - sizes[i].Height) / 2));
            Lay(group.Parts[i], block, scale, from, depth + 1, parts);
            along += (group.Level ? sizes[i].Height : sizes[i].Width) + gap;
        }
        along -= gap;
        return group.Level ? new(at.X, at.Y, wide, along) : new(at.X, at.Y, along, high);
    }

    // Units that go round each other move straight away from the middle.
    private static Box LayAround(
        SewingOrder.Around around,
        Block block,
        double scale,
        Spot at,
        List<(int Unit, Spot At)> parts
    )
    {
        Box[] boxes = [.. around.Units().Select(i => FlatQuilt.ToBox(block.Units[i].Place))];
        double least = boxes.Min(b => Math.Min(b.Width, b.Height)) * scale;
        double spread = 1 + (GapInRow / Math.Max(least, 1));
        Box whole = boxes.Aggregate((a, b) => a.With(b));
        int n = 0;
        foreach (int index in around.Units())
        {
            Box box = boxes[n++];
            Spot center = (box.Center - whole.Center) * spread;
            Spot from = center - new Spot(box.Width / 2, box.Height / 2);
            Spot origin = new Spot(whole.Width, whole.Height) * (spread / 2);
            parts.Add((index, at + ((from + origin) * scale)));
        }
        return new(at.X, at.Y, whole.Width * spread * scale, whole.Height * spread * scale);
    }

    private static void PaintUnit(
        Draft draft,
        ColoredBlock block,
        int index,
        Palette palette,
        double scale,
        Spot at
    )
    {
        BlockUnit unit = block.Block!.Units[index];
        Box place = FlatQuilt.ToBox(unit.Place);
        Spot origin = at - (new Spot(place.X, place.Y) * scale);
        FlatQuilt.FlatPatch[] patches =
        [
            .. unit.Patches(block.Coloring.Fabrics)
                .Select(p => new FlatQuilt.FlatPatch(
                    FlatQuilt.ToSpots(p.Shape),
                    default,
                    p.Fabric,
                    0
                )),
            .. unit.Overlays(block.Coloring.Fabrics)
                .Select(
                    (p, i) =>
                        new FlatQuilt.FlatPatch(FlatQuilt.ToSpots(p.Shape), default, p.Fabric, 0)
                        {
                            Layer = i + 1,
                        }
                ),
        ];
        BlockPicture.PaintPatches(draft, patches, palette, scale, origin, BlockMarking.None);
        draft.Area(
            Paths.Of(new Box(at.X, at.Y, place.Width * scale, place.Height * scale)),
            stroke: draft.Style.Pen(draft.Style.Edge) with
            {
                Join = StrokeJoin.Miter,
            }
        );
    }

    private static Box BoxOf(
        SewingOrder part,
        Block block,
        List<(int Unit, Spot At)> parts,
        double scale
    )
    {
        var inside = part.Units().ToHashSet();
        return parts
            .Where(p => inside.Contains(p.Unit))
            .Select(p =>
            {
                Box place = FlatQuilt.ToBox(block.Units[p.Unit].Place);
                return new Box(p.At.X, p.At.Y, place.Width * scale, place.Height * scale);
            })
            .Aggregate((a, b) => a.With(b));
    }

    private static void PressArrows(
        Draft draft,
        SewingOrder.Group group,
        Block block,
        List<(int Unit, Spot At)> parts,
        double scale,
        PressingStyle pressing,
        int depth,
        int number
    )
    {
        Box[] boxes = [.. group.Parts.Select(p => BoxOf(p, block, parts, scale))];
        for (int i = 0; i + 1 < boxes.Length; i++)
        {
            Box a = boxes[i],
                b = boxes[i + 1];
            Spot middle = group.Level
                ? new((Math.Max(a.X, b.X) + Math.Min(a.Right, b.Right)) / 2, (a.Bottom + b.Y) / 2)
                : new((a.Right + b.X) / 2, (Math.Max(a.Y, b.Y) + Math.Min(a.Bottom, b.Bottom)) / 2);
            Spot step = group.Level ? new(0, ArrowLength / 2) : new(ArrowLength / 2, 0);
            if (pressing != PressingStyle.ToOneSide && PressesBack(depth, number))
            {
                step *= -1;
            }
            draft.PressArrow(middle - step, middle + step, pressing == PressingStyle.Open);
        }
        for (int i = 0; i < group.Parts.Length; i++)
        {
            if (group.Parts[i] is SewingOrder.Group inner)
            {
                PressArrows(draft, inner, block, parts, scale, pressing, depth + 1, i);
            }
        }
    }

    /// <summary>
    /// Rows are pressed by turns to the left and to the right, and groups side by side in a row by turns up and down, so
    /// that seams lock where they meet; the seams between rows all down.
    /// </summary>
    internal static bool PressesBack(int depth, int number) => depth > 0 && number % 2 == 0;

    private static void NumberParts(
        Draft draft,
        SewingOrder.Group group,
        Block block,
        List<(int Unit, Spot At)> parts,
        double scale,
        bool rows,
        double near
    )
    {
        double radius = draft.DiscRadius("0");
        for (int i = 0; i < group.Parts.Length; i++)
        {
            Box box = BoxOf(group.Parts[i], block, parts, scale);
            Spot at = rows ? new(near - radius, box.Center.Y) : new(box.Center.X, near - radius);
            draft.Disc((i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), at);
        }
    }

    // Units around a middle are numbered inside, beside the label in their middle, away from the seam to come.
    private static void NumberInTurn(
        Draft draft,
        SewingOrder.Around around,
        Block block,
        List<(int Unit, Spot At)> parts,
        IReadOnlyList<string> labels,
        double scale
    )
    {
        double radius = draft.DiscRadius("0");
        for (int i = 0; i < around.Parts.Length; i++)
        {
            Box box = BoxOf(around.Parts[i], block, parts, scale);
            int unit = around.Parts[i].Units().First();
            string label = unit < labels.Count ? labels[unit] : "";
            double words = Math.Max(LabelSize.Width(label, draft.Style.Large.Value) / 2, 4) + 4;
            Spot aside = box.Width >= box.Height ? new(radius + words, 0) : new(0, radius + 8);
            Spot at = box.Center - aside;
            if (box.Holds(Box.Around(at, 2 * radius, 2 * radius)))
            {
                draft.Disc((i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), at);
            }
        }
    }
}
