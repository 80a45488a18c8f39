using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Tests.Quilting.Techniques;

namespace PatternPress.Tests.Quilting.Cutting;

/// <summary>Fabric that serves several purposes. Rounding once is arithmetic: figures worked by hand.</summary>
public sealed class FabricTotalsTests
{
    // 31 1/2 in of top and 39 1/2 in of backing, each with 2 in for straightening: 33 1/2 and 41 1/2 in. Apart they are
    // 1 yd (36 in) and 1 1/4 yd (45 in); together 75 in, which 2 1/8 yd (76 1/2 in) cover.
    [Test]
    public void Exact_needs_are_added_and_rounded_once()
    {
        SizeMaking size = Makings.Plain("31", "31", quilt: "backing: A");
        size.Fabric("A")!.Yardage.Yards.ShouldBe(new Rational(1));
        size.Backing!.Yardage.Yards.ShouldBe(new Rational(5, 4));
        FabricTotal total = FabricTotals.Of(size).ShouldHaveSingleItem();
        total.Fabric.ShouldBe("A");
        total.Yardage.Exactly.ShouldBe(Length.FromInches(75));
        total.Yardage.Yards.ShouldBe(new Rational(17, 8));
        DerivationText
            .Line(total.Derivation, LengthUnit.Inch)
            .ShouldBe(
                "quilt top: see fabric A = 33 1/2 in; backing: see backing = 41 1/2 in; needed: along the fabric = 75 in; to buy: 75 in, rounded up once = 2 1/8 yd"
            );
    }

    [Test]
    public void Fabric_of_another_width_is_another_purchase()
    {
        FabricTotals
            .Of(Makings.Plain("31", "31", quilt: "backing: {fabric: A, width: 108}"))
            .ShouldBeEmpty();
        FabricTotals
            .Of(Makings.Plain("31", "31", quilt: "backing: C", fabric: Third))
            .ShouldBeEmpty();
    }

    private const string Third = "C: {name: Rose, color: \"#d1495b\"}";

    // Three fat quarters of 18 × 21 in for the top (a piece of 17 in from each) and two for the binding, with 10 % for
    // mistakes: 3 3/10 and 2 2/10 are 4 and 3 apart, 5 1/2 are 6 together.
    [Test]
    public void Panels_kept_for_mistakes_are_counted_once()
    {
        Making making = Makings.Of(
            """
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
            house: {allowance: 10 %, end-squaring: 0}
            fabrics:
              A: {name: Ink, color: "#15233b", buy: fat quarters}
            blocks: {whole: {size: 16 1/2, map: s, units: {s: square a}}}
            colorings: {W: whole a=A}
            quilt: {fill: W, binding: A}
            sizes: {only: {blocks: 3 x 1}}
            """
        );
        SizeMaking size = making.Sizes.Single();
        long top = size.Fabric("A")!.Panels!.Count,
            binding = size.Fabric("A", FabricUse.Binding)!.Panels!.Count;
        top.ShouldBe(3);
        FabricTotal total = FabricTotals.Of(size).ShouldHaveSingleItem();
        total.PanelsToBuy.ShouldBe((((top + binding) * 11) + 9) / 10);
    }
}
