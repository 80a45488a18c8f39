using System.Collections.Immutable;
using PatternPress.Quilting.Finishing;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;
using PatternPress.Source;

namespace PatternPress.Quilting.Cutting;

/// <summary>
/// Works out how a pattern is made in all its sizes at once: sorts the blocks' units into classes, chooses how they
/// are sewn, gathers everything that is cut, plans each fabric, then binding, backing and batting.
/// </summary>
/// <param name="techniques">Every way of making a unit, in order of preference.</param>
/// <param name="planner">Plans the strips of a fabric.</param>
public sealed class Maker(ImmutableArray<Technique> techniques, ICuttingPlanner planner)
{
    public Maker()
        : this(TechniqueCatalog.All, new FabricPlanner()) { }

    /// <param name="quilts">The pattern's sizes, resolved, in the order they are printed.</param>
    public Making Make(Pattern pattern, ImmutableArray<Quilt> quilts) =>
        new Run(pattern, quilts, techniques, planner).Make();

    private sealed class Run(
        Pattern pattern,
        ImmutableArray<Quilt> quilts,
        ImmutableArray<Technique> techniques,
        ICuttingPlanner planner
    )
    {
        private readonly List<MakingProblem> _problems = [];
        private readonly PartSorting _sorting = PartSorting.Sort(pattern, quilts);
        private readonly CutDrafts _drafts = new(pattern, quilts);
        private readonly List<UnitShape> _shapes = [];
        private readonly Dictionary<PartGroup, string> _labels = [];
        private readonly Dictionary<PartGroup, CutDraft> _patches = [];
        private readonly Dictionary<SortedBlock, CutDraft> _plainBlocks = [];

        public Making Make()
        {
            var units = new List<UnitBatch>[quilts.Length];
            var joined = new List<JoinedDraft>[quilts.Length];
            for (int i = 0; i < quilts.Length; i++)
            {
                (units[i], joined[i]) = ([], []);
            }
            GatherUnits(units);
            GatherPatches();
            GatherPlainBlocks();
            for (int i = 0; i < quilts.Length; i++)
            {
                joined[i].AddRange(SashingCuts.Gather(quilts[i], i, _drafts));
                SettingTriangleCuts.Gather(quilts[i], i, _drafts);
                PatchCuts.Gather(quilts[i], i, _drafts);
                GatherBinding(i);
            }
            // Planning takes most of the time, and sizes are planned apart: the last one, which mostly is the largest, first.
            HashSet<string>[] lengthwise = Aside.ForEach(
                quilts.Length,
                i => BordersInOneLength(quilts.Length - 1 - i)
            );
            Array.Reverse(lengthwise);
            for (int i = 0; i < quilts.Length; i++)
            {
                joined[i].AddRange(BorderCuts.Gather(quilts[i], i, _drafts, lengthwise[i]));
            }
            _drafts.Number();
            (SizeMaking Size, List<MakingProblem> Problems)[] sizes = Aside.ForEach(
                quilts.Length,
                i => SizeOf(i, units[i], joined[i])
            );
            foreach ((_, List<MakingProblem> problems) in sizes)
            {
                _problems.AddRange(problems);
            }
            return new Making(
                pattern,
                [.. _shapes],
                [.. _sorting.Blocks.Select(MakeupOf)],
                [.. sizes.Select(size => size.Size)],
                [.. _problems]
            );
        }

        private void GatherUnits(List<UnitBatch>[] units)
        {
            var choice = new TechniqueChoice(techniques, quilts, _drafts);
            int number = 0;
            foreach (ShapeDraft draft in Shapes())
            {
                number++;
                if (choice.Choose(draft, _problems) is not { } technique)
                {
                    continue;
                }
                var classes = ImmutableArray.CreateBuilder<UnitClass>(draft.Parts.Count);
                for (int i = 0; i < draft.Parts.Count; i++)
                {
                    PartGroup part = draft.Parts[i];
                    string label = draft.Parts.Count == 1 ? $"{number}" : $"{number}{Letter(i)}";
                    _labels.Add(part, label);
                    classes.Add(new UnitClass(label, part.Fabrics, [.. part.Uses]));
                }
                var shape = new UnitShape(
                    number,
                    [.. draft.Forms],
                    technique,
                    classes.MoveToImmutable()
                );
                _shapes.Add(shape);
                for (int i = 0; i < draft.Parts.Count; i++)
                {
                    foreach (int size in draft.Sizes)
                    {
                        GatherBatch(shape, i, draft.Parts[i], size, choice, units[size]);
                    }
                }
            }
        }

        private List<ShapeDraft> Shapes()
        {
            var shapes = new List<ShapeDraft>();
            foreach (PartGroup part in _sorting.Groups)
            {
                if (!part.Plain && !shapes.Exists(shape => shape.TryAdd(part)))
                {
                    shapes.Add(new ShapeDraft(part));
                }
            }
            return shapes;
        }

        private void GatherBatch(
            UnitShape shape,
            int index,
            PartGroup part,
            int size,
            TechniqueChoice choice,
            List<UnitBatch> units
        )
        {
            if (part.Forms[size] is not { } form)
            {
                return;
            }
            UnitClass unit = shape.Classes[index];
            Recipe recipe = choice.Recipe(shape.Technique, part, size);
            long needed = part.Needed[size];
            units.Add(new UnitBatch(shape, unit, form, recipe, needed, recipe.BatchesFor(needed)));
            Ruler ruler = quilts[size].House.Ruler;
            foreach (RecipePiece piece in recipe.PiecesFor(needed))
            {
                string fabric = part.Fabrics[piece.Role];
                CutPurpose purpose = UnitPieces.PurposeOf(unit, recipe, piece);
                if (piece.WholeStrip)
                {
                    _drafts.AddWholeStrips(
                        fabric,
                        FabricUse.Top,
                        purpose,
                        size,
                        ruler.Up(piece.Height),
                        piece.Exactly.Height,
                        piece.Count,
                        piece.Cut
                    );
                    continue;
                }
                var cell = new CutDraftCell(
                    ruler.Up(piece.Width),
                    ruler.Up(piece.Height),
                    piece.Exactly,
                    piece.Count
                );
                _drafts.Add(fabric, FabricUse.Top, purpose, size, cell, piece.Cut);
            }
        }

        private void GatherPatches()
        {
            int number = 0;
            foreach (PartGroup part in _sorting.Groups.Where(part => part.Plain))
            {
                var purpose = new CutPurpose.BlockPatch(++number);
                for (int size = 0; size < quilts.Length; size++)
                {
                    if (part.Cuts[size] is { } cut)
                    {
                        _patches[part] = _drafts.Add(
                            part.Fabrics[0],
                            FabricUse.Top,
                            purpose,
                            size,
                            _drafts.Sewn(size, cut.Width, cut.Height, part.Needed[size])
                        );
                    }
                }
            }
        }

        private void GatherPlainBlocks()
        {
            foreach (SortedBlock block in _sorting.Blocks.Where(b => b.Coloring.IsPlain))
            {
                string fabric = block.Coloring.Fabrics[Coloring.PlainPart];
                int number = 1;
                while (!Fits(block, fabric, number))
                {
                    number++;
                }
                for (int size = 0; size < quilts.Length; size++)
                {
                    if (block.BySize[size] is { } sized)
                    {
                        _plainBlocks[block] = _drafts.Add(
                            fabric,
                            FabricUse.Top,
                            new CutPurpose.PlainBlock(number),
                            size,
                            _drafts.Sewn(size, sized.Width, sized.Height, block.Counts[size])
                        );
                    }
                }
            }
        }

        // Whether the row of that number holds no plain block of another size.
        private bool Fits(SortedBlock block, string fabric, int number)
        {
            CutDraft? row = _drafts.Find(fabric, new CutPurpose.PlainBlock(number));
            for (int size = 0; size < quilts.Length; size++)
            {
                if (
                    row?.BySize[size] is { } cell
                    && block.BySize[size] is { } sized
                    && cell.Exactly
                        != (
                            quilts[size].House.Unfinished(sized.Width),
                            quilts[size].House.Unfinished(sized.Height)
                        )
                )
                {
                    return false;
                }
            }
            return true;
        }

        private void GatherBinding(int size)
        {
            Quilt quilt = quilts[size];
            if (quilt.Size.Quilt.Binding is not { } design)
            {
                return;
            }
            Length usable = _drafts.StripLength(design.Fabric.Value, size);
            if (BindingPlanner.Plan(quilt, "", usable) is { } plan)
            {
                if (plan.Square is { } square)
                {
                    _drafts.Add(
                        plan.Fabric,
                        BindingUse(size),
                        new CutPurpose.BiasSquare(),
                        size,
                        new CutDraftCell(square, square, (square, square), plan.Strips)
                    );
                    return;
                }
                _drafts.AddWholeStrips(
                    plan.Fabric,
                    BindingUse(size),
                    new CutPurpose.Binding(),
                    size,
                    plan.StripWidth,
                    plan.StripWidth,
                    plan.Strips
                );
                return;
            }
            _problems.Add(
                new MakingProblem.NoBinding(
                    design.Fabric.Value,
                    design.Width ?? quilt.House.BindingWidth,
                    usable,
                    design.Span,
                    [quilt.Size.Key]
                )
            );
        }

        /// <summary>Fabrics whose borders are cut along the fabric: as the house says, or where that takes less. Everything
        /// else that is cut must have been gathered.</summary>
        private HashSet<string> BordersInOneLength(int size)
        {
            Quilt quilt = quilts[size];
            var fabrics = new HashSet<string>();
            if (quilt.House.LongBorders == LongBorders.Joined)
            {
                return fabrics;
            }
            var joined = new CutDrafts(pattern, quilts);
            foreach (
                string fabric in BorderCuts
                    .Gather(quilt, size, joined, fabrics)
                    .ToList()
                    .Select(join => join.Draft.Fabric)
                    .Distinct()
            )
            {
                // No panel is long enough.
                if (_drafts.Panel(fabric, size) is not null)
                {
                    continue;
                }
                if (quilt.House.LongBorders == LongBorders.InOneLength)
                {
                    fabrics.Add(fabric);
                    continue;
                }
                var along = new CutDrafts(pattern, quilts);
                _ = BorderCuts.Gather(quilt, size, along, new HashSet<string> { fabric }).Count();
                if (planner.TakesLess(ListWith(along), than: ListWith(joined)))
                {
                    fabrics.Add(fabric);
                }

                CuttingList ListWith(CutDrafts borders) =>
                    new(
                        fabric,
                        FabricUse.Top,
                        _drafts.UsableWidth(fabric, size),
                        quilt.House,
                        [
                            .. _drafts
                                .All.Concat(borders.All)
                                .SelectWhere(
                                    draft =>
                                        draft.Fabric == fabric
                                        && draft.Use == FabricUse.Top
                                        && draft.BySize[size] is { Count: > 0 },
                                    draft => draft.CutOf(size)!
                                ),
                        ]
                    );
            }
            return fabrics;
        }

        private FabricUse BindingUse(int size) =>
            quilts[size].House.BindingApart ? FabricUse.Binding : FabricUse.Top;

        private (SizeMaking Size, List<MakingProblem> Problems) SizeOf(
            int size,
            List<UnitBatch> units,
            List<JoinedDraft> joined
        )
        {
            Quilt quilt = quilts[size];
            var problems = new List<MakingProblem>();
            var orders = pattern
                .Fabrics.Select((fabric, order) => (fabric.Key, order))
                .ToDictionary(f => f.Key, f => f.order);
            // Within a fabric by number, not in the order they were gathered.
            List<CutDraft> drafts =
            [
                .. _drafts.All.Where(draft => draft.BySize[size] is { Count: > 0 }),
            ];
            drafts.Sort(
                (a, b) =>
                {
                    int order = (int)a.Use - (int)b.Use;
                    order = order != 0 ? order : OrderOf(a.Fabric).CompareTo(OrderOf(b.Fabric));
                    order = order != 0 ? order : string.CompareOrdinal(a.Fabric, b.Fabric);
                    return order != 0 ? order : a.Number.CompareTo(b.Number);
                }
            );
            var plans = ImmutableArray.CreateBuilder<FabricPlan>();
            var substitutes = ImmutableArray.CreateBuilder<FabricPlan>();
            var broken = ImmutableArray.CreateBuilder<PieceProblem>();
            foreach (var fabric in drafts.GroupBy(draft => (draft.Fabric, draft.Use)))
            {
                var list = new CuttingList(
                    fabric.Key.Fabric,
                    fabric.Key.Use,
                    _drafts.UsableWidth(fabric.Key.Fabric, size),
                    quilt.House,
                    [.. fabric.Select(draft => draft.CutOf(size)!)]
                )
                {
                    Panel = _drafts.Panel(fabric.Key.Fabric, size),
                };
                if (
                    fabric.Key.Use == FabricUse.Top
                    && pattern.Suits is { } promise
                    && pattern.Fabric(fabric.Key.Fabric) is { } known
                    && promise.Includes(known)
                )
                {
                    Promised(
                        list with
                        {
                            Panel = PanelStock.Of(
                                promise.Panel,
                                list.UsableWidth,
                                known.Directional,
                                quilt.House
                            ),
                        },
                        substitutes,
                        broken
                    );
                }
                switch (planner.Plan(list))
                {
                    case FabricPlanning.Planned planned:
                        plans.Add(planned.Plan);
                        break;
                    case FabricPlanning.Refused refused:
                        problems.AddRange(
                            refused.Problems.Select(p => new MakingProblem.PieceDoesNotFit(
                                p,
                                [quilt.Size.Key]
                            ))
                        );
                        break;
                }
            }
            var made = new SizeMaking(
                quilt,
                [.. units],
                [.. drafts.Select(draft => draft.CutOf(size)!)],
                [.. joined.Select(Known)],
                plans.ToImmutable(),
                BindingOf(size),
                BackingOf(size, problems),
                quilt.Size.Quilt.Batting ? BattingPlanner.Plan(quilt) : null
            )
            {
                Substitutes = substitutes.ToImmutable(),
                SubstituteProblems = broken.ToImmutable(),
            };
            return (made, problems);

            int OrderOf(string fabric) => orders.GetValueOrDefault(fabric, int.MaxValue);
        }

        private void Promised(
            CuttingList list,
            ImmutableArray<FabricPlan>.Builder plans,
            ImmutableArray<PieceProblem>.Builder problems
        )
        {
            switch (planner.Plan(list))
            {
                case FabricPlanning.Planned planned:
                    plans.Add(planned.Plan);
                    break;
                case FabricPlanning.Refused refused:
                    problems.AddRange(refused.Problems);
                    break;
            }
        }

        private static JoinedStrips Known(JoinedDraft joined) =>
            new(
                joined.Draft.Id,
                joined.Draft.Purpose,
                joined.Draft.Fabric,
                joined.Width,
                joined.StripLength,
                joined.Strips,
                joined.Joins,
                joined.Loss,
                joined.Pieces
            );

        private BindingPlan? BindingOf(int size)
        {
            if (quilts[size].Size.Quilt.Binding is not { } design)
            {
                return null;
            }
            string fabric = design.Fabric.Value;
            CutPurpose purpose = design.Bias
                ? new CutPurpose.BiasSquare()
                : new CutPurpose.Binding();
            CutDraft? draft = _drafts.Find(fabric, purpose, BindingUse(size));
            return BindingPlanner.Plan(
                quilts[size],
                draft?.Id ?? "",
                _drafts.StripLength(fabric, size)
            );
        }

        private BackingPlan? BackingOf(int size, List<MakingProblem> problems)
        {
            Quilt quilt = quilts[size];
            string? fabric = quilt.Size.Quilt.Backing?.Value;
            // A width named for this quilt's backing goes before the fabric's own, and that before the house's.
            Length width = quilt.House.BackingWidth;
            if (
                width == pattern.House.BackingWidth
                && fabric is not null
                && pattern.Fabric(fabric)?.UsableWidth is { } own
            )
            {
                width = own;
            }
            BackingPlan? plan = BackingPlanner.Plan(quilt, fabric, width);
            if (plan is null)
            {
                problems.Add(
                    new MakingProblem.NoBacking(
                        width,
                        quilt.House.BackingSeam * 2,
                        [quilt.Size.Key]
                    )
                );
            }
            return plan;
        }

        private BlockMakeup MakeupOf(SortedBlock block)
        {
            if (block.Coloring.IsPlain)
            {
                var piece = new BlockPart("", 0, 0, 1, 1, Turn.None, null, _plainBlocks[block].Id);
                return new BlockMakeup(block.Coloring.Key, block.Number, null, [piece]);
            }
            var parts = ImmutableArray.CreateBuilder<BlockPart>(block.Parts.Count);
            foreach ((BlockUnit unit, PartGroup first, Turn settled) in block.Parts)
            {
                PartGroup part = _sorting.GroupOf(first);
                UnitRegion region = unit.Region;
                parts.Add(
                    new BlockPart(
                        region.Design.Letter,
                        region.Column,
                        region.Row,
                        region.Columns,
                        region.Rows,
                        settled + unit.Drawn.Turn,
                        _labels.GetValueOrDefault(part),
                        _patches.GetValueOrDefault(part)?.Id
                    )
                );
            }
            return new BlockMakeup(
                block.Coloring.Key,
                block.Number,
                block.Coloring.Block,
                parts.MoveToImmutable()
            );
        }

        // a to z, then aa and so on.
        private static string Letter(int index) =>
            index < 26
                ? $"{(char)('a' + index)}"
                : Letter((index / 26) - 1) + (char)('a' + (index % 26));
    }
}
