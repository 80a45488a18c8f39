using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Source;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>Reads <c>blocks:</c>: size, map, units, parts.</summary>
internal static class BlockReader
{
    /// <summary>More cells than any block that can be sewn.</summary>
    private const int MostCells = 64;

    public static ImmutableArray<BlockDesign> Read(MapNode? map, ReadContext context)
    {
        var read = new Dictionary<string, BlockDesign?>(StringComparer.Ordinal);
        var open = new HashSet<string>(StringComparer.Ordinal);
        return
        [
            .. (map?.Entries ?? []).Select(entry => Reach(entry)).OfType<BlockDesign>().Distinct(),
        ];

        // A block inside another is read before it.
        BlockDesign? Reach(Entry entry)
        {
            string key = entry.Key.Value;
            if (!read.TryGetValue(key, out BlockDesign? block))
            {
                open.Add(key);
                block = entry.Value is MapNode value
                    ? ReadBlock(entry.Key, value, name => Inside(key, name), context)
                    : null;
                open.Remove(key);
                read.Add(key, block);
            }
            return block;
        }

        BlockDesign? Inside(string block, Slice name)
        {
            if (map!.Find(name.Text) is not { } entry)
            {
                if (context.IsComplete)
                {
                    context.Report(
                        PP0275_UnusableInnerBlock.Unknown(
                            name.Span,
                            name.Text,
                            block,
                            map.Entries.Select(e => e.Key.Value)
                        )
                    );
                }
                return null;
            }
            if (open.Contains(name.Text))
            {
                context.Report(PP0275_UnusableInnerBlock.Itself(name.Span, name.Text, block));
                return null;
            }
            return Reach(entry);
        }
    }

    private static BlockDesign? ReadBlock(
        ScalarNode key,
        MapNode map,
        Func<Slice, BlockDesign?> find,
        ReadContext context
    )
    {
        ImmutableArray<Sourced<string>>? declared = ReadParts(map);
        ImmutableArray<ImmutableArray<Slice>> rows = ReadMap(key.Value, map, context);
        UnitTexts units = ReadUnits(key.Value, map, find, context);
        (Length Width, Length Height)? size = ReadSize(map, context);
        if (rows.IsEmpty)
        {
            return null;
        }
        int columns = rows[0].Length;
        ImmutableArray<UnitRegion> regions = MapRegions.Find(key.Value, rows, units.Units, context);
        ReportUnused(key.Value, units, rows, context);
        ImmutableArray<Sourced<string>> parts =
            declared ?? [.. PartsOf(units.Units.Values).DistinctBy(p => p.Value)];
        if (declared is not null)
        {
            ReportParts(key.Value, parts, map["parts"]!.Span, units.Units.Values, context);
        }
        ImmutableArray<Rational>? across = ReadShares(key.Value, map, "columns", columns, context),
            down = ReadShares(key.Value, map, "rows", rows.Length, context);
        if (across is null || down is null)
        {
            return null;
        }
        // Without a size the shares give the proportion, and every quilt size must say how large blocks are.
        bool sized = map.Find("size") is not null;
        (Length Width, Length Height)? proportion = sized
            ? size
            : (Sum(across.Value), Sum(down.Value));
        if (proportion is not { } finished)
        {
            return null;
        }
        var design = new BlockDesign(
            key.Value,
            ReadContext.Text(map, "name")?.Value.Trim() ?? Capitalized(key.Value),
            finished.Width,
            finished.Height,
            sized,
            parts,
            across.Value,
            down.Value,
            regions,
            ReadContext.Text(map, "notes")?.Value,
            key.Span
        );
        return InnerBlockReader.Expand(design, context);
    }

    private static ImmutableArray<Sourced<string>>? ReadParts(MapNode map) =>
        map["parts"] switch
        {
            ScalarNode { IsEmpty: false } text =>
            [
                .. text.Words()
                    .Select(w =>
                        ReadContext.Sourced(w.Text.EndsWith(',') ? w.Sub(0, w.Length - 1) : w)
                    ),
            ],
            ListNode list => [.. list.Items.OfType<ScalarNode>().Select(ReadContext.Sourced)],
            _ => null,
        };

