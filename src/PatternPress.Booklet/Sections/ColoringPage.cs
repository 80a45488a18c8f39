using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Booklet.Sections;

/// <summary>The quilt in outline, for the maker's own colours.</summary>
internal sealed class ColoringPage : Section
{
    public override string Name => "coloring-page";

    public override ImmutableArray<Block> Build(SectionContext context)
    {
        // The smallest size has the largest patches to color.
        int shown = Enumerable
            .Range(0, context.Sizes.Length)
            .OrderBy(i => context.Sizes[i].Width * context.Sizes[i].Height)
            .FirstOrDefault();
        return
            context.Figures.ColoringPage(shown, context.TextWidth, context.TextHeight - 90.Pt)
                is { } figure
            ? context.Fill(
                Name,
                WordData.Empty.With("shown_size", context.Sizes[shown].Name),
                new Dictionary<string, ImmutableArray<Block>>
                {
                    ["picture"] =
                    [
                        figure with
                        {
                            Alignment = Alignment.Centre,
                            MinWidth = figure.Drawing.NaturalWidth.Scale(0.8),
                        },
                    ],
                },
                Name
            )
            : [];
    }
}
