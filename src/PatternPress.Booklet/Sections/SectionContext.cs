using System.Collections.Immutable;
using PatternPress.Booklet.Figures;
using PatternPress.Booklet.Looks;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Tables;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>What a section is built from, for one document on one paper. Collects what is found wrong.</summary>
public sealed class SectionContext
{
    private readonly DesignerWords designer;

    internal SectionContext(
        Manuscript manuscript,
        Templates templates,
        DocumentPlan plan,
        PaperSize paper,
        ImmutableHashSet<string> present,
        Lazy<Palette> palette,
        DiagnosticList diagnostics
    )
    {
        Manuscript = manuscript;
        Templates = templates;
        Plan = plan;
        Paper = paper;
        PageLooks looks = templates.Looks.Variant(plan.Printing.Looks);
        Theme = plan.Printing.BlackOnly
            ? looks.BlackTheme()
            : looks.ThemeFor(manuscript.Pattern.Fabrics);
        Numbers = new NumberWords(manuscript.Tables.Unit, templates.Labels);
        Present = present;
        Diagnostics = diagnostics;
        Figures = new SectionFigures(this, palette);
        Functions = PatternWords.Of(Tables, Numbers, SectionCatalog.Names);
        Common = CommonWords.Of(this);
        designer = new DesignerWords(this);
    }

    public Manuscript Manuscript { get; }

    public Pattern Pattern => Manuscript.Pattern;

    public PrintedTables Tables => Manuscript.Tables;

    public ImmutableArray<SizeColumn> Sizes => Tables.Sizes;

    public Templates Templates { get; }

    public Labels Labels => Templates.Labels;

    public DocumentPlan Plan { get; }

    public PaperSize Paper { get; }

    public Theme Theme { get; }

    public NumberWords Numbers { get; }

    /// <summary>Drawings of the pattern.</summary>
    public SectionFigures Figures { get; }

    /// <summary>Names of the sections in the same document.</summary>
    public ImmutableHashSet<string> Present { get; }

    /// <summary>What designers' texts may quote.</summary>
    public WordData Functions { get; }

    /// <summary>What every template may use.</summary>
    public WordData Common { get; }

    public DiagnosticList Diagnostics { get; }

    /// <summary>All words of the other sections, for those that come last.</summary>
    public string TextOfOthers { get; internal set; } = "";

    /// <summary>Width of the text on the page.</summary>
    public Points TextWidth => Paper.Width - Theme.Margins.Across;

    /// <summary>The size of a figure, or of a part of one, made for running text of the usual size; no wider than the text.</summary>
    public Points Grown(Points usual) =>
        Points.Min(TextWidth, Theme.Enlarged == 1 ? usual : usual.Scale(Theme.Enlarged));

    /// <summary>How many figures that need a width stand side by side; no more than <paramref name="most"/>.</summary>
    /// <param name="least">The width of one, for running text of the usual size.</param>
    public int Abreast(Points least, Points gap, int most) =>
        (int)
            Math.Clamp(((TextWidth + gap).Thousandths / (Grown(least) + gap).Thousandths), 1, most);

    /// <summary>Height of the text on the page.</summary>
    public Points TextHeight => Paper.Height - Theme.Margins.Down;

    /// <summary>The size that figures show which show only one: in the middle of the list.</summary>
    public int ShownSize => (Sizes.Length - 1) / 2;

    /// <summary>"Shown: Throw", below a figure that shows one size of several.</summary>
    /// <param name="more">Said after it.</param>
    public Text? Shown(int size, string? more = null) =>
        Sizes.Length < 2 && more is null
            ? null
            : new Text(
                string.Join(
                    " ",
                    new[]
                    {
                        Sizes.Length < 2 ? null : Labels.Format("shown-caption", Sizes[size].Name),
                        more,
                    }.Where(w => w is not null)
                ),
                "caption"
            );

    /// <summary>"Queen only", "Throw and Queen only", "all but Crib"; null for what every size has.</summary>
    /// <param name="has">Whether a size has it.</param>
    public string? Only(Func<int, bool> has)
    {
        List<string> names = [.. Sizes.Where((_, i) => has(i)).Select(size => size.Name)];
        return names.Count == Sizes.Length || names.Count == 0 ? null
            // Of many sizes the one that is left out is told sooner.
            : names.Count > 2 && names.Count == Sizes.Length - 1
                ? Labels.Format("sizes-but", Sizes.Where((_, i) => !has(i)).First().Name)
            : Labels.Format("sizes-only", Labels.List(names));
    }

    /// <summary>A heading with the sizes it holds for, where these are not all: "Outer border, Queen only".</summary>
    public string Headed(string heading, Func<int, bool> has) =>
        Only(has) is { } only ? Labels.Format("heading-only", heading, only) : heading;

    public FabricLabel? Fabric(string key) => Tables.Fabrics.FirstOrDefault(f => f.Key == key);

