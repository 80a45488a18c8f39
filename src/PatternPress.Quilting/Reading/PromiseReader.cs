using System.Collections.Immutable;
using PatternPress.Quilting.Model;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>Reads <c>suits:</c>, what a pattern promises that its fabrics can be cut from besides.</summary>
internal static class PromiseReader
{
    public static Promise? Read(Node? node, ReadContext context)
    {
        var map = node as MapNode;
        Panel? panel = PanelReader.Read(
            map is null ? node : map["buy"],
            "what the pattern suits",
            context
        );
        var fabrics = ImmutableArray.CreateBuilder<Sourced<string>>();
        if (ReadContext.Text(map, "fabrics") is { } names)
        {
            foreach (Slice name in names.Whole.Words())
            {
                if (context.FabricName(name, "what the pattern suits") is { } known)
                {
                    fabrics.Add(known);
                }
            }
        }
        return panel is null ? null : new Promise(panel, fabrics.ToImmutable(), node!.Span);
    }
}
