using System.Collections.Immutable;
using Markdig.Syntax.Inlines;
using PatternPress.Typesetting.Inlines;
using Inline = PatternPress.Typesetting.Inlines.Inline;

namespace PatternPress.Booklet.Words;

/// <summary>Sets the words of a Markdown paragraph: emphasis, links, measures, marks of print.</summary>
internal sealed class MarkdownInlines(
    MarkdownSetting setting,
    ImmutableArray<MarkdownFault>.Builder faults
)
{
    /// <summary>The name of the place, if a paragraph is one and nothing else.</summary>
    public string? PlaceIn(ContainerInline paragraph)
    {
        if (setting.Places is null)
        {
            return null;
        }
        return
            paragraph.FirstChild is LinkInline { IsImage: true, Url: { } url, NextSibling: null }
            && url.StartsWith("place:", StringComparison.Ordinal)
            ? url["place:".Length..]
            : null;
    }

    public ImmutableArray<Inline> Read(ContainerInline container)
    {
        var words = ImmutableArray.CreateBuilder<Inline>();
        char last = ' ';
        Read(container, InlineStyle.Plain, null, words, ref last);
        return words.DrainToImmutable();
    }

    private void Read(
        ContainerInline container,
        InlineStyle style,
        LinkTarget? link,
        ImmutableArray<Inline>.Builder words,
        ref char last
    )
    {
        foreach (Markdig.Syntax.Inlines.Inline inline in container)
        {
            switch (inline)
            {
                case LiteralInline literal:
                    Add(literal.Content.ToString(), style, link, words, ref last);
                    break;
                case CodeInline code:
                    Add(code.Content, style, link, words, ref last);
                    break;
                case HtmlEntityInline entity:
                    Add(entity.Transcoded.ToString(), style, link, words, ref last);
                    break;
                case HtmlInline html:
                    Add(html.Tag, style, link, words, ref last);
                    break;
                case LineBreakInline { IsHard: true }:
                    words.Add(new LineBreak());
                    last = ' ';
                    break;
                case LineBreakInline:
                    Add(" ", style, link, words, ref last);
                    break;
                case EmphasisInline emphasis:
                    InlineStyle inner =
                        emphasis.DelimiterCount >= 2
                            ? style with
                            {
                                Bold = true,
                            }
                            : style with
                            {
                                Italic = true,
                            };
                    Read(emphasis, inner, link, words, ref last);
                    break;
                case LinkInline { IsImage: true } image:
                    faults.Add(new(MarkdownFaultKind.Picture, image.Url ?? ""));
                    break;
                case LinkInline target:
                    ReadLink(target, style, words, ref last);
                    break;
                case AutolinkInline auto:
                    Add(auto.Url, style, Web(auto.Url, auto.IsEmail), words, ref last);
                    break;
                case ContainerInline other:
                    Read(other, style, link, words, ref last);
                    break;
            }
        }
    }

    private void ReadLink(
        LinkInline target,
        InlineStyle style,
        ImmutableArray<Inline>.Builder words,
        ref char last
    )
    {
        string url = target.Url ?? "";
        if (url.StartsWith("page:", StringComparison.Ordinal))
        {
            string name = url["page:".Length..];
            if (setting.Present.Contains(name))
            {
                words.Add(
                    PageField.PageOf(name) with
                    {
                        Style = style,
                        Link = new LinkTarget.ToAnchor(name),
                    }
                );
            }
            last = '0';
            return;
        }
        if (url.StartsWith("section:", StringComparison.Ordinal))
        {
            string name = url["section:".Length..];
            LinkTarget? to = setting.Present.Contains(name) ? new LinkTarget.ToAnchor(name) : null;
            Add(
                setting.Sections.GetValueOrDefault(name, name),
                style with
                {
                    Italic = true,
                },
                to,
                words,
                ref last
            );
            return;
        }
        LinkTarget? web = Web(url, isEmail: false);
        if (web is null)
        {
            faults.Add(new(MarkdownFaultKind.UnsafeLink, url));
        }
        Read(target, style with { Underlined = web is not null }, web, words, ref last);
    }

    private static LinkTarget? Web(string url, bool isEmail) =>
        isEmail ? new LinkTarget.ToWeb("mailto:" + url)
        : url.StartsWith("https://", StringComparison.OrdinalIgnoreCase)
        || url.StartsWith("http://", StringComparison.OrdinalIgnoreCase)
        || url.StartsWith("mailto:", StringComparison.OrdinalIgnoreCase)
            ? new LinkTarget.ToWeb(url)
        : null;

    private static void Add(
        string text,
        InlineStyle style,
        LinkTarget? link,
        ImmutableArray<Inline>.Builder words,
        ref char last
    )
    {
        if (text.Length == 0)
        {
            return;
        }
        string set = Typography.Set(text, last);
        last = set[^1];
        foreach (Inline word in FractionText.Parse(set, style))
        {
            words.Add(link is null ? word : word with { Link = link });
        }
    }
}
