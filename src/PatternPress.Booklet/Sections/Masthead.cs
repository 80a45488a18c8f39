using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Booklet.Sections;

/// <summary>The heading of a document without a cover: designer, title, what it is.</summary>
internal sealed class Masthead : Section
{
    public override string Name => "masthead";

    public override bool HasSomethingToSay(PrintedTables tables) => false;

    public override ImmutableArray<Block> Build(SectionContext context)
    {
        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.Add(new Text(context.Pattern.Info.Designer, "cover-designer"));
        blocks.Add(
            new Heading(1, FractionText.Parse(Typography.Set(context.Pattern.Info.Title.Value)))
            {
                Name = Name,
                Listed = false,
            }
        );
        blocks.Add(
            new Rule(new Stroke(0.9.Pt, context.Theme.Accent))
            {
                SpaceBefore = 2.Pt,
                SpaceAfter = 4.Pt,
            }
        );
        return blocks.ToImmutable();
    }
}
