using System.Collections.Immutable;

namespace PatternPress.Source.Syntax;

/// <summary>
/// A value that is text. Every scalar is text here: whether it is a measure, a name or a map is for its reader to say.
/// It knows where in the file each of its characters stands, in every style, so that a wrong letter in the third row of
/// a map drawn as text can be pointed at.
/// </summary>
public sealed record ScalarNode : Node
{
    private readonly SourceText source;
    private readonly int start;
    private readonly int end;
    private readonly int parentIndent;
    private ScalarOffsets? offsets;

    /// <param name="source">The file it stands in.</param>
    /// <param name="value">What it says, escapes and indentation taken out.</param>
    /// <param name="style">How it is written.</param>
    /// <param name="start">Index of its first character in the file: the quotation mark or <c>|</c> where it has one.</param>
    /// <param name="end">Index after its last character; of a block scalar, after the empty lines that follow it.</param>
    /// <param name="parentIndent">For a block scalar, the indentation of the entry it belongs to; -1 at the root.</param>
    public ScalarNode(
        SourceText source,
        string value,
        ScalarStyle style,
        int start,
        int end,
        int parentIndent
    )
        : base(source.SpanOf(start, LastCharacter(source.Text, style, start, end)))
    {
        this.source = source;
        this.start = start;
        this.end = end;
        this.parentIndent = parentIndent;
        Value = value;
        Style = style;
    }

    public string Value { get; }

    public ScalarStyle Style { get; }

    /// <summary>True for <c>key:</c> with nothing after it and for empty quotation marks.</summary>
    public bool IsEmpty => Value.Length == 0;

    /// <summary>Whether YAML makes one line of the lines it is written in.</summary>
    public bool RunsTogether => Style != ScalarStyle.Literal && Span.EndLine > Span.StartLine;

    /// <summary>The file it stands in.</summary>
    public SourceText Source => source;

    /// <summary>The whole value as a slice, to take lines and words from.</summary>
    public Slice Whole => new(this, 0, Value.Length);

    /// <summary>
    /// Where a part of the value stands in the file. A line break that folding turned into a space counts from the end
    /// of its line to the start of the next. Offsets outside the value are moved to its ends.
    /// </summary>
    public Span SpanOf(int offset, int length)
    {
        offsets ??= ScalarOffsets.Find(source.Text, Value, Style, start, end, parentIndent);
        var from = Math.Clamp(offset, 0, Value.Length);
        var to = Math.Clamp(offset + Math.Max(length, 0), from, Value.Length);
        var first = offsets.StartOf(from);
        return source.SpanOf(first, to == from ? first : offsets.EndOf(to - 1));
    }

    /// <summary>The lines of the value; a line feed at its end starts no further line.</summary>
    public ImmutableArray<Slice> Lines() => Whole.Lines();

    /// <summary>The words of the value: what stands between blanks and line breaks.</summary>
    public ImmutableArray<Slice> Words() => Whole.Words();

    private static int LastCharacter(string text, ScalarStyle style, int start, int end) =>
        style is ScalarStyle.Literal or ScalarStyle.Folded
            ? start + text.AsSpan(start, end - start).TrimEnd("\n ").Length
            : end;

    public bool Equals(ScalarNode? other) =>
        other is not null && Span == other.Span && Style == other.Style && Value == other.Value;

    public override int GetHashCode() => HashCode.Combine(Span, Style, Value);

    public override string ToString() => Value;
}
