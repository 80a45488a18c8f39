namespace PatternPress.Source.Syntax;

/// <summary>Reads a part of a text without copying it.</summary>
internal sealed class PartReader(string text, int from, int to) : TextReader
{
    private int at = from;

    public override int Peek() => at < to ? text[at] : -1;

    public override int Read() => at < to ? text[at++] : -1;

    public override int Read(char[] buffer, int index, int count) =>
        Read(buffer.AsSpan(index, count));

    public override int Read(Span<char> buffer)
    {
        var length = Math.Min(buffer.Length, to - at);
        text.AsSpan(at, length).CopyTo(buffer);
        at += length;
        return length;
    }
}
