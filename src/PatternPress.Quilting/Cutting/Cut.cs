using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Cutting;

/// <summary>Pieces of one size, one fabric and one purpose, as cut for one size of the quilt.</summary>
/// <param name="Id">Its name in print, the same in every size: "A1".</param>
/// <param name="Fabric">Fabric key.</param>
/// <param name="Purpose">What it is for.</param>
/// <param name="Width">As cut, on the ruler's marks. For a whole strip: the usable width of the fabric.</param>
/// <param name="Height">As cut, along the length of the fabric unless turned.</param>
/// <param name="Exactly">Width and height before they were rounded up to the ruler.</param>
/// <param name="Count">How many.</param>
/// <param name="After">What is done to the piece after it is cut.</param>
/// <param name="WholeStrip">A strip across the whole width of the fabric that is not cut into pieces.</param>
/// <param name="Turnable">Whether it may be cut either way of the fabric.</param>
public sealed record Cut(
    string Id,
    string Fabric,
    CutPurpose Purpose,
    Length Width,
    Length Height,
    (Length Width, Length Height) Exactly,
    long Count,
    PieceCut After,
    bool WholeStrip,
    bool Turnable
);
