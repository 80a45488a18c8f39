using System.Diagnostics;
using PatternPress.Quilting.Compiling;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Reading;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Techniques;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;

namespace PatternPress.Benchmarks.Cutting;

/// <summary>What every fabric of every size of the repository's patterns takes: counted strip by strip the way it is done
/// by hand (each piece from strips of its own), in the plain style, and mixed freely with long borders either way; and how long the planning takes.
/// </summary>
internal static class YardageBenchmark
{
    private const int Repeats = 5;

    /// <returns>How many plans are not proved to be the shortest, or are longer than those made by hand.</returns>
    public static int Run(string folder)
    {
        var faults = 0;
        var times = new List<double>();
        Length byHand = Length.Zero,
            plain = Length.Zero,
            best = Length.Zero;
        Console.WriteLine(
            $"{"pattern", -16} {"size", -8} {"fabric", -10} {"by hand", 10} {"plain", 10} {"free mix", 10}   length by hand, plain, free mix; bound; ms"
        );
        foreach (var file in Directory.GetFiles(folder, "*.quilt.yaml").Order())
        {
            var id = Path.GetFileName(file).Replace(".quilt.yaml", "");
            foreach (var (size, joined, list) in Lists(id, File.ReadAllText(file)))
            {
                var hand = ByHand(joined);
                var (simple, _) = Planned(joined, PlanStyle.Plain);
                var (mixed, time) = Planned(list, PlanStyle.Thrifty);
                times.Add(time);
                if (mixed.Panels is { } panels)
                {
                    faults += panels.Count > panels.LowerBound ? 1 : 0;
                    Console.WriteLine(
                        $"{id, -16} {size, -8} {list.Fabric, -10} {panels.Stock.Kind.Told(panels.Count)}, at least {panels.LowerBound}; {time:F2}"
                    );
                    continue;
                }
                byHand += hand.ToBuy;
                plain += simple.Yardage.ToBuy;
                best += mixed.Yardage.ToBuy;
                // Strips of one kind of piece each may be longer together where that buys the same.
                var short_ =
                    simple.Yardage.ToBuy > BoughtFor(simple.LowerBound, list.House)
                    || mixed.Yardage.ToBuy > BoughtFor(mixed.LowerBound, list.House);
                var longer =
                    simple.Yardage.ToBuy > hand.ToBuy || mixed.Yardage.ToBuy > simple.Yardage.ToBuy;
                faults += short_ || longer ? 1 : 0;
                Console.WriteLine(
                    $"{id, -16} {size, -8} {list.Fabric + (list.Use == FabricUse.Binding ? " binding" : ""), -10} {Yards(hand), 10} {Yards(simple.Yardage), 10} {Yards(mixed.Yardage), 10}   {hand.Exactly}, {simple.Yardage.Exactly}, {mixed.Yardage.Exactly}; {mixed.LowerBound}; {time:F2}{(short_ ? " not proved" : "")}{(longer ? " longer" : "")}"
                );
            }
        }
        times.Sort();
        Console.WriteLine(
            $"{times.Count} plans: by hand {Sum(byHand)}, plain {Sum(plain)}, free mix {Sum(best)}; ms for both styles: median {times[times.Count / 2]:F2}, most {times[^1]:F2}"
        );
        return faults;

        static Length BoughtFor(Length strips, House house) =>
            Yardage.RoundUp(house.NeededFor(strips), house.YardStep, house.Thirds).ToBuy;

        static string Sum(Length length) => $"{length.Inches.ToDouble() / 36:F2} yd";

        static string Yards(Yardage yardage) => LengthText.Mixed(yardage.Yards) + " yd";
    }

    private static (FabricPlan Plan, double Milliseconds) Planned(CuttingList list, PlanStyle style)
    {
        var asked = list with
        {
            House = list.House with { Plan = style, ThriftyGain = Length.Zero },
        };
        var times = new List<double>();
        FabricPlan? plan = null;
        for (var i = 0; i < Repeats; i++)
        {
            var watch = Stopwatch.StartNew();
            plan = ((FabricPlanning.Planned)new FabricPlanner().Plan(asked)).Plan;
            times.Add(watch.Elapsed.TotalMilliseconds);
        }
        times.Sort();
        return (plan!, times[Repeats / 2]);
    }

    /// <summary>As yardage is estimated without a plan: each kind of piece across the width, its longer side along the
    /// strip where that fits, nothing taken from the end of another strip.</summary>
    private static Yardage ByHand(CuttingList list)
    {
        var length = Length.Zero;
        foreach (var cut in list.Cuts)
        {
            var (along, across) = (cut.Width, cut.Height);
            if (cut.Turnable && (along < across || along > list.StripLength))
                (along, across) = (across, along);
            if (cut.Turnable && along > list.StripLength)
                (along, across) = (across, along);
            var each = cut.WholeStrip ? 1 : list.StripLength.CountOf(along);
            length += across * ((cut.Count + each - 1) / each);
        }
        return Yardage.RoundUp(
            list.House.NeededFor(length),
            list.House.YardStep,
            list.House.Thirds
        );
    }

    /// <summary>What each size cuts from each fabric: borders joined across the fabric as by hand, and as planned.</summary>
    private static IEnumerable<(string Size, CuttingList Joined, CuttingList Least)> Lists(
        string id,
        string text
    )
    {
        var reading = new DiagnosticList();
        var pattern = PatternReader.Read(id, SyntaxTree.Read(id, text), null, reading)!;
        var findings = new FindingCollector(pattern.Sizes.Select(size => size.Key));
        var blocks = QuiltResolver.ResolveBlocks(pattern, findings);
        Quilt[] quilts =
        [
            .. pattern
                .Sizes.Select(size => QuiltResolver.Resolve(pattern, size, blocks, findings))
                .OfType<Quilt>(),
        ];
        var joined = Planned(LongBorders.Joined);
        var least = Planned(LongBorders.LeastFabric);
        return joined.Zip(least, (a, b) => (a.Size, a.List, b.List));

        List<(string Size, CuttingList List)> Planned(LongBorders borders)
        {
            var noted = new Noting();
            var making = new Maker(TechniqueCatalog.All, noted).Make(
                pattern,
                [
                    .. quilts.Select(quilt =>
                        quilt with
                        {
                            Size = quilt.Size with
                            {
                                House = quilt.House with { LongBorders = borders },
                            },
                        }
                    ),
                ]
            );
            return
            [
                .. making.Sizes.SelectMany(size =>
                    size.Fabrics.Select(plan => (size.Key, noted.ListOf(plan)))
                ),
            ];
        }
    }

    /// <summary>Remembers which list each plan is for; some are made only to be compared.</summary>
    private sealed class Noting : ICuttingPlanner
    {
        private readonly FabricPlanner planner = new();
        private readonly List<(FabricPlan Plan, CuttingList List)> noted = [];

        public CuttingList ListOf(FabricPlan plan) =>
            noted.First(known => ReferenceEquals(known.Plan, plan)).List;

        public FabricPlanning Plan(CuttingList list)
        {
            var planning = planner.Plan(list);
            if (planning is FabricPlanning.Planned planned)
                lock (noted)
                    noted.Add((planned.Plan, list));
            return planning;
        }
    }
}
