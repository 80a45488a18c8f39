using System.Collections.Immutable;
using PatternPress.Proofing;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Quilting.Techniques;
using PatternPress.Tests.Quilting;

namespace PatternPress.Tests.Proofing;

/// <summary>
/// Bugs put into every stage that makes the tables: house rules misread, recipes wrong, plans wrong, layouts wrong. The
/// tables are then wrong throughout and agree with themselves, which changing single numbers does not show.
/// </summary>
public sealed class FaultTests
{
    private static readonly Length Eighth = Length.FromInches(0, 1, 8);

    private static readonly string Star = File.ReadAllText(
        Path.Combine(Repository.Root, "tests", "cases", "tables", "star.quilt.yaml")
    );

    // So that a wrong recipe is not passed over for a thriftier one.
    private static readonly string StarByMethod =
        Star + "\nmethods: {half-square: half-square-two-at-a-time, geese: geese-four-at-a-time}\n";

    private static readonly string Rails = File.ReadAllText(
        Path.Combine(Repository.Root, "tests", "cases", "tables", "rails.quilt.yaml")
    );

    private static IEnumerable<TestCaseData> HouseFaults()
    {
        yield return Case("seam of 3/8 in", h => h with { Seam = Length.FromInches(0, 3, 8) });
        yield return Case("seam of 1/8 in", h => h with { Seam = Eighth });
        yield return Case("fabric 44 in wide", h => h with { UsableWidth = Length.FromInches(44) });
        yield return Case("fabric 36 in wide", h => h with { UsableWidth = Length.FromInches(36) });
        yield return Case("ruler of quarters", h => h with { Ruler = new(Eighth * 2) });
        yield return Case("ends not squared", h => h with { EndSquaring = Length.Zero });
        yield return Case("fabric that shrinks", h => h with { Shrinkage = new(3, 100) });
        yield return Case("squaring forgotten", h => h with { Squaring = Length.Zero });
        yield return Case("allowance of 10 %", h => h with { Allowance = new(1, 10) });
        yield return Case("shop cuts inches", h => h with { YardStep = Length.FromInches(1) });
        yield return Case("binding without corners", h => h with { BindingExtra = Length.Zero });
        yield return Case("binding too wide", h => h with { BindingWidth = Length.FromInches(3) });
        yield return Case(
            "backing without overhang",
            h => h with { BackingOverhang = Length.Zero }
        );
        yield return Case("backing seams forgotten", h => h with { BackingSeam = Length.Zero });
        yield return Case(
            "batting too small",
            h => h with { BattingOverhang = Length.FromInches(2) }
        );
        yield return Case("strips joined otherwise", h => h with { Joins = JoinStyle.Diagonal });
        yield return Case("pieces cut oversize", h => h with { Cutting = CuttingStyle.Oversize });

        static TestCaseData Case(string name, Func<House, House> fault) =>
            new TestCaseData(fault).SetArgDisplayNames(name);
    }

    [TestCaseSource(nameof(HouseFaults))]
    public void A_house_rule_misread_is_found(Func<House, House> fault)
    {
        Pattern pattern = Designs.Read(Star);
        ImmutableArray<Quilt> drawing = [.. Designs.Resolve(pattern)];
        ImmutableArray<Quilt> misread =
        [
            .. drawing.Select(quilt =>
                quilt with
                {
                    Size = quilt.Size with { House = fault(quilt.House) },
                }
            ),
        ];
        ShouldRefute(Tabulator.Tabulate(new Maker().Make(pattern, misread)), drawing);
    }

