using PatternPress.Quilting.Resolving;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A size is sewn of so many patches that few makers will finish it.</summary>
public sealed class PP0315_VeryManyPatches : CheckingRule
{
    // A king-size quilt of 2 in squares has about 3 000 patches; five thousand is beyond what sells (our own limit).
    private const long Most = 5000;

    public PP0315_VeryManyPatches()
        : base("PP0315", Severity.Note, "Very many patches") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (Quilt quilt in context.Quilts)
        {
            long patches = quilt
                .BlockCounts()
                .Sum(b =>
                    (long)b.Count
                    * (b.Block.Block?.Units.Sum(u => u.Drawn.Form.Patches.Length) ?? 1)
                );
            if (patches > Most)
            {
                yield return FindIn(
                    quilt.Size.Key,
                    quilt.Size.Span,
                    "a size is sewn of very many patches",
                    "this size",
                    $"{patches:N0} patches in the blocks",
                    hint: "use larger blocks for this size (block: …), or warn makers in the introduction"
                );
            }
        }
    }
}
