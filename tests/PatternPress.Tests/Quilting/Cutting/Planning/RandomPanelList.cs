using System.Collections.Immutable;
using PatternPress.Quilting.Cutting.Planning;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

/// <summary>Lists to be cut from panels, drawn from a seed.</summary>
internal static class RandomPanelList
{
    private static readonly (int Width, int Height)[] Panels =
    [
        (42, 36),
        (42, 18),
        (20, 20),
        (10, 10),
        (80, 5),
        (37, 23),
    ];

    /// <summary>At most nine pieces in all, in half inches, that go into two or three panels.</summary>
    public static PanelProblem Few(int seed)
    {
        var random = new Random(seed);
        var (width, height) = Panels[random.Next(Panels.Length)];
        var pieces = ImmutableArray.CreateBuilder<CutPiece>();
        for (int left = random.Next(2, 10), id = 1; left > 0 && id <= 5; id++)
        {
            var count = random.Next(1, left + 1);
            left -= count;
            pieces.Add(
                new(
                    id,
                    random.Next(1, (width * 2 / 3) + 2),
                    random.Next(1, (height * 2 / 3) + 2),
                    count,
                    random.Next(2) == 0
                )
            );
        }
        return new(width, height, pieces.ToImmutable());
    }

    /// <summary>A quilt's list, each piece of which fits a fat quarter.</summary>
    public static PanelProblem Quilt(int seed)
    {
        var list = RandomCuttingList.Quilt(seed);
        // Eighths of an inch, or half centimetres.
        var metric = list.Width < 300;
        var (width, height) = metric ? (106, 90) : (168, 144);
        return new(
            width,
            height,
            [.. list.Pieces.Where(piece => piece.Width <= width && piece.Height <= height)]
        );
    }
}
