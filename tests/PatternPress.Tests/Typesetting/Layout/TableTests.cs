using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Layout;

public class TableTests
{
    static readonly TableStyle Bare = TableStyle.Bare with { Padding = Insets.None };

    static TableRow Row(string name, int height, int columns = 2) =>
        new(
            Enumerable
                .Range(1, columns)
                .Select(i => new TableCell(new Solid($"{name}{i}", 20, height)))
        );

    static Table Of(params TableRow[] rows) =>
        new([TableColumn.Fixed(40.Pt), TableColumn.Share()], [.. rows]) { Style = Bare };

    [Test]
    public void Cells_stand_in_their_columns() =>
        LayoutOf
            .Pages(Of(Row("a", 10), Row("b", 20)))
            .ShouldBe("1: a1 0 0 20x10 a2 40 0 20x10 b1 0 10 20x20 b2 40 10 20x20");

    [Test]
    public void Padding_stands_in_every_cell() =>
        LayoutOf
            .Pages(
                Of(Row("a", 10), Row("b", 20)) with
                {
                    Style = TableStyle.Bare with { Padding = Insets.Of(2.Pt, 3.Pt) },
                }
            )
            .ShouldBe("1: a1 2 3 20x10 a2 42 3 20x10 b1 2 19 20x20 b2 42 19 20x20");

    [Test]
    public void Rows_stay_whole() =>
        LayoutOf
            .Pages(Of(Row("a", 100, 1), Row("b", 41, 1)))
            .ShouldBe("1: a1 0 0 20x100\n2: b1 0 0 20x41");

    [Test]
    public void The_header_comes_again_with_the_rest() =>
        LayoutOf
            .Pages(
                Of(Row("a", 100, 1), Row("b", 41, 1), Row("c", 5, 1)) with
                {
                    Header = [Row("h", 10, 1)],
                }
            )
            .ShouldBe("1: h1 0 0 20x10 a1 0 10 20x100\n2: h1 0 0 20x10 b1 0 10 20x41 c1 0 51 20x5");

    [Test]
    public void The_header_is_tagged_once_and_an_artifact_afterwards() =>
        LayoutOf
            .Tags(
                LayoutOf.Typeset(
                    Of(Row("a", 100, 1), Row("b", 41, 1)) with
                    {
                        Header = [Row("h", 10, 1)],
                    }
                )
            )
            .ShouldBe(
                "1: Table1( TableHead2( TableRow3( HeaderCell4( h1 ) ) ) TableBody5( TableRow6( DataCell7( a1 ) ) ) )\n"
                    + "2: Table1( Artifact( h1 ) TableBody5( TableRow8( DataCell9( b1 ) ) ) )"
            );

