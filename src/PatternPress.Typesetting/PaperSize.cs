namespace PatternPress.Typesetting;

/// <summary>The size of a sheet.</summary>
public readonly record struct PaperSize(Points Width, Points Height)
{
    /// <summary>8 1/2 × 11 in (ANSI/ASME Y14.1, size A).</summary>
    public static readonly PaperSize Letter = new(new(612_000), new(792_000));

    /// <summary>210 × 297 mm (ISO 216).</summary>
    public static readonly PaperSize A4 = new(new(595_276), new(841_890));

    /// <summary>The same sheet turned by a quarter.</summary>
    public PaperSize Turned() => new(Height, Width);
}
