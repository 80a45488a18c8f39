using System.Collections.Immutable;
using PatternPress.Quilting.Cutting.Planning;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Cutting;

/// <summary>Plans a fabric that is bought in panels: the fewest of them.</summary>
internal static class PanelFabricPlanner
{
    public static FabricPlanning Plan(CuttingList list, PanelStock stock, SearchEffort effort)
    {
        Rational grid = FabricPlanner.GridOf(list.Cuts);
        long Units(Length length) => Math.Max(0, (length.Inches / grid).Floor());
        List<FabricPlanner.Kind> kinds = FabricPlanner.KindsOf(list, grid, 0);
        var problem = new PanelProblem(
            Units(stock.Width),
            Units(stock.Height),
            [
                .. kinds.Select(kind =>
                    kind.Cuts[0].WholeStrip
                        ? kind.Piece with
                        {
                            AlongStrip = true,
                            Turnable = !stock.Directional,
                        }
                        : kind.Piece
                ),
            ]
        );
        return PanelPlanner.Plan(problem, effort) switch
        {
            PanelResult.Planned planned => new FabricPlanning.Planned(
                Finish(planned.Plan, kinds, list, stock, grid)
            ),
            PanelResult.Refused refused => new FabricPlanning.Refused(
                Told(refused.Faults, kinds, list, stock)
            ),
            _ => throw new InvalidOperationException("A plan of panels without a result."),
        };
    }

    private static FabricPlan Finish(
        PanelPlan plan,
        List<FabricPlanner.Kind> kinds,
        CuttingList list,
        PanelStock stock,
        Rational grid
    )
    {
        Length Long(long units) => new(grid * units);
        var strips = ImmutableArray.CreateBuilder<PlannedStrip>();
        for (int i = 0; i < plan.Layouts.Length; i++)
        {
            PanelLayout layout = plan.Layouts[i];
            Length room = layout.Up ? stock.Height : stock.Width;
            foreach (Strip strip in layout.Strips)
            {
                var segments = ImmutableArray.CreateBuilder<PlannedSegment>(strip.Segments.Length);
                Length used = Length.Zero;
                foreach (StripSegment segment in strip.Segments)
                {
                    ImmutableArray<Cut> cuts = kinds[segment.PieceId].Cuts;
                    Length width = cuts[0].WholeStrip ? cuts[0].Width : Long(segment.Width);
                    used += width * segment.Count;
                    segments.Add(
                        new PlannedSegment(
                            [.. cuts.Select(cut => cut.Id)],
                            segment.Count,
                            width,
                            Long(segment.Height),
                            width != cuts[0].Width
                        )
                    );
                }
                strips.Add(
                    new PlannedStrip(
                        Long(strip.Height),
                        layout.Copies * strip.Copies,
                        segments.ToImmutable(),
                        room - used
                    )
                    {
                        Panel = new PanelShare(i, strip.Copies),
                    }
                );
            }
        }
        return Price(plan, strips.ToImmutable(), list, stock);
    }

    private static FabricPlan Price(
        PanelPlan plan,
        ImmutableArray<PlannedStrip> strips,
        CuttingList list,
        PanelStock stock
    )
    {
        House house = list.House;
        string Told(Length length) => HouseText.Of(length, house.Unit);
        var terms = ImmutableArray.CreateBuilder<DerivationTerm>();
        for (int i = 0; i < plan.Layouts.Length; i++)
        {
            PanelLayout layout = plan.Layouts[i];
            IEnumerable<string> each = strips
                .Where(strip => strip.Panel!.Layout == i)
                .Select(strip =>
                    $"{strip.Panel!.Strips} of {Told(strip.Height)}, each "
                    + string.Join(
                        " + ",
                        strip.Segments.Select(s => $"{s.PiecesPerStrip} {string.Join("/", s.Cuts)}")
                    )
                );
            terms.Add(
                new(
                    layout.Copies == 1 ? $"one {stock.Kind.One}" : $"{stock.Kind.Name} cut alike",
                    $"strips {(layout.Up ? "along" : "across")} {Told(stock.Width)} × {Told(stock.Height)}: "
                        + string.Join("; ", each),
                    new Quantity.Count(layout.Copies)
                )
            );
        }
        terms.Add(
            new(
                "together",
                plan.Proved
                    ? "proved: no plan takes fewer"
                    : $"proved: no plan takes fewer than {plan.LowerBound}",
                new Quantity.Count(plan.Panels)
            )
        );
        long toBuy = (plan.Panels * (1 + house.Allowance)).Ceiling();
        terms.Add(
            new(
                "to buy",
                house.Allowance.Sign > 0
                    ? $"{LengthText.Mixed(house.Allowance * 100)} % more for mistakes, up to a whole {stock.Kind.One}"
                    : "as many",
                new Quantity.Panels(toBuy, stock.Kind)
            )
        );
        return new FabricPlan(
            list.Fabric,
            list.Use,
            stock.BoughtWidth,
            stock.StripLength,
            PlanStyle.Thrifty,
            strips,
            Length.Zero,
            Yardage.None,
            Length.Zero,
            new Derivation(
                list.Use == FabricUse.Binding ? "binding" : $"fabric {list.Fabric}",
                terms.ToImmutable()
            )
        )
        {
            Panels = new PanelUse(
                stock,
                [.. plan.Layouts.Select(layout => new PlannedPanel(layout.Copies, layout.Up))],
                plan.LowerBound,
                toBuy
            ),
        };
    }

    private static ImmutableArray<PieceProblem> Told(
        ImmutableArray<CutFault> faults,
        List<FabricPlanner.Kind> kinds,
        CuttingList list,
        PanelStock stock
    )
    {
        var problems = ImmutableArray.CreateBuilder<PieceProblem>();
        foreach (CutFault fault in faults)
        {
            // A panel of no size in grid units: even the grid, which measures every piece, is larger.
            bool nothingFits = fault.Reason == CutFaultReason.StockNotPositive;
            IEnumerable<Cut> cuts =
                fault.PieceId is { } id ? kinds[id].Cuts
                : nothingFits ? list.Cuts
                : list.Cuts.Take(1);
            foreach (Cut cut in cuts)
            {
                if (nothingFits || fault.Reason == CutFaultReason.LargerThanStock)
                {
                    (Length needed, Length given) = Overhang(cut, stock);
                    problems.Add(
                        new(cut, PieceProblemKind.LargerThanPanel, needed, given, stock.BoughtWidth)
                        {
                            Panel = stock,
                        }
                    );
                }
                else
                {
                    problems.Add(
                        new(
                            cut,
                            PieceProblemKind.BeyondLimit,
                            cut.Width,
                            stock.Width,
                            stock.BoughtWidth
                        )
                    );
                }
            }
        }
        return problems.ToImmutable();
    }

    /// <summary>The side by which a piece is too large, laid so that it is so by least.</summary>
    private static (Length Needed, Length Given) Overhang(Cut cut, PanelStock stock)
    {
        (Length Needed, Length Given) upright = Worse(cut.Width, cut.Height);
        if (stock.Directional)
        {
            return upright;
        }
        (Length Needed, Length Given) turned = Worse(cut.Height, cut.Width);
        return turned.Needed - turned.Given < upright.Needed - upright.Given ? turned : upright;

        (Length, Length) Worse(Length width, Length height) =>
            width - stock.Width > height - stock.Height
                ? (width, stock.Width)
                : (height, stock.Height);
    }
}
