using System.Text.RegularExpressions;
using CsCheck;
using NUnit.Framework;
using PatternPress.Source.Shapes;
using Shouldly;

namespace PatternPress.Tests.Source.Shapes;

/// <summary>The hand-written check of a form and its regular expression say the same of every text.</summary>
public sealed class TextFormTests
{
    private static readonly TextForm[] Forms =
    [
        TextForm.Name,
        TextForm.DottedName,
        TextForm.Color,
        TextForm.Date,
        TextForm.Edition,
    ];

    private static readonly string[] Near =
    [
        "#15233b",
        "#15233B",
        "2026-11-01",
        "1.0.0",
        "12.0.33",
        "lamp",
        "lamp.G",
        "L-1_a",
        "ä½٣",
        "a.b.c",
    ];

    [Test]
    public void Hand_and_expression_agree()
    {
        var any = Gen.Char["#.-_0129aAfFgGäé漢½٣ ²"]
            .Array[0, 12]
            .Select(letters => new string(letters));
        var near = Gen.Select(
                Gen.Int[0, Near.Length - 1].Select(i => Near[i]),
                Gen.Int[0, 11],
                Gen.Char["#.-_0aFgä ½"]
            )
            .Select(
                (text, at, letter) =>
                    at >= text.Length ? text : text[..at] + letter + text[(at + 1)..]
            );
        foreach (var form in Forms)
        {
            var expression = new Regex(form.Pattern, RegexOptions.CultureInvariant);
            Gen.OneOf(any, near, Gen.Int[0, Near.Length - 1].Select(i => Near[i]))
                .Sample(
                    text =>
                        form.Matches(text)
                            .ShouldBe(expression.IsMatch(text), $"{form.Pattern} {text}"),
                    iter: 1000
                );
        }
    }

    [Test]
    public void Each_form_takes_and_refuses_something()
    {
        foreach (var form in Forms)
        {
            Near.Count(form.Matches).ShouldBeInRange(1, Near.Length - 1, form.Pattern);
        }
    }
}
