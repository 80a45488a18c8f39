using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques;

/// <summary>Puts recipes together from what the techniques have in common.</summary>
internal static class Batch
{
    public static Recipe Of(
        Technique technique,
        UnitForm form,
        House house,
        ImmutableArray<RecipePiece> pieces,
        int yield,
        bool trim,
        ImmutableArray<Leftover> leftovers = default,
        ReadOnlySpan<(string Name, Length Measure)> measures = default,
        ImmutableArray<Step> steps = default
    )
    {
        var all = ImmutableDictionary.CreateBuilder<string, Length>(StringComparer.Ordinal);
        all.Add("seam", house.Seam);
        all.Add(Sewing.UnfinishedWidth, house.Unfinished(form.Width));
        all.Add("middle", house.Unfinished(form.Width) / 2);
        all.Add(Sewing.UnfinishedHeight, house.Unfinished(form.Height));
        foreach (RecipePiece piece in pieces)
        {
            // Pieces of one name are of one size.
            if (piece.WholeStrip)
            {
                all[piece.Name] = piece.Height;
            }
            else if (
                piece.Width == piece.Height
                && !piece.Name.EndsWith("rectangle", StringComparison.Ordinal)
            )
            {
                all[piece.Name] = piece.Width;
            }
            else
            {
                all[WidthOf(piece.Name)] = piece.Width;
                all[HeightOf(piece.Name)] = piece.Height;
            }
        }
        foreach ((string name, Length measure) in measures)
        {
            all.Add(name, measure);
        }
        return new Recipe(
            technique.Keyword,
            pieces,
            yield,
            house.Unfinished(form.Width),
            house.Unfinished(form.Height),
            trim,
            leftovers.IsDefault ? [] : leftovers,
            steps.IsDefault ? [] : steps,
            all.ToImmutable()
        );
    }

    /// <summary>Name of the measure that is a piece's width, where it is no square; a square's side has the piece's name.</summary>
    public static string WidthOf(string piece) => piece + "-width";

    public static string HeightOf(string piece) => piece + "-height";

    /// <summary>Whether units of these pieces are trimmed: because the house likes to, or because rounding makes them larger.</summary>
    public static bool Trims(House house, params ReadOnlySpan<CutSize> sides)
    {
        if (house.Cutting == CuttingStyle.Oversize)
        {
            return true;
        }
        foreach (CutSize side in sides)
        {
            if (side.IsGenerous)
            {
                return true;
            }
        }
        return false;
    }

    /// <summary>
    /// What stitch-and-flip corners leave: pairs of triangles with legs of the square's side less s√2, which sewn
    /// at s are half-square units of the side less 2s√2. Below 1 in unfinished they are not worth keeping.
    /// </summary>
    public static ImmutableArray<Leftover> Offcuts(CutSize square, int count, House house)
    {
        Length side = house.Ruler.Down(square.Cut - (Allowance.Diagonal(house.Seam) * 2));
        return side < Length.FromInches(1)
            ? []
            : [new Leftover("half-square triangle unit", count, side, side)];
    }
}
