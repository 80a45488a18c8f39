using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>A count of some of the strips of a plan, perhaps weighted, on which a limit can be set.</summary>
internal abstract record Tally
{
    private Tally() { }

    /// <summary>Largest weight of a strip.</summary>
    public virtual long Heaviest => 1;

    /// <summary>Weight of every strip of the family; 0 if the strips of a family differ.</summary>
    public virtual long OfFamily(StripModel model, int family) => 0;

    public virtual long Of(StripModel model, StripPattern pattern) =>
        OfFamily(model, pattern.Family);

    /// <summary>Strips at least as tall as a height.</summary>
    public sealed record Taller(int Height) : Tally
    {
        public override long OfFamily(StripModel model, int family) =>
            model.IsAtLeast(family, Height) ? 1 : 0;
    }

    /// <summary>Strips of one family.</summary>
    public sealed record Family(int Index) : Tally
    {
        public override long OfFamily(StripModel model, int family) => family == Index ? 1 : 0;
    }

    /// <summary>Strips at least so tall of the families that hold other heights too and may not be cut at will.</summary>
    public sealed record Mixed(long Height) : Tally
    {
        public override long OfFamily(StripModel model, int family) =>
            model.Families[family].Cap != Limit.None && model.Families[family].Height >= Height
                ? 1
                : 0;
    }

    /// <summary>Height of all strips that are cut from one remainder.</summary>
    public sealed record Taken(int From, long Tallest) : Tally
    {
        public override long Heaviest => Tallest;

        public override long OfFamily(StripModel model, int family) =>
            model.Families[family].From == From ? model.Families[family].Height : 0;
    }

    /// <summary>Pieces of one placement in strips of one family.</summary>
    public sealed record Pieces(int InFamily, int Placement) : Tally
    {
        public override long Of(StripModel model, StripPattern pattern) =>
            pattern.Family == InFamily ? pattern.CopiesOf(Placement) : 0;
    }

    /// <summary>Strips in which a piece of a placement begins at a position. Together with the families these numbers
    /// describe a flow through positions, so a solution in which all of them are whole splits into whole strips.</summary>
    public sealed record Start(int Run, int Placement, int Position) : Tally
    {
        public override long Of(StripModel model, StripPattern pattern) =>
            model.Families[pattern.Family].Run == Run && pattern.Passes(Placement, Position)
                ? 1
                : 0;
    }

    /// <summary>Strips weighted by family.</summary>
    public sealed record Weighted(ImmutableArray<long> Weights) : Tally
    {
        public override long Heaviest => Weights.Max();

        public override long OfFamily(StripModel model, int family) => Weights[family];
    }
}
