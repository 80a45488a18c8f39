using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Compiling;

/// <summary>Everything computed from one source file. What could not be reached because of errors is null or empty.</summary>
/// <param name="Id">The pattern's short name.</param>
/// <param name="Tree">The source as read.</param>
/// <param name="House">The house's own file, which findings may point into.</param>
/// <param name="Quilts">The sizes that could be laid out, in the designer's order.</param>
/// <param name="Making">Units, pieces, strips and yardage of those sizes.</param>
/// <param name="Tables">The numbers to print; null as soon as there is any error.</param>
/// <param name="Diagnostics">All findings, in the order of the file.</param>
public sealed record Compilation(
    string Id,
    SyntaxTree Tree,
    SourceText? House,
    Pattern? Pattern,
    ImmutableArray<Quilt> Quilts,
    Making? Making,
    PrintedTables? Tables,
    ImmutableArray<Diagnostic> Diagnostics
)
{
    public bool HasErrors => Diagnostics.Any(d => d.Severity == Severity.Error);
}
