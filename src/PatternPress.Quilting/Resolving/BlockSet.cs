using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Resolving;

/// <summary>The blocks of a pattern, each drawn once at every size that it is asked for.</summary>
public sealed class BlockSet(Pattern pattern)
{
    private readonly Dictionary<(string Key, Length? LongerSide), Block> _blocks = [];

    /// <summary>The block as a quilt size uses it; null if it could not be drawn.</summary>
    public Block? Find(string key, SizeDesign size) =>
        _blocks.GetValueOrDefault((key, size.BlockSize));

    /// <summary>The block at a size of its own.</summary>
    /// <param name="longerSide">Finished; null for the size the design names.</param>
    /// <param name="findings">Units that cannot fill their regions are reported here.</param>
    /// <returns>Null if it could not be drawn or there is no such block.</returns>
    public Block? Draw(
        string key,
        Length? longerSide,
        SizeDesign size,
        FindingCollector findings
    ) => pattern.Block(key) is { } design ? Draw(design, longerSide, size, findings) : null;

    /// <inheritdoc cref="Draw(string, Length?, SizeDesign, FindingCollector)"/>
    public Block? Draw(
        BlockDesign design,
        Length? longerSide,
        SizeDesign size,
        FindingCollector findings
    )
    {
        if (_blocks.TryGetValue((design.Key, longerSide), out Block? drawn))
        {
            return drawn;
        }
        var problems = new List<(UnitRegion Region, Rect Place, UnitProblem Problem)>();
        Block? block = BlockResolver.Resolve(design, longerSide, problems);
        if (block is not null)
        {
            _blocks.Add((design.Key, longerSide), block);
        }
        // Equal regions of one letter have one fault.
        foreach (
            (UnitRegion region, Rect place, UnitProblem problem) in problems.DistinctBy(p =>
                (p.Region.Design.Letter, p.Place.Width, p.Place.Height)
            )
        )
        {
            string letter = region.Design.Letter;
            findings.Add(
                problem.Kind == UnitProblemKind.Words
                    ? new Finding(PP0206_UnitWordsWithoutMeaning.Found(problem, letter, design.Key))
                    : PP0207_UnitDoesNotFitRegion.Found(
                        problem,
                        region.Span,
                        letter,
                        design.Key,
                        place.Width,
                        place.Height,
                        size.Key
                    )
            );
        }
        return block;
    }
}
