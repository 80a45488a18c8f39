namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Whole-number prices of pieces and conditions, as multiples of 2 to the power of minus <see cref="ScaleBits"/>.</summary>
internal sealed class Prices(StripModel model)
{
    public long[] Kind { get; } = new long[model.Demand.Length];

    /// <summary>Sum of the prices of the conditions that hold for every strip of the family.</summary>
    public long[] Family { get; } = new long[model.Families.Length];

    /// <summary>Prices of pieces that begin at a position, per run and placement.</summary>
    public Dictionary<(int Run, int Placement), List<(int Position, long Price)>> Starts { get; } =
    [];

    /// <summary>What pieces of a placement are worth besides, in strips of one family.</summary>
    public Dictionary<int, Dictionary<int, long>> Pieces { get; } = [];

    public int ScaleBits { get; set; }
}
