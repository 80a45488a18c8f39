using System.Collections.Immutable;
using PatternPress.Booklet.Sections;
using PatternPress.Quilting.Rules;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Shapes;
using PatternPress.Source.Syntax;

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
    /// <summary>Reads the list; unknown sections are reported and left out.</summary>
    public static ImmutableArray<DocumentPlan> Read(
        SyntaxTree tree,
        out ImmutableArray<Diagnostic> diagnostics
    )
    {
        var found = new DiagnosticList();
        found.AddRange(tree.Diagnostics);
        found.AddRange(
            ShapeChecker.Check(
                tree,
                new NamesShape(
                    "the documents",
                    "Which documents a build makes.",
                    new TextShape("a document's name", "", TextForm.Name),
                    new MapShape(
                        "a document",
                        "",
                        [
                            new Key("suffix", new TextShape("a suffix", "", TextForm.Name)),
                            new Key("title", new TextShape("a title", "")),
                            new Key("sections", Names(), Required: true),
                            new Key("new-page", Names()),
                            new Key("covered", new ChoiceShape("yes or no", "", ["yes", "no"])),
                        ]
                    )
                )
            )
        );
        var plans = ImmutableArray.CreateBuilder<DocumentPlan>();
        foreach (Entry entry in (tree.Root as MapNode)?.Entries ?? [])
        {
            if (entry.Value is not MapNode map)
            {
                continue;
            }
            plans.Add(
                new DocumentPlan(
                    entry.Key.Value,
                    (map["suffix"] as ScalarNode)?.Value ?? "",
                    (map["title"] as ScalarNode)?.Value ?? "",
                    [.. NamesIn(map["sections"], found)],
                    [.. NamesIn(map["new-page"], found)],
                    map["covered"] is ScalarNode { Value: "yes" }
                )
            );
        }
        diagnostics = found.ToImmutable();
        return plans.ToImmutable();
    }

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
