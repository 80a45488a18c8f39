using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A diagnostic as found in one size. Findings equal but for the size become one diagnostic.</summary>
/// <param name="Diagnostic">The words, the same in every size; its list of sizes is empty.</param>
/// <param name="Size">The size's key; null if it concerns no size in particular.</param>
/// <param name="Numbers">The numbers at this size: "42 1/2 in needed, 40 in usable"; "" if there are none.</param>
public sealed record Finding(Diagnostic Diagnostic, string? Size, string Numbers)
{
    /// <summary>A diagnostic that concerns no size in particular.</summary>
    public Finding(Diagnostic diagnostic)
        : this(diagnostic, null, "") { }
}
