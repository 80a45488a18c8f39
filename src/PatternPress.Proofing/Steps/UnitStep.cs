using System.Collections.Immutable;
using PatternPress.Proofing.Shapes;
using PatternPress.Proofing.Ways;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>Sews the units from the pieces printed, by the ways of making them that the proof knows itself.</summary>
internal sealed class UnitStep
{
    /// <summary>
    /// A unit that comes out larger by no more than this is joined untrimmed (common practice, no source: it is why
    /// 7/8 in is used for 0.854).
    /// </summary>
    private static readonly Length Hair = Length.FromInches(0, 1, 16);

    private readonly Workbench _bench;
    private readonly UnitTable _table;
    private readonly UnitRow _row;
    private readonly UnitCell _cell;
    private readonly string _named;

    private UnitStep(Workbench bench, UnitTable table, UnitRow row, UnitCell cell)
    {
        _bench = bench;
        _table = table;
        _row = row;
        _cell = cell;
        _named = TableIndex.Named(table);
    }

    public static void Do(Workbench bench)
    {
        foreach (UnitTable table in bench.Tables.Units)
        {
            foreach (UnitRow row in table.Rows)
            {
                long taken = bench.UnitsTaken.GetValueOrDefault(row.Label);
                if (row.BySize[bench.Size] is { } cell)
                {
                    new UnitStep(bench, table, row, cell).Sew(taken);
                }
                else if (!bench.Notes.Ok(taken == 0))
                {
                    bench.Notes.Add(
                        MistakeKind.Short,
                        ProofStep.SewUnits,
                        TableIndex.Named(table),
                        row.Label,
                        "units",
                        "none",
                        $"the blocks take {taken}"
                    );
                }
            }
        }
    }

    private void Sew(long taken)
    {
        Enough("needed", _cell.Needed, taken, "the blocks take");
        Same(
            "unfinished width",
            _cell.UnfinishedWidth,
            _cell.FinishedWidth + (_bench.Seam * 2),
            "with its seams the unit measures"
        );
        Same(
            "unfinished height",
            _cell.UnfinishedHeight,
            _cell.FinishedHeight + (_bench.Seam * 2),
            "with its seams the unit measures"
        );
        if (
            !_bench.Notes.Ok(
                UnitWay.Find(_table.Technique) is { } known && known.Kind == _table.Kind
            )
        )
        {
            Wrong("way of making it", _table.Technique, $"no such way makes a {_table.Kind} unit");
            return;
        }
        UnitWay way = UnitWay.Find(_table.Technique)!;
        UnitOrder order = Order();
        WayPlan? plan =
            order.Width.Sign > 0 && order.Height.Sign > 0 && order.Roles > 0
                ? way.Plan(order)
                : null;
        if (!_bench.Notes.Ok(plan is not null))
        {
            Wrong(
                "unit",
                $"{_bench.Notes.Told(order.Width, order.Height)} in {order.Roles} fabrics",
                $"{_table.TechniqueName.ToLowerInvariant()} cannot make it"
            );
            return;
        }
        if (plan!.Sets.IsEmpty)
        {
            Batches(plan.Yield, taken);
            Pieces(way, plan, 1);
            foreach (UnitPiece piece in _cell.Pieces)
            {
                long pieces = piece.Count * _cell.Batches;
                _bench.Use(
                    piece.Cut,
                    piece.InStrip > 0 ? (pieces + piece.InStrip - 1) / piece.InStrip : pieces
                );
            }
        }
        else
        {
            Sets(way, plan, taken);
        }
        Measures(plan);
        Leftovers(plan);
        Picture(plan);
        Templates(plan);
        _bench.Units[_row.Label] = new SewnUnit(
            _cell.FinishedWidth,
            _cell.FinishedHeight,
            plan.Patches,
            _row.Fabrics
        );
        _bench.Leave($"unit {_row.Label}", _cell.Made - taken);
    }

