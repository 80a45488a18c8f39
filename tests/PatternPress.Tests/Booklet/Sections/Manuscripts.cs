using PatternPress.Booklet;
using PatternPress.Quilting.Compiling;
using PatternPress.Source.Syntax;
using PatternPress.Tests.Imaging;

namespace PatternPress.Tests.Booklet.Sections;

/// <summary>Patterns compiled for composing.</summary>
internal static class Manuscripts
{
    private static readonly Dictionary<string, Manuscript> Compiled = [];

    /// <summary>Names of the repository's own patterns.</summary>
    public static IEnumerable<string> Own =>
        Directory
            .EnumerateFiles(Repository.Patterns, "*.quilt.yaml")
            .Select(file => Path.GetFileName(file).Replace(".quilt.yaml", ""))
            .Order(StringComparer.Ordinal);

    /// <summary>One of the repository's own patterns.</summary>
    public static Manuscript Of(string id)
    {
        lock (Compiled)
        {
            if (!Compiled.TryGetValue(id, out Manuscript? manuscript))
            {
                manuscript = Compile(
                    id,
                    File.ReadAllText(Path.Combine(Repository.Patterns, $"{id}.quilt.yaml"))
                );
                Compiled[id] = manuscript;
            }
            return manuscript;
        }
    }

    /// <summary>A pattern given as text.</summary>
    public static Manuscript Compile(string id, string yaml)
    {
        SyntaxTree tree = SyntaxTree.Read($"{id}.quilt.yaml", yaml);
        Compilation compilation = Compiler.Compile(
            id,
            tree,
            SyntaxTree.Read("templates/house.yaml", BookletTemplates.Files["house.yaml"]),
            SamplePictures.Instance
        );
        compilation.Tables.ShouldNotBeNull(
            string.Join("\n", compilation.Diagnostics.Select(d => $"{d.Code} {d.Title} {d.Text}"))
        );
        return new Manuscript(
            compilation.Pattern!,
            compilation.Quilts,
            compilation.Tables,
            compilation.Tree
        );
    }
}
