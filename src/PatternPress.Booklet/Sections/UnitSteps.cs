using System.Collections.Immutable;
using PatternPress.Quilting.Tables;
using PatternPress.Quilting.Techniques;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>The steps of a unit: numbered text with its diagram at the side.</summary>
internal static class UnitSteps
{
    private static readonly Points DiagramWidth = 190.Pt;

    public static IEnumerable<Block> Of(UnitTable unit, UnitWords words, SectionContext context)
    {
        var items = ImmutableArray.CreateBuilder<ListItem>();
        foreach (Step step in unit.Steps)
        {
            ImmutableArray<Block> text = context.Step(unit.Technique, step.Name, words.Data);
            if (text.IsEmpty)
            {
                continue;
            }
            Block content = context.Figures.Step(unit, step, DiagramWidth, 110.Pt) is { } figure
                ? new Columns(Column.Share(new Stack(text)), Column.Fixed(DiagramWidth, figure))
                {
                    Gap = 16.Pt,
                    StackBelow = 150.Pt,
                }
                : new Stack(text);
            items.Add(new ListItem(new KeepTogether(content)));
        }
        if (items.Count > 0)
        {
            yield return new List(items.ToImmutable())
            {
                Numbered = true,
                LabelStyle = "list-label",
                Gap = 9.Pt,
                KeepItemsTogether = true,
            };
        }
    }
}
