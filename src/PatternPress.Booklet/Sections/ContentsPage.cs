using System.Collections.Immutable;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>The list of sections and, in running lines, of their parts, with their pages.</summary>
internal sealed class ContentsPage : Section
{
    /// <summary>Of more parts, as of the fabrics to cut, the section itself is the list.</summary>
    private const int MostParts = 12;

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
                    new Contents
                    {
                        Depth = 2,
                        Indent = Points.Zero,
                        MostParts = MostParts,
                    },
                ],
            },
            Name,
            listed: false
        );
}
