namespace PatternPress.Tests;

/// <summary>No file of expected text is left behind when its test goes.</summary>
public sealed class GoldenTests
{
    /// <summary>
    /// "name.expected.txt" is read if its input "name.*" lies beside it, or if a test source names it.
    /// </summary>
    [Test]
    public void Every_expected_file_is_read_by_a_test()
    {
        var tests = Path.Combine(Repository.Root, "tests");
        var sources = string.Concat(
            Directory
                .EnumerateFiles(tests, "*.cs", SearchOption.AllDirectories)
                .Where(file => !IsOutput(file))
                .Select(File.ReadAllText)
        );
        var forgotten = Directory
            .EnumerateFiles(tests, "*.expected.txt", SearchOption.AllDirectories)
            .Where(file => !IsOutput(file) && !HasInput(file))
            .Select(Stem)
            .Where(stem => !sources.Contains($"\"{stem}\"", StringComparison.Ordinal));
        forgotten.ShouldBeEmpty();
    }

    private static bool IsOutput(string file) =>
        file.Split(Path.DirectorySeparatorChar).Any(folder => folder is "bin" or "obj");

    private static string Stem(string file) => Path.GetFileName(file)[..^".expected.txt".Length];

    private static bool HasInput(string file) =>
        Directory
            .EnumerateFiles(Path.GetDirectoryName(file)!, $"{Stem(file)}.*")
            .Any(other => !other.EndsWith(".txt", StringComparison.Ordinal));
}
