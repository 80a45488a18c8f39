using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Source;

namespace PatternPress.Quilting.Techniques;

/// <summary>
/// Reads the words of units whose logs are added around a center: <c>4 rounds [center 2] [logs 1 and 1/2]</c>, then the
/// part of the center and those of the logs.
/// </summary>
/// <param name="kind">The kind that is written.</param>
/// <param name="sides">The sides that the logs of a round are added to, in order.</param>
internal sealed class LogWords(UnitKind kind, ImmutableArray<LogSide> sides)
{
    /// <summary>More rounds than anyone would sew; bounds what a source file can ask for.</summary>
    public const int MostRounds = 12;

    private int PerRound => sides.Length;

    // Logs of a round that lie one beside the other across the unit.
    private int Across => PerRound / 2;

    /// <param name="width">Finished width of the unit before it is turned.</param>
    /// <param name="height">Its height.</param>
    /// <param name="turn">How the unit is turned.</param>
    public bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        Turn turn,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        drawn = null;
        if (design.Ground is { } ground)
        {
            problem = UnitWords.Problem(
                kind,
                ground.Span,
                $"a {kind.Name} lies on no other part",
                $"\"on {ground.Value}\" is written",
                "write the center's part first, then those of the logs"
            );
            return false;
        }
        if (
            !TryMeasures(design, out Length? center, out ImmutableArray<Length> logs, out problem)
            || !TryRounds(design, width, height, center, logs, out int rounds, out problem)
            || !TryWidths(
                design,
                (width, height),
                rounds,
                center,
                logs,
                out ImmutableArray<Length> widths,
                out problem
            )
            || !TryRoles(
                design,
                rounds,
                out ImmutableArray<string> parts,
                out ImmutableArray<int> roles,
                out problem
            )
        )
        {
            return false;
        }
        var sequence = new LogSequence(
            PerRound,
            [
                .. Enumerable
                    .Range(0, rounds * PerRound)
                    .Select(i => new Log(sides[i % PerRound], widths[i % PerRound], roles[i])),
            ]
        );
        drawn = new DrawnUnit(sequence.Form(kind, width, height), turn, parts);
        return true;
    }

    private bool TryMeasures(
        UnitDesign design,
        out Length? center,
        out ImmutableArray<Length> logs,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        center = null;
        logs = [];
        problem = null;
        foreach (NamedMeasures named in design.Named)
        {
            int most = named.Word.Value == "center" ? 1 : PerRound;
            int count = named.Measures.Length;
            if (count == 0 || count > most || (count != 1 && count != 2 && count != most))
            {
                problem = UnitWords.Problem(
                    kind,
                    named.Word.Span,
                    named.Word.Value == "center"
                        ? $"the center of a {kind.Name} has one measure, its finished side"
                        : $"the logs of a {kind.Name} have one finished width, or {(PerRound == 2 ? "one for each side" : "two (for the first and the second half of a round), or one for each side")}",
                    count == 0 ? "none is written"
                        : count == 1 ? "1 is written"
                        : $"{count} are written"
                );
                return false;
            }
            if (named.Word.Value == "center")
            {
                center = named.Measures[0].Value;
            }
            else
            {
                logs = [.. named.Measures.Select(m => m.Value)];
            }
        }
        return true;
    }

    // Two for the halves of a round, else one for all or one for each side.
    private int Share(int log, int count) =>
        count == 1 ? 0
        : count == PerRound ? log % PerRound
        : log % PerRound * 2 / PerRound;

    private bool TryRounds(
        UnitDesign design,
        Length width,
        Length height,
        Length? center,
        ImmutableArray<Length> logs,
        out int rounds,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        rounds = design.Rounds?.Value ?? 0;
        problem = null;
        if (design.Rounds is { } written)
        {
            if (rounds > MostRounds)
            {
                problem = UnitWords.Problem(
                    kind,
                    written.Span,
                    $"a {kind.Name} has {MostRounds} rounds at most",
                    $"{rounds} are written"
                );
            }
            return problem is null;
        }
        if (center is not { } inner || logs.IsEmpty)
        {
            problem = UnitWords.Problem(
                kind,
                design.Kind.Span,
                $"a {kind.Name} needs the number of its rounds",
                "none is written",
                $"write {kind.Keyword} 4 rounds, or both center and logs"
            );
            return false;
        }
        Length round = Round(logs, LogSide.Left);
        Rational count = (width - inner).Inches.One / round.Inches.One;
        if (width <= inner || !count.IsWhole || count > MostRounds)
        {
            Length shorter = Length.Min(width, height);
            problem = UnitWords.Region(
                kind,
                design,
                $"no whole number of rounds fills the region",
                width,
                height,
                width <= inner
                    ? $"make the center smaller than {Told.One(shorter)}"
                    : $"each round adds {Told.One(round)} to a center of {Told.One(inner)}: {RoundsThatFit(inner, round, width)}; change center or logs"
            );
            return false;
        }
        rounds = (int)count.Numerator;
        return true;
    }

    private static string RoundsThatFit(Length center, Length round, Length width)
    {
        long below = (width - center).CountOf(round);
        return $"{below} make {Told.One(center + (round * below))}, {below + 1} make {Told.One(center + (round * (below + 1)))}";
    }

    private bool TryWidths(
        UnitDesign design,
        (Length Width, Length Height) region,
        int rounds,
        Length? center,
        ImmutableArray<Length> logs,
        out ImmutableArray<Length> widths,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        widths = [];
        problem = null;
        (Length width, Length height) = region;
        if (logs.IsEmpty)
        {
            if (width != height)
            {
                problem = UnitWords.Region(
                    kind,
                    design,
                    $"a {kind.Name} that is not square needs the width of its logs",
                    width,
                    height,
                    $"write {kind.Keyword} {rounds} rounds logs 1, and the center is what is left"
                );
                return false;
            }
            // Without a center's size the center is as wide as a log.
            int across = rounds * Across;
            Length log = center is { } inner ? (width - inner) / across : width / (across + 1);
            if (log.Sign <= 0)
            {
                problem = UnitWords.Region(
                    kind,
                    design,
                    "the center leaves no room for logs",
                    width,
                    height,
                    $"the center is {Told.One(center!.Value)}; make it smaller than {Told.One(width)}"
                );
                return false;
            }
            widths = [.. Enumerable.Repeat(log, PerRound)];
            return true;
        }
        Length added = Round(logs, LogSide.Left) * rounds,
            deep = Round(logs, LogSide.Top) * rounds;
        if (width <= added || height <= deep)
        {
            problem = UnitWords.Region(
                kind,
                design,
                "the logs leave no room for a center",
                width,
                height,
                $"{Rounds(rounds)} of logs take {Told.Size(added, deep)}; write fewer rounds or narrower logs"
            );
            return false;
        }
        if (center is { } given && (given + added != width || given + deep != height))
        {
            problem = UnitWords.Region(
                kind,
                design,
                "center and logs do not fill the region",
                width,
                height,
                $"a center of {Told.One(given)} and {Rounds(rounds)} of logs make {Told.Size(given + added, given + deep)}: {Cure(width, height, rounds, given, added, deep, logs)}"
            );
            return false;
        }
        widths = [.. Enumerable.Range(0, PerRound).Select(i => logs[Share(i, logs.Length)])];
        return true;
    }

    // What would close.
    private string Cure(
        Length width,
        Length height,
        int rounds,
        Length center,
        Length added,
        Length deep,
        ImmutableArray<Length> logs
    )
    {
        string leave = "leave center out";
        if (width - added == height - deep)
        {
            leave = $"with these logs the center is {Told.One(width - added)}";
        }
        return logs.Length == 1 && width == height && width > center
            ? $"{leave}, with this center the logs are {Told.One((width - center) / (rounds * Across))}"
            : leave;
    }

    private static string Rounds(int rounds) => rounds == 1 ? "1 round" : $"{rounds} rounds";

    // What a round adds on a side and the one opposite.
    private Length Round(ImmutableArray<Length> logs, LogSide side)
    {
        Length sum = Length.Zero;
        for (int i = 0; i < PerRound; i++)
        {
            if ((int)sides[i] % 2 == (int)side % 2)
            {
                sum += logs[Share(i, logs.Length)];
            }
        }
        return sum;
    }

    private bool TryRoles(
        UnitDesign design,
        int rounds,
        out ImmutableArray<string> parts,
        out ImmutableArray<int> roles,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        int all = rounds * PerRound,
            count = design.Parts.Length - 1;
        // One for all; for the halves of a round; for each side; for each half of each round; for each log.
        ImmutableArray<int> known = [.. new[] { 1, 2, PerRound, all / 2, all }.Distinct().Order()];
        parts = [];
        roles = [];
        problem = null;
        if (!known.Contains(count))
        {
            problem = UnitWords.Problem(
                kind,
                UnitWords.PartsSpan(design),
                $"a {kind.Name} of {Rounds(rounds)} has a part for its center and {UnitWords.OneOf([.. known.Select(n => $"{n}")])} for its {all} logs",
                design.Parts.Length == 0
                    ? "none is written"
                    : $"{design.Parts.Length} {(design.Parts.Length == 1 ? "is" : "are")} written: {string.Join(", ", design.Parts)}"
            );
            return false;
        }
        // A part that is named twice is one role.
        var names = new List<string>();
        int[] role =
        [
            .. design.Parts.Select(part =>
            {
                int at = names.IndexOf(part.Value);
                if (at < 0)
                {
                    at = names.Count;
                    names.Add(part.Value);
                }
                return at;
            }),
        ];
        parts = [.. names];
        roles =
        [
            .. Enumerable
                .Range(0, all)
                .Select(i =>
                    role[
                        1
                            + (
                                count == 1 || count == 2 || count == PerRound ? Share(i, count)
                                : count == all ? i
                                : i / 2
                            )
                    ]
                ),
        ];
        return true;
    }
}
