using System.Collections.Immutable;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>The list of sections with their pages.</summary>
internal sealed class ContentsPage : Section
{
    public override string Name => "contents";

    public override ImmutableArray<Block> Build(SectionContext context) =>
        context.Fill(
            Name,
            null,
            new Dictionary<string, ImmutableArray<Block>>
            {
                ["contents"] =
                [
                    // The title alone is above the sections, and it is not listed.
                    new Contents { Depth = 2, Indent = Points.Zero },
                ],
            },
            Name,
            listed: false
        );
}
