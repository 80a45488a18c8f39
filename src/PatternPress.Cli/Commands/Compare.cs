using System.CommandLine;
using System.Text;
using PatternPress.Booklet;
using PatternPress.Booklet.Editions;
using PatternPress.Booklet.Words;
using PatternPress.Cli.Files;
using PatternPress.Cli.Messages;
using PatternPress.Pdf;
using PatternPress.Quilting.Compiling;
using PatternPress.Quilting.Editions;
using PatternPress.Typesetting;

namespace PatternPress.Cli.Commands;

/// <summary>
/// <c>compare</c>: sets two editions of a pattern side by side, says which changes hurt makers who hold the older one, and
/// writes the notice for them.
/// </summary>
internal static class Compare
{
    /// <summary>Of changes that need no correction so many are told without <c>--all</c>.</summary>
    private const int Told = 10;

    public static Command Command(Terminal terminal, string directory)
    {
        var pattern = new Argument<string>("pattern") { Description = "The pattern's file." };
        var old = new Argument<string?>("older")
        {
            Description =
                "The number of a released edition, or a git revision. Without it: the edition released last.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var now = new Argument<string?>("newer")
        {
            Description = "The same. Without it: the pattern as it stands.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var all = new Option<bool>("--all")
        {
            Description = "Tells also changes that hurt nobody.",
        };
        Option<string> output = CommonOptions.Output();
        Option<string> paper = Papers.Option();
        Option<string?> templates = CommonOptions.Templates();
        var command = new Command(
            "compare",
            "Sets two editions side by side and writes the notice for makers who hold the older one."
        )
        {
            pattern,
            old,
            now,
            all,
            output,
            paper,
            templates,
        };
        command.SetAction(parsed =>
        {
            string file = PatternFiles.Find(directory, [parsed.GetValue(pattern)!])[0];
            var sources = new EditionSources(
                directory,
                file,
                TemplateFolder.Find(directory, parsed.GetValue(templates))
            );
            if (!sources.IsSound)
            {
                Report.Write(terminal, MessageFormats.Default, [sources.Current]);
                return ExitCode.Errors;
            }
            var (before, after) = sources.Of(parsed.GetValue(old), parsed.GetValue(now));
            EditionComparison comparison = EditionComparison.Of(before.Edition, after.Edition);
            Tell(terminal.Output, comparison, before.Name, after.Name, parsed.GetValue(all));
            if (!comparison.Changes.IsEmpty)
            {
                WriteNotice(
                    terminal,
                    directory,
                    sources,
                    comparison,
                    $"{before.Slug}-to-{after.Slug}",
                    parsed.GetValue(output)!,
                    Papers.Of(parsed.GetValue(paper)!)
                );
            }
            return ExitCode.Clean;
        });
        return command;
    }

    private static void Tell(
        TextWriter output,
        EditionComparison comparison,
        string before,
        string after,
        bool all
    )
    {
        output.WriteLine(
            comparison.Changes.IsEmpty
                ? $"{comparison.New.Pattern}: {before} and {after} print the same"
                : $"{comparison.New.Pattern}, {before} and {after}: {comparison.Changes.Length} printed values differ"
        );
        foreach (
            IGrouping<ChangeEffect, EditionChange> group in comparison.Changes.GroupBy(change =>
                change.Effect
            )
        )
        {
            output.WriteLine();
            output.WriteLine(
                group.Key switch
                {
                    ChangeEffect.Hurts => $"hurts makers who hold {before}:",
                    ChangeEffect.Spends =>
                        $"makers who hold {before} buy, cut or make more than need be:",
                    ChangeEffect.Alters =>
                        $"another quilt ({string.Join(", ", comparison.Altered)}); {before} still makes the older one:",
                    _ => "hurts nobody (another way to the same quilt, other words, sizes added):",
                }
            );
            int shown = all || group.Key == ChangeEffect.Hurts ? int.MaxValue : Told;
            foreach (EditionChange change in group.Take(shown))
            {
                output.WriteLine($"  {change.Text}");
            }
            if (group.Count() > shown)
            {
                output.WriteLine($"  and {group.Count() - shown} more (--all tells them)");
            }
        }
    }

    private static void WriteNotice(
        Terminal terminal,
        string directory,
        EditionSources sources,
        EditionComparison comparison,
        string name,
        string output,
        (string Name, PaperSize Size)[] papers
    )
    {
        Compilation current = sources.Current;
        var loader = new TemplateLoader(directory, sources.Templates);
        Templates templates = loader.Words(current.Pattern!.Info.Language);
        var composer = new DocumentComposer(
            new Manuscript(current.Pattern, current.Quilts, current.Tables!, current.Tree),
            templates
        );
        var erratum = new Erratum(composer, templates.Labels, comparison);
        string id = current.Id;
        string folder = Path.Combine(directory, output, id);
        Directory.CreateDirectory(folder);
        using var files = new OutputFolder(folder);
        string start = $"{id}-erratum-{name}";
        files.Write($"{start}.md", Encoding.UTF8.GetBytes(erratum.Markdown()));
        var typesetter = new Typesetter(loader.Fonts());
        foreach ((string paper, PaperSize size) in papers)
        {
            files.Write(
                $"{start}-{paper}.pdf",
                PdfWriter.Write(typesetter.Typeset(erratum.Compose(size).Document))
            );
        }
        files.Commit();
        terminal.Output.WriteLine();
        if (comparison.Old.Number == comparison.New.Number)
        {
            terminal.Output.WriteLine(
                $"both bear the edition number {comparison.New.Number}: give the newer another before makers see the notice"
            );
        }
        terminal.Output.WriteLine(
            $"wrote the notice {Path.Combine(output, id, start).Replace('\\', '/')}.md and as PDF"
        );
    }
}
