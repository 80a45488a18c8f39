namespace PatternPress.Quilting.Settings.Fills;

/// <summary>
/// SplitMix64 (Steele, Lea, Flood 2014): our own copy because a seed in a pattern must give the same quilt with
/// every version of .NET, which System.Random does not promise.
/// </summary>
internal sealed class RandomSequence(int seed)
{
    private ulong _state = unchecked((ulong)seed * 0x9E3779B97F4A7C15UL) + 0x2545F4914F6CDD1DUL;

    public ulong Next()
    {
        unchecked
        {
            ulong z = _state += 0x9E3779B97F4A7C15UL;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }

    /// <summary>A number from 0 to <paramref name="limit"/> − 1.</summary>
    public int Below(int limit) => (int)(Next() % (ulong)limit);
}
