using System.Collections.Immutable;
using CsCheck;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Cutting.Planning;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Tests.Quilting.Cutting;

/// <summary>What must hold for every pattern, on random ones.</summary>
public sealed class MakerPropertyTests
{
    // Promises hold for every plan, so a hasty search will do.
    private static readonly FabricPlanner Hasty = new(new SearchEffort(1_000_000));

    [Test]
    public void Random_patterns_keep_all_promises() =>
        RandomPatterns.Any.Sample(
            yaml =>
            {
                Making making = Makings.Of(yaml, Hasty);
                making.Problems.ShouldBeEmpty();
                foreach (SizeMaking size in making.Sizes)
                {
                    UnitsAreEnoughAndNoMore(size);
                    UnitsAndPatchesFillTheQuilt(making, size);
                    StripsHoldTheirPieces(size);
                    YardageHoldsTheStrips(size);
                    FabricCoversItsPatches(size);
                    JoinedStripsReach(size);
                    BlocksLookAsDrawn(making, size);
                }
                RowsMeanTheSameInEverySize(making);
                TablesAreComplete(making);
            },
            iter: 40,
            threads: 1,
            print: yaml => yaml
        );

    private static void UnitsAreEnoughAndNoMore(SizeMaking size)
    {
        foreach (UnitBatch unit in size.Units)
        {
            unit.Made.ShouldBeGreaterThanOrEqualTo(unit.Needed);
            if (unit.Recipe.StripSets.IsEmpty)
            {
                unit.Extra.ShouldBeLessThan(unit.Recipe.Yield);
            }
            unit.Recipe.UnfinishedWidth.ShouldBe(size.Quilt.House.Unfinished(unit.Form.Width));
        }
        foreach (UnitBatch unit in size.Units)
        {
            IEnumerable<RecipePiece> pieces = unit.Recipe.PiecesFor(unit.Needed);
            long cut = size
                .Cuts.Where(c => c.Purpose is CutPurpose.UnitPiece p && p.Unit == unit.Class.Label)
                .Sum(c => c.Count);
            cut.ShouldBe(pieces.Sum(p => p.Count));
        }
    }

    // Counted place by place, with no classes in between.
    private static void UnitsAndPatchesFillTheQuilt(Making making, SizeMaking size)
    {
        long patches = 0,
            plain = 0;
        var units = new Dictionary<UnitForm, long>();
        foreach (BlockPlace place in size.Quilt.Places)
        {
            if (place.Block.Block is not { } block)
            {
                plain++;
                continue;
            }
            foreach (BlockUnit unit in block.Units)
            {
                UnitForm form = unit.Drawn.Form;
                if (form.Patches.Length == 1)
                {
                    patches++;
                }
                else
                {
                    units[form] = units.GetValueOrDefault(form) + 1;
                }
            }
        }
        size.Cuts.Where(c => c.Purpose is CutPurpose.BlockPatch)
            .Sum(c => c.Count)
            .ShouldBe(patches);
        size.Cuts.Where(c => c.Purpose is CutPurpose.PlainBlock).Sum(c => c.Count).ShouldBe(plain);
        var made = size
            .Units.GroupBy(unit => unit.Form)
            .ToDictionary(g => g.Key, g => g.Sum(unit => unit.Needed));
        made.Where(m => m.Value > 0).Count().ShouldBe(units.Count);
        foreach ((UnitForm form, long count) in units)
        {
            made[form].ShouldBe(count);
        }
        making.Blocks.Sum(block => size.CountOf(block)).ShouldBe(size.Quilt.Places.Length);
    }

