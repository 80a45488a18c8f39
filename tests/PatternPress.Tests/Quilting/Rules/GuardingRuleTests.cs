using System.Collections.Immutable;
using PatternPress.Quilting.Compiling;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Techniques;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;

namespace PatternPress.Tests.Quilting.Rules;

/// <summary>
/// Rules that guard the build itself: no source file can break them, so a computed result is broken by hand, one thing
/// at a time.
/// </summary>
public sealed class GuardingRuleTests
{
    private static readonly Length _eighth = Length.FromInches(0, 1, 8);

    private static readonly Compilation _sound = Compiler.Compile(
        "harbor",
        SyntaxTree.Read(
            "harbor.quilt.yaml",
            File.ReadAllText(Path.Combine(Repository.Patterns, "harbor-lights.quilt.yaml"))
        ),
        null
    );

    private static Quilt Throw => _sound.Quilts.Single(q => q.Size.Key == "throw");

    [Test]
    public void The_sound_quilt_breaks_none_of_them()
    {
        foreach (
            CheckingRule rule in new CheckingRule[]
            {
                new PP0235_PatchesThatDoNotTile(),
                new PP0236_SeamsOfUnequalLength(),
                new PP0237_BorderThatDoesNotClose(),
                new PP0238_BiasOnOuterEdge(),
                new PP0304_PieceWithoutSize(),
                new PP0305_TooManyPieces(),
                new PP0308_CountsThatDoNotComeOut(),
            }
        )
        {
            rule.Check(new RuleContext(_sound.Pattern!, _sound.Quilts, _sound.Making!))
                .Select(f => f.Diagnostic.Title)
                .ShouldBeEmpty(rule.Code);
        }
    }

    [Test]
    public void A_missing_block_is_a_gap()
    {
        Finding found = Broken<PP0235_PatchesThatDoNotTile>(
            Throw with
            {
                Places = Throw.Places.RemoveAt(3),
            }
        );
        found.Diagnostic.Title.ShouldBe("blocks, sashing and borders do not fill the quilt");
        found.Numbers.ShouldStartWith("144 of ");
    }

    [Test]
    public void A_block_out_of_place_lies_over_another()
    {
        BlockPlace moved = Throw.Places[0] with
        {
            Place = Throw.Places[0].Place.MoveBy(new Point(_eighth, Length.Zero)),
        };
        Broken<PP0235_PatchesThatDoNotTile>(Throw with { Places = Throw.Places.SetItem(0, moved) })
            .Numbers.ShouldStartWith("two patches lie over each other");
    }

    [Test]
    public void A_border_strip_beyond_the_edge_is_told()
    {
        Border last = Throw.Borders[^1];
        BorderPiece strip = last.Pieces[0];
        Border longer = last with
        {
            Pieces = last.Pieces.SetItem(
                0,
                strip with
                {
                    Place = strip.Place.MoveBy(new Point(-_eighth, Length.Zero)),
                }
            ),
        };
        Broken<PP0235_PatchesThatDoNotTile>(
            Throw with
            {
                Borders = Throw.Borders.SetItem(Throw.Borders.Length - 1, longer),
            }
        )
            .Numbers.ShouldContain("reaches beyond");
    }

    [Test]
    public void A_unit_that_lacks_a_patch_is_told_with_its_letter()
    {
        Quilt quilt = WithUnit(
            "G",
            unit =>
                unit with
                {
                    Drawn = unit.Drawn with
                    {
                        Form = unit.Drawn.Form with
                        {
                            Patches = unit.Drawn.Form.Patches.RemoveAt(1),
                        },
                    },
                }
        );
        Broken<PP0235_PatchesThatDoNotTile>(quilt)
            .Diagnostic.Title.ShouldBe(
                "the patches of unit \"G\" in block \"lamp\" do not fill it"
            );
    }

    [Test]
    public void A_block_that_is_not_as_large_as_its_place_does_not_meet_its_neighbors()
    {
        BlockPlace place = Throw.Places[5];
        BlockPlace larger = place with
        {
            Place = place.Place with { Width = place.Place.Width + _eighth },
        };
        Finding found = Broken<PP0236_SeamsOfUnequalLength>(
            Throw with
            {
                Places = Throw.Places.SetItem(5, larger),
            }
        );
        found.Numbers.ShouldBe(
            "in row 2, column 2 the block is 12 × 12 in, its place 12 1/8 × 12 in"
        );
    }

