namespace PatternPress.Pdf;

/// <summary>How a PDF is written.</summary>
public sealed record PdfOptions
{
    public static readonly PdfOptions Default = new();

    /// <summary>A word written large across every page, for example <c>DRAFT</c>; none for a release.</summary>
    public string? DraftMark { get; init; }

    /// <summary>All colours as the grey of the same luminance.</summary>
    public bool Greyscale { get; init; }

    /// <summary>
    /// Whether streams are compressed and small objects packed together. Files that are not can be read with the eye, and
    /// their bytes do not depend on the runtime's release.
    /// </summary>
    public bool Compressed { get; init; } = true;

    /// <summary>
    /// Whether the file says what its content is and in which order it is read. A file for the printer alone, whose pages
    /// stand in the order of printing, does not.
    /// </summary>
    public bool Tagged { get; init; } = true;

    /// <summary>Whether the file claims to follow PDF/UA-1 (ISO 14289-1).</summary>
    public bool ClaimsAccessibility { get; init; } = true;
}
