using System.Collections.Immutable;
using PatternPress.Quilting.Cutting.Planning;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Cutting;

/// <summary>
/// Plans a fabric on a grid of whole numbers: the largest length of which every cut size is a multiple. Nothing is
/// rounded, so the plan is as exact as the cut sizes.
/// </summary>
/// <param name="effort">How much work the search for the shortest plan may spend on one list. It is spent only where a
/// shorter plan could change what is bought.</param>
public sealed class FabricPlanner(SearchEffort effort) : ICuttingPlanner
{
    // A list is planned for the choice of how its borders are cut and again when all is known; two sizes may ask for the
    // same.
    private readonly PlannedLists _planned = new();

    public FabricPlanner()
        : this(SearchEffort.Usual) { }

    public FabricPlanning Plan(CuttingList list)
    {
        House house = list.House;
        ImmutableArray<PieceProblem> problems = CutSizeFaults(list);
        if (!problems.IsEmpty)
        {
            return new FabricPlanning.Refused(problems);
        }
        if (list.Panel is { } panel)
        {
            return PanelFabricPlanner.Plan(
                list,
                panel,
                new SearchEffort(Math.Min(SearchEffort.Brief.Steps, effort.Steps))
            );
        }
        var ground = Ground.Of(list);
        var search = new Search(ground, effort, _planned);
        return search.Faults is { IsEmpty: false } faults
            ? new FabricPlanning.Refused(Told(faults, ground.Kinds, list))
            : new FabricPlanning.Planned(Finish(Chosen(search, list.House), ground, list));
    }

    public bool TakesLess(CuttingList list, CuttingList than)
    {
        if (list.Panel is not null || than.Panel is not null)
        {
            return ICuttingPlanner.IsLess(Plan(list), Plan(than));
        }
        if (SearchOf(list) is not { } search)
        {
            return false;
        }
        if (SearchOf(than) is not { } other)
        {
            return true;
        }
        Yardage bought = other.Bought(Chosen(other, than.House));
        if (search.Least.ToBuy >= bought.ToBuy)
        {
            return false;
        }
        // Where strips may be mixed for a gain, how much the plain plan takes has its say too.
        Layout layout =
            list.House.Plan == PlanStyle.Thrifty
                ? Chosen(search, list.House)
                : Chosen(search, list.House, least => least.ToBuy >= bought.ToBuy);
        return search.Bought(layout).ToBuy < bought.ToBuy;
    }

    private Search? SearchOf(CuttingList list)
    {
        if (!CutSizeFaults(list).IsEmpty)
        {
            return null;
        }
        var search = new Search(Ground.Of(list), effort, _planned);
        return search.Faults.IsEmpty ? search : null;
    }

    /// <param name="enough">Where this is said of the least a plan may take, it is looked no further for a shorter one.</param>
    private static Layout Chosen(Search search, House house, Func<Yardage, bool>? enough = null)
    {
        // Strips of one piece each are easiest to follow: they are cut wherever mixing would not buy less.
        if (search.Apart(search.Least) is { } apart)
        {
            return apart;
        }
        Layout layout = search.Best(CutStyle.Plain, enough);
        layout = search.Apart(search.Bought(layout)) is { } easier
            ? easier with
            {
                LowerBound = layout.LowerBound,
            }
            : layout;
        if (
            house.Plan == PlanStyle.Thrifty
            && search.Bought(layout).ToBuy - search.Least.ToBuy >= house.ThriftyGain
        )
        {
            Layout mixed = search.Best(CutStyle.Thrifty, enough);
            if (search.Bought(layout).ToBuy - search.Bought(mixed).ToBuy >= house.ThriftyGain)
            {
                return mixed;
            }
        }
        return layout;
    }

    /// <summary>A list on its grid of whole numbers.</summary>
    private sealed record Ground(House House, Rational Grid, CutProblem Problem, List<Kind> Kinds)
    {
        public static Ground Of(CuttingList list)
        {
            Rational grid = GridOf(list.Cuts);
            // Pieces are multiples of the grid, so what is left of the width below one grid step is of no use anyway.
            long stock = Math.Max(0, (list.StripLength.Inches / grid).Floor());
            List<Kind> kinds = KindsOf(list, grid, stock);
            return new(
                list.House,
                grid,
                new CutProblem(stock, [.. kinds.Select(kind => kind.Piece)]),
                kinds
            );
        }

