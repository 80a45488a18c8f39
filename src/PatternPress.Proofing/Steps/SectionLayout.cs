using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>
/// Sews the sections of a quilt in the printed order: edges that meet must be equally long, a section must measure what is
/// printed, and each is made as often as later ones take it.
/// </summary>
internal sealed class SectionLayout
{
    private const string Chart = "placement chart";

    private readonly Workbench _bench;
    private readonly ImmutableArray<SectionRow> _sections;
    private readonly List<Sewn> _sewn = [];

    private SectionLayout(Workbench bench, ImmutableArray<SectionRow> sections)
    {
        _bench = bench;
        _sections = sections;
    }

    /// <summary>A part laid within a section.</summary>
    private readonly record struct Lain(Rect Place, SectionPart Part);

    /// <summary>A section as sewn.</summary>
    private sealed record Sewn(ImmutableArray<Lain> Parts, Length Width, Length Height);

    /// <summary>Every block and strip where it comes to lie, measured from the upper left corner of the field, and the field's size; null
    /// where the sections cannot be sewn.</summary>
    public static (List<(Rect Place, SectionPart Part)> Pieces, Length Width, Length Height)? Of(
        Workbench bench,
        ImmutableArray<SectionRow> sections
    )
    {
        var layout = new SectionLayout(bench, sections);
        if (!layout.SewAll())
        {
            return null;
        }
        var pieces = new List<(Rect, SectionPart)>();
        layout.Lay(layout._sewn.Count, Point.Origin, pieces);
        Sewn whole = layout._sewn[^1];
        return (pieces, whole.Width, whole.Height);
    }

    private bool SewAll()
    {
        for (int i = 0; i < _sections.Length; i++)
        {
            SectionRow section = _sections[i];
            string name = $"section {section.Number}";
            bool good =
                Notes.Same(
                    ProofStep.LayOut,
                    Chart,
                    name,
                    "number",
                    section.Number,
                    i + 1,
                    "sections count on to"
                ) && Sew(section, name, i);
            if (!good)
            {
                return false;
            }
        }
        if (!Notes.Ok(_sections.Length > 0))
        {
            Wrong("", "sections", "none", "the quilt has no rows either");
            return false;
        }
        long[] taken = new long[_sections.Length];
        taken[^1] = 1;
        for (int i = taken.Length - 1; i >= 0; i--)
        {
            Notes.Enough(
                ProofStep.LayOut,
                Chart,
                $"section {i + 1}",
                "sections",
                _sections[i].Count,
                taken[i],
                i == taken.Length - 1 ? "the quilt takes" : "later sections take"
            );
            foreach (SectionPart part in _sections[i].Parts)
            {
                if (part.Section > 0)
                {
                    taken[part.Section - 1] += taken[i];
                }
            }
        }
        return true;
    }

    private bool Sew(SectionRow section, string name, int index)
    {
        var sizes = new List<(Length Width, Length Height)>();
        foreach (SectionPart part in section.Parts)
        {
            int meanings =
                (part.Block is null ? 0 : 1)
                + (part.Strip is null ? 0 : 1)
                + (part.Section == 0 ? 0 : 1);
            if (!Notes.Ok(meanings == 1))
            {
                Wrong(
                    name,
                    "part",
                    $"section {part.Section}",
                    "a part is a block, strip or section"
                );
                return false;
            }
            if (part.Strip is { } strip)
            {
                SashingRow? sashing = _bench.Tables.Sashing.FirstOrDefault(r =>
                    r.Kind == strip.Kind && r.Fabric == strip.Fabric && r.Number == strip.Number
                );
                if (!Notes.Ok(sashing?.BySize[_bench.Size] is not null))
                {
                    Wrong(name, "strip", $"{strip}", "the sashing table has none");
                    return false;
                }
                SashingCell cut = sashing!.BySize[_bench.Size]!;
                sizes.Add((cut.FinishedWidth, cut.FinishedHeight));
                continue;
            }
            if (part.Block is null)
            {
                if (!Notes.Ok(part.Section >= 1 && part.Section <= index))
                {
                    Wrong(name, "part", $"section {part.Section}", "it is not sewn yet");
                    return false;
                }
                Sewn inner = _sewn[part.Section - 1];
                sizes.Add((inner.Width, inner.Height));
                continue;
            }
            PlacementCell cell = part.Block;
            if (
                !_bench.Index.Blocks.TryGetValue((cell.Coloring, cell.Number), out BlockRow? row)
                || row.BySize[_bench.Size] is not { } block
            )
            {
                return false;
            }
            sizes.Add(
                cell.Turn.SwapsSides
                    ? (block.FinishedHeight, block.FinishedWidth)
                    : (block.FinishedWidth, block.FinishedHeight)
            );
        }
        if (Join(section.Join, sizes) is not { } rects)
        {
            Notes.Ok(false);
            Wrong(
                name,
                "parts",
                string.Join(", ", sizes.Select(s => Notes.Told(s.Width, s.Height))),
                "edges that are sewn together differ in length"
            );
            return false;
        }
        Length width = rects.Max(r => r.Right),
            height = rects.Max(r => r.Bottom);
        Measure(name, "finished width", section.FinishedWidth, width);
        Measure(name, "finished height", section.FinishedHeight, height);
        Measure(name, "unfinished width", section.UnfinishedWidth, width + (_bench.Seam * 2));
        Measure(name, "unfinished height", section.UnfinishedHeight, height + (_bench.Seam * 2));
        _sewn.Add(
            new Sewn([.. rects.Select((r, i) => new Lain(r, section.Parts[i]))], width, height)
        );
        return true;
    }

