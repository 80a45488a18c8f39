using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using PatternPress.Booklet;
using PatternPress.Booklet.Words;
using PatternPress.Cli.Files;
using PatternPress.Pdf;
using PatternPress.Quilting.Compiling;
using PatternPress.Typesetting;
using UglyToad.PdfPig;

namespace PatternPress.Benchmarks.Documents;

/// <summary>
/// The booklet of harbor-lights set by us and, the same text and tables, by a general-purpose document compiler, in turn
/// in one run: pages, bytes, and time per page, cold as a whole process and warm.
/// </summary>
internal static class DocumentBenchmark
{
    private const int Runs = 9;
    private const string Id = "harbor-lights";

    /// <summary>Sets the booklet once, as a process of its own does.</summary>
    public static int SetOnce(string repository, string output)
    {
        File.WriteAllBytes(output, PdfWriter.Write(Typeset(Load(repository))));
        return 0;
    }

    /// <param name="repository">The repository's folder.</param>
    /// <param name="program">A published program to time as well; null for none.</param>
    public static int Run(string repository, string? program)
    {
        string work = Directory.CreateTempSubdirectory("patternpress-bench-").FullName;
        try
        {
            Loaded loaded = Load(repository);
            string source = Path.Combine(work, "booklet.typ"),
                ours = Path.Combine(work, "ours.pdf"),
                theirs = Path.Combine(work, "theirs.pdf"),
                fonts = Path.Combine(repository, "templates", "fonts");
            File.WriteAllText(source, TypstMarkup.Of(Compose(loaded)));
            Console.WriteLine(
                $"{Id}, booklet on Letter; {Runs} runs each in turn, {Environment.ProcessorCount} processors, {RuntimeInformation.FrameworkDescription}"
            );
            var typst = TypstCompiler.Install(Path.Combine(work, "typst"), out string reason);
            if (typst is null)
            {
                Console.WriteLine(
                    $"{TypstCompiler.Package} is not to be had, so only our own times are shown: {reason}"
                );
            }
            var times = new SortedDictionary<string, List<double>>(StringComparer.Ordinal);
            for (int run = 0; run < Runs; run++)
            {
                Add("a cold, ours on the runtime", Cold(repository, ours));
                if (program is not null)
                {
                    Add(
                        "b cold, ours published: the whole build",
                        Build(program, repository, work)
                    );
                }
                if (typst is not null)
                {
                    Add(
                        "c cold, typst",
                        typst.Set(source, fonts, theirs, 1).Whole.TotalMilliseconds
                    );
                }
            }
            for (int run = 0; run < Runs + 3; run++)
            {
                long began = Stopwatch.GetTimestamp();
                _ = PdfWriter.Write(Typeset(loaded));
                if (run >= 3)
                {
                    Add("d warm, ours", Stopwatch.GetElapsedTime(began).TotalMilliseconds);
                }
            }
            foreach (
                double round in typst?.Set(source, fonts, theirs, Runs + 3).Rounds.Skip(3) ?? []
            )
            {
                Add("e warm, typst", round);
            }
            (int Pages, long Bytes) our = Measured(ours),
                their = typst is null ? (0, 0) : Measured(theirs);
            Console.WriteLine(
                $"{"", -42} {"pages", 6} {"bytes", 9} {"a page", 8} {"min", 9} {"median", 9} {"median a page", 14}"
            );
            foreach ((string name, List<double> all) in times)
            {
                (int pages, long bytes) = name.EndsWith("typst", StringComparison.Ordinal)
                    ? their
                    : our;
                double[] sorted = [.. all.Order()];
                double median = sorted[sorted.Length / 2];
                Console.WriteLine(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{name[2..], -42} {pages, 6} {bytes, 9:N0} {bytes / pages, 8:N0} {sorted[0], 6:0} ms {median, 6:0} ms {median / pages, 11:0.00} ms"
                    )
                );
            }
            Console.WriteLine(
                """
                Ours is read, worked out, composed, laid out, drawn with all its figures, tagged and written; the other sets text
                and tables only, from markup made beforehand. The whole build also proves every size, writes the other documents
                and reads all of them back.
                """
            );
            return 0;

            void Add(string name, double milliseconds)
            {
                if (!times.TryGetValue(name, out List<double>? all))
                {
                    times.Add(name, all = []);
                }
                all.Add(milliseconds);
            }
        }
        finally
        {
            Directory.Delete(work, recursive: true);
        }
    }

    private sealed record Loaded(Manuscript Manuscript, Templates Templates, Typesetter Typesetter);

    private static Loaded Load(string repository)
    {
        string templates = Path.Combine(repository, "templates");
        Compilation compilation = PatternLoader.Compile(
            repository,
            [$"patterns/{Id}.quilt.yaml"],
            templates
        )[0];
        var loader = new TemplateLoader(repository, templates);
        return new Loaded(
            new Manuscript(
                compilation.Pattern!,
                compilation.Quilts,
                compilation.Tables!,
                compilation.Tree
            ),
            loader.Words(compilation.Pattern!.Info.Language),
            new Typesetter(loader.Fonts())
        );
    }

    private static Document Compose(Loaded loaded)
    {
        var composer = new DocumentComposer(loaded.Manuscript, loaded.Templates);
        return composer
            .Compose(composer.Plans.Single(plan => plan.Key == "booklet"), PaperSize.Letter)
            .Document;
    }

    private static TypesetDocument Typeset(Loaded loaded) =>
        loaded.Typesetter.Typeset(Compose(loaded));

    private static double Cold(string repository, string output) =>
        Checked(
            Environment.ProcessPath!,
            Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet"
                ? [Environment.GetCommandLineArgs()[0], "set-booklet", output]
                : ["set-booklet", output],
            repository
        );

    private static double Build(string program, string repository, string work) =>
        Checked(
            program,
            [
                "build",
                $"patterns/{Id}.quilt.yaml",
                "--paper",
                "letter",
                "--output",
                Path.Combine(work, "out"),
            ],
            repository
        );

    private static double Checked(string program, string[] arguments, string folder)
    {
        (int code, string said, TimeSpan whole) = TypstCompiler.Run(program, arguments, folder);
        return code == 0
            ? whole.TotalMilliseconds
            : throw new InvalidOperationException($"{program} ended with {code}: {said}");
    }

    private static (int Pages, long Bytes) Measured(string file)
    {
        using PdfDocument pdf = PdfDocument.Open(file);
        return (pdf.NumberOfPages, new FileInfo(file).Length);
    }
}
