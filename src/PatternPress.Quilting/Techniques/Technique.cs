using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques;

/// <summary>One way of making a kind of unit.</summary>
public abstract class Technique
{
    /// <summary>The word the source and the templates use: "half-square-two-at-a-time".</summary>
    public abstract string Keyword { get; }

    /// <summary>Keyword of the kind of unit it makes.</summary>
    public abstract string Kind { get; }

    /// <summary>The trade's name, for headings: "Half-square triangles, two at a time".</summary>
    public abstract string Name { get; }

    /// <summary>
    /// Says whether this form can be made so; <paramref name="reason"/> says why not.
    /// </summary>
    public abstract bool CanMake(UnitForm form, House house, out string reason);

    /// <summary>Everything a maker needs for one batch. Only called when <see cref="CanMake"/> agrees.</summary>
    /// <param name="form">The unit to make.</param>
    /// <param name="fabrics">Fabric key by role; two roles may share a fabric.</param>
    /// <param name="usableWidth">The narrowest usable width among the fabrics, for strips across the whole width.</param>
    /// <param name="house">Seam, ruler, cutting style.</param>
    public abstract Recipe Recipe(
        UnitForm form,
        System.Collections.Immutable.ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    );
}
