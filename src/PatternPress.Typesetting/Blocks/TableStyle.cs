using PatternPress.Typesetting.Drawings;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Rules, stripes and padding of a table.</summary>
public sealed record TableStyle
{
    /// <summary>Thin rules between rows, heavier ones above and below.</summary>
    public static readonly TableStyle Ruled = new();

    /// <summary>Every other row on a tint, no rules between rows.</summary>
    public static readonly TableStyle Striped = new() { RowRule = null, Stripe = Ink.Grey(0.94) };

    /// <summary>Nothing but the content.</summary>
    public static readonly TableStyle Bare = new()
    {
        TopRule = null,
        HeaderRule = null,
        RowRule = null,
        GroupRule = null,
        BottomRule = null,
    };

    public Insets Padding { get; init; } = Insets.Of(new(5_000), new(3_000));

    public Stroke? TopRule { get; init; } = new(new(900), Ink.Black);

    public Stroke? HeaderRule { get; init; } = new(new(600), Ink.Black);

    public Stroke? RowRule { get; init; } = new(new(350), Ink.Grey(0.7));

    public Stroke? GroupRule { get; init; } = new(new(600), Ink.Black);

    public Stroke? BottomRule { get; init; } = new(new(900), Ink.Black);

    /// <summary>Rules between columns.</summary>
    public Stroke? ColumnRule { get; init; }

    /// <summary>Behind every other row.</summary>
    public Ink? Stripe { get; init; }

    /// <summary>Behind header rows.</summary>
    public Ink? HeaderBackground { get; init; }
}
