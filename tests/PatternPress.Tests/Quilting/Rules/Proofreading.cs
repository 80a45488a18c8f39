using PatternPress.Booklet.Sections;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Compiling;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;
using PatternPress.Tests.Imaging;

namespace PatternPress.Tests.Quilting.Rules;

/// <summary>Everything that is found in a source, in the order of the file.</summary>
internal static class Proofreading
{
    public static IReadOnlyList<Diagnostic> Of(string file, string yaml, out SourceText source)
    {
        SyntaxTree tree = SyntaxTree.Read(file, yaml);
        source = tree.Source;
        Compilation compilation = Compiler.Compile("test", tree, null, SamplePictures.Instance);
        return compilation.Tables is null
            ? compilation.Diagnostics
            :
            [
                .. compilation.Diagnostics,
                .. ProseCheck.Check(
                    compilation.Pattern!,
                    compilation.Tables,
                    tree,
                    SectionCatalog.Names
                ),
            ];
    }
}
