using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>Reads <c>foundations:</c>: sections drawn by their seam lines.</summary>
internal static class FoundationReader
{
    /// <summary>More pieces than any section that can be sewn on paper.</summary>
    private const int MostPieces = 64;

    public static ImmutableDictionary<string, FoundationDesign> Read(
        MapNode? map,
        ReadContext context
    )
    {
        var found = ImmutableDictionary.CreateBuilder<string, FoundationDesign>(
            StringComparer.Ordinal
        );
        foreach (Entry entry in map?.Entries ?? [])
        {
            if (entry.Value is MapNode value && ReadOne(entry.Key, value, context) is { } design)
            {
                found[entry.Key.Value] = design;
            }
        }
        return found.ToImmutable();
    }

    private static FoundationDesign? ReadOne(ScalarNode key, MapNode map, ReadContext context)
    {
        if (
            ReadContext.Text(map, "grid") is not { } text
            || ReadContext.Text(map, "pieces") is not { } pieces
        )
        {
            return null;
        }
        if (!ReadContext.TryGrid(text.Value, out (int Columns, int Rows) grid))
        {
            context.Report(
                PP0271_UnreadableSection.Found(
                    text.Span,
                    key.Value,
                    $"\"{text.Value}\" is no grid",
                    "write units across x units down: 4 x 6"
                )
            );
            return null;
        }
        var read = ImmutableArray.CreateBuilder<FoundationPiece>();
        bool whole = true;
        foreach (Slice line in pieces.Lines().Select(line => line.Trim()).Where(l => !l.IsEmpty))
        {
            if (Piece(line, read.Count == 0, out string problem) is { } piece)
            {
                read.Add(piece);
                continue;
            }
            whole = false;
            context.Report(
                PP0271_UnreadableSection.Found(
                    line.Span,
                    key.Value,
                    problem,
                    read.Count == 0
                        ? "the first line names the first piece alone: tower"
                        : "write a name and two places on the seam line: sky 0,6 - 2,0"
                )
            );
        }
        if (whole && read.Count is < 2 or > MostPieces)
        {
            context.Report(
                PP0271_UnreadableSection.Found(
                    pieces.Span,
                    key.Value,
                    $"it has {read.Count} pieces",
                    $"name 2 to {MostPieces} pieces, one a line in the order they are sewn"
                )
            );
            return null;
        }
        return whole
            ? new FoundationDesign(key.Value, grid.Columns, grid.Rows, read.ToImmutable(), key.Span)
            : null;
    }

    // "tower", "sky 0,6 - 2,0".
    private static FoundationPiece? Piece(Slice line, bool first, out string problem)
    {
        ImmutableArray<Slice> words = line.Words();
        problem = $"\"{line.Text}\" is no piece";
        if (first)
        {
            problem = words.Length > 1 ? "the first piece has no seam line yet" : problem;
            return words.Length == 1 ? new(words[0].Text, null, line.Span) : null;
        }
        if (
            words.Length != 4
            || words[2].Text is not ("-" or "–" or "to")
            || !TryPlace(words[1].Text, out (Rational, Rational) from)
            || !TryPlace(words[3].Text, out (Rational, Rational) to)
        )
        {
            return null;
        }
        if (from == to)
        {
            problem = "two places that are one make no line";
            return null;
        }
        return new FoundationPiece(words[0].Text, (from, to), line.Span);
    }

    private static bool TryPlace(string text, out (Rational X, Rational Y) place)
    {
        place = default;
        string[] parts = text.Split(',');
        return parts.Length == 2
            && LengthText.TryParseNumber(parts[0], out place.X, out _)
            && LengthText.TryParseNumber(parts[1], out place.Y, out _)
            && place.X.Abs() <= LengthText.LargestInches
            && place.Y.Abs() <= LengthText.LargestInches
            && place.X.Denominator <= 100
            && place.Y.Denominator <= 100;
    }
}
