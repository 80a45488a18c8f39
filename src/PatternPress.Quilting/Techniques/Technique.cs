using System.Collections.Immutable;
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

    /// <summary>Whether pieces are set into angles, in seams that end before the edge (Y seams).</summary>
    public virtual bool HasSetInSeams => false;

    /// <summary>How a designer avoids its set-in seams; null if there is no way.</summary>
    public virtual string? WithoutSetInSeams => null;

    /// <summary>
    /// Edges of a patch that are cut on the bias when the unit is made so, by number (edge i runs from corner i to i + 1):
    /// those that every way of making the unit puts there, and by default no more.
    /// </summary>
    public virtual ImmutableArray<int> BiasEdges(UnitForm form, int patch) =>
        form.Patches[patch].BiasEdges;

    /// <summary>
    /// Says whether this form can be made so from fabric of the house's usable width; <paramref name="reason"/>
    /// says why not.
    /// </summary>
    public bool CanMake(UnitForm form, House house, out string reason) =>
        CanMake(form, house, house.StripLength(house.UsableWidth), out reason);

    /// <summary>Says whether this form can be made so from fabric of a given usable width.</summary>
    public bool CanMake(UnitForm form, House house, Length usableWidth, out string reason)
    {
        reason =
            form.Kind.Keyword == Kind
                ? Refusal(form, house, usableWidth) ?? TooWide(form, house, usableWidth) ?? ""
                : $"it makes no {form.Kind.Name}";
        return reason.Length == 0;
    }

    /// <summary>
    /// Everything a maker needs for one batch. Only called when <see cref="CanMake(UnitForm, House, Length, out string)"/>
    /// agrees for the same usable width.
    /// </summary>
    /// <param name="form">The unit to make.</param>
    /// <param name="fabrics">Fabric key by role; two roles may share a fabric.</param>
    /// <param name="usableWidth">The narrowest usable width among the fabrics, for strips across the whole width.</param>
    /// <param name="house">Seam, ruler, cutting style.</param>
    public abstract Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    );

    /// <summary>What is cut for one batch.</summary>
    protected abstract ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    );

    /// <summary>Why this form cannot be made so; null if it can.</summary>
    protected virtual string? Refusal(UnitForm form, House house, Length usableWidth) => null;

    /// <summary>Whether a piece wider than the fabric rules the technique out; a plain patch has no other way.</summary>
    protected virtual bool NeedsFabricWidth => true;

    private string? TooWide(UnitForm form, House house, Length usableWidth)
    {
        if (!NeedsFabricWidth)
        {
            return null;
        }
        foreach (RecipePiece piece in Pieces(form, house, usableWidth))
        {
            if (!piece.WholeStrip && Length.Min(piece.Width, piece.Height) > usableWidth)
            {
                return $"its {piece.Name} of {Told.Size(piece.Width, piece.Height)} is longer than a strip of the fabric, {Told.One(usableWidth)}";
            }
        }
        return null;
    }
}
