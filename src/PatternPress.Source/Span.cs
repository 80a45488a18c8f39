namespace PatternPress.Source;

/// <summary>
/// A stretch of one source file. Lines and columns count from 1; the end column is the one after the last
/// character, so an empty span has equal ends.
/// </summary>
public readonly record struct Span(
    string File,
    int StartLine,
    int StartColumn,
    int EndLine,
    int EndColumn
)
{
    /// <summary>A span in no file, for findings that concern no single place.</summary>
    public static Span None { get; } = new("", 0, 0, 0, 0);

    public bool IsNone => File is null or { Length: 0 };

    public override string ToString() => IsNone ? "" : $"{File}:{StartLine}:{StartColumn}";
}
