using System.Text;
using NUnit.Framework;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;
using Shouldly;

namespace PatternPress.Tests.Source.Syntax;

/// <summary>Files made to hang, fill or crash a reader get one message each, and little work is done for them.</summary>
public sealed class HostileFileTests
{
    [Test]
    public void An_alias_bomb_is_refused_without_growing()
    {
        var text = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (var i = 1; i < 60; i++)
        {
            var aliases = string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 9));
            text.Append($"a{i}: &a{i} [{aliases}]\n");
        }

        var before = GC.GetAllocatedBytesForCurrentThread();
        Only(text.ToString(), "PP0111").Others.Length.ShouldBe(4);
        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(20_000_000);
    }

    [TestCase("[", 500_000)]
    [TestCase("{a: ", 200_000)]
    [TestCase("[{", 300_000)]
    [TestCase("- ", 500_000)]
    [TestCase("? ", 500_000)]
    public void Nesting_is_cut_off(string opening, int times) =>
        Only(string.Concat(Enumerable.Repeat(opening, times)), "PP0114");

    [Test]
    public void Nesting_by_indentation_is_cut_off()
    {
        var text = new StringBuilder();
        for (var i = 0; i < 1000; i++)
        {
            text.Append(' ', i).Append("a:\n");
        }

        Only(text.ToString(), "PP0114");
    }

    [Test]
    public void No_break_spaces_that_indent_a_line_are_the_blanks_they_look_like()
    {
        var tree = SyntaxTree.Read("a.yaml", "quilt:\n\u00A0\u00A0fill: L1\u00A0L2\n");
        tree.Diagnostics.ShouldBeEmpty();
        var quilt = ((MapNode)tree.Root)["quilt"].ShouldBeOfType<MapNode>();
        quilt["fill"].ShouldBeOfType<ScalarNode>().Value.ShouldBe("L1\u00A0L2");
    }

    [Test]
    public void Thirty_levels_are_allowed()
    {
        var text =
            string.Concat(Enumerable.Repeat("[", 31)) + string.Concat(Enumerable.Repeat("]", 31));
        SyntaxTree.Read("a.yaml", text).Diagnostics.ShouldBeEmpty();
    }

    [Test]
    public void A_file_of_100_MB_is_refused_undecoded()
    {
        var bytes = new byte[100_000_000];
        var before = GC.GetAllocatedBytesForCurrentThread();
        Only(bytes, "PP0101").Text.ShouldContain("100000000");
        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(1_000_000);
        SourceGate.TooLarge("a.yaml", 100_000_000)!.Code.ShouldBe("PP0101");
        SourceGate.TooLarge("a.yaml", SourceGate.MaximumBytes).ShouldBeNull();
    }

    [Test]
    public void Very_many_values_are_cut_off()
    {
        var keys = new StringBuilder();
        for (var i = 0; i < 60_000; i++)
        {
            keys.Append($"k{i}: 1\n");
        }

        Only(keys.ToString(), "PP0115");
        Only("a: [" + string.Concat(Enumerable.Repeat("b,", 400_000)) + "b]", "PP0115");
    }

    [Test]
    public void A_text_of_a_million_characters_is_refused_and_the_rest_read()
    {
        var tree = SyntaxTree.Read("a.yaml", $"a: {new string('x', 1_000_000)}\nb: c\n");
        tree.Diagnostics.ShouldHaveSingleItem().Code.ShouldBe("PP0116");
        ((MapNode)tree.Root)["b"]!.ToString().ShouldBe("c");
    }

    [Test]
    public void Thousands_of_the_same_key_are_not_thousands_of_messages()
    {
        var text = string.Concat(Enumerable.Repeat("k: 1\n", 9_000));
        SyntaxTree.Read("a.yaml", text).Diagnostics.Length.ShouldBe(DiagnosticList.DefaultLimit);
    }

    [TestCase("a: \"x\n")]
    [TestCase("a: [\n")]
    [TestCase("a: b: c\n")]
    public void Thousands_of_syntax_errors_are_not_thousands_of_messages(string line)
    {
        var text = string.Concat(Enumerable.Repeat(line, 100_000));
        SyntaxTree.Read("a.yaml", text).Diagnostics.Length.ShouldBeInRange(1, 40);
    }

    [TestCase("a: b\n\tc: d\n", 2, 1)]
    [TestCase("a:\n  b: c\n \t d: e\n", 3, 2)]
    [TestCase("map: |\n  a b\n\tc d\n", 3, 1)]
    public void A_tab_as_indentation_is_pointed_at(string text, int line, int column)
    {
        var found = Only(text, "PP0104");
        (found.Primary.Span.StartLine, found.Primary.Span.StartColumn).ShouldBe((line, column));
    }

    [Test]
    public void What_stands_before_a_tab_is_read()
    {
        var tree = SyntaxTree.Read("a.yaml", "a: b\nc:\n\td: e\n\tf: g\n");
        tree.Diagnostics.ShouldHaveSingleItem().Text.ShouldContain("2 lines");
        ((MapNode)tree.Root)["a"]!.ToString().ShouldBe("b");
        tree.IsComplete.ShouldBeFalse();
    }

    [Test]
    public void Tabs_elsewhere_are_blanks() =>
        SyntaxTree.Read("a.yaml", "a:\tb\tc\n\t\n# x\ty\n").Diagnostics.ShouldBeEmpty();

    [Test]
    public void Other_encodings_are_named()
    {
        foreach (
            var (encoding, name) in new (Encoding, string)[]
            {
                (Encoding.Unicode, "UTF-16"),
                (Encoding.BigEndianUnicode, "UTF-16"),
                (Encoding.UTF32, "UTF-32"),
            }
        )
        {
            byte[] marked = [.. encoding.GetPreamble(), .. encoding.GetBytes("a: b\n")];
            Only(marked, "PP0102").Title.ShouldContain($"as {name}");
            Only(encoding.GetBytes("a: b\n"), "PP0102");
        }
    }

    [Test]
    public void A_byte_that_is_no_UTF8_is_pointed_at()
    {
        var found = Only(Encoding.Latin1.GetBytes("a: b\nc: café\n"), "PP0102");
        found.Primary.Span.ShouldBe(new("a.yaml", 2, 7, 2, 8));
        found.Primary.Text.ShouldContain("E9");
    }

    [TestCase("a: b\0c\n", 1, 5)]
    [TestCase("a: b\nc: \u0007\n", 2, 4)]
    [TestCase("a: \u0085\n", 1, 4)]
    [TestCase("a: \u2028\n", 1, 4)]
    [TestCase("a: \"x\\0\"\n", 1, 6)]
    [TestCase("a: \"x\\x07y\"\n", 1, 6)]
    public void Control_characters_are_pointed_at(string text, int line, int column)
    {
        var found = Only(text, "PP0103");
        (found.Primary.Span.StartLine, found.Primary.Span.StartColumn).ShouldBe((line, column));
    }

    [Test]
    public void Random_damage_never_throws_and_every_span_is_inside_the_file()
    {
        var random = new Random(20261101);
        var signs = "\"'[]{}:,#|>-&*!?%@` \n\t\\abc\0½🧵".ToCharArray();
        for (var i = 0; i < 1500; i++)
        {
            var text = new StringBuilder(SamplePattern.Text);
            for (var changes = random.Next(1, 6); changes > 0; changes--)
            {
                var at = random.Next(text.Length);
                switch (random.Next(3))
                {
                    case 0:
                        text.Remove(at, Math.Min(random.Next(1, 30), text.Length - at));
                        break;
                    case 1:
                        text[at] = signs[random.Next(signs.Length)];
                        break;
                    default:
                        text.Insert(at, signs[random.Next(signs.Length)]);
                        break;
                }
            }

            var tree = SyntaxTree.Read("a.yaml", Encoding.UTF8.GetBytes(text.ToString()));
            foreach (var label in tree.Diagnostics.SelectMany(d => d.Others.Prepend(d.Primary)))
            {
                var span = label.Span;
                span.StartLine.ShouldBeInRange(1, tree.Source.LineCount);
                span.EndLine.ShouldBeInRange(span.StartLine, tree.Source.LineCount);
                span.StartColumn.ShouldBeInRange(1, tree.Source.Line(span.StartLine).Length + 1);
                span.EndColumn.ShouldBeInRange(1, tree.Source.Line(span.EndLine).Length + 1);
            }
        }
    }

    private static Diagnostic Only(string text, string code) =>
        Only(Encoding.UTF8.GetBytes(text), code);

    private static Diagnostic Only(byte[] bytes, string code)
    {
        var found = SyntaxTree.Read("a.yaml", bytes).Diagnostics.ShouldHaveSingleItem();
        found.Code.ShouldBe(code);
        return found;
    }
}