    /// <summary>A value of each size, as words.</summary>
    public Sized Sized(Func<int, string?> value) =>
        new(
            [
                .. Sizes
                    .Select((size, i) => (Size: MarkdownText.Escape(size.Name), Value: value(i)))
                    .Where(v => v.Value is not null)
                    .Select(v => (v.Size, v.Value!)),
            ],
            Labels["or"]
        );

    /// <summary>Sets a template of the house with its places filled.</summary>
    /// <param name="name">The template.</param>
    /// <param name="data">What it may use besides the common words.</param>
    /// <param name="places">What stands at its places.</param>
    /// <param name="anchor">The name links use for its first heading.</param>
    public ImmutableArray<Block> Fill(
        string name,
        WordData? data = null,
        IReadOnlyDictionary<string, ImmutableArray<Block>>? places = null,
        string? anchor = null,
        string style = "body",
        bool listed = true
    )
    {
        string markdown = Words(name, data);
        ImmutableArray<Block> blocks = MarkdownBlocks.Read(
            markdown,
            Setting(anchor, style) with
            {
                Listed = listed,
                Places =
                    places?.ToImmutableDictionary()
                    ?? ImmutableDictionary<string, ImmutableArray<Block>>.Empty,
            },
            out ImmutableArray<MarkdownFault> faults
        );
        foreach (MarkdownFault fault in faults)
        {
            Diagnostics.Add(
                PP0452_BrokenTemplate.Found(
                    PlaceOf(name, fault.Text),
                    $"{fault.Kind}: {fault.Text}"
                )
            );
        }
        return blocks;
    }

    /// <summary>The text of a step: what stands below its heading in the technique's template.</summary>
    /// <param name="technique">Keyword of the technique.</param>
    /// <param name="step">The step's name.</param>
    public ImmutableArray<Block> Step(string technique, string step, WordData data)
    {
        string name = $"techniques/{technique}";
        string? markdown = StepTexts.Find(Words(name, data), step);
        if (markdown is null)
        {
            if (Templates.Find(name) is not null)
            {
                Diagnostics.Add(PP0455_MissingTemplate.Found($"{name}#{step}"));
            }
            return [];
        }
        return MarkdownBlocks.Read(markdown, Setting(null, "step"), out _);
    }

    /// <summary>What a technique's text says before its first step.</summary>
    public ImmutableArray<Block> StepIntro(string technique, WordData data) =>
        MarkdownBlocks.Read(
            StepTexts.Intro(Words($"techniques/{technique}", data)),
            Setting(null, "body"),
            out _
        );

    /// <summary>Fills in a template of the house; the result is Markdown.</summary>
    public string Words(string name, WordData? data = null)
    {
        if (Templates.Find(name) is not { } template)
        {
            Diagnostics.Add(PP0455_MissingTemplate.Found(name));
            return "";
        }
        string text = template.Render(
            Common.With(data ?? WordData.Empty),
            out ImmutableArray<TemplateFault> faults
        );
        foreach (TemplateFault fault in faults)
        {
            Span span = Templates.SourceOf(name) is { } source ? fault.SpanIn(source) : Span.None;
            Diagnostics.Add(
                PP0452_BrokenTemplate.Found(
                    span,
                    fault.Problem.Kind == WordProblemKind.UnknownName
                        ? $"there is no \"{fault.Problem.Name}\" here"
                        : fault.Problem.Name
                )
            );
        }
        return text;
    }

    /// <summary>The designer's introduction.</summary>
    public ImmutableArray<Block> About() =>
        Pattern.Info.About is { } about ? designer.Set(about, "body") : [];

    /// <summary>The designer's note for a place, in a box; nothing where there is none.</summary>
    public ImmutableArray<Block> Note(string place) => designer.Note(place);

    /// <summary>The designer's remarks about a block, in a box.</summary>
    public ImmutableArray<Block> NoteOf(BlockDesign block) =>
        block.Notes is { Length: > 0 } text
            ? designer.Boxed(new Sourced<string>(text, block.Span))
            : [];

    internal MarkdownSetting Setting(string? anchor, string style) =>
        new(Theme, Labels)
        {
            Anchor = anchor,
            Style = style,
            Sections = SectionCatalog.Names.ToImmutableDictionary(n => n, Templates.TitleOf),
            Present = Present,
            NameFigure = NextDiagram,
        };

    private int diagrams;

    /// <summary>A name that no other diagram of the document has.</summary>
    internal string NextDiagram() => $"diagram-{++diagrams}";

    private Span PlaceOf(string name, string text)
    {
        if (Templates.SourceOf(name) is not { } source)
        {
            return Span.None;
        }
        int at = text.Length == 0 ? -1 : source.Text.IndexOf(text, StringComparison.Ordinal);
        return at < 0 ? source.SpanOf(0, 0) : source.SpanOf(at, at + text.Length);
    }
}
