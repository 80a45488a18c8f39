namespace PatternPress.Source.Syntax;

/// <summary>Where reading stopped, and what was open there.</summary>
/// <param name="Readable">How much of the text may be looked at.</param>
/// <param name="From">Where to begin to look for what was opened and not closed.</param>
/// <param name="Start">Index where the scanner's trouble begins.</param>
/// <param name="End">Index where it gave up.</param>
/// <param name="Indents">The columns, from 0, of the block maps and lists open there, the innermost last.</param>
/// <param name="AfterBlock">Whether a block of text (<c>|</c>) was the last thing read.</param>
internal sealed record SyntaxError(
    SourceText Source,
    int Readable,
    int From,
    int Start,
    int End,
    IReadOnlyList<int> Indents,
    bool AfterBlock
);
