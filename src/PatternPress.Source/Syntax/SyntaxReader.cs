using System.Collections.Immutable;
using PatternPress.Source.Diagnostics;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace PatternPress.Source.Syntax;

/// <summary>
/// Turns the YAML parser's events into nodes. It refuses what a pattern has no use for (anchors, aliases, tags, several
/// documents) and anything beyond its limits, and keeps what was read before a syntax error.
/// </summary>
internal sealed class SyntaxReader(SourceText source, int readable, DiagnosticList diagnostics)
{
    /// <summary>Maps in lists in maps: a pattern needs about six levels.</summary>
    internal const int MaximumDepth = 32;

    /// <summary>A pattern of fifty fabrics and a hundred blocks has about two thousand.</summary>
    internal const int MaximumNodes = 50_000;

    /// <summary>The map of a quilt of 200 by 200 blocks fits.</summary>
    internal const int MaximumScalar = 200_000;

    private readonly Parser parser = new(
        new StringReader(readable == source.Text.Length ? source.Text : source.Text[..readable])
    );

    private int nodes;
    private bool stopped;

    public Node ReadRoot()
    {
        Node? root = null;
        Next();
        while (!stopped && parser.Current is not StreamEnd)
        {
            switch (parser.Current)
            {
                case DocumentStart start when root is not null:
                    Stop(SyntaxFaults.SecondDocument(SpanOf(start)));
                    break;
                case DocumentStart or StreamStart or DocumentEnd:
                    Next();
                    break;
                default:
                    root = ReadNode(depth: 1, indent: -1);
                    break;
            }
        }

        var empty = source.SpanOf(0, 0);
        if (root is null or ScalarNode { Style: ScalarStyle.Plain, Value: "" })
        {
            if (!diagnostics.HasErrors)
            {
                diagnostics.Add(SyntaxFaults.Empty(empty));
            }

            return new MapNode(empty, []);
        }

        return root;
    }

    /// <summary>Reads the node at the current event and steps past it; null for what is refused.</summary>
    private Node? ReadNode(int depth, int indent)
    {
        var current = parser.Current!;
        if (++nodes > MaximumNodes)
        {
            Stop(SyntaxFaults.TooManyNodes(SpanOf(current), MaximumNodes));
            return null;
        }

        if (depth > MaximumDepth)
        {
            Stop(SyntaxFaults.TooDeep(SpanOf(current), MaximumDepth));
            return null;
        }

        switch (current)
        {
            case Scalar scalar:
                RefuseProperties(scalar);
                Next();
                return ScalarOf(scalar, indent);
            case MappingStart map:
                RefuseProperties(map);
                return ReadMap(map, depth, indent);
            case SequenceStart list:
                RefuseProperties(list);
                return ReadList(list, depth, indent);
            case AnchorAlias alias:
                diagnostics.Add(SyntaxFaults.Alias(SpanOf(alias), alias.Value.Value));
                Next();
                return null;
            default:
                Next();
                return null;
        }
    }

    private MapNode ReadMap(MappingStart start, int depth, int indent)
    {
        var isBlock = start.Style == MappingStyle.Block;
        var inner = isBlock ? (int)start.Start.Column - 1 : indent;
        var entries = ImmutableArray.CreateBuilder<Entry>();
        var seen = new Dictionary<string, ScalarNode>(StringComparer.Ordinal);
        var from = (int)start.Start.Index;
        var to = from;
        Next();
        while (!stopped && parser.Current is not MappingEnd)
        {
            var keyAt = SpanOf(parser.Current!);
            var keyNode = ReadNode(depth + 1, inner);
            if (stopped)
            {
                // A key without its value: the rest of the entry could not be read.
                break;
            }

            if (keyNode is not null and not ScalarNode)
            {
                diagnostics.Add(SyntaxFaults.KeyIsNoText(keyNode.Span));
            }

            var value = ReadNode(depth + 1, inner);
            if (keyNode is not ScalarNode key)
            {
                continue;
            }

            if (key.IsEmpty)
            {
                diagnostics.Add(SyntaxFaults.KeyIsEmpty(keyAt));
            }
            else if (value is null)
            {
                continue;
            }
            else if (!seen.TryAdd(key.Value, key))
            {
                diagnostics.Add(SyntaxFaults.DuplicateKey(key, seen[key.Value]));
            }
            else
            {
                entries.Add(new Entry(key, value));
            }
        }

        if (!isBlock && !stopped)
        {
            to = (int)parser.Current!.End.Index;
        }

        Next();
        var all = entries.ToImmutable();
        return new MapNode(SpanTo(from, to, all.IsEmpty ? null : all[^1].Value), all);
    }

