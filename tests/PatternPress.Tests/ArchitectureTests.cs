using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace PatternPress.Tests;

/// <summary>Holds the projects to what may know what.</summary>
public sealed partial class ArchitectureTests
{
    private static readonly Dictionary<string, string[]> _allowed = new()
    {
        ["Source"] = [],
        ["Typesetting"] = [],
        ["Imaging"] = [],
        ["Quilting"] = ["Source"],
        ["Proofing"] = ["Quilting"],
        ["Pdf"] = ["Typesetting"],
        ["ReadBack"] = ["Typesetting"],
        ["Booklet"] = ["Quilting", "Typesetting"],
        ["Cli"] = ["Booklet", "Imaging", "Pdf", "Proofing", "ReadBack"],
    };

    private static IEnumerable<string> Projects() => _allowed.Keys;

    private static string FolderOf(string project) =>
        Path.Combine(Repository.Root, "src", $"PatternPress.{project}");

    private static IEnumerable<string> SourcesOf(string project) =>
        Directory
            .EnumerateFiles(FolderOf(project), "*.cs", SearchOption.AllDirectories)
            .Where(f =>
                !f.Contains(
                    $"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}",
                    StringComparison.Ordinal
                )
            );

    [TestCaseSource(nameof(Projects))]
    public void A_project_references_only_what_it_may_know(string project)
    {
        XDocument file = XDocument.Load(
            Path.Combine(FolderOf(project), $"PatternPress.{project}.csproj")
        );
        file.Descendants("ProjectReference")
            .Select(r =>
                Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/'))
            )
            .Select(name => name["PatternPress.".Length..])
            .ShouldBe(_allowed[project], ignoreOrder: true);
    }

    [Test]
    public void The_list_names_every_project() =>
        Directory
            .EnumerateDirectories(Path.Combine(Repository.Root, "src"))
            .Select(d => Path.GetFileName(d)!["PatternPress.".Length..])
            .ShouldBe(_allowed.Keys, ignoreOrder: true);

    [TestCaseSource(nameof(Projects))]
    public void Only_the_command_line_touches_console_files_environment_and_clock(string project)
    {
        if (project == "Cli")
        {
            return;
        }
        SourcesOf(project)
            .SelectMany(file =>
                File.ReadLines(file)
                    .Where(line =>
                        !line.TrimStart().StartsWith("//", StringComparison.Ordinal)
                        && OuterWorld().IsMatch(line)
                    )
                    .Select(line => $"{Path.GetFileName(file)}: {line.Trim()}")
            )
            .ShouldBeEmpty();
    }

    [Test]
    public void The_paper_half_does_not_speak_of_quilts() =>
        SourcesOf("Typesetting")
            .Concat(SourcesOf("Pdf"))
            .SelectMany(file =>
                File.ReadLines(file)
                    .Where(line => Trade().IsMatch(line))
                    .Select(line => $"{file}: {line.Trim()}")
            )
            .ShouldBeEmpty();

    [Test]
    public void The_trade_half_does_not_speak_of_paper() =>
        SourcesOf("Quilting")
            .SelectMany(file =>
                File.ReadLines(file)
                    .Where(line => Paper().IsMatch(line))
                    .Select(line => $"{file}: {line.Trim()}")
            )
            .ShouldBeEmpty();

    [Test]
    public void One_project_alone_knows_the_pdf_library() =>
        Projects()
            .Where(p =>
                File.ReadAllText(Path.Combine(FolderOf(p), $"PatternPress.{p}.csproj"))
                    .Contains("PDFsharp", StringComparison.Ordinal)
            )
            .ShouldBe(["Pdf"]);

    [Test]
    public void One_project_alone_knows_the_imaging_library() =>
        Projects()
            .Where(p =>
                File.ReadAllText(Path.Combine(FolderOf(p), $"PatternPress.{p}.csproj"))
                    .Contains("SkiaSharp", StringComparison.Ordinal)
            )
            .ShouldBe(["Imaging"]);

    [GeneratedRegex(
        @"\b(Console|File|Directory|Environment)\.[A-Z]|\bDateTime(Offset)?\.(Now|UtcNow|Today)|\bStopwatch\b|\bGuid\.NewGuid|\bnew Random\b"
    )]
    private static partial Regex OuterWorld();

    [GeneratedRegex(@"\b([Qq]uilt|[Ff]abric|[Yy]ardage|[Bb]atting)", RegexOptions.None)]
    private static partial Regex Trade();

    [GeneratedRegex(@"PdfSharp|\bPDFsharp\b|PatternPress\.Typesetting|\bPoints\b")]
    private static partial Regex Paper();
}
