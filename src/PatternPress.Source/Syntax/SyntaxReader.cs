using System.Collections.Immutable;
using PatternPress.Source.Diagnostics;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace PatternPress.Source.Syntax;

/// <summary>
/// Turns the YAML parser's events into nodes. It refuses what a pattern has no use for (anchors, aliases, tags, several
/// documents) and anything beyond its limits, and keeps what was read before a syntax error.
/// </summary>
internal sealed class SyntaxReader
{
    /// <summary>Maps in lists in maps: a pattern needs about six levels.</summary>
    internal const int MaximumDepth = 32;

    /// <summary>A pattern of fifty fabrics and a hundred blocks has about two thousand.</summary>
    internal const int MaximumNodes = 20_000;

    /// <summary>The map of a quilt of 200 by 200 blocks fits.</summary>
    internal const int MaximumScalar = 200_000;

    private readonly SourceText source;
    private readonly int from;
    private readonly int readable;
    private readonly DiagnosticList diagnostics;
    private readonly Parser parser;
    private readonly Stack<Open> open = new();
    private int nodes;
    private int lastIndex;
    private readonly List<Label> reuse = [];
    private bool lastWasBlock;
    private bool stopped;

    /// <param name="from">Index of the line to begin with.</param>
    /// <param name="readable">Index of the line to stop before.</param>
    public SyntaxReader(SourceText source, int from, int readable, DiagnosticList diagnostics)
    {
        this.source = source;
        this.from = from;
        this.readable = readable;
        this.diagnostics = diagnostics;
        lastIndex = from;
        parser = new Parser(new PartReader(source.Text, from, readable));
    }

    /// <summary>A map or list being read: where it began, and in what column if it is no bracketed one.</summary>
    private readonly record struct Open(int Index, int? Indent);

    /// <summary>Where a syntax error stopped the reading; null if none did.</summary>
    public int? FailedAt { get; private set; }

    /// <summary>Reads one document; null if there is none.</summary>
    public Node? ReadRoot()
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

        if (reuse.Count > 0)
        {
            diagnostics.Add(SyntaxFaults.Reuse(reuse));
        }

        return root;
    }

    /// <summary>Reads the node at the current event and steps past it; null for what is refused.</summary>
    private Node? ReadNode(int depth, int indent)
    {
        var current = parser.Current!;
        if (diagnostics.IsFull)
        {
            stopped = true;
            return null;
        }

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
                reuse.Add(new Label(SpanOf(alias), "referred to here"));
                Next();
                return null;
            default:
                Next();
                return null;
        }
    }

    private MapNode? ReadMap(MappingStart start, int depth, int indent)
    {
        var isBlock = start.Style == MappingStyle.Block;
        var inner = Enter(start, isBlock, indent);
        var entries = ImmutableArray.CreateBuilder<Entry>();
        var seen = new Dictionary<string, ScalarNode>(StringComparer.Ordinal);
        var refusedKey = false;
        var begin = IndexOf(start.Start);
        var end = begin;
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
                refusedKey = true;
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
            else if (value is null || IsCutOff(value))
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
            end = IndexOf(parser.Current!.Start) + 1;
        }

        Leave();
        // Braces around something else than keys, such as {{ }}: reported, and not to be reported again as a map.
        if (!isBlock && entries.Count == 0 && refusedKey)
        {
            return null;
        }

        var all = entries.ToImmutable();
        return new MapNode(SpanTo(begin, end, all.IsEmpty ? null : all[^1].Value), all);
    }

    private ListNode ReadList(SequenceStart start, int depth, int indent)
    {
        var isBlock = start.Style == SequenceStyle.Block;
        var inner = Enter(start, isBlock, indent);
        var items = ImmutableArray.CreateBuilder<Node>();
        var begin = IndexOf(start.Start);
        var end = begin;
        while (!stopped && parser.Current is not SequenceEnd)
        {
            if (ReadNode(depth + 1, inner) is { } item)
            {
                items.Add(item);
            }
        }

        if (!isBlock && !stopped)
        {
            end = IndexOf(parser.Current!.Start) + 1;
        }

        Leave();
        var all = items.ToImmutable();
        return new ListNode(SpanTo(begin, end, all.IsEmpty ? null : all[^1]), all);
    }

    /// <summary>Whether a value is empty only because the file is not read beyond it.</summary>
    private bool IsCutOff(Node value) =>
        value is ScalarNode { Style: ScalarStyle.Plain, IsEmpty: true }
        && readable < source.Text.Length
        && source.Text.AsSpan(lastIndex, Math.Max(readable - lastIndex, 0)).Trim().IsEmpty;

    /// <summary>
    /// A collection ends with its bracket, or with the last thing in it: the parser's own mark of a block's end stands
    /// after the blank lines and comments that follow.
    /// </summary>
    private Span SpanTo(int begin, int end, Node? last)
    {
        var span = source.SpanOf(begin, end);
        return end > begin || last is null
            ? span
            : span with
            {
                EndLine = last.Span.EndLine,
                EndColumn = last.Span.EndColumn,
            };
    }

    private ScalarNode? ScalarOf(Scalar scalar, int indent)
    {
        var start = IndexOf(scalar.Start);
        var end = IndexOf(scalar.End);
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
            reuse.Add(new Label(SpanOf(node), "named here"));
        }

        if (!node.Tag.IsEmpty)
        {
            diagnostics.Add(SyntaxFaults.Tag(SpanOf(node), node.Tag.Value));
        }
    }

    private int IndexOf(in Mark mark) => from + (int)mark.Index;

    private Span SpanOf(ParsingEvent current) =>
        source.SpanOf(IndexOf(current.Start), IndexOf(current.End));

    /// <summary>Steps into a collection; gives the column that block scalars in it are indented from.</summary>
    private int Enter(ParsingEvent start, bool isBlock, int indent)
    {
        var column = (int)start.Start.Column - 1;
        open.Push(new Open(IndexOf(start.Start), isBlock ? column : null));
        Next();
        return isBlock ? column : indent;
    }

    private void Leave()
    {
        if (!stopped)
        {
            open.Pop();
            Next();
        }
    }

    private void Next()
    {
        if (stopped)
        {
            return;
        }

        try
        {
            stopped = !parser.MoveNext();
            if (parser.Current is { } current)
            {
                lastIndex = IndexOf(current.End);
                lastWasBlock =
                    current
                        is Scalar
                        {
                            Style: YamlDotNet.Core.ScalarStyle.Literal
                                or YamlDotNet.Core.ScalarStyle.Folded
                        };
            }
        }
        catch (YamlException error)
        {
            Fail(IndexOf(error.Start), IndexOf(error.End), error.Message);
        }
        // The scanner answers some malformed files with exceptions of other kinds; none may reach the designer.
        catch (Exception error) when (error is not OutOfMemoryException)
        {
            Fail(lastIndex, lastIndex, "");
        }
    }

    private void Fail(int start, int end, string message)
    {
        // The outermost bracket still open, or the last thing read: before that all is closed.
        var lookFrom = lastIndex;
        foreach (var collection in open)
        {
            lookFrom = collection.Indent is null ? Math.Min(lookFrom, collection.Index) : lookFrom;
        }

        int[] indents =
        [
            .. open.Where(one => one.Indent is not null).Select(one => one.Indent!.Value).Reverse(),
        ];
        Stop(
            SyntaxErrors.Explain(
                new SyntaxError(
                    source,
                    readable,
                    lookFrom,
                    start,
                    end,
                    message,
                    indents,
                    lastWasBlock
                )
            )
        );
        FailedAt = start;
    }

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
