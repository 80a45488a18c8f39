using PatternPress.Booklet.Words;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Booklet.Sections;

/// <summary>Says in words what pieces are cut for.</summary>
internal static class CutWords
{
    /// <summary>"large squares for Unit 1", "Lamp block", "inner border, sides".</summary>
    public static string Purpose(CutRow row, SectionContext context)
    {
        Labels labels = context.Labels;
        return row.Purpose switch
        {
            CutPurpose.UnitPiece unit => labels.Format(
                "for-unit-piece",
                unit.Piece,
                UnitName(unit.Unit, labels)
            ),
            CutPurpose.BlockPatch => labels.Format(
                "for-block-patch",
                labels.List(BlockNames(row, context))
            ),
            CutPurpose.PlainBlock => labels["for-plain-block"],
            CutPurpose.Sashing sashing => labels[
                sashing.Kind switch
                {
                    SashKind.Upright => "sashing-upright",
                    SashKind.Level => "sashing-level",
                    SashKind.Row => "sashing-row",
                    SashKind.Column => "sashing-column",
                    _ => "cornerstones",
                }
            ],
            CutPurpose.SashingJoined => labels["sashing-joined"],
            CutPurpose.SettingTriangle triangle => labels[
                triangle.Kind == SettingPieceKind.Side ? "side-triangles" : "corner-triangles"
            ],
            CutPurpose.OnePatch patch => PatchName(patch.Kind, patch.Reversed, labels),
            CutPurpose.Border border => labels.Format(
                border.Part switch
                {
                    BorderPart.Sides => "border-sides",
                    BorderPart.TopAndBottom => "border-top-bottom",
                    BorderPart.Corners => "border-corners",
                    BorderPart.Left => "border-left",
                    BorderPart.Right => "border-right",
                    BorderPart.Top => "border-top",
                    BorderPart.Bottom => "border-bottom",
                    _ => "border-joined",
                },
                BorderName(border.Number, context)
            ),
            CutPurpose.BiasSquare => labels["bias-squares"],
            _ => labels["binding-strips"],
        };
    }

    /// <summary>The name of the template of a piece: "T1"; empty for none.</summary>
    public static string TemplateOf(string cut, SectionContext context) =>
        context.Tables.Templates.FirstOrDefault(t => t.Cuts.Contains(cut))?.Name ?? "";

    /// <summary>"triangles"; "end pieces, reversed".</summary>
    public static string PatchName(SettingPieceKind kind, bool reversed, Labels labels) =>
        labels[
            kind switch
            {
                SettingPieceKind.Triangle => "patch-triangles",
                SettingPieceKind.Diamond => "patch-diamonds",
                SettingPieceKind.HalfHexagon => "patch-half-hexagons",
                _ => reversed ? "patch-ends-reversed" : "patch-ends",
            }
        ];

    /// <summary>Whether two rows are the same piece of units of one number.</summary>
    public static bool IsSamePiece(CutRow a, CutRow b) =>
        a.Purpose is CutPurpose.UnitPiece one
        && b.Purpose is CutPurpose.UnitPiece other
        && one.Piece == other.Piece
        && a.After == b.After
        && NumberOf(one.Unit) == NumberOf(other.Unit);

    private static string NumberOf(string unit) => unit.TrimEnd([.. "abcdefghijklmnopqrstuvwxyz"]);

    /// <summary>"Units 1a–1f, square": the same piece of all units from one to another.</summary>
    public static string Purpose(CutRow first, CutRow last, SectionContext context) =>
        context.Labels.Format(
            "for-unit-pieces",
            ((CutPurpose.UnitPiece)first.Purpose).Piece,
            ((CutPurpose.UnitPiece)first.Purpose).Unit,
            ((CutPurpose.UnitPiece)last.Purpose).Unit
        );

    /// <summary>What is done to a square after it is cut; null for nothing.</summary>
    public static string? After(CutRow row, SectionContext context)
    {
        Labels labels = context.Labels;
        return row.After switch
        {
            PieceCut.OnceDiagonally => labels["cut-once"],
            PieceCut.TwiceDiagonally => labels["cut-twice"],
            PieceCut.AcrossAtFortyFive => labels["cut-at-45"],
            PieceCut.AcrossAtSixty => labels["cut-across"],
            PieceCut.AroundTemplate => labels.Format("cut-around", TemplateOf(row.Id, context)),
            _ => null,
        };
    }

    /// <summary>"Unit 1a".</summary>
    public static string UnitName(string label, Labels labels) =>
        labels.Format("unit-called", label);

    /// <summary>The designer's name of a border, or "border 1".</summary>
    public static string BorderName(int number, SectionContext context)
    {
        string? name = context
            .Tables.Borders.FirstOrDefault(b => b.Number == number)
            ?.BySize.Select(c => c?.Name)
            .FirstOrDefault(n => !string.IsNullOrWhiteSpace(n));
        if (name is not null)
        {
            return name;
        }
        Border? border = context
            .Manuscript.Quilts.SelectMany(q => q.Borders)
            .FirstOrDefault(b => b.Number == number);
        string called = context.Labels.Format(
            border is { IsRound: true } ? "round-called" : "border-called",
            number
        );
        return border is { IsCoping: true }
            ? context.Labels.Format("coping-called", called)
            : called;
    }

    private static IEnumerable<string> BlockNames(CutRow row, SectionContext context) =>
        row
            .Uses.Select(u => u.Block)
            .Distinct()
            .Select(key => context.Tables.Blocks.FirstOrDefault(b => b.Block == key)?.Name ?? key);
}
