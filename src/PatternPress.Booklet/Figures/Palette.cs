using System.Collections.Frozen;
using System.Collections.Immutable;
using PatternPress.Quilting.Colors;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>How the fabrics of one pattern are drawn, the same in all its figures, and with which pens.</summary>
public sealed class Palette
{
    private readonly FrozenDictionary<string, FabricLook> _byKey;

    private Palette(ImmutableArray<FabricLook> looks, FigureStyle style)
    {
        Looks = looks;
        Style = style;
        _byKey = looks
            .GroupBy(look => look.Key)
            .ToFrozenDictionary(same => same.Key, same => same.First());
    }

    /// <summary>All fabrics in the order of the source.</summary>
    public ImmutableArray<FabricLook> Looks { get; }

    public FigureStyle Style { get; }

    /// <summary>How a fabric looks. A key that no fabric has is drawn as plain white.</summary>
    public FabricLook this[string key] => _byKey.GetValueOrDefault(key) ?? Unknown(key);

    /// <summary>Chooses hatches and inks for a pattern.</summary>
    /// <param name="quilts">All its sizes, so that a fabric looks the same in each.</param>
    public static Palette Of(Pattern pattern, IEnumerable<Quilt> quilts, FigureStyle style)
    {
        ImmutableArray<Fabric> fabrics = pattern.Fabrics;
        var hatches = HatchAssignment.Assign(fabrics, quilts, FabricHatches.All);
        return new(
            [
                .. fabrics.Select(
                    (fabric, i) =>
                        LookOf(
                            fabric,
                            hatches[i].Hatch,
                            hatches[i].Scale,
                            FabricCloth.Of(fabric),
                            style
                        )
                ),
            ],
            style
        );
    }

    /// <summary>The same fabrics drawn with other pens.</summary>
    public Palette With(FigureStyle style, Pattern pattern) =>
        new(
            [
                .. pattern.Fabrics.Select(fabric =>
                {
                    FabricLook look = this[fabric.Key];
                    return LookOf(
                        fabric,
                        look.Hatch.Hatch,
                        look.Hatch.Scale,
                        look.Cloth ?? FabricCloth.Of(fabric),
                        style
                    );
                }),
            ],
            style
        );

    private static FabricLook LookOf(
        Fabric fabric,
        Hatch hatch,
        double scale,
        FabricCloth? cloth,
        FigureStyle style
    )
    {
        if (style.IsBlackOnly)
        {
            return new(
                fabric.Key,
                fabric.Name,
                Ink.White,
                null,
                new HatchFill(hatch, Ink.Black, scale),
                Ink.Black
            );
        }
        Ink color = FabricLook.InkOf(fabric.Color);
        Ink letters = FabricLook.InkOf(Contrast.TextOn(fabric.Color));
        return new(
            fabric.Key,
            fabric.Name,
            color,
            PrintTexture.Of(fabric.Print, fabric.Directional),
            new HatchFill(hatch, HatchInk(color, letters), scale),
            letters
        )
        {
            Cloth = cloth,
            IsDirectional = fabric.Directional,
        };
    }

    // No stronger than the lines of a figure must be (contrast 3 : 1), so that colour and letter stay in front.
    private static Ink HatchInk(Ink color, Ink letters)
    {
        for (double share = 0.3; share < 1; share += 0.05)
        {
            Ink ink = color.MixedWith(letters, share);
            if (ink.ContrastWith(color) >= Contrast.LargeText)
            {
                return ink;
            }
        }
        return letters;
    }

    private FabricLook Unknown(string key) =>
        new(key, key, Ink.White, null, new HatchFill(new Hatch("none", []), Style.Ink), Style.Ink);
}