    // Where each part comes to lie; null where an edge is longer than the one it is sewn to.
    private static Rect[]? Join(SectionJoin join, List<(Length Width, Length Height)> sizes)
    {
        if (sizes.Count == 0 || (sizes.Count == 1 && join != SectionJoin.SideBySide))
        {
            return null;
        }
        if (join is SectionJoin.SideBySide or SectionJoin.OneBelowTheOther)
        {
            bool below = join == SectionJoin.OneBelowTheOther;
            var rects = new Rect[sizes.Count];
            Length reached = Length.Zero;
            for (int i = 0; i < rects.Length; i++)
            {
                (Length width, Length height) = sizes[i];
                if (below ? width != sizes[0].Width : height != sizes[0].Height)
                {
                    return null;
                }
                rects[i] = below
                    ? new Rect(Length.Zero, reached, width, height)
                    : new Rect(reached, Length.Zero, width, height);
                reached += below ? height : width;
            }
            return rects;
        }
        if (sizes.Count != 5)
        {
            return null;
        }
        // Each is sewn to the middle together with the end of the one before; the first seam is closed by the last.
        (Length Width, Length Height) middle = sizes[0],
            above = sizes[1],
            second = sizes[2],
            below2 = sizes[3],
            last = sizes[4];
        if (
            above.Width != middle.Width + last.Width
            || second.Height != middle.Height + above.Height
            || below2.Width != middle.Width + second.Width
            || last.Height != middle.Height + below2.Height
        )
        {
            return null;
        }
        Rect[] clockwise =
        [
            new(last.Width, above.Height, middle.Width, middle.Height),
            new(Length.Zero, Length.Zero, above.Width, above.Height),
            new(above.Width, Length.Zero, second.Width, second.Height),
            new(last.Width, second.Height, below2.Width, below2.Height),
            new(Length.Zero, above.Height, last.Width, last.Height),
        ];
        Length whole = above.Width + second.Width;
        return join == SectionJoin.Clockwise
            ? clockwise
            :
            [
                // The same seen in a mirror.
                .. clockwise.Select(r => new Rect(whole - r.Right, r.Y, r.Width, r.Height)),
            ];
    }

    private void Lay(int section, Point at, List<(Rect, SectionPart)> pieces)
    {
        foreach (Lain lain in _sewn[section - 1].Parts)
        {
            if (lain.Part.Section == 0)
            {
                pieces.Add((lain.Place.MoveBy(at), lain.Part));
            }
            else
            {
                Lay(lain.Part.Section, at + lain.Place.UpperLeft, pieces);
            }
        }
    }

    private Notes Notes => _bench.Notes;

    private void Measure(string row, string what, Length printed, Length sewn) =>
        Notes.Same(ProofStep.LayOut, Chart, row, what, printed, sewn, "sewn it measures");

    private void Wrong(string row, string what, string printed, string expected) =>
        Notes.Wrong(ProofStep.LayOut, Chart, row, what, printed, expected);
}
