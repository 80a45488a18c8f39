using PatternPress.Cli;
using PatternPress.Cli.Commands;
using PatternPress.Cli.Files;
using PatternPress.Proofing;
using PatternPress.Quilting.Compiling;
using PatternPress.Typesetting;

namespace PatternPress.Tests.Cli;

/// <summary>A pattern whose proof fails becomes a marked draft; the last good files stay.</summary>
public sealed class DraftTests
{
    private string _folder = "";

    [SetUp]
    public void MakeFolder()
    {
        _folder = Directory.CreateTempSubdirectory("patternpress-").FullName;
        new Application(Quiet(), _folder).Run(["new", "meadow"]).ShouldBe(0);
    }

    [TearDown]
    public void RemoveFolder() => Directory.Delete(_folder, recursive: true);

    private static Terminal Quiet() =>
        new(new StringWriter(), new StringWriter(), Color: false, Interactive: false, Width: 100);

    private Compilation Build(Func<Compilation, ProofReport> prove)
    {
        string templates = Path.Combine(Repository.Root, "templates");
        Compilation compilation = PatternLoader.Compile(
            _folder,
            ["patterns/meadow.quilt.yaml"],
            templates
        )[0];
        return new PatternBuilder(
            Quiet(),
            TextWriter.Null,
            new TemplateLoader(_folder, templates),
            Path.Combine(_folder, "out"),
            [("letter", PaperSize.Letter)],
            [],
            new EditionFiles(_folder),
            prove
        ).Build(compilation);
    }

    [Test]
    public void A_failed_proof_writes_marked_drafts_and_leaves_the_last_good_files()
    {
        Build(PatternBuilder.Prove).HasErrors.ShouldBeFalse();
        string good = Path.Combine(_folder, "out", "meadow", "meadow-letter.pdf");
        byte[] before = File.ReadAllBytes(good);

        Compilation refuted = Build(Refuted);
        refuted.HasErrors.ShouldBeTrue();
        refuted.Diagnostics.ShouldContain(d => d.Code == "PP0901" && d.Sizes.Contains("throw"));
        File.ReadAllBytes(good).ShouldBe(before);
        string drafts = Path.Combine(_folder, "out", "meadow", "draft");
        string[] names = [.. Directory.GetFiles(drafts).Select(f => Path.GetFileName(f)!)];
        names.ShouldContain("meadow-letter.pdf");
        using (
            var pdf = UglyToad.PdfPig.PdfDocument.Open(Path.Combine(drafts, "meadow-letter.pdf"))
        )
        {
            // The mark is drawn as shapes, in a background artifact of its own.
            foreach (UglyToad.PdfPig.Content.Page page in pdf.GetPages())
            {
                page.GetMarkedContents()
                    .OfType<UglyToad.PdfPig.Content.ArtifactMarkedContentElement>()
                    .ShouldContain(
                        mark =>
                            mark.Type
                            == UglyToad
                                .PdfPig
                                .Content
                                .ArtifactMarkedContentElement
                                .ArtifactType
                                .Background,
                        $"page {page.Number}"
                    );
            }
        }

        Build(PatternBuilder.Prove).HasErrors.ShouldBeFalse();
        Directory.Exists(drafts).ShouldBeFalse("drafts of what is mended would mislead");
    }

    // As if the planner had left a piece out.
    private static ProofReport Refuted(Compilation compilation)
    {
        ProofReport report = PatternBuilder.Prove(compilation);
        SizeProof throwSize = report.Sizes.Single(size => size.Size == "throw");
        var mistake = new Mistake(
            MistakeKind.Short,
            ProofStep.Cut,
            "throw",
            "cutting A",
            "A1",
            "pieces",
            "40",
            "units and blocks take 48"
        );
        return report with
        {
            Sizes = report.Sizes.Replace(throwSize, throwSize with { Mistakes = [mistake] }),
        };
    }
}
