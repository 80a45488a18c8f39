using System.Collections.Immutable;
using PatternPress.Quilting.Tables;
using PatternPress.Quilting.Techniques;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Booklet.Sections;

/// <summary>The steps of a unit: numbered text with its diagram at the side.</summary>
internal static class UnitSteps
{
    private static readonly Points DiagramWidth = 205.Pt;
    private static readonly Points DiagramHeight = 105.Pt;

    /// <summary>With more pictures than this, a diagram stands below its text, across the page.</summary>
    private const int MostBeside = 2;

    public static IEnumerable<Block> Of(UnitTable unit, UnitWords words, SectionContext context)
    {
        (Points Width, Points Height) below = (
            context.TextWidth - context.Grown(24.Pt),
            context.Grown(84.Pt)
        );
        // All steps at one scale, so that pieces keep their size from step to step.
        Points scale = Points.Min(
            context.Figures.StepScale(
                unit.Steps.Where(s => !IsWide(s)),
                words,
                context.Grown(DiagramWidth),
                context.Grown(DiagramHeight)
            ),
            context.Figures.StepScale(unit.Steps.Where(IsWide), words, below.Width, below.Height)
        );
        var items = ImmutableArray.CreateBuilder<ListItem>();
        foreach (Step step in unit.Steps)
        {
            ImmutableArray<Block> text = context.Step(unit.Technique, step.Name, words.Data);
            if (text.IsEmpty)
            {
                continue;
            }
            Figure? figure = context.Figures.Step(unit, step, words, scale);
            int number = items.Count + 1;
            // The number of a step leads to its diagram, which may stand below several lines.
            var anchor = new Anchor(context.NextDiagram());
            Block content =
                figure is null ? new Stack(text)
                : IsWide(step)
                    ? new Stack([
                        .. text,
                        anchor,
                        figure with
                        {
                            SpaceBefore = 4.Pt,
                            SpaceAfter = 4.Pt,
                        },
                    ])
                : new Columns(
                    Column.Share(new Stack(text)),
                    Column.Fixed(context.Grown(DiagramWidth), new Stack(anchor, figure))
                )
                {
                    Gap = 16.Pt,
                    StackBelow = context.Grown(150.Pt),
                };
            items.Add(
                new ListItem(new KeepTogether(content))
                {
                    LabelLink = figure is null
                        ? null
                        : context.Setting(null, "step").ToDiagram(anchor.Name, number),
                }
            );
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

    /// <summary>More than this wider than high, pictures would be too low at the side of the text.</summary>
    private const double WidestBeside = 4;

    private static bool IsWide(Step step)
    {
        ImmutableArray<SketchFrame> frames = step.Sketch.Frames;
        if (frames.Length > MostBeside)
        {
            return true;
        }
        double width = frames.Sum(f => f.Bounds.Width.Inches.ToDouble()),
            height = frames.Select(f => f.Bounds.Height.Inches.ToDouble()).DefaultIfEmpty(1).Max();
        return width > height * WidestBeside;
    }
}