        public Yardage Yardage(long units) => YardageOf(new(Grid * units), House);
    }

    /// <summary>Strips of the fabric and of what is left beside long pieces.</summary>
    private sealed record Layout(CutStyle Style, ImmutableArray<LaidStrip> Strips, long LowerBound)
    {
        public long Total => Strips.Where(s => s.Beside is null).Sum(s => s.Strip.Total);
    }

    /// <param name="Room">Length of each strip, grid units.</param>
    /// <param name="Beside">Index of the strip of long pieces beside which it is cut.</param>
    private sealed record LaidStrip(Strip Strip, long Room, int? Beside);

    private sealed class Search(Ground ground, SearchEffort effort, PlannedLists planned)
    {
        /// <summary>More strips of long pieces are not looked at one by one.</summary>
        private const int MostSections = 6;

        private readonly CutProblem problem = ground.Problem;
        private long? _easyBound;
        private ImmutableArray<Strip>? _flat;
        private ImmutableArray<Strip>? _apart;

        public ImmutableArray<CutFault> Faults { get; } = CutLimits.Check(ground.Problem);

        private long EasyBound => _easyBound ??= problem.EasyBound;

        /// <summary>No plan of any style takes less.</summary>
        public Yardage Least => ground.Yardage(EasyBound);

        public Yardage Bought(Layout layout) => ground.Yardage(layout.Total);

        /// <summary>Strips of one kind of piece each; null where they would buy more than so much.</summary>
        public Layout? Apart(Yardage most) =>
            Apart(_flat ??= StripsApart.Flat(problem), most)
            ?? Apart(_apart ??= StripsApart.Least(problem), most);

        private Layout? Apart(ImmutableArray<Strip> strips, Yardage most) =>
            ground.Yardage(strips.Sum(strip => strip.Total)).ToBuy <= most.ToBuy
                ? new Layout(
                    CutStyle.Plain,
                    [.. strips.Select(strip => new LaidStrip(strip, problem.Width, null))],
                    EasyBound
                )
                : null;

        public Layout Best(CutStyle style, Func<Yardage, bool>? enough)
        {
            Layout? beside = BesideLongPieces(style, enough);
            if (beside is not null && LevelBound.Of(problem) > beside.Total)
            {
                return beside;
            }
            StripPlan whole = Plan(problem, style, 0, enough);
            long least = Math.Min(whole.LowerBound, beside?.LowerBound ?? long.MaxValue);
            return beside?.Total < whole.Total
                ? beside with
                {
                    LowerBound = least,
                }
                : new Layout(
                    style,
                    [.. whole.Strips.Select(strip => new LaidStrip(strip, problem.Width, null))],
                    least
                );
        }

        /// <summary>Pieces longer than the fabric is wide are cut first, side by side along the fabric; what is left beside
        /// them is cut into short strips before more of the fabric is.</summary>
        private Layout? BesideLongPieces(CutStyle style, Func<Yardage, bool>? enough)
        {
            ImmutableArray<CutPiece> longs =
            [
                .. problem.Pieces.Where(p => p.Count > 0 && problem.IsLong(p)),
            ];
            ImmutableArray<CutPiece> others = [.. problem.Pieces.Where(p => !problem.IsLong(p))];
            if (longs.IsEmpty || others.All(piece => piece.Count == 0))
            {
                return null;
            }
            StripPlan sections = Plan(problem with { Pieces = longs }, CutStyle.Thrifty, 0, null);
            if (sections.StripCount > MostSections)
            {
                return null;
            }
            Strip[] each =
            [
                .. sections.Strips.SelectMany(strip =>
                    Enumerable.Repeat(strip with { Copies = 1 }, (int)strip.Copies)
                ),
            ];
            StripPlan rest = Plan(
                new CutProblem(problem.Width, others)
                {
                    Remainders =
                    [
                        .. each.Select(strip => new Planning.Remainder(
                            problem.Width - strip.Used,
                            strip.Height
                        )),
                    ],
                },
                style,
                sections.Total,
                enough
            );
            var strips = each.Select(strip => new LaidStrip(strip, problem.Width, null))
                .Concat(
                    rest.Strips.Select(strip =>
                        strip.From is { } from
                            ? new LaidStrip(strip, problem.Width - each[from].Used, from)
                            : new LaidStrip(strip, problem.Width, null)
                    )
                );
            return new Layout(style, [.. strips], sections.LowerBound + rest.LowerBound);
        }

