using System.Collections.Immutable;
using System.Globalization;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Techniques;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Source;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>
/// Reads what stands behind a letter of a block's map: <c>[each [2 x 1]] kind [places] [4 x 4] [4 rounds] [of measure] [shifts 0 1 2]
/// [center measure] [logs measure and measure][, parts] [on part]</c>.
/// </summary>
internal static class UnitReader
{
    /// <summary>A unit and, with "each", the cells that every one of them takes.</summary>
    public sealed record Reading(UnitDesign Design, (int Columns, int Rows)? Each);

    /// <param name="find">A block to be put inside; reports and returns null where there is none.</param>
    public static Reading? Read(
        string block,
        string letter,
        ScalarNode text,
        Func<Slice, BlockDesign?> find,
        ReadContext context
    )
    {
        ImmutableArray<Slice> words = text.Words();
        int at = 0;
        (int, int)? each = null;
        if (words.Length > 0 && words[0].Text == "each")
        {
            at++;
            each = (1, 1);
            if (TakeGrid(words, ref at, out Sourced<(int, int)> cells))
            {
                each = cells.Value;
            }
        }
        if (at >= words.Length)
        {
            return null;
        }
        Slice keyword = WithoutComma(words[at], out bool comma);
        at++;
        if (keyword.Text == InnerBlockReader.Keyword)
        {
            return
                InnerBlockReader.Read(block, letter, keyword, words[at..], text, find, context)
                    is { } inner
                ? new Reading(inner, each)
                : null;
        }
        if (!UnitKindCatalog.TryFind(keyword.Text, out UnitKind? kind))
        {
            context.Report(
                PP0205_UnknownUnit.Found(
                    keyword.Span,
                    keyword.Text,
                    UnitKindCatalog.All.Select(k => k.Keyword).Append(InnerBlockReader.Keyword)
                )
            );
            return null;
        }
        var places = ImmutableArray.CreateBuilder<Sourced<string>>();
        var parts = ImmutableArray.CreateBuilder<Sourced<string>>();
        Sourced<(int Columns, int Rows)>? grid = null;
        Sourced<Length>? measure = null;
        Sourced<string>? ground = null;
        Sourced<int>? rounds = null;
        FoundationDesign? foundation = null;
        AppliqueDesign? applique = null;
        if (kind is AppliqueBlock && !comma && at < words.Length)
        {
            Slice name = WithoutComma(words[at], out comma);
            at++;
            applique = context.Appliques.GetValueOrDefault(name.Text);
            if (applique is null && !context.MayBeApplique(name.Text))
            {
                context.Report(
                    PP0272_UnknownApplique.Found(name.Span, name.Text, context.Appliques.Keys)
                );
            }
            if (applique is null)
            {
                return null;
            }
        }
        if (kind is FoundationSection && !comma && at < words.Length)
        {
            Slice name = WithoutComma(words[at], out comma);
            at++;
            foundation = context.Foundations.GetValueOrDefault(name.Text);
            if (foundation is null && !context.MayBeFoundation(name.Text))
            {
                context.Report(
                    PP0270_UnknownSection.Found(name.Span, name.Text, context.Foundations.Keys)
                );
            }
            if (foundation is null)
            {
                return null;
            }
        }
        var named = ImmutableArray.CreateBuilder<NamedMeasures>();
        ImmutableArray<Sourced<int>> shifts = [];
        bool commaAhead = words.Skip(at).Any(w => w.Text.EndsWith(','));
        // Before the comma: places, a grid, a measure. Behind it, or where there is none: parts.
        while (!comma && at < words.Length)
        {
            if (words[at].Text == "of")
            {
                measure = TakeMeasure(words, ref at, out comma, context);
                continue;
            }
            if (TakeGrid(words, ref at, out Sourced<(int, int)> cells, out comma))
            {
                grid = cells;
                continue;
            }
            if (commaAhead && TakeRounds(words, ref at, out Sourced<int> count, out comma))
            {
                rounds = count;
                continue;
            }
            if (commaAhead && words[at].Text == "shifts")
            {
                shifts = TakeShifts(words, ref at, out comma);
                continue;
            }
            if (commaAhead && PlaceWords.OfMeasures.Contains(words[at].Text))
            {
                if (TakeNamed(words, ref at, out comma, context) is { } measures)
                {
                    named.Add(measures);
                }
                continue;
            }
            Slice word = WithoutComma(words[at], out bool ends);
            if (!PlaceWords.All.Contains(word.Text))
            {
                if (!commaAhead)
                {
                    break;
                }
                context.Report(
                    PP0206_UnitWordsWithoutMeaning.Found(
                        new UnitProblem(
                            UnitProblemKind.Words,
                            word.Span,
                            $"\"{word.Text}\" is no direction, corner or count",
                            $"A {kind.Name} is written like this: {kind.Example}",
                            Nearest.To(word.Text, PlaceWords.All) is { } nearest
                                ? $"did you mean \"{nearest}\"?"
                                : "part names stand behind the comma"
                        ),
                        letter,
                        block
                    )
                );
            }
            else
            {
                places.Add(ReadContext.Sourced(word));
            }
            comma = ends;
            at++;
        }
        for (; at < words.Length; at++)
        {
            Slice word = WithoutComma(words[at], out _);
            if (word.IsEmpty)
            {
                continue;
            }
            if (word.Text == "on" && at + 1 < words.Length)
            {
                at++;
                ground = ReadContext.Sourced(WithoutComma(words[at], out _));
            }
            else
            {
                parts.Add(ReadContext.Sourced(word));
            }
        }
        var design = new UnitDesign(
            letter,
            ReadContext.Sourced(keyword),
            places.ToImmutable(),
            grid,
            measure,
            parts.ToImmutable(),
            ground,
            text.Span
        )
        {
            Foundation = foundation,
            Applique = applique,
            Rounds = rounds,
            Named = named.ToImmutable(),
            Shifts = shifts,
        };
        return new Reading(design, each);
    }

