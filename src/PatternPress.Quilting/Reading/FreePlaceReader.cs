using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>Reads <c>places:</c>, one block a line: "S at 0, 12", "T/90 9 at 12, 0", "P 6 x 12 at 12, 9".</summary>
internal static class FreePlaceReader
{
    /// <summary>Far beyond any quilt.</summary>
    private const int MostPlaces = 2_000;

    /// <returns>Null where a line could not be read.</returns>
    public static Sourced<ImmutableArray<FreePlace>>? Read(
        ScalarNode text,
        ImmutableArray<Coloring> known,
        ReadContext context
    )
    {
        ImmutableArray<Slice> lines =
        [
            .. text.Lines().Select(l => l.Trim()).Where(l => !l.IsEmpty),
        ];
        if (lines.Length > MostPlaces)
        {
            context.Report(
                PP0220_TooManyBlocks.Found(text.Span, "places", lines.Length, 1, MostPlaces)
            );
            return null;
        }
        FreePlace?[] places = [.. lines.Select(line => ReadLine(line, known, context))];
        return places.Length == 0 || places.Contains(null)
            ? null
            : new([.. places.OfType<FreePlace>()], text.Span);
    }

    private static FreePlace? ReadLine(
        Slice line,
        ImmutableArray<Coloring> known,
        ReadContext context
    )
    {
        ImmutableArray<Slice> words = line.Words();
        int at = -1;
        for (int i = 1; i < words.Length && at < 0; i++)
        {
            at = words[i].Text == "at" ? i : -1;
        }
        ImmutableArray<Slice> distances =
            at < 0 || at + 1 >= words.Length
                ? []
                : line.From(words[at + 1].Offset - line.Offset).Split(',');
        if (distances.Length != 2)
        {
            context.Report(
                PP0230_WrongNumberOfEntries.Found(
                    line.Span,
                    "a place",
                    "a coloring, at, its distance from the left and from the top: S at 0, 12",
                    distances.Length
                )
            );
            return null;
        }
        FillCell? cell = FillReader.ReadCell(words[0], known, context);
        Length? left = context.Measure(distances[0].Trim(), "distance from the left", true),
            top = context.Measure(distances[1].Trim(), "distance from the top", true);
        (Length, Length)? size = null;
        if (at > 1)
        {
            Slice whole = line.Sub(
                words[1].Offset - line.Offset,
                words[at - 1].Offset + words[at - 1].Length - words[1].Offset
            );
            int by = whole.Text.IndexOfAny(['x', '×']);
            Length? width = context.Measure(
                    by < 0 ? whole : whole.Sub(0, by).Trim(),
                    "width of a place"
                ),
                height = by < 0
                    ? width
                    : context.Measure(whole.From(by + 1).Trim(), "height of a place");
            if (width is not { } wide || height is not { } high)
            {
                return null;
            }
            size = (wide, high);
        }
        return cell is null || left is not { } x || top is not { } y
            ? null
            : new FreePlace(cell, x, y, size, line.Span);
    }
}
