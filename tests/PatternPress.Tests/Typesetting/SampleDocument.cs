using System.Collections.Immutable;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Tests.Typesetting;

/// <summary>A document that uses every block, inline and mark at least once.</summary>
static class SampleDocument
{
    public static StyleSheet Styles { get; } =
        new(
            14.Pt,
            new Dictionary<string, TextStyle>
            {
                ["body"] = new()
                {
                    Size = 10.Pt,
                    Leading = 14.Pt,
                    SpaceAfter = 7.Pt,
                    LinkInk = Ink.FromHex("#1c4f82"),
                },
                ["justified"] = new()
                {
                    Size = 10.Pt,
                    Leading = 14.Pt,
                    SpaceAfter = 7.Pt,
                    Alignment = Alignment.Justified,
                },
                ["title"] = new()
                {
                    Family = "Vollkorn",
                    Bold = true,
                    Size = 34.Pt,
                    Leading = 42.Pt,
                    Balanced = true,
                },
                ["heading1"] = Heading(20, 28, 28),
                ["heading2"] = Heading(14, 21, 14),
                ["heading3"] = Heading(11, 14, 7),
                ["caption"] = new()
                {
                    Size = 8.5.Pt,
                    Leading = 11.Pt,
                    Italic = true,
                    SpaceAfter = 7.Pt,
                },
                ["table"] = new()
                {
                    Size = 9.Pt,
                    Leading = 12.Pt,
                    TabularFigures = true,
                },
                ["small"] = new()
                {
                    Size = 8.Pt,
                    Leading = 11.Pt,
                    Ink = Ink.Grey(0.35),
                },
                ["label"] = new()
                {
                    Size = 8.Pt,
                    Leading = 11.Pt,
                    Bold = true,
                    Capitals = true,
                    LetterSpacing = 0.8.Pt,
                    KeepWithNext = true,
                },
                ["contents1"] = new()
                {
                    Bold = true,
                    Leading = 14.Pt,
                    SpaceBefore = 7.Pt,
                },
                ["contents2"] = new() { Leading = 14.Pt },
            }
        );

    public static Document Compose(PaperSize paper, int chapters = 3)
    {
        var frame = new PageFrame(paper, new Insets(54.Pt, 64.Pt, 54.Pt, 64.Pt))
        {
            Header = new Text(
                [
                    new Run("Sampler of blocks & rules")
                    {
                        Style = new InlineStyle { Italic = true },
                    },
                ],
                "small"
            )
            {
                Alignment = Alignment.Right,
            },
            Footer = new Columns(
                Column.Share(new Text("Typesetter’s workshop · edition 1.0.0", "small")),
                Column.Natural(
                    new Text(
                        [new Run("page "), PageField.Page, new Run(" of "), PageField.PageCount],
                        "small"
                    )
                )
            ),
            FirstPageDiffers = true,
        };
        var cover = new PageFrame(paper, Insets.All(72.Pt)) { Background = Weave(paper) };
        return new Document(
            new DocumentInformation("Sampler of blocks & rules", new DateOnly(2026, 11, 1))
            {
                Author = "Typesetter’s workshop",
                Subject = "Every element once",
                Keywords = ["sample", "typesetting"],
                Edition = "1.0.0",
                Rights = "May be copied freely",
            },
            Styles,
            [new PageSequence(cover, Cover()), new PageSequence(frame, Body(chapters))]
        );
    }

    static TextStyle Heading(double size, double leading, double before) =>
        new()
        {
            Family = "Vollkorn",
            Bold = true,
            Size = size.Pt,
            Leading = leading.Pt,
            SpaceBefore = before.Pt,
            SpaceAfter = 7.Pt,
            KeepWithNext = true,
            KeepTogether = true,
            Balanced = true,
        };