    private static Slice WithoutComma(Slice word, out bool comma)
    {
        comma = word.Text.EndsWith(',');
        return comma ? word.Sub(0, word.Length - 1) : word;
    }

    // "4 x 4", "4x4": one to three words.
    private static bool TakeGrid(
        ImmutableArray<Slice> words,
        ref int at,
        out Sourced<(int, int)> grid,
        out bool comma
    )
    {
        comma = false;
        foreach (int count in new[] { 3, 1 })
        {
            if (at + count > words.Length)
            {
                continue;
            }
            Slice last = WithoutComma(words[at + count - 1], out bool ends);
            Slice whole = words[at]
                .Scalar.Whole.Sub(words[at].Offset, last.Offset + last.Length - words[at].Offset);
            if (ReadContext.TryGrid(whole.Text, out var cells))
            {
                grid = new(cells, whole.Span);
                comma = ends;
                at += count;
                return true;
            }
        }
        grid = default;
        return false;
    }

    private static bool TakeGrid(
        ImmutableArray<Slice> words,
        ref int at,
        out Sourced<(int, int)> grid
    ) => TakeGrid(words, ref at, out grid, out _);

    // "shifts 0 1 2 1": whole numbers up to the comma or the next word.
    private static ImmutableArray<Sourced<int>> TakeShifts(
        ImmutableArray<Slice> words,
        ref int at,
        out bool comma
    )
    {
        comma = false;
        var shifts = ImmutableArray.CreateBuilder<Sourced<int>>();
        at++;
        while (!comma && at < words.Length)
        {
            Slice word = WithoutComma(words[at], out bool ends);
            if (
                word.Length is 0 or > 4
                || !int.TryParse(
                    word.Text,
                    NumberStyles.AllowLeadingSign,
                    CultureInfo.InvariantCulture,
                    out int shift
                )
            )
            {
                break;
            }
            shifts.Add(new(shift, word.Span));
            comma = ends;
            at++;
        }
        return shifts.ToImmutable();
    }

    // "4 rounds", "1 round".
    private static bool TakeRounds(
        ImmutableArray<Slice> words,
        ref int at,
        out Sourced<int> rounds,
        out bool comma
    )
    {
        comma = false;
        rounds = default;
        if (
            at + 1 >= words.Length
            || WithoutComma(words[at + 1], out bool ends).Text
                is not ("rounds" or "round" or "segments")
            || !ReadContext.TryCount(words[at].Text, out int count)
        )
        {
            return false;
        }
        rounds = new(count, words[at].Span);
        comma = ends;
        at += 2;
        return true;
    }

    // "center 2", "logs 1 and 1/2": measures up to the comma or the next word that is no part of one.
    private static NamedMeasures? TakeNamed(
        ImmutableArray<Slice> words,
        ref int at,
        out bool comma,
        ReadContext context
    )
    {
        comma = false;
        Sourced<string> word = ReadContext.Sourced(words[at]);
        at++;
        var measures = ImmutableArray.CreateBuilder<Sourced<Length>>();
        bool whole = true;
        int first = at;
        while (!comma && at < words.Length)
        {
            Slice last = WithoutComma(words[at], out bool ends);
            bool joins = last.Text == "and";
            if (!joins && !IsMeasureWord(words, at, last.Text))
            {
                break;
            }
            comma = ends;
            at++;
            bool done =
                comma
                || at >= words.Length
                || words[at].Text == "and"
                || !IsMeasureWord(words, at, WithoutComma(words[at], out _).Text);
            if (joins)
            {
                first = at;
            }
            else if (done)
            {
                Slice text = words[first]
                    .Scalar.Whole.Sub(
                        words[first].Offset,
                        last.Offset + last.Length - words[first].Offset
                    );
                if (context.Measure(text, word.Value) is { } length)
                {
                    measures.Add(new(length, text.Span));
                }
                else
                {
                    whole = false;
                }
            }
        }
        // What is no measure has its own message; a word without any is for its kind to say.
        return whole ? new NamedMeasures(word, measures.ToImmutable()) : null;
    }

    // A number that does not count rounds, or a unit behind one.
    private static bool IsMeasureWord(ImmutableArray<Slice> words, int at, string text) =>
        text.Length > 0
        && (
            char.IsDigit(text[0])
            || text[0] is '½' or '¼' or '¾' or '⅛' or '⅜' or '⅝' or '⅞' or '.' or '-' or '−'
            || text is "in" or "cm" or "mm" or "inch" or "inches"
        )
        && (
            at + 1 >= words.Length
            || WithoutComma(words[at + 1], out _).Text is not ("rounds" or "round")
        );

    // "of 1 1/2", "of 1 1/2 in": everything up to the comma.
    private static Sourced<Length>? TakeMeasure(
        ImmutableArray<Slice> words,
        ref int at,
        out bool comma,
        ReadContext context
    )
    {
        comma = false;
        int first = ++at;
        Slice last = default;
        while (at < words.Length && !comma)
        {
            last = WithoutComma(words[at], out comma);
            at++;
        }
        if (first >= words.Length)
        {
            return null;
        }
        Slice whole = words[first]
            .Scalar.Whole.Sub(words[first].Offset, last.Offset + last.Length - words[first].Offset);
        return context.Measure(whole, "measure") is { } length ? new(length, whole.Span) : null;
    }
}