    [Test]
    public void A_sashing_strip_that_is_longer_than_its_block_is_told()
    {
        int at = Throw.Sashes.IndexOf(Throw.Sashes.First(s => s.Kind == SashKind.Upright));
        Sash sash = Throw.Sashes[at];
        Sash longer = sash with
        {
            Place = sash.Place with { Height = sash.Place.Height + _eighth },
        };
        Broken<PP0236_SeamsOfUnequalLength>(
            Throw with
            {
                Sashes = Throw.Sashes.SetItem(at, longer),
            }
        )
            .Numbers.ShouldBe("a strip 1 1/2 × 12 1/8 in meets an edge of 12 in");
    }

    [Test]
    public void A_unit_made_at_another_size_than_its_place_is_told()
    {
        Finding found = BrokenMaking<PP0236_SeamsOfUnequalLength>(size =>
        {
            UnitBatch batch = size.Units[0];
            return size with
            {
                Units = size.Units.SetItem(
                    0,
                    batch with
                    {
                        Recipe = batch.Recipe with
                        {
                            UnfinishedWidth = batch.Recipe.UnfinishedWidth + _eighth,
                        },
                    }
                ),
            };
        });
        found.Numbers.ShouldContain("with seams");
        found.Diagnostic.Primary.Span.IsNone.ShouldBeFalse();
    }

    [Test]
    public void A_border_that_is_too_short_does_not_close()
    {
        Border first = Throw.Borders[0];
        int at = first.Pieces.IndexOf(first.Pieces.First(p => p.Side == BorderSide.Top));
        BorderPiece top = first.Pieces[at];
        Border shorter = first with
        {
            Pieces = first.Pieces.SetItem(
                at,
                top with
                {
                    Place = top.Place with { Width = top.Place.Width - _eighth },
                }
            ),
        };
        Finding found = Broken<PP0237_BorderThatDoesNotClose>(
            Throw with
            {
                Borders = Throw.Borders.SetItem(0, shorter),
            }
        );
        found.Diagnostic.Title.ShouldBe("border 1 does not close");
        found.Numbers.ShouldStartWith("its pieces add up to ");
    }

    [Test]
    public void Bias_on_the_outside_is_a_warning_at_the_quilts_edge_and_a_note_within_a_frame()
    {
        Quilt bias = WithUnit(
            "s",
            unit =>
                unit with
                {
                    Drawn = unit.Drawn with
                    {
                        Form = unit.Drawn.Form with
                        {
                            Patches =
                            [
                                .. unit.Drawn.Form.Patches.Select(p =>
                                    p with
                                    {
                                        BiasEdges = [0, 1, 2, 3],
                                    }
                                ),
                            ],
                        },
                    },
                }
        );
        // Sashing frames every block.
        Check<PP0238_BiasOnOuterEdge>(bias, _sound.Making!).ShouldBeEmpty();
        Quilt unsashed = bias with
        {
            Size = bias.Size with { Quilt = bias.Size.Quilt with { Sashing = null } },
        };
        Check<PP0238_BiasOnOuterEdge>(unsashed, _sound.Making!)
            .Select(f => f.Diagnostic.Severity)
            .Distinct()
            .ShouldBe([Severity.Note]);
        Length margin = bias.Center.X;
        Quilt bare = unsashed with
        {
            Borders = [],
            Width = bias.Center.Width,
            Height = bias.Center.Height,
            Places =
            [
                .. bias.Places.Select(p =>
                    p with
                    {
                        Place = p.Place.MoveBy(
                            // The sashing around is gone too: the first block comes to lie in the corner.
                            new Point(
                                -margin - Length.FromInches(1, 1, 2),
                                -margin - Length.FromInches(1, 1, 2)
                            )
                        ),
                    }
                ),
            ],
        };
        Check<PP0238_BiasOnOuterEdge>(bare, _sound.Making!)
            .ShouldContain(f => f.Diagnostic.Severity == Severity.Warning);
    }

