using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Tables;

/// <summary>What a piece is for, in words for data and reviews. The booklet's own words are in the templates.</summary>
public static class PurposeText
{
    public static string Of(CutPurpose purpose) =>
        purpose switch
        {
            CutPurpose.UnitPiece p => $"unit {p.Unit} {p.Piece}",
            CutPurpose.BlockPatch => "patch",
            CutPurpose.PlainBlock => "plain block",
            CutPurpose.Sashing { Kind: SashKind.Cornerstone } => "cornerstone",
            CutPurpose.Sashing p => $"sashing {Word(p.Kind)}",
            CutPurpose.SashingJoined p => $"sashing {Word(p.Kind)}, to join",
            CutPurpose.SettingTriangle { Kind: SettingPieceKind.Side } => "side triangles",
            CutPurpose.SettingTriangle => "corner triangles",
            CutPurpose.OnePatch p => Word(p.Kind, p.Reversed),
            CutPurpose.Border p => $"border {p.Number} {Word(p.Part)}",
            CutPurpose.Binding => "binding",
            CutPurpose.BiasSquare => "bias binding",
            _ => purpose.ToString(),
        };

    public static string Of(SectionStrip strip) =>
        $"{Word(strip.Kind)} strip of {strip.Fabric}{(strip.Number == 1 ? "" : $" {strip.Number}")}";

    public static string Word(SectionJoin join) =>
        join switch
        {
            SectionJoin.SideBySide => "side by side",
            SectionJoin.OneBelowTheOther => "one below the other",
            SectionJoin.Clockwise => "clockwise around the first",
            _ => "counterclockwise around the first",
        };

    public static string Word(SashKind kind) =>
        kind switch
        {
            SashKind.Upright => "upright",
            SashKind.Level => "level",
            SashKind.Row => "row",
            SashKind.Column => "column",
            _ => "cornerstone",
        };

    public static string Word(SettingPieceKind kind) =>
        kind switch
        {
            SettingPieceKind.Side => "side",
            SettingPieceKind.Corner => "corner",
            SettingPieceKind.Triangle => "triangle",
            SettingPieceKind.Diamond => "diamond",
            SettingPieceKind.HalfHexagon => "half hexagon",
            _ => "end piece",
        };

    /// <summary>Of a piece of a one-patch quilt.</summary>
    public static string Word(SettingPieceKind kind, bool reversed) =>
        reversed ? $"{Word(kind)}, reversed" : Word(kind);

    public static string Word(BorderPart part) =>
        part switch
        {
            BorderPart.Sides => "sides",
            BorderPart.TopAndBottom => "top and bottom",
            BorderPart.Joined => "strips, to join",
            BorderPart.Left => "left",
            BorderPart.Right => "right",
            BorderPart.Top => "top",
            BorderPart.Bottom => "bottom",
            _ => "corners",
        };
}
