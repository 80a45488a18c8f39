using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Two keys look alike in print.</summary>
public sealed class PP0228_LookalikeKeys : ReadingRule
{
    public static PP0228_LookalikeKeys Instance { get; } = new();

    private PP0228_LookalikeKeys()
        : base("PP0228", Severity.Warning, "Keys that look alike") { }

    /// <summary>Whether two keys may be taken for each other: equal but for case, or o/O/0, l/I/1, s/5, z/2, b/8.</summary>
    public static bool Alike(string a, string b)
    {
        if (a == b || a.Length != b.Length)
        {
            return false;
        }
        for (int i = 0; i < a.Length; i++)
        {
            if (Shape(a[i]) != Shape(b[i]))
            {
                return false;
            }
        }
        return true;
    }

    /// <param name="key">The later of the two.</param>
    /// <param name="what">What they name, plural: "fabrics".</param>
    public static Diagnostic Found(
        Span key,
        string name,
        Span other,
        string otherName,
        string what
    ) =>
        Instance.Report(
            key,
            $"{what} \"{otherName}\" and \"{name}\" are easily taken for each other",
            "looks like the other",
            "Makers read these letters from small labels in the diagrams.",
            "use another letter for one of them",
            new Label(other, "the other")
        );

    private static char Shape(char c) =>
        c switch
        {
            'O' or 'o' or '0' => '0',
            'I' or 'i' or 'l' or 'L' or '1' => '1',
            _ => char.ToUpperInvariant(c),
        };
}