    [Test]
    public void A_header_is_never_alone_at_the_foot() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Solid("x", 10, 100),
                    Of(Row("a", 35, 1)) with
                    {
                        Header = [Row("h", 10, 1)],
                    }
                )
            )
            .ShouldBe("1: x 0 0 10x100\n2: h1 0 0 20x10 a1 0 10 20x35");

    [Test]
    public void Rows_of_a_group_stay_together() =>
        LayoutOf
            .Pages(
                Of(
                    Row("a", 60, 1),
                    Row("b", 50, 1) with
                    {
                        KeepWithNext = true,
                    },
                    Row("c", 50, 1) with
                    {
                        KeepWithNext = true,
                    },
                    Row("d", 10, 1),
                    Row("e", 20, 1)
                )
            )
            .ShouldBe(
                "1: a1 0 0 20x60\n2: b1 0 0 20x50 c1 0 50 20x50 d1 0 100 20x10 e1 0 110 20x20"
            );

    [Test]
    public void A_group_taller_than_a_page_is_divided_between_rows() =>
        LayoutOf
            .Pages(
                Of([
                    .. Enumerable
                        .Range(1, 4)
                        .Select(i => Row($"r{i}_", 50, 1) with { KeepWithNext = true }),
                ])
            )
            .ShouldBe("1: r1_1 0 0 20x50 r2_1 0 50 20x50\n2: r3_1 0 0 20x50 r4_1 0 50 20x50");

    [Test]
    public void A_row_taller_than_a_page_is_divided_if_it_can_be() =>
        LayoutOf
            .Pages(
                Of(
                    new TableRow(
                        new TableCell(new Flowing("a", 20, 200)),
                        new TableCell(new Solid("b", 20, 10))
                    )
                ) with
                {
                    Header = [Row("h", 10, 1)],
                }
            )
            .ShouldBe("1: h1 0 0 20x10 a 0 10 20x130 b 40 10 20x10\n2: h1 0 0 20x10 a 0 10 20x70");

    [Test]
    public void A_divided_row_is_one_row_to_those_who_hear_it() =>
        LayoutOf
            .Tags(LayoutOf.Typeset(Of(new TableRow(new TableCell(new Flowing("a", 20, 200))))))
            .ShouldBe(
                "1: Table1( TableBody2( TableRow3( DataCell4( a ) ) ) )\n2: Table1( TableBody2( TableRow3( DataCell4( a ) ) ) )"
            );

    [Test]
    public void A_row_that_cannot_be_divided_is_reported_with_its_origin() =>
        LayoutOf
            .Pages(Of(Row("a", 150, 1) with { Origin = "row 1" }, Row("b", 10, 1)))
            .ShouldBe("1: a1 0 0 20x150\n2: b1 0 0 20x10\nTooTall on page 1 at row 1");

    [Test]
    public void Cells_may_span_columns()
    {
        var table = Of(new TableRow(new TableCell(new Wide("a", 10), 2)), Row("b", 10));
        LayoutOf.Pages(table).ShouldBe("1: a 0 0 100x10 b1 0 10 20x10 b2 40 10 20x10");
    }

    [Test]
    public void Cells_too_many_for_the_columns_are_left_out() =>
        LayoutOf.Pages(Of(Row("a", 10, 3))).ShouldBe("1: a1 0 0 20x10 a2 40 0 20x10");

    [Test]
    public void Natural_columns_fit_all_rows() =>
        LayoutOf
            .Pages(
                new Table(
                    [TableColumn.Natural(), TableColumn.Natural()],
                    [
                        new TableRow(
                            new TableCell(new Solid("a", 10, 5)),
                            new TableCell(new Solid("b", 20, 5))
                        ),
                        new TableRow(
                            new TableCell(new Solid("c", 30, 5)),
                            new TableCell(new Solid("d", 5, 5))
                        ),
                    ]
                )
                {
                    Style = Bare,
                }
            )
            .ShouldBe("1: a 0 0 10x5 b 30 0 20x5 c 0 5 30x5 d 30 5 5x5");

    [Test]
    public void Columns_wider_than_the_place_are_reported() =>
        LayoutOf
            .Pages(
                new Table([TableColumn.Fixed(80.Pt), TableColumn.Fixed(40.Pt)], [Row("a", 5)])
                {
                    Style = Bare,
                    Origin = "table 1",
                }
            )
            .ShouldBe("1: a1 0 0 20x5 a2 80 0 20x5\nTooWide on page 1 at table 1");

    [Test]
    public void Content_that_is_not_text_is_aligned_as_a_whole() =>
        LayoutOf
            .Pages(
                new Table(
                    [
                        TableColumn.Share(1, CellAlignment.Centre),
                        TableColumn.Share(1, CellAlignment.Right),
                    ],
                    [Row("a", 10)]
                )
                {
                    Style = Bare,
                }
            )
            .ShouldBe("1: a1 15 0 20x10 a2 80 0 20x10");

    [Test]
    public void Stripes_go_on_over_the_page()
    {
        var table = Of(Row("a", 70, 1), Row("b", 70, 1), Row("c", 70, 1), Row("d", 70, 1)) with
        {
            Style = Bare with { Stripe = Ink.Black },
        };
        LayoutOf
            .Typeset(table)
            .Pages.Select(page => page.Items.OfType<PageItem.Path>().Single().Outline.Bounds())
            .ShouldBe([(0, 70, 100, 140), (0, 70, 100, 140)]);
    }

    [Test]
    public void Rules_stand_between_rows_and_around()
    {
        var ys = LayoutOf
            .Typeset(
                Of(Row("a", 20), Row("b", 20)) with
                {
                    Header = [Row("h", 10)],
                    Style = TableStyle.Ruled with { Padding = Insets.None },
                }
            )
            .Pages[0]
            .Items.OfType<PageItem.Path>()
            .Select(path => path.Outline.Bounds().Top);
        ys.ShouldBe([30.0, 10, 0, 50]);
    }

    [Test]
    public void Rules_between_columns_leave_spanning_cells_alone()
    {
        var table = Of(
            Row("a", 20),
            new TableRow(new TableCell(new Wide("w", 10), 2)),
            Row("b", 20)
        ) with
        {
            Style = Bare with { ColumnRule = new Stroke(1.Pt, Ink.Black) },
        };
        LayoutOf
            .Typeset(table)
            .Pages[0]
            .Items.OfType<PageItem.Path>()
            .Select(path => path.Outline.Bounds())
            .ShouldBe([(40, 0, 40, 20), (40, 30, 40, 50)]);
    }

    [Test]
    public void An_empty_table_is_no_problem() => LayoutOf.Pages(Of()).ShouldBe("1:");

    // Three columns that would like 60 pt and need 30 share 100 pt: 33 1/3 each, which rounding must not make more.
    [Test]
    public void Squeezed_columns_fill_their_place_to_the_thousandth()
    {
        var table = new Table(
            [TableColumn.Natural(), TableColumn.Natural(), TableColumn.Natural()],
            [
                new TableRow(
                    Enumerable.Range(1, 3).Select(i => new TableCell(new Flowing($"c{i}", 60, 10)))
                ),
            ]
        )
        {
            Style = Bare,
        };
        LayoutOf.Typeset(table).Problems.ShouldBeEmpty();
    }
}