    private static IEnumerable<TestCaseData> RecipeFaults()
    {
        yield return Case(
            "half squares cut 3/4 in larger than finished",
            "half-square-two-at-a-time",
            r => Resized(r, "square", -Eighth)
        );
        yield return Case(
            "half squares cut 1 in larger and not trimmed",
            "half-square-two-at-a-time",
            r => Resized(r, "square", Eighth)
        );
        yield return Case(
            "three units from two squares",
            "half-square-two-at-a-time",
            r => r with { Yield = 3 }
        );
        yield return Case(
            "geese with three small squares",
            "geese-four-at-a-time",
            r => Counted(r, "small square", 3)
        );
        yield return Case(
            "geese with the small squares too small",
            "geese-four-at-a-time",
            r => Resized(r, "small square", -Eighth)
        );
        yield return Case(
            "geese with the fabrics exchanged",
            "geese-four-at-a-time",
            r => r with { Pieces = [.. r.Pieces.Select(p => p with { Role = 1 - p.Role })] }
        );
        yield return Case(
            "unfinished size without seams",
            "geese-four-at-a-time",
            r => r with { UnfinishedHeight = r.UnfinishedHeight - (Eighth * 4) }
        );
        yield return Case(
            "units said to need trimming",
            "half-square-two-at-a-time",
            r => r with { Trim = true }
        );

        static TestCaseData Case(string name, string technique, Func<Recipe, Recipe> fault) =>
            new TestCaseData(technique, fault).SetArgDisplayNames(name);
    }

    [TestCaseSource(nameof(RecipeFaults))]
    public void A_wrong_recipe_is_found(string technique, Func<Recipe, Recipe> fault)
    {
        Pattern pattern = Designs.Read(StarByMethod);
        ImmutableArray<Quilt> drawing = [.. Designs.Resolve(pattern)];
        ImmutableArray<Technique> techniques =
        [
            .. TechniqueCatalog.All.Select(t =>
                t.Keyword == technique ? new WrongTechnique(t, fault) : t
            ),
        ];
        var maker = new Maker(techniques, new FabricPlanner());
        ShouldRefute(Tabulator.Tabulate(maker.Make(pattern, drawing)), drawing);
    }

    private static IEnumerable<TestCaseData> PlanFaults()
    {
        yield return Case(
            "a strip fewer",
            plan => plan with { Strips = plan.Strips.SetItem(0, Fewer(plan.Strips[0])) }
        );
        yield return Case(
            "a strip lower than its pieces",
            plan =>
                plan with
                {
                    Strips = plan.Strips.SetItem(
                        0,
                        plan.Strips[0] with
                        {
                            Height = plan.Strips[0].Height - Eighth,
                        }
                    ),
                }
        );
        yield return Case(
            "a piece more than the strip holds",
            plan =>
                plan with
                {
                    Strips = plan.Strips.SetItem(
                        0,
                        plan.Strips[0] with
                        {
                            Segments = plan.Strips[0]
                                .Segments.SetItem(
                                    0,
                                    plan.Strips[0].Segments[0] with
                                    {
                                        PiecesPerStrip =
                                            plan.Strips[0].Segments[0].PiecesPerStrip + 40,
                                    }
                                ),
                        }
                    ),
                }
        );
        yield return Case(
            "yardage rounded down",
            plan =>
                plan with
                {
                    Yardage = plan.Yardage with
                    {
                        ToBuy = new Ruler(Length.FromYards(new Rational(1, 8))).Down(
                            plan.Yardage.Exactly - Eighth
                        ),
                    },
                }
        );
        yield return Case(
            "planned for wider fabric",
            plan => plan with { UsableWidth = plan.UsableWidth + Length.FromInches(4) }
        );
        yield return Case(
            "ends left as they are",
            plan => plan with { StripLength = plan.UsableWidth }
        );

        static TestCaseData Case(string name, Func<FabricPlan, FabricPlan> fault) =>
            new TestCaseData(fault).SetArgDisplayNames(name);

        static PlannedStrip Fewer(PlannedStrip strip) => strip with { Count = strip.Count - 1 };
    }

    [TestCaseSource(nameof(PlanFaults))]
    public void A_wrong_cutting_plan_is_found(Func<FabricPlan, FabricPlan> fault)
    {
        Pattern pattern = Designs.Read(Star);
        ImmutableArray<Quilt> drawing = [.. Designs.Resolve(pattern)];
        var maker = new Maker(TechniqueCatalog.All, new WrongPlanner(fault));
        ShouldRefute(Tabulator.Tabulate(maker.Make(pattern, drawing)), drawing);
    }

