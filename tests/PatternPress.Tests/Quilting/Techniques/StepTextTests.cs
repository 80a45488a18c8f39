using System.Text.RegularExpressions;
using NUnit.Framework;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques;
using Scriban;
using Scriban.Runtime;
using Shouldly;

namespace PatternPress.Tests.Quilting.Techniques;

/// <summary>The step texts in the templates belong to the steps of the recipes.</summary>
public partial class StepTextTests
{
    private static IEnumerable<string> Keywords => TechniqueCatalog.Keywords;

    [Test]
    public void Every_technique_has_a_text_and_every_text_a_technique() =>
        Directory
            .GetFiles(Folder(), "*.md")
            .Select(f => Path.GetFileNameWithoutExtension(f)!)
            .Order(StringComparer.Ordinal)
            .ShouldBe(TechniqueCatalog.Keywords.Order(StringComparer.Ordinal));

    [TestCaseSource(nameof(Keywords))]
    public void Headings_are_the_steps(string keyword)
    {
        string text = Text(keyword);
        string[] headings = [.. Heading().Matches(text).Select(m => m.Groups[1].Value)];
        headings.ShouldBeUnique();
        text.ShouldNotStartWith("##");
        var used = new HashSet<string>();
        foreach (Recipe recipe in All(keyword))
        {
            string[] steps = [.. recipe.Steps.Select(s => s.Name)];
            steps.ShouldNotBeEmpty();
            steps.ShouldBeSubsetOf(headings);
            // In the order of the text, so that the booklet may follow either.
            steps.ShouldBe(headings.Where(steps.Contains));
            used.UnionWith(steps);
        }
        used.Order().ShouldBe(headings.Order());
    }

    [TestCaseSource(nameof(Keywords))]
    public void Texts_quote_what_recipes_have(string keyword)
    {
        string text = Text(keyword);
        foreach (Recipe recipe in All(keyword))
        {
            foreach (Match match in Quoted().Matches(text))
            {
                string name = match.Groups[2].Value;
                if (match.Groups[1].Value == "piece")
                {
                    recipe.Pieces.ShouldContain(p => p.Name == name, $"{keyword}: {name}");
                }
                else
                {
                    recipe.Measures.Keys.ShouldContain(name, keyword);
                }
            }
        }
    }

    [TestCaseSource(nameof(Keywords))]
    public void Texts_type_no_measures(string keyword)
    {
        string words = Code().Replace(Text(keyword), "").Replace("45°", "");
        words.ShouldNotMatch("[0-9½¼¾⅛⅜⅝⅞]");
    }

    // Rendered with every variable that is promised and no other: a misspelt one is an error.
    [TestCaseSource(nameof(Keywords))]
    public void Texts_render(string keyword)
    {
        foreach (Recipe recipe in All(keyword))
        {
            foreach (string pressing in (string[])["open", "side", "nested"])
            {
                foreach (bool trim in (bool[])[false, true])
                {
                    string rendered = Render(keyword, recipe, pressing, trim);
                    foreach (string lean in (string[])["left", "right"])
                    {
                        Render(keyword, recipe, pressing, trim, lean).ShouldNotContain("  ");
                    }
                    rendered.ShouldNotContain("{{");
                    rendered.ShouldNotContain("  ");
                    rendered.ShouldNotContain("\n\n\n");
                    foreach (
                        string line in rendered.Split('\n', StringSplitOptions.RemoveEmptyEntries)
                    )
                    {
                        (
                            line.StartsWith("## ", StringComparison.Ordinal)
                            || line[^1] is '.' or ':'
                        ).ShouldBeTrue($"{keyword}: {line}");
                    }
                }
            }
        }
    }

    [Test]
    public void A_text_reads_well()
    {
        Recipe recipe = Recipes.Of(
            "half-square-two-at-a-time",
            "half-square upper-left, a on b",
            "3"
        );
        string text = Render("half-square-two-at-a-time", recipe, "side", false);
        text.ShouldContain(
            "One batch takes one square of Ink (A) and one square of Amber (B), each 3 7/8 in."
        );
        text.ShouldContain("Sew a seam 1/4 in to one side of the line.");
        text.ShouldContain("Check: the unit measures 3 1/2 × 3 1/2 in,");
        text.ShouldNotContain("45°");
    }

