using System.Collections.Immutable;
using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>Sews the blocks: every unit and patch must be as large as its place on the block's grid.</summary>
internal sealed class BlockStep
{
    private readonly Workbench _bench;
    private readonly BlockRow _row;
    private readonly BlockCell _cell;

    private BlockStep(Workbench bench, BlockRow row, BlockCell cell)
    {
        _bench = bench;
        _row = row;
        _cell = cell;
    }

    public static void Do(Workbench bench)
    {
        foreach (BlockRow row in bench.Tables.Blocks)
        {
            long placed = bench.BlocksPlaced.GetValueOrDefault((row.Coloring, row.Number));
            if (row.BySize[bench.Size] is { } cell)
            {
                new BlockStep(bench, row, cell).Sew(placed);
            }
            else if (!bench.Notes.Ok(placed == 0))
            {
                bench.Notes.Add(
                    MistakeKind.Short,
                    ProofStep.SewBlocks,
                    "blocks",
                    TableIndex.Named(row),
                    "blocks",
                    "none",
                    $"the placement chart takes {placed}"
                );
            }
        }
    }

    private void Sew(long placed)
    {
        _bench.Notes.Enough(
            ProofStep.SewBlocks,
            "blocks",
            TableIndex.Named(_row),
            "blocks",
            _cell.Count,
            placed,
            "the placement chart takes"
        );
        Unfinished("unfinished width", _cell.UnfinishedWidth, _cell.FinishedWidth);
        Unfinished("unfinished height", _cell.UnfinishedHeight, _cell.FinishedHeight);
        ImmutableArray<Length> x = Lines(_row.Columns, _cell.FinishedWidth),
            y = Lines(_row.Rows, _cell.FinishedHeight);
        Inside(x, y);
        var patches = ImmutableArray.CreateBuilder<(Polygon, string)>();
        bool whole = true;
        foreach (BlockPart part in _row.Parts)
        {
            if (
                part.Column < 0
                || part.Row < 0
                || part.Columns < 1
                || part.Rows < 1
                || part.Column + part.Columns >= x.Length
                || part.Row + part.Rows >= y.Length
            )
            {
                Wrong(part, "place", $"{part.Columns}×{part.Rows}", "it lies outside the block");
                whole = false;
                continue;
            }
            var place = new Rect(
                x[part.Column],
                y[part.Row],
                x[part.Column + part.Columns] - x[part.Column],
                y[part.Row + part.Rows] - y[part.Row]
            );
            whole &= part.Unit is null ? Patch(part, place, patches) : Unit(part, place, patches);
        }
        if (whole)
        {
            _bench.Blocks[(_row.Coloring, _row.Number)] = new SewnBlock(
                _cell.FinishedWidth,
                _cell.FinishedHeight,
                patches.ToImmutable()
            );
        }
    }

    private bool Unit(BlockPart part, Rect place, ImmutableArray<(Polygon, string)>.Builder patches)
    {
        if (!_bench.Units.TryGetValue(part.Unit!, out SewnUnit? unit))
        {
            return false;
        }
        (Length width, Length height) = part.Turn.SwapsSides
            ? (unit.Height, unit.Width)
            : (unit.Width, unit.Height);
        if (!_bench.Notes.Ok(width == place.Width && height == place.Height))
        {
            Wrong(
                part,
                $"unit {part.Unit}",
                _bench.Notes.Told(width, height),
                $"its place measures {_bench.Notes.Told(place.Width, place.Height)} finished"
            );
            return false;
        }
        foreach (UnitPatch patch in unit.Patches)
        {
            patches.Add(
                (
                    patch.Shape.Turned(part.Turn, unit.Width, unit.Height).MoveBy(place.UpperLeft),
                    patch.Role < unit.Fabrics.Length ? unit.Fabrics[patch.Role] : ""
                )
            );
        }
        return true;
    }

    private bool Patch(
        BlockPart part,
        Rect place,
        ImmutableArray<(Polygon, string)>.Builder patches
    )
    {
        string row = Named(part);
        if (
            part.Cut is null
            || !_bench.Index.Cuts.TryGetValue(part.Cut, out (CuttingTable Table, CutRow) found)
        )
        {
            return false;
        }
        string fabric = found.Table.Fabric;
        if (_bench.Take(ProofStep.SewBlocks, "blocks", row, part.Cut, fabric) is not { } cut)
        {
            return false;
        }
        // A piece lies level as it is cut; a print with an up is cut as it lies.
        bool level = _row.Block is null || _bench.Index.IsDirectional(fabric);
        int turn = _row.Block is not null && place.Height > place.Width ? 1 : 0;
        (Length width, Length height) =
            turn == 1 && !level ? (cut.Height, cut.Width) : (cut.Width, cut.Height);
        if (!_bench.Notes.Ok(part.Turn.Quarters == turn))
        {
            Wrong(
                part,
                "turn",
                $"{part.Turn.Degrees}°",
                $"the piece lies so when turned {turn * 90}°"
            );
        }
        bool fits = _bench.Fits(width, place.Width) & _bench.Fits(height, place.Height);
        if (!fits)
        {
            Wrong(
                part,
                $"piece {part.Cut}",
                _bench.Notes.Told(width, height),
                $"its place measures {_bench.Notes.Told(place.Width, place.Height)} finished"
            );
        }
        patches.Add((place.ToPolygon(), fabric));
        return true;
    }