    [Test]
    public void A_unit_too_few_is_told()
    {
        Finding found = BrokenMaking<PP0308_CountsThatDoNotComeOut>(size =>
            size with
            {
                Units = size.Units.SetItem(
                    0,
                    size.Units[0] with
                    {
                        Needed = size.Units[0].Needed - 1,
                    }
                ),
            }
        );
        found.Numbers.ShouldContain(" in the drawing, ");
    }

    [Test]
    public void A_strip_too_few_is_told_with_its_fabric_and_pieces()
    {
        Finding found = BrokenMaking<PP0308_CountsThatDoNotComeOut>(size =>
        {
            FabricPlan plan = size.Fabrics[0];
            return size with
            {
                Fabrics = size.Fabrics.SetItem(0, plan with { Strips = [.. plan.Strips.Skip(1)] }),
            };
        });
        found.Diagnostic.Title.ShouldContain("fabric \"A\"");
        found.Numbers.ShouldContain(" needed");
    }

    [Test]
    public void Too_little_binding_and_backing_are_told()
    {
        BrokenMaking<PP0308_CountsThatDoNotComeOut>(size =>
            size with
            {
                Binding = size.Binding! with { Strips = size.Binding.Strips - 1 },
            }
        )
            .Diagnostic.Title.ShouldBe("the binding strips are too short");
        BrokenMaking<PP0308_CountsThatDoNotComeOut>(size =>
            size with
            {
                Backing = size.Backing! with { Panels = size.Backing.Panels - 1 },
            }
        )
            .Diagnostic.Title.ShouldBe(
                "the backing panels do not cover the quilt and its overhang"
            );
    }

    [Test]
    public void Pieces_without_a_size_and_too_many_pieces_are_told()
    {
        Cut cut = _sound.Making!.Sizes[0].Cuts[0];
        Making broken = _sound.Making with
        {
            Problems =
            [
                new MakingProblem.PieceDoesNotFit(
                    new PieceProblem(
                        cut,
                        PieceProblemKind.NoSize,
                        Length.Zero,
                        Length.Zero,
                        Length.FromInches(40)
                    ),
                    ["throw"]
                ),
                new MakingProblem.PieceDoesNotFit(
                    new PieceProblem(
                        cut with
                        {
                            Count = 2_000_000_000,
                        },
                        PieceProblemKind.BeyondLimit,
                        cut.Width,
                        cut.Width,
                        Length.FromInches(40)
                    ),
                    ["throw"]
                ),
            ],
        };
        Check<PP0304_PieceWithoutSize>(Throw, broken).ShouldHaveSingleItem();
        Check<PP0305_TooManyPieces>(Throw, broken)
            .ShouldHaveSingleItem()
            .Numbers.ShouldStartWith("2,000,000,000 pieces of ");
    }

    private static Quilt WithUnit(string letter, Func<BlockUnit, BlockUnit> change)
    {
        // Every block of the quilt is the same lamp; its colorings share the changed drawing.
        Block lamp = Throw.Places[0].Block.Block!;
        Block changed = lamp with
        {
            Units = [.. lamp.Units.Select(u => u.Region.Design.Letter == letter ? change(u) : u)],
        };
        return Throw with
        {
            Places =
            [
                .. Throw.Places.Select(p => p with { Block = p.Block with { Block = changed } }),
            ],
        };
    }

    private static Finding Broken<TRule>(Quilt quilt)
        where TRule : CheckingRule, new() => Check<TRule>(quilt, _sound.Making!)[0];

    private static Finding BrokenMaking<TRule>(Func<SizeMaking, SizeMaking> change)
        where TRule : CheckingRule, new()
    {
        Making making = _sound.Making!;
        SizeMaking size = making.Sizes.Single(s => s.Key == "throw");
        Making broken = making with { Sizes = making.Sizes.Replace(size, change(size)) };
        return Check<TRule>(Throw, broken)[0];
    }

    private static List<Finding> Check<TRule>(Quilt quilt, Making making)
        where TRule : CheckingRule, new() =>
        [.. new TRule().Check(new RuleContext(_sound.Pattern!, [quilt], making))];
}
