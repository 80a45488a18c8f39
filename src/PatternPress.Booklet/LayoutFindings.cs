using PatternPress.Source;
using PatternPress.Source.Diagnostics;
using PatternPress.Typesetting;

namespace PatternPress.Booklet;

/// <summary>Turns what the typesetter could not lay out into findings. The page is complete all the same.</summary>
public static class LayoutFindings
{
    /// <param name="problem">What the typesetter reports.</param>
    /// <param name="document">The file name of the document, to tell where to look.</param>
    /// <param name="pattern">The pattern's file; a problem without an origin of its own points at its start.</param>
    public static Diagnostic Found(LayoutProblem problem, string document, string pattern)
    {
        (string code, Severity severity, string title, string hint) = problem.Kind switch
        {
            LayoutProblemKind.TooTall => (
                "PP0501",
                Severity.Warning,
                "something is taller than a page",
                "shorten it, or give the page smaller margins (templates/looks.yaml)"
            ),
            LayoutProblemKind.TooWide => (
                "PP0502",
                Severity.Warning,
                "something is wider than its place",
                "shorten the word or name, or use a smaller type size (templates/looks.yaml)"
            ),
            LayoutProblemKind.MissingGlyph => (
                "PP0503",
                Severity.Warning,
                "the font has no shape for a character",
                "write it with other characters, or add a font that has it to templates/fonts"
            ),
            LayoutProblemKind.UnknownStyle => (
                "PP0504",
                Severity.Warning,
                "a text style or its typeface is missing",
                "define it in templates/looks.yaml, or put the typeface into templates/fonts"
            ),
            LayoutProblemKind.UnknownAnchor => (
                "PP0505",
                Severity.Warning,
                "a link leads nowhere",
                "link to a heading that the document has"
            ),
            LayoutProblemKind.RepeatedAnchor => (
                "PP0506",
                Severity.Warning,
                "two places of a document bear the same name",
                "give one of the headings another name"
            ),
            LayoutProblemKind.UnsettledPageNumbers => (
                "PP0590",
                Severity.Warning,
                "page numbers did not settle",
                "add or remove a line near the page's end and build again"
            ),
            LayoutProblemKind.NearlyEmpty => (
                "PP0508",
                Severity.Note,
                "a page is nearly empty",
                "let its section follow the one before (new-page in templates/documents.yaml), or shorten the section"
            ),
            _ => (
                "PP0507",
                Severity.Warning,
                "a header or footer is taller than its margin",
                "shorten it, or widen the margin (templates/looks.yaml)"
            ),
        };
        Span span = problem.Origin is Span at && !at.IsNone ? at : new Span(pattern, 1, 1, 1, 1);
        return new Diagnostic(
            code,
            severity,
            title,
            new Label(span, $"{document}, page {problem.Page}"),
            [],
            problem.Message,
            hint,
            []
        );
    }
}
