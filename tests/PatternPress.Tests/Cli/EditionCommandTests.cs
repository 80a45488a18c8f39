using System.Diagnostics;
using PatternPress.Cli;
using UglyToad.PdfPig;

namespace PatternPress.Tests.Cli;

/// <summary>Releasing, changing and comparing a pattern, as its designer would.</summary>
public sealed class EditionCommandTests
{
    private const string Pattern = "patterns/meadow.quilt.yaml";
    private const string Released = "patterns/meadow.0.1.0.edition.txt";

    private string _folder = "";

    [SetUp]
    public void MakeFolder()
    {
        _folder = Directory.CreateTempSubdirectory("patternpress-").FullName;
        Run("new", "meadow").Code.ShouldBe(0);
    }

    [TearDown]
    public void RemoveFolder()
    {
        // git writes its objects read-only.
        foreach (string file in Directory.EnumerateFiles(_folder, "*", SearchOption.AllDirectories))
        {
            File.SetAttributes(file, FileAttributes.Normal);
        }
        Directory.Delete(_folder, recursive: true);
    }

    private (int Code, string Output, string Error) Run(params string[] arguments)
    {
        var output = new StringWriter();
        var error = new StringWriter();
        var terminal = new Terminal(output, error, Color: false, Interactive: false, Width: 100);
        string[] all =
            arguments[0] == "new"
                ? arguments
                :
                [
                    .. arguments,
                    "--templates",
                    Path.Combine(Repository.Root, "templates"),
                    "--paper",
                    "letter",
                ];
        int code = new Application(terminal, _folder).Run(all);
        return (code, output.ToString(), error.ToString());
    }

    private void Change(string file, string old, string now)
    {
        string path = Path.Combine(_folder, file);
        string text = File.ReadAllText(path);
        text.ShouldContain(old);
        File.WriteAllText(path, text.Replace(old, now, StringComparison.Ordinal));
    }

    [Test]
    public void A_released_edition_may_not_change_without_a_new_number()
    {
        (int code, string output, string error) = Run("release");
        code.ShouldBe(0, output + error);
        output.ShouldContain($"released meadow 0.1.0: {Released}");
        string edition = File.ReadAllText(Path.Combine(_folder, Released));
        edition.ShouldContain("\nfabric A | buy | ");
        Run("build").Code.ShouldBe(0);
        Run("release").Output.ShouldContain("was released before, with the same numbers");

        byte[] built = File.ReadAllBytes(Path.Combine(_folder, "out/meadow/meadow-letter.pdf"));
        Change(Pattern, "backing: D", "backing: B");
        (code, output, _) = Run("build");
        code.ShouldBe(1);
        output.ShouldContain("error[PP0601]: edition 0.1.0 was released with other numbers");
        output.ShouldContain("backing B: buy not printed, now ");
        File.ReadAllBytes(Path.Combine(_folder, "out/meadow/meadow-letter.pdf")).ShouldBe(built);
        Run("release").Output.ShouldContain("meadow 0.1.0 is not released");
        File.ReadAllText(Path.Combine(_folder, Released)).ShouldBe(edition);

        Change(Pattern, "edition: 0.1.0", "edition: 0.2.0");
        Run("release").Code.ShouldBe(0);
        File.Exists(Path.Combine(_folder, "patterns/meadow.0.2.0.edition.txt")).ShouldBeTrue();
    }

    [Test]
    public void Makers_are_told_what_hurts_them()
    {
        Run("release").Code.ShouldBe(0);
        // As if the older edition had printed an eighth too little of A, and a quarter too much of B.
        string path = Path.Combine(_folder, Released);
        string[] lines = File.ReadAllLines(path);
        string before = lines.Single(line =>
            line.StartsWith("fabric A | buy", StringComparison.Ordinal)
        );
        string right = before[(before.IndexOf("throw = ", StringComparison.Ordinal) + 8)..]
            .Split(" |")[0];
        Change(Released, before, before.Replace($"throw = {right}", "throw = 1/8 yd"));
        Change(Pattern, "edition: 0.1.0", "edition: 0.1.1");

        (int code, string output, string error) = Run("compare", Pattern);
        code.ShouldBe(0, error);
        output.ShouldContain("hurts makers who hold 0.1.0:");
        output.ShouldContain($"throw, requirements, fabric A: buy 1/8 yd, now {right}");
        string notice = Path.Combine(_folder, "out/meadow/meadow-erratum-0.1.0-to-0.1.1");
        File.ReadAllText(notice + ".md")
            .ShouldContain($"| requirements, fabric A: buy | 1/8 yd | {right} |");
        using (PdfDocument pdf = PdfDocument.Open(notice + "-letter.pdf"))
        {
            pdf.GetPage(1).Text.ShouldContain("Correction to edition 0.1.0");
        }
        Run("compare", Pattern, "0.1.7").Error.ShouldContain("did you mean 0.1.0?");
        Run("compare", Pattern, "0.1.0", "0.1.0").Output.ShouldContain("print the same");
    }

    [Test]
    public void Revisions_are_compared()
    {
        if (!Git("init", "-q"))
        {
            Assert.Ignore("There is no git here.");
        }
        Git("add", ".").ShouldBeTrue();
        Git("-c", "user.name=T", "-c", "user.email=t@example.org", "commit", "-q", "-m", "first")
            .ShouldBeTrue();
        Run("compare", Pattern, "HEAD").Output.ShouldContain("print the same");
        Change(Pattern, "backing: D", "backing: B");
        (int code, string output, string error) = Run("compare", Pattern, "HEAD");
        code.ShouldBe(0, error);
        output.ShouldContain("backing B: buy not printed, now ");
        output.ShouldContain("both bear the edition number 0.1.0");
        Run("compare", Pattern, "nowhere").Code.ShouldBe(2);
        Run("compare", Pattern).Error.ShouldContain("no edition of");
    }

    [Test]
    public void The_proof_sheet_is_written_and_the_same_again()
    {
        (int code, string output, string error) = Run("proof");
        code.ShouldBe(0, error);
        output.ShouldContain("wrote the proof sheet out/meadow/meadow-proof.html");
        string page = Path.Combine(_folder, "out/meadow/meadow-proof.html");
        string first = File.ReadAllText(page);
        byte[] pdf = File.ReadAllBytes(Path.ChangeExtension(page, null) + "-letter.pdf");
        first.ShouldContain("No edition has been released yet.");
        Run("proof").Code.ShouldBe(0);
        File.ReadAllText(page).ShouldBe(first);
        File.ReadAllBytes(Path.ChangeExtension(page, null) + "-letter.pdf").ShouldBe(pdf);
    }

    [Test]
    public void A_damaged_edition_file_is_told()
    {
        Run("release").Code.ShouldBe(0);
        Change(Released, "edition: ", "edition ");
        (int code, _, string error) = Run("build");
        code.ShouldBe(2);
        error.ShouldContain(Released);
        error.ShouldContain("line");
    }

    private bool Git(params string[] arguments)
    {
        try
        {
            using var git = Process.Start(
                new ProcessStartInfo("git", arguments) { WorkingDirectory = _folder }
            )!;
            git.WaitForExit();
            return git.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
