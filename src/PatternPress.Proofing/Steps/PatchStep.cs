using PatternPress.Proofing.Shapes;
using PatternPress.Proofing.Ways;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>
/// Lays a one-patch quilt out on a ruled ground: level lines a row apart, on each of them marks a 1/√3 of the row's height apart.
/// Every patch reaches from marks of one line to marks of the next; what lies beyond the sides is cut off.
/// </summary>
internal sealed class PatchStep
{
    private const string Table = "patches";

    private readonly Workbench _bench;
    private readonly PlacementChart _chart;
    private readonly int _across;

    private PatchStep(Workbench bench, PlacementChart chart, int across) =>
        (_bench, _chart, _across) = (bench, chart, across);

    /// <returns>Width and height of the field; null where it could not be laid out.</returns>
    public static (Length Width, Length Height)? Do(
        Workbench bench,
        PlacementChart chart,
        int across
    ) => new PatchStep(bench, chart, across).LayOut();

    // From mark to mark, above and below; before anything is cut off.
    private readonly record struct Reach(int Left, int Right, int LowerLeft, int LowerRight)
    {
        public Reach Within(int marks) =>
            new(
                Math.Clamp(Left, 0, marks),
                Math.Clamp(Right, 0, marks),
                Math.Clamp(LowerLeft, 0, marks),
                Math.Clamp(LowerRight, 0, marks)
            );
    }

    private (Length Width, Length Height)? LayOut()
    {
        Notes notes = _bench.Notes;
        PatchRow[] rows =
        [
            .. _bench.Tables.Patches.Where(row => row.BySize[_bench.Size] is not null),
        ];
        SettingPieceKind[] wholes = [.. rows.Select(row => row.Kind).Where(IsWhole).Distinct()];
        Length[] heights = [.. rows.Select(row => row.BySize[_bench.Size]!.Finished).Distinct()];
        if (
            !notes.Ok(
                wholes.Length == 1
                    && heights.Length == 1
                    && heights[0].Sign > 0
                    && rows.All(row => IsWhole(row.Kind) || row.Kind == EndOf(wholes[0]))
            )
        )
        {
            Wrong(
                "",
                "pieces",
                $"{string.Join(", ", rows.Select(row => row.Kind).Distinct())} of {heights.Length} heights",
                "the rows are sewn of one shape and height"
            );
            return null;
        }
        SettingPieceKind kind = wholes[0];
        Length height = heights[0],
            mark = OverRootThree(height);
        int marks = kind switch
        {
            SettingPieceKind.Triangle => _across - 1,
            SettingPieceKind.Diamond => (2 * _across) - 3,
            _ => 3 * (_across - 1),
        };
        Point at = _bench.Drawn.Quilt.Center.UpperLeft;
        var counts = new Dictionary<(SettingPieceKind, bool, string), long>();
        var sewn = new List<SewnPatch>();
        for (int r = 0; r < _chart.Rows.Length; r++)
        {
            for (int c = 0; c < _across; c++)
            {
                if (FabricOf(_chart.Rows[r][c], r, c) is not { } fabric)
                {
                    continue;
                }
                Reach reach = ReachOf(kind, r, c).Within(marks);
                sewn.Add(
                    SewnPatch.Of(
                        fabric,
                        Corners(
                            at,
                            height * r,
                            height,
                            reach.Left * mark,
                            reach.Right * mark,
                            reach.LowerLeft * mark,
                            reach.LowerRight * mark
                        )
                    )
                );
                bool first = c == 0,
                    end = first || c == _across - 1;
                bool widerBelow = reach.LowerRight - reach.LowerLeft > reach.Right - reach.Left;
                // The piece has its upright edge at the left and is wider below; a diamond's is wider above.
                bool reversed = end && (first != widerBelow) == (kind != SettingPieceKind.Diamond);
                var key = (end ? EndOf(kind) : kind, reversed, fabric);
                counts[key] = counts.GetValueOrDefault(key) + 1;
            }
        }
        Compare(sewn);
        foreach (PatchRow row in rows)
        {
            Pieces(row, row.BySize[_bench.Size]!, kind, counts);
        }
        foreach ((var key, long count) in counts)
        {
            if (!notes.Ok(count == 0))
            {
                Wrong(
                    $"{PurposeText.Word(key.Item1, key.Item2)} of {key.Item3}",
                    "pieces",
                    "none",
                    $"the rows take {count}"
                );
            }
        }
        return (mark * marks, height * _chart.Rows.Length);
    }

    private static bool IsWhole(SettingPieceKind kind) =>
        kind
            is SettingPieceKind.Triangle
                or SettingPieceKind.Diamond
                or SettingPieceKind.HalfHexagon;

