using System.Text;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Pdf.Files;

/// <summary>
/// The XMP packet (ISO 16684-1) that takes the place of PDFsharp's, which is not escaped, claims no accessibility and
/// carries random numbers.
/// </summary>
static class Metadata
{
    /// <param name="fingerprint">Of the rest of the file: what makes the document's own number.</param>
    public static byte[] Write(
        DocumentInformation information,
        bool claimsAccessibility,
        byte[] fingerprint
    )
    {
        var date = $"{information.Date:yyyy-MM-dd}T00:00:00Z";
        var id = $"uuid:{new Guid(fingerprint.AsSpan(0, 16), bigEndian: true)}";
        var xmp = new StringBuilder();
        xmp.Append("<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n");
        xmp.Append("<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n");
        xmp.Append("<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n");
        xmp.Append("<rdf:Description rdf:about=\"\"");
        xmp.Append(
            " xmlns:dc=\"http://purl.org/dc/elements/1.1/\" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\""
        );
        xmp.Append(
            " xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\" xmlns:xmpMM=\"http://ns.adobe.com/xap/1.0/mm/\""
        );
        xmp.Append(" xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\">\n");
        xmp.Append("<dc:format>application/pdf</dc:format>\n");
        Localised("dc:title", information.Title);
        Listed("dc:creator", "Seq", information.Author.Length > 0 ? [information.Author] : []);
        Localised("dc:description", information.Subject);
        Listed("dc:subject", "Bag", information.Keywords);
        Listed("dc:language", "Bag", [information.Language]);
        Localised("dc:rights", information.Rights);
        Plain("pdf:Keywords", string.Join(", ", information.Keywords));
        Plain("xmp:CreatorTool", information.Creator);
        Plain("xmp:CreateDate", date);
        Plain("xmp:ModifyDate", date);
        Plain("xmp:MetadataDate", date);
        Plain("xmpMM:DocumentID", id);
        Plain("xmpMM:VersionID", information.Edition);
        Plain("pdfuaid:part", claimsAccessibility ? "1" : "");
        xmp.Append("</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>");
        return Encoding.UTF8.GetBytes(xmp.ToString());

        void Plain(string name, string value)
        {
            if (value.Length > 0)
            {
                xmp.Append($"<{name}>{XmlText.Escape(value)}</{name}>\n");
            }
        }

        void Localised(string name, string value)
        {
            if (value.Length > 0)
            {
                xmp.Append(
                    $"<{name}><rdf:Alt><rdf:li xml:lang=\"x-default\">{XmlText.Escape(value)}</rdf:li></rdf:Alt></{name}>\n"
                );
            }
        }

        void Listed(string name, string kind, IReadOnlyCollection<string> values)
        {
            if (values.Count > 0)
            {
                var items = string.Concat(
                    values.Select(value => $"<rdf:li>{XmlText.Escape(value)}</rdf:li>")
                );
                xmp.Append($"<{name}><rdf:{kind}>{items}</rdf:{kind}></{name}>\n");
            }
        }
    }
}
