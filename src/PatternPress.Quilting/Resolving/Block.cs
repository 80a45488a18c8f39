using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Resolving;

/// <summary>A block at one finished size: every region filled with a drawn unit, parts not yet coloured.</summary>
public sealed record Block(
    BlockDesign Design,
    Length Width,
    Length Height,
    ImmutableArray<BlockUnit> Units
)
{
    public string Key => Design.Key;

    public bool Equals(Block? other) =>
        other is not null && Key == other.Key && Width == other.Width && Height == other.Height;

    public override int GetHashCode() => HashCode.Combine(Key, Width, Height);
}

/// <summary>A unit in its place within a block.</summary>
/// <param name="Region">The region of the design's map.</param>
/// <param name="Place">Finished, in block coordinates.</param>
public sealed record BlockUnit(UnitRegion Region, DrawnUnit Drawn, Rect Place)
{
    /// <summary>The shapes that lie on the unit's patches, in block coordinates and in the order they are laid down.</summary>
    public IEnumerable<Patch> Overlays(IReadOnlyDictionary<string, string> fabrics)
    {
        UnitForm form = Drawn.Form;
        foreach (Overlay overlay in form.Overlays)
        {
            Polygon turned = overlay.Shape.Turned(Drawn.Turn, form.Width, form.Height);
            yield return new Patch(
                turned.MoveBy(Place.UpperLeft),
                fabrics[Drawn.Parts[overlay.Role]]
            );
        }
    }

    /// <summary>The unit's patches in block coordinates, in the fabrics of a coloring.</summary>
    /// <param name="fabrics">Fabric key by part name.</param>
    public IEnumerable<Patch> Patches(IReadOnlyDictionary<string, string> fabrics)
    {
        UnitForm form = Drawn.Form;
        foreach (RolePatch patch in form.Patches)
        {
            Polygon turned = patch.Shape.Turned(Drawn.Turn, form.Width, form.Height);
            yield return new Patch(turned.MoveBy(Place.UpperLeft), fabrics[Drawn.Parts[patch.Role]])
            {
                PrintTurn = Drawn.Turn,
            };
        }
    }
}
