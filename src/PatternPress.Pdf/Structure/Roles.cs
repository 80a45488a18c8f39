using PatternPress.Typesetting.Pages;

namespace PatternPress.Pdf.Structure;

/// <summary>The standard structure types of PDF (ISO 32000-1, 14.8.4) for the typesetter's roles.</summary>
static class Roles
{
    public static string NameOf(TagRole role) =>
        role switch
        {
            TagRole.Section => "Sect",
            TagRole.Division => "Div",
            TagRole.Paragraph => "P",
            TagRole.Heading1 => "H1",
            TagRole.Heading2 => "H2",
            TagRole.Heading3 => "H3",
            TagRole.Heading4 => "H4",
            TagRole.Heading5 => "H5",
            TagRole.Heading6 => "H6",
            TagRole.List => "L",
            TagRole.ListItem => "LI",
            TagRole.Label => "Lbl",
            TagRole.ListBody => "LBody",
            TagRole.Table => "Table",
            TagRole.TableHead => "THead",
            TagRole.TableBody => "TBody",
            TagRole.TableRow => "TR",
            TagRole.HeaderCell => "TH",
            TagRole.DataCell => "TD",
            TagRole.Figure => "Figure",
            TagRole.Caption => "Caption",
            TagRole.Formula => "Formula",
            TagRole.Span => "Span",
            TagRole.Link => "Link",
            TagRole.Note => "Note",
            TagRole.BlockQuote => "BlockQuote",
            TagRole.Contents => "TOC",
            TagRole.ContentsItem => "TOCI",
            TagRole.Reference => "Reference",
            _ => throw new ArgumentOutOfRangeException(nameof(role)),
        };

    /// <summary>
    /// Whether words or shapes may stand directly in an element. Shapes in elements that only group others are decoration.
    /// </summary>
    public static bool HoldsContent(TagRole role, bool isText) =>
        role switch
        {
            TagRole.List
            or TagRole.Table
            or TagRole.TableHead
            or TagRole.TableBody
            or TagRole.TableRow => false,
            TagRole.Contents or TagRole.ListItem => false,
            TagRole.Section
            or TagRole.Division
            or TagRole.BlockQuote
            or TagRole.ListBody
            or TagRole.ContentsItem => isText,
            TagRole.HeaderCell or TagRole.DataCell => isText,
            _ => true,
        };
}
