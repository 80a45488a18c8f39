namespace PatternPress.Pdf;

/// <summary>How a PDF is written.</summary>
public sealed record PdfOptions
{
    public static readonly PdfOptions Default = new();

    /// <summary>A word written large across every page, for example <c>DRAFT</c>; none for a release.</summary>
    public string? DraftMark { get; init; }

    /// <summary>All colours as the grey of the same luminance.</summary>
    public bool Greyscale { get; init; }

    /// <summary>Whether streams are compressed. Uncompressed files compare equal across releases of the runtime.</summary>
    public bool Compressed { get; init; } = true;
}
