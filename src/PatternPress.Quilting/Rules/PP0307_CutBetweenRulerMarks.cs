using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Source;
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
            foreach (Cut cut in size.Cuts)
            {
                // The length of a border or of a joined strip is measured on the quilt, not on the ruler.
                bool lengthCounts =
                    cut.Purpose
                    is not (
                        CutPurpose.Border
                        or CutPurpose.SashingJoined
                        or CutPurpose.Binding
                        or CutPurpose.Sashing { Kind: SashKind.Row }
                    );
                (Length Exactly, Length Cut) worst = Worse(
                    (cut.Exactly.Height, cut.Height),
                    lengthCounts ? (cut.Exactly.Width, cut.Width) : default
                );
                Length excess = worst.Cut - worst.Exactly;
                bool trimmed = IsTrimmed(size, cut.Purpose);
                if (
                    excess.Sign <= 0
                    || cut.WholeStrip
                    // The trade's triangle allowances are such roundings; everybody cuts by them.
                    || (!worst.Exactly.Inches.IsRational && excess <= _hair)
                    || trimmed
                )
                {
                    continue;
                }
                bool tooLarge = excess > _hair;
                Finding found = FindIn(
                    size.Key,
                    SpanOf(context, cut),
                    tooLarge
                        ? $"no ruler shows the cut size of {Wording.Purpose(cut.Purpose)} of fabric \"{cut.Fabric}\""
                        : $"the cut size of {Wording.Purpose(cut.Purpose)} of fabric \"{cut.Fabric}\" lies between the ruler's marks",
                    $"cut as {cut.Id}",
                    $"exactly {Wording.Measure(worst.Exactly)}, cut {Wording.Measure(worst.Cut)}: {excess.Inches.ToDouble():0.###} in too large",
                    tooLarge
                        ? "It is sewn as it is cut, so the block comes out too large."
                        : "Each such piece is a little too large; sewing usually takes that up.",
                    "choose a finished size that divides evenly by the block's grid"
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

    private static (Length Exactly, Length Cut) Worse(
        (Length Exactly, Length Cut) a,
        (Length Exactly, Length Cut) b
    ) => a.Cut - a.Exactly >= b.Cut - b.Exactly ? a : b;

    private static bool IsTrimmed(SizeMaking size, CutPurpose purpose) =>
        purpose is CutPurpose.UnitPiece piece
        && size.Units.Any(u => u.Class.Label == piece.Unit && u.Recipe.Trim);

    private static Span SpanOf(RuleContext context, Cut cut)
    {
        if (cut.Purpose is CutPurpose.UnitPiece piece)
        {
            foreach (UnitShape shape in context.Making.Shapes)
            {
                foreach (UnitClass units in shape.Classes)
                {
                    if (units.Label == piece.Unit)
                    {
                        return Wording.SpanOf(context.Pattern, units);
                    }
                }
            }
        }
        // A patch is drawn in a block; the block's size is what can be changed.
        string? block = context
            .Making.Blocks.FirstOrDefault(b => b.Parts.Any(p => p.Cut == cut.Id))
            ?.Block;
        return (block is null ? null : context.Pattern.Block(block)?.Span)
            ?? context.Pattern.Fabric(cut.Fabric)?.Span
            ?? Span.None;
    }
}
