namespace PatternPress.Source.Syntax;

/// <summary>How a scalar is written in the file.</summary>
public enum ScalarStyle
{
    /// <summary>Without quotation marks.</summary>
    Plain,

    /// <summary>In <c>'single'</c> quotation marks; <c>''</c> stands for one.</summary>
    SingleQuoted,

    /// <summary>In <c>"double"</c> quotation marks, with backslash escapes.</summary>
    DoubleQuoted,

    /// <summary>A block after <c>|</c>: line breaks stay.</summary>
    Literal,

    /// <summary>A block after <c>&gt;</c>: line breaks become spaces.</summary>
    Folded,
}