    private UnitOrder Order()
    {
        Length usable = Length.Zero;
        foreach (string fabric in _row.Fabrics)
        {
            foreach (CuttingTable table in _bench.Tables.Cutting)
            {
                if (
                    table.Fabric == fabric
                    && table.Use == FabricUse.Top
                    && table.BySize[_bench.Size] is { } list
                    && (usable.Sign == 0 || list.StripLength < usable)
                )
                {
                    usable = list.StripLength;
                }
            }
        }
        return new UnitOrder(
            _cell.Variant,
            _cell.FinishedWidth,
            _cell.FinishedHeight,
            _row.Fabrics.Length,
            _bench.Seam,
            usable,
            Corner(),
            _bench.House.Ruler,
            _cell.Measures.FirstOrDefault(measure => measure.Name == "radius")?.Value
                ?? Length.Zero,
            _bench
                .Tables.Foundations.FirstOrDefault(f => f.Unit == _table.Number)
                ?.BySize[_bench.Size]
                ?.Areas
                ?? [],
            _bench
                .Tables.Appliques.FirstOrDefault(a => a.Unit == _table.Number)
                ?.BySize[_bench.Size]
                ?.Shapes
                ?? []
        );
    }

    // A flipped corner shows the square's side less two seams. Where no mark of the ruler gives the leg exactly, it is
    // the leg drawn that counts, as long as the square is the next that can be cut.
    private Length Corner()
    {
        if (_cell.Pieces.FirstOrDefault(piece => piece.Name == "corner square") is not { } square)
        {
            return Length.Zero;
        }
        Length leg = square.Width - (_bench.Seam * 2);
        if (_table.Kind != "corners")
        {
            return leg;
        }
        Length best = Length.Zero;
        foreach (BlockPlace place in _bench.Drawn.Quilt.AllBlocks())
        {
            foreach (BlockUnit unit in place.Block.Block?.Units ?? [])
            {
                Length drawn = unit.Drawn.Form.Measure;
                if (
                    drawn > best
                    && drawn <= leg
                    && leg - drawn < _bench.House.Ruler.Step
                    && unit.Drawn.Form.Width == _cell.FinishedWidth
                    && unit.Drawn.Form.Height == _cell.FinishedHeight
                    && unit.Drawn.Form.Variant == _cell.Variant
                )
                {
                    best = drawn;
                }
            }
        }
        return best.Sign > 0 ? best : leg;
    }

    private void Batches(long yield, long taken)
    {
        Same("units from a batch", _cell.Yield, yield, "a batch gives");
        Enough("batches", _cell.Batches, (taken + yield - 1) / yield, $"{taken} units take");
        Same("units made", _cell.Made, _cell.Batches * yield, "the batches give");
        foreach (StripSetRow set in _cell.StripSets)
        {
            Wrong("strip sets", $"{set.Sets}", "this way of making it takes none");
        }
    }

