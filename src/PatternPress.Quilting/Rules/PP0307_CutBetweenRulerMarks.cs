using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>
/// A piece would have to be cut between the ruler's marks. It is cut to the next mark; what sewing takes up anyway is
/// a note, more is an error unless the unit is trimmed afterwards.
/// </summary>
public sealed class PP0307_CutBetweenRulerMarks : CheckingRule
{
    // What sewing loses anyway: half a mark of the eighth-inch ruler (common practice, no source: it is why 7/8 and
    // 1 1/4 in are used for triangles, whose exact allowances have roots).
    private static readonly Length _hair = Length.FromInches(0, 1, 16);

    public PP0307_CutBetweenRulerMarks()
        : base("PP0307", Severity.Note, "Cut size between the ruler's marks") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (SizeMaking size in context.Making.Sizes)
        {
            // Pieces of one purpose and size in several fabrics are one fault.
            foreach (
                var alike in size
                    // What a template is laid on may be larger than it; binding is sewn as wide as it comes.
                    .Cuts.Where(cut =>
                        cut.After != PieceCut.AroundTemplate
                        && cut.Purpose is not CutPurpose.Binding
                    )
                    .Select(cut => (Cut: cut, Off: Off(cut)))
                    .Where(c => IsOff(size, c.Cut, c.Off))
                    .Select(c => (c.Cut, c.Off, Place: CutPlace.Of(context, c.Cut, size.Key)))
                    .GroupBy(c => (Owner: c.Place.Block ?? c.Place.Name, c.Off))
            )
            {
                (Length exactly, Length rounded) = alike.Key.Off;
                Length excess = rounded - exactly;
                bool tooLarge = excess > _hair;
                CutPlace place = alike.First().Place;
                string name = CutPlace.Told(alike.Select(c => c.Place));
                IEnumerable<string> fabrics = alike.Select(c => c.Cut.Fabric).Distinct();
                Finding found = FindIn(
                    size.Key,
                    place.Span,
                    tooLarge
                        ? $"no ruler shows the cut size of {name}"
                        : $"the cut size of {name} lies between the ruler's marks",
                    $"fabric {Wording.Names(fabrics)}",
                    $"exactly {Wording.Measure(exactly)}, cut {Wording.Measure(rounded)}: {excess.Inches.ToDouble():0.###} in too large",
                    tooLarge
                        ? $"It is sewn as it is cut, so the {Sewn(alike.First().Cut.Purpose)} comes out too large."
                        : "Each such piece is a little too large; sewing usually takes that up.",
                    Advice(alike.First().Cut, rounded, size.Quilt.Size.House.Seam)
                );
                yield return tooLarge
                    ? found with
                    {
                        Diagnostic = found.Diagnostic with { Severity = Severity.Error },
                    }
                    : found;
            }
        }
    }

    private static string Sewn(CutPurpose purpose) =>
        purpose switch
        {
            CutPurpose.UnitPiece => "unit",
            CutPurpose.BlockPatch or CutPurpose.PlainBlock => "block",
            _ => "quilt",
        };

    private static string Advice(Cut cut, Length rounded, Length seam) =>
        cut.Purpose is CutPurpose.Border or CutPurpose.Sashing or CutPurpose.SashingJoined
            ? $"a finished width of {Wording.Measure(rounded - (seam * 2))} is cut {Wording.Measure(rounded)} wide"
            : "choose a finished size that divides evenly by the block's grid";

    /// <summary>The side that is rounded most: exactly, and as cut.</summary>
    private static (Length Exactly, Length Cut) Off(Cut cut)
    {
        (Length Exactly, Length Cut) across = (cut.Exactly.Width, cut.Width),
            along = (cut.Exactly.Height, cut.Height);
        // The length of a border is measured on the quilt and that of a strip of sashing is its block's, which has its own
        // finding. Borders may be cut along the fabric: their length is the longer side.
        bool isLong =
            cut.Purpose is CutPurpose.Border or CutPurpose.SashingJoined or CutPurpose.Sashing;
        return isLong ? (along.Exactly <= across.Exactly ? along : across)
            : cut.WholeStrip ? along
            : Worse(along, across);
    }

    private static bool IsOff(SizeMaking size, Cut cut, (Length Exactly, Length Cut) off)
    {
        Length excess = off.Cut - off.Exactly;
        // The trade's triangle allowances are such roundings; everybody cuts by them.
        bool usual = !off.Exactly.Inches.IsRational && excess <= _hair;
        return excess.Sign > 0 && !usual && !IsTrimmed(size, cut.Purpose);
    }

    private static (Length Exactly, Length Cut) Worse(
        (Length Exactly, Length Cut) a,
        (Length Exactly, Length Cut) b
    ) => a.Cut - a.Exactly >= b.Cut - b.Exactly ? a : b;

    private static bool IsTrimmed(SizeMaking size, CutPurpose purpose) =>
        // The edge of the quilt's middle is trimmed when it is squared.
        purpose is CutPurpose.SettingTriangle
        // The quilt is trimmed to size with its coping strip on.
        || purpose is CutPurpose.Border strip
            && size.Quilt.Borders.Any(b => b.Number == strip.Number && b.IsCoping)
        || purpose is CutPurpose.UnitPiece piece
            && size.Units.Any(u => u.Class.Label == piece.Unit && u.Recipe.Trim);
}
