namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>A number of strips that must be whole in every plan and may therefore be branched on.</summary>
internal readonly record struct Condition
{
    private enum Kind
    {
        /// <summary>Strips at least as tall as a height.</summary>
        Taller,

        /// <summary>Strips of one family.</summary>
        Family,

        /// <summary>Strips in which a piece of a placement begins at a position. Together with the families these
        /// numbers describe a flow through positions, so a solution in which all of them are whole splits into whole
        /// strips.</summary>
        Start,
    }

    private readonly Kind kind;

    private Condition(Kind kind, int index, int run, int position)
    {
        this.kind = kind;
        Index = index;
        Run = run;
        Position = position;
    }

    /// <summary>A height, a family or a placement.</summary>
    public int Index { get; }

    public int Run { get; }

    public int Position { get; }

    public bool IsStart => kind == Kind.Start;

    public static Condition Taller(int height) => new(Kind.Taller, height, 0, 0);

    public static Condition Family(int family) => new(Kind.Family, family, 0, 0);

    public static Condition Start(int run, int placement, int position) =>
        new(Kind.Start, placement, run, position);

    public bool HoldsForFamily(StripModel model, int family) =>
        kind == Kind.Taller
            ? model.IsAtLeast(family, Index)
            : kind == Kind.Family && family == Index;

    public bool HoldsFor(StripModel model, StripPattern pattern) =>
        IsStart
            ? model.Families[pattern.Family].Run == Run && pattern.Passes(Index, Position)
            : HoldsForFamily(model, pattern.Family);
}
