using System.Collections.Immutable;
using PatternPress.ReadBack.Expecting;
using PatternPress.ReadBack.Reading;

namespace PatternPress.ReadBack.Checks;

/// <summary>
/// Looks for all words of a document in its file, in their order. Long pieces are found first and hold the rest in place,
/// so that one wrong number is told as that number and does not put all that follows out of step.
/// </summary>
internal sealed class WordCheck(ImmutableArray<Expected> expected, ImmutableArray<ReadPage> pages)
{
    /// <summary>Pieces of so many letters hardly stand anywhere by chance.</summary>
    private const int Long = 25;

    /// <summary>A line is hardly shorter; so much of a part that goes on from another page must agree.</summary>
    private const int PartStart = 12;

    /// <summary>So much of what stands in a place is shown in a message.</summary>
    private const int Shown = 60;

    private readonly FlowText _flow = new(pages);
    private readonly List<Misprint> _misprints = [];
    private readonly List<PrintedWords> _found = [];
    private readonly Dictionary<int, HashSet<int>> _pagesOfRows = [];

    public IReadOnlyList<Misprint> Misprints => _misprints;

    public IReadOnlyList<PrintedWords> Found => _found;

    public void Compare()
    {
        int at = 0,
            first = 0;
        for (int i = 0; i < expected.Length; i++)
        {
            string words = expected[i].Bare;
            if (words.Length < Long)
            {
                continue;
            }
            int place = _flow.Text.IndexOf(words, at, StringComparison.Ordinal);
            if (place < 0)
            {
                // Divided between pages, or wrong: told with what stands around it.
                continue;
            }
            Between(first, i, at, place);
            Take(expected[i], place);
            (first, at) = (i + 1, place + words.Length);
        }
        Between(first, expected.Length, at, _flow.Text.Length);
    }

    /// <summary>What is expected between two long pieces must be all that stands there.</summary>
    private void Between(int first, int end, int at, int to)
    {
        var wrong = new List<Expected>();
        int place = at;
        for (int i = first; i < end; i++)
        {
            if (expected[i].IsPageNumber)
            {
                while (place < to && char.IsAsciiDigit(_flow.Text[place]))
                {
                    _flow.Used[place++] = true;
                }
                continue;
            }
            if (Stands(expected[i], place, to))
            {
                Take(expected[i], place);
                place += expected[i].Bare.Length;
            }
            else if (Resumes(i, end, place, to) is { } next)
            {
                wrong.Add(expected[i]);
                place = next;
            }
            else
            {
                wrong.Add(expected[i]);
            }
        }
        if (wrong.Count == 0 && place == to)
        {
            return;
        }
        wrong = WithoutDivided(wrong, at, to);
        List<(int From, int To)> left = Left(at, to);
        for (int i = 0; i < wrong.Count; i++)
        {
            string found = i < left.Count ? Show(left[i]) : "nothing";
            _misprints.Add(
                new Misprint(
                    MisprintKind.Words,
                    _flow.PageAt(i < left.Count ? left[i].From : Math.Min(place, to)),
                    $"{Told(wrong[i])} should be here; found is {found}"
                )
            );
        }
        foreach ((int From, int To) rest in left.Skip(wrong.Count))
        {
            _misprints.Add(
                new Misprint(
                    MisprintKind.Words,
                    _flow.PageAt(rest.From),
                    $"{Show(rest)} stands here without being asked for"
                )
            );
        }
    }

    private bool Stands(Expected piece, int place, int to) =>
        place + piece.Bare.Length <= to
        && string.CompareOrdinal(_flow.Text, place, piece.Bare, 0, piece.Bare.Length) == 0;

    // After a piece that is not there: the nearest place where the next two go on.
    private int? Resumes(int at, int end, int place, int to)
    {
        string next = string.Concat(
            expected.Skip(at + 1).Take(Math.Min(2, end - at - 1)).Select(piece => piece.Bare)
        );
        if (next.Length == 0)
        {
            return to;
        }
        int found = _flow.Text.IndexOf(next, place, to - place, StringComparison.Ordinal);
        return found < 0 ? null : found;
    }

