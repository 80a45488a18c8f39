using System.Collections.Immutable;
using PatternPress.Quilting.Measures;

namespace PatternPress.Proofing;

/// <summary>Counts what is compared and writes down what is wrong.</summary>
/// <param name="size">Key of the size; null for what concerns all.</param>
internal sealed class Notes(string? size, LengthUnit unit)
{
    private readonly List<Mistake> _mistakes = [];

    public long Checked { get; private set; }

    /// <summary>In the order of making; within a step as found.</summary>
    public ImmutableArray<Mistake> Mistakes => [.. _mistakes.OrderBy(mistake => mistake.Step)];

    /// <summary>Whether anything stands against making the quilt.</summary>
    public bool Refuted { get; private set; }

    /// <summary>Counts a comparison and hands its outcome on, so that words are made only for what is wrong.</summary>
    public bool Ok(bool outcome)
    {
        Checked++;
        return outcome;
    }

    public void Add(
        MistakeKind kind,
        ProofStep step,
        string table,
        string row,
        string what,
        string printed,
        string expected
    )
    {
        Refuted |= kind != MistakeKind.Excess;
        _mistakes.Add(new Mistake(kind, step, size, table, row, what, printed, expected));
    }

    public void Wrong(
        ProofStep step,
        string table,
        string row,
        string what,
        string printed,
        string expected
    ) => Add(MistakeKind.Wrong, step, table, row, what, printed, expected);

    /// <summary>A number that must be exactly so.</summary>
    public bool Same(
        ProofStep step,
        string table,
        string row,
        string what,
        long printed,
        long expected,
        string why
    )
    {
        if (Ok(printed == expected))
        {
            return true;
        }
        Wrong(step, table, row, what, $"{printed}", $"{why} {expected}");
        return false;
    }

    /// <summary>A measure that must be exactly so.</summary>
    public bool Same(
        ProofStep step,
        string table,
        string row,
        string what,
        Length printed,
        Length expected,
        string why
    )
    {
        if (Ok(printed == expected))
        {
            return true;
        }
        Wrong(step, table, row, what, Told(printed), $"{why} {Told(expected)}");
        return false;
    }

    /// <summary>A word or letter that must be exactly so.</summary>
    public bool Same(
        ProofStep step,
        string table,
        string row,
        string what,
        string? printed,
        string? expected,
        string why
    )
    {
        if (Ok(printed == expected))
        {
            return true;
        }
        Wrong(step, table, row, what, printed ?? "nothing", $"{why} {expected ?? "nothing"}");
        return false;
    }

    /// <summary>A count of which less is short and more is excess.</summary>
    public void Enough(
        ProofStep step,
        string table,
        string row,
        string what,
        long printed,
        long needed,
        string why
    )
    {
        if (!Ok(printed == needed))
        {
            MistakeKind kind = printed < needed ? MistakeKind.Short : MistakeKind.Excess;
            Add(kind, step, table, row, what, $"{printed}", $"{why} {needed}");
        }
    }

    /// <summary>A measure in the unit of the tables: "12 1/2 in"; with roots to three places.</summary>
    public string Told(Length length)
    {
        if (unit is LengthUnit.Millimetre or LengthUnit.Centimetre or LengthUnit.Metre)
        {
            return LengthText.Centimetres(length) + " cm";
        }
        return length.Inches.IsRational
            ? LengthText.Inches(length) + " in"
            : FormattableString.Invariant($"{length.Inches.ToDouble():0.###} in");
    }

    public string Told(Length width, Length height) => $"{Told(width)} × {Told(height)}";
}
