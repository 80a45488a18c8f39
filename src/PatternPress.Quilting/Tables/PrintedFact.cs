namespace PatternPress.Quilting.Tables;

/// <summary>One printed value by itself: a line of the data export, and what two editions are compared by.</summary>
/// <param name="Table">"requirements", "cutting", "units" …</param>
/// <param name="Row">Which row: a fabric, an id, a label, "border 1 sides".</param>
/// <param name="Item">What it says: "buy", "count", "width" …</param>
/// <param name="Size">Key of the size; empty where it holds for all.</param>
/// <param name="Value">As text, exact: "1 3/8", "12", "L2".</param>
/// <param name="Unit">"in", "cm", "yd", "m"; empty for counts and names.</param>
public sealed record PrintedFact(
    string Table,
    string Row,
    string Item,
    string Size,
    string Value,
    string Unit
);
