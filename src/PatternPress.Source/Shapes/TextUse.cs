namespace PatternPress.Source.Shapes;

/// <summary>How a text in a source file is read, and so what YAML can do to it unnoticed.</summary>
public enum TextUse
{
    /// <summary>As words: line breaks are blanks, and a # after a blank is rightly a remark.</summary>
    Words,

    /// <summary>As it stands, for printing: a # that begins a remark cuts it off.</summary>
    Prose,

    /// <summary>Line by line: without | before it all its lines run together into one.</summary>
    Drawing,
}