    private void Sets(UnitWay way, WayPlan plan, long taken)
    {
        if (
            !_bench.Notes.Ok(
                plan.Sets.Length == _cell.StripSets.Length
                    && _cell.StripSets.All(s => s.Segment.Sign > 0)
            )
        )
        {
            Wrong(
                "strip sets",
                $"{_cell.StripSets.Length} kinds",
                $"the unit takes {plan.Sets.Length}"
            );
            return;
        }
        long made = long.MaxValue,
            perSet = long.MaxValue,
            share = 0;
        for (int i = 0; i < plan.Sets.Length; i++)
        {
            NeededSet needed = plan.Sets[i];
            StripSetRow set = _cell.StripSets[i];
            string which = $"strip set {string.Join("", set.Roles.Select(role => role + 1))}";
            if (!_bench.Notes.Ok(set.Roles.AsSpan().SequenceEqual(needed.Roles.AsSpan())))
            {
                Wrong(
                    which,
                    string.Join(" ", set.Roles),
                    $"the unit's row is {string.Join(" ", needed.Roles)}"
                );
            }
            Side($"{which}, segment", null, plan.Segment, set.Segment, way, null);
            Same($"{which}, segments in a unit", set.SegmentsPerUnit, needed.PerUnit, "a unit has");
            long fit = plan.SegmentsFrom is { } from
                ? from(
                    _cell
                        .Pieces.GroupBy(p => p.Role)
                        .ToDictionary(g => g.Key, g => g.First().Height),
                    set.Segment
                )
                : Order().StripLength.CountOf(set.Segment);
            Enough(
                $"{which}, segments from a set",
                set.SegmentsPerSet,
                fit,
                "across the fabric go",
                more: MistakeKind.Short
            );
            Same($"{which}, segments", set.Segments, taken * needed.PerUnit, "the units take");
            long sets = fit == 0 ? 0 : ((taken * needed.PerUnit) + fit - 1) / fit;
            Enough($"{which}, sets", set.Sets, sets, "the segments take");
            made = Math.Min(made, set.Sets * fit / needed.PerUnit);
            perSet = Math.Min(perSet, fit);
            share = Common(needed.PerUnit, share);
            foreach (int role in set.Roles.Distinct())
            {
                if (_cell.Pieces.FirstOrDefault(piece => piece.Role == role) is { } piece)
                {
                    _bench.Use(piece.Cut, set.Sets * set.Roles.Count(r => r == role));
                }
            }
        }
        Same("units made", _cell.Made, made, "the sets give");
        // A batch is the fewest sets that are used up together.
        if (perSet < share)
        {
            share = 1;
        }
        long yield = perSet / share;
        Same("units from a batch", _cell.Yield, yield, "a batch of sets gives");
        if (yield > 0)
        {
            Enough("batches", _cell.Batches, (taken + yield - 1) / yield, $"{taken} units take");
        }
        Pieces(way, plan, share);

        static long Common(long a, long b) => b == 0 ? a : Common(b, a % b);
    }

    private void Pieces(UnitWay way, WayPlan plan, long share)
    {
        if (
            !_bench.Notes.Ok(
                _cell.Pieces.Length == plan.Pieces.Length
                    && _cell.Pieces.Select(p => (p.Name, p.Role)).Distinct().Count()
                        == _cell.Pieces.Length
            )
        )
        {
            Wrong(
                "pieces",
                string.Join(", ", _cell.Pieces.Select(p => p.Name)),
                $"the unit takes {string.Join(", ", plan.Pieces.Select(p => p.Name))}"
            );
        }
        bool trim = plan.Trims;
        foreach (NeededPiece needed in plan.Pieces)
        {
            UnitPiece? piece = _cell.Pieces.FirstOrDefault(p =>
                p.Name == needed.Name && p.Role == needed.Role
            );
            if (!_bench.Notes.Ok(piece is not null))
            {
                Wrong(
                    "pieces",
                    "none",
                    $"the unit takes a {needed.Name} of fabric {Fabric(needed.Role)}"
                );
                continue;
            }
            Piece(way, needed, piece!, needed.Count / share);
            trim |=
                needed.DecidesTrim
                && (
                    needed.Width.Over(piece!.Width, _bench.Seam) > Hair
                    || needed.Height.Over(piece.Height, _bench.Seam) > Hair
                );
        }
        if (way.Oversize && _bench.House.Cutting == CuttingStyle.Oversize)
        {
            trim = true;
        }
        trim |= plan.AlwaysTrim;
        if (!_bench.Notes.Ok(_cell.Trim == trim))
        {
            Wrong(
                "trimming",
                _cell.Trim ? "trim" : "no trimming",
                trim ? "the unit comes out larger" : "the unit comes out right as it is"
            );
        }
    }

