namespace PatternPress.Source.Diagnostics;

/// <summary>The order in which findings are shown: by file, line, column and code; those without a place come last.</summary>
public sealed class DiagnosticOrder : IComparer<Diagnostic>
{
    public static DiagnosticOrder Instance { get; } = new();

    private DiagnosticOrder() { }

    public int Compare(Diagnostic? x, Diagnostic? y)
    {
        if (x is null || y is null)
        {
            return (x is null ? 0 : 1) - (y is null ? 0 : 1);
        }

        var left = x.Primary.Span;
        var right = y.Primary.Span;
        var order = left.IsNone.CompareTo(right.IsNone);
        order = order != 0 ? order : string.CompareOrdinal(left.File, right.File);
        order = order != 0 ? order : left.StartLine.CompareTo(right.StartLine);
        order = order != 0 ? order : left.StartColumn.CompareTo(right.StartColumn);
        order = order != 0 ? order : string.CompareOrdinal(x.Code, y.Code);
        return order != 0 ? order : string.CompareOrdinal(x.Title, y.Title);
    }
}
