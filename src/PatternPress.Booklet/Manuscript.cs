using System.Collections.Immutable;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Source.Syntax;

namespace PatternPress.Booklet;

/// <summary>What documents are composed from: the numbers as they are printed, and the drawings behind them.</summary>
/// <param name="Pattern">Titles, texts, fabrics, house choices.</param>
/// <param name="Quilts">Every size drawn, in the order of the tables' sizes. Only figures look at them.</param>
/// <param name="Tables">Every number that is printed.</param>
/// <param name="Source">The pattern's file as read, to point at words in it; null where there is none.</param>
public sealed record Manuscript(
    Pattern Pattern,
    ImmutableArray<Quilt> Quilts,
    PrintedTables Tables,
    SyntaxTree? Source
);
