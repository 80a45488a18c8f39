using System.Collections.Immutable;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Tables;

/// <summary>What to buy.</summary>
/// <param name="Fabrics">For the top.</param>
/// <param name="Binding">Where it is bought apart from the top's fabrics.</param>
/// <param name="Totals">What a fabric takes for several purposes together, in the sizes in which it has several: less than
/// the rounded amounts of its purposes where rounding once is enough.</param>
public sealed record RequirementsTable(
    ImmutableArray<RequirementRow> Fabrics,
    ImmutableArray<RequirementRow> Binding,
    ImmutableArray<RequirementRow> Backing,
    ImmutableArray<RequirementRow> Totals,
    ImmutableArray<BattingCell?> Batting
)
{
    /// <summary>
    /// What is bought, fabric by fabric: a fabric that serves several purposes in one width is one purchase. In the order in
    /// which it is first met: quilt top, binding, backing.
    /// </summary>
    public ImmutableArray<Purchase> Purchases()
    {
        var purchases = new List<Purchase>();
        foreach (
            (PurchaseUse use, RequirementRow row) in Fabrics
                .Select(row => (PurchaseUse.QuiltTop, row))
                .Concat(Binding.Select(row => (PurchaseUse.Binding, row)))
                .Concat(Backing.Select(row => (PurchaseUse.Backing, row)))
        )
        {
            Length? width = WidthOf(row);
            int same = row.Fabric is null
                ? -1
                : purchases.FindIndex(p =>
                    p.Fabric == row.Fabric && p.UsableWidth == width && p.Kind == KindOf(row)
                );
            if (same < 0)
            {
                RequirementRow? total = Totals.FirstOrDefault(t =>
                    t.Fabric == row.Fabric && WidthOf(t) == width && KindOf(t) == KindOf(row)
                );
                purchases.Add(new Purchase(row.Fabric, width, [(use, row)], total));
            }
            else
            {
                purchases[same] = purchases[same] with
                {
                    Parts = purchases[same].Parts.Add((use, row)),
                };
            }
        }
        return [.. purchases];
    }

    private static string? KindOf(RequirementRow row) =>
        row.BySize.FirstOrDefault(cell => cell is not null)?.Panels?.Kind;

    private static Length? WidthOf(RequirementRow row) =>
        row.BySize.FirstOrDefault(cell => cell is not null)?.UsableWidth;
}

/// <summary>What a length of fabric is bought for.</summary>
public enum PurchaseUse
{
    QuiltTop,
    Binding,
    Backing,
}

/// <summary>A fabric as it is bought, for all its purposes together.</summary>
/// <param name="Fabric">Fabric key; null for a backing of the maker's choice.</param>
/// <param name="UsableWidth">The width of fabric that the yardage is computed for.</param>
/// <param name="Parts">Its purposes with their amounts.</param>
/// <param name="Together">All purposes together; null where no size has several.</param>
public sealed record Purchase(
    string? Fabric,
    Length? UsableWidth,
    ImmutableArray<(PurchaseUse Use, RequirementRow Row)> Parts,
    RequirementRow? Together
)
{
    /// <summary>The panels it is bought in; null for fabric by the yard.</summary>
    public string? Kind =>
        Parts
            .SelectMany(part => part.Row.BySize)
            .FirstOrDefault(cell => cell is not null)
            ?.Panels?.Kind;

    /// <summary>What is bought for all purposes in a size; null where the size has none.</summary>
    public RequirementCell? Bought(int size) =>
        Together?.BySize[size]
        ?? Parts.Select(part => part.Row.BySize[size]).FirstOrDefault(cell => cell is not null);
}

/// <summary>One fabric of the requirements.</summary>
/// <param name="Fabric">Fabric key; null for a backing of the maker's choice.</param>
public sealed record RequirementRow(string? Fabric, ImmutableArray<RequirementCell?> BySize);

/// <param name="UsableWidth">The width of fabric that the yardage is computed for.</param>
/// <param name="Yardage">Exact need and what to buy; nothing where it is bought in panels.</param>
/// <param name="Panels">What to buy in panels; null for fabric by the yard.</param>
public sealed record RequirementCell(
    Length UsableWidth,
    Yardage Yardage,
    PanelsBought? Panels = null
);

/// <summary>Panels to buy.</summary>
/// <param name="Kind">What several of them are called: "fat quarters".</param>
/// <param name="Width">Across the fabric they were cut from, usable, as bought.</param>
/// <param name="Height">Along that fabric, usable, as bought.</param>
public sealed record PanelsBought(string Kind, Length Width, Length Height, long ToBuy);
