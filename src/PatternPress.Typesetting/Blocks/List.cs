using System.Collections.Immutable;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>A list with numbers or bullets that hang left of the text.</summary>
public sealed record List(ImmutableArray<ListItem> Items) : Block
{
    public List(params IEnumerable<ListItem> items)
        : this([.. items]) { }

    /// <summary>Whether the items are numbered.</summary>
    public bool Numbered { get; init; }

    /// <summary>The first number.</summary>
    public int Start { get; init; } = 1;

    /// <summary>What stands before the items of a list without numbers.</summary>
    public string Bullet { get; init; } = "•";

    /// <summary>What stands after a number.</summary>
    public string AfterNumber { get; init; } = ".";

    /// <summary>From the left edge to the text; more where a number takes more.</summary>
    public Points Indent { get; init; } = new(18_000);

    /// <summary>The least space between a number and its text.</summary>
    static readonly Points AfterLabel = new(4_000);

    /// <summary>The name of the numbers' or bullets' text style.</summary>
    public string LabelStyle { get; init; } = StyleSheet.BodyName;

    /// <summary>The least space between items.</summary>
    public Points Gap { get; init; }

    /// <summary>Whether no item is divided between pages.</summary>
    public bool KeepItemsTogether { get; init; }

    /// <summary>Whether the last item stays with what follows the list, as a figure that belongs to it.</summary>
    public bool KeepLastWithNext { get; init; }

    public override bool StaysWithNext(LayoutContext context) => KeepLastWithNext;

    public override Fit Fit(LayoutContext context, Room room)
    {
        return context.Fit(Composed(context, IsShort), room with { Top = null });

        // What takes as much of a page as this does not look forlorn, and what keeps it from standing alone wastes more.
        bool IsShort(Block entry) =>
            context.Fit(entry, Room.Endless(room.Width)) is not Fit.Fits { Fragment: var whole }
            || whole.Height < context.BodyHeight / 8;
    }

    public override WidthRange Widths(LayoutContext context) =>
        Composed(context, _ => true).Widths(context);

    public override Spacing Spacing(LayoutContext context) =>
        Composed(context, _ => true).Spacing(context);

    internal override Points? RhythmicBaseline(LayoutContext context) =>
        Items.IsEmpty ? null : Items[0].Content.RhythmicBaseline(context);

    public override IEnumerable<Block> Children => Items.Select(item => item.Content);

    Tagged Composed(LayoutContext context, Func<Block, bool> isShort) =>
        new(TagRole.List, new Stack(Entries(context, isShort)) { Gap = Gap })
        {
            Numbered = Numbered,
        };

    ImmutableArray<Block> Entries(LayoutContext context, Func<Block, bool> isShort)
    {
        var indent = Items
            .Select((item, index) => WidthOf(context, LabelOf(item, index)) + AfterLabel)
            .Aggregate(Indent, Points.Max);
        Block[] entries = [.. Items.Select((item, index) => Entry(item, index, indent))];
        if (KeepItemsTogether && entries.Length > 1)
        {
            // Neither a short first item nor a short last one stands alone on a page.
            var (first, last) = (isShort(entries[0]), isShort(entries[^1]));
            if (first)
            {
                entries[0] = new KeepWithNext(entries[0]);
            }

            if (last && entries[^2] is not KeepWithNext)
            {
                entries[^2] = new KeepWithNext(entries[^2]);
            }
        }

        return [.. entries];
    }

    string LabelOf(ListItem item, int index) =>
        item.Label ?? (Numbered ? $"{Start + index}{AfterNumber}" : Bullet);

    Points WidthOf(LayoutContext context, string label) =>
        new Text([new Inlines.Run(label)], LabelStyle).Widths(context).Natural;

    Block Entry(ListItem item, int index, Points indent)
    {
        Block entry = new ListEntry(LabelOf(item, index), LabelStyle, indent, item.Content)
        {
            LabelLink = item.LabelLink,
        };
        return KeepItemsTogether ? new KeepTogether(entry) : entry;
    }
}
