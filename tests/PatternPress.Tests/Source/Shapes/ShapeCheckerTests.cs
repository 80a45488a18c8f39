using System.Collections.Immutable;
using NUnit.Framework;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Shapes;
using PatternPress.Source.Syntax;
using Shouldly;

namespace PatternPress.Tests.Source.Shapes;

/// <summary>What a tree may not be, each with its message.</summary>
public sealed class ShapeCheckerTests
{
    private static ImmutableArray<Diagnostic> Check(string text)
    {
        var tree = SyntaxTree.Read("a.yaml", text);
        tree.Diagnostics.ShouldBeEmpty();
        return ShapeChecker.Check(tree, SamplePattern.Shape);
    }

    private static Diagnostic Changed(string from, string to)
    {
        SamplePattern.Text.ShouldContain(from);
        return Check(SamplePattern.Text.Replace(from, to)).ShouldHaveSingleItem();
    }

    [Test]
    public void The_sample_is_right() => Check(SamplePattern.Text).ShouldBeEmpty();

    [Test]
    public void An_unknown_key_gets_the_nearest()
    {
        var found = Changed("{name: Ink, color:", "{name: Ink, colour:  \"#15233b\", color:");
        found.Code.ShouldBe("PP0130");
        found.Title.ShouldBe("`colour` is no key of a fabric");
        found.Hint.ShouldBe("did you mean `color`?");
        found.Text.ShouldStartWith("Fabric A may have `name`, `color`,");
        found.Primary.Span.ShouldBe(new("a.yaml", 14, 18, 14, 24));
    }

    [Test]
    public void A_misspelt_key_is_not_called_missing_too() =>
        Changed("{name: Ink, color:", "{name: Ink, colr:").Hint.ShouldBe("did you mean `color`?");

    [Test]
    public void A_key_of_an_outer_map_is_indented_too_far()
    {
        var found = Changed("    name: Slate\n", "    name: Slate\n    quilt: x\n");
        found.Code.ShouldBe("PP0130");
        found.Hint.ShouldBe("`quilt` belongs to the file: is this line indented too far?");
    }

    [Test]
    public void A_key_glued_to_its_value_is_seen()
    {
        var found = Changed("{name: Amber,", "{name:Amber,");
        found.Code.ShouldBe("PP0130");
        found.Hint.ShouldBe("put a space after the colon: `name: Amber`");
    }

    [Test]
    public void A_missing_key_is_shown_with_an_example()
    {
        var found = Changed(", color: \"#f2a71b\"", "");
        found.Code.ShouldBe("PP0131");
        found.Title.ShouldBe("fabric B has no `color`");
        found.Hint.ShouldBe("add `color: \"#15233b\"`");
        found.Primary.Span.ShouldBe(new("a.yaml", 15, 3, 15, 4));
    }

    [Test]
    public void A_color_lost_to_a_comment_is_understood()
    {
        var found = Changed("color: \"#5b6b73\"", "color: #5b6b73");
        found.Code.ShouldBe("PP0133");
        found.Title.ShouldBe("`color` has no value");
        found.Hint.ShouldBe("a # after a blank begins a comment: put the value in quotation marks");
    }

    [TestCase("color: \"#f2a71b\"", "color: amber", "`amber` is not a color")]
    [TestCase("edition: 1.0.0", "edition: 1.0", "`1.0` is not an edition")]
    [TestCase("date: 2026-11-01", "date: Nov 1st", "`Nov 1st` is not a date")]
    public void A_text_of_the_wrong_form_is_refused(string from, string to, string title)
    {
        var found = Changed(from, to);
        found.Code.ShouldBe("PP0135");
        found.Title.ShouldBe(title);
        found.Primary.Text.ShouldContain(" such as `");
    }

    [Test]
    public void An_unknown_word_gets_the_list_and_the_nearest()
    {
        var found = Changed("setting: straight", "setting: on point");
        found.Code.ShouldBe("PP0136");
        found.Title.ShouldBe("`on point` is not a setting");
        found.Text.ShouldBe("It can be `straight` or `on-point`.");
        found.Hint.ShouldBe("did you mean `on-point`?");
    }

