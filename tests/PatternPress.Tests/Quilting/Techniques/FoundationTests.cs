using System.Collections.Immutable;
using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NUnit.Framework;
using PatternPress.Proofing;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Quilting.Techniques;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Ways;
using PatternPress.Tests.Proofing;
using Shouldly;
using Geometry = NetTopologySuite.Geometries.Geometry;
using Point = PatternPress.Quilting.Geometry.Point;
using Polygon = PatternPress.Quilting.Geometry.Polygon;

namespace PatternPress.Tests.Quilting.Techniques;

public class FoundationTests
{
    private static FoundationDesign Random(IReadOnlyList<(int Ax, int Ay, int Bx, int By)> lines) =>
        new(
            "random",
            6,
            6,
            [
                new FoundationPiece("a", null, default),
                .. lines.Select(
                    (l, i) =>
                        new FoundationPiece(
                            i % 2 == 0 ? "b" : "a",
                            ((l.Ax, l.Ay), (l.Bx, l.By)),
                            default
                        )
                ),
            ],
            default
        );

    private static readonly Gen<FoundationDesign> Drawn = (
        from x in Gen.Int[0, 6]
        from y in Gen.Int[0, 6]
        from toX in Gen.Int[0, 6]
        from toY in Gen.Int[0, 6]
        where (x, y) != (toX, toY)
        select (x, y, toX, toY)
    )
        .List[1, 5]
        .Select(Random);

    [TestCase(1)]
    [TestCase(2)]
    [TestCase(3)]
    [TestCase(8)]
    public void Rectangles_of_any_metric_size_can_be_computed(int parts)
    {
        for (int n = 1; n <= 96; n++)
        {
            var cell = Length.FromCentimetres(new Rational(n, parts));
            UnitForm form = Written.Draw("foundation spire, a b", cell * 2, cell * 3).Form;
            for (int patch = 0; patch < form.Patches.Length; patch++)
            {
                (Length along, Length across) = FoundationPaper.Rectangle(
                    form,
                    patch,
                    Recipes.Metric
                );
                along.Sign.ShouldBePositive();
                across.Sign.ShouldBePositive();
            }
        }
    }

    private static UnitForm? FormOf(FoundationDesign foundation, Length width, Length height)
    {
        UnitDesign design = Written.Design("foundation spire, a b") with
        {
            Foundation = foundation,
            Parts =
            [
                .. foundation.Roles.Select(role => new PatternPress.Quilting.Model.Sourced<string>(
                    role,
                    default
                )),
            ],
        };
        return FoundationSection.Kind.TryDraw(design, width, height, out DrawnUnit? drawn, out _)
            ? drawn.Form
            : null;
    }

    /// <summary>Whatever lines are drawn: the pieces fill the section, and each seam has all that is sewn before on one side.</summary>
    [Test]
    public void Random_sections_are_filled_and_sewn_by_straight_seams()
    {
        int shown = 0;
        Drawn.Sample(
            foundation =>
            {
                Length width = Length.FromInches(5),
                    height = Length.FromInches(4);
                if (FormOf(foundation, width, height) is not { } form)
                {
                    return;
                }
                Interlocked.Increment(ref shown);
                Area sum = form.Patches.Aggregate(Area.Zero, (all, p) => all + p.Shape.Area);
                sum.ShouldBe(width * height);
                for (int i = 1; i < form.Patches.Length; i++)
                {
                    FoundationSection.SeamOf(form, i).ShouldNotBeNull($"piece {i + 1}");
                }
                // Turned so that its seam lies level, each piece with what is beyond the seam fits its rectangle.
                double more = 2 * (0.25 + 0.25);
                for (int i = 0; i < form.Patches.Length; i++)
                {
                    (Length along, Length across) = FoundationPaper.Rectangle(
                        form,
                        i,
                        Recipes.Inches
                    );
                    (Point from, Point to) =
                        FoundationSection.SeamOf(form, i)
                        ?? (Point.Origin, new Point(Length.FromInches(1), Length.Zero));
                    double angle = Math.Atan2(
                        (to.Y - from.Y).Inches.ToDouble(),
                        (to.X - from.X).Inches.ToDouble()
                    );
                    Geometry level = new AffineTransformation()
                        .Rotate(-angle)
                        .Transform(ToNts(form.Patches[i].Shape));
                    double excess = along.Inches.ToDouble() - level.EnvelopeInternal.Width - more,
                        above = across.Inches.ToDouble() - level.EnvelopeInternal.Height - more;
                    excess.ShouldBeInRange(-1e-9, 0.125);
                    above.ShouldBeInRange(-1e-9, 0.125);
                }
            },
            iter: 400
        );
        shown.ShouldBeGreaterThan(40);
    }

    [Test]
    public void Random_sections_can_be_made_as_printed() =>
        Drawn.Sample(
            foundation =>
            {
                if (FormOf(foundation, Length.FromInches(5), Length.FromInches(5)) is null)
                {
                    return;
                }
                string pieces = string.Join(
                    "\n      ",
                    foundation.Pieces.Select(p =>
                        p.Line is { } line
                            ? $"{p.Role} {line.From.X},{line.From.Y} - {line.To.X},{line.To.Y}"
                            : p.Role
                    )
                );
                string roles = string.Join(" ", foundation.Roles);
                string fabrics = string.Join(
                    " ",
                    foundation.Roles.Select((r, i) => $"{r}={(char)('A' + i)}")
                );
                string yaml = $$"""
                    pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
                    fabrics:
                      A: {name: Ink, color: "#15233b"}
                      B: {name: Amber, color: "#f2a71b"}
                    foundations:
                      random:
                        grid: 6 x 6
                        pieces: |
                          {{pieces}}
                    blocks:
                      one:
                        size: 5
                        map: f
                        units:
                          f: foundation random, {{roles}}
                    colorings:
                      L: one {{fabrics}}
                    quilt: {fill: L}
                    sizes:
                      s: {blocks: 2 x 2}
                    """;
                (PrintedTables tables, ImmutableArray<Quilt> drawing) = Proofs.Of(yaml)!.Value;
                string.Join("\n", Proof.Prove(tables, drawing).Mistakes).ShouldBe("");
            },
            iter: 25
        );

    private static NetTopologySuite.Geometries.Polygon ToNts(Polygon shape)
    {
        Coordinate[] ring =
        [
            .. shape.Corners.Select(c => new Coordinate(
                c.X.Inches.ToDouble(),
                c.Y.Inches.ToDouble()
            )),
        ];
        return new GeometryFactory().CreatePolygon([.. ring, ring[0]]);
    }
}
