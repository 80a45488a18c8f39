using PatternPress.Cli.Files;
using PatternPress.Quilting.Compiling;
using PatternPress.Quilting.Editions;
using PatternPress.Source.Syntax;

namespace PatternPress.Cli.Commands;

/// <summary>Where the editions to compare come from: released ones from their files, revisions from git, or the pattern as it stands.</summary>
/// <param name="file">The pattern's, as shown.</param>
/// <param name="templates">The folder with the house rules.</param>
internal sealed class EditionSources(string directory, string file, string templates)
{
    private readonly EditionFiles _released = new(directory);
    private readonly GitRevisions _git = new(directory);

    public string Templates => templates;

    /// <summary>The pattern as it stands.</summary>
    public Compilation Current { get; } = PatternLoader.Compile(directory, [file], templates)[0];

    public bool IsSound => Current is { Tables: not null, HasErrors: false };

    /// <param name="older">A number or revision; null for the edition released last.</param>
    /// <param name="newer">A number or revision; null for the pattern as it stands.</param>
    public (Named Before, Named After) Of(string? older, string? newer)
    {
        Named after = newer is null
            ? new(
                $"{Current.Pattern!.Info.Edition.Value} as it stands",
                SlugOf(Current.Pattern.Info.Edition.Value),
                Edition.Of(Current.Tables!, Current.Pattern.Info.Date)
            )
            : Find(newer);
        if (older is not null)
        {
            return (Find(older), after);
        }
        IReadOnlyList<Edition> released = _released.Released(file);
        return released.Count > 0
            ? (new(released[^1].Number, SlugOf(released[^1].Number), released[^1]), after)
            : throw new CannotRunException(
                $"no edition of {file} has been released; name a git revision to compare with, or release one"
            );
    }

    private Named Find(string name)
    {
        if (_released.Find(file, name) is { } released)
        {
            return new(name, SlugOf(name), released);
        }
        if (!_git.Has(name))
        {
            throw new CannotRunException(
                $"there is neither a released edition nor a git revision {name}"
                    + _released.Nearest(file, name)
            );
        }
        byte[] source =
            _git.Read(name, file)
            ?? throw new CannotRunException($"there is no {file} in the revision {name}");
        string house = Path.GetRelativePath(directory, Path.Combine(templates, "house.yaml"))
            .Replace('\\', '/');
        // A house file from outside the repository is the same in all revisions.
        byte[] rules = _git.Read(name, house) ?? File.ReadAllBytes(Path.Combine(directory, house));
        Compilation compilation = Compiler.Compile(
            PatternFiles.IdOf(file),
            SyntaxTree.Read(file, source),
            SyntaxTree.Read(house, rules)
        );
        return compilation is { Tables: { } tables, Pattern: { } pattern }
            ? new(name, SlugOf(name), Edition.Of(tables, pattern.Info.Date))
            : throw new CannotRunException(
                $"{file} has errors in the revision {name}: {compilation.Diagnostics.First(d => d.Severity == Source.Diagnostics.Severity.Error).Title}"
            );
    }

    private static string SlugOf(string name) =>
        string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) || c is '.' ? c : '-'))
            .Trim('-');

    /// <param name="Name">As asked for: "1.0.0", "HEAD~1".</param>
    /// <param name="Slug">The same for the name of a file.</param>
    internal sealed record Named(string Name, string Slug, Edition Edition);
}