    private ListNode ReadList(SequenceStart start, int depth, int indent)
    {
        var isBlock = start.Style == SequenceStyle.Block;
        var inner = isBlock ? (int)start.Start.Column - 1 : indent;
        var items = ImmutableArray.CreateBuilder<Node>();
        var from = (int)start.Start.Index;
        var to = from;
        Next();
        while (!stopped && parser.Current is not SequenceEnd)
        {
            if (ReadNode(depth + 1, inner) is { } item)
            {
                items.Add(item);
            }
        }

        if (!isBlock && !stopped)
        {
            to = (int)parser.Current!.End.Index;
        }

        Next();
        var all = items.ToImmutable();
        return new ListNode(SpanTo(from, to, all.IsEmpty ? null : all[^1]), all);
    }

    /// <summary>
    /// A collection ends with its bracket, or with the last thing in it: the parser's own mark of a block's end stands
    /// after the blank lines and comments that follow.
    /// </summary>
    private Span SpanTo(int from, int to, Node? last)
    {
        var span = source.SpanOf(from, to);
        return to > from || last is null
            ? span
            : span with
            {
                EndLine = last.Span.EndLine,
                EndColumn = last.Span.EndColumn,
            };
    }

    private ScalarNode? ScalarOf(Scalar scalar, int indent)
    {
        var start = (int)scalar.Start.Index;
        var end = (int)scalar.End.Index;
        var style = scalar.Style switch
        {
            YamlDotNet.Core.ScalarStyle.SingleQuoted => ScalarStyle.SingleQuoted,
            YamlDotNet.Core.ScalarStyle.DoubleQuoted => ScalarStyle.DoubleQuoted,
            YamlDotNet.Core.ScalarStyle.Literal => ScalarStyle.Literal,
            YamlDotNet.Core.ScalarStyle.Folded => ScalarStyle.Folded,
            _ => ScalarStyle.Plain,
        };
        if (scalar.Value.Length > MaximumScalar)
        {
            var first = source.SpanOf(start, Math.Min(start + 1, source.Text.Length));
            diagnostics.Add(SyntaxFaults.TooLong(first, scalar.Value.Length, MaximumScalar));
            return null;
        }

        if (style is ScalarStyle.Literal or ScalarStyle.Folded)
        {
            end = start + source.Text.AsSpan(start, end - start).TrimEnd("\n ").Length;
        }

        var node = new ScalarNode(source, scalar.Value, style, start, end, indent);
        if (style == ScalarStyle.DoubleQuoted)
        {
            RefuseEscapedControls(node);
        }

        return node;
    }

    /// <summary>An escape such as <c>"\0"</c> must not bring in what the gate keeps out.</summary>
    private void RefuseEscapedControls(ScalarNode node)
    {
        for (var i = 0; i < node.Value.Length; i++)
        {
            if (SourceGate.IsUnwanted(node.Value[i]))
            {
                diagnostics.Add(SyntaxFaults.ControlCharacter(node.SpanOf(i, 1), node.Value[i]));
                return;
            }
        }
    }

    private void RefuseProperties(NodeEvent node)
    {
        if (!node.Anchor.IsEmpty)
        {
            diagnostics.Add(SyntaxFaults.Anchor(SpanOf(node), node.Anchor.Value));
        }

        if (!node.Tag.IsEmpty)
        {
            diagnostics.Add(SyntaxFaults.Tag(SpanOf(node), node.Tag.Value));
        }
    }

    private Span SpanOf(ParsingEvent current) =>
        source.SpanOf((int)current.Start.Index, (int)current.End.Index);

    private void Next()
    {
        if (stopped)
        {
            return;
        }

        try
        {
            if (!parser.MoveNext())
            {
                stopped = true;
            }
        }
        catch (YamlException error)
        {
            Stop(
                SyntaxErrors.Explain(
                    source,
                    readable,
                    (int)error.Start.Index,
                    (int)error.End.Index,
                    error.Message
                )
            );
        }
        // The scanner answers some malformed files with exceptions of other kinds; none may reach the designer.
        catch (Exception error) when (error is not OutOfMemoryException)
        {
            Stop(SyntaxErrors.Explain(source, readable, lastIndex, lastIndex, ""));
        }

        lastIndex = parser.Current is { } current ? (int)current.End.Index : lastIndex;
    }

    private int lastIndex;

    private void Stop(Diagnostic reason)
    {
        // Text cut off at the gate ends in the middle of something: that was said already.
        if (readable == source.Text.Length)
        {
            diagnostics.Add(reason);
        }

        stopped = true;
    }
}
