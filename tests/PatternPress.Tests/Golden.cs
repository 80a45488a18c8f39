namespace PatternPress.Tests;

/// <summary>
/// Compares outputs with files of expected text. On a difference the output is left beside the expected file as
/// "name.received.ext"; with PATTERNPRESS_ACCEPT=1 in the environment it becomes the expected one.
/// </summary>
internal static class Golden
{
    private static bool Accepts => Environment.GetEnvironmentVariable("PATTERNPRESS_ACCEPT") == "1";

    /// <param name="expected">Full path of the file of expected text.</param>
    public static void ShouldMatch(string expected, string actual)
    {
        actual = actual.ReplaceLineEndings("\n");
        string received = Path.ChangeExtension(expected, ".received" + Path.GetExtension(expected));
        string? before = File.Exists(expected)
            ? File.ReadAllText(expected).ReplaceLineEndings("\n")
            : null;
        if (before == actual)
        {
            File.Delete(received);
            return;
        }
        if (Accepts)
        {
            File.WriteAllText(expected, actual);
            File.Delete(received);
            return;
        }
        File.WriteAllText(received, actual);
        actual.ShouldBe(
            before ?? "",
            $"Compare {Path.GetFileName(received)} with {Path.GetFileName(expected)}; accept with PATTERNPRESS_ACCEPT=1."
        );
    }
}
