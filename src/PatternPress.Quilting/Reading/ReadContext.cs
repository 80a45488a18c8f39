using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Pictures;
using PatternPress.Quilting.Rules;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>
/// What the readers of the parts of a pattern share: the findings so far, the unit that bare numbers are in, the
/// names known by now. Looks values up leniently, because nodes of the wrong kind were reported before.
/// </summary>
internal sealed class ReadContext(DiagnosticList findings)
{
    // Finer than any ruler that all measures of a pattern share: areas and sums of such still fit into 64 bits.
    private const long FinestCommonPart = 10_000_000;

    private readonly HashSet<(string Code, Span Span, string Title)> _reported = [];

    // All measures so far are whole multiples of an inch divided by this.
    private long _commonPart = 1;

    /// <summary>The pictures beside the pattern's file.</summary>
    public IPictureFiles Pictures { get; init; } = NoPictureFiles.Instance;

    /// <summary>Unit of numbers written without one.</summary>
    public LengthUnit Unit { get; set; } = LengthUnit.Inch;

    /// <summary>
    /// Whether the file was read to its end. If not, a name that is missing may stand in the part left out, and nothing
    /// is called unknown.
    /// </summary>
    public bool IsComplete { get; init; } = true;

    /// <summary>
    /// Names of the fabrics, blocks and colorings in the file, also of those that could not be read: these have their
    /// own finding, and what uses them is not to blame.
    /// </summary>
    public (
        ImmutableHashSet<string> Fabrics,
        ImmutableHashSet<string> Blocks,
        ImmutableHashSet<string> Colorings
    ) Named { get; init; } = ([], [], []);

    private readonly HashSet<(string Block, string Word)> _misread = [];

    /// <summary>Words of a block's unit that could not be read: some of them are names of parts.</summary>
    public void AddMisread(string block, IEnumerable<string> words) =>
        _misread.UnionWith(words.Select(word => (block, word)));

    /// <summary>Whether a unit that could not be read may have the part.</summary>
    public bool MayBePart(string block, string name) =>
        _misread.Contains((block, name)) || _misread.Contains((block, AnyPart));

    /// <summary>Stands for all parts of a block whose inner block could not be read.</summary>
    public const string AnyPart = "*";

    /// <summary>Fabrics by key, once they are read.</summary>
    public ImmutableDictionary<string, Fabric> Fabrics { get; set; } =
        ImmutableDictionary.Create<string, Fabric>(StringComparer.Ordinal);

    /// <summary>Sections for paper foundations by name, once they are read.</summary>
    public ImmutableDictionary<string, FoundationDesign> Foundations { get; set; } =
        ImmutableDictionary.Create<string, FoundationDesign>(StringComparer.Ordinal);

    /// <summary>Appliqués by name, once they are read.</summary>
    public ImmutableDictionary<string, AppliqueDesign> Appliques { get; set; } =
        ImmutableDictionary.Create<string, AppliqueDesign>(StringComparer.Ordinal);

    /// <summary>Names of appliqués that stand in the file, also of those that could not be read.</summary>
    public ImmutableHashSet<string> AppliqueNames { get; set; } = [];

    /// <summary>Whether an appliqué that could not be read may have the name.</summary>
    public bool MayBeApplique(string name) => !IsComplete || AppliqueNames.Contains(name);

    /// <summary>Names of sections that stand in the file, also of those that could not be read.</summary>
    public ImmutableHashSet<string> FoundationNames { get; set; } = [];

    /// <summary>Whether a section that could not be read may have the name.</summary>
    public bool MayBeFoundation(string name) => !IsComplete || FoundationNames.Contains(name);

    public bool HasErrors => findings.HasErrors;

    /// <summary>Keeps a finding, once: a part of the quilt that several sizes share is read once a size.</summary>
    public void Report(Diagnostic diagnostic)
    {
        if (_reported.Add((diagnostic.Code, diagnostic.Primary.Span, diagnostic.Title)))
        {
            findings.Add(diagnostic);
        }
    }

    /// <summary>Keeps a finding where it is met first: one name that is written in many places is one mistake.</summary>
    public void ReportFirst(Diagnostic diagnostic)
    {
        if (_reported.Add((diagnostic.Code, Span.None, diagnostic.Title)))
        {
            findings.Add(diagnostic);
        }
    }

    /// <summary>The text of a key, or null where it is missing, empty or no text.</summary>
    public static ScalarNode? Text(MapNode? map, string key) =>
        map?[key] is ScalarNode { IsEmpty: false } scalar ? scalar : null;

    public static MapNode? Map(MapNode? map, string key) => map?[key] as MapNode;

    public static Sourced<string> Sourced(ScalarNode scalar) => new(scalar.Value, scalar.Span);

    public static Sourced<string> Sourced(Slice slice) => new(slice.Text, slice.Span);