    static Stack Cover() =>
        new(
            new Box(
                new Stack(
                    new Heading(1, "Sampler of blocks & rules") { Style = "title" },
                    new Text(
                        "Sixteen strips 2 1/2 in wide, 12 5/16 × 12 5/16 in finished, set 5⁄16 apart"
                    ),
                    new Figure(Star(), "An eight-pointed star of four fabrics")
                    {
                        MaxWidth = 260.Pt,
                        Alignment = Alignment.Centre,
                    }
                )
                {
                    Gap = 14.Pt,
                }
            )
            {
                Padding = Insets.All(28.Pt),
                Background = Ink.White,
                Border = new Stroke(1.5.Pt, Ink.FromHex("#1c4f82")),
                CornerRadius = 12.Pt,
            }
        );

    static Stack Body(int chapters) =>
        new([
            new Text("Contents", "label"),
            new Contents(),
            new Rule(new Stroke(0.5.Pt, Ink.Grey(0.5))) { SpaceBefore = 7.Pt, SpaceAfter = 7.Pt },
            .. Enumerable.Range(1, chapters).SelectMany(Chapter),
            new PageBreak(),
            new Heading(1, "Hatches"),
            new Figure(HatchSheet(), "All hatch patterns with their names") { MinWidth = 300.Pt },
        ]);

    static IEnumerable<Block> Chapter(int number) =>
        [
            new Heading(1, $"Chapter {number}") { Name = $"chapter{number}" },
            new Text([
                new Run("Words may be "),
                new Run("bold") { Style = new InlineStyle { Bold = true } },
                new Run(", "),
                new Run("italic") { Style = new InlineStyle { Italic = true } },
                new Run(", "),
                new Run("coloured") { Style = new InlineStyle { Ink = Ink.FromHex("#a33b20") } },
                new Run(" or "),
                new Run("underlined") { Style = new InlineStyle { Underlined = true } },
                new Run("; they may lead to "),
                new Run("another chapter on page ") { Link = new LinkTarget.ToAnchor("chapter1") },
                PageField.PageOf("chapter1") with
                {
                    Link = new LinkTarget.ToAnchor("chapter1"),
                },
                new Run(" or to "),
                new Run("the web")
                {
                    Link = new LinkTarget.ToWeb("https://example.org/a page?q=ü"),
                },
                new Run(". A swatch "),
                new InlineDrawing(Swatch(Ink.FromHex("#f2a71b")), 9.Pt, "amber") { Drop = 1.Pt },
                new Run(" may stand in a line, and a word of another language, "),
                new Run("Flickendecke")
                {
                    Style = new InlineStyle { Italic = true, Language = "de" },
                },
                new Run(", too. AVATAR, Type, difficult, office: kerned and joined."),
            ]),
            new Text(
                "Cut eight strips 2 1/2 in by the width of the fabric; from these cut 124 squares 2 1/2 × 2 1/2 in. Trim each unit to 12 5/16 in, or to 3 11/32 in where the pattern says so, and press the seam allowances of 1/4 in towards the darker fabric. What is said here goes on for some lines so that even edges can be judged.",
                "justified"
            ),
            new KeepTogether(
                new Box(
                    new Stack(
                        new Text("Careful", "label"),
                        new Text(
                            "A rotary cutter’s blade is sharp: close it whenever you lay it down."
                        )
                    )
                )
                {
                    LeftBar = new Stroke(3.Pt, Ink.FromHex("#a33b20")),
                    Background = Ink.Grey(0.95),
                    SpaceBefore = 7.Pt,
                    SpaceAfter = 7.Pt,
                }
            ),
            new Heading(2, "What to buy"),
            Requirements(),
            new Heading(2, "Steps"),
            new Columns(
                Column.Share(
                    new List(
                        new ListItem("Draw a diagonal line on the back of each 3 7/8 in square."),
                        new ListItem(
                            "Sew 1/4 in from the line on both sides, then cut on the line."
                        ),
                        new ListItem(
                            new Stack(
                                new Text("Press open and trim to 3 1/2 in:"),
                                new List(
                                    new ListItem("line up the seam with the ruler’s diagonal;"),
                                    new ListItem("trim two sides, turn, trim the other two.")
                                )
                            )
                        )
                    )
                    {
                        Numbered = true,
                        KeepItemsTogether = true,
                    }
                ),
                Column.Fixed(
                    150.Pt,
                    new Figure(
                        StepDrawing(),
                        "Two squares with a diagonal line and two seams beside it"
                    )
                    {
                        Caption = new Text("Sew on both sides of the line.", "caption"),
                        MinWidth = 100.Pt,
                    }
                )
            )
            {
                StackBelow = 120.Pt,
            },
            new NeedSpace(60.Pt, new Heading(3, "And the rest")),
            new Text(
                "See the hatches at the end. "
                    + string.Join(
                        ' ',
                        Enumerable.Repeat("Some more words fill this paragraph.", 12)
                    )
            ),
            new Gap(5.Pt),
            new Artifact(new Text("* * *", "small") { Alignment = Alignment.Centre }),
            new Tagged(
                PatternPress.Typesetting.Pages.TagRole.BlockQuote,
                new Text("Measure twice, cut once.")
            )
            {
                Language = "en-GB",
            },
        ];

