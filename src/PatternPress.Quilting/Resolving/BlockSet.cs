using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Resolving;

/// <summary>Every block of a pattern drawn at every block size that its quilt sizes ask for.</summary>
public sealed class BlockSet(IReadOnlyDictionary<(string Key, Length? LongerSide), Block> blocks)
{
    /// <summary>The block as a quilt size uses it; null if it could not be drawn.</summary>
    public Block? Find(string key, SizeDesign size) =>
        blocks.GetValueOrDefault((key, size.BlockSize));
}
