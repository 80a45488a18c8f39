namespace PatternPress.Typesetting.Layout.Lines;

/// <summary>A line of a paragraph: the atoms from one to before another, without the space at its end.</summary>
/// <param name="First">The first atom.</param>
/// <param name="End">After the last atom shown.</param>
/// <param name="Next">The first atom of the next line.</param>
/// <param name="Width">The width of what is shown, the hyphen included.</param>
/// <param name="Hyphenated">Whether a hyphen is shown at its end.</param>
/// <param name="Closes">Whether the paragraph or a forced line ends here: such a line is never stretched.</param>
readonly record struct Line(
    int First,
    int End,
    int Next,
    Points Width,
    bool Hyphenated,
    bool Closes
);
