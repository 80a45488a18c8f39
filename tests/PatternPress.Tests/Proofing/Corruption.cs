using PatternPress.Quilting.Tables;

namespace PatternPress.Tests.Proofing;

/// <summary>Tables with one thing changed.</summary>
/// <param name="Place">Where: "Cutting[0].Rows[2].BySize[1].Count".</param>
/// <param name="Change">What: "40 to 41".</param>
/// <param name="Kind">What kind of change it is.</param>
/// <param name="Tables">Made when asked for.</param>
internal sealed record Corruption(
    string Place,
    string Change,
    CorruptionKind Kind,
    Func<PrintedTables> Tables
);

internal enum CorruptionKind
{
    Count,
    Measure,
    Yardage,
    Letter,
    Turn,
    Choice,
    Dropped,
    Swapped,
}
