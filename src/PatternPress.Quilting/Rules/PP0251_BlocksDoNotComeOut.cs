using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Settings.Borders;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The blocks of a pieced border do not fill its sides a whole number of times.</summary>
public sealed class PP0251_BlocksDoNotComeOut : ReadingRule
{
    // Three widths to choose from are enough in one line.
    private const int MostShown = 3;

    public static PP0251_BlocksDoNotComeOut Instance { get; } = new();

    private PP0251_BlocksDoNotComeOut()
        : base("PP0251", Severity.Error, "Border blocks that do not come out") { }

    /// <summary>There is no coping strip, and the blocks do not come out.</summary>
    /// <param name="runs">Lengths to fill.</param>
    /// <param name="least">The narrowest coping strip the house makes.</param>
    /// <param name="most">The widest.</param>
    internal static Finding Found(
        Span blocks,
        int number,
        Closing closing,
        (Length Sides, Length Ends) runs,
        Length least,
        Length most,
        string size
    ) =>
        new(
            Instance.Report(
                blocks,
                $"the blocks of border {number} do not come out",
                Repeating(closing),
                "A coping strip, a plain border inside the pieced one, makes up the difference.",
                "add coping: {fabric: B} to this border and its widths are computed, or change the width of a border inside it"
            ),
            size,
            $"{Side("top and bottom", runs.Ends, closing)}; {Side("sides", runs.Sides, closing)}; {Would(runs, closing, least, most)}"
        );

    /// <summary>No coping strip within its limits makes the blocks come out.</summary>
    internal static Finding WithinLimits(
        Span coping,
        int number,
        Closing closing,
        (Length Sides, Length Ends) runs,
        Length least,
        Length most,
        string size
    ) =>
        new(
            Instance.Report(
                coping,
                $"no coping strip of {Wording.Measure(least)} to {Wording.Measure(most)} makes the blocks of border {number + 1} come out",
                Repeating(closing),
                "Each repeat more needs a strip wider by half its length.",
                "change at-least or at-most of the coping strip, the width of a border inside it, or the size of the blocks"
            ),
            size,
            $"at left and right {Nearest(runs.Ends, closing, least, most)}; at top and bottom {Nearest(runs.Sides, closing, least, most)}"
        );

    private static string Repeating(Closing closing) =>
        closing.Halves
            ? closing.Middle.Sign > 0
                ? $"they repeat every {Wording.Measure(closing.Repeat)} on both sides of a middle of {Wording.Measure(closing.Middle)}"
                : $"they repeat every {Wording.Measure(closing.Repeat)}, as often before the middle as after it"
            : $"they repeat every {Wording.Measure(closing.Repeat)}";

    // "sides 73 in, 12 repeats are 72 in, 13 are 78 in".
    private static string Side(string name, Length run, Closing closing)
    {
        if (closing.RepeatsIn(run) is { } repeats)
        {
            return $"{name} {Wording.Measure(run)} come out with {Wording.Count(repeats, "repeat", "repeats")}";
        }
        (Length shorter, Length longer) = closing.Around(run);
        return $"{name} {Wording.Measure(run)}, {Repeats(shorter)} {Wording.Measure(shorter)}, {Repeats(longer)} {Wording.Measure(longer)}";

        string Repeats(Length side) =>
            closing.RepeatsIn(side) is { } count
                ? $"{Wording.Count(count, "repeat is", "repeats are")}"
                : "no repeat is";
    }

    private static string Would(
        (Length Sides, Length Ends) runs,
        Closing closing,
        Length least,
        Length most
    )
    {
        string[] sides = [.. Shown(runs.Ends, closing, least, most)],
            ends = [.. Shown(runs.Sides, closing, least, most)];
        return sides.Length == 0 || ends.Length == 0
            ? $"no coping strip of {Wording.Measure(least)} to {Wording.Measure(most)} would do"
            : $"a coping strip of {string.Join(" or ", sides)} at left and right, {string.Join(" or ", ends)} at top and bottom would do";
    }

    private static IEnumerable<string> Shown(
        Length run,
        Closing closing,
        Length least,
        Length most
    ) => Coping.Widths(run, closing, least, most).Take(MostShown).Select(Wording.Measure);

    private static string Nearest(Length run, Closing closing, Length least, Length most)
    {
        if (Coping.Widths(run, closing, least, most).Any())
        {
            return $"{string.Join(" or ", Shown(run, closing, least, most))} would do";
        }
        (Length shorter, Length longer) = closing.Around(run + (most * 2));
        Length below = (shorter - run) / 2,
            above = (longer - run) / 2;
        return below.Sign >= 0 && closing.RepeatsIn(shorter) is not null
            ? $"{Wording.Measure(below)} or {Wording.Measure(above)} would do"
            : $"{Wording.Measure(above)} would do";
    }
}
