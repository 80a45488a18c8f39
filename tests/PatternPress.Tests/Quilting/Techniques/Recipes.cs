using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques;
using Shouldly;

namespace PatternPress.Tests.Quilting.Techniques;

/// <summary>Recipes of units written in words.</summary>
internal static class Recipes
{
    /// <summary>Published batches are counted on the whole width.</summary>
    public static House Inches { get; } = House.Default with { EndSquaring = Length.Zero };

    /// <summary>A seam of 0.75 cm and a ruler in half centimetres.</summary>
    public static House Metric { get; } =
        House.Default with
        {
            EndSquaring = Length.Zero,
            Seam = Length.FromCentimetres(new Rational(3, 4)),
            Ruler = Ruler.HalfCentimetres,
            Unit = LengthUnit.Centimetre,
            UsableWidth = Length.FromCentimetres(102),
            Oversize = Length.FromCentimetres(new Rational(1, 2)),
        };

    public static House Oversize { get; } = Inches with { Cutting = CuttingStyle.Oversize };

    public static Technique Technique(string keyword) =>
        TechniqueCatalog.TryFind(keyword, out Technique? technique)
            ? technique
            : throw new ArgumentException($"no technique {keyword}", nameof(keyword));

    public static Recipe Of(string technique, UnitForm form, House? house = null)
    {
        house ??= Inches;
        Technique way = Technique(technique);
        way.CanMake(form, house, out string reason).ShouldBeTrue(reason);
        return way.Recipe(
            form,
            [.. Enumerable.Range(0, form.RoleCount).Select(role => $"F{role}")],
            house.StripLength(house.UsableWidth),
            house
        );
    }

    public static Recipe Of(
        string technique,
        string unit,
        string width,
        string? height = null,
        House? house = null
    ) => Of(technique, Written.Form(unit, width, height), house);

    /// <summary>"1 large square [0] 5 1/4 × 5 1/4; …" in inches.</summary>
    public static string Cuts(Recipe recipe) =>
        string.Join(
            "; ",
            recipe.Pieces.Select(p =>
                $"{p.Count} {p.Name} [{p.Role}] {LengthText.Inches(p.Width)} × {LengthText.Inches(p.Height)}"
            )
        );

    /// <summary>The cut side of a square piece, in inches.</summary>
    public static string Side(Recipe recipe, string piece)
    {
        RecipePiece found = recipe.Pieces.First(p => p.Name == piece);
        found.Width.ShouldBe(found.Height);
        return LengthText.Inches(found.Width);
    }
}
