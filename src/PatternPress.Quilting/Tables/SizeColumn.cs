using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Tables;

/// <summary>One size of the quilt: the head of a column.</summary>
/// <param name="Width">Finished, borders included.</param>
/// <param name="Height">Finished, borders included.</param>
/// <param name="CenterWidth">Finished width inside all borders.</param>
/// <param name="CenterHeight">Finished height inside all borders.</param>
/// <param name="Across">Blocks across; 0 where blocks lie in no rows.</param>
/// <param name="Down">Blocks down; 0 where blocks lie in no rows.</param>
/// <param name="Blocks">Blocks in all, plain ones included.</param>
/// <param name="Seam">Seam allowance that all its numbers are computed with.</param>
public sealed record SizeColumn(
    string Key,
    string Name,
    Length Width,
    Length Height,
    Length CenterWidth,
    Length CenterHeight,
    int Across,
    int Down,
    int Blocks,
    Length Seam
);
