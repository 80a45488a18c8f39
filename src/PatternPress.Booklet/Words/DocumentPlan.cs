using System.Collections.Immutable;
using PatternPress.Booklet.Sections;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Tables;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Shapes;
using PatternPress.Source.Syntax;
using PatternPress.Typesetting;

namespace PatternPress.Booklet.Words;

/// <summary>One of the documents of a build: <c>templates/documents.yaml</c>.</summary>
/// <param name="Key">Its name in the list.</param>
/// <param name="Suffix">Added to the pattern's name for the file; empty for the main document.</param>
/// <param name="Title">Printed after the pattern's title; empty for the main document.</param>
/// <param name="Sections">Names of sections in order.</param>
/// <param name="NewPage">Sections that begin on a page of their own.</param>
/// <param name="Covered">Whether the first section is a cover: a page without footer.</param>
public sealed record DocumentPlan(
    string Key,
    string Suffix,
    string Title,
    ImmutableArray<string> Sections,
    ImmutableHashSet<string> NewPage,
    bool Covered
)
{
    private static readonly Points ThickestPaper = 1.Mm;
    private static readonly Points WidestBleed = 0.5.Inch;

    /// <summary>How it is printed.</summary>
    public Printing Printing { get; init; } = new();

    /// <summary>Whether a build makes it only when it is asked for by name.</summary>
    public bool OnRequest { get; init; }

    /// <summary>Whether a build makes it only for patterns that one of its sections has something to say about.</summary>
    public bool WhereNeeded { get; init; }

    /// <summary>Whether a pattern has it.</summary>
    public bool IsNeeded(PrintedTables tables) =>
        !WhereNeeded
        || Sections.Any(name =>
            SectionCatalog.Find(name) is { } section && section.HasSomethingToSay(tables)
        );

    /// <summary>Reads the list; unknown sections are reported and left out.</summary>
    /// <param name="looks">The variants of the looks that a document may name.</param>
    public static ImmutableArray<DocumentPlan> Read(
        SyntaxTree tree,
        IEnumerable<string> looks,
        out ImmutableArray<Diagnostic> diagnostics
    )
    {
        var found = new DiagnosticList();
        found.AddRange(tree.Diagnostics);
        found.AddRange(ShapeChecker.Check(tree, Shape));
        ImmutableArray<string> variants = [.. looks];
        var plans = ImmutableArray.CreateBuilder<DocumentPlan>();
        foreach (Entry entry in (tree.Root as MapNode)?.Entries ?? [])
        {
            if (entry.Value is MapNode map)
            {
                plans.Add(ReadOne(entry.Key.Value, map, plans, variants, found));
            }
        }
        diagnostics = found.ToImmutable();
        return plans.ToImmutable();
    }

    private static DocumentPlan ReadOne(
        string key,
        MapNode map,
        IEnumerable<DocumentPlan> earlier,
        ImmutableArray<string> variants,
        DiagnosticList found
    )
    {
        var like = map["like"] as ScalarNode;
        DocumentPlan? model = earlier.FirstOrDefault(plan => plan.Key == like?.Value);
        if (like is not null && model is null)
        {
            Wrong(like, "the name of a document further up in the list");
        }
        if (like is null && map["sections"] is null)
        {
            found.Add(
                PP0453_UnsuitableLook.Found(
                    map.Span,
                    key,
                    "sections, or like and the name of another document"
                )
            );
        }
        var variant = map["looks"] as ScalarNode;
        if (variant is not null && !variants.Contains(variant.Value))
        {
            Wrong(variant, $"one of the variants of the looks: {string.Join(", ", variants)}");
            variant = null;
        }
        bool stitched = Is("imposed", "saddle-stitch");
        if (stitched && !Is("pages", "half"))
        {
            Wrong((ScalarNode)map["imposed"]!, "pages: half beside it");
            stitched = false;
        }
        return new DocumentPlan(
            key,
            (map["suffix"] as ScalarNode)?.Value ?? "",
            (map["title"] as ScalarNode)?.Value ?? model?.Title ?? "",
            map["sections"] is { } sections ? [.. NamesIn(sections, found)] : model?.Sections ?? [],
            map["new-page"] is { } pages ? [.. NamesIn(pages, found)] : model?.NewPage ?? [],
            map["covered"] is null ? model?.Covered ?? false : Is("covered", "yes")
        )
        {
            OnRequest = Is("made", "on-request"),
            WhereNeeded = Is("made", "where-needed"),
            Printing = new Printing
            {
                Looks = variant?.Value ?? "",
                HalfPages = Is("pages", "half"),
                SaddleStitched = stitched,
                BlackOnly = Is("ink", "black"),
                CropMarks = Is("crop-marks", "yes"),
                PaperThickness = Distance("paper-thickness", ThickestPaper),
                Bleed = Distance("bleed", WidestBleed),
            },
        };

        bool Is(string name, string value) => map[name] is ScalarNode node && node.Value == value;

        Points Distance(string name, Points most)
        {
            if (map[name] is not ScalarNode node)
            {
                return Points.Zero;
            }
            if (PaperDistance.TryParse(node.Value, out Points read))
            {
                if (read >= Points.Zero && read <= most)
                {
                    return read;
                }
            }
            Wrong(node, $"a distance of at most {most} pt, with its unit: in, mm or pt");
            return Points.Zero;
        }

        void Wrong(ScalarNode node, string wanted) =>
            found.Add(PP0453_UnsuitableLook.Found(node.Span, node.Value, wanted));
    }

    private static NamesShape Shape { get; } =
        new(
            "the documents",
            "Which documents a build makes.",
            new TextShape("a document's name", "", TextForm.Name),
            new MapShape(
                "a document",
                "",
                [
                    new Key("suffix", new TextShape("a suffix", "", TextForm.Name)),
                    new Key("title", new TextShape("a title", "")),
                    new Key("like", new TextShape("another document's name", "")),
                    new Key("sections", Names()),
                    new Key("new-page", Names()),
                    new Key("covered", YesOrNo()),
                    new Key(
                        "made",
                        new ChoiceShape(
                            "when it is made",
                            "",
                            ["always", "where-needed", "on-request"]
                        )
                    ),
                    new Key("looks", new TextShape("a variant of the looks", "")),
                    new Key("pages", new ChoiceShape("the size of pages", "", ["whole", "half"])),
                    new Key(
                        "imposed",
                        new ChoiceShape("an imposition", "", ["no", "saddle-stitch"])
                    ),
                    new Key("paper-thickness", new TextShape("a thickness", "")),
                    new Key("ink", new ChoiceShape("the ink", "", ["color", "black"])),
                    new Key("bleed", new TextShape("a bleed", "")),
                    new Key("crop-marks", YesOrNo()),
                ]
            )
        );

    private static ChoiceShape YesOrNo() => new("yes or no", "", ["yes", "no"]);

    private static ListShape Names() =>
        new("a list of sections", "", new TextShape("a section's name", ""));

    private static IEnumerable<string> NamesIn(Node? node, DiagnosticList found)
    {
        foreach (ScalarNode name in ((node as ListNode)?.Items ?? []).OfType<ScalarNode>())
        {
            if (SectionCatalog.Find(name.Value) is not null)
            {
                yield return name.Value;
            }
            else
            {
                found.Add(PP0454_UnknownSection.Found(name.Span, name.Value, SectionCatalog.Names));
            }
        }
    }
}
