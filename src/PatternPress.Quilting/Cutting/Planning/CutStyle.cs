namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>How freely pieces of different heights may share a strip.</summary>
public enum CutStyle
{
    /// <summary>A strip holds pieces of one height; only the end of one strip of each height (the last) may also hold
    /// shorter pieces, or of a lower strip instead: of the mixed strips at least so tall there are no more than heights of pieces as flat as they can lie (but one).
    /// Easy to follow at the cutting table.</summary>
    Plain,

    /// <summary>Any strip may hold any pieces that are no taller than it. Least fabric.</summary>
    Thrifty,
}
