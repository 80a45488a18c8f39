using System.Collections.Immutable;
using PatternPress.Booklet.Figures;
using PatternPress.Booklet.Sections;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Model;
using PatternPress.Source.Diagnostics;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Inlines;
using Block = PatternPress.Typesetting.Blocks.Block;

namespace PatternPress.Booklet;

/// <summary>
/// Composes a pattern's documents out of sections. Reads no files and no clock; may be asked for several documents at
/// once.
/// </summary>
public sealed class DocumentComposer
{
    private static readonly Points LeastStart = 170.Pt;

    private readonly Manuscript manuscript;
    private readonly Templates templates;
    private readonly Lazy<Palette> palette;

    public DocumentComposer(Manuscript manuscript, Templates templates)
    {
        this.manuscript = manuscript;
        this.templates = templates;
        palette = new Lazy<Palette>(() =>
            Palette.Of(manuscript.Pattern, manuscript.Quilts, FigureStyle.Colored)
        );
    }

    /// <summary>The documents there are to compose.</summary>
    public ImmutableArray<DocumentPlan> Plans => templates.Documents;

    /// <summary>Composes one document for one paper.</summary>
    /// <param name="paper">The size of its pages.</param>
    /// <param name="own">A section that is not in the catalogue, for a document of another kind.</param>
    public ComposedDocument Compose(DocumentPlan plan, PaperSize paper, Section? own = null)
    {
        SectionContext context = Begin(plan, paper);
        ImmutableArray<(string Name, ImmutableArray<Block> Blocks)> sections = Build(
            context,
            plan,
            own
        );
        PatternInfo info = manuscript.Pattern.Info;
        var document = new Document(
            new DocumentInformation(TitleOf(plan), info.Date)
            {
                Language = info.Language.Length > 0 ? info.Language : "en",
                Author = info.Designer,
                Subject = info.Subtitle ?? "",
                Edition = info.Edition.Value,
                Rights = info.Copyright ?? "",
            },
            context.Theme.Styles,
            Sequences(sections, plan, context)
        );
        return new ComposedDocument(plan, paper, document, context.Diagnostics.ToImmutable());
    }

    /// <summary>What sections of one document are built from.</summary>
    internal SectionContext Begin(DocumentPlan plan, PaperSize paper) =>
        new(
            manuscript,
            templates,
            plan,
            paper,
            [.. plan.Sections],
            PaletteFor(plan.Printing),
            new DiagnosticList()
        );

    /// <summary>The fabrics as a document prints them; hatches are the same in all.</summary>
    private Lazy<Palette> PaletteFor(Printing printing)
    {
        double enlarged = templates.Looks.Variant(printing.Looks).Enlarged;
        return !printing.BlackOnly && enlarged == 1
            ? palette
            : new Lazy<Palette>(() =>
                palette.Value.With(
                    FigureStyle.Colored with
                    {
                        IsBlackOnly = printing.BlackOnly,
                        Enlarged = enlarged,
                    },
                    manuscript.Pattern
                )
            );
    }

    private string TitleOf(DocumentPlan plan)
    {
        string title = manuscript.Pattern.Info.Title.Value;
        return plan.Title.Length == 0 ? title : $"{title}: {plan.Title}";
    }

    private static ImmutableArray<(string Name, ImmutableArray<Block> Blocks)> Build(
        SectionContext context,
        DocumentPlan plan,
        Section? own
    )
    {
        var built = new ImmutableArray<Block>[plan.Sections.Length];
        foreach (bool last in new[] { false, true })
        {
            for (int i = 0; i < plan.Sections.Length; i++)
            {
                Section section =
                    own?.Name == plan.Sections[i] ? own : SectionCatalog.Find(plan.Sections[i])!;
                if (section.ComesLast == last)
                {
                    built[i] = WithNotes(section.Build(context), section.Name, context);
                }
            }
            if (!last)
            {
                context.TextOfOthers = string.Concat(
                    built.Where(b => !b.IsDefault).Select(b => PlainText.Of(b))
                );
            }
        }
        return [.. plan.Sections.Zip(built).Where(s => !s.Second.IsEmpty)];
    }

    /// <summary>The designer's notes: one below the section's heading, one at its end.</summary>
    private static ImmutableArray<Block> WithNotes(
        ImmutableArray<Block> blocks,
        string section,
        SectionContext context
    )
    {
        if (blocks.IsEmpty)
        {
            return blocks;
        }
        ImmutableArray<Block> note = context.Note(section);
        int heading = blocks.ToList().FindIndex(b => b is Heading);
        return blocks.InsertRange(heading + 1, note).AddRange(context.Note($"{section}-end"));
    }

