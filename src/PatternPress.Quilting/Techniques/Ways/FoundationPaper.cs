using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Pieces sewn one after the other onto paper with the section printed on it, mirrored. Each is cut as a generous rectangle: as
/// long as the piece along its seam line and as broad at a right angle to it, and on every side a seam and a quarter of an inch
/// more. Its exact size has the root of a sum of squares in it; what is cut is the first mark of the ruler that is not less.
/// </summary>
public sealed class FoundationPaper : Technique
{
    /// <summary>What a rectangle reaches beyond the seam allowance on every side (common practice, no source).</summary>
    public static Length Margin { get; } = Length.FromInches(0, 1, 4);

    public override string Keyword => "foundation-paper";

    public override string Kind => FoundationSection.Kind.Keyword;

    public override string Name => "Sections on paper foundations";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        var pictures = new FoundationPictures(form, house);
        return Batch.Of(
            this,
            form,
            house,
            Pieces(form, house, usableWidth),
            1,
            trim: true,
            steps:
            [
                new Step("print", pictures.Printed),
                new Step("first", pictures.First),
                new Step("second", pictures.Second),
                new Step("open", pictures.Opened),
                new Step("next", pictures.Next),
                new Step("trim", pictures.Finished),
            ]
        );
    }

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    ) =>
        [
            .. form.Patches.Select(
                (patch, i) =>
                {
                    (Length width, Length height) = Rectangle(form, i, house);
                    return new RecipePiece(
                        $"piece {i + 1}",
                        patch.Role,
                        width,
                        height,
                        (width, height),
                        1,
                        PieceCut.None,
                        false
                    );
                }
            ),
        ];

    /// <summary>As cut: along the seam line, and across it. The first piece lies upright.</summary>
    public static (Length Along, Length Across) Rectangle(UnitForm form, int patch, House house)
    {
        Polygon shape = form.Patches[patch].Shape;
        Length more = (house.Seam + Margin) * 2;
        if (FoundationSection.SeamOf(form, patch) is not { } seam)
        {
            Rect bounds = shape.Bounds;
            return (house.Ruler.Up(bounds.Width + more), house.Ruler.Up(bounds.Height + more));
        }
        Point way = seam.To - seam.From;
        // Only the direction counts: in its lowest terms the products below stay small.
        Rational part = way.X.Inches.CommonMeasure(way.Y.Inches);
        (Exact right, Exact down) = (way.X.Inches / part, way.Y.Inches / part);
        return (Extent(right, down), Extent(-down, right));

        // How far the piece reaches along a direction, times the direction's length.
        Length Extent(Exact x, Exact y)
        {
            Exact[] along = [.. shape.Corners.Select(c => (c.X.Inches * x) + (c.Y.Inches * y))];
            Exact reach =
                along.Aggregate((a, b) => a > b ? a : b) - along.Aggregate((a, b) => a < b ? a : b);
            Exact square = (x * x) + (y * y);
            // The first mark m with (m − more)² times the direction's square not less than the reach's square.
            Length cut = house.Ruler.Up(more);
            double guess = reach.ToDouble() / Math.Sqrt(square.ToDouble());
            cut +=
                house.Ruler.Step
                * Math.Max(0, (long)(guess / house.Ruler.Step.Inches.ToDouble()) - 2);
            while (true)
            {
                Length net = cut - more;
                if (net.Sign >= 0 && net.Inches * net.Inches * square >= reach * reach)
                {
                    return cut;
                }
                cut += house.Ruler.Step;
            }
        }
    }
}
