using System.Collections.Immutable;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Techniques;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>Reads <c>methods:</c>: the technique for a kind of unit, or for one letter of a block ("lamp.G").</summary>
internal static class MethodReader
{
    public static ImmutableDictionary<string, Sourced<string>> Read(
        MapNode? map,
        ImmutableArray<BlockDesign> blocks,
        ReadContext context
    )
    {
        var methods = ImmutableDictionary.CreateBuilder<string, Sourced<string>>(
            StringComparer.Ordinal
        );
        foreach (Entry entry in map?.Entries ?? [])
        {
            if (entry.Value is not ScalarNode { IsEmpty: false } text)
            {
                continue;
            }
            string unit = entry.Key.Value;
            if (KindOf(unit, blocks) is not { } kind)
            {
                // A block that could not be read has its own finding.
                string block = unit.Split('.')[0];
                bool misread =
                    context.Named.Blocks.Contains(block) && blocks.All(b => b.Key != block);
                if (misread || !context.IsComplete)
                {
                    continue;
                }
                context.Report(
                    PP0222_UnsuitableMethod.UnknownUnit(
                        entry.Key.Span,
                        unit,
                        [
                            .. UnitKindCatalog.All.Select(k => k.Keyword),
                            .. blocks.SelectMany(b =>
                                b.Units.Select(u => $"{b.Key}.{u.Design.Letter}").Distinct()
                            ),
                        ]
                    )
                );
                continue;
            }
            if (!TechniqueCatalog.TryFind(text.Value, out Technique? technique))
            {
                // The shape of the file has a closed list of techniques, and its check has spoken.
                continue;
            }
            if (technique.Kind != kind.Keyword)
            {
                context.Report(
                    PP0222_UnsuitableMethod.MakesAnotherKind(
                        text.Span,
                        text.Value,
                        unit,
                        technique.Kind,
                        TechniqueCatalog.For(kind).Select(t => t.Keyword)
                    )
                );
                continue;
            }
            methods[unit] = ReadContext.Sourced(text);
        }
        return methods.ToImmutable();
    }

    private static UnitKind? KindOf(string unit, ImmutableArray<BlockDesign> blocks)
    {
        if (UnitKindCatalog.TryFind(unit, out UnitKind? kind))
        {
            return kind;
        }
        int dot = unit.IndexOf('.');
        UnitRegion? region =
            dot < 0
                ? null
                : blocks
                    .FirstOrDefault(b => b.Key == unit[..dot])
                    ?.Units.FirstOrDefault(u => u.Design.Letter == unit[(dot + 1)..]);
        return region is not null && UnitKindCatalog.TryFind(region.Design.Kind.Value, out kind)
            ? kind
            : null;
    }
}
