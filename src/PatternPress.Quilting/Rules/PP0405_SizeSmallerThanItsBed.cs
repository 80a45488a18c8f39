using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A size has the name of a bed and does not cover its mattress.</summary>
public sealed class PP0405_SizeSmallerThanItsBed : CheckingRule
{
    // US mattresses, width × length in inches: sleepdex.org/mattresssize.htm, sizes.com/home/mattresses.htm. Where lists
    // differ the smaller measure is taken. Cribs are left out: no quilt belongs in a crib with an infant.
    private static readonly (string[] Names, int Width, int Length)[] _mattresses =
    [
        (["twin", "single"], 38, 75),
        (["twinxl"], 39, 80),
        (["full", "double"], 54, 75),
        (["queen"], 60, 80),
        (["king"], 76, 80),
        (["calking", "californiaking"], 72, 84),
    ];

    public PP0405_SizeSmallerThanItsBed()
        : base("PP0405", Severity.Note, "Size smaller than its bed") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (Quilt quilt in context.Quilts)
        {
            string name = Letters(quilt.Size.Name),
                key = Letters(quilt.Size.Key);
            foreach ((string[] names, int width, int length) in _mattresses)
            {
                if (!names.Contains(name) && !names.Contains(key))
                {
                    continue;
                }
                // A quilt may lie either way on the bed.
                Length shorter = Length.Min(quilt.Width, quilt.Height),
                    longer = Length.Max(quilt.Width, quilt.Height);
                if (shorter < Length.FromInches(width) || longer < Length.FromInches(length))
                {
                    yield return Find(
                        quilt.Size.Span,
                        $"size \"{quilt.Size.Key}\" does not cover the bed it is named for",
                        $"{Wording.Measure(quilt.Width, quilt.Height)}",
                        $"A US {names[0]} mattress measures {width} × {length} in.",
                        "add blocks or a border, or give the size another name"
                    );
                }
            }
        }
    }

    private static string Letters(string name) =>
        string.Concat(name.Where(char.IsLetter)).ToLowerInvariant();
}
