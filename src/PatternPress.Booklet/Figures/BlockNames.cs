using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// What the blocks of a quilt are called on the page: by the key of their coloring, with a number where the quilt has blocks of
/// one coloring in several sizes, the largest without.
/// </summary>
internal sealed class BlockNames
{
    private readonly Dictionary<(string Key, Length Width, Length Height), string> _names;

    public BlockNames(Quilt quilt)
    {
        _names = quilt
            .NumberedBlocks()
            .ToDictionary(
                b => (b.Block.Key, b.Block.Width, b.Block.Height),
                b => Of(b.Block.Key, b.Number)
            );
        Differ = quilt.Places.Select(place => this[place.Block]).Distinct().Skip(1).Any();
    }

    public string this[ColoredBlock block] => _names[(block.Key, block.Width, block.Height)];

    /// <summary>Whether blocks of the field go by more than one name, so that it must be said which is where.</summary>
    public bool Differ { get; }

    public static string Of(string coloring, int number) =>
        number > 1 ? $"{coloring}\u00a0({number})" : coloring;
}