    // A block inside is sewn by itself: no part reaches across its edge, and it measures what is printed.
    private void Inside(ImmutableArray<Length> x, ImmutableArray<Length> y)
    {
        ImmutableArray<InnerBlock> drawn =
            _row.Block is { } key && _bench.Drawn.Quilt.Pattern.Block(key) is { } design
                ? design.Inner
                : [];
        _bench.Notes.Same(
            ProofStep.SewBlocks,
            "blocks",
            TableIndex.Named(_row),
            "blocks inside",
            _row.Inner.Length,
            drawn.Length,
            "the drawing has"
        );
        for (int i = 0; i < _row.Inner.Length; i++)
        {
            InnerBlockRow inner = _row.Inner[i];
            var printed = new InnerBlock(
                inner.Block,
                inner.Name,
                inner.Column,
                inner.Row,
                inner.Columns,
                inner.Rows
            );
            if (
                !_bench.Notes.Ok(i < drawn.Length && printed == drawn[i])
                || !_bench.Notes.Ok(
                    inner.Column + inner.Columns < x.Length && inner.Row + inner.Rows < y.Length
                )
            )
            {
                _bench.Notes.Wrong(
                    ProofStep.SewBlocks,
                    "blocks",
                    TableIndex.Named(_row),
                    "block inside",
                    $"{printed}",
                    i < drawn.Length ? $"the drawing has {drawn[i]}" : "the drawing has none"
                );
                continue;
            }
            bool apart = _row.Parts.All(part =>
                printed.Holds(part.Column, part.Row, part.Columns, part.Rows)
                || part.Column >= printed.Column + printed.Columns
                || part.Column + part.Columns <= printed.Column
                || part.Row >= printed.Row + printed.Rows
                || part.Row + part.Rows <= printed.Row
            );
            if (!_bench.Notes.Ok(apart))
            {
                _bench.Notes.Wrong(
                    ProofStep.SewBlocks,
                    "blocks",
                    TableIndex.Named(_row),
                    "block inside",
                    inner.Name,
                    "a part reaches across its edge"
                );
            }
            InnerBlockCell? cell = inner.BySize[_bench.Size];
            if (!_bench.Notes.Ok(cell is not null))
            {
                _bench.Notes.Wrong(
                    ProofStep.SewBlocks,
                    "blocks",
                    TableIndex.Named(_row),
                    inner.Name,
                    "no size",
                    "it is sewn in this size"
                );
                continue;
            }
            Unfinished(
                $"unfinished width of {inner.Name}",
                cell!.UnfinishedWidth,
                x[inner.Column + inner.Columns] - x[inner.Column]
            );
            Unfinished(
                $"unfinished height of {inner.Name}",
                cell.UnfinishedHeight,
                y[inner.Row + inner.Rows] - y[inner.Row]
            );
        }
    }

    // Where the lines of the grid lie, from relative widths.
    private static ImmutableArray<Length> Lines(ImmutableArray<Rational> shares, Length side)
    {
        if (shares.IsEmpty)
        {
            return [Length.Zero, side];
        }
        Rational all = shares.Aggregate(Rational.Zero, (sum, share) => sum + share),
            at = Rational.Zero;
        var lines = ImmutableArray.CreateBuilder<Length>(shares.Length + 1);
        lines.Add(Length.Zero);
        foreach (Rational share in shares)
        {
            at += share;
            lines.Add(all.Sign > 0 ? side * (at / all) : Length.Zero);
        }
        return lines.MoveToImmutable();
    }

    private void Unfinished(string what, Length printed, Length finished) =>
        _bench.Notes.Same(
            ProofStep.SewBlocks,
            "blocks",
            TableIndex.Named(_row),
            what,
            printed,
            finished + (_bench.Seam * 2),
            "with its seams the block measures"
        );

    private string Named(BlockPart part) =>
        part.Letter.Length == 0
            ? TableIndex.Named(_row)
            : $"{TableIndex.Named(_row)}, {part.Letter} at {part.Column + 1},{part.Row + 1}";

    private void Wrong(BlockPart part, string what, string printed, string expected) =>
        _bench.Notes.Wrong(ProofStep.SewBlocks, "blocks", Named(part), what, printed, expected);
}
