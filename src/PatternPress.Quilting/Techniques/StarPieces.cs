using System.Collections.Immutable;
using PatternPress.Quilting.Cutting.Planning;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;

namespace PatternPress.Quilting.Techniques;

/// <summary>What eight-pointed stars are cut from.</summary>
internal static class StarPieces
{
    public const string Diamond = "diamond";

    /// <summary>
    /// Width of the strips for diamonds, and the distance of the cuts across them: the finished distance between opposite
    /// edges, d / √2, and a seam on either side.
    /// </summary>
    public static CutSize Strip(UnitForm form, House house) =>
        CutSize.Close(
            house.Unfinished(Allowance.SideOfDiagonal(EightPointStar.DiamondOf(form.Width))),
            house
        );

    /// <summary>The diamonds of each fabric, sliced from strips of their width.</summary>
    public static IEnumerable<RecipePiece> Diamonds(
        UnitForm form,
        House house,
        Length usableWidth,
        int stars
    )
    {
        CutSize strip = Strip(form, house);
        int each = (int)SlantedPiece.Diamond45(strip.Cut).CountIn(usableWidth),
            rays = form.RoleCount - 1,
            slices = 8 / rays * stars;
        for (int role = 0; role < rays; role++)
        {
            yield return new RecipePiece(
                Diamond,
                role,
                usableWidth,
                strip.Cut,
                (usableWidth, strip.Exactly),
                each == 0 ? slices : (slices + each - 1) / each,
                PieceCut.AcrossAtFortyFive,
                true
            )
            {
                Slices = slices,
                InStrip = each,
            };
        }
    }

    /// <summary>
    /// Trimming corrects a background that is too large, but not diamonds that are: what a strip is too wide, the star is
    /// larger by 2 + 2√2 times as much.
    /// </summary>
    public static string? Refusal(UnitForm form, House house, Length usableWidth)
    {
        CutSize strip = Strip(form, house);
        var growth = new Length((strip.Cut - strip.Exactly).Inches * new Exact(2, 2));
        if (growth > CutSize.Hair * 2)
        {
            Length larger = EightPointStar.SizeOf(Allowance.Diagonal(strip.Cut - (house.Seam * 2))),
                smaller = EightPointStar.SizeOf(
                    Allowance.Diagonal(strip.Cut - house.Ruler.Step - (house.Seam * 2))
                );
            return $"its strips for diamonds, {Told.Decimal(strip.Exactly)} wide, are not near a mark of the ruler: cut {Told.One(strip.Cut)} they make a star of {Told.Decimal(larger)}, cut {Told.One(strip.Cut - house.Ruler.Step)} one of {Told.Decimal(smaller)}";
        }
        return SlantedPiece.Diamond45(strip.Cut).CountIn(usableWidth) < 1
            ? $"its diamonds of {Told.One(strip.Cut)} are longer than a strip of the fabric, {Told.One(usableWidth)}"
            : null;
    }
}