    private static SettingPieceKind EndOf(SettingPieceKind whole) =>
        whole switch
        {
            SettingPieceKind.Triangle => SettingPieceKind.TriangleEnd,
            SettingPieceKind.Diamond => SettingPieceKind.DiamondEnd,
            _ => SettingPieceKind.HexagonEnd,
        };

    private static Length OverRootThree(Length length) =>
        length * new Exact(0, 0, new Rational(1, 3));

    private static Reach ReachOf(SettingPieceKind kind, int row, int place)
    {
        bool even = (row + place) % 2 == 0;
        return kind switch
        {
            SettingPieceKind.Triangle => even
                ? new(place, place, place - 1, place + 1)
                : new(place - 1, place + 1, place, place),
            SettingPieceKind.Diamond => row % 2 == 0
                ? new((2 * place) - 1, (2 * place) + 1, (2 * place) - 2, 2 * place)
                : new((2 * place) - 2, 2 * place, (2 * place) - 1, (2 * place) + 1),
            _ => even
                ? new((3 * place) - 1, (3 * place) + 1, (3 * place) - 2, (3 * place) + 2)
                : new((3 * place) - 2, (3 * place) + 2, (3 * place) - 1, (3 * place) + 1),
        };
    }

    private static Point[] Corners(
        Point at,
        Length top,
        Length height,
        Length left,
        Length right,
        Length lowerLeft,
        Length lowerRight
    )
    {
        var corners = new List<Point>(4) { new(at.X + left, at.Y + top) };
        if (right != left)
        {
            corners.Add(new(at.X + right, at.Y + top));
        }
        corners.Add(new(at.X + lowerRight, at.Y + top + height));
        if (lowerRight != lowerLeft)
        {
            corners.Add(new(at.X + lowerLeft, at.Y + top + height));
        }
        return [.. corners];
    }

    private string? FabricOf(PlacementCell cell, int row, int place)
    {
        Coloring? coloring = _bench.Drawn.Quilt.Pattern.Coloring(cell.Coloring);
        if (
            !_bench.Notes.Ok(
                coloring is { IsPlain: true } && cell.Number == 0 && cell.Turn.Quarters == 0
            )
        )
        {
            _bench.Notes.Wrong(
                ProofStep.LayOut,
                "placement chart",
                $"row {row + 1}, place {place + 1}",
                "patch",
                $"{cell.Coloring} {cell.Number} {cell.Turn.Degrees}°",
                "a place takes one fabric, as it is"
            );
            return null;
        }
        return coloring!.Fabrics[Coloring.PlainPart];
    }

    private void Compare(List<SewnPatch> sewn)
    {
        (SewnPatch? extra, SewnPatch? missing) = PatchSet.Difference(sewn, _bench.Drawn.Triangles);
        if (!_bench.Notes.Ok(extra is null && missing is null))
        {
            Wrong(
                "",
                "layout",
                extra is null ? "fewer patches" : $"a patch {extra}",
                missing is null ? "the drawing has none there" : $"the drawing has {missing}"
            );
        }
    }

    private void Pieces(
        PatchRow row,
        PatchCell cell,
        SettingPieceKind kind,
        Dictionary<(SettingPieceKind, bool, string), long> counts
    )
    {
        Notes notes = _bench.Notes;
        string name = $"{PurposeText.Word(row.Kind, row.Reversed)} of {row.Fabric}";
        var key = (row.Kind, row.Reversed, row.Fabric);
        notes.Enough(
            ProofStep.LayOut,
            Table,
            name,
            "pieces",
            cell.Count,
            counts.GetValueOrDefault(key),
            "the rows take"
        );
        counts[key] = 0;
        bool triangle = kind == SettingPieceKind.Triangle;
        // Level edges take a seam each; a tip of 60 degrees lies two seams beyond its seam line.
        Length exactly = cell.Finished + (_bench.Seam * (triangle ? 3 : 2));
        notes.Same(
            ProofStep.LayOut,
            Table,
            name,
            "height of the strips",
            cell.Height,
            exactly,
            "with their seams pieces measure"
        );
        CutCell? cut = _bench.Take(ProofStep.LayOut, Table, name, cell.Cut, row.Fabric);
        _bench.Use(cell.Cut, cell.From);
        Shape(row, cell, kind, cut, name);
        long each = 1;
        if (IsWhole(row.Kind))
        {
            each = Nested(kind, cell.Finished, cut?.Width ?? Length.Zero);
        }
        notes.Same(
            ProofStep.LayOut,
            Table,
            name,
            "pieces from each",
            (int)cell.PerStrip,
            (int)each,
            "side by side go"
        );
        notes.Enough(
            ProofStep.LayOut,
            Table,
            name,
            IsWhole(row.Kind) ? "strips" : "rectangles",
            cell.From,
            each == 0 ? 0 : (cell.Count / each) + (cell.Count % each == 0 ? 0 : 1),
            $"of each come {each}; it takes"
        );
        if (cut is null)
        {
            return;
        }
        CutRow cutRow = _bench.Index.Cuts[cell.Cut].Row;
        notes.Same(
            ProofStep.LayOut,
            Table,
            name,
            "height",
            cell.Height,
            cut.Height,
            $"{cell.Cut} is cut"
        );
        bool treated = IsWhole(row.Kind)
            ? cutRow is { WholeStrip: true, After: PieceCut.AcrossAtSixty }
            : cutRow is { WholeStrip: false, After: PieceCut.AroundTemplate };
        if (!notes.Ok(treated))
        {
            Wrong(name, "cut after", $"{cutRow.After}", "the pieces have slanting edges");
        }
    }