    private static string Render(
        string keyword,
        Recipe recipe,
        string pressing,
        bool trim,
        string variant = ""
    )
    {
        var template = Template.Parse(Text(keyword));
        template.HasErrors.ShouldBeFalse(template.Messages.ToString());
        var pieces = new ScriptObject();
        foreach (IGrouping<string, RecipePiece> same in recipe.Pieces.GroupBy(p => p.Name))
        {
            RecipePiece piece = same.First();
            pieces[same.Key] = new ScriptObject
            {
                ["size"] =
                    piece.WholeStrip || piece.Width == piece.Height
                        ? piece.Height.ToString()
                        : $"{LengthText.Inches(piece.Width)} × {piece.Height}",
                ["count"] = same.Sum(p => p.Count),
                ["fabric"] = "Ink (A)",
                ["each"] = piece.InStrip,
            };
        }
        var measures = new ScriptObject();
        foreach ((string name, Length measure) in recipe.Measures)
        {
            measures[name] = measure.ToString();
        }
        string[] fabrics =
        [
            "Ink (A)",
            "Amber (B)",
            "Foam (C)",
            "Rust (D)",
            "Sand (E)",
            "Moss (F)",
            "Clay (G)",
            "Plum (H)",
            "Ash (I)",
        ];
        int roles = recipe.Pieces.Max(p => p.Role) + 1;
        var model = new ScriptObject
        {
            ["unit"] = new ScriptObject
            {
                ["name"] = "unit",
                ["variant"] = variant,
                ["unfinished"] =
                    $"{LengthText.Inches(recipe.UnfinishedWidth)} × {recipe.UnfinishedHeight}",
            },
            ["piece"] = pieces,
            ["measure"] = measures,
            ["seam"] = "1/4 in",
            ["figure"] = fabrics[0],
            ["ground"] = fabrics[roles - 1],
            ["fabric"] = new ScriptArray(fabrics.Take(roles)),
            ["yield"] = recipe.Yield,
            ["numbered"] = recipe.Yield % 2 == 0,
            ["measured"] = recipe.Yield % 2 == 1,
            ["pressing"] = pressing,
            ["trim"] = trim,
            ["leftovers"] = new ScriptArray(
                recipe.Leftovers.Select(l => new ScriptObject
                {
                    ["count"] = l.Count,
                    ["size"] = l.Width.ToString(),
                })
            ),
            ["sets"] = new ScriptArray(
                recipe.StripSets.Select(s => new ScriptObject
                {
                    ["count"] = s.SetsFor(20),
                    ["each"] = s.SegmentsPerSet,
                    ["fabrics"] = string.Join(", ", s.Roles.Select(r => fabrics[r])),
                })
            ),
            ["rounds"] = new ScriptArray(
                recipe
                    .Measures.Keys.Where(name => RoundWidth().IsMatch(name))
                    .Select(name => new ScriptObject
                    {
                        ["number"] = name.Split('-')[1],
                        ["size"] = recipe.Measures[name].ToString(),
                    })
            ),
        };
        var context = new TemplateContext { StrictVariables = true };
        context.PushGlobal(model);
        return template.Render(context).ReplaceLineEndings("\n");
    }

    // Recipes that differ in steps and sizes: every form, both cutting styles, both ways of pressing.
    private static IEnumerable<Recipe> All(string keyword)
    {
        foreach ((string unit, int width, int height) in TechniqueTests.Units)
        {
            UnitForm form = Written.Draw(unit, $"{width * 3}", $"{height * 3}").Form;
            foreach (House house in (House[])[Recipes.Inches, Recipes.Oversize, Recipes.Metric])
            {
                Technique technique = Recipes.Technique(keyword);
                if (technique.CanMake(form, house, out _))
                {
                    yield return Recipes.Of(keyword, form, house);
                }
            }
        }
    }

    private static string Text(string keyword) =>
        File.ReadAllText(Path.Combine(Folder(), keyword + ".md")).ReplaceLineEndings("\n");

    private static string Folder()
    {
        var at = new DirectoryInfo(TestContext.CurrentContext.TestDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "PatternPress.sln")))
        {
            at = at.Parent;
        }
        at.ShouldNotBeNull("the repository's root");
        return Path.Combine(at.FullName, "templates", "en", "techniques");
    }

    [GeneratedRegex("^round-[0-9]+-width$")]
    private static partial Regex RoundWidth();

    [GeneratedRegex("^## (.+)$", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex("(piece|measure)\\[\"([^\"]+)\"\\]")]
    private static partial Regex Quoted();

    [GeneratedRegex("\\{\\{.*?\\}\\}")]
    private static partial Regex Code();
}
