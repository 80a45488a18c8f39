using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Blocks;

/// <summary>The table of contents: the document's anchors with their pages, linked, with leader dots between.</summary>
public sealed record Contents : Block
{
    /// <summary>The lowest level listed.</summary>
    public int Depth { get; init; } = 2;

    /// <summary>The styles of the entries are this with the level's number, as in <c>contents1</c>; unknown ones fall back to running text.</summary>
    public string StylePrefix { get; init; } = "contents";

    /// <summary>Indent of each level below the first.</summary>
    public Points Indent { get; init; } = new(14_000);

    public override Fit Fit(LayoutContext context, Room room)
    {
        var entries = context
            .Anchors.Select((anchor, index) => (anchor, index))
            .Where(one => one.anchor.Level > 0 && one.anchor.Level <= Depth)
            .Select(one => new ContentsEntry(
                one.index,
                one.anchor.Title,
                StyleOf(context, one.anchor.Level),
                Indent * (one.anchor.Level - 1)
            ));
        return context.Fit(new Tagged(TagRole.Contents, new Stack([.. entries])), room);
    }

    string StyleOf(LayoutContext context, int level)
    {
        var name = $"{StylePrefix}{level}";
        return context.Styles.Find(name) is null ? Styles.StyleSheet.BodyName : name;
    }
}
