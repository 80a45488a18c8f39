using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Model;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Booklet.Sections;

/// <summary>The front page: title, the quilt in colour, sizes, skill, edition.</summary>
internal sealed class Cover : Section
{
    public override string Name => "cover";

    public override ImmutableArray<Block> Build(SectionContext context) =>
        context.Fill(
            Name,
            null,
            new Dictionary<string, ImmutableArray<Block>>
            {
                ["title"] = Title(context),
                ["picture"] = PictureOf(context),
                ["facts"] = Facts(context),
                ["imprint"] = Imprint(context),
            }
        );

    /// <summary>What the gaps and the rule between the parts of the cover take, with some to spare.</summary>
    private static readonly Points Spaces = 92.Pt;

    /// <summary>The width of a letter of a title, as a share of its size; on the safe side.</summary>
    private const double LetterWidth = 0.56;

    private static int LinesOf(string title, string name, SectionContext context) =>
        context.Theme.Styles.Find(name) is { } style
            ? (int)
                Math.Ceiling(
                    title.Length * LetterWidth * style.Size.Value / context.TextWidth.Value
                )
            : 1;

    private static ImmutableArray<Block> Title(SectionContext context)
    {
        PatternInfo info = context.Pattern.Info;
        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.Add(new Text(info.Designer, "cover-designer"));
        blocks.Add(
            new Heading(1, FractionText.Parse(Typography.Set(info.Title.Value)))
            {
                Style = "cover-title",
                Name = "cover",
                Listed = false,
            }
        );
        if (info.Subtitle is { Length: > 0 } subtitle)
        {
            blocks.Add(new Text(Typography.Set(subtitle), "cover-subtitle"));
        }
        blocks.Add(new Gap(14.Pt));
        return blocks.ToImmutable();
    }

    /// <summary>The size in the middle of the list: neither a doll's quilt nor a bedspread.</summary>
    private static ImmutableArray<Block> PictureOf(SectionContext context)
    {
        int shown = (context.Sizes.Length - 1) / 2;
        PatternInfo info = context.Pattern.Info;
        Points rest =
            Lines("cover-designer", 1)
            + Lines("cover-title", LinesOf(info.Title.Value, "cover-title", context))
            + (info.Subtitle is { Length: > 0 } ? Lines("cover-subtitle", 1) : Points.Zero)
            + Lines("caption", 1)
            + Lines("eyebrow", 1)
            + Lines("cover-fact", context.Sizes.Length)
            + Lines("cover-imprint", 2)
            + Spaces;
        Points height = context.TextHeight - rest;
        Points Lines(string name, int count) =>
            context.Theme.Styles.Find(name) is { } style
                ? (style.Leading * count) + style.SpaceBefore + style.SpaceAfter
                : Points.Zero;
        return context.Figures.Quilt(shown, context.TextWidth, height) is { } figure
            ?
            [
                figure with
                {
                    Alignment = Alignment.Centre,
                    Caption = new Text(
                        context.Labels.Format("shown", context.Sizes[shown].Name),
                        "caption"
                    )
                    {
                        Alignment = Alignment.Centre,
                    },
                    SpaceAfter = 14.Pt,
                },
            ]
            : [];
    }

    private static ImmutableArray<Block> Facts(SectionContext context)
    {
        var columns = ImmutableArray.CreateBuilder<Column>();
        columns.Add(
            Column.Share(
                new Stack([
                    new Text(context.Labels["sizes"], "eyebrow"),
                    .. context.Sizes.Select(s => new Text(
                        [
                            .. FractionText.Parse(
                                s.Name + "\u2002",
                                new InlineStyle { Bold = true }
                            ),
                            .. FractionText.Parse(context.Numbers.Size(s.Width, s.Height)),
                        ],
                        "cover-fact"
                    )),
                ]),
                2
            )
        );
        PatternInfo info = context.Pattern.Info;
        if (info.Skill is { Length: > 0 } skill)
        {
            columns.Add(Fact(context.Labels["skill"], skill));
        }
        columns.Add(
            Fact(
                context.Labels["fabrics"],
                context.Labels.Count("fabric-count", context.Tables.Fabrics.Length)
            )
        );
        return
        [
            new Rule(new Stroke(0.9.Pt, context.Theme.Accent)) { SpaceAfter = 9.Pt },
            new Columns(columns.ToImmutable()) { Gap = 20.Pt },
        ];
    }

    private static Column Fact(string label, string value) =>
        Column.Share(new Stack(new Text(label, "eyebrow"), new Text(value, "cover-fact")));

    private static ImmutableArray<Block> Imprint(SectionContext context)
    {
        PatternInfo info = context.Pattern.Info;
        string edition = context.Labels.Format(
            "edition-dated",
            info.Edition.Value,
            CommonWords.Date(info.Date, context.Labels)
        );
        return
        [
            new Gap(14.Pt),
            new Text(
                string.Join(
                    " \u00b7 ",
                    new[] { edition, info.Copyright, info.Website, info.Contact }.Where(s =>
                        !string.IsNullOrWhiteSpace(s)
                    )
                ),
                "cover-imprint"
            ),
        ];
    }
}
