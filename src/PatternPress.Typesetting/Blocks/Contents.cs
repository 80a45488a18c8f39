using System.Collections.Immutable;
using PatternPress.Typesetting.Inlines;
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

    /// <summary>
    /// The parts one level below <see cref="Depth"/> stand in running lines below their entry, each with its page, unless
    /// there are fewer than two or more than this: a list that long is looked for in its own section. None with 0.
    /// </summary>
    public int MostParts { get; init; }

    public override Fit Fit(LayoutContext context, Room room)
    {
        var entries = new List<Block>();
        var parts = new List<int>();
        var level = 1;
        for (var i = 0; i < context.Anchors.Count; i++)
        {
            var anchor = context.Anchors[i];
            if (anchor.Level > 0 && anchor.Level <= Depth)
            {
                AddParts();
                level = anchor.Level;
                entries.Add(
                    new ContentsEntry(
                        i,
                        anchor.Title,
                        StyleOf(context, level),
                        Indent * (level - 1)
                    )
                );
            }
            else if (anchor.Level == Depth + 1 && entries.Count > 0)
            {
                parts.Add(i);
            }
        }

        AddParts();
        return context.Fit(new Tagged(TagRole.Contents, new Stack(entries)), room);

        void AddParts()
        {
            if (ShowsParts(parts.Count))
            {
                entries.Add(
                    new Tagged(
                        TagRole.ContentsItem,
                        new Text(Running(context, parts), StyleOf(context, Depth + 1))
                    )
                );
            }

            parts.Clear();
        }
    }

    /// <summary>Whether so many parts of an entry are listed.</summary>
    public bool ShowsParts(int count) => count > 1 && count <= MostParts;

    // "First part 26 · Second part 27": each with its page one link, never parted from its number.
    static ImmutableArray<Inline> Running(LayoutContext context, List<int> parts)
    {
        var words = ImmutableArray.CreateBuilder<Inline>();
        foreach (var index in parts)
        {
            if (words.Count > 0)
            {
                words.Add(new Run(" · "));
            }

            var anchor = context.Anchors[index];
            var link = new LinkTarget.ToAnchorAt(index)
            {
                Words = $"{anchor.Title}, {anchor.Page}",
            };
            words.AddRange(FractionText.Parse(anchor.Title, link: link));
            words.Add(
                new Run(anchor.Page == 0 ? "\u00A000" : $"\u00A0{anchor.Page}") { Link = link }
            );
        }

        return words.DrainToImmutable();
    }

    string StyleOf(LayoutContext context, int level)
    {
        var name = $"{StylePrefix}{level}";
        return context.Styles.Find(name) is null ? Styles.StyleSheet.BodyName : name;
    }
}