    [TestCase("binding: B", "binding: [B]", "found a list")]
    [TestCase("backing: D", "backing:\n    - D", "found a list")]
    [TestCase(
        "C: square core",
        "C: {square: core}",
        "expected a unit such as `square sky`, found keys"
    )]
    [TestCase(
        "  A: {name: Ink, color: \"#15233b\", use: background}",
        "  A: Ink",
        "found the text `Ink`"
    )]
    [TestCase(
        "size: 12  ",
        "size: [12, 12]  ",
        "expected a finished size such as `12`, found a list"
    )]
    [TestCase("title: Harbor Lights", "title: {Harbor: Lights}", "found keys with values")]
    public void Another_kind_of_value_is_named(string from, string to, string words)
    {
        var found = Changed(from, to);
        found.Code.ShouldBe("PP0134");
        found.Title.ShouldContain(words);
    }

    [Test]
    public void A_single_border_needs_its_dash()
    {
        var text = SamplePattern.Text.Replace(
            "    - {width: 2, fabric: C}\n    - {width: 5, fabric: A, corners: top-first}\n",
            "    width: 2\n    fabric: C\n"
        );
        var found = Check(text).ShouldHaveSingleItem();
        found.Title.ShouldBe("expected a list of borders, found keys with values");
        found.Hint!.ShouldContain("put a dash");
    }

    [Test]
    public void A_name_must_be_a_name()
    {
        var found = Changed("  L2: lamp", "  L 2: lamp");
        found.Code.ShouldBe("PP0137");
        found.Title.ShouldBe("`L 2` cannot be the name of a coloring");
    }

    [Test]
    public void Some_maps_may_not_be_empty()
    {
        var text = SamplePattern.Text[
            ..SamplePattern.Text.IndexOf("sizes:", StringComparison.Ordinal)
        ];
        Check(text + "sizes: {}").ShouldHaveSingleItem().Code.ShouldBe("PP0138");
        Check(text).ShouldHaveSingleItem().Title.ShouldBe("the file has no `sizes`");
    }

    [Test]
    public void A_fill_is_filled_in_one_way()
    {
        Changed("{scatter: L1 L2, seed: 7}", "{scatter: L1 L2, repeat: L1}")
            .Code.ShouldBe("PP0132");
        Changed("{scatter: L1 L2, seed: 7}", "{seed: 7}").Code.ShouldBe("PP0131");
    }

    [Test]
    public void After_a_syntax_error_nothing_is_called_missing()
    {
        var tree = SyntaxTree.Read("a.yaml", "pattern:\n  title: Harbor: Lights\n");
        tree.Diagnostics.Length.ShouldBe(1);
        ShapeChecker.Check(tree, SamplePattern.Shape).ShouldBeEmpty();
    }

    [Test]
    public void All_that_is_wrong_comes_at_once_and_in_order()
    {
        var found = Check(
            "quilt: {seting: straight}\nsizes: x\nfabrics: {A: {name: [a]}}\npattern:\n"
        );
        found
            .Select(one => (one.Code, one.Primary.Span.StartLine))
            .ShouldBe([("PP0130", 1), ("PP0134", 2), ("PP0131", 3), ("PP0134", 3), ("PP0133", 4)]);
    }

    [Test]
    public void Thousands_of_wrong_keys_are_not_thousands_of_messages()
    {
        var text =
            "quilt: {" + string.Join(", ", Enumerable.Range(0, 9000).Select(i => $"k{i}: x")) + "}";
        Check(text).Length.ShouldBe(DiagnosticList.DefaultLimit);
    }

    [Test]
    public void Every_example_fits_its_shape()
    {
        var examples = 0;
        foreach (var shape in All(SamplePattern.Shape))
        {
            foreach (var example in shape.Examples)
            {
                examples++;
                switch (shape)
                {
                    case TextShape { Form: { } form }:
                        form.Matches(example).ShouldBeTrue(example);
                        break;
                    case ChoiceShape choice:
                        choice.Words.ShouldContain(example);
                        break;
                }
            }
        }

        examples.ShouldBeGreaterThan(30);
    }

    [Test]
    public void Keys_are_kebab_case_and_every_shape_is_described()
    {
        foreach (var shape in All(SamplePattern.Shape))
        {
            shape.Description.ShouldEndWith(".");
            shape.What.ShouldNotBeNullOrWhiteSpace();
            foreach (var key in shape is MapShape map ? map.Keys : [])
            {
                key.Name.ShouldMatch("^[a-z]+(-[a-z]+)*$");
            }
        }
    }

    internal static IEnumerable<Shape> All(Shape shape)
    {
        var inner = shape switch
        {
            MapShape map => map.Keys.SelectMany(key => All(key.Value)),
            NamesShape names => All(names.Name).Concat(All(names.Value)),
            ListShape list => All(list.Item),
            EitherShape either => either.Shapes.SelectMany(All),
            _ => [],
        };
        return inner.Prepend(shape);
    }
}
