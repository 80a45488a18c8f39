using System.Collections.Immutable;

namespace PatternPress.Quilting.Techniques;

/// <summary>The four corners, clockwise from the upper left, so that a quarter turn is one step on.</summary>
internal static class Corner
{
    public const int UpperLeft = 0;
    public const int UpperRight = 1;
    public const int LowerRight = 2;
    public const int LowerLeft = 3;

    public static ImmutableArray<string> Words { get; } =
    ["upper-left", "upper-right", "lower-right", "lower-left"];
}
