using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Tests.Quilting.Cutting;

namespace PatternPress.Tests.Quilting.Settings;

/// <summary>Borders whose strips meet at 45°.</summary>
public sealed class MiteredBorderTests
{
    private static SizeMaking Made(string house = "{}") =>
        Makings
            .Of(
                $$"""
                pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
                house: {{house}}
                fabrics:
                  A: {name: Ink, color: "#15233b", usable-width: 60}
                  B: {name: Amber, color: "#f2a71b", usable-width: 60}
                colorings:
                  P: plain A
                quilt:
                  fill: P
                  borders: [{width: 4, fabric: B, corners: mitered}]
                  backing: A
                sizes:
                  one: {blocks: 3 x 2, block: 10}
                """
            )
            .Sizes[0];

    // Common practice, no source: the side of the quilt, twice the width of the border, and an allowance for the miter.
    [Test]
    public void Strips_are_as_long_as_the_outside_with_an_allowance()
    {
        SizeMaking size = Made();
        Cut level = size.Cuts.First(c =>
            c.Purpose is CutPurpose.Border { Part: BorderPart.TopAndBottom }
        );
        Cut upright = size.Cuts.First(c =>
            c.Purpose is CutPurpose.Border { Part: BorderPart.Sides }
        );
        // 30 + 2 × 4 + 2 for the house, and 1/4 × 2(1 + √2) = 1.207 for the seams of the two points.
        LengthText.Inches(level.Width).ShouldBe("41 1/4");
        LengthText.Inches(level.Height).ShouldBe("4 1/2");
        LengthText.Inches(upright.Height).ShouldBe("31 1/4");
    }

    [Test]
    public void The_house_may_cut_them_exactly() =>
        LengthText
            .Inches(
                Made("{miter-allowance: 0}")
                    .Cuts.First(c =>
                        c.Purpose is CutPurpose.Border { Part: BorderPart.TopAndBottom }
                    )
                    .Width
            )
            .ShouldBe("39 1/4");

    [Test]
    public void The_strips_fill_the_border_and_no_more()
    {
        Quilt quilt = Made().Quilt;
        Border border = quilt.Borders[0];
        Area sum = Area.Zero;
        foreach (BorderPiece piece in border.Pieces)
        {
            piece.Outline.Area.SquareInches.Sign.ShouldBe(1);
            sum += piece.Outline.Area;
        }
        (sum.SquareInches + border.Inside.Area.SquareInches).ShouldBe(
            border.Outside.Area.SquareInches
        );
        Polygon top = border.Pieces.First(p => p.Side == BorderSide.Top).Outline;
        top.Corners.ShouldContain(border.Inside.UpperLeft);
        top.Corners.ShouldContain(border.Outside.UpperLeft);
    }
}
