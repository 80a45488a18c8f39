using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>Paints patches as cloth: the designer's picture of it, or the flat colour with a light texture for the print.</summary>
internal static class ClothPainter
{
    /// <param name="path">Patches that lie the same way, as points on paper.</param>
    /// <param name="look">Their fabric.</param>
    /// <param name="pointsPerInch">How large an inch of the quilt is on paper.</param>
    /// <param name="corner">Where a repeat of the print begins.</param>
    /// <param name="degrees">How the print lies: a print with an up is turned with the piece it is on.</param>
    public static void Paint(
        Draft draft,
        VectorPath path,
        FabricLook look,
        double pointsPerInch,
        Spot corner,
        int degrees = 0
    )
    {
        if (look.Cloth is { } cloth)
        {
            // The colour stays below, for what shows files without their images.
            draft.Area(path, look.Color, image: cloth.At(corner, pointsPerInch, degrees));
            return;
        }
        draft.Area(path, look.Color);
        if (look.Print is not null)
        {
            foreach (HatchFill print in look.Print.On(look.Color, pointsPerInch, degrees))
            {
                draft.Area(path, hatch: print);
            }
        }
    }
}
