using NUnit.Framework;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques;
using PatternPress.Source;
using Shouldly;

namespace PatternPress.Tests.Quilting.Techniques;

/// <summary>Unit designs from one line of words, so that tests read like a source file.</summary>
internal static class Written
{
    /// <summary>"geese up, ray on sky" as region G of a one-line file.</summary>
    public static UnitDesign Design(string text)
    {
        int comma = text.IndexOf(',');
        int at = 0;
        var words = new List<Sourced<string>>();
        foreach (string raw in text.Split(' '))
        {
            string word = raw.TrimEnd(',');
            words.Add(new(word, new Span("test", 1, at + 1, 1, at + 1 + word.Length)));
            at += raw.Length + 1;
        }
        Sourced<string> kind = words[0];
        var before = words.Skip(1).Where(w => comma >= 0 && w.Span.StartColumn <= comma).ToList();
        var after = words.Skip(1 + before.Count).ToList();

        Sourced<Length>? measure = null;
        int of = before.FindIndex(w => w.Value == "of");
        if (of >= 0)
        {
            string number = string.Join(' ', before.Skip(of + 1).Select(w => w.Value));
            LengthText.TryParse(number, LengthUnit.Inch, out Length length, out _);
            measure = new(length, before[of + 1].Span);
            before.RemoveRange(of, before.Count - of);
        }
        Sourced<(int, int)>? grid = null;
        int x = before.FindIndex(w => w.Value == "x");
        if (x >= 0)
        {
            grid = new(
                (int.Parse(before[x - 1].Value), int.Parse(before[x + 1].Value)),
                before[x - 1].Span
            );
            before.RemoveRange(x - 1, 3);
        }
        Sourced<int>? rounds = null;
        int counted = before.FindIndex(w => w.Value is "rounds" or "round" or "segments");
        if (counted >= 0)
        {
            rounds = new(int.Parse(before[counted - 1].Value), before[counted - 1].Span);
            before.RemoveRange(counted - 1, 2);
        }
        var shifts = new List<Sourced<int>>();
        int shifted = before.FindIndex(w => w.Value == "shifts");
        if (shifted >= 0)
        {
            shifts =
            [
                .. before
                    .Skip(shifted + 1)
                    .Select(w => new Sourced<int>(int.Parse(w.Value), w.Span)),
            ];
            before.RemoveRange(shifted, before.Count - shifted);
        }
        var named = new List<NamedMeasures>();
        for (int i = before.Count - 1; i >= 0; i--)
        {
            if (before[i].Value is not ("center" or "logs"))
            {
                continue;
            }
            Sourced<string>[] behind = [.. before.Skip(i + 1)];
            named.Insert(
                0,
                new NamedMeasures(
                    before[i],
                    [
                        .. string.Join(' ', behind.Select(w => w.Value))
                            .Split(" and ", StringSplitOptions.RemoveEmptyEntries)
                            .Select(number => new Sourced<Length>(Inches(number), behind[0].Span)),
                    ]
                )
            );
            before.RemoveRange(i, before.Count - i);
        }
        FoundationDesign? foundation = null;
        if (kind.Value == "foundation")
        {
            before.RemoveAt(0);
            foundation = Spire;
        }
        AppliqueDesign? applique = null;
        if (kind.Value == "applique")
        {
            before.RemoveAt(0);
            applique = Gull;
        }
        Sourced<string>? ground = null;
        int on = after.FindIndex(w => w.Value == "on");
        if (on >= 0)
        {
            ground = after[on + 1];
            after.RemoveRange(on, 2);
        }
        return new UnitDesign(
            "G",
            kind,
            [.. before],
            grid,
            measure,
            [.. after],
            ground,
            new Span("test", 1, 1, 1, text.Length + 1)
        )
        {
            Foundation = foundation,
            Applique = applique,
            Rounds = rounds,
            Named = [.. named],
            Shifts = [.. shifts],
        };
    }

    /// <summary>The shapes that units of kind applique are drawn with.</summary>
    private static AppliqueDesign Gull { get; } =
        new(
            "gull",
            12,
            12,
            [
                new AppliqueShape("body", Outline("M2 6C4 2 8 2 10 6Q6 9 2 6Z"), default),
                new AppliqueShape("beak", Outline("M10 5h1l-1 2z"), default),
            ],
            default
        );

    private static PatternPress.Quilting.Geometry.PathPart Outline(string data) =>
        PatternPress.Quilting.Geometry.PathData.TryParse(data, out var path, out _, out _)
            ? path.Parts[0]
            : throw new ArgumentException(data, nameof(data));

    /// <summary>The section that units of kind foundation are drawn by: a spire before its sky.</summary>
    private static FoundationDesign Spire { get; } =
        new(
            "spire",
            4,
            6,
            [
                new FoundationPiece("tower", null, default),
                new FoundationPiece("sky", ((1, 6), (2, 0)), default),
                new FoundationPiece("sky", ((2, 0), (3, 6)), default),
                new FoundationPiece("tower", ((4, 5), (0, 4)), default),
            ],
            default
        );

    public static DrawnUnit Draw(string text, Length width, Length height)
    {
        UnitDesign design = Design(text);
        if (!UnitKindCatalog.TryFind(design.Kind.Value, out UnitKind? kind))
        {
            throw new ArgumentException($"no kind {design.Kind.Value}", nameof(text));
        }
        return kind.TryDraw(design, width, height, out DrawnUnit? drawn, out UnitProblem? problem)
            ? drawn
            : throw new ArgumentException($"{text}: {problem}", nameof(text));
    }

    public static DrawnUnit Draw(string text, string width, string height) =>
        Draw(text, Inches(width), Inches(height));

    public static UnitForm Form(string text, string width, string? height = null) =>
        Draw(text, width, height ?? width).Form;

    public static UnitProblem Problem(string text, string width, string height)
    {
        UnitDesign design = Design(text);
        UnitKindCatalog.TryFind(design.Kind.Value, out UnitKind? kind);
        kind!
            .TryDraw(design, Inches(width), Inches(height), out _, out UnitProblem? problem)
            .ShouldBeFalse(text);
        return problem!;
    }

    public static Length Inches(string text) =>
        LengthText.TryParse(text, LengthUnit.Inch, out Length length, out string problem)
            ? length
            : throw new ArgumentException(problem, nameof(text));
}
