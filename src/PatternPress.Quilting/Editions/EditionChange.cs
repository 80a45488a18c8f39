namespace PatternPress.Quilting.Editions;

/// <summary>One printed value that differs between two editions.</summary>
/// <param name="Size">Key of the size; empty where it holds for all.</param>
/// <param name="Old">Null where the older edition does not print it.</param>
/// <param name="New">Null where the newer edition does not print it.</param>
/// <param name="Effect">What it means to a maker who holds the older edition.</param>
public sealed record EditionChange(
    string Table,
    string Row,
    string Item,
    string Size,
    string? Old,
    string? New,
    ChangeEffect Effect
)
{
    /// <summary>"throw, requirements, fabric B: buy 1 1/4 yd, now 1 3/8 yd".</summary>
    public string Text
    {
        get
        {
            string size = Size.Length == 0 ? "all sizes" : Size;
            return $"{size}, {Table}, {Row}: {Item} {Old ?? "not printed"}, now {New ?? "not printed"}";
        }
    }
}

/// <summary>What a change means to a maker who holds the older edition. The gravest first.</summary>
public enum ChangeEffect
{
    /// <summary>Who follows the older edition runs short or cuts wrong, for the same quilt.</summary>
    Hurts,

    /// <summary>Who follows the older edition buys, cuts or makes more than need be.</summary>
    Spends,

    /// <summary>The quilt of this size is another one: the older edition makes the older quilt, and the two must not be mixed.</summary>
    Alters,

    /// <summary>Another way to the same quilt, or other words.</summary>
    Harmless,
}
