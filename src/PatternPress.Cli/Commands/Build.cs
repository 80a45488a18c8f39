using System.Collections.Concurrent;
using System.CommandLine;
using System.Text;
using PatternPress.Booklet;
using PatternPress.Booklet.Words;
using PatternPress.Cli.Files;
using PatternPress.Cli.Messages;
using PatternPress.Pdf;
using PatternPress.Proofing;
using PatternPress.Quilting.Compiling;
using PatternPress.Quilting.Tables;
using PatternPress.Source.Diagnostics;
using PatternPress.Typesetting;

namespace PatternPress.Cli.Commands;

/// <summary><c>build</c>: checks patterns and writes their documents and tables.</summary>
internal static class Build
{
    private static readonly (string Name, PaperSize Size)[] _papers =
    [
        ("letter", PaperSize.Letter),
        ("a4", PaperSize.A4),
    ];

    public static Command Command(Terminal terminal, string directory)
    {
        Argument<string[]> paths = CommonOptions.Paths();
        Option<string> messages = CommonOptions.Messages();
        Option<string?> templates = CommonOptions.Templates();
        var output = new Option<string>("--output")
        {
            Description = "The folder to write to; each pattern gets a folder of its own in it.",
            DefaultValueFactory = _ => "out",
        };
        var paper = new Option<string>("--paper")
        {
            Description = "The paper to build for.",
            DefaultValueFactory = _ => "both",
        };
        paper.AcceptOnlyFromAmong([.. _papers.Select(p => p.Name), "both"]);
        var command = new Command(
            "build",
            "Checks patterns and writes their booklets, charts and tables."
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
            // A format for programs has the output to itself.
            TextWriter news =
                parsed.GetValue(messages) == MessageFormats.Default
                    ? terminal.Output
                    : terminal.Error;
            var builder = new PatternBuilder(
                terminal,
                news,
                new TemplateLoader(directory, folder),
                Path.Combine(directory, parsed.GetValue(output)!),
                [
                    .. _papers.Where(p =>
                        parsed.GetValue(paper) is var wanted
                        && (wanted == "both" || wanted == p.Name)
                    ),
                ]
            );
            IReadOnlyList<Compilation> built =
            [
                .. PatternLoader.Compile(directory, files, folder).Select(builder.Build),
            ];
            Report.Write(terminal, parsed.GetValue(messages)!, built);
            return built.Any(c => c.HasErrors) ? ExitCode.Errors : ExitCode.Clean;
        });
        return command;
    }

    private sealed class PatternBuilder(
        Terminal terminal,
        TextWriter news,
        TemplateLoader loader,
        string output,
        (string Name, PaperSize Size)[] papers
    )
    {
        private readonly Lazy<Typesetter> _typesetter = new(() => new Typesetter(loader.Fonts()));

        /// <summary>Builds one pattern; with errors in it nothing is written and the last good files stay.</summary>
        /// <returns>The compilation with what composing and laying out found.</returns>
        public Compilation Build(Compilation compilation)
        {
            if (compilation.Tables is not { } tables || compilation.Pattern is not { } pattern)
            {
                return compilation;
            }
            Progress($"proving {compilation.Id}");
            ProofReport proof = Proof.Prove(tables, compilation.Quilts);
            if (!proof.Holds)
            {
                return compilation with
                {
                    Diagnostics =
                    [
                        .. compilation.Diagnostics,
                        .. ProofFindings.Of(proof, pattern.File),
                    ],
                };
            }
            Progress($"building {compilation.Id}");
            Templates templates = loader.Words(pattern.Info.Language);
            var composer = new DocumentComposer(
                new Manuscript(pattern, compilation.Quilts, tables, compilation.Tree),
                templates
            );
            var findings = new ConcurrentBag<(int Order, IEnumerable<Diagnostic> Found)>();
            (DocumentPlan Plan, string Paper, PaperSize Size, int Order)[] jobs =
            [
                .. composer
                    .Plans.SelectMany(plan => papers.Select(p => (plan, p.Name, p.Size)))
                    .Select((job, order) => (job.plan, job.Name, job.Size, order)),
            ];
            (string Name, byte[] Bytes)[] files =
            [
                .. jobs.AsParallel()
                    .AsOrdered()
                    .Select(job =>
                    {
                        string suffix = job.Plan.Suffix.Length == 0 ? "" : $"-{job.Plan.Suffix}";
                        string name = $"{compilation.Id}{suffix}-{job.Paper}.pdf";
                        ComposedDocument composed = composer.Compose(job.Plan, job.Size);
                        TypesetDocument typeset = _typesetter.Value.Typeset(composed.Document);
                        findings.Add(
                            (
                                job.Order,
                                composed.Diagnostics.Concat(
                                    typeset.Problems.Select(p =>
                                        LayoutFindings.Found(p, name, pattern.File)
                                    )
                                )
                            )
                        );
                        return (name, PdfWriter.Write(typeset));
                    }),
            ];
            List<Diagnostic> all =
            [
                .. compilation.Diagnostics,
                .. templates.Diagnostics,
                // The same words stand in several documents: one finding is enough.
                .. findings
                    .OrderBy(f => f.Order)
                    .SelectMany(f => f.Found)
                    .DistinctBy(d => (d.Code, d.Primary.Span, d.Title, d.Text)),
            ];
            Compilation result = compilation with { Diagnostics = [.. all] };
            if (!result.HasErrors)
            {
                Write(compilation.Id, files, tables);
                news.WriteLine(
                    $"proved {compilation.Id}: {proof.Checked:N0} things compared in {proof.Sizes.Length} sizes"
                );
            }
            return result;
        }

        private void Write(string id, (string Name, byte[] Bytes)[] documents, PrintedTables tables)
        {
            string folder = Path.Combine(output, id);
            Directory.CreateDirectory(folder);
            using var files = new OutputFolder(folder);
            foreach ((string name, byte[] bytes) in documents)
            {
                files.Write(name, bytes);
            }
            files.Write($"{id}-tables.json", TablesJson.Of(tables));
            files.Write($"{id}-tables.csv", Encoding.UTF8.GetBytes(TablesCsv.Of(tables)));
            files.Write($"{id}-tables.txt", Encoding.UTF8.GetBytes(TablesText.Of(tables)));
            files.Commit();
            news.WriteLine(
                $"built {id}: {documents.Length} PDFs in {Path.Combine(Path.GetFileName(output), id)}"
            );
        }

        private void Progress(string text)
        {
            if (terminal.Interactive)
            {
                terminal.Error.WriteLine(text);
            }
        }
    }
}