        /// <param name="besides">What else is cut from the fabric, grid units.</param>
        private StripPlan Plan(
            CutProblem part,
            CutStyle style,
            long besides,
            Func<Yardage, bool>? enough
        )
        {
            bool Settled(long least) => enough!(ground.Yardage(besides + least));
            Func<long, bool>? settled = enough is null ? null : Settled;
            var brief = new SearchEffort(Math.Min(SearchEffort.Brief.Steps, effort.Steps));
            StripPlan first = planned.Plan(part, style, brief, settled);
            return
                !first.Proved
                && effort.Steps > brief.Steps
                && ground.Yardage(first.LowerBound).ToBuy < ground.Yardage(first.Total).ToBuy
                && settled?.Invoke(first.LowerBound) != true
                ? planned.Plan(part, style, effort, settled)
                : first;
        }
    }

    private static Yardage YardageOf(Length strips, House house) =>
        Yardage.RoundUp(house.NeededFor(strips), house.YardStep, house.Thirds);

    // Cuts of one size are one kind of piece to the planner.
    internal sealed record Kind(CutPiece Piece, ImmutableArray<Cut> Cuts);

    private static ImmutableArray<PieceProblem> CutSizeFaults(CuttingList list)
    {
        var problems = ImmutableArray.CreateBuilder<PieceProblem>();
        foreach (Cut cut in list.Cuts)
        {
            Length smaller = Length.Min(cut.Width, cut.Height);
            if (smaller.Sign <= 0)
            {
                problems.Add(
                    new(cut, PieceProblemKind.NoSize, smaller, Length.Zero, list.UsableWidth)
                );
            }
        }
        return problems.ToImmutable();
    }

    internal static Rational GridOf(ImmutableArray<Cut> cuts)
    {
        Rational grid = Rational.Zero;
        foreach (Cut cut in cuts)
        {
            grid = grid.CommonMeasure(cut.Height.Inches.One);
            if (!cut.WholeStrip)
            {
                grid = grid.CommonMeasure(cut.Width.Inches.One);
            }
        }
        return grid.Sign > 0 ? grid : Rational.One;
    }

    /// <param name="stock">Length of a whole strip of fabric by the yard, grid units.</param>
    internal static List<Kind> KindsOf(CuttingList list, Rational grid, long stock)
    {
        var bySize = new Dictionary<(long, long, bool), List<Cut>>();
        var order = new List<(long Width, long Height, bool Turnable)>();
        foreach (Cut cut in list.Cuts)
        {
            long width =
                cut.WholeStrip && list.Panel is null ? stock
                : cut.WholeStrip ? (cut.Width.Inches / grid).Floor()
                : (cut.Width.Inches.One / grid).Ceiling();
            long height = (cut.Height.Inches.One / grid).Ceiling();
            bool turnable = cut.Turnable && !cut.WholeStrip && width != height;
            // A piece that may be turned is the same kind as its own quarter turn; the long side lies along the strip
            // unless it is longer than the fabric is wide.
            if (turnable && height > width)
            {
                (width, height) = (height, width);
            }
            var size = (width, height, turnable);
            if (!bySize.TryGetValue(size, out List<Cut>? alike))
            {
                bySize.Add(size, alike = []);
                order.Add(size);
            }
            alike.Add(cut);
        }
        // In an order of their own, so that the plan does not depend on the order of the list.
        order.Sort(
            (a, b) =>
                a.Height != b.Height ? b.Height.CompareTo(a.Height)
                : a.Width != b.Width ? b.Width.CompareTo(a.Width)
                : a.Turnable.CompareTo(b.Turnable)
        );
        var kinds = new List<Kind>(order.Count);
        foreach ((long Width, long Height, bool Turnable) size in order)
        {
            List<Cut> alike = bySize[size];
            long count = alike.Sum(cut => cut.Count);
            kinds.Add(
                new Kind(
                    new CutPiece(kinds.Count, size.Width, size.Height, count, size.Turnable),
                    [.. alike]
                )
            );
        }
        return kinds;
    }

