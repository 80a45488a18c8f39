using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Pictures;
using PatternPress.Quilting.Reading;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Tables;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Compiling;

/// <summary>Source text to printed numbers: reads, lays out, works out, checks. Pure; any input gives a result.</summary>
public static class Compiler
{
    /// <param name="id">The pattern's short name, from its file name.</param>
    /// <param name="tree">The pattern's file.</param>
    /// <param name="house">The house's rules; null for the built-in ones.</param>
    /// <param name="pictures">The pictures beside the pattern's file; null to look at none, since no number depends on them.</param>
    public static Compilation Compile(
        string id,
        SyntaxTree tree,
        SyntaxTree? house,
        IPictureFiles? pictures = null
    )
    {
        var reading = new DiagnosticList();
        Pattern? pattern = PatternReader.ReadDespiteErrors(id, tree, house, reading, pictures);
        if (pattern is null || reading.HasErrors)
        {
            if (pattern is not null && tree.IsComplete)
            {
                try
                {
                    LookFurther(pattern, reading);
                }
                catch (OverflowException)
                {
                    // What was found already says enough.
                }
            }
            return WithoutNumbers(id, tree, house, null, Sorted(reading.ToImmutable()));
        }
        var findings = new FindingCollector(pattern.Sizes.Select(size => size.Key));
        foreach (Diagnostic diagnostic in reading.ToImmutable())
        {
            findings.Add(diagnostic);
        }
        try
        {
            return WorkOut(id, tree, house, pattern, findings);
        }
        catch (OverflowException)
        {
            // Exact numbers beyond 64 bits: measures are held to a common part when they are read, shares of a block's
            // columns and rows and per cents only come together here.
            findings.Add(PP0215_NotAMeasure.BeyondComputing(pattern.Info.Title.Span));
            return WithoutNumbers(id, tree, house, pattern, [.. findings.ToDiagnostics()]);
        }
    }

    /// <summary>The result where nothing could be worked out: what was read, and why it ended there.</summary>
    private static Compilation WithoutNumbers(
        string id,
        SyntaxTree tree,
        SyntaxTree? house,
        Pattern? pattern,
        ImmutableArray<Diagnostic> diagnostics
    ) => new(id, tree, house?.Source, pattern, [], null, null, diagnostics);

    private static Compilation WorkOut(
        string id,
        SyntaxTree tree,
        SyntaxTree? house,
        Pattern pattern,
        FindingCollector findings
    )
    {
        BlockSet blocks = QuiltResolver.ResolveBlocks(pattern, findings);
        var resolved = ImmutableArray.CreateBuilder<Quilt>(pattern.Sizes.Length);
        foreach (SizeDesign size in pattern.Sizes)
        {
            if (QuiltResolver.Resolve(pattern, size, blocks, findings) is { } quilt)
            {
                resolved.Add(quilt);
            }
        }
        ImmutableArray<Quilt> quilts = resolved.ToImmutable();
        if (quilts.IsEmpty)
        {
            return WithoutNumbers(id, tree, house, pattern, [.. findings.ToDiagnostics()]);
        }
        // The drawing is checked while it is worked out how to make it; what was worked out is checked while it is tabulated.
        Aside<PrintedTables>? tables = null;
        Aside<Making> making = Aside.Start(() =>
        {
            Making made = new Maker().Make(pattern, quilts);
            tables = made.Problems.IsEmpty ? Aside.Start(() => Tabulator.Tabulate(made)) : null;
            return made;
        });
        findings.AddRange(
            RuleCatalog.Check(new RuleContext(pattern, quilts, making.Value, tree.Source))
        );
        var result = new Compilation(
            id,
            tree,
            house?.Source,
            pattern,
            quilts,
            making.Value(),
            null,
            [.. findings.ToDiagnostics()]
        );
        return result.HasErrors
            ? result
            : result with
            {
                Tables = tables?.Value() ?? Tabulator.Tabulate(making.Value()),
            };
    }

    /// <summary>What can be said about blocks and layouts although something else could not be read.</summary>
    private static void LookFurther(Pattern pattern, DiagnosticList reading)
    {
        var findings = new FindingCollector(pattern.Sizes.Select(size => size.Key));
        BlockSet blocks = QuiltResolver.ResolveBlocks(pattern, findings);
        foreach (SizeDesign size in pattern.Sizes)
        {
            _ = QuiltResolver.Resolve(pattern, size, blocks, findings);
        }
        reading.AddRange(findings.ToDiagnostics());
    }

    private static ImmutableArray<Diagnostic> Sorted(ImmutableArray<Diagnostic> diagnostics) =>
        [.. diagnostics.Sorted(FindingCollector.InOrder)];
}