    private void Piece(UnitWay way, NeededPiece needed, UnitPiece piece, long count)
    {
        if (!_bench.Notes.Ok(piece.Count == count))
        {
            Wrong($"{What()}, pieces for a batch", $"{piece.Count}", $"a batch takes {count}");
        }
        if (!_bench.Notes.Ok(piece.After == needed.After))
        {
            Wrong(
                $"{What()}, cut after",
                $"{piece.After}",
                $"the way of making it takes {needed.After}"
            );
        }
        if (!_bench.Notes.Ok(piece.WholeStrip == needed.WholeStrip))
        {
            Wrong(
                What(),
                piece.WholeStrip ? "a whole strip" : "a piece",
                needed.WholeStrip ? "a whole strip is sewn" : "a piece is sewn"
            );
        }
        long inStrip = needed.InStrip is { } slice ? slice(piece.Height) : 0;
        if (!_bench.Notes.Ok(piece.InStrip == inStrip))
        {
            // More than a strip gives leaves the maker short.
            _bench.Notes.Add(
                piece.InStrip > inStrip ? MistakeKind.Short : MistakeKind.Excess,
                ProofStep.SewUnits,
                _named,
                _row.Label,
                $"{What()}, from a strip",
                $"{piece.InStrip}",
                $"a strip gives {inStrip}"
            );
        }
        if (needed.Fits is { } fits)
        {
            Both(piece, fits, way);
        }
        else if (needed.WholeStrip)
        {
            Same("length", piece.Width, needed.Width.Wanted, "the narrowest fabric is wide");
        }
        else
        {
            Side("width", piece, needed.Width, piece.Width, way, needed);
        }
        if (needed.Fits is null)
        {
            Side("height", piece, needed.Height, piece.Height, way, needed);
        }
        if (
            _bench.Take(ProofStep.SewUnits, _named, _row.Label, piece.Cut, Fabric(piece.Role))
            is not { } cut
        )
        {
            return;
        }
        if (
            !_bench.Notes.Ok(
                (needed.WholeStrip || cut.Width == piece.Width) && cut.Height == piece.Height
            )
        )
        {
            Wrong(
                What(),
                _bench.Notes.Told(piece.Width, piece.Height),
                $"{piece.Cut} is cut {_bench.Notes.Told(cut.Width, cut.Height)}"
            );
        }
        CutRow row = _bench.Index.Cuts[piece.Cut].Row;
        if (!_bench.Notes.Ok(row.After == piece.After && row.WholeStrip == piece.WholeStrip))
        {
            Wrong(
                What(),
                Treated(piece.After, piece.WholeStrip),
                $"the cutting table has {piece.Cut} as {Treated(row.After, row.WholeStrip)}"
            );
        }

        string What() => Of(piece);

        static string Treated(PieceCut after, bool whole) =>
            whole
                ? after == PieceCut.AcrossAtFortyFive
                    ? "a strip cut across at 45 degrees"
                    : "a whole strip"
                : after switch
                {
                    PieceCut.OnceDiagonally => "a piece cut once diagonally",
                    PieceCut.TwiceDiagonally => "a piece cut twice diagonally",
                    PieceCut.AroundTemplate => "a piece cut around a template",
                    _ => "a piece",
                };
    }

    // Both sides together: on the ruler's marks, large enough, and not when either is a mark shorter.
    private void Both(UnitPiece piece, Func<Length, Length, bool> fits, UnitWay way)
    {
        Ruler ruler = _bench.House.Ruler;
        string size = _bench.Notes.Told(piece.Width, piece.Height);
        if (!_bench.Notes.Ok(ruler.Shows(piece.Width) && ruler.Shows(piece.Height)))
        {
            Wrong(Of(piece), size, $"the ruler is marked every {_bench.Notes.Told(ruler.Step)}");
        }
        if (!_bench.Notes.Ok(fits(piece.Width, piece.Height)))
        {
            _bench.Notes.Add(
                MistakeKind.Short,
                ProofStep.SewUnits,
                _named,
                _row.Label,
                Of(piece),
                size,
                "too little is left to trim the unit from"
            );
            return;
        }
        Length more =
            way.Oversize && _bench.House.Cutting == CuttingStyle.Oversize
                ? ruler.Up(_bench.House.Oversize)
                : Length.Zero;
        (Length width, Length height) = (piece.Width - more, piece.Height - more);
        if (
            !_bench.Notes.Ok(
                fits(width, height)
                    && !fits(width - ruler.Step, height)
                    && !fits(width, height - ruler.Step)
            )
        )
        {
            _bench.Notes.Add(
                MistakeKind.Excess,
                ProofStep.SewUnits,
                _named,
                _row.Label,
                Of(piece),
                size,
                "less would do"
            );
        }
    }

