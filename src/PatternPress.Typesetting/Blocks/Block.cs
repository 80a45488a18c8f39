using PatternPress.Typesetting.Layout;

namespace PatternPress.Typesetting.Blocks;

/// <summary>
/// A part of a document that can be laid out: immutable, and divided rather than changed. Asking twice gives the same answer.
/// </summary>
public abstract record Block
{
    /// <summary>Where in the caller's input this block came from; handed back with layout problems.</summary>
    public object? Origin { get; init; }

    /// <summary>Answers the room it is offered. Called through <see cref="LayoutContext.Fit"/>.</summary>
    public abstract Fit Fit(LayoutContext context, Room room);

    /// <summary>The widths the block can use; for columns of natural width.</summary>
    public virtual WidthRange Widths(LayoutContext context) => default;

    /// <summary>The space wanted above and below.</summary>
    public virtual Spacing Spacing(LayoutContext context) => default;

    /// <summary>Whether the block must not end a page when something follows it.</summary>
    public virtual bool StaysWithNext(LayoutContext context) => false;

    /// <summary>
    /// How far the block's first baseline lies below its top, where it begins with running text that keeps the rhythm of the
    /// page; none for all else.
    /// </summary>
    internal virtual Points? RhythmicBaseline(LayoutContext context) => null;

    /// <summary>Whether the block shows nothing, so that no page needs to be begun for it alone.</summary>
    public virtual bool IsBlank => false;

    /// <summary>The blocks inside.</summary>
    public virtual IEnumerable<Block> Children => [];
}
