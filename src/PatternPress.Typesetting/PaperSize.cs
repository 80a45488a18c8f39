namespace PatternPress.Typesetting;

/// <summary>The size of a sheet.</summary>
public readonly record struct PaperSize(Points Width, Points Height)
{
    /// <summary>8 1/2 × 11 in (ANSI/ASME Y14.1, size A).</summary>
    public static readonly PaperSize Letter = new(new(612_000), new(792_000));

    /// <summary>210 × 297 mm (ISO 216).</summary>
    public static readonly PaperSize A4 = new(new(595_276), new(841_890));

    /// <summary>
    /// Half of the sheet, folded across its longer side: half-letter, or A5. Folded sheets of the ISO 216 series are cut to
    /// whole millimetres: half of A4 is 148 mm wide, not 148.5.
    /// </summary>
    public PaperSize Half() => this == A4 ? A5 : new(Height / 2, Width);

    /// <summary>148 × 210 mm (ISO 216).</summary>
    public static readonly PaperSize A5 = new(new(419_528), new(595_276));

    /// <summary>The same sheet turned by a quarter.</summary>
    public PaperSize Turned() => new(Height, Width);
}