    // The tables are those of another quilt than the one drawn.
    [TestCase("star", "fill: {checkerboard: L1 L2}", "fill: {checkerboard: L2 L1}")]
    [TestCase("star", "width: 1 1/2, fabric: E", "width: 1 3/4, fabric: E")]
    [TestCase("star", "cornerstones: B", "cornerstones: C")]
    [TestCase("star", "around: yes", "around: no")]
    [TestCase("star", "width: 5, fabric: A", "width: 4 1/2, fabric: A")]
    [TestCase("star", "geese left", "geese right")]
    [TestCase("star", "half-square upper-right", "half-square lower-left")]
    [TestCase("rails", "corners: top-first", "corners: sides-first")]
    [TestCase("rails", "squares A1", "squares B")]
    [TestCase("rails", "R1/180", "R1")]
    [TestCase("rails", "a b a", "b a b")]
    [TestCase("rails", "of 1,", "of 1 1/2,")]
    [TestCase("rails", "plain A2", "plain B")]
    public void A_quilt_laid_out_otherwise_than_drawn_is_found(
        string name,
        string drawn,
        string made
    )
    {
        string yaml = name == "star" ? Star : Rails;
        yaml.ShouldContain(drawn);
        Pattern pattern = Designs.Read(yaml.Replace(drawn, made));
        ImmutableArray<Quilt> other = [.. Designs.Resolve(pattern)];
        PrintedTables tables = Tabulator.Tabulate(new Maker().Make(pattern, other));
        ShouldRefute(tables, [.. Designs.Resolve(Designs.Read(yaml))]);
    }

    // Found, in words that tell the size and the numbers.
    private static void ShouldRefute(PrintedTables tables, ImmutableArray<Quilt> drawing)
    {
        ProofReport report = Proof.Prove(tables, drawing);
        report.Mistakes.ShouldNotBeEmpty();
        Mistake first = report.Mistakes.First();
        TestContext.Out.WriteLine(first.Text);
        if (first.Kind != MistakeKind.Excess)
        {
            report.Holds.ShouldBeFalse();
        }
        string[] sizes = [.. tables.Sizes.Select(size => size.Key), "all sizes"];
        sizes.ShouldContain(size => first.Text.StartsWith(size + ",", StringComparison.Ordinal));
        first.Printed.ShouldNotBe(first.Expected);
    }

    private static Recipe Resized(Recipe recipe, string piece, Length by) =>
        recipe with
        {
            Pieces =
            [
                .. recipe.Pieces.Select(p =>
                    p.Name == piece ? p with { Width = p.Width + by, Height = p.Height + by } : p
                ),
            ],
        };

    private static Recipe Counted(Recipe recipe, string piece, int count) =>
        recipe with
        {
            Pieces = [.. recipe.Pieces.Select(p => p.Name == piece ? p with { Count = count } : p)],
        };

    private sealed class WrongTechnique(Technique right, Func<Recipe, Recipe> fault) : Technique
    {
        public override string Keyword => right.Keyword;

        public override string Kind => right.Kind;

        public override string Name => right.Name;

        public override Recipe Recipe(
            UnitForm form,
            ImmutableArray<string> fabrics,
            Length usableWidth,
            House house
        ) => fault(right.Recipe(form, fabrics, usableWidth, house));

        protected override ImmutableArray<RecipePiece> Pieces(
            UnitForm form,
            House house,
            Length usableWidth
        ) => Recipe(form, [.. Enumerable.Repeat("A", form.RoleCount)], usableWidth, house).Pieces;
    }

    private sealed class WrongPlanner(Func<FabricPlan, FabricPlan> fault) : ICuttingPlanner
    {
        private readonly FabricPlanner _right = new();

        public FabricPlanning Plan(CuttingList list) =>
            _right.Plan(list) is FabricPlanning.Planned planned
                ? new FabricPlanning.Planned(fault(planned.Plan))
                : throw new InvalidOperationException("The plan was refused.");
    }
}
