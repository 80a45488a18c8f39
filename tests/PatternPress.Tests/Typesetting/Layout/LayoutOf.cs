using System.Text;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Tests.Typesetting.Layout;

/// <summary>
/// Lays mock blocks out on pages of 100 × 140 pt and tells where each came to stand, a page a line: <c>a 0 0 50x30</c> is the
/// mock a at (0, 0), 50 wide and 30 tall. No font is ever loaded.
/// </summary>
static class LayoutOf
{
    static readonly FontLibrary NoFonts = new(
        new FontFace(
            "none",
            false,
            false,
            () => throw new InvalidOperationException("A layout test loads no font.")
        )
    );

    static readonly StyleSheet NoStyles = new(Points.Zero, []);

    public static string Pages(Block body) => Tell(Typeset(body));

    public static TypesetDocument Typeset(Block body, PageFrame? frame = null) =>
        new Typesetter(NoFonts).Typeset(
            new Document(
                new DocumentInformation("Mocks", new DateOnly(2026, 1, 1)),
                NoStyles,
                [
                    new PageSequence(
                        frame ?? new PageFrame(new PaperSize(100.Pt, 140.Pt), Insets.None),
                        body
                    ),
                ]
            )
        );

    public static TypesetDocument Typeset(params ReadOnlySpan<PageSequence> sequences) =>
        new Typesetter(NoFonts).Typeset(
            new Document(
                new DocumentInformation("Mocks", new DateOnly(2026, 1, 1)),
                NoStyles,
                [.. sequences]
            )
        );

    public static string Tell(TypesetDocument document)
    {
        var text = new StringBuilder();
        foreach (var page in document.Pages)
        {
            text.Append(page.Number).Append(':');
            foreach (var (name, place) in Mocks(page))
            {
                text.Append($" {name} {place.X} {place.Y} {place.Width}x{place.Height}");
            }

            text.Append('\n');
        }

        foreach (var problem in document.Problems)
        {
            text.Append(
                $"{problem.Kind} on page {problem.Page}{(problem.Origin is null ? "" : $" at {problem.Origin}")}\n"
            );
        }

        return text.ToString().TrimEnd();
    }

    public static IEnumerable<(string Name, PageRect Place)> Mocks(Page page) =>
        page
            .Items.OfType<PageItem.RegionBegin>()
            .Where(item => item.Name is not ("cell" or "box"))
            .Select(item => (item.Name, item.Place));

    /// <summary>The tags of a page with the mocks in them, as nested brackets.</summary>
    public static string Tags(TypesetDocument document)
    {
        var (text, numbers) = (
            new StringBuilder(),
            new Dictionary<Tag, int>(ReferenceEqualityComparer.Instance)
        );
        foreach (var page in document.Pages)
        {
            text.Append(page.Number).Append(':');
            foreach (var item in page.Items)
            {
                switch (item)
                {
                    case PageItem.TagBegin { Tag: var tag }:
                        numbers.TryAdd(tag, numbers.Count + 1);
                        text.Append($" {tag.Role}{numbers[tag]}(");
                        break;
                    case PageItem.ArtifactBegin:
                        text.Append(" Artifact(");
                        break;
                    case PageItem.TagEnd or PageItem.ArtifactEnd:
                        text.Append(" )");
                        break;
                    case PageItem.RegionBegin { Name: not ("cell" or "box") } region:
                        text.Append($" {region.Name}");
                        break;
                }
            }

            text.Append('\n');
        }

        return text.ToString().TrimEnd();
    }

    public static Drawing Drawing(double width, double height) =>
        new DrawingBuilder()
            .Area(VectorPath.Rectangle(0, 0, width, height), Ink.Black)
            .ToDrawing(width, height);
}
