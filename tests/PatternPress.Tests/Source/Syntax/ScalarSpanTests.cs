using CsCheck;
using NUnit.Framework;
using PatternPress.Source;
using PatternPress.Source.Syntax;
using Shouldly;

namespace PatternPress.Tests.Source.Syntax;

/// <summary>Every character of every scalar knows its place in the file, in every style.</summary>
public sealed class ScalarSpanTests
{
    [Test]
    public void Each_character_is_where_it_was_written() =>
        Scribe.Pages.Sample(
            page =>
            {
                var tree = SyntaxTree.Read("page.yaml", page.Text);
                tree.Diagnostics.ShouldBeEmpty(page.Text);
                var found = Scalars(tree.Root).ToList();
                found.Count.ShouldBe(page.Scalars.Count, page.Text);
                for (var i = 0; i < found.Count; i++)
                {
                    Same(page, tree.Source, page.Scalars[i], found[i]);
                }
            },
            iter: 1500
        );

    private static void Same(
        Scribe.Page page,
        SourceText source,
        Scribe.Written written,
        ScalarNode found
    )
    {
        found.Value.ShouldBe(written.Value, page.Text);
        found.Style.ShouldBe(written.Style, page.Text);
        for (var i = 0; i < written.Value.Length; i++)
        {
            var (from, to) = written.Places[i];
            found
                .SpanOf(i, 1)
                .ShouldBe(
                    source.SpanOf(from, to),
                    $"character {i} of `{written.Value}` in\n{page.Text}"
                );
        }

        if (written.Value.Length > 1)
        {
            found
                .SpanOf(0, written.Value.Length)
                .ShouldBe(source.SpanOf(written.Places[0].From, written.Places[^1].To), page.Text);
        }
    }

    private static IEnumerable<ScalarNode> Scalars(Node node) =>
        node switch
        {
            MapNode map => map.Entries.SelectMany(entry => Scalars(entry.Value)),
            ListNode list => list.Items.SelectMany(Scalars),
            ScalarNode scalar => [scalar],
            _ => [],
        };

    [Test]
    public void A_word_of_a_map_has_its_own_line_and_column()
    {
        var tree = SyntaxTree.Read(
            "lamp.yaml",
            """
            blocks:
              lamp:
                map: |
                  s G G s
                  E C C W

                  s F X s
            """
        );
        var map = (ScalarNode)
            ((MapNode)((MapNode)((MapNode)tree.Root)["blocks"]!)["lamp"]!)["map"]!;
        var row = map.Lines()[3];
        row.Text.ShouldBe("s F X s");
        var wrong = row.Words()[2];
        wrong.Text.ShouldBe("X");
        wrong.Span.ShouldBe(new Span("lamp.yaml", 7, 11, 7, 12));
        map.Span.ShouldBe(new Span("lamp.yaml", 3, 10, 7, 14));
    }

    [Test]
    public void Slices_split_and_trim_in_place()
    {
        var tree = SyntaxTree.Read("a.yaml", "unit: ' geese up ,  ray on sky'");
        var scalar = (ScalarNode)((MapNode)tree.Root)["unit"]!;
        var parts = scalar.Whole.Split(',');
        parts.Select(part => part.Text).ShouldBe(["geese up", "ray on sky"]);
        parts[1].Span.ShouldBe(new Span("a.yaml", 1, 21, 1, 31));
        parts[1].Words()[2].Span.ShouldBe(new Span("a.yaml", 1, 28, 1, 31));
        scalar.SpanOf(100, 5).ShouldBe(new Span("a.yaml", 1, 31, 1, 31));
    }

    [TestCase("a: b", 1, 1, 1, 5)]
    [TestCase("\na:\n  b: c\n\n# end\n", 2, 1, 3, 7)]
    [TestCase("a: [1, 2 ]  # x", 1, 1, 1, 11)]
    [TestCase("a:\n- x\n- y\n\n\n", 1, 1, 3, 4)]
    [TestCase("a: |\n  x\n  y\n\n\n", 1, 1, 3, 4)]
    public void A_map_ends_with_the_last_thing_in_it(
        string text,
        int line,
        int column,
        int endLine,
        int endColumn
    ) =>
        SyntaxTree
            .Read("a.yaml", text)
            .Root.Span.ShouldBe(new Span("a.yaml", line, column, endLine, endColumn));

    [Test]
    public void Carriage_returns_and_a_byte_order_mark_move_nothing()
    {
        var plain = SyntaxTree.Read("a.yaml", "a: |\n  x y\n  z\nb: 'c'\n"u8.ToArray());
        var other = SyntaxTree.Read(
            "a.yaml",
            "\uFEFFa: |\r\n  x y\r\n  z\r\nb: 'c'\r\n"u8.ToArray()
        );
        other.Diagnostics.ShouldBeEmpty();
        Scalars(other.Root)
            .Select(scalar => (scalar.Value, scalar.Span))
            .ShouldBe(Scalars(plain.Root).Select(scalar => (scalar.Value, scalar.Span)));
    }
}
