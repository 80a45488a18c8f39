using PatternPress.Booklet.Sections;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Compiling;
using PatternPress.Source;
using PatternPress.Source.Syntax;

namespace PatternPress.Cli.Files;

/// <summary>Reads pattern files and compiles them, side by side where there are several.</summary>
internal static class PatternLoader
{
    /// <param name="files">As shown in messages; relative to <paramref name="directory"/>.</param>
    /// <param name="templates">The folder with the house rules.</param>
    /// <returns>In the order of the files.</returns>
    public static IReadOnlyList<Compilation> Compile(
        string directory,
        IReadOnlyList<string> files,
        string templates
    )
    {
        string housePath = Path.Combine(templates, "house.yaml");
        string houseShown = Path.GetRelativePath(directory, housePath).Replace('\\', '/');
        Aside<SyntaxTree> house = Aside.Start(() =>
            SyntaxTree.Read(houseShown, ReadBounded(housePath, houseShown))
        );
        Compilation Read(string file)
        {
            SyntaxTree tree = SyntaxTree.Read(
                file,
                ReadBounded(Path.Combine(directory, file), file)
            );
            string folder = Path.GetDirectoryName(Path.Combine(directory, file)) ?? directory;
            return WithTexts(
                Compiler.Compile(
                    PatternFiles.IdOf(file),
                    tree,
                    house.Value(),
                    new PictureFiles(Path.GetFullPath(folder))
                )
            );
        }

        // One file alone does without the machinery of many, which takes as long to start as the file takes.
        return files.Count == 1
            ? [Read(files[0])]
            :
            [
                .. files
                    .AsParallel()
                    .AsOrdered()
                    .WithDegreeOfParallelism(Math.Min(Environment.ProcessorCount, files.Count))
                    .Select(Read),
            ];
    }

    /// <summary>The compilation with what is wrong with the designer's texts.</summary>
    private static Compilation WithTexts(Compilation compilation) =>
        compilation is { Tables: { } tables, Pattern: { } pattern }
            ? compilation with
            {
                Diagnostics =
                [
                    .. compilation.Diagnostics,
                    .. ProseCheck.Check(pattern, tables, compilation.Tree, SectionCatalog.Names),
                ],
            }
            : compilation;

    /// <summary>A file's bytes, but of a file far too large only as many as it takes to refuse it.</summary>
    private static ReadOnlyMemory<byte> ReadBounded(string path, string shown)
    {
        try
        {
            using FileStream file = File.OpenRead(path);
            long length = Math.Min(file.Length, SourceGate.MaximumBytes + 1L);
            var bytes = new byte[length];
            file.ReadExactly(bytes);
            return bytes;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new CannotRunException($"{shown} cannot be read: {problem.Message}");
        }
    }
}