    private static ImmutableArray<ImmutableArray<Slice>> ReadMap(
        string block,
        MapNode map,
        ReadContext context
    )
    {
        // A drawing whose rows run together has its finding.
        if (ReadContext.Text(map, "map") is not { RunsTogether: false } text)
        {
            return [];
        }
        ImmutableArray<ImmutableArray<Slice>> rows =
        [
            .. text.Lines().Select(line => line.Words()).Where(words => words.Length > 0),
        ];
        if (rows.IsEmpty)
        {
            return [];
        }
        if (rows.Length > MostCells || rows.Any(row => row.Length > MostCells))
        {
            context.Report(
                PP0220_TooManyBlocks.Found(
                    text.Span,
                    $"the map of block \"{block}\"",
                    rows.Max(r => r.Length),
                    rows.Length,
                    MostCells
                )
            );
            return [];
        }
        if (ReportTogether(block, map, rows, context))
        {
            return [];
        }
        bool even = true;
        for (int number = 1; number <= rows.Length; number++)
        {
            ImmutableArray<Slice> row = rows[number - 1];
            if (row.Length != rows[0].Length)
            {
                even = false;
                Slice last = row[^1];
                Slice line = row[0]
                    .Scalar.Whole.Sub(row[0].Offset, last.Offset + last.Length - row[0].Offset);
                context.Report(
                    PP0201_UnevenMapRows.Found(
                        $"block \"{block}\"",
                        line.Span,
                        number,
                        row.Length,
                        rows[0][0].Span,
                        rows[0].Length
                    )
                );
            }
        }
        return even ? rows : [];
    }

    /// <summary>Letters drawn without blanks between them are one fault, whatever follows from it.</summary>
    private static bool ReportTogether(
        string block,
        MapNode map,
        ImmutableArray<ImmutableArray<Slice>> rows,
        ReadContext context
    )
    {
        List<string> letters =
        [
            .. ReadContext.Map(map, "units")?.Entries.Select(unit => unit.Key.Value) ?? [],
        ];
        Slice? first = null;
        int count = 0;
        foreach (ImmutableArray<Slice> row in rows)
        {
            foreach (Slice cell in row)
            {
                if (
                    cell.Length > 1
                    && !letters.Contains(cell.Text)
                    && Wording.Apart(cell.Text, letters) is not null
                )
                {
                    first ??= cell;
                    count++;
                    break;
                }
            }
        }
        if (first is not { } word)
        {
            return false;
        }
        context.Report(
            PP0202_LetterWithoutUnit.Together(
                word.Span,
                word.Text,
                block,
                Wording.Apart(word.Text, letters)!,
                count
            )
        );
        return true;
    }

    private sealed record UnitTexts(
        ImmutableDictionary<string, UnitReader.Reading?> Units,
        ImmutableArray<ScalarNode> Letters
    );

    private static UnitTexts ReadUnits(
        string block,
        MapNode map,
        Func<Slice, BlockDesign?> find,
        ReadContext context
    )
    {
        var units = ImmutableDictionary.CreateBuilder<string, UnitReader.Reading?>(
            StringComparer.Ordinal
        );
        var letters = ImmutableArray.CreateBuilder<ScalarNode>();
        foreach (Entry entry in ReadContext.Map(map, "units")?.Entries ?? [])
        {
            letters.Add(entry.Key);
            units[entry.Key.Value] = entry.Value is ScalarNode text
                ? UnitReader.Read(block, entry.Key.Value, text, find, context)
                : null;
            if (units[entry.Key.Value] is null && entry.Value is ScalarNode misread)
            {
                context.AddMisread(
                    block,
                    misread
                        .Words()
                        .Select(word =>
                            word.Text == InnerBlockReader.Keyword
                                ? ReadContext.AnyPart
                                : word.Text.TrimEnd(',')
                        )
                );
            }
        }
        return new UnitTexts(units.ToImmutable(), letters.ToImmutable());
    }

    private static void ReportUnused(
        string block,
        UnitTexts units,
        ImmutableArray<ImmutableArray<Slice>> rows,
        ReadContext context
    )
    {
        var drawn = new HashSet<string>(StringComparer.Ordinal);
        foreach (ImmutableArray<Slice> row in rows)
        {
            foreach (Slice cell in row)
            {
                drawn.Add(cell.Text);
            }
        }
        foreach (ScalarNode letter in units.Letters)
        {
            if (!drawn.Contains(letter.Value))
            {
                context.Report(
                    PP0203_UnitNotInMap.Found(
                        letter.Span,
                        letter.Value,
                        block,
                        rows[0][0].Scalar.Span
                    )
                );
            }
        }
    }

