using System.Collections.Immutable;
using System.Text;
using PatternPress.Booklet;
using PatternPress.Booklet.Words;
using PatternPress.Cli.Files;
using PatternPress.Pdf;
using PatternPress.Proofing;
using PatternPress.Quilting.Compiling;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;
using PatternPress.ReadBack;
using PatternPress.Source.Diagnostics;
using PatternPress.Typesetting;

namespace PatternPress.Cli.Commands;

/// <summary>
/// Builds patterns: proves the tables, composes and writes the documents, reads them again, and only then moves all into
/// place. Where the proof fails, drafts with a mark on every page are written aside.
/// </summary>
/// <param name="news">For what has been done.</param>
/// <param name="also">Names of documents to make that are made on request only; "all" for every one.</param>
/// <param name="prove">Puts a compilation's tables to the test.</param>
internal sealed class PatternBuilder(
    Terminal terminal,
    TextWriter news,
    TemplateLoader loader,
    string output,
    (string Name, PaperSize Size)[] papers,
    string[] also,
    EditionFiles editions,
    Func<Compilation, ProofReport> prove
)
{
    /// <summary>Where drafts go, below the pattern's own folder.</summary>
    public const string DraftFolder = "draft";

    private readonly Lazy<Typesetter> _typesetter = new(() => new Typesetter(loader.Fonts()));

    /// <summary>Asks for every document.</summary>
    public const string All = "all";

    /// <summary>The proof that the program has.</summary>
    public static ProofReport Prove(Compilation compilation) =>
        Proof.Prove(compilation.Tables!, compilation.Quilts);

    /// <summary>Builds one pattern; with errors in it nothing is written and the last good files stay.</summary>
    /// <returns>The compilation with what proof, composing, laying out and reading again found.</returns>
    public Compilation Build(Compilation compilation)
    {
        if (compilation.Tables is not { } tables || compilation.Pattern is not { } pattern)
        {
            return compilation;
        }
        Progress($"proving {compilation.Id}");
        ProofReport proof = prove(compilation);
        Progress($"building {compilation.Id}");
        Templates templates = loader.Words(pattern.Info.Language);
        CheckNames(templates);
        var manuscript = new Manuscript(pattern, compilation.Quilts, tables, compilation.Tree);
        BuiltFile[] files = Files(compilation.Id, manuscript, templates, draft: !proof.Holds);
        Compilation result = compilation with
        {
            Diagnostics =
            [
                .. compilation.Diagnostics,
                .. EditionFindings.Of(compilation, editions),
                .. templates.Diagnostics,
                // The same words stand in several documents: one finding is enough.
                .. files
                    .SelectMany(file => file.Diagnostics)
                    .DistinctBy(d => (d.Code, d.Primary.Span, d.Title, d.Text)),
            ],
        };
        string folder = Path.Combine(output, compilation.Id);
        if (!proof.Holds)
        {
            if (!result.HasErrors)
            {
                WriteDrafts(folder, compilation.Id, files);
            }
            return result with
            {
                Diagnostics = [.. result.Diagnostics, .. ProofFindings.Of(proof, pattern.File)],
            };
        }
        if (!result.HasErrors)
        {
            Write(folder, compilation.Id, files, tables);
            news.WriteLine(
                $"proved {compilation.Id}: {proof.Checked:N0} things compared in {proof.Sizes.Length} sizes; {files.Sum(file => file.Compared):N0} pieces of text read back"
            );
        }
        return result;
    }

    private BuiltFile[] Files(string id, Manuscript manuscript, Templates templates, bool draft)
    {
        var composer = new DocumentComposer(manuscript, templates);
        var known = new Lazy<KnownNumbers>(() => KnownNumbers.Of(manuscript, templates));
        var options = new PdfOptions { DraftMark = draft ? templates.Labels["draft"] : null };
        string file = manuscript.Pattern.File;
        return
        [
            .. composer
                .Plans.Where(plan => Wanted(plan) && plan.IsNeeded(manuscript.Tables))
                .SelectMany(plan => papers.Select(paper => (Plan: plan, Paper: paper)))
                .AsParallel()
                .AsOrdered()
                .Select(job =>
                {
                    string suffix = job.Plan.Suffix.Length == 0 ? "" : $"-{job.Plan.Suffix}";
                    string name = $"{id}{suffix}-{job.Paper.Name}.pdf";
                    Printing printing = job.Plan.Printing;
                    ComposedDocument composed = composer.Compose(
                        job.Plan,
                        printing.PageOf(job.Paper.Size)
                    );
                    TypesetDocument typeset = _typesetter.Value.Typeset(composed.Document);
                    PdfOptions inks = options with { Greyscale = printing.BlackOnly };
                    byte[] bytes = PdfWriter.Write(typeset, inks);
                    ReadBackReport report = FileReader.Compare(bytes, composed.Document, typeset);
                    // What is read back are the pages in their order; then they are placed on sheets for the printer.
                    bytes = PrintSheets.Write(typeset, printing, job.Paper.Size, inks) ?? bytes;
                    return new BuiltFile(
                        name,
                        bytes,
                        report.Compared,
                        [
                            .. composed.Diagnostics,
                            .. typeset.Problems.Select(p => LayoutFindings.Found(p, name, file)),
                            .. ReadBackFindings.Of(report, typeset, known.Value, name, manuscript),
                        ]
                    );
                }),
        ];
    }

    private void CheckNames(Templates templates)
    {
        foreach (string name in also)
        {
            if (name != All && templates.Documents.All(plan => plan.Key != name))
            {
                throw new CannotRunException(
                    $"there is no document called {name} for --also; documents.yaml has {string.Join(", ", templates.Documents.Select(plan => plan.Key))}"
                );
            }
        }
    }

    private bool Wanted(DocumentPlan plan) =>
        !plan.OnRequest || also.Contains(plan.Key) || also.Contains(All);

    private void Write(string folder, string id, BuiltFile[] documents, PrintedTables tables)
    {
        Directory.CreateDirectory(folder);
        using var files = new OutputFolder(folder);
        foreach (BuiltFile document in documents)
        {
            files.Write(document.Name, document.Bytes);
        }
        files.Write($"{id}-tables.json", TablesJson.Of(tables));
        files.Write($"{id}-tables.csv", Encoding.UTF8.GetBytes(TablesCsv.Of(tables)));
        files.Write($"{id}-tables.txt", Encoding.UTF8.GetBytes(TablesText.Of(tables)));
        files.Commit();
        RemoveDrafts(folder);
        news.WriteLine(
            $"built {id}: {documents.Length} PDFs in {Path.Combine(Path.GetFileName(output), id)}"
        );
    }

    private void WriteDrafts(string folder, string id, BuiltFile[] documents)
    {
        string drafts = Path.Combine(folder, DraftFolder);
        Directory.CreateDirectory(drafts);
        using var files = new OutputFolder(drafts);
        foreach (BuiltFile document in documents)
        {
            files.Write(document.Name, document.Bytes);
        }
        files.Commit();
        news.WriteLine(
            $"drafts of {id}, not to be given away: {documents.Length} PDFs in {Path.Combine(Path.GetFileName(output), id, DraftFolder)}"
        );
    }

    // Drafts of what has been mended since would only mislead.
    private static void RemoveDrafts(string folder)
    {
        string drafts = Path.Combine(folder, DraftFolder);
        if (!Directory.Exists(drafts))
        {
            return;
        }
        foreach (string draft in Directory.EnumerateFiles(drafts, "*.pdf"))
        {
            File.Delete(draft);
        }
        if (!Directory.EnumerateFileSystemEntries(drafts).Any())
        {
            Directory.Delete(drafts);
        }
    }

    private void Progress(string text)
    {
        if (terminal.Interactive)
        {
            terminal.Error.WriteLine(text);
        }
    }

    private sealed record BuiltFile(
        string Name,
        byte[] Bytes,
        int Compared,
        ImmutableArray<Diagnostic> Diagnostics
    );
}
