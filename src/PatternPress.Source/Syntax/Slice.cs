using System.Collections.Immutable;

namespace PatternPress.Source.Syntax;

/// <summary>A part of a scalar's value that still knows its place in the file: a line of a map, a word of a line.</summary>
/// <param name="Scalar">The scalar it is cut from.</param>
/// <param name="Offset">Where in <see cref="ScalarNode.Value"/> it begins.</param>
/// <param name="Length">How many characters it has.</param>
public readonly record struct Slice(ScalarNode Scalar, int Offset, int Length)
{
    public string Text => Scalar.Value.Substring(Offset, Length);

    public ReadOnlySpan<char> Characters => Scalar.Value.AsSpan(Offset, Length);

    public Span Span => Scalar.SpanOf(Offset, Length);

    public bool IsEmpty => Length == 0;

    /// <summary>A part of this part; clipped to it.</summary>
    public Slice Sub(int offset, int length)
    {
        var from = Math.Clamp(offset, 0, Length);
        return new Slice(Scalar, Offset + from, Math.Clamp(length, 0, Length - from));
    }

    /// <summary>From an offset to the end.</summary>
    public Slice From(int offset) => Sub(offset, Length);

    /// <summary>Without blanks at its ends.</summary>
    public Slice Trim()
    {
        var characters = Characters;
        var leading = Length - characters.TrimStart().Length;
        return Sub(leading, characters.Trim().Length);
    }

    /// <summary>Its lines; a line feed at the end starts no further line.</summary>
    public ImmutableArray<Slice> Lines()
    {
        var lines = ImmutableArray.CreateBuilder<Slice>();
        var from = 0;
        while (from < Length)
        {
            var length = Characters[from..].IndexOf('\n');
            if (length < 0)
            {
                length = Length - from;
            }

            lines.Add(Sub(from, length));
            from += length + 1;
        }

        return lines.ToImmutable();
    }

    /// <summary>Its words: what stands between blanks and line breaks.</summary>
    public ImmutableArray<Slice> Words()
    {
        var words = ImmutableArray.CreateBuilder<Slice>();
        var characters = Characters;
        var at = 0;
        while (at < Length)
        {
            if (char.IsWhiteSpace(characters[at]))
            {
                at++;
                continue;
            }

            var from = at;
            while (at < Length && !char.IsWhiteSpace(characters[at]))
            {
                at++;
            }

            words.Add(Sub(from, at - from));
        }

        return words.ToImmutable();
    }

    /// <summary>Its parts between separators, blanks trimmed; <c>a, b</c> at commas gives <c>a</c> and <c>b</c>.</summary>
    public ImmutableArray<Slice> Split(char separator)
    {
        var parts = ImmutableArray.CreateBuilder<Slice>();
        var from = 0;
        while (true)
        {
            var length = Characters[from..].IndexOf(separator);
            if (length < 0)
            {
                parts.Add(From(from).Trim());
                return parts.ToImmutable();
            }

            parts.Add(Sub(from, length).Trim());
            from += length + 1;
        }
    }

    public override string ToString() => Text;
}
