using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Settings.Fills;

/// <summary>A way of spreading colorings over the rows and columns of a setting.</summary>
public abstract class FillPattern
{
    public abstract FillKind Kind { get; }

    /// <summary>The word the source uses.</summary>
    public abstract string Keyword { get; }

    /// <summary>Whether every line of what the designer writes counts: a drawing, not a list.</summary>
    public virtual bool IsDrawn => false;

    /// <summary>
    /// Gives every place a coloring.
    /// </summary>
    /// <param name="fill">What the designer wrote; every row has at least one cell.</param>
    /// <param name="grid">The places.</param>
    /// <param name="cells">Line by line, all places.</param>
    /// <param name="problem">Why it cannot be done, in words with the numbers.</param>
    public abstract bool TrySpread(
        Fill fill,
        FillGrid grid,
        [NotNullWhen(true)] out FillCell[][]? cells,
        [NotNullWhen(false)] out string? problem
    );
}