    // Not too small; not larger than the next mark of the ruler, unless it is cut larger by the house's wish.
    private void Side(
        string what,
        UnitPiece? piece,
        PieceSide side,
        Length cut,
        UnitWay way,
        NeededPiece? needed
    )
    {
        bool critical = needed is { Critical: true };
        if (!_bench.Notes.Ok(_bench.House.Ruler.Shows(cut)))
        {
            Wrong(
                piece is null ? what : $"{Of(piece)}, {what}",
                _bench.Notes.Told(cut),
                $"the ruler is marked every {_bench.Notes.Told(_bench.House.Ruler.Step)}"
            );
        }
        Length over = side.Over(cut, _bench.Seam);
        Length step = _bench.House.Ruler.Step;
        if (!_bench.Notes.Ok(over.Sign >= 0))
        {
            _bench.Notes.Add(
                MistakeKind.Short,
                ProofStep.SewUnits,
                _named,
                _row.Label,
                piece is null ? what : $"{Of(piece)}, {what}",
                _bench.Notes.Told(cut),
                $"to come out at size it needs {_bench.Notes.Told(side.Exactly(_bench.Seam))}"
            );
            return;
        }
        Length most =
            critical ? Hair
            : needed is { CutLarger: true }
            || (way.Oversize && _bench.House.Cutting == CuttingStyle.Oversize)
                ? step + _bench.House.Oversize
            : step;
        if (!_bench.Notes.Ok(critical ? over <= most : over < most))
        {
            _bench.Notes.Add(
                _cell.Trim && !critical ? MistakeKind.Excess : MistakeKind.Wrong,
                ProofStep.SewUnits,
                _named,
                _row.Label,
                piece is null ? what : $"{Of(piece)}, {what}",
                _bench.Notes.Told(cut),
                $"{_bench.Notes.Told(side.Exactly(_bench.Seam))} is enough"
            );
        }
    }

    private void Measures(WayPlan plan)
    {
        var expected = new SortedDictionary<string, Length>(StringComparer.Ordinal)
        {
            ["seam"] = _bench.Seam,
            ["unfinished-width"] = _cell.UnfinishedWidth,
            ["unfinished-height"] = _cell.UnfinishedHeight,
            ["middle"] = _cell.UnfinishedWidth / 2,
        };
        foreach (UnitPiece piece in _cell.Pieces)
        {
            if (piece.WholeStrip)
            {
                expected[piece.Name] = piece.Height;
            }
            else if (
                piece.Width == piece.Height
                && !piece.Name.EndsWith("rectangle", StringComparison.Ordinal)
            )
            {
                expected[piece.Name] = piece.Width;
            }
            else
            {
                expected[piece.Name + "-width"] = piece.Width;
                expected[piece.Name + "-height"] = piece.Height;
            }
            if (piece.Name == plan.Halved)
            {
                expected["half"] = piece.Width / 2;
            }
        }
        foreach ((string name, Length value) in plan.Measures)
        {
            expected[name] = value;
        }
        foreach (StripSetRow set in _cell.StripSets)
        {
            expected["segment"] = set.Segment;
        }
        foreach (NamedLength measure in _cell.Measures)
        {
            if (_bench.Notes.Ok(expected.Remove(measure.Name, out Length value)))
            {
                Same(measure.Name, measure.Value, value, "it is", "measure ");
            }
            else
            {
                Wrong("measure", measure.Name, "nothing about the unit has that name");
            }
        }
        foreach ((string name, Length value) in expected)
        {
            Wrong($"measure {name}", "nothing", $"the steps need {_bench.Notes.Told(value)}");
        }
    }

