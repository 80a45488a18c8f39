using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Reading;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;

namespace PatternPress.Tests.Quilting.Rules;

/// <summary>Everything that reading, resolving, making and checking find in a source, in the order of the file.</summary>
internal static class Proofreading
{
    public static IReadOnlyList<Diagnostic> Of(string file, string yaml, out SourceText source)
    {
        var reading = new DiagnosticList();
        SyntaxTree tree = SyntaxTree.Read(file, yaml);
        source = tree.Source;
        Pattern? pattern = PatternReader.Read("test", tree, null, reading);
        var findings = new FindingCollector(pattern?.Sizes.Select(s => s.Key) ?? []);
        foreach (Diagnostic diagnostic in reading.ToImmutable())
        {
            findings.Add(diagnostic);
        }
        if (pattern is not null)
        {
            BlockSet blocks = QuiltResolver.ResolveBlocks(pattern, findings);
            ImmutableArray<Quilt> quilts =
            [
                .. pattern
                    .Sizes.Select(size => QuiltResolver.Resolve(pattern, size, blocks, findings))
                    .OfType<Quilt>(),
            ];
            if (!quilts.IsEmpty)
            {
                findings.AddRange(
                    RuleCatalog.Check(
                        new RuleContext(pattern, quilts, new Maker().Make(pattern, quilts), source)
                    )
                );
            }
        }
        return findings.ToDiagnostics();
    }
}
