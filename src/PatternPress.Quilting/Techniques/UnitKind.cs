using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Techniques;

/// <summary>
/// A kind of unit: what it looks like, apart from how it is made. The words of a <see cref="UnitDesign"/> are given
/// their meaning here.
/// </summary>
public abstract class UnitKind
{
    /// <summary>The word the source uses: "geese", "half-square".</summary>
    public abstract string Keyword { get; }

    /// <summary>The trade's name, singular and lower case: "flying geese unit".</summary>
    public abstract string Name { get; }

    /// <summary>How to write it, for messages and the schema: "geese up, ray on sky".</summary>
    public abstract string Example { get; }

    /// <summary>
    /// Gives the words of a design a shape that fills a region.
    /// </summary>
    /// <param name="design">The words as written.</param>
    /// <param name="width">Finished width of the region.</param>
    /// <param name="height">Finished height of the region.</param>
    /// <param name="drawn">The unit in canonical orientation, how to turn it and which parts take its roles.</param>
    /// <param name="problem">What is wrong and what would be right, in words for a designer, with the numbers.</param>
    public abstract bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    );
}