    private void Leftovers(WayPlan plan)
    {
        Length side = Length.Zero;
        if (
            plan.Flips > 0
            && _cell.Pieces.FirstOrDefault(piece => piece.Name == plan.Flipped) is { } square
        )
        {
            side = square.Width - (_bench.Seam * SeamLoss.Offcut);
        }
        // Smaller ones are not worth keeping.
        Length down = _bench.House.Ruler.Down(side);
        int kinds = down >= Length.FromInches(1) ? 1 : 0;
        if (!_bench.Notes.Ok(_cell.Leftovers.Length == kinds))
        {
            Wrong(
                "what is left of a batch",
                _cell.Leftovers.IsEmpty ? "nothing" : "something",
                kinds == 0 ? "nothing worth keeping is" : $"units of {_bench.Notes.Told(down)} are"
            );
            return;
        }
        if (kinds == 1)
        {
            Same(
                "left of a batch, units",
                _cell.Leftovers[0].Count,
                plan.Flips,
                "corners flipped are"
            );
            Same("left of a batch, width", _cell.Leftovers[0].Width, down, "trimmed they measure");
            Same(
                "left of a batch, height",
                _cell.Leftovers[0].Height,
                down,
                "trimmed they measure"
            );
        }
    }

    // The picture is drawn at one size only.
    private void Picture(WayPlan plan)
    {
        if (
            _table.Picture.Width != _cell.FinishedWidth
            || _table.Picture.Height != _cell.FinishedHeight
        )
        {
            return;
        }
        (SewnPatch? extra, SewnPatch? missing) = PatchSet.Difference(
            [.. plan.Patches.Select(patch => Of(patch.Shape, patch.Role))],
            [
                .. _table.Picture.Patches.Select(patch => Of(patch.Shape, patch.Role)),
                .. _table.Picture.Overlays.Select(shape => Of(shape.Shape, shape.Role)),
            ]
        );
        if (!_bench.Notes.Ok(extra is null && missing is null))
        {
            Wrong("picture", $"{missing}", $"the steps make {extra}");
        }

        static SewnPatch Of(Polygon shape, int role) => SewnPatch.Of($"{role}", shape);
    }

    // The shapes that the pieces are cut to, each beside the piece that is cut into it.
    private void Templates(WayPlan plan)
    {
        foreach (UnitPiece piece in _cell.Pieces)
        {
            if (piece.After == PieceCut.AroundTemplate)
            {
                _bench.TemplatesNeeded.TryAdd(
                    piece.Cut,
                    plan.Templates.FirstOrDefault(template => template.Piece == piece.Name)
                );
            }
        }
    }

    private string Of(UnitPiece piece) => $"{piece.Name} of {Fabric(piece.Role)}";

    private string Fabric(int role) =>
        role >= 0 && role < _row.Fabrics.Length ? _row.Fabrics[role] : $"number {role + 1}";

    private void Enough(
        string what,
        long printed,
        long needed,
        string why,
        MistakeKind more = MistakeKind.Excess
    )
    {
        if (!_bench.Notes.Ok(printed == needed))
        {
            _bench.Notes.Add(
                printed < needed
                    ? more == MistakeKind.Short
                        ? MistakeKind.Excess
                        : MistakeKind.Short
                    : more,
                ProofStep.SewUnits,
                _named,
                _row.Label,
                what,
                $"{printed}",
                $"{why} {needed}"
            );
        }
    }

    private void Same(string what, long printed, long expected, string why, string of = "")
    {
        if (!_bench.Notes.Ok(printed == expected))
        {
            Wrong(of + what, $"{printed}", $"{why} {expected}");
        }
    }

    private void Same(string what, Length printed, Length expected, string why, string of = "")
    {
        if (!_bench.Notes.Ok(printed == expected))
        {
            Wrong(of + what, _bench.Notes.Told(printed), $"{why} {_bench.Notes.Told(expected)}");
        }
    }

    private void Wrong(string what, string printed, string expected) =>
        _bench.Notes.Wrong(ProofStep.SewUnits, _named, _row.Label, what, printed, expected);
}