    private static ImmutableArray<PieceProblem> Told(
        ImmutableArray<CutFault> faults,
        List<Kind> kinds,
        CuttingList list
    )
    {
        var problems = ImmutableArray.CreateBuilder<PieceProblem>();
        foreach (CutFault fault in faults)
        {
            // Stock of no width in grid units: even the grid, which measures every piece, is wider than the fabric.
            bool nothingFits = fault.Reason == CutFaultReason.StockNotPositive;
            IEnumerable<Cut> cuts =
                fault.PieceId is { } id ? kinds[id].Cuts
                : nothingFits ? list.Cuts
                : list.Cuts.Take(1);
            foreach (Cut cut in cuts)
            {
                Length narrow = cut.Turnable ? Length.Min(cut.Width, cut.Height) : cut.Width;
                problems.Add(
                    nothingFits || fault.Reason == CutFaultReason.LargerThanStock
                        ? new(
                            cut,
                            PieceProblemKind.WiderThanFabric,
                            narrow,
                            list.StripLength,
                            list.UsableWidth
                        )
                        : new(
                            cut,
                            PieceProblemKind.BeyondLimit,
                            narrow,
                            list.StripLength,
                            list.UsableWidth
                        )
                );
            }
        }
        return problems.ToImmutable();
    }

    private static FabricPlan Finish(Layout layout, Ground ground, CuttingList list)
    {
        Length Long(long units) => new(ground.Grid * units);
        var strips = ImmutableArray.CreateBuilder<PlannedStrip>(layout.Strips.Length);
        foreach ((LaidStrip laid, int? beside) in InCuttingOrder(layout))
        {
            Strip strip = laid.Strip;
            var segments = ImmutableArray.CreateBuilder<PlannedSegment>(strip.Segments.Length);
            foreach (StripSegment segment in strip.Segments)
            {
                ImmutableArray<Cut> cuts = ground.Kinds[segment.PieceId].Cuts;
                bool whole = cuts[0].WholeStrip;
                Length width = whole ? list.StripLength : Long(segment.Width);
                segments.Add(
                    new PlannedSegment(
                        [.. cuts.Select(cut => cut.Id)],
                        segment.Count,
                        width,
                        Long(segment.Height),
                        !whole && width != cuts[0].Width
                    )
                );
            }
            Length used = segments.Aggregate(
                Length.Zero,
                (sum, segment) => sum + (segment.Width * segment.PiecesPerStrip)
            );
            Length room = beside is { } at ? strips[at].End : list.StripLength;
            strips.Add(
                new PlannedStrip(
                    Long(strip.Height),
                    strip.Copies,
                    segments.ToImmutable(),
                    room - used
                )
                {
                    Beside = beside,
                }
            );
        }
        return Price(strips.ToImmutable(), layout.Style, Long(layout.LowerBound), list);
    }

    // Tallest strips first; of one height whole strips and long pieces before short ones. What is cut beside long pieces
    // follows them at once.
    private static List<(LaidStrip Strip, int? Beside)> InCuttingOrder(Layout layout)
    {
        int[] sorted = [.. Enumerable.Range(0, layout.Strips.Length)];
        Array.Sort(
            sorted,
            (a, b) =>
            {
                Strip first = layout.Strips[a].Strip,
                    second = layout.Strips[b].Strip;
                int order = second.Height.CompareTo(first.Height);
                order = order != 0 ? order : Longest(second).CompareTo(Longest(first));
                return order != 0 ? order : a.CompareTo(b);
            }
        );
        var ordered = new List<(LaidStrip, int?)>(sorted.Length);
        foreach (int index in sorted)
        {
            if (layout.Strips[index].Beside is not null)
            {
                continue;
            }
            int at = ordered.Count;
            ordered.Add((layout.Strips[index], null));
            foreach (int other in sorted)
            {
                if (layout.Strips[other].Beside == index)
                {
                    ordered.Add((layout.Strips[other], at));
                }
            }
        }
        return ordered;
    }