    private static void StripsHoldTheirPieces(SizeMaking size)
    {
        var left = size.Cuts.ToDictionary(cut => cut.Id, cut => cut.Count);
        left.Count.ShouldBe(size.Cuts.Length);
        foreach (FabricPlan plan in size.Fabrics)
        {
            var together = new Dictionary<string, long>();
            foreach (PlannedStrip strip in plan.Strips)
            {
                Length used = strip.Segments.Aggregate(
                    Length.Zero,
                    (sum, s) => sum + (s.Width * s.PiecesPerStrip)
                );
                Length room = strip.Beside is { } at ? plan.Strips[at].End : plan.StripLength;
                used.ShouldBeLessThanOrEqualTo(room);
                strip.End.ShouldBe(room - used);
                foreach (PlannedSegment segment in strip.Segments)
                {
                    segment.Height.ShouldBeLessThanOrEqualTo(strip.Height);
                    string key = string.Join('/', segment.Cuts);
                    together[key] =
                        together.GetValueOrDefault(key) + (segment.PiecesPerStrip * strip.Count);
                    foreach (string id in segment.Cuts)
                    {
                        Cut cut = size.Cuts.Single(c => c.Id == id);
                        cut.Fabric.ShouldBe(plan.Fabric);
                        bool asIs = segment.Width == cut.Width && segment.Height == cut.Height;
                        bool turned = segment.Width == cut.Height && segment.Height == cut.Width;
                        (asIs || (turned && cut.Turnable) || cut.WholeStrip).ShouldBeTrue();
                    }
                }
            }
            for (int i = 0; i < plan.Strips.Length; i++)
            {
                Length beside = plan
                    .Strips.Where(strip => strip.Beside == i)
                    .Aggregate(Length.Zero, (sum, strip) => sum + (strip.Height * strip.Count));
                beside.ShouldBeLessThanOrEqualTo(plan.Strips[i].Height);
                (beside.Sign == 0 || plan.Strips[i] is { Count: 1, Beside: null }).ShouldBeTrue();
            }
            foreach ((string key, long count) in together)
            {
                string[] ids = key.Split('/');
                ids.Sum(id => left[id]).ShouldBe(count);
                foreach (string id in ids)
                {
                    left[id] = 0;
                }
            }
        }
        left.Values.Any(count => count != 0).ShouldBeFalse();
    }

    private static void YardageHoldsTheStrips(SizeMaking size)
    {
        House house = size.Quilt.House;
        foreach (FabricPlan plan in size.Fabrics)
        {
            plan.Yardage.Exactly.ShouldBe(
                (plan.StripsLength + house.Squaring) * (1 + house.Allowance)
            );
            plan.Yardage.ToBuy.ShouldBeGreaterThanOrEqualTo(plan.Yardage.Exactly);
            (plan.Yardage.ToBuy - plan.Yardage.Exactly).ShouldBeLessThan(house.YardStep);
            plan.LowerBound.ShouldBeLessThanOrEqualTo(plan.StripsLength);
        }
    }

    private static void FabricCoversItsPatches(SizeMaking size)
    {
        foreach (FabricPlan plan in size.Fabrics.Where(plan => plan.Use == FabricUse.Top))
        {
            Area seen = size
                .Quilt.Patches()
                .Where(patch => patch.Fabric == plan.Fabric)
                .Aggregate(Area.Zero, (sum, patch) => sum + patch.Shape.Area);
            (plan.StripsLength * plan.UsableWidth).ShouldBeGreaterThan(seen);
        }
    }

    private static void JoinedStripsReach(SizeMaking size)
    {
        foreach (JoinedStrips joined in size.Joined)
        {
            joined.Available.ShouldBeGreaterThanOrEqualTo(joined.Needed);
            (joined.Available - joined.StripLength + joined.JoinLoss).ShouldBeLessThan(
                joined.Needed
            );
            joined.Pieces.All(piece => piece.Length > joined.StripLength).ShouldBeTrue();
            size.Cuts.Single(cut => cut.Id == joined.Cut).Count.ShouldBe(joined.Strips);
        }
        // Every border strip is either cut by itself or from a joined strip.
        foreach (Border border in size.Quilt.Borders)
        {
            int single = (int)
                size
                    .Cuts.Where(c =>
                        c.Purpose is CutPurpose.Border b
                        && b.Number == border.Number
                        && b.Part != BorderPart.Joined
                    )
                    .Sum(c => c.Count);
            int joined = (int)
                size
                    .Joined.Where(j =>
                        j.Purpose is CutPurpose.Border b && b.Number == border.Number
                    )
                    .Sum(j => j.Pieces.Sum(p => p.Count));
            (single + joined).ShouldBe(border.Pieces.Length);
        }
    }

