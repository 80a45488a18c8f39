using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Finishing;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>
/// Something is counted twice with different results: units drawn and units made, pieces needed and pieces cut,
/// strips joined and the length they must reach.
/// </summary>
public sealed class PP0308_CountsThatDoNotComeOut : CheckingRule
{
    public PP0308_CountsThatDoNotComeOut()
        : base("PP0308", Severity.Error, "Counts that do not come out") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (SizeMaking size in context.Making.Sizes)
        {
            foreach (
                Finding finding in Units(context.Making, size)
                    .Concat(Pieces(context.Pattern, size))
                    .Concat(Forgotten(context, size))
                    .Concat(Lengths(size))
            )
            {
                yield return finding;
            }
        }
    }

    /// <summary>Units are counted again in the drawing and compared with what is made.</summary>
    private IEnumerable<Finding> Units(Making making, SizeMaking size)
    {
        var drawn = new Dictionary<string, long>(StringComparer.Ordinal);
        foreach ((ColoredBlock block, int number, long count) in PartSorting.Count(size.Quilt))
        {
            BlockMakeup? makeup = making.Blocks.FirstOrDefault(b =>
                b.Coloring == block.Key && b.Number == number
            );
            foreach (BlockPart part in makeup?.Parts ?? [])
            {
                if (part.Unit is { } label)
                {
                    drawn[label] = drawn.GetValueOrDefault(label) + count;
                }
            }
        }
        foreach (UnitBatch batch in size.Units)
        {
            long needed = drawn.GetValueOrDefault(batch.Class.Label);
            if (needed != batch.Needed || batch.Made < needed)
            {
                yield return FindIn(
                    size.Key,
                    Span.None,
                    $"unit {batch.Class.Label} is not made as often as it is used",
                    "",
                    $"{needed} in the drawing, {batch.Needed} in the table, {batch.Made} made"
                );
            }
        }
        foreach (
            string label in drawn
                .Keys.Where(l => size.Units.All(u => u.Class.Label != l))
                .Order(StringComparer.Ordinal)
        )
        {
            yield return FindIn(
                size.Key,
                Span.None,
                $"unit {label} is used and never made",
                "",
                $"{drawn[label]} in the drawing"
            );
        }
    }

    private IEnumerable<Finding> Pieces(Pattern pattern, SizeMaking size)
    {
        foreach (FabricPlan plan in size.Fabrics)
        {
            // Cuts of equal size share a segment; the first of them stands for all.
            var planned = new SortedDictionary<string, (long Count, List<string> Cuts)>(
                StringComparer.Ordinal
            );
            foreach (PlannedStrip strip in plan.Strips)
            {
                foreach (PlannedSegment segment in strip.Segments)
                {
                    (long count, List<string> cuts) = planned.GetValueOrDefault(
                        segment.Cuts[0],
                        (0, [])
                    );
                    foreach (string cut in segment.Cuts)
                    {
                        if (!cuts.Contains(cut))
                        {
                            cuts.Add(cut);
                        }
                    }
                    planned[segment.Cuts[0]] = (
                        count + (segment.PiecesPerStrip * strip.Count),
                        cuts
                    );
                }
            }
            foreach ((long made, List<string> cuts) in planned.Values)
            {
                long needed = 0;
                foreach (Cut cut in size.Cuts)
                {
                    needed += cuts.Contains(cut.Id) ? cut.Count : 0;
                }
                if (made < needed)
                {
                    yield return FindIn(
                        size.Key,
                        pattern.Fabric(plan.Fabric)?.Span ?? Span.None,
                        $"the strips of fabric \"{plan.Fabric}\" give too few pieces {string.Join(", ", cuts)}",
                        "cut from this fabric",
                        $"{made} cut, {needed} needed"
                    );
                }
            }
        }
    }

    private IEnumerable<Finding> Forgotten(RuleContext context, SizeMaking size)
    {
        // A fabric with a piece too wide has no plan; another rule says so.
        var unplanned = context
            .Making.Problems.OfType<MakingProblem.PieceDoesNotFit>()
            .SelectWhere(
                problem => problem.Sizes.Contains(size.Key),
                problem => problem.Piece.Cut.Fabric
            )
            .ToHashSet(StringComparer.Ordinal);
        var planned = new HashSet<string>(StringComparer.Ordinal);
        foreach (FabricPlan plan in size.Fabrics)
        {
            foreach (PlannedStrip strip in plan.Strips)
            {
                foreach (PlannedSegment segment in strip.Segments)
                {
                    planned.UnionWith(segment.Cuts);
                }
            }
        }
        foreach (
            Cut cut in size.Cuts.Where(c =>
                c.Count > 0 && !planned.Contains(c.Id) && !unplanned.Contains(c.Fabric)
            )
        )
        {
            yield return FindIn(
                size.Key,
                context.Pattern.Fabric(cut.Fabric)?.Span ?? Span.None,
                $"the pieces {cut.Id} of fabric \"{cut.Fabric}\" are cut from no strip",
                "cut from this fabric",
                $"{cut.Count} needed"
            );
        }
    }

    private IEnumerable<Finding> Lengths(SizeMaking size)
    {
        foreach (JoinedStrips joined in size.Joined.Where(j => j.Available < j.Needed))
        {
            yield return FindIn(
                size.Key,
                Span.None,
                $"the joined strips {joined.Cut} are too short",
                "",
                $"{joined.Strips} strips make {Wording.Measure(joined.Available)}, {Wording.Measure(joined.Needed)} needed"
            );
        }
        if (size.Binding is { } binding && binding.Available < binding.Needed)
        {
            yield return FindIn(
                size.Key,
                size.Quilt.Size.Quilt.Binding?.Span ?? Span.None,
                "the binding strips are too short",
                "the binding",
                $"{binding.Strips} strips make {Wording.Measure(binding.Available)}, {Wording.Measure(binding.Needed)} needed"
            );
        }
        if (size.Backing is { } backing && !Covers(backing))
        {
            yield return FindIn(
                size.Key,
                size.Quilt.Size.Quilt.Backing?.Span ?? Span.None,
                "the backing panels do not cover the quilt and its overhang",
                "the backing",
                $"{backing.Panels} panels make {Wording.Measure(backing.Across, backing.PanelLength)}, {Wording.Measure(backing.Width, backing.Height)} needed"
            );
        }
    }

    private static bool Covers(BackingPlan backing) =>
        backing.Seams is BackingSeams.NoneDown or BackingSeams.Upright
            ? backing.Across >= backing.Width && backing.PanelLength >= backing.Height
            : backing.Across >= backing.Height && backing.PanelLength >= backing.Width;
}