    private static IEnumerable<Sourced<string>> PartsOf(IEnumerable<UnitReader.Reading?> units)
    {
        foreach (
            UnitDesign? unit in units
                .Select(u => u?.Design)
                .Sorted(
                    (a, b) =>
                        (a?.Span.StartLine ?? 0, a?.Span.StartColumn ?? 0).CompareTo(
                            (b?.Span.StartLine ?? 0, b?.Span.StartColumn ?? 0)
                        )
                )
        )
        {
            if (unit is null)
            {
                continue;
            }
            foreach (Sourced<string> part in unit.Parts)
            {
                yield return part;
            }
            if (unit.Ground is { } ground)
            {
                yield return ground;
            }
        }
    }

    private static void ReportParts(
        string block,
        ImmutableArray<Sourced<string>> parts,
        Span declared,
        IEnumerable<UnitReader.Reading?> units,
        ReadContext context
    )
    {
        var names = parts.Select(p => p.Value).ToHashSet(StringComparer.Ordinal);
        var used = new HashSet<string>(StringComparer.Ordinal);
        bool whole = true;
        List<UnitReader.Reading?> all = [.. units];
        foreach (Sourced<string> part in PartsOf(all))
        {
            used.Add(part.Value);
            if (!names.Contains(part.Value))
            {
                whole = false;
                context.Report(
                    PP0208_UnknownPart.Found(
                        part.Span,
                        part.Value,
                        block,
                        parts.Select(p => p.Value),
                        declared
                    )
                );
            }
        }
        // With a unit misread or not reached, or a part misspelt, "never used" would only be noise.
        if (!whole || all.Contains(null) || !context.IsComplete)
        {
            return;
        }
        foreach (Sourced<string> part in parts)
        {
            if (!used.Contains(part.Value))
            {
                context.Report(PP0226_UnusedPart.Found(part.Span, part.Value, block));
            }
        }
    }

    private static (Length Width, Length Height)? ReadSize(MapNode map, ReadContext context)
    {
        if (ReadContext.Text(map, "size") is not { } text)
        {
            return null;
        }
        Slice whole = text.Whole;
        int by = text.Value.IndexOfAny(['x', '×']);
        if (by < 0)
        {
            return context.Measure(whole.Trim(), "block size") is { } side ? (side, side) : null;
        }
        return
            context.Measure(whole.Sub(0, by).Trim(), "block width") is { } width
            && context.Measure(whole.From(by + 1).Trim(), "block height") is { } height
            ? (width, height)
            : null;
    }

    // Without the key all columns are alike.
    private static ImmutableArray<Rational>? ReadShares(
        string block,
        MapNode map,
        string key,
        int count,
        ReadContext context
    )
    {
        if (map[key] is not { } node)
        {
            return [.. Enumerable.Repeat(Rational.One, count)];
        }
        ImmutableArray<Slice> words = node switch
        {
            // With commas a share may be a mixed number: "1 1/2, 3, 1 1/2".
            ScalarNode text when text.Value.Contains(',') => text.Whole.Split(','),
            ScalarNode text => text.Words(),
            ListNode list => [.. list.Items.OfType<ScalarNode>().Select(s => s.Whole.Trim())],
            _ => [],
        };
        if (words.Length != count)
        {
            context.Report(
                PP0225_GridDoesNotMatchMap.Found(
                    node.Span,
                    key,
                    block,
                    words.Length,
                    map["map"]!.Span,
                    count
                )
            );
            return null;
        }
        var shares = ImmutableArray.CreateBuilder<Rational>(count);
        foreach (Slice word in words)
        {
            if (!LengthText.TryParseNumber(word.Text, out Rational share, out string problem))
            {
                context.Report(PP0215_NotAMeasure.Found(word.Span, $"{key} share", problem));
                return null;
            }
            if (share.Sign <= 0 || share > LengthText.LargestInches)
            {
                context.Report(
                    PP0216_MeasureOutOfRange.NotPositive(
                        word.Span,
                        $"{key} share",
                        Length.FromInches(share)
                    )
                );
                return null;
            }
            shares.Add(share);
        }
        return shares.MoveToImmutable();
    }

    private static Length Sum(ImmutableArray<Rational> shares) =>
        Length.FromInches(shares.Aggregate(Rational.Zero, (sum, share) => sum + share));

    private static string Capitalized(string key) =>
        key.Length == 0 ? key : char.ToUpperInvariant(key[0]) + key[1..].Replace('-', ' ');
}