    private static ImmutableArray<PageSequence> Sequences(
        ImmutableArray<(string Name, ImmutableArray<Block> Blocks)> sections,
        DocumentPlan plan,
        SectionContext context
    )
    {
        var sequences = ImmutableArray.CreateBuilder<PageSequence>();
        var frame = new PageFrame(context.Paper, context.Theme.Margins)
        {
            Footer = Footer(plan, context),
            FooterGap = Points.Min(20.Pt, context.Theme.Margins.Bottom.Scale(0.29)),
        };
        int first = 0;
        if (plan.Covered && sections.Length > 0)
        {
            sequences.Add(
                new PageSequence(
                    frame with
                    {
                        Footer = null,
                        Bleed = plan.Printing.Bleed,
                        Background = CoverGround(plan, context),
                    },
                    new Stack(sections[0].Blocks)
                )
            );
            first = 1;
        }
        var body = ImmutableArray.CreateBuilder<Block>();
        for (int i = first; i < sections.Length; i++)
        {
            bool starts = i > first && plan.NewPage.Contains(sections[i].Name);
            if (starts)
            {
                Close();
            }
            // A section does not begin at the foot of a page.
            body.Add(new NeedSpace(LeastStart, new Stack(sections[i].Blocks)));
        }
        Close();
        return sequences.ToImmutable();

        // The sections up to here are one chapter, set as closely as saves a page.
        void Close()
        {
            if (body.Count == 0)
            {
                return;
            }
            sequences.Add(
                new PageSequence(frame, new Stack(body.ToImmutable()))
                {
                    Densities = Densities,
                    // A chapter begins on a page of its own, unless the one before leaves most of its last page empty.
                    Joins =
                        sequences.Count == 0 || (sequences.Count == 1 && plan.Covered)
                            ? null
                            : context.TextHeight.Scale(LeastJoined),
                    LeastFilled = LeastFilled,
                }
            );
            body.Clear();
        }
    }

    /// <summary>The ground of the cover, out to the bleed; none where the looks leave the paper white.</summary>
    private static Drawing? CoverGround(DocumentPlan plan, SectionContext context)
    {
        if (context.Theme.InkOf(context.Theme.Forms.Cover) is not { } ink)
        {
            return null;
        }
        double width = (context.Paper.Width + (plan.Printing.Bleed * 2)).Value,
            height = (context.Paper.Height + (plan.Printing.Bleed * 2)).Value;
        return new DrawingBuilder()
            .Area(VectorPath.Rectangle(0, 0, width, height), ink)
            .ToDrawing(width, height);
    }

    private static readonly ImmutableArray<double> Densities = [1, 0.8, 0.62];

    /// <summary>The part of a page that must be left for a new chapter to begin on it.</summary>
    private const double LeastJoined = 0.45;

    /// <summary>A page filled less than this is reported.</summary>
    private const double LeastFilled = 0.25;

    /// <summary>Pattern, edition and designer at the left, the page at the right, below a thin rule.</summary>
    private static Stack Footer(DocumentPlan plan, SectionContext context)
    {
        PatternInfo info = context.Pattern.Info;
        Labels labels = context.Labels;
        string what = string.Join(
            " \u00b7 ",
            new[]
            {
                Typography.Set(info.Title.Value),
                plan.Title,
                labels.Format("edition", info.Edition.Value),
                info.Designer,
            }.Where(w => w.Length > 0)
        );
        string page = labels["page-of-pages"];
        int x = page.IndexOf("{0}", StringComparison.Ordinal),
            y = page.IndexOf("{1}", StringComparison.Ordinal);
        ImmutableArray<Inline> number =
            x < 0 || y < x
                ? [PageField.Page]
                :
                [
                    new Run(page[..x]),
                    PageField.Page,
                    new Run(page[(x + 3)..y]),
                    PageField.PageCount,
                    new Run(page[(y + 3)..]),
                ];
        return new Stack(
            new Rule(new Stroke(0.5.Pt, context.Theme.Rule)) { SpaceAfter = 5.Pt },
            new Columns(
                Column.Share(new Text(what, "footer")),
                Column.Natural(new Text(number, "footer"))
            )
        );
    }
}

/// <summary>A document ready to be set in pages.</summary>
/// <param name="Diagnostics">What was found wrong with the templates; the document is complete all the same. The
/// designer's own texts are checked by <see cref="ProseCheck"/>.</param>
public sealed record ComposedDocument(
    DocumentPlan Plan,
    PaperSize Paper,
    Document Document,
    ImmutableArray<Diagnostic> Diagnostics
);
