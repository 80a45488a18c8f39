using PatternPress.Booklet;
using PatternPress.Booklet.Words;
using PatternPress.Pdf;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Tables;
using PatternPress.Tests.Booklet.Sections;
using PatternPress.Tests.Typesetting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Pages;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;

namespace PatternPress.Tests.Booklet;

/// <summary>Pages in true size, measured in the finished file by another library than wrote it.</summary>
public sealed class TrueScaleTests
{
    private const double MillimetresInPoint = 25.4 / 72;

    private static Manuscript Curves =>
        Manuscripts.Compile(
            "curves",
            File.ReadAllText(
                Path.Combine(Repository.Root, "tests", "cases", "tables", "curves.quilt.yaml")
            )
        );

    private static byte[] Written(Manuscript manuscript, PaperSize paper)
    {
        DocumentPlan plan = BookletTemplates.Templates.Documents.Single(p => p.Key == "templates");
        ComposedDocument composed = new DocumentComposer(
            manuscript,
            BookletTemplates.Templates
        ).Compose(plan, plan.Printing.PageOf(paper));
        TypesetDocument set = new Typesetter(TestFonts.Measurer).Typeset(composed.Document);
        set.Problems.Where(p => p.Kind != LayoutProblemKind.NearlyEmpty)
            .Select(p => $"page {p.Page}: {p.Message}")
            .ShouldBeEmpty();
        PageInspection
            .Inspect(set)
            .Select(finding => $"page {finding.Page}: {finding.Message}")
            .ShouldBeEmpty();
        return PdfWriter.Write(set, new PdfOptions());
    }

    // Shapes of every page: their straight edges and the extent of each, in millimetres on paper.
    private static List<(int Page, double Width, double Height, List<double> Edges)> Shapes(
        byte[] file
    )
    {
        using var pdf = PdfDocument.Open(file);
        var shapes = new List<(int, double, double, List<double>)>();
        foreach (UglyToad.PdfPig.Content.Page page in pdf.GetPages())
        {
            foreach (var path in page.Paths.Where(p => !p.IsClipping))
            {
                foreach (PdfSubpath part in path)
                {
                    var edges = part
                        .Commands.OfType<PdfSubpath.Line>()
                        .Select(line =>
                            Math.Sqrt(
                                Math.Pow(line.To.X - line.From.X, 2)
                                    + Math.Pow(line.To.Y - line.From.Y, 2)
                            ) * MillimetresInPoint
                        )
                        .ToList();
                    if (part.GetBoundingRectangle() is { } box)
                    {
                        shapes.Add(
                            (
                                page.Number,
                                box.Width * MillimetresInPoint,
                                box.Height * MillimetresInPoint,
                                edges
                            )
                        );
                    }
                }
            }
        }
        return shapes;
    }

    private static double Millimetres(Length length) => length.Inches.ToDouble() * 25.4;

    [TestCase("letter")]
    [TestCase("a4")]
    public void Templates_measure_what_they_should_to_a_tenth_of_a_millimetre(string paper)
    {
        Manuscript manuscript = Curves;
        var shapes = Shapes(Written(manuscript, paper == "a4" ? PaperSize.A4 : PaperSize.Letter));
        int measured = 0;
        foreach (TemplateTable template in manuscript.Tables.Templates)
        {
            foreach (TemplateCell cell in template.BySize.OfType<TemplateCell>())
            {
                foreach (var outline in new[] { cell.Shape.Cut, cell.Shape.Seam })
                {
                    double width = Millimetres(outline.Bounds.Width),
                        height = Millimetres(outline.Bounds.Height);
                    var straight = Enumerable
                        .Range(0, outline.Corners.Length)
                        .Where(i => outline.Arcs.All(arc => arc.Edge != i))
                        .Select(i =>
                        {
                            var way =
                                outline.Corners[(i + 1) % outline.Corners.Length]
                                - outline.Corners[i];
                            return Math.Sqrt(
                                Math.Pow(Millimetres(way.X), 2) + Math.Pow(Millimetres(way.Y), 2)
                            );
                        })
                        .ToList();
                    // A closing edge may be implied rather than drawn.
                    shapes.ShouldContain(
                        shape =>
                            Math.Abs(shape.Width - width) < 0.1
                            && Math.Abs(shape.Height - height) < 0.1
                            && shape.Edges.Count >= straight.Count - 1
                            && shape.Edges.All(edge =>
                                straight.Any(known => Math.Abs(known - edge) < 0.1)
                            ),
                        $"{template.Name}: {width:0.0} × {height:0.0} mm"
                    );
                    measured++;
                }
            }
        }
        measured.ShouldBeGreaterThan(8);
    }

    [TestCase("letter")]
    [TestCase("a4")]
    public void Every_sheet_carries_a_square_inch_and_five_centimetres_square(string paper)
    {
        byte[] file = Written(Curves, paper == "a4" ? PaperSize.A4 : PaperSize.Letter);
        var shapes = Shapes(file);
        using var pdf = PdfDocument.Open(file);
        for (int page = 2; page <= pdf.NumberOfPages; page++)
        {
            foreach (double side in new[] { 25.4, 50 })
            {
                shapes.ShouldContain(
                    s =>
                        s.Page == page
                        && Math.Abs(s.Width - side) < 0.02
                        && Math.Abs(s.Height - side) < 0.02,
                    $"page {page}, {side} mm"
                );
            }
        }
    }

    /// <summary>A background of 16 in stands on no page: its parts, joined by their marks, show all of it.</summary>
    [Test]
    public void Large_templates_come_in_parts_with_marks_to_join_them_by()
    {
        Manuscript large = Manuscripts.Compile(
            "large",
            """
            pattern: {title: Large, edition: 1.0.0, date: 2026-11-01, designer: Tern & Tide Patterns}
            fabrics:
              A: {name: Sand, color: "#e8dcc0"}
              B: {name: Deep, color: "#12435c"}
            blocks:
              pool:
                size: 16
                map: a
                units: {a: "quarter-circle upper-left of 14, moon on sky"}
            colorings: {L: pool sky=A moon=B}
            quilt: {setting: straight, fill: L}
            sizes: {one: {blocks: 2 x 2}}
            """
        );
        byte[] file = Written(large, PaperSize.Letter);
        using var pdf = PdfDocument.Open(file);
        var shapes = Shapes(file);
        // Each part is joined to a neighbor by two marks at each edge: circles of 12 pt.
        double circle = 12 * MillimetresInPoint;
        int marks = shapes.Count(s =>
            Math.Abs(s.Width - circle) < 0.05 && Math.Abs(s.Height - circle) < 0.05
        );
        string[] headings =
        [
            .. pdf.GetPages()
                .SelectMany(p => p.GetWords().Select(w => w.Text))
                .Where(w =>
                    w is "A1" or "B1" or "C1" or "A2" or "B2" or "C2" or "A3" or "B3" or "C3"
                ),
        ];
        headings.ShouldContain("A1");
        headings.ShouldContain("B2");
        // For two templates of 14 1/2 and 16 1/2 in in columns and rows of parts: every inner edge is marked from both sides.
        int parts = pdf.NumberOfPages - 1;
        marks.ShouldBeGreaterThanOrEqualTo(parts * 2);
        (marks % 4).ShouldBe(0);
    }
}