    private static long Longest(Strip strip) => strip.Segments.Max(segment => segment.Width);

    private static string Across(CuttingList list)
    {
        House house = list.House;
        string usable = HouseText.Of(list.UsableWidth, house.Unit);
        string shrunk =
            house.Shrinkage.Sign > 0
                ? $", shrunk by {LengthText.Mixed(house.Shrinkage * 100)} %"
                : "";
        string squared =
            house.EndSquaring.Sign > 0
                ? $", {HouseText.Of(house.EndSquaring, house.Unit)} for squaring the ends"
                : "";
        return list.StripLength == list.UsableWidth
            ? $"across {usable} of usable width"
            : $"across {usable} of usable width{shrunk}{squared}: {HouseText.Of(list.StripLength, house.Unit)} each";
    }

    private static FabricPlan Price(
        ImmutableArray<PlannedStrip> strips,
        CutStyle style,
        Length lowerBound,
        CuttingList list
    )
    {
        Length sum = Length.Zero;
        foreach (PlannedStrip strip in strips)
        {
            if (strip.Beside is null)
            {
                sum += strip.Height * strip.Count;
            }
        }
        Yardage yardage = YardageOf(sum, list.House);
        return new FabricPlan(
            list.Fabric,
            list.Use,
            list.UsableWidth,
            list.StripLength,
            style == CutStyle.Plain ? PlanStyle.Plain : PlanStyle.Thrifty,
            strips,
            sum.Sign > 0 ? list.House.Squaring : Length.Zero,
            yardage,
            lowerBound,
            new Derivation(
                list.Use == FabricUse.Binding ? "binding" : $"fabric {list.Fabric}",
                () => Terms(strips, sum, yardage, list)
            )
        );
    }

    private static ImmutableArray<DerivationTerm> Terms(
        ImmutableArray<PlannedStrip> strips,
        Length sum,
        Yardage yardage,
        CuttingList list
    )
    {
        House house = list.House;
        string Told(Length length) => HouseText.Of(length, house.Unit);
        var terms = ImmutableArray.CreateBuilder<DerivationTerm>();
        foreach (PlannedStrip strip in strips)
        {
            Length length = strip.Height * strip.Count;
            string pieces = string.Join(
                " + ",
                strip.Segments.Select(s => $"{s.PiecesPerStrip} {string.Join("/", s.Cuts)}")
            );
            terms.Add(
                new(
                    strip.Beside is null
                        ? $"strips of {Told(strip.Height)}"
                        : $"beside the long pieces, of {Told(strip.Height)}",
                    $"{strip.Count} × {Told(strip.Height)}, each {pieces}"
                        + (strip.End.Sign > 0 ? $", {Told(strip.End)} left at its end" : ""),
                    new Quantity.Measure(length)
                )
            );
        }
        terms.Add(new("strips together", Across(list), new Quantity.Measure(sum)));
        Length need = sum;
        if (sum.Sign > 0 && house.Squaring.Sign > 0)
        {
            need += house.Squaring;
            terms.Add(
                new(
                    "squaring",
                    "once, to straighten the cut edge",
                    new Quantity.Measure(house.Squaring)
                )
            );
        }
        if (house.Allowance.Sign > 0)
        {
            Length more = need * house.Allowance;
            need += more;
            terms.Add(
                new(
                    "allowance",
                    $"{LengthText.Mixed(house.Allowance * 100)} %",
                    new Quantity.Measure(more)
                )
            );
        }
        if (sum.Sign > 0 && house.Shrinkage.Sign > 0)
        {
            Length before = house.NeededFor(sum);
            terms.Add(
                new(
                    "shrinkage",
                    $"{LengthText.Mixed(house.Shrinkage * 100)} % of the length bought",
                    new Quantity.Measure(before - need)
                )
            );
            need = before;
        }
        terms.Add(new("needed", "along the fabric", new Quantity.Measure(need)));
        terms.Add(
            new(
                "to buy",
                $"{Told(need)}, up to the next {HouseText.Bought(new(house.YardStep, house.YardStep), house.Unit)}"
                    + (house.Thirds ? " or third" : ""),
                new Quantity.Bought(yardage)
            )
        );
        return terms.ToImmutable();
    }
}
