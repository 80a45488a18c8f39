using PatternPress.Typesetting;

namespace PatternPress.Pdf;

/// <summary>Writes typeset pages as an accessible PDF (tagged after PDF/UA-1). The same pages give the same bytes.</summary>
public static class PdfWriter
{
    /// <summary>The PDF file's content.</summary>
    public static byte[] Write(TypesetDocument document, PdfOptions? options = null) =>
        throw new NotImplementedException();
}
