using System.Collections.Immutable;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Source;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>Reads <c>colorings:</c>: "lamp sky=A ray=B core=C" and "plain A".</summary>
internal static class ColoringReader
{
    private const string Plain = "plain";

    /// <param name="blockMap">The source of the blocks: a block that could not be read is not unknown.</param>
    /// <param name="blocks">The blocks that could be read.</param>
    public static ImmutableArray<Coloring> Read(
        MapNode? map,
        MapNode? blockMap,
        ImmutableArray<BlockDesign> blocks,
        ReadContext context
    )
    {
        var colorings = ImmutableArray.CreateBuilder<Coloring>();
        foreach (Entry entry in map?.Entries ?? [])
        {
            if (entry.Value is not ScalarNode { IsEmpty: false } text)
            {
                continue;
            }
            ImmutableArray<Slice> words = Pairs(text);
            string key = entry.Key.Value;
            if (words[0].Text == Plain)
            {
                if (ReadPlain(key, words, text, context) is { } fabric)
                {
                    var single = ImmutableDictionary<string, string>.Empty.Add(
                        Coloring.PlainPart,
                        fabric
                    );
                    colorings.Add(new Coloring(key, null, single, colorings.Count, entry.Key.Span));
                }
                continue;
            }
            if (blockMap?.Find(words[0].Text) is null)
            {
                if (!context.IsComplete)
                {
                    continue;
                }
                context.Report(
                    PP0209_ColoringOfUnknownBlock.Found(
                        words[0].Span,
                        words[0].Text,
                        key,
                        (blockMap?.Entries.Select(e => e.Key.Value) ?? []).Append(Plain)
                    )
                );
                continue;
            }
            BlockDesign? block = blocks.FirstOrDefault(b => b.Key == words[0].Text);
            ImmutableDictionary<string, string> fabrics = ReadFabrics(
                key,
                words[1..],
                block,
                text,
                context
            );
            colorings.Add(
                new Coloring(key, words[0].Text, fabrics, colorings.Count, entry.Key.Span)
            );
        }
        return colorings.ToImmutable();
    }

    /// <summary>The words of a coloring: a pair is one however it is spaced, and a comma may stand behind it.</summary>
    private static ImmutableArray<Slice> Pairs(ScalarNode text)
    {
        var pairs = new List<Slice>();
        bool open = false;
        foreach (Slice word in text.Words())
        {
            Slice bare = word.Text is [.., _, ','] ? word.Sub(0, word.Length - 1) : word;
            // "sky =A" goes on the word before it, and anything after "sky=" on that.
            bool joins = pairs.Count > 1 && (open || bare.Characters[0] == '=');
            open = bare.Characters[^1] == '=';
            if (joins)
            {
                Slice before = pairs[^1];
                pairs[^1] = text.Whole.Sub(
                    before.Offset,
                    bare.Offset + bare.Length - before.Offset
                );
            }
            else
            {
                pairs.Add(bare);
            }
        }
        return [.. pairs];
    }

    private static string? ReadPlain(
        string key,
        ImmutableArray<Slice> words,
        ScalarNode text,
        ReadContext context
    )
    {
        if (words.Length == 2)
        {
            return context.FabricName(words[1], $"coloring \"{key}\"")?.Value;
        }
        context.Report(
            PP0230_WrongNumberOfEntries.Found(
                text.Span,
                $"the plain coloring \"{key}\"",
                "one fabric: plain A",
                words.Length - 1
            )
        );
        return null;
    }

    private static ImmutableDictionary<string, string> ReadFabrics(
        string key,
        ImmutableArray<Slice> words,
        BlockDesign? block,
        ScalarNode text,
        ReadContext context
    )
    {
        var fabrics = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        var bound = new HashSet<string>(StringComparer.Ordinal);
        foreach (Slice word in words)
        {
            int equals = word.Characters.IndexOf('=');
            if (equals < 0)
            {
                context.Report(
                    PP0221_UnknownWord.Found(word.Span, word.Text, "part=fabric pair", ["sky=A"])
                );
                continue;
            }
            Slice part = word.Sub(0, equals).Trim(),
                fabric = word.From(equals + 1).Trim();
            if (
                block is not null
                && !block.Parts.Any(p => p.Value == part.Text)
                && !context.MayBePart(block.Key, part.Text)
            )
            {
                context.Report(
                    PP0211_UnknownPartInColoring.Found(
                        part.Span,
                        part.Text,
                        key,
                        block.Key,
                        block.Parts.Select(p => p.Value)
                    )
                );
            }
            if (!bound.Add(part.Text))
            {
                context.Report(
                    PP0229_RepeatedName.Found(
                        part.Span,
                        part.Text,
                        $"coloring \"{key}\"",
                        words.First(w => w.Text.Split('=')[0].Trim() == part.Text).Span
                    )
                );
            }
            if (context.FabricName(fabric, $"coloring \"{key}\"") is { } known)
            {
                fabrics[part.Text] = known.Value;
            }
        }
        if (block is not null)
        {
            List<string> missing =
            [
                .. block.Parts.Select(p => p.Value).Where(p => !bound.Contains(p)),
            ];
            if (missing.Count > 0)
            {
                context.Report(
                    PP0210_UnboundPart.Found(text.Span, key, block.Key, missing, block.Span)
                );
            }
        }
        return fabrics.ToImmutable();
    }
}