    // The makeup of a block names a class and a turn; drawn from these alone the block must look as designed.
    private static void BlocksLookAsDrawn(Making making, SizeMaking size)
    {
        foreach (BlockPlace place in size.Quilt.Places.DistinctBy(p => p.Block.Key))
        {
            if (place.Block.Block is not { } block)
            {
                continue;
            }
            BlockMakeup makeup = making.Blocks.Single(b => b.Coloring == place.Block.Key);
            makeup.Parts.Length.ShouldBe(block.Units.Length);
            for (int i = 0; i < makeup.Parts.Length; i++)
            {
                BlockUnit unit = block.Units[i];
                BlockPart part = makeup.Parts[i];
                ImmutableArray<string> fabrics;
                if (part.Unit is { } label)
                {
                    UnitBatch batch = size.Units.Single(u => u.Class.Label == label);
                    batch.Form.ShouldBe(unit.Drawn.Form);
                    fabrics = batch.Class.Fabrics;
                }
                else
                {
                    fabrics = [size.Cuts.Single(c => c.Id == part.Cut).Fabric];
                }
                UnitForm form = unit.Drawn.Form;
                var drawn = form
                    .Patches.Select(patch =>
                        (
                            Corners: Corners(
                                patch
                                    .Shape.Turned(part.Turn, form.Width, form.Height)
                                    .MoveBy(unit.Place.UpperLeft)
                            ),
                            Fabric: fabrics[patch.Role]
                        )
                    )
                    .ToHashSet();
                var designed = unit.Patches(place.Block.Coloring.Fabrics)
                    .Select(patch => (Corners: Corners(patch.Shape), patch.Fabric))
                    .ToHashSet();
                drawn.SetEquals(designed).ShouldBeTrue($"{place.Block.Key}.{part.Letter}");
            }
        }

        static string Corners(PatternPress.Quilting.Geometry.Polygon shape) =>
            string.Join(' ', shape.Corners.Select(c => c.ToString()).Order(StringComparer.Ordinal));
    }

    private static void RowsMeanTheSameInEverySize(Making making)
    {
        foreach (UnitShape shape in making.Shapes)
        {
            shape.Forms.Length.ShouldBe(making.Sizes.Length);
            foreach (UnitClass unit in shape.Classes)
            {
                for (int i = 0; i < making.Sizes.Length; i++)
                {
                    UnitBatch? batch = making
                        .Sizes[i]
                        .Units.SingleOrDefault(u => u.Class.Label == unit.Label);
                    if (batch is not null)
                    {
                        batch.Form.ShouldBe(shape.Forms[i]);
                        batch.Recipe.Technique.ShouldBe(shape.Technique.Keyword);
                    }
                }
            }
        }
        var purposes = new Dictionary<string, (CutPurpose, string)>();
        foreach (Cut cut in making.Sizes.SelectMany(size => size.Cuts))
        {
            purposes.TryAdd(cut.Id, (cut.Purpose, cut.Fabric));
            purposes[cut.Id].ShouldBe((cut.Purpose, cut.Fabric));
        }
    }

    private static void TablesAreComplete(Making making)
    {
        PrintedTables tables = Tabulator.Tabulate(making);
        var rows = tables.Cutting.SelectMany(t => t.Rows).ToDictionary(row => row.Id);
        for (int i = 0; i < making.Sizes.Length; i++)
        {
            SizeMaking size = making.Sizes[i];
            foreach (Cut cut in size.Cuts)
            {
                rows[cut.Id].BySize[i].ShouldBe(new CutCell(cut.Count, cut.Width, cut.Height));
            }
            // Border and sashing pieces come to as many as the layout has.
            tables
                .Sashing.Sum(row => row.BySize[i]?.Count ?? 0)
                .ShouldBe(size.Quilt.Sashes.Length);
            tables
                .Borders.Sum(row => row.BySize[i]?.Parts.Sum(part => part.Count) ?? 0)
                .ShouldBe(size.Quilt.Borders.Sum(border => border.Pieces.Length));
            foreach (UnitRow row in tables.Units.SelectMany(unit => unit.Rows))
            {
                foreach (UnitPiece piece in row.BySize[i]?.Pieces ?? [])
                {
                    rows[piece.Cut].ShouldNotBeNull();
                }
            }
        }
        PrintedFacts.Of(tables).Count().ShouldBeGreaterThan(50);
        TablesText.Of(tables).ShouldNotContain("?");
    }
}
