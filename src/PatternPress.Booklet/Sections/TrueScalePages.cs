using PatternPress.Booklet.Figures;
using PatternPress.Booklet.Words;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>Sets shapes in true size on pages of their own.</summary>
internal static class TrueScalePages
{
    /// <summary>Above each sheet stands a heading.</summary>
    private static readonly Points HeadingRoom = 42.Pt;

    /// <param name="heading">The label of a sheet's heading, filled with the names on it.</param>
    public static IEnumerable<Block> Of(
        IEnumerable<TrueScaleShape> shapes,
        string heading,
        SectionContext context
    )
    {
        Labels labels = context.Labels;
        var words = new TrueScaleSheet.SheetWords(
            labels["true-scale-print"],
            [labels["true-scale-check"], labels["true-scale-wrong"]],
            labels["true-scale-inch"],
            labels["true-scale-centimetres"],
            (name, part, parts) => labels.Format("true-scale-part", name, part, parts)
        );
        foreach (
            TrueScaleSheet.Sheet sheet in context.Figures.TrueScale(
                shapes,
                words,
                context.TextWidth,
                context.TextHeight - HeadingRoom
            )
        )
        {
            yield return new PageBreak();
            yield return new Heading(
                3,
                labels.Format(heading, string.Join(", ", sheet.Names.Distinct()))
            );
            yield return new Figure(sheet.Picture.Drawing, sheet.Picture.AltText);
        }
    }
}
