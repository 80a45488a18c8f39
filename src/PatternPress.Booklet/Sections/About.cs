using System.Collections.Immutable;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>What the designer has to say about the quilt.</summary>
internal sealed class About : Section
{
    public override string Name => "about";

    public override ImmutableArray<Block> Build(SectionContext context)
    {
        ImmutableArray<Block> about = context.About();
        return about.IsEmpty
            ? []
            : context.Fill(
                Name,
                null,
                new Dictionary<string, ImmutableArray<Block>> { ["about"] = about },
                Name
            );
    }
}
