using System.Collections.Immutable;
using System.Net;
using PatternPress.Booklet;
using PatternPress.Booklet.Proofreading;
using PatternPress.Booklet.Sections;
using PatternPress.Booklet.Words;
using PatternPress.Pdf;
using PatternPress.Quilting.Compiling;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Editions;
using PatternPress.Quilting.Tables;
using PatternPress.ReadBack;
using PatternPress.Source.Syntax;
using PatternPress.Tests.Booklet.Sections;
using PatternPress.Tests.Typesetting;
using PatternPress.Typesetting;

namespace PatternPress.Tests.Booklet.Proofreading;

public sealed class ProofSheetTests
{
    [TestCaseSource(typeof(Manuscripts), nameof(Manuscripts.Own))]
    public void Every_requirement_and_every_cut_stands_on_the_sheet(string id)
    {
        Compilation compilation = Compile(
            id,
            File.ReadAllText(Path.Combine(Repository.Patterns, $"{id}.quilt.yaml"))
        );
        PrintedTables tables = compilation.Tables!;
        ProofSheet sheet = SheetOf(compilation, holds: true, null);
        Document document = sheet.Compose(PaperSize.Letter).Document;
        string pages = PlainText.Of(document.Sequences.Select(s => s.Body));
        string html = WebUtility.HtmlDecode(sheet.Html());
        pages.ShouldNotContain(Labels.MissingMark);
        html.ShouldNotContain(Labels.MissingMark);
        var numbers = new NumberWords(tables.Unit, BookletTemplates.Labels);
        foreach (RequirementRow row in tables.Requirements.Fabrics)
        {
            FabricLabel fabric = tables.Fabrics.Single(f => f.Key == row.Fabric);
            foreach (RequirementCell cell in row.BySize.OfType<RequirementCell>())
            {
                string yards = numbers.Bought(cell).Replace('\u00a0', ' ');
                string how = cell.Panels is null ? "strips of " : "one fat quarter: ";
                pages.ShouldContain($"fabric {row.Fabric}, {fabric.Name} | {yards} | {how}");
                html.ShouldContain(
                    $"<th scope=\"row\">fabric {row.Fabric}, {fabric.Name}</th><td>{yards}</td>"
                );
            }
        }
        int cuts = 0;
        foreach (CutRow row in tables.Cutting.SelectMany(table => table.Rows))
        {
            foreach (CutCell cell in row.BySize.OfType<CutCell>())
            {
                pages.ShouldContain($"| cut {row.Id} | {cell.Count} of ");
                cuts++;
            }
        }
        // A box to tick before each.
        pages.Split("[box to tick]").Length.ShouldBeGreaterThan(cuts);
        html.Split("type=\"checkbox\"").Length.ShouldBeGreaterThan(cuts);

        TypesetDocument typeset = new Typesetter(TestFonts.Library).Typeset(document);
        typeset.Problems.ShouldBeEmpty();
        FileReader
            .Compare(PdfWriter.Write(typeset), document, typeset)
            .Misprints.Select(m => m.Text)
            .ShouldBeEmpty();
    }

    [Test]
    public void What_changed_what_was_found_and_a_failed_proof_are_told()
    {
        Compilation compilation = Compile(
            "harbor-lights",
            File.ReadAllText(Path.Combine(Repository.Patterns, "harbor-lights.quilt.yaml"))
        );
        Edition now = Edition.Of(compilation.Tables!, new DateOnly(2026, 11, 1));
        EditionFact bought = now.Facts.First(f => f is { Item: "buy", Size: "throw" });
        Edition before = now with
        {
            Number = "0.9.0",
            Facts = now.Facts.Replace(bought, bought with { Value = "1/8 yd" }),
        };
        string html = WebUtility.HtmlDecode(
            SheetOf(compilation, holds: false, EditionComparison.Of(before, now)).Html()
        );
        html.ShouldContain("1 printed values differ from edition 0.9.0");
        html.ShouldContain(
            $"<td>1/8 yd</td><td>{bought.Value}</td><td>run short or cut wrong</td>"
        );
        html.ShouldContain("REFUTED: throw, cutting A");
        html.ShouldContain("Print nothing before that is mended");
        html.ShouldContain("<th scope=\"row\">PP0000</th>");
        html.ShouldContain("<th scope=\"row\">the file</th><td>00ff</td>");
    }

    // Whatever a designer calls things, it stays words.
    [Test]
    public void Names_do_not_become_markup()
    {
        string yaml = File.ReadAllText(
                Path.Combine(Repository.Patterns, "harbor-lights.quilt.yaml")
            )
            .Replace("title: Harbor Lights", "title: \"<script>alert(1)</script>\"")
            .Replace("name: Ink", "name: \"<b>Ink\"");
        string html = SheetOf(Compile("p", yaml), holds: true, null).Html();
        html.ShouldNotContain("<script>");
        html.ShouldNotContain("<b>");
        html.ShouldContain("&lt;b&gt;Ink");
    }

    private static Compilation Compile(string id, string yaml) =>
        Compiler.Compile(
            id,
            SyntaxTree.Read($"{id}.quilt.yaml", yaml),
            SyntaxTree.Read("templates/house.yaml", BookletTemplates.Files["house.yaml"])
        );

    private static ProofSheet SheetOf(Compilation compilation, bool holds, EditionComparison? since)
    {
        PrintedTables tables = compilation.Tables!;
        Making making = compilation.Making!;
        ImmutableArray<string> mistakes = holds
            ? []
            : ["throw, cutting A, A1: pieces: 40 printed, but units and blocks take 48"];
        return new ProofSheet(
            new DocumentComposer(
                new Manuscript(compilation.Pattern!, compilation.Quilts, tables, compilation.Tree),
                BookletTemplates.Templates
            ),
            BookletTemplates.Templates,
            tables,
            new ProofNotes(
                making,
                holds,
                [
                    .. tables.Sizes.Select(size => new SizeNotes(
                        size.Key,
                        holds,
                        1234,
                        mistakes,
                        [("fabric A", "3 in")]
                    )),
                ],
                [new FindingNote("PP0000", "note", "a finding")],
                since,
                [("the file", "00ff")]
            )
        );
    }
}
