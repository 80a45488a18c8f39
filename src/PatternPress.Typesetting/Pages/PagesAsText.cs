using System.Globalization;
using System.Text;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Typesetting.Pages;

/// <summary>
/// Writes pages as readable text, one item a line, indented by tags: for tests and for looking at what changed between two
/// editions. Places are in points, rounded to hundredths.
/// </summary>
public sealed class PagesAsText : IPagesWriter
{
    public byte[] Write(TypesetDocument document) => Encoding.UTF8.GetBytes(ToText(document));

    public static string ToText(TypesetDocument document)
    {
        var text = new StringBuilder();
        foreach (var page in document.Pages)
        {
            text.Append($"page {page.Number} {N(page.Paper.Width)} x {N(page.Paper.Height)}\n");
            Write(text, page.Items, 1);
        }

        foreach (var problem in document.Problems)
        {
            text.Append($"problem {problem.Kind} page {problem.Page}: {problem.Message}\n");
        }

        return text.ToString();
    }

    /// <summary>The words of a page in reading order, one paragraph, cell or label a line.</summary>
    public static string WordsOf(Page page)
    {
        var text = new StringBuilder();
        var line = new StringBuilder();
        var silent = false;
        foreach (var item in page.Items)
        {
            switch (item)
            {
                case PageItem.SpanBegin { ActualText: { } actual }:
                    Append(actual);
                    silent = true;
                    break;
                case PageItem.SpanEnd:
                    silent = false;
                    break;
                case PageItem.Text words when !silent:
                    Append(words.Characters);
                    break;
                case PageItem.TagBegin { Tag.Role: not (TagRole.Link or TagRole.Span) }:
                case PageItem.TagEnd { Tag.Role: not (TagRole.Link or TagRole.Span) }:
                case PageItem.ArtifactBegin or PageItem.ArtifactEnd:
                    Flush();
                    break;
            }
        }

        Flush();
        return text.ToString();

        void Append(string words)
        {
            line.Append(line.Length > 0 && !char.IsWhiteSpace(line[^1]) ? " " : "");
            line.Append(words);
        }

        void Flush()
        {
            if (line.Length > 0)
            {
                text.Append(line).Append('\n');
                line.Clear();
            }
        }
    }

    static void Write(StringBuilder text, IEnumerable<PageItem> items, int depth)
    {
        foreach (var item in items)
        {
            if (item is PageItem.TagEnd or PageItem.ArtifactEnd or PageItem.SpanEnd)
            {
                depth--;
                continue;
            }

            if (item is PageItem.RegionBegin or PageItem.RegionEnd)
            {
                continue;
            }

            text.Append(' ', depth * 2).Append(Line(item)).Append('\n');
            if (item is PageItem.TagBegin or PageItem.ArtifactBegin or PageItem.SpanBegin)
            {
                depth++;
            }
            else if (item is PageItem.Clip clip)
            {
                Write(text, clip.Items, depth + 1);
            }
        }
    }

    static string Line(PageItem item) =>
        item switch
        {
            PageItem.Text text =>
                $"text {N(text.X)} {N(text.Baseline)} w {N(text.Width)} {text.Face} {N(text.Size)} {text.Ink}{Turned(text)} \"{text.Characters}\"",
            PageItem.SpanBegin { ActualText: { } actual } => $"span \"{actual}\"",
            PageItem.SpanBegin begin => $"span in {begin.Language}",
            PageItem.Path path => $"path {Box(path.Outline)}{Fill(path)}{Image(path)}{Pen(path)}",
            PageItem.Clip clip => $"clip {Box(clip.Outline)}",
            PageItem.Link link =>
                $"link {N(link.Place.X)} {N(link.Place.Y)} {N(link.Place.Width)} x {N(link.Place.Height)} to {Target(link.Target)}",
            PageItem.Anchor anchor =>
                $"anchor {N(anchor.X)} {N(anchor.Y)} {anchor.Level} {anchor.Name} \"{anchor.Title}\"",
            PageItem.TagBegin begin => $"{begin.Tag.Role}{Details(begin.Tag)}",
            PageItem.ArtifactBegin begin => $"Artifact {begin.Kind}",
            _ => item.GetType().Name,
        };

    static string Details(Tag tag)
    {
        var text = new StringBuilder();
        text.Append(tag.Scope == HeaderScope.None ? "" : $" scope {tag.Scope}");
        text.Append(tag.ColumnSpan == 1 ? "" : $" span {tag.ColumnSpan}");
        text.Append(tag.Alt is null ? "" : $" alt \"{tag.Alt}\"");
        text.Append(tag.ActualText is null ? "" : $" actual \"{tag.ActualText}\"");
        text.Append(tag.Language is null ? "" : $" lang {tag.Language}");
        return text.ToString();
    }

    static string Turned(PageItem.Text text) =>
        text.Degrees == 0
            ? ""
            : $" turned {text.Degrees.ToString("0.##", CultureInfo.InvariantCulture)}";

    static string Fill(PageItem.Path path) => path.Fill is { } ink ? $" fill {ink}" : "";

    static string Image(PageItem.Path path) =>
        path.Image is { } image
            ? $" image {image.Image.Name} {D(image.Width)} x {D(image.Height)} at {D(image.Tile.E)} {D(image.Tile.F)}"
            : "";

    static string Pen(PageItem.Path path) =>
        path.Stroke is { } stroke
            ? $" stroke {N(stroke.Width)} {stroke.Ink}{(stroke.Dashes.IsEmpty ? "" : " dashed")}"
            : "";

    static string Target(LinkTarget target) =>
        target switch
        {
            LinkTarget.ToAnchor anchor => $"#{anchor.Name}",
            LinkTarget.ToAnchorAt anchor => $"#{anchor.Index}",
            LinkTarget.ToWeb web => web.Address,
            _ => "?",
        };

    static string Box(Drawings.VectorPath path)
    {
        var (left, top, right, bottom) = path.Bounds();
        return $"{D(left)} {D(top)} {D(right - left)} x {D(bottom - top)} ({path.Verbs.Length})";
    }

    static string N(Points points) => D(points.Value);

    static string D(double value) =>
        Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
}
