using NUnit.Framework;
using PatternPress.Source.Syntax;
using Shouldly;

namespace PatternPress.Tests.Source.Syntax;

/// <summary>The mistakes that designers make in YAML, each with its own message in the right place.</summary>
public sealed class SyntaxErrorTests
{
    [TestCase("title: Harbor: Lights", "PP0124", 1, 14, "a second colon")]
    [TestCase("a: \"open\nb: c", "PP0121", 1, 4, "never closed")]
    [TestCase("a: 'open\nb: c", "PP0121", 1, 4, "never closed")]
    [TestCase("size: \"12 1/2\"\"", "PP0121", 1, 15, "never closed")]
    [TestCase("a: 'it's'", "PP0128", 1, 8, "after the closing quotation mark")]
    [TestCase("a: \"12\" x 12", "PP0128", 1, 9, "after the closing quotation mark")]
    [TestCase("a: [x] y", "PP0128", 1, 8, "after the closing bracket")]
    [TestCase("a: [1, 2\nb: c", "PP0125", 1, 4, "`[` is opened and never closed")]
    [TestCase("a: {x: 1\nb: c", "PP0125", 1, 4, "`{` is opened and never closed")]
    [TestCase("a: {b: [c}", "PP0125", 1, 10, "`[` is closed with `}`")]
    [TestCase("}", "PP0125", 1, 1, "`}` closes nothing")]
    [TestCase("a: [\n  x,\n  y\n", "PP0125", 1, 4, "`[` is opened and never closed")]
    [TestCase("a: [{w: 2, f: C}, {w: 5 f: A}]", "PP0129", 1, 26, "a comma is missing")]
    [TestCase("a: [b, , c]", "PP0129", 1, 8, "a comma stands where")]
    [TestCase("p:\n  a: x\n b: y", "PP0126", 3, 2, "indented like none of the lines above")]
    [TestCase("p:\n  a: x\n   b: y", "PP0126", 3, 4, "indented further than the line above")]
    [TestCase("b:\n  - w: 2\n  f: C", "PP0126", 3, 3, "a key stands among list items")]
    [TestCase("b:\n  c: d\n  - x", "PP0126", 3, 3, "a list item stands among keys")]
    [TestCase("b:\n  -w: 2\n   f: C", "PP0126", 2, 3, "a dash stands without a blank")]
    [TestCase("m: |\n    a b\n  c d\n", "PP0126", 3, 3, "less than the first line of its block")]
    [TestCase("pattern\n  title: x", "PP0123", 1, 1, "a colon is missing")]
    [TestCase("a:\n  b: 1\n  c 2\n  d: 3", "PP0123", 3, 3, "a colon is missing")]
    [TestCase("a:b\nc: d", "PP0123", 1, 1, "a colon stands without a blank")]
    [TestCase("a: @x", "PP0127", 1, 4, "cannot begin with `@`")]
    [TestCase("a: %x", "PP0127", 1, 4, "cannot begin with `%`")]
    [TestCase("a: *", "PP0127", 1, 4, "cannot begin with `*`")]
    [TestCase("a: - b", "PP0105", 1, 4, "a list begins on the line of its key")]
    [TestCase("m: | a b\n  c", "PP0106", 1, 4, "same line as the sign")]
    [TestCase("m: |\n      \n  x", "PP0107", 2, 1, "holds more blanks")]
    [TestCase("a: \"y\"# note", "PP0108", 1, 7, "a comment follows without a blank")]
    [TestCase("a: \"x\\q\"", "PP0122", 1, 6, "a backslash")]
    [TestCase("a: \"\\ud83e x\"", "PP0122", 1, 5, "a backslash")]
    [TestCase("a: ? b", "PP0120", 1, 4, "cannot be read")]
    [TestCase("%YAML 3.0\n---\na: b", "PP0113", 1, 1, "gives orders")]
    [TestCase("a: b\n---\nc: d", "PP0113", 2, 1, "second document")]
    [TestCase("[a, b]: c", "PP0118", 1, 1, "where a key is expected")]
    [TestCase("a: {{ yards }}", "PP0118", 1, 5, "where a key is expected")]
    [TestCase(": b", "PP0118", 1, 1, "a key is missing")]
    [TestCase("a: 1\nb: 2\na: 3", "PP0117", 3, 1, "`a` is given twice")]
    [TestCase("a: &x 1\nb: *x", "PP0111", 1, 4, "name and repeat parts")]
    [TestCase("a: !!int 1", "PP0112", 1, 4, "gives a type")]
    [TestCase("", "PP0119", 1, 1, "is empty")]
    [TestCase("# only a comment\n", "PP0119", 1, 1, "is empty")]
    public void A_mistake_is_named_where_it_is(
        string text,
        string code,
        int line,
        int column,
        string words
    )
    {
        var found = SyntaxTree.Read("a.yaml", text).Diagnostics.ShouldHaveSingleItem();
        found.Code.ShouldBe(code);
        found.Title.ShouldContain(words);
        (found.Primary.Span.StartLine, found.Primary.Span.StartColumn).ShouldBe((line, column));
    }

    [Test]
    public void A_key_given_twice_shows_both_places_and_keeps_the_first()
    {
        var tree = SyntaxTree.Read("a.yaml", "a: 1\nb: 2\na: 3");
        var found = tree.Diagnostics.ShouldHaveSingleItem();
        found.Others.ShouldHaveSingleItem().Span.StartLine.ShouldBe(1);
        ((MapNode)tree.Root)["a"]!.ToString().ShouldBe("1");
    }

    [Test]
    public void What_was_read_before_and_after_an_error_stays()
    {
        var tree = SyntaxTree.Read(
            "a.yaml",
            """
            pattern:
              title: Harbor: Lights
              skill: lost
            fabrics:
              A: {name: Ink}
              B: {name: Amber
            sizes:
              crib: {blocks: 3 x 3}
            """
        );
        tree.Diagnostics.Select(found => (found.Code, found.Primary.Span.StartLine))
            .ShouldBe([("PP0124", 2), ("PP0125", 6)]);
        tree.IsComplete.ShouldBeFalse();
        var root = (MapNode)tree.Root;
        root.Entries.Select(entry => entry.Key.Value).ShouldBe(["pattern", "fabrics", "sizes"]);
        ((MapNode)root["fabrics"]!).Find("A").ShouldNotBeNull();
        var crib = (MapNode)((MapNode)root["sizes"]!)["crib"]!;
        ((ScalarNode)crib["blocks"]!).Span.ShouldBe(new(File: "a.yaml", 8, 18, 8, 23));
    }

    [Test]
    public void No_message_speaks_the_scanner_s_language()
    {
        foreach (
            var text in new[]
            {
                "a: ? b",
                "a: b: c",
                "[",
                "a: 'b' c",
                "- a\nb",
                "a: |x",
                "{a b: c d: e}",
            }
        )
        {
            foreach (var found in SyntaxTree.Read("a.yaml", text).Diagnostics)
            {
                var words = $"{found.Title} {found.Primary.Text} {found.Text} {found.Hint}";
                words.ShouldNotContain("While ");
                words.ShouldNotContain("mapping");
                words.ShouldNotContain("scalar");
                words.ShouldNotContain("token");
            }
        }
    }
}