    static Table Requirements() =>
        new(
            [
                TableColumn.Natural(),
                TableColumn.Share(),
                TableColumn.Natural(CellAlignment.Number),
                TableColumn.Natural(CellAlignment.Number),
                TableColumn.Fixed(80.Pt, CellAlignment.Right),
            ],
            [
                .. Enumerable
                    .Range(0, 9)
                    .Select(i => new TableRow(
                        new TableCell($"{(char)('A' + i)}") { IsHeader = true },
                        new TableCell(
                            i == 4
                                ? "A fabric whose name is so long that it will have to be set on two lines at least"
                                : $"Fabric {i + 1}"
                        ),
                        new TableCell($"{i * 3 + 1} {(i % 2 == 0 ? "1/4" : "5/8")} yd"),
                        new TableCell(
                            i == 3 ? "—"
                            : i == 5 ? "12.75"
                            : $"{i * 7} 3/16"
                        ),
                        new TableCell("cut first")
                    )
                    {
                        KeepWithNext = i % 3 != 2,
                        RuleAbove = i % 3 == 0,
                    }),
                new TableRow(
                    new TableCell(new Text("All together", "table"), 2) { IsHeader = true },
                    new TableCell("99 7/8 yd"),
                    new TableCell("100"),
                    new TableCell("")
                ),
            ]
        )
        {
            Header =
            [
                new TableRow(
                    new TableCell(Bold("Fabric")) { ColumnSpan = 2 },
                    new TableCell(Bold("Yards")),
                    new TableCell(Bold("Length")),
                    new TableCell(Bold("Note"))
                ),
            ],
            Style = TableStyle.Ruled with
            {
                Stripe = Ink.Grey(0.96),
                HeaderBackground = Ink.Grey(0.9),
            },
            Summary = "Yards of each fabric",
            SpaceAfter = 7.Pt,
        };

    static Text Bold(string words) =>
        new([new Run(words) { Style = new InlineStyle { Bold = true } }], "table");

    static Drawing Swatch(Ink ink) =>
        new DrawingBuilder()
            .Area(VectorPath.Rectangle(0, 0, 14, 10), ink, new Stroke(0.4.Pt, Ink.Black))
            .ToDrawing(14, 10);

    static Drawing Weave(PaperSize paper) =>
        new DrawingBuilder()
            .Area(
                VectorPath.Rectangle(0, 0, paper.Width.Value, paper.Height.Value),
                Ink.FromHex("#dfe8f0"),
                null,
                new HatchFill(Hatches.Find("rings")!, Ink.FromHex("#b8cbdc"), 3)
            )
            .ToDrawing(paper.Width.Value, paper.Height.Value);