    // One after the other into the strip, every second one upside down, as long as the last still fits.
    private long Nested(SettingPieceKind kind, Length finished, Length strip)
    {
        Length seam = _bench.Seam,
            mark = OverRootThree(finished),
            edge = OverRootThree(seam);
        // Along its longer and its shorter level edge, as cut.
        (Length longer, Length shorter) = kind switch
        {
            SettingPieceKind.Triangle => ((mark * 2) + (edge * 6), Length.Zero),
            SettingPieceKind.Diamond => ((mark * 2) + (edge * 4), (mark * 2) + (edge * 4)),
            _ => ((mark * 4) + (edge * 6), (mark * 2) + (edge * 2)),
        };
        // A diamond's slanting edges reach beyond its level ones.
        Length reach = kind == SettingPieceKind.Diamond ? longer + mark + (edge * 2) : longer;
        long count = 0;
        for (Length used = reach; used <= strip && count < 10_000; used += (longer + shorter) / 2)
        {
            count++;
        }
        return count;
    }

    // A piece by the lines of its edges: each a seam outside the finished one, level or upright, or slanting, where the way
    // across along a level line is 2/√3 of that.
    private void Shape(
        PatchRow row,
        PatchCell cell,
        SettingPieceKind kind,
        CutCell? cut,
        string name
    )
    {
        Length seam = _bench.Seam,
            h = cell.Finished,
            mark = OverRootThree(h);
        bool end = !IsWhole(row.Kind);
        Reach reach = (kind, end) switch
        {
            (SettingPieceKind.Triangle, false) => new(1, 1, 0, 2),
            (SettingPieceKind.Triangle, true) => new(0, 0, 0, 1),
            (SettingPieceKind.Diamond, false) => new(1, 3, 0, 2),
            (SettingPieceKind.Diamond, true) => new(0, 1, 0, 0),
            (_, false) => new(1, 3, 0, 4),
            _ => new(0, 1, 0, 2),
        };
        Length above = kind == SettingPieceKind.Triangle ? seam * 2 : seam,
            slant = OverRootThree(seam) * 2;
        Length left = end ? -seam : -slant,
            top = -above,
            bottom = h + seam;
        Point[] seamLine = Corners(
            default,
            Length.Zero,
            h,
            reach.Left * mark,
            reach.Right * mark,
            reach.LowerLeft * mark,
            reach.LowerRight * mark
        );
        Point[] cutLine = Corners(
            default,
            top,
            bottom - top,
            LineAt(reach.Left, reach.LowerLeft, top) + left,
            LineAt(reach.Right, reach.LowerRight, top) + slant,
            LineAt(reach.Left, reach.LowerLeft, bottom) + left,
            LineAt(reach.Right, reach.LowerRight, bottom) + slant
        );
        var needed = new NeededTemplate(
            PurposeText.Word(row.Kind, row.Reversed),
            Lain(seamLine),
            Lain(cutLine),
            []
        );
        _bench.TemplatesNeeded[cell.Cut] = needed;
        _bench.TemplatePieces[cell.Cut] = cell.Count;
        if (end && cut is not null)
        {
            _bench.Notes.Same(
                ProofStep.LayOut,
                Table,
                name,
                "width",
                cut.Width,
                _bench.House.Ruler.Up(needed.Cut.Bounds.Width),
                "the piece takes"
            );
        }

        // Where the line through a mark above and a mark below crosses a level line: the marks are as far apart as the row's
        // height over √3.
        Length LineAt(int upper, int lower, Length y) =>
            (upper * mark) + ((lower - upper) * OverRootThree(y));

        Polygon Lain(Point[] corners) =>
            new([.. row.Reversed ? corners.Reverse().Select(c => new Point(-c.X, c.Y)) : corners]);
    }

    private void Wrong(string row, string what, string printed, string expected) =>
        _bench.Notes.Wrong(ProofStep.LayOut, Table, row, what, printed, expected);
}
