using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using PatternPress.Booklet;
using PatternPress.Booklet.Proofreading;
using PatternPress.Booklet.Words;
using PatternPress.Cli.Files;
using PatternPress.Cli.Messages;
using PatternPress.Pdf;
using PatternPress.Proofing;
using PatternPress.Quilting.Compiling;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Editions;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;
using PatternPress.Source.Diagnostics;
using PatternPress.Typesetting;

namespace PatternPress.Cli.Commands;

/// <summary>
/// <c>proof</c>: proves patterns and writes the sheet for whoever proofreads them, with every number's derivation.
/// </summary>
internal static class ProofCommand
{
    public static Command Command(Terminal terminal, string directory)
    {
        Argument<string[]> paths = CommonOptions.Paths();
        Option<string> messages = CommonOptions.Messages();
        Option<string?> templates = CommonOptions.Templates();
        Option<string> output = CommonOptions.Output();
        Option<string> paper = Papers.Option("letter");
        var command = new Command(
            "proof",
            "Proves patterns and writes the proof sheet: every printed number with its derivation, to tick."
        )
        {
            paths,
            output,
            paper,
            messages,
            templates,
        };
        command.SetAction(parsed =>
        {
            IReadOnlyList<string> files = PatternFiles.Find(directory, parsed.GetValue(paths)!);
            string folder = TemplateFolder.Find(directory, parsed.GetValue(templates));
            var writer = new SheetWriter(
                parsed.GetValue(messages) == MessageFormats.Default
                    ? terminal.Output
                    : terminal.Error,
                directory,
                folder,
                parsed.GetValue(output)!,
                Papers.Of(parsed.GetValue(paper)!)
            );
            IReadOnlyList<Compilation> proved =
            [
                .. PatternLoader.Compile(directory, files, folder).Select(writer.Write),
            ];
            Report.Write(terminal, parsed.GetValue(messages)!, proved);
            return proved.Any(c => c.HasErrors) ? ExitCode.Errors : ExitCode.Clean;
        });
        return command;
    }

    private sealed class SheetWriter(
        TextWriter news,
        string directory,
        string templates,
        string output,
        (string Name, PaperSize Size)[] papers
    )
    {
        private readonly TemplateLoader _loader = new(directory, templates);
        private readonly EditionFiles _editions = new(directory);

        public Compilation Write(Compilation compilation)
        {
            if (compilation is not { Tables: { } tables, Pattern: { } pattern, Making: { } making })
            {
                return compilation;
            }
            ProofReport proof = PatternBuilder.Prove(compilation);
            ImmutableArray<Diagnostic> found =
            [
                .. compilation.Diagnostics,
                .. EditionFindings.Of(compilation, _editions),
                .. ProofFindings.Of(proof, pattern.File),
            ];
            Templates words = _loader.Words(pattern.Info.Language);
            var composer = new DocumentComposer(
                new Manuscript(pattern, compilation.Quilts, tables, compilation.Tree),
                words
            );
            var sheet = new ProofSheet(
                composer,
                words,
                tables,
                new ProofNotes(
                    making,
                    proof.Holds,
                    [.. proof.Sizes.Select(size => NotesOf(size, tables.Unit))],
                    [.. found.Select(NoteOf)],
                    Since(pattern, tables),
                    Fingerprints.Of(directory, compilation, templates)
                )
            );
            Write(compilation.Id, sheet, words, draft: !proof.Holds);
            return compilation with { Diagnostics = [.. found, .. words.Diagnostics] };
        }

        private void Write(string id, ProofSheet sheet, Templates words, bool draft)
        {
            string folder = Path.Combine(directory, output, id);
            Directory.CreateDirectory(folder);
            using var files = new OutputFolder(folder);
            files.Write($"{id}-proof.html", Encoding.UTF8.GetBytes(sheet.Html()));
            var options = new PdfOptions { DraftMark = draft ? words.Labels["draft"] : null };
            var typesetter = new Typesetter(_loader.Fonts());
            foreach ((string paper, PaperSize size) in papers)
            {
                files.Write(
                    $"{id}-proof-{paper}.pdf",
                    PdfWriter.Write(typesetter.Typeset(sheet.Compose(size).Document), options)
                );
            }
            files.Commit();
            news.WriteLine(
                $"wrote the proof sheet {Path.Combine(output, id, id).Replace('\\', '/')}-proof.html and as PDF"
            );
        }

        // The edition in hand may have been released already; what makers hold is then the one before or the same.
        private EditionComparison? Since(Pattern pattern, PrintedTables tables) =>
            _editions.Released(pattern.File) is [.., var last]
                ? EditionComparison.Of(last, Edition.Of(tables, pattern.Info.Date))
                : null;

        private static SizeNotes NotesOf(SizeProof size, LengthUnit unit) =>
            new(
                size.Size,
                size.Verdict != Verdict.Refuted,
                size.Checked,
                [.. size.Mistakes.Select(mistake => mistake.Text)],
                [
                    .. size.Remainders.Select(left =>
                        (
                            left.What,
                            left.Count > 0
                                ? left.Count.ToString(CultureInfo.InvariantCulture)
                                : DerivationText.Value(new Quantity.Measure(left.Length), unit)
                        )
                    ),
                ]
            );

        private static FindingNote NoteOf(Diagnostic found)
        {
            string sizes = found.Sizes.IsEmpty ? "" : $" ({string.Join(", ", found.Sizes)})";
            string text = found.Text.Length == 0 ? "" : $": {found.Text}";
            string place = found.Primary.Span.IsNone
                ? ""
                : $", line {found.Primary.Span.StartLine}";
            return new FindingNote(
                found.Code,
                found.Severity.ToString().ToLowerInvariant(),
                $"{found.Title}{sizes}{place}{text}"
            );
        }
    }
}
