using System.Globalization;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// A section of a quilt with its parts pulled apart: blocks marked with their names, sections sewn before with their numbers. Of
/// parts that go around a middle the seam that is sewn in two halves is marked.
/// </summary>
public sealed class SectionAssembly
{
    private const double Gap = 7;

    private readonly Quilt _quilt;
    private readonly Palette _palette;
    private readonly BlockNames _names;
    private readonly ILookup<int, FlatQuilt.FlatPatch> _patches;

    /// <param name="quilt">A quilt that is sewn in sections.</param>
    public SectionAssembly(Quilt quilt, Palette palette)
    {
        _quilt = quilt;
        _palette = palette;
        _names = new BlockNames(quilt);
        _patches = FlatQuilt.Of(quilt).Patches.ToLookup(p => p.Place);
        Sections = QuiltSection.Of(quilt);
    }

    /// <summary>In the order of sewing.</summary>
    public System.Collections.Immutable.ImmutableArray<QuiltSection> Sections { get; }

    /// <summary>Paper points for an inch at which a section fills a room.</summary>
    public double ScaleFor(QuiltSection section, FigureRoom room)
    {
        (int across, int down) = Gaps(section);
        Box box = FlatQuilt.ToBox(section.Place);
        double edge = _palette.Style.Edge.Value;
        return Math.Min(
            (room.Width.Value - (across * Gap) - edge) / box.Width,
            (room.Height.Value - (down * Gap) - edge) / box.Height
        );
    }

    /// <summary>Paper points for an inch at which every block of a section is at least so wide and high.</summary>
    public double ScaleToName(QuiltSection section, Points least) =>
        section
            .Parts.Where(part => part is { Section: 0, Piece.Kind: LayoutPartKind.Block })
            .Select(part => FlatQuilt.ToBox(RectOf(part)))
            .Select(box => least.Value / Math.Min(box.Width, box.Height))
            .DefaultIfEmpty()
            .Max();

    public Picture Draw(QuiltSection section, double scale)
    {
        FigureStyle style = _palette.Style;
        var draft = new Draft(style);
        double half = style.Edge.Value / 2;
        Box whole = FlatQuilt.ToBox(section.Place);
        (int across, int down) = Gaps(section);
        bool around = IsAround(section);
        double along = 0;
        var boxes = new Box[section.Parts.Length];
        Rect[] places = Places(section);
        for (int i = 0; i < boxes.Length; i++)
        {
            Box box = FlatQuilt.ToBox(places[i]);
            var at = new Spot(
                half + ((box.X - whole.X) * scale),
                half + ((box.Y - whole.Y) * scale)
            );
            at = around
                ? at + (Aside(section.Join, i) * Gap)
                : at
                    + (section.Join == SectionJoin.SideBySide ? new Spot(along, 0) : new(0, along));
            along += Gap;
            boxes[i] = new Box(at.X, at.Y, box.Width * scale, box.Height * scale);
            PaintPart(draft, section.Parts[i], places[i], scale, at);
        }
        if (around)
        {
            MarkPartialSeam(draft, section.Join, boxes);
        }
        for (int i = 0; i < boxes.Length; i++)
        {
            Name(draft, section.Parts[i], boxes[i]);
        }
        return new(
            draft.Finish(
                (whole.Width * scale) + (across * Gap) + (2 * half),
                (whole.Height * scale) + (down * Gap) + (2 * half)
            ),
            FigureWords.SectionAssembly(_quilt, section)
        );
    }

    private static bool IsAround(QuiltSection section) =>
        section.Join is SectionJoin.Clockwise or SectionJoin.Counterclockwise;

    private static (int Across, int Down) Gaps(QuiltSection section) =>
        section.Join switch
        {
            SectionJoin.SideBySide => (section.Parts.Length - 1, 0),
            SectionJoin.OneBelowTheOther => (0, section.Parts.Length - 1),
            _ => (2, 2),
        };

    // How many gaps a part that goes round the middle is moved, across and down. Parts above and below stay flush with the
    // side that they reach.
    private static Spot Aside(SectionJoin join, int part)
    {
        bool clockwise = join == SectionJoin.Clockwise;
        return part switch
        {
            0 => new(1, 1),
            1 => clockwise ? new(0.5, 0) : new(1.5, 0),
            2 => clockwise ? new(2, 0.5) : new(0, 0.5),
            3 => clockwise ? new(1.5, 2) : new(0.5, 2),
            _ => clockwise ? new(0, 1.5) : new(2, 1.5),
        };
    }

