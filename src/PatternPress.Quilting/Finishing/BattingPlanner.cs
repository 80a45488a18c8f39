using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Finishing;

/// <summary>Batting: the quilt top before it is bound and an overhang on every side, and the smallest packaged size that holds it.</summary>
public static class BattingPlanner
{
    /// <summary>
    /// Packaged sizes on which several sources agree (honeybegood.com 2012-05-01; embroiderypress.com quilt-size-101;
    /// primitivequiltsandprojects.com), smallest first.
    /// </summary>
    public static ImmutableArray<BattingPackage> Packages { get; } =
    [
        Package("crib", 45, 60),
        Package("twin", 72, 90),
        Package("full", 81, 96),
        Package("queen", 90, 108),
        Package("king", 120, 120),
    ];

    public static BattingPlan Plan(Quilt quilt)
    {
        Length overhang = quilt.House.BattingOverhang;
        Ruler ruler = quilt.House.Ruler;
        Length topWidth = quilt.House.Unfinished(quilt.Width),
            topHeight = quilt.House.Unfinished(quilt.Height);
        Length width = ruler.Up(topWidth + (overhang * 2)),
            height = ruler.Up(topHeight + (overhang * 2));
        BattingPackage? package = Smallest(width, height);
        string Told(Length length) => HouseText.Of(length, quilt.House.Unit);
        var terms = ImmutableArray.CreateBuilder<DerivationTerm>();
        terms.Add(
            new("width", $"{Told(topWidth)} + 2 × {Told(overhang)}", new Quantity.Measure(width))
        );
        terms.Add(
            new("height", $"{Told(topHeight)} + 2 × {Told(overhang)}", new Quantity.Measure(height))
        );
        if (package is not null)
        {
            string how = $"{package.Name}, the smallest package that holds it";
            terms.Add(new("package width", how, new Quantity.Measure(package.Width)));
            terms.Add(new("package height", how, new Quantity.Measure(package.Height)));
        }
        var derivation = new Derivation("batting", terms.ToImmutable());
        return new BattingPlan(width, height, overhang, package) { Derivation = derivation };
    }

    /// <summary>The smallest package that holds a rectangle, turned if need be; null if none does.</summary>
    public static BattingPackage? Smallest(Length width, Length height)
    {
        Length narrow = Length.Min(width, height),
            wide = Length.Max(width, height);
        foreach (BattingPackage package in Packages)
        {
            if (narrow <= package.Width && wide <= package.Height)
            {
                return package;
            }
        }
        return null;
    }

    private static BattingPackage Package(string name, long width, long height) =>
        new(name, Length.FromInches(width), Length.FromInches(height));
}
