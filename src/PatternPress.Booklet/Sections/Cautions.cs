using System.Collections.Immutable;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>Blades, irons, needles, spray, and where a quilt does not belong.</summary>
internal sealed class Cautions : Section
{
    public override string Name => "cautions";

    public override ImmutableArray<Block> Build(SectionContext context) =>
        context.Fill(Name, null, null, Name);
}
