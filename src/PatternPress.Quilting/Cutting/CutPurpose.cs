using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Cutting;

/// <summary>What a piece is cut for. A closed set; each case is compared by value.</summary>
public abstract record CutPurpose
{
    private CutPurpose() { }

    /// <summary>A piece of a unit's recipe.</summary>
    /// <param name="Unit">Label of the unit class.</param>
    /// <param name="Piece">The recipe's name for the piece.</param>
    /// <param name="Role">Whose fabric it is; the first, where roles that take the same piece share a fabric.</param>
    public sealed record UnitPiece(string Unit, string Piece, int Role) : CutPurpose;

    /// <summary>A square or rectangle that is sewn into blocks as it is cut.</summary>
    /// <param name="Number">Tells the patches of a pattern apart, from 1.</param>
    public sealed record BlockPatch(int Number) : CutPurpose;

    /// <summary>A plain block.</summary>
    /// <param name="Number">Tells plain blocks of one fabric and different sizes apart, from 1.</param>
    public sealed record PlainBlock(int Number) : CutPurpose;

    /// <summary>A sashing strip or a cornerstone.</summary>
    /// <param name="Number">Tells strips of one kind and fabric and different lengths apart, from 1.</param>
    public sealed record Sashing(SashKind Kind, int Number) : CutPurpose;

    /// <summary>Strips that are joined end to end; sashing rows are cut from the joined strip.</summary>
    public sealed record SashingJoined(SashKind Kind, int Number) : CutPurpose;

    /// <summary>Squares that are cut into side or corner triangles of a setting on point.</summary>
    /// <param name="Number">Tells triangles of one kind and fabric and different sizes apart, from 1.</param>
    public sealed record SettingTriangle(SettingPieceKind Kind, int Number) : CutPurpose;

    /// <summary>Strips or rectangles that are cut into the pieces of a one-patch quilt.</summary>
    /// <param name="Reversed">For ends that are the others turned over.</param>
    public sealed record OnePatch(SettingPieceKind Kind, bool Reversed) : CutPurpose;

    /// <summary>The strips of one border, from 1 at the inside.</summary>
    /// <param name="Set">Tells strips that are joined to different widths apart, from 1.</param>
    public sealed record Border(int Number, BorderPart Part, int Set = 1) : CutPurpose;

    public sealed record Binding : CutPurpose;

    /// <summary>Squares that bias binding is made from.</summary>
    public sealed record BiasSquare : CutPurpose;
}

/// <summary>Which strips of a border.</summary>
public enum BorderPart
{
    /// <summary>The left and right strips, each in one piece.</summary>
    Sides,

    /// <summary>The top and bottom strips, each in one piece.</summary>
    TopAndBottom,

    /// <summary>Strips that are joined end to end; the border's strips are cut from the joined strip.</summary>
    Joined,

    /// <summary>Corner squares, or corner blocks.</summary>
    Corners,

    /// <summary>The left strip, where it is not as the right one.</summary>
    Left,

    /// <summary>The right strip, where it is not as the left one.</summary>
    Right,

    /// <summary>The top strip, where it is not as the bottom one.</summary>
    Top,

    /// <summary>The bottom strip, where it is not as the top one.</summary>
    Bottom,
}