    /// <summary>
    /// Takes what is there in parts. Only where a piece or a row of a table goes on over a page may the order be another, as
    /// columns beside it come between; and on each page what is expected first stands first.
    /// </summary>
    /// <returns>What is still not there.</returns>
    private List<Expected> WithoutDivided(List<Expected> pieces, int at, int to)
    {
        var found = new List<(Expected Piece, List<(int From, int Length)> Parts)>();
        var reached = new Dictionary<int, int>();
        foreach (Expected piece in pieces)
        {
            if (PartsOf(piece.Bare, at, to, reached) is { } parts)
            {
                found.Add((piece, parts));
            }
        }
        foreach ((Expected piece, List<(int From, int Length)> parts) in found)
        {
            parts.ForEach(part => Note(piece, part.From));
        }
        if (
            found.All(one =>
                one.Parts.Count == 1
                && _pagesOfRows.GetValueOrDefault(one.Piece.Row) is not { Count: > 1 }
            )
        )
        {
            foreach ((int from, int length) in found.SelectMany(one => one.Parts))
            {
                Array.Fill(_flow.Used, false, from, length);
            }
            return pieces;
        }
        _found.AddRange(
            found.Select(one => new PrintedWords(
                one.Piece.Kind,
                _flow.PageAt(one.Parts[0].From),
                one.Piece.Words,
                one.Piece.Heads
            ))
        );
        return [.. pieces.Where(piece => !found.Any(one => ReferenceEquals(one.Piece, piece)))];
    }

    private List<(int From, int Length)>? PartsOf(
        string words,
        int at,
        int to,
        Dictionary<int, int> reached
    )
    {
        var parts = new List<(int From, int Length)>();
        int done = 0;
        while (done < words.Length)
        {
            (int from, int length) = LongestPart(words.AsSpan(done), at, to);
            int page = _flow.PageAt(from);
            if (
                length == 0
                || from < reached.GetValueOrDefault(page)
                || (parts.Count > 0 && page <= _flow.PageAt(parts[^1].From))
            )
            {
                return null;
            }
            parts.Add((from, length));
            done += length;
            at = from + length;
        }
        foreach ((int from, int length) in parts)
        {
            Array.Fill(_flow.Used, true, from, length);
            reached[_flow.PageAt(from)] = from + length;
        }
        return parts;
    }

    /// <summary>Where most of the beginning of some words stands that belongs to nothing yet.</summary>
    private (int From, int Length) LongestPart(ReadOnlySpan<char> words, int at, int to)
    {
        (int From, int Length) longest = default;
        ReadOnlySpan<char> text = _flow.Text.AsSpan(0, to);
        ReadOnlySpan<char> start = words[..Math.Min(words.Length, PartStart)];
        for (; at + start.Length <= to; at++)
        {
            int found = text[at..].IndexOf(start);
            if (found < 0)
            {
                break;
            }
            at += found;
            int length = text[at..].CommonPrefixLength(words);
            int used = _flow.Used.AsSpan(at, length).IndexOf(true);
            length = used < 0 ? length : used;
            if (length > longest.Length)
            {
                longest = (at, length);
            }
        }
        return longest;
    }

    private List<(int From, int To)> Left(int at, int to)
    {
        var left = new List<(int, int)>();
        for (int i = at; i < to; i++)
        {
            if (_flow.Used[i])
            {
                continue;
            }
            int start = i;
            while (i < to && !_flow.Used[i])
            {
                i++;
            }
            left.Add((start, i));
        }
        return left;
    }

    private void Take(Expected piece, int place)
    {
        Array.Fill(_flow.Used, true, place, piece.Bare.Length);
        _found.Add(new PrintedWords(piece.Kind, _flow.PageAt(place), piece.Words, piece.Heads));
        Note(piece, place);
    }

    // On which pages a row of a table stands.
    private void Note(Expected piece, int place)
    {
        if (piece.Row > 0)
        {
            if (!_pagesOfRows.TryGetValue(piece.Row, out HashSet<int>? pages))
            {
                _pagesOfRows.Add(piece.Row, pages = []);
            }
            pages.Add(_flow.PageAt(place));
        }
    }

    private string Show((int From, int To) rest)
    {
        string words = _flow.Text[rest.From..rest.To];
        return words.Length <= Shown ? $"\"{words}\"" : $"\"{words[..Shown]}…\"";
    }

    private static string Told(Expected piece)
    {
        string words =
            piece.Words.Length <= Shown ? $"\"{piece.Words}\"" : $"\"{piece.Words[..Shown]}…\"";
        return piece.Kind switch
        {
            WordsKind.Cell => piece.Heads.IsEmpty
                ? $"the table cell {words}"
                : $"the table cell {words} below \"{string.Join("\", \"", piece.Heads)}\"",
            WordsKind.Caption => $"the caption {words}",
            WordsKind.ListLabel => $"the number or mark {words}",
            WordsKind.Heading => $"the heading {words}",
            WordsKind.Contents => $"the line {words} of the contents",
            _ => words,
        };
    }
}
