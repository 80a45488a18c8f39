using System.Collections.Immutable;
using PatternPress.Quilting.Compiling;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Source.Syntax;
using PatternPress.Tests.Quilting;

namespace PatternPress.Tests.Proofing;

/// <summary>Tables and drawings to prove.</summary>
internal static class Proofs
{
    private static readonly string Cases = Path.Combine(
        Repository.Root,
        "tests",
        "cases",
        "tables"
    );

    /// <summary>The real patterns of the repository.</summary>
    public static IEnumerable<string> Patterns() => Names(Repository.Patterns);

    /// <summary>Patterns made for their tables: metric, directional, joined, joined on the diagonal …</summary>
    public static IEnumerable<string> TableCases() => Names(Cases);

    public static (PrintedTables Tables, ImmutableArray<Quilt> Drawing) OfPattern(string name)
    {
        string file = Path.Combine(Repository.Patterns, name + ".quilt.yaml");
        SyntaxTree house = SyntaxTree.Read(
            "house.yaml",
            File.ReadAllText(Path.Combine(Repository.Root, "templates", "house.yaml"))
        );
        Compilation compilation = Compiler.Compile(
            name,
            SyntaxTree.Read(file, File.ReadAllText(file)),
            house
        );
        compilation.Tables.ShouldNotBeNull();
        return (compilation.Tables, compilation.Quilts);
    }

    public static (PrintedTables Tables, ImmutableArray<Quilt> Drawing) OfCase(string name) =>
        Of(File.ReadAllText(Path.Combine(Cases, name + ".quilt.yaml")))!.Value;

    /// <summary>Null where the pattern cannot be made.</summary>
    public static (PrintedTables Tables, ImmutableArray<Quilt> Drawing)? Of(string yaml)
    {
        Pattern pattern = Designs.Read(yaml);
        ImmutableArray<Quilt> drawing = [.. Designs.Resolve(pattern)];
        Making making = new Maker().Make(pattern, drawing);
        return making.Problems.IsEmpty ? (Tabulator.Tabulate(making), drawing) : null;
    }

    private static IEnumerable<string> Names(string folder) =>
        Directory
            .EnumerateFiles(folder, "*.quilt.yaml")
            .Select(file => Path.GetFileName(file)[..^".quilt.yaml".Length])
            .Order(StringComparer.Ordinal);
}
