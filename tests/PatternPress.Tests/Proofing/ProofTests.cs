using System.Collections.Immutable;
using CsCheck;
using PatternPress.Proofing;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Tests.Quilting.Cutting;

namespace PatternPress.Tests.Proofing;

public sealed class ProofTests
{
    [TestCaseSource(typeof(Proofs), nameof(Proofs.Patterns))]
    public void Every_pattern_of_the_repository_is_proved(string name)
    {
        (PrintedTables tables, ImmutableArray<Quilt> drawing) = Proofs.OfPattern(name);
        ShouldBeProved(Proof.Prove(tables, drawing), tables.Sizes.Length);
    }

    [TestCaseSource(typeof(Proofs), nameof(Proofs.TableCases))]
    public void Every_kind_of_table_is_proved(string name)
    {
        (PrintedTables tables, ImmutableArray<Quilt> drawing) = Proofs.OfCase(name);
        ShouldBeProved(Proof.Prove(tables, drawing), tables.Sizes.Length);
    }

    // Every kind of unit, sashing, borders, house rules. The proof shares no arithmetic with the planner, so each holds
    // the other to account.
    [Test]
    public void Any_pattern_that_can_be_made_is_proved() =>
        RandomPatterns.Any.Sample(
            yaml =>
            {
                if (Proofs.Of(yaml) is { } made)
                {
                    ShouldBeProved(
                        Proof.Prove(made.Tables, made.Drawing),
                        made.Tables.Sizes.Length
                    );
                }
            },
            seed: "0000KXf1rYb1",
            iter: 20,
            threads: 1
        );

    private static void ShouldBeProved(ProofReport report, int sizes)
    {
        // In a plain plan a mixed strip stays as tall as the strips it belongs to, even without a piece of that height.
        report
            .Mistakes.Where(mistake =>
                mistake.Kind != MistakeKind.Excess || mistake.What != "height of the strips"
            )
            .Select(mistake => mistake.Text)
            .ShouldBeEmpty();
        report.Holds.ShouldBeTrue();
        report.Sizes.Length.ShouldBe(sizes);
        report.Sizes.ShouldAllBe(size => size.Checked > 50);
    }
}