    // Where the parts of the drawn example lie in the quilt.
    private Rect[] Places(QuiltSection section)
    {
        var places = new Rect[section.Parts.Length];
        Length x = section.Place.X,
            y = section.Place.Y;
        (Length Width, Length Height)[] sizes = [.. section.Parts.Select(SizeOf)];
        if (IsAround(section))
        {
            bool clockwise = section.Join == SectionJoin.Clockwise;
            Length left = clockwise ? sizes[4].Width : sizes[2].Width,
                top = sizes[1].Height,
                belowMiddle = y + top + sizes[0].Height,
                rightOfMiddle = x + left + sizes[0].Width;
            places[0] = At(0, x + left, y + top);
            places[1] = At(1, clockwise ? x : x + left, y);
            places[2] = At(2, clockwise ? rightOfMiddle : x, y);
            places[3] = At(3, clockwise ? x + left : x, belowMiddle);
            places[4] = At(4, clockwise ? x : rightOfMiddle, y + top);
            return places;
        }
        for (int i = 0; i < places.Length; i++)
        {
            places[i] = At(i, x, y);
            if (section.Join == SectionJoin.SideBySide)
            {
                x += sizes[i].Width;
            }
            else
            {
                y += sizes[i].Height;
            }
        }
        return places;

        Rect At(int part, Length left, Length top) =>
            new(left, top, sizes[part].Width, sizes[part].Height);
    }

    private (Length Width, Length Height) SizeOf(QuiltSectionPart part)
    {
        Rect place = RectOf(part);
        return (place.Width, place.Height);
    }

    private Rect RectOf(QuiltSectionPart part) =>
        part.Section > 0 ? Sections[part.Section - 1].Place : _quilt.PlaceOf(part.Piece);

    private void PaintPart(Draft draft, QuiltSectionPart part, Rect place, double scale, Spot at)
    {
        FigureStyle style = draft.Style;
        // A section is drawn where its first example lies.
        Rect from = RectOf(part);
        Box box = FlatQuilt.ToBox(from);
        Spot by = at - (new Spot(box.X, box.Y) * scale);
        FlatQuilt.FlatPatch[] patches =
        [
            .. _patches
                .Where(block => block.Key >= 0 && Holds(from, _quilt.Places[block.Key].Place))
                .SelectMany(block => block),
            .. _quilt
                .Sashes.Where(sash => Holds(from, sash.Place))
                .Select(sash => new FlatQuilt.FlatPatch(
                    FlatQuilt.OutlineOf(sash),
                    default,
                    sash.Fabric,
                    FlatQuilt.Sashing
                )),
        ];
        foreach (var same in patches.GroupBy(p => p.Fabric))
        {
            FabricLook look = _palette[same.Key];
            var lines = new SeamLines();
            foreach (FlatQuilt.FlatPatch patch in same)
            {
                lines.Add(patch.Corners, patch.By);
            }
            draft.Area(
                Paths.Closed(lines.Outline(), scale, by),
                look.Color,
                hatch: style.IsBlackOnly ? look.Hatch : null
            );
        }
        var seams = new SeamLines();
        foreach (FlatQuilt.FlatPatch patch in patches)
        {
            seams.Add(patch.Corners, patch.By);
        }
        draft.Area(
            Paths.Lines(seams.Seams(), scale, by),
            stroke: style.Pen(style.Hair, style.Quiet)
        );
        draft.Area(
            Paths.Of(
                new Box(
                    at.X,
                    at.Y,
                    place.Width.Inches.ToDouble() * scale,
                    place.Height.Inches.ToDouble() * scale
                )
            ),
            stroke: style.Pen(style.Edge) with
            {
                Join = StrokeJoin.Miter,
            }
        );
    }

    private static bool Holds(Rect whole, Rect place) =>
        place.X >= whole.X
        && place.Y >= whole.Y
        && place.Right <= whole.Right
        && place.Bottom <= whole.Bottom;

    private void Name(Draft draft, QuiltSectionPart part, Box box)
    {
        if (part.Section > 0)
        {
            draft.Disc(part.Section.ToString(CultureInfo.InvariantCulture), box.Center);
        }
        else if (part.Piece.Kind == LayoutPartKind.Block && _names.Differ)
        {
            KeyPlate.TryPaint(
                draft,
                _names[_quilt.Places[part.Piece.Index].Block],
                box.Center,
                box.Width,
                box.Height,
                corner: true
            );
        }
    }

    // Below the upper part: along half of the middle at first, the rest at the end.
    private static void MarkPartialSeam(Draft draft, SectionJoin join, Box[] boxes)
    {
        FigureStyle style = draft.Style;
        Box middle = boxes[0],
            upper = boxes[1];
        double y = upper.Bottom + (Gap / 2);
        bool clockwise = join == SectionJoin.Clockwise;
        double flush = clockwise ? upper.Right : upper.X,
            sewn = (middle.X + middle.Right) / 2,
            open = clockwise ? upper.X : upper.Right;
        draft.Lines([(new Spot(flush, y), new Spot(sewn, y))], style.Pen(style.Bold));
        draft.Lines([(new Spot(sewn, y), new Spot(open, y))], SketchPens.Sewn(style, style.Ink));
    }
}
