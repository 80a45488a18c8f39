using System.Collections.Immutable;
using PatternPress.Quilting.Tables;

namespace PatternPress.Booklet.Words;

/// <summary>
/// The functions by which words quote the computed figures of a pattern: <c>{{ yards "A" "throw" }}</c>. Each takes
/// the size last; without it, the figures of all sizes are told.
/// </summary>
public static class PatternWords
{
    /// <summary>The functions of a pattern.</summary>
    /// <param name="sections">Names of the sections that a text may point to.</param>
    public static WordData Of(
        PrintedTables tables,
        NumberWords numbers,
        IEnumerable<string> sections
    )
    {
        var quotes = new Quotes(tables, numbers, [.. sections.Order(StringComparer.Ordinal)]);
        WordData data = WordData.Empty;
        foreach (WordFunction function in quotes.All())
        {
            data = data.With(function.Name, function);
        }
        return data;
    }

    private sealed class Quotes(
        PrintedTables tables,
        NumberWords numbers,
        ImmutableArray<string> sections
    )
    {
        private Labels Labels => numbers.Labels;

        private ImmutableArray<string> SizeKeys => [.. tables.Sizes.Select(s => s.Key)];

        private ImmutableArray<string> FabricKeys => [.. tables.Fabrics.Select(f => f.Key)];

        public IEnumerable<WordFunction> All() =>
            [
                new("yards", 1, 1, Yards),
                new("size", 1, 0, a => Sized(a, 0, i => Finished(tables.Sizes[i]))),
                new("name", 1, 0, a => Sized(a, 0, i => Name(tables.Sizes[i].Name))),
                new("blocks", 0, 1, a => Sized(a, 0, i => Number(tables.Sizes[i].Blocks))),
                new("count", 1, 1, Count),
                new("finished", 1, 1, a => BlockSize(a, finished: true)),
                new("unfinished", 1, 1, a => BlockSize(a, finished: false)),
                new("cut", 1, 1, Cut),
                new("strips", 1, 1, Strips),
                new("fabric", 1, 0, Fabric),
                new("page", 1, 0, a => Section(a, "page")),
                new("section", 1, 0, a => Section(a, "section")),
            ];

        private string Finished(SizeColumn size) => numbers.Size(size.Width, size.Height);

        private static string Name(string name) => MarkdownText.Escape(name);

        private static string Number(long number) => number.ToString();

        private WordAnswer Yards(ImmutableArray<object?> given)
        {
            if (!Text(given, 0, out string key))
            {
                return WrongValue("yards");
            }
            RequirementsTable all = tables.Requirements;
            Func<int, RequirementCell?>? bought = key switch
            {
                "binding" => all.Binding.FirstOrDefault() is { } row ? i => row.BySize[i] : null,
                "backing" => all.Backing.FirstOrDefault() is { } row ? i => row.BySize[i] : null,
                // What the requirements print in bold: all purposes together.
                _ => all.Purchases().FirstOrDefault(p => p.Fabric == key) is { } purchase
                    ? purchase.Bought
                    : null,
            };
            return bought is null
                ? new WordProblem(WordProblemKind.UnknownFabric, key, FabricKeys)
                : Sized(
                    given,
                    1,
                    i => bought(i) is { } cell ? numbers.Bought(cell) : Labels["none"]
                );
        }

        private WordAnswer Count(ImmutableArray<object?> given)
        {
            if (!Text(given, 0, out string key))
            {
                return WrongValue("count");
            }
            List<BlockRow> rows =
            [
                .. tables.Blocks.Where(b => b.Coloring == key || (b.Block ?? "") == key),
            ];
            if (rows.Count > 0)
            {
                return Sized(given, 1, i => Number(rows.Sum(r => r.BySize[i]?.Count ?? 0)));
            }
            foreach (UnitRow unit in tables.Units.SelectMany(u => u.Rows))
            {
                if (unit.Label == key)
                {
                    return Sized(given, 1, i => Number(unit.BySize[i]?.Needed ?? 0));
                }
            }
            foreach (CutRow cut in tables.Cutting.SelectMany(c => c.Rows))
            {
                if (cut.Id == key)
                {
                    return Sized(given, 1, i => Number(cut.BySize[i]?.Count ?? 0));
                }
            }
            return new WordProblem(
                WordProblemKind.UnknownThing,
                key,
                [
                    .. tables
                        .Blocks.Select(b => b.Coloring)
                        .Concat(tables.Units.SelectMany(u => u.Rows).Select(r => r.Label))
                        .Concat(tables.Cutting.SelectMany(c => c.Rows).Select(r => r.Id))
                        .Distinct(),
                ]
            );
        }

        private WordAnswer BlockSize(ImmutableArray<object?> given, bool finished)
        {
            if (!Text(given, 0, out string key))
            {
                return WrongValue(finished ? "finished" : "unfinished");
            }
            BlockRow? row = tables.Blocks.FirstOrDefault(b => b.Block == key || b.Coloring == key);
            return row is null
                ? new WordProblem(
                    WordProblemKind.UnknownThing,
                    key,
                    [.. tables.Blocks.Select(b => b.Block ?? b.Coloring).Distinct()]
                )
                : Sized(
                    given,
                    1,
                    i =>
                        row.BySize[i] is not { } cell ? Labels["none"]
                        : finished ? numbers.Square(cell.FinishedWidth, cell.FinishedHeight)
                        : numbers.Square(cell.UnfinishedWidth, cell.UnfinishedHeight)
                );
        }

        private WordAnswer Cut(ImmutableArray<object?> given)
        {
            if (!Text(given, 0, out string id))
            {
                return WrongValue("cut");
            }
            CutRow? row = tables.Cutting.SelectMany(c => c.Rows).FirstOrDefault(r => r.Id == id);
            return row is null
                ? new WordProblem(
                    WordProblemKind.UnknownThing,
                    id,
                    [.. tables.Cutting.SelectMany(c => c.Rows).Select(r => r.Id)]
                )
                : Sized(
                    given,
                    1,
                    i =>
                        row.BySize[i] is { } cell
                            ? numbers.Square(cell.Width, cell.Height)
                            : Labels["none"]
                );
        }

        private WordAnswer Strips(ImmutableArray<object?> given)
        {
            if (!Text(given, 0, out string key))
            {
                return WrongValue("strips");
            }
            List<CuttingTable> cuttings = [.. tables.Cutting.Where(c => c.Fabric == key)];
            return cuttings.Count == 0
                ? new WordProblem(WordProblemKind.UnknownFabric, key, FabricKeys)
                : Sized(
                    given,
                    1,
                    i => Number(cuttings.Sum(c => c.BySize[i]?.Strips.Sum(s => s.Count) ?? 0))
                );
        }

        private WordAnswer Fabric(ImmutableArray<object?> given)
        {
            if (!Text(given, 0, out string key))
            {
                return WrongValue("fabric");
            }
            FabricLabel? fabric = tables.Fabrics.FirstOrDefault(f => f.Key == key);
            return fabric is null
                ? new WordProblem(WordProblemKind.UnknownFabric, key, FabricKeys)
                : Labels.Format(
                    "fabric-called",
                    MarkdownText.Escape(fabric.Name),
                    MarkdownText.Escape(fabric.Key)
                );
        }

        private WordAnswer Section(ImmutableArray<object?> given, string what)
        {
            if (!Text(given, 0, out string name))
            {
                return WrongValue(what);
            }
            return !sections.Contains(name, StringComparer.Ordinal)
                ? new WordProblem(WordProblemKind.UnknownThing, name, sections)
                : $"[{name}]({what}:{name})";
        }

        /// <summary>The figure of the size that is named at a place among the arguments, or of all sizes.</summary>
        private WordAnswer Sized(ImmutableArray<object?> given, int at, Func<int, string> figure)
        {
            if (given.Length <= at)
            {
                return new Sized(
                    [.. tables.Sizes.Select((s, i) => (Name(s.Name), figure(i)))],
                    Labels["or"]
                );
            }
            if (!Text(given, at, out string key))
            {
                return WrongValue("size");
            }
            int index = SizeKeys.IndexOf(key, StringComparer.Ordinal);
            return index < 0
                ? new WordProblem(WordProblemKind.UnknownSize, key, SizeKeys)
                : figure(index);
        }

        private static WordProblem WrongValue(string function) =>
            new(WordProblemKind.WrongValues, function, []);

        private static bool Text(ImmutableArray<object?> given, int at, out string text)
        {
            text = at < given.Length ? given[at] as string ?? "" : "";
            return text.Length > 0;
        }
    }
}
