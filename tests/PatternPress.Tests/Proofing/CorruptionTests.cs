using System.Collections.Immutable;
using System.Text;
using PatternPress.Proofing;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;

namespace PatternPress.Tests.Proofing;

/// <summary>Changes printed tables one thing at a time: the proof must notice every change that matters.</summary>
public sealed class CorruptionTests
{
    /// <summary>Of each pattern so many at least, spread evenly over all there are.</summary>
    private const int Wanted = 700;

    private const int CaseWanted = 300;

    [TestCaseSource(typeof(Proofs), nameof(Proofs.Patterns))]
    public void No_corruption_of_a_pattern_is_missed(string name)
    {
        (PrintedTables tables, ImmutableArray<Quilt> drawing) = Proofs.OfPattern(name);
        Run(name, tables, drawing, Wanted);
    }

    [TestCaseSource(typeof(Proofs), nameof(Proofs.TableCases))]
    public void No_corruption_of_any_kind_of_table_is_missed(string name)
    {
        (PrintedTables tables, ImmutableArray<Quilt> drawing) = Proofs.OfCase(name);
        Run(name, tables, drawing, CaseWanted);
    }

    [Test]
    [Explicit("Every corruption of every pattern: minutes.")]
    [TestCaseSource(typeof(Proofs), nameof(Proofs.Patterns))]
    public void No_corruption_at_all_is_missed(string name)
    {
        (PrintedTables tables, ImmutableArray<Quilt> drawing) = Proofs.OfPattern(name);
        Run(name, tables, drawing, int.MaxValue);
    }

    private static void Run(
        string name,
        PrintedTables tables,
        ImmutableArray<Quilt> drawing,
        int wanted
    )
    {
        var prover = new Prover(drawing);
        // A plan may leave a strip taller than its pieces; that is known before anything is changed.
        var before = prover.Prove(tables).Mistakes.ToHashSet();
        before.ShouldAllBe(mistake => mistake.Kind == MistakeKind.Excess);
        TimeSpan start = Environment.CpuUsage.TotalTime;
        IReadOnlyList<Corruption> all = Corruptions.Of(tables);
        int count = Math.Min(wanted, all.Count),
            caught = 0,
            excess = 0,
            alike = 0;
        var missed = new StringBuilder();
        for (int i = 0; i < count; i++)
        {
            Corruption corruption = all[(int)((long)i * all.Count / count)];
            PrintedTables corrupted = corruption.Tables();
            Mistake? mistake = prover.FirstMistake(corrupted);
            if (mistake is not null && before.Contains(mistake))
            {
                mistake = prover.Prove(corrupted).Mistakes.FirstOrDefault(m => !before.Contains(m));
            }
            if (mistake is null)
            {
                if (corruption.Kind == CorruptionKind.Turn && LooksTheSame(tables, corrupted))
                {
                    alike++;
                    continue;
                }
                missed.Append($"{corruption.Place}: {corruption.Change}\n");
            }
            else if (mistake.Kind == MistakeKind.Excess)
            {
                excess++;
            }
            else
            {
                caught++;
            }
        }
        double each = (Environment.CpuUsage.TotalTime - start).TotalMilliseconds / count;
        TestContext.Out.WriteLine(
            $"{name}: {count} of {all.Count} corruptions, {caught} caught, {excess} harmless (excess, flagged), "
                + $"{alike} harmless (looks the same turned); {each:0.0} ms each"
        );
        missed.ToString().ShouldBe("");
    }

    // Whether all parts of all blocks show the same patches: a four-patch turned over is the same four-patch.
    private static bool LooksTheSame(PrintedTables a, PrintedTables b)
    {
        foreach ((BlockRow one, BlockRow other) in a.Blocks.Zip(b.Blocks))
        {
            foreach (
                (
                    PatternPress.Quilting.Cutting.BlockPart first,
                    PatternPress.Quilting.Cutting.BlockPart second
                ) in one.Parts.Zip(other.Parts)
            )
            {
                if (first.Turn == second.Turn)
                {
                    continue;
                }
                UnitTable? unit = a.Units.FirstOrDefault(table =>
                    table.Rows.Any(row => row.Label == first.Unit)
                );
                if (
                    unit is null
                    || Look(unit, first.Unit!, first.Turn) != Look(unit, first.Unit!, second.Turn)
                )
                {
                    return false;
                }
            }
        }
        return true;
    }

    private static string Look(UnitTable unit, string label, Turn turn)
    {
        ImmutableArray<string> fabrics = unit.Rows.First(row => row.Label == label).Fabrics;
        return string.Join(
            "\n",
            unit.Picture.Patches.Select(patch =>
                    fabrics[patch.Role]
                    + string.Join(
                        " ",
                        patch
                            .Shape.Turned(turn, unit.Picture.Width, unit.Picture.Height)
                            .Corners.Select(corner => corner.ToString())
                            .Order(StringComparer.Ordinal)
                    )
                )
                .Order(StringComparer.Ordinal)
        );
    }
}
