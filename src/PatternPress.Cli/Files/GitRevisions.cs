using System.Diagnostics;

namespace PatternPress.Cli.Files;

/// <summary>Files as they were at a revision, asked of the git program.</summary>
internal sealed class GitRevisions(string directory)
{
    /// <summary>Whether there is such a revision; false also where there is no git or no repository.</summary>
    public bool Has(string revision) =>
        // A word that begins with a hyphen would be taken for an option.
        !revision.StartsWith('-')
        && Run("rev-parse", "--verify", "--quiet", revision + "^{commit}") is not null;

    /// <summary>A file's bytes at a revision; null where it was not there.</summary>
    /// <param name="file">Relative to the working folder.</param>
    public byte[]? Read(string revision, string file) =>
        Run("show", $"{revision}:./{file.Replace('\\', '/')}");

    private byte[]? Run(params string[] arguments)
    {
        var start = new ProcessStartInfo("git", arguments)
        {
            WorkingDirectory = directory,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        try
        {
            using Process git = Process.Start(start)!;
            // Both pipes are emptied, or a long answer would stop the other side.
            Task<string> errors = git.StandardError.ReadToEndAsync();
            using var output = new MemoryStream();
            git.StandardOutput.BaseStream.CopyTo(output);
            errors.Wait();
            git.WaitForExit();
            return git.ExitCode == 0 ? output.ToArray() : null;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }
}
