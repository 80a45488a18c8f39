using System.Text;
using PatternPress.Quilting.Editions;
using PatternPress.Source;

namespace PatternPress.Cli.Files;

/// <summary>The files beside a pattern that fix what its released editions print: harbor-lights.1.0.0.edition.txt.</summary>
internal sealed class EditionFiles(string directory)
{
    private const string Extension = ".edition.txt";

    /// <summary>The file of an edition, as shown.</summary>
    /// <param name="pattern">The pattern's file, as shown.</param>
    public static string NameOf(string pattern, string number)
    {
        string name = string.Concat(
            number.Select(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' ? c : '-')
        );
        string file = $"{PatternFiles.IdOf(pattern)}.{name}{Extension}";
        return Path.Combine(Path.GetDirectoryName(pattern) ?? "", file).Replace('\\', '/');
    }

    /// <summary>The numbers of all released editions of a pattern, the oldest first.</summary>
    public IReadOnlyList<Edition> Released(string pattern)
    {
        string folder = Path.Combine(directory, Path.GetDirectoryName(pattern) ?? "");
        return
        [
            .. Directory
                .EnumerateFiles(folder, $"{PatternFiles.IdOf(pattern)}.*{Extension}")
                .Order(StringComparer.Ordinal)
                .Select(path => Read(Path.GetRelativePath(directory, path).Replace('\\', '/')))
                .OfType<Edition>()
                .OrderBy(edition => edition.Date)
                .ThenBy(edition => edition.Number, StringComparer.Ordinal),
        ];
    }

    /// <summary>The edition of a number; null where it has not been released.</summary>
    /// <exception cref="CannotRunException">The file cannot be read.</exception>
    public Edition? Find(string pattern, string number)
    {
        string file = NameOf(pattern, number);
        return File.Exists(Path.Combine(directory, file)) ? Read(file) : null;
    }

    /// <returns>The file written, as shown.</returns>
    public string Write(string pattern, Edition edition)
    {
        string file = NameOf(pattern, edition.Number);
        string path = Path.Combine(directory, file);
        using var folder = new OutputFolder(Path.GetDirectoryName(path)!);
        folder.Write(Path.GetFileName(path), Encoding.UTF8.GetBytes(EditionText.Write(edition)));
        folder.Commit();
        return file;
    }

    /// <summary>"did you mean 1.0.0?" for a number that was never released; empty where nothing is near.</summary>
    public string Nearest(string pattern, string number)
    {
        string[] known = [.. Released(pattern).Select(edition => edition.Number)];
        return known.Length == 0 ? "; none has been released"
            : Source.Nearest.To(number, known) is { } nearest ? $"; did you mean {nearest}?"
            : $" (released: {string.Join(", ", known)})";
    }

    private Edition Read(string file)
    {
        string text;
        try
        {
            text = File.ReadAllText(Path.Combine(directory, file));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new CannotRunException($"{file} cannot be read: {problem.Message}");
        }
        return EditionText.TryRead(text, out Edition? edition, out string fault)
            ? edition
            : throw new CannotRunException(
                $"{file} is not as \"patternpress release\" wrote it: {fault}; take it from version control again"
            );
    }
}
