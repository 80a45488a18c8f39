using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Source;

namespace PatternPress.Quilting.Rules;

/// <summary>What a piece is cut for and where the source says so.</summary>
/// <param name="Name">"patch "s" of block "star"", "a strip of border 2".</param>
/// <param name="Span">The words to change; the fabric if there is nothing nearer.</param>
/// <param name="Block">The block of a patch that is sewn as it is cut; null for anything else.</param>
/// <param name="Letter">Its letter in the block's map.</param>
internal sealed record CutPlace(string Name, Span Span, string? Block = null, string? Letter = null)
{
    /// <summary>Several places of one block in one: "patches "a" and "b" of block "wall"".</summary>
    public static string Told(IEnumerable<CutPlace> places)
    {
        List<CutPlace> all = [.. places.Distinct()];
        return all.Count == 1 || all[0].Block is null
            ? all[0].Name
            : $"patches {Wording.Names(all.Select(p => p.Letter!))} of block \"{all[0].Block}\"";
    }

    /// <param name="size">A size that cuts the piece.</param>
    public static CutPlace Of(RuleContext context, Cut cut, string? size)
    {
        Pattern pattern = context.Pattern;
        Span fabric = pattern.Fabric(cut.Fabric)?.Span ?? Span.None;
        QuiltDesign? quilt = pattern.Sizes.FirstOrDefault(s => s.Key == size)?.Quilt;
        switch (cut.Purpose)
        {
            case CutPurpose.UnitPiece p:
                Span? words = context
                    .Making.Shapes.SelectMany(shape => shape.Classes)
                    .Where(units => units.Label == p.Unit)
                    .Select(units => Wording.SpanOf(pattern, units))
                    .FirstOrDefault();
                return new($"the {p.Piece} of unit {p.Unit}", words ?? fabric);
            case CutPurpose.BlockPatch:
                (string Block, UnitDesign Unit)? patch = Patch(context, cut.Id);
                return patch is null
                    ? new("a patch", fabric)
                    : new(
                        $"patch \"{patch.Value.Unit.Letter}\" of block \"{patch.Value.Block}\"",
                        patch.Value.Unit.Span,
                        patch.Value.Block,
                        patch.Value.Unit.Letter
                    );
            case CutPurpose.PlainBlock:
                string? coloring = context
                    .Making.Blocks.FirstOrDefault(b => b.Parts.Any(p => p.Cut == cut.Id))
                    ?.Coloring;
                return new(
                    coloring is null ? "a plain block" : $"plain block \"{coloring}\"",
                    coloring is null ? fabric : pattern.Coloring(coloring)?.Span ?? fabric
                );
            case CutPurpose.Sashing { Kind: SashKind.Cornerstone }:
                return new("a cornerstone", quilt?.Sashing?.Span ?? fabric);
            case CutPurpose.Sashing or CutPurpose.SashingJoined:
                return new("a strip of sashing", quilt?.Sashing?.Span ?? fabric);
            case CutPurpose.SettingTriangle p:
                return new(
                    p.Kind == SettingPieceKind.Side ? "a side triangle" : "a corner triangle",
                    quilt?.Triangles?.Span ?? fabric
                );
            case CutPurpose.OnePatch p:
                return new(
                    $"the strips of {Tables.PurposeText.Word(p.Kind, p.Reversed)}s",
                    quilt?.Patch?.Span ?? fabric
                );
            case CutPurpose.Border p:
                return new(
                    p.Part == BorderPart.Corners
                        ? $"a corner square of border {p.Number}"
                        : $"a strip of border {p.Number}",
                    context
                        .Quilts.FirstOrDefault(q => q.Size.Key == size)
                        ?.Borders.FirstOrDefault(b => b.Number == p.Number)
                        ?.Design.Span
                        ?? fabric
                );
            case CutPurpose.BiasSquare:
                return new("a square for bias binding", quilt?.Binding?.Span ?? fabric);
            case CutPurpose.Binding:
                return new("a strip of binding", quilt?.Binding?.Span ?? fabric);
            default:
                return new("a piece", fabric);
        }
    }

    private static (string Block, UnitDesign Unit)? Patch(RuleContext context, string cut)
    {
        foreach (BlockMakeup makeup in context.Making.Blocks)
        {
            foreach (BlockPart part in makeup.Parts)
            {
                if (
                    part.Cut == cut
                    && makeup.Block is { } block
                    && context
                        .Pattern.Block(block)
                        ?.Units.FirstOrDefault(u => u.Design.Letter == part.Letter)
                        is { } region
                )
                {
                    return (block, region.Design);
                }
            }
        }
        return null;
    }
}