    static Drawing Star()
    {
        var builder = new DrawingBuilder();
        var thin = new Stroke(0.5.Pt, Ink.Black) { Join = StrokeJoin.Round };
        Ink[] inks =
        [
            Ink.FromHex("#15233b"),
            Ink.FromHex("#f2a71b"),
            Ink.FromHex("#a33b20"),
            Ink.FromHex("#e9e3d5"),
        ];
        for (var row = 0; row < 4; row++)
        {
            for (var column = 0; column < 4; column++)
            {
                var number = (row * 4) + column;
                var hatch = new HatchFill(Hatches.All[number], inks[number % 4].ReadableOn(), 0.8);
                builder.Area(
                    VectorPath.Rectangle(column * 3, row * 3, 3, 3),
                    inks[number % 4],
                    thin,
                    number % 3 == 0 ? hatch : null
                );
                builder.Label(
                    $"{(char)('A' + number)}",
                    new((column * 3) + 1.5, (row * 3) + 1.5),
                    new LabelStyle
                    {
                        Bold = true,
                        Size = 11.Pt,
                        Halo = 2.Pt,
                    }
                );
            }
        }

        return builder.ToDrawing(12, 12, 20.Pt);
    }

    static Drawing StepDrawing()
    {
        var pen = new Stroke(0.6.Pt, Ink.Black);
        var label = new LabelStyle { Size = 7.5.Pt };
        return new DrawingBuilder()
            .Clip(
                VectorPath.RoundedRectangle(6, 6, 88, 88, 3),
                inner =>
                    inner
                        .Area(VectorPath.Rectangle(0, 0, 100, 100), Ink.FromHex("#f2d9a0"))
                        .Group(
                            Transform.Turn(45, new(50, 50)),
                            turned =>
                                turned.Area(
                                    VectorPath.Rectangle(50, -50, 100, 200),
                                    Ink.FromHex("#f7ead0")
                                )
                        )
            )
            .Area(VectorPath.RoundedRectangle(6, 6, 88, 88, 3), null, pen)
            .Line(new(6, 94), new(94, 6), Stroke.Dashed(0.5.Pt, Ink.Black, 4.Pt, 2.Pt))
            .Line(new(6, 86), new(86, 6), Stroke.Dashed(0.8.Pt, Ink.FromHex("#a33b20"), 2.Pt, 2.Pt))
            .Line(new(14, 94), new(94, 14), Stroke.Dotted(1.Pt, Ink.FromHex("#a33b20"), 3.Pt))
            .Line(new(6, 112), new(94, 112), pen, Arrowhead.Filled, Arrowhead.Filled)
            .Line(new(6, 107), new(6, 117), pen)
            .Line(new(94, 107), new(94, 117), pen)
            .Label("3 7/8 in", new(50, 112), label with { Halo = 2.Pt })
            .Line(new(104, 6), new(104, 94), pen, Arrowhead.Tick, Arrowhead.Bar)
            .Label("9 13/16 cm", new(112, 50), label with { Degrees = -90 })
            .Line(new(130, 20), new(130, 60), pen, Arrowhead.Dot, Arrowhead.Open)
            .Area(
                VectorPath.Combine([
                    VectorPath.Circle(new(130, 80), 10),
                    VectorPath.Circle(new(130, 80), 5),
                ]),
                Ink.Grey(0.6),
                pen
            )
            .Area(VectorPath.Arc(new(130, 112), 8, 180, 360), null, pen)
            .ToDrawing(142, 120);
    }

    public static Drawing HatchSheet()
    {
        const int across = 5;
        var builder = new DrawingBuilder();
        for (var i = 0; i < Hatches.All.Length; i++)
        {
            var (x, y) = (i % across * 100.0, i / across * 64.0);
            builder
                .Area(
                    VectorPath.Rectangle(x + 4, y, 92, 42),
                    null,
                    new Stroke(0.5.Pt, Ink.Black),
                    new HatchFill(Hatches.All[i], Ink.Black)
                )
                .Label(
                    $"{i + 1} {Hatches.All[i].Name}",
                    new(x + 50, y + 52),
                    new LabelStyle { Size = 7.Pt }
                );
        }

        return builder.ToDrawing(across * 100, (Hatches.All.Length + across - 1) / across * 64);
    }
}
