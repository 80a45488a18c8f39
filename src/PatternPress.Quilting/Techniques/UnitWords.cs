using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Source;

namespace PatternPress.Quilting.Techniques;

/// <summary>Reads the words of a unit's design for a kind, and words what is wrong with them.</summary>
internal static class UnitWords
{
    public static UnitProblem Problem(
        UnitKind kind,
        Span span,
        string title,
        string text,
        string? hint = null
    ) => new(UnitProblemKind.Words, span, title, Sentence(text), hint ?? Write(kind));

    public static UnitProblem Region(
        UnitKind kind,
        UnitDesign design,
        string title,
        Length width,
        Length height,
        string hint
    ) =>
        new(
            UnitProblemKind.Region,
            design.Span,
            title,
            $"region {design.Letter} is {Told.Size(width, height)} (width × height, finished)",
            hint
        );

    /// <summary>The first word of a class that the kind has no use for, as a problem; null if there is none.</summary>
    public static UnitProblem? Unwanted(
        UnitKind kind,
        UnitDesign design,
        bool places = false,
        bool grid = false,
        bool measure = false,
        bool rounds = false,
        bool shifts = false
    )
    {
        if (!shifts && design.Shifts.Length > 0)
        {
            return Problem(
                kind,
                design.Shifts[0].Span,
                $"a {kind.Name} has no shifts",
                $"{design.Shifts.Length} {(design.Shifts.Length == 1 ? "is" : "are")} written"
            );
        }
        if (!rounds && design.Rounds is { } count)
        {
            return Problem(
                kind,
                count.Span,
                $"a {kind.Name} has no rounds",
                $"{count.Value} {(count.Value == 1 ? "round is" : "rounds are")} written"
            );
        }
        if (!rounds && design.Named.Length > 0)
        {
            Sourced<string> word = design.Named[0].Word;
            return Problem(
                kind,
                word.Span,
                $"a {kind.Name} takes no {word.Value}",
                $"\"{word.Value}\" stands before the parts"
            );
        }
        if (!places && design.Places.Length > 0)
        {
            Sourced<string> word = design.Places[0];
            return Problem(
                kind,
                word.Span,
                $"a {kind.Name} takes no place word",
                $"\"{word.Value}\" stands before the parts"
            );
        }
        if (!grid && design.Grid is { } cells)
        {
            return Problem(
                kind,
                cells.Span,
                $"a {kind.Name} takes no grid",
                $"{cells.Value.Columns} x {cells.Value.Rows} is written"
            );
        }
        if (!measure && design.Measure is { } size)
        {
            return Problem(
                kind,
                size.Span,
                $"a {kind.Name} takes no measure",
                $"\"of {Told.One(size.Value)}\" is written; its size follows from its region"
            );
        }
        return null;
    }

    /// <summary>
    /// The single place word, which must be one of <paramref name="known"/>; its index there. Without a word,
    /// <paramref name="otherwise"/>, or a problem if that is null.
    /// </summary>
    public static bool TryPlace(
        UnitKind kind,
        UnitDesign design,
        ImmutableArray<string> known,
        int? otherwise,
        out int index,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        index = otherwise ?? -1;
        problem = null;
        string title = otherwise is null
            ? $"a {kind.Name} needs one place word: {OneOf(known)}"
            : $"a {kind.Name} takes one place word at most: {OneOf(known)}";
        if (design.Places.Length == 0)
        {
            if (otherwise is null)
            {
                problem = Problem(kind, design.Kind.Span, title, "none is written");
            }
            return problem is null;
        }
        if (design.Places.Length > 1)
        {
            problem = Problem(
                kind,
                design.Places[1].Span,
                title,
                $"{design.Places.Length} are written: {string.Join(", ", design.Places)}"
            );
            return false;
        }
        Sourced<string> word = design.Places[0];
        index = known.IndexOf(word.Value);
        if (index < 0)
        {
            problem = Problem(
                kind,
                word.Span,
                title,
                $"\"{word.Value}\" is none of these",
                DidYouMean(word.Value, known)
            );
        }
        return problem is null;
    }

    /// <summary>All parts, the ground last, when there are between <paramref name="least"/> and <paramref name="most"/>.</summary>
    /// <param name="need">What the parts are for: "2 parts, the goose and its sky".</param>
    public static bool TryParts(
        UnitKind kind,
        UnitDesign design,
        int least,
        int most,
        string need,
        out ImmutableArray<string> parts,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        parts = [.. design.Parts.Select(p => p.Value)];
        if (design.Ground is { } ground)
        {
            parts = parts.Add(ground.Value);
        }
        problem =
            parts.Length >= least && parts.Length <= most
                ? null
                : Problem(
                    kind,
                    PartsSpan(design),
                    $"a {kind.Name} has {need}",
                    parts.Length == 0
                        ? "none is written"
                        : $"{parts.Length} {(parts.Length == 1 ? "is" : "are")} written: {string.Join(", ", parts)}"
                );
        return problem is null;
    }

    /// <summary>"up, down, left or right".</summary>
    public static string OneOf(ImmutableArray<string> words) =>
        words.Length == 1 ? words[0] : $"{string.Join(", ", words[..^1])} or {words[^1]}";

    /// <summary>A question with the nearest word; null if none is near.</summary>
    public static string? DidYouMean(string word, ImmutableArray<string> known) =>
        Nearest.To(word, known) is { } near ? $"did you mean {near}?" : null;

    private static string Sentence(string text) => char.ToUpperInvariant(text[0]) + text[1..] + ".";

    public static string Write(UnitKind kind) => $"write it like this: {kind.Example}";

    public static Span PartsSpan(UnitDesign design)
    {
        if (design.Parts.Length == 0)
        {
            return design.Ground?.Span ?? design.Span;
        }
        Span first = design.Parts[0].Span;
        Span last = design.Ground?.Span ?? design.Parts[^1].Span;
        return first with { EndLine = last.EndLine, EndColumn = last.EndColumn };
    }
}
