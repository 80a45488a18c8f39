using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Cutting;

/// <summary>Which row of a cutting table holds a piece of a recipe.</summary>
internal static class UnitPieces
{
    /// <summary>
    /// Pieces that are alike but for their role are one row where the roles share a fabric: the outer strips of a
    /// rail in A, B, A.
    /// </summary>
    public static CutPurpose.UnitPiece PurposeOf(UnitClass unit, Recipe recipe, RecipePiece piece)
    {
        int role = piece.Role;
        foreach (RecipePiece other in recipe.Pieces)
        {
            if (
                other.Role < role
                && other.Name == piece.Name
                && unit.Fabrics[other.Role] == unit.Fabrics[piece.Role]
            )
            {
                role = other.Role;
            }
        }
        return new CutPurpose.UnitPiece(unit.Label, piece.Name, role);
    }
}
