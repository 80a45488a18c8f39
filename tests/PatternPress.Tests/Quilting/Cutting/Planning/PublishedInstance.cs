using System.Collections.Immutable;
using PatternPress.Quilting.Cutting.Planning;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

/// <summary>A two-stage strip packing instance from the literature with its optimum: gcut1d to gcut6d (Cintra, Miyazawa,
/// Wakabayashi and Xavier, European Journal of Operational Research 191, 2008, built on Beasley's gcut of the OR-Library)
/// and Class 1 and 2 of Berkey and Wang (1987).</summary>
internal sealed record PublishedInstance(string Name, bool Turned, long Optimum, CutProblem Problem)
{
    public override string ToString() => $"{Name} {(Turned ? "turned" : "fixed")}";

    /// <param name="folder">Holds optima.csv and a text file per instance: count of kinds, width and a height that does
    /// not matter, then width, height and demand of each kind.</param>
    public static ImmutableArray<PublishedInstance> ReadAll(string folder)
    {
        var instances = ImmutableArray.CreateBuilder<PublishedInstance>();
        foreach (var line in File.ReadLines(Path.Combine(folder, "optima.csv")).Skip(1))
        {
            var cells = line.Split(',');
            var turned = cells[1] == "turned";
            var numbers = File.ReadAllText(Path.Combine(folder, cells[0] + ".txt"))
                .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
                .Select(long.Parse)
                .ToArray();
            var pieces = Enumerable
                .Range(0, (int)numbers[0])
                .Select(i => new CutPiece(
                    i + 1,
                    numbers[3 + 3 * i],
                    numbers[4 + 3 * i],
                    numbers[5 + 3 * i],
                    turned
                ));
            instances.Add(
                new(cells[0], turned, long.Parse(cells[2]), new(numbers[1], [.. pieces]))
            );
        }
        return instances.ToImmutable();
    }
}
