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
        ImmutableArray<GlossaryTerm> used = glossary.UsedIn(context.TextOfOthers);
        if (used.IsEmpty)
        {
            return [];
        }
        // Two columns, read down the left one first: cut where both are about equally long.
        int half = Half(used);
        return
        [
            new KeepTogether(
                new Stack(
                    new Heading(2, glossary.Heading) { Name = Name },
                    new Columns(
                        Column.Share(Terms(used[..half], context)),
                        Column.Share(Terms(used[half..], context))
                    )
                    {
                        Gap = 22.Pt,
                    }
                )
            ),
        ];
    }

    private static int Half(ImmutableArray<GlossaryTerm> terms)
    {
        int all = terms.Sum(Length),
            sum = 0;
        for (int i = 0; i < terms.Length; i++)
        {
            sum += Length(terms[i]);
            if (sum * 2 >= all)
            {
                return i + 1;
            }
        }
        return terms.Length;

        static int Length(GlossaryTerm term) => term.Name.Length + term.Meaning.Length + 30;
    }

    private static Stack Terms(ImmutableArray<GlossaryTerm> terms, SectionContext context) =>
        new(
            terms.Select(term => new KeepTogether(
                new Text(
                    [
                        .. FractionText.Parse(
                            term.Name + "\u2002",
                            new InlineStyle { Bold = true, Ink = context.Theme.Accent }
                        ),
                        .. FractionText.Parse(Typography.Set(term.Meaning)),
                    ],
                    "note"
                )
            ))
        );
}
