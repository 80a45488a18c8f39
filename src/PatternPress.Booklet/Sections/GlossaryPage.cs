using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Booklet.Sections;

/// <summary>The terms that the booklet uses, and only those.</summary>
internal sealed class GlossaryPage : Section
{
    public override string Name => "glossary";

    public override bool ComesLast => true;

    public override ImmutableArray<Block> Build(SectionContext context)
    {
        Glossary glossary = context.Templates.Glossary;
        ImmutableArray<GlossaryTerm> used = glossary.UsedIn(WithoutNames(context));
        if (used.IsEmpty)
        {
            return [];
        }
        return
        [
            new Heading(2, glossary.Heading) { Name = Name },
            new BalancedColumns(
                new Stack(
                    used.Select(term => new Text(
                        [
                            .. FractionText.Parse(
                                $"{term.Name}:",
                                new InlineStyle { Bold = true, Ink = context.Theme.Accent }
                            ),
                            .. FractionText.Parse($" {Typography.Set(term.Meaning)}"),
                        ],
                        "table"
                    ))
                )
                {
                    Gap = 3.Pt,
                },
                2
            )
            {
                LeastWidth = context.Grown(220.Pt),
            },
        ];
    }

    /// <summary>The words of the other sections. A fabric that is called Grain or Hatch is no use of that term.</summary>
    private static string WithoutNames(SectionContext context)
    {
        string text = context.TextOfOthers;
        foreach (string name in context.Tables.Fabrics.Select(f => f.Name))
        {
            if (name.Length > 0)
            {
                text = text.Replace(name, "", StringComparison.Ordinal);
            }
        }
        return text;
    }
}
