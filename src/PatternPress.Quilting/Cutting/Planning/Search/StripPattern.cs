using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>How one strip is cut: from the left end, so many of each placement in the model's order.</summary>
internal sealed class StripPattern(StripModel model, int family, int[] placements, int[] copies)
    : IEquatable<StripPattern>
{
    private readonly int hash = Hash(family, placements, copies);

    public int Family => family;

    public long Cost { get; } = model.Families[family].Cost;

    public ReadOnlySpan<int> Placements => placements;

    public ReadOnlySpan<int> Copies => copies;

    /// <summary>Pieces of the kind that one strip yields.</summary>
    public int Yield(int kind)
    {
        var yield = 0;
        for (var i = 0; i < placements.Length; i++)
            if (model.Placements[placements[i]].Kind == kind)
                yield += copies[i];
        return yield;
    }

    public int CopiesOf(int placement)
    {
        var at = Array.IndexOf(placements, placement);
        return at < 0 ? 0 : copies[at];
    }

    /// <summary>Whether a piece of the placement begins at the position.</summary>
    public bool Passes(int placement, int position)
    {
        var at = 0;
        for (var i = 0; i < placements.Length && placements[i] <= placement; i++)
        {
            var width = model.Placements[placements[i]].Width;
            if (placements[i] == placement)
                return position >= at
                    && position < at + copies[i] * width
                    && (position - at) % width == 0;
            at += copies[i] * width;
        }
        return false;
    }

    /// <summary>Where each piece begins.</summary>
    public IEnumerable<(int Run, int Placement, int Position)> Starts()
    {
        var run = model.Families[family].Run;
        var at = 0;
        for (var i = 0; i < placements.Length; i++)
        for (var copy = 0; copy < copies[i]; copy++)
        {
            yield return (run, placements[i], at);
            at += model.Placements[placements[i]].Width;
        }
    }

    public bool Equals(StripPattern? other) =>
        other is not null
        && hash == other.hash
        && family == other.Family
        && Placements.SequenceEqual(other.Placements)
        && Copies.SequenceEqual(other.Copies);

    public override bool Equals(object? obj) => Equals(obj as StripPattern);

    public override int GetHashCode() => hash;

    /// <summary>Written out rather than left to <see cref="HashCode"/>, whose seed differs from run to run.</summary>
    private static int Hash(int family, int[] placements, int[] copies)
    {
        var hash = family + 17;
        for (var i = 0; i < placements.Length; i++)
            hash = unchecked((hash * 31 + placements[i]) * 31 + copies[i]);
        return hash;
    }
}