    /// <summary>Reads a measure; reports and returns null where it is none or out of range.</summary>
    /// <param name="what">What is measured, for the message: "border width".</param>
    /// <param name="allowZero">Whether nothing is a sensible measure here.</param>
    public Length? Measure(Slice text, string what, bool allowZero = false)
    {
        if (!LengthText.TryParse(text.Text, Unit, out Length length, out string problem))
        {
            Report(PP0215_NotAMeasure.Found(text.Span, what, problem));
            return null;
        }
        if (!SharesPart(length))
        {
            Report(PP0215_NotAMeasure.WithoutCommonPart(text.Span, what, text.Text));
            return null;
        }
        if (length.Sign < 0 || (length.Sign == 0 && !allowZero))
        {
            Report(PP0216_MeasureOutOfRange.NotPositive(text.Span, what, length));
            return null;
        }
        return length;
    }

    // Whether a measure goes with the others into parts of an inch that can be computed with.
    private bool SharesPart(Length length)
    {
        long part = length.Inches.One.Denominator;
        long common = _commonPart / Rational.GreatestCommonDivisor(_commonPart, part) * part;
        if (common > FinestCommonPart)
        {
            return false;
        }
        _commonPart = common;
        return true;
    }

    /// <summary>Reads the measure of a key; null where it is missing.</summary>
    public Length? Measure(MapNode? map, string key, string what, bool allowZero = false) =>
        Text(map, key) is { } scalar ? Measure(scalar.Whole, what, allowZero) : null;

    /// <summary>Reads "40" or "40 to 42", the narrower first; null where the key is missing or is no measure.</summary>
    public (Length From, Length? To)? MeasureRange(MapNode? map, string key, string what)
    {
        if (Text(map, key) is not { } scalar)
        {
            return null;
        }
        Slice whole = scalar.Whole;
        int at = whole.Text.IndexOf(" to ", StringComparison.Ordinal);
        if (at < 0)
        {
            return Measure(whole, what) is { } one ? (one, null) : null;
        }
        // A unit written once is the unit of both.
        Slice second = whole.From(at + 4);
        string first = whole.Text[..at],
            unit = new([.. second.Text.SkipWhile(c => !IsUnit(c))]);
        if (unit.Length > 0 && !first.Any(IsUnit))
        {
            first = $"{first} {unit}";
        }
        if (!LengthText.TryParse(first, Unit, out Length from, out string problem))
        {
            Report(PP0215_NotAMeasure.Found(whole.Sub(0, at).Span, what, problem));
            return null;
        }
        if (!SharesPart(from))
        {
            Report(PP0215_NotAMeasure.WithoutCommonPart(whole.Span, what, first));
            return null;
        }
        if (Measure(second, what) is not { } to)
        {
            return null;
        }
        if (from.Sign <= 0 || to < from)
        {
            Report(
                PP0215_NotAMeasure.Found(
                    whole.Span,
                    what,
                    $"\"{whole.Text}\" does not run from the narrowest to the widest; write 40 to 42"
                )
            );
            return null;
        }
        return (from, to > from ? to : null);

        static bool IsUnit(char c) => char.IsLetter(c) || c is '"';
    }

    /// <summary>Takes a name as a fabric's; reports it where no fabric has it.</summary>
    /// <param name="use">What uses it, for the message: "the sashing".</param>
    public Sourced<string>? FabricName(Slice name, string use)
    {
        if (Fabrics.ContainsKey(name.Text))
        {
            return Sourced(name);
        }
        if (!IsComplete || Named.Fabrics.Contains(name.Text))
        {
            return null;
        }
        Report(
            PP0212_UnknownFabric.Found(
                name.Span,
                name.Text,
                use,
                Fabrics.Values.OrderBy(f => f.Order).Select(f => f.Key),
                Fabrics
                    .Values.FirstOrDefault(f =>
                        f.Name.Equals(name.Text, StringComparison.OrdinalIgnoreCase)
                    )
                    ?.Key
            )
        );
        return null;
    }

    public Sourced<string>? FabricName(MapNode? map, string key, string use) =>
        Text(map, key) is { } scalar ? FabricName(scalar.Whole.Trim(), use) : null;

    /// <summary>Reads "3 x 4" (or × or *) as two whole numbers of at least 1.</summary>
    public (int Columns, int Rows)? Grid(Slice text, string what)
    {
        if (TryGrid(text.Text, out var grid))
        {
            return grid;
        }
        Report(PP0219_NotACount.Found(text.Span, text.Text, what));
        return null;
    }

    public static bool TryGrid(string text, out (int Columns, int Rows) grid)
    {
        string[] sides = text.Split(['x', 'X', '×', '*'], StringSplitOptions.TrimEntries);
        grid = default;
        return sides.Length == 2
            && TryCount(sides[0], out grid.Columns)
            && TryCount(sides[1], out grid.Rows);
    }

    public static bool TryCount(string text, out int count)
    {
        count = 0;
        return text.Length is > 0 and < 7
            && text.All(c => c is >= '0' and <= '9')
            && int.TryParse(text, out count)
            && count > 0;
    }

    /// <summary>yes, no, true, false.</summary>
    public static bool Flag(MapNode? map, string key, bool otherwise) =>
        Text(map, key)?.Value.ToLowerInvariant() switch
        {
            "yes" or "true" => true,
            "no" or "false" => false,
            _ => otherwise,
        };
}
