using PatternPress.Cli;

namespace PatternPress.Tests.Cli;

/// <summary>Runs commands as a person would, in a folder of their own.</summary>
public sealed class CommandTests
{
    private string _folder = "";

    [SetUp]
    public void MakeFolder() =>
        _folder = Directory.CreateTempSubdirectory("patternpress-").FullName;

    [TearDown]
    public void RemoveFolder() => Directory.Delete(_folder, recursive: true);

    private (int Code, string Output, string Error) Run(params string[] arguments)
    {
        var output = new StringWriter();
        var error = new StringWriter();
        var terminal = new Terminal(output, error, Color: false, Interactive: false, Width: 100);
        string[] all = arguments[0] is not ("new" or "schema" or "--help")
            ? [.. arguments, "--templates", Path.Combine(Repository.Root, "templates")]
            : arguments;
        int code = new Application(terminal, _folder).Run(all);
        return (code, output.ToString(), error.ToString());
    }

    private string Read(string path) => File.ReadAllText(Path.Combine(_folder, path));

    private void Write(string path, string text)
    {
        string full = Path.Combine(_folder, path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.WriteAllText(full, text);
    }

    [Test]
    public void A_new_pattern_builds_and_builds_to_the_same_bytes_again()
    {
        Run("new", "spring-meadow").Code.ShouldBe(0);
        Read("patterns/spring-meadow.quilt.yaml").ShouldContain("title: Spring Meadow");
        (int code, string output, string error) = Run("build", "--paper", "letter");
        code.ShouldBe(0, output + error);
        Dictionary<string, byte[]> first = Outputs("out/spring-meadow");
        first.Keys.ShouldContain("spring-meadow-letter.pdf");
        first.Keys.ShouldContain("spring-meadow-requirements-letter.pdf");
        first.Keys.ShouldContain("spring-meadow-placement-letter.pdf");
        first.Keys.ShouldContain("spring-meadow-tables.json");
        Run("build", "--paper", "letter").Code.ShouldBe(0);
        Dictionary<string, byte[]> second = Outputs("out/spring-meadow");
        second.Keys.ShouldBe(first.Keys, ignoreOrder: true);
        foreach ((string name, byte[] bytes) in first)
        {
            second[name]
                .AsSpan()
                .SequenceEqual(bytes)
                .ShouldBeTrue($"{name} differs between two builds");
        }
    }

    [Test]
    public void A_broken_pattern_leaves_the_last_good_files()
    {
        Run("new", "meadow").Code.ShouldBe(0);
        Run("build", "--paper", "a4").Code.ShouldBe(0);
        Dictionary<string, byte[]> before = Outputs("out/meadow");
        string broken = Read("patterns/meadow.quilt.yaml")
            .Replace("ray=B heart=C", "ray=B hart=C", StringComparison.Ordinal);
        Write("patterns/meadow.quilt.yaml", broken);
        (int code, string output, _) = Run("build", "--paper", "a4");
        code.ShouldBe(1);
        output.ShouldContain("did you mean \"heart\"?");
        output.ShouldContain("patterns/meadow.quilt.yaml:");
        Dictionary<string, byte[]> after = Outputs("out/meadow");
        after.Keys.ShouldBe(before.Keys, ignoreOrder: true);
        after.ShouldAllBe(file => Enumerable.SequenceEqual(before[file.Key], file.Value));
    }

    [Test]
    public void What_cannot_run_says_so_and_ends_with_2()
    {
        Run("new", "meadow").Code.ShouldBe(0);
        (int code, _, string error) = Run("check", "patterns/medow.quilt.yaml");
        code.ShouldBe(2);
        error.ShouldContain(
            "there is no file or folder patterns/medow.quilt.yaml; did you mean patterns/meadow.quilt.yaml?"
        );
        Run("new", "meadow").Error.ShouldContain("exists already");
        Run("new", "two words").Code.ShouldBe(2);
        Run("check", "--messages", "morse").Code.ShouldBe(2);
        Run("explain", "PP9999").Code.ShouldBe(2);
    }

    [TestCase("huge.quilt.yaml")]
    public void A_file_far_too_large_is_refused_in_words(string name)
    {
        using (FileStream file = File.Create(Path.Combine(_folder, name)))
        {
            file.SetLength(100_000_000);
        }
        (int code, string output, _) = Run("check", name);
        code.ShouldBe(1);
        output.ShouldContain(name);
    }

    [Test]
    public void Explain_lists_every_code_and_shows_a_page()
    {
        Run("explain").Output.ShouldContain("PP0210");
        Run("explain", "pp0210").Output.ShouldContain("## Why it matters");
    }

    [Test]
    public void Explain_tells_how_a_number_came_about()
    {
        Run("new", "meadow").Code.ShouldBe(0);
        (int code, string output, string error) = Run("explain", "meadow", "throw", "yards", "B");
        code.ShouldBe(0, error);
        output.ShouldStartWith("meadow, throw, fabric B (");
        output.ShouldContain("left at its end");
        output.ShouldContain("across 40 in of usable width");
        output.ShouldContain("once, to straighten the cut edge");
        output.ShouldContain("up to the next 1/8 yd");
        // The only pattern of the folder need not be named.
        Run("explain", "throw", "yards", "B").Output.ShouldBe(output);
        Run("explain", "throw", "cut", "A1").Output.ShouldContain("pieces");
        Run("explain", "throw").Output.ShouldContain("fabric B: ");
    }

    [TestCase("thro yards B", "there is no size \"thro\" in meadow; did you mean \"throw\"?")]
    [TestCase("throw yads B", "did you mean \"yards\"?")]
    [TestCase("throw cut A91", "did you mean \"A1\"?")]
    [TestCase("throw yards", "say which: yards A, B")]
    public void Explain_offers_the_nearest_known_name(string words, string expected)
    {
        Run("new", "meadow").Code.ShouldBe(0);
        (int code, _, string error) = Run(["explain", "meadow", .. words.Split(' ')]);
        code.ShouldBe(2);
        error.ShouldContain(expected);
    }

    // Commands are known by name before they are made.
    [TestCase("check")]
    [TestCase("build")]
    [TestCase("proof")]
    [TestCase("release")]
    [TestCase("compare")]
    [TestCase("new")]
    [TestCase("schema")]
    [TestCase("explain")]
    public void Every_command_has_help(string command)
    {
        (int code, string output, _) = Run(command, "--help");
        code.ShouldBe(0);
        output.ShouldContain($" {command} ");
        Run("--help").Output.ShouldContain($"  {command} ");
    }

    [Test]
    public void The_schema_is_printed_as_json() =>
        System
            .Text.Json.JsonDocument.Parse(Run("schema").Output)
            .RootElement.GetProperty("$schema")
            .GetString()
            .ShouldBe("https://json-schema.org/draft/2020-12/schema");

    [Test]
    public void Findings_come_in_the_format_asked_for()
    {
        Write("p.quilt.yaml", "pattern: {title: T}\n");
        Run("check", "p.quilt.yaml", "--messages", "github")
            .Output.ShouldContain("::error file=p.quilt.yaml");
        System
            .Text.Json.JsonDocument.Parse(Run("check", "p.quilt.yaml", "--messages", "json").Output)
            .ShouldNotBeNull();
        System
            .Text.Json.JsonDocument.Parse(
                Run("check", "p.quilt.yaml", "--messages", "sarif").Output
            )
            .RootElement.GetProperty("version")
            .GetString()
            .ShouldBe("2.1.0");
    }

    private Dictionary<string, byte[]> Outputs(string folder) =>
        Directory
            .EnumerateFiles(Path.Combine(_folder, folder), "*", SearchOption.AllDirectories)
            .ToDictionary(f => Path.GetFileName(f), File.ReadAllBytes);
}
