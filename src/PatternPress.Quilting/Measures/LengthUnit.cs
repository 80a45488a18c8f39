namespace PatternPress.Quilting.Measures;

/// <summary>The units a source file may use.</summary>
public enum LengthUnit
{
    Inch,
    Yard,
    Millimetre,
    Centimetre,
    Metre,
}
