using System.Collections.Immutable;
using CsCheck;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Settings.Fills;
using PatternPress.Source;

namespace PatternPress.Tests.Quilting.Settings;

public sealed class FillTests
{
    private static string Spread(FillKind kind, string text, int rows, int columns, int seed = 0)
    {
        FillCatalog
            .Of(kind)
            .TrySpread(
                Of(kind, text, seed),
                new FillGrid(rows, columns),
                out FillCell[][]? cells,
                out string? problem
            )
            .ShouldBeTrue(problem);
        return string.Join(
            '\n',
            Enumerable
                .Range(0, rows)
                .Select(r =>
                    string.Join(
                        ' ',
                        Enumerable.Range(0, columns).Select(c => cells![r][c].Coloring)
                    )
                )
        );
    }

    private static Fill Of(FillKind kind, string text, int seed = 0) =>
        new(
            kind,
            [
                .. text.Split('\n')
                    .Select(line =>
                        line.Split(' ')
                            .Select(w => new FillCell(w, Turn.None, Span.None))
                            .ToImmutableArray()
                    ),
            ],
            seed,
            Span.None
        );

    [Test]
    public void A_drawing_repeats_to_the_right_and_down() =>
        Spread(FillKind.Repeat, "a b\nc d", 3, 3).ShouldBe("a b a\nc d c\na b a");

    [Test]
    public void A_checkerboard_alternates() =>
        Spread(FillKind.Checkerboard, "a b", 2, 3).ShouldBe("a b a\nb a b");

    [Test]
    public void Diagonals_run_from_lower_left_to_upper_right() =>
        Spread(FillKind.Diagonals, "a b c", 3, 4).ShouldBe("a b c a\nb c a b\nc a b c");

    [Test]
    public void Rows_are_of_one_coloring_each() =>
        Spread(FillKind.Rows, "a b", 3, 2).ShouldBe("a a\nb b\na a");

    [Test]
    public void Rings_start_in_the_middle() =>
        Spread(FillKind.Rings, "a\nb\nc", 5, 5)
            .ShouldBe("c c c c c\nc b b b c\nc b a b c\nc b b b c\nc c c c c");

    [Test]
    public void Rings_of_an_oblong_have_an_oblong_middle() =>
        Spread(FillKind.Rings, "a\nb", 3, 5).ShouldBe("b b b b b\nb a a a b\nb b b b b");

    [Test]
    public void A_ring_with_several_colorings_takes_them_in_turn_clockwise() =>
        Spread(FillKind.Rings, "a\n1 2 3", 3, 3).ShouldBe("1 2 3\n2 a 1\n1 3 2");

    [Test]
    public void A_map_of_another_size_is_refused_with_both_sizes()
    {
        FillCatalog
            .Of(FillKind.Map)
            .TrySpread(Of(FillKind.Map, "a b\na b"), new FillGrid(3, 2), out _, out string? problem)
            .ShouldBeFalse();
        problem.ShouldBe("the map is 2 across and 2 down, the size is 2 across and 3 down");
    }

    [Test]
    public void One_coloring_cannot_be_scattered() =>
        FillCatalog
            .Of(FillKind.Scatter)
            .TrySpread(Of(FillKind.Scatter, "a"), new FillGrid(2, 2), out _, out _)
            .ShouldBeFalse();

    [Test]
    public void A_scatter_keeps_neighbours_apart_and_counts_even() =>
        Gen.Select(Gen.Int[2, 9], Gen.Int[1, 14], Gen.Int[1, 14], Gen.Int)
            .Sample(
                (kinds, rows, columns, seed) =>
                {
                    string names = string.Join(' ', Enumerable.Range(0, kinds));
                    string[][] dealt =
                    [
                        .. Spread(FillKind.Scatter, names, rows, columns, seed)
                            .Split('\n')
                            .Select(l => l.Split(' ')),
                    ];
                    for (int r = 0; r < rows; r++)
                    {
                        for (int c = 0; c < columns; c++)
                        {
                            (r + 1 < rows && dealt[r][c] == dealt[r + 1][c]).ShouldBeFalse();
                            (c + 1 < columns && dealt[r][c] == dealt[r][c + 1]).ShouldBeFalse();
                        }
                    }
                    List<int> counts =
                    [
                        .. Enumerable
                            .Range(0, kinds)
                            .Select(k => dealt.SelectMany(d => d).Count(x => x == $"{k}")),
                    ];
                    (counts.Max() - counts.Min()).ShouldBeLessThanOrEqualTo(1);
                },
                iter: 300
            );

    [Test]
    public void The_same_seed_gives_the_same_quilt_and_another_seed_another()
    {
        string first = Spread(FillKind.Scatter, "a b c d", 6, 6, 7);
        Spread(FillKind.Scatter, "a b c d", 6, 6, 7).ShouldBe(first);
        Spread(FillKind.Scatter, "a b c d", 6, 6, 8).ShouldNotBe(first);
    }
}
