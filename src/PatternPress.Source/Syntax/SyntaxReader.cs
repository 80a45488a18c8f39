using System.Collections.Immutable;
using PatternPress.Source.Diagnostics;
using YamlDotNet.Core;
using YamlDotNet.Core.Tokens;

namespace PatternPress.Source.Syntax;

/// <summary>
/// Turns the tokens of the YAML scanner into nodes. It refuses what a pattern has no use for (anchors, aliases, tags,
/// several documents) and anything beyond its limits, and keeps what was read before a syntax error.
/// </summary>
/// <remarks>
/// It works on tokens, not on the YAML parser's events: the parser compiles regular expressions when it starts, which
/// takes longer than reading a pattern, and it says less about what it expected where.
/// </remarks>
internal sealed class SyntaxReader
{
    /// <summary>Maps in lists in maps: a pattern needs about six levels.</summary>
    internal const int MaximumDepth = 32;

    /// <summary>A pattern of fifty fabrics and two hundred blocks has about five thousand.</summary>
    internal const int MaximumNodes = 20_000;

    /// <summary>The map of a quilt of 200 by 200 blocks fits.</summary>
    internal const int MaximumScalar = 200_000;

    private readonly SourceText source;
    private readonly int from;
    private readonly int readable;
    private readonly DiagnosticList diagnostics;
    private readonly Scanner scanner;
    private readonly List<Open> open = [];
    private readonly List<Diagnostics.Label> reuse = [];
    private Token? current;
    private int nodes;
    private int lastIndex;
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
        scanner = new Scanner(new PartReader(source.Text, from, readable));
    }

    /// <summary>A map or list being read: where it began, and in what column if it is no bracketed one.</summary>
    private sealed record Open(int Index, int? Indent);

    /// <summary>Where a syntax error stopped the reading; null if none did.</summary>
    public int? FailedAt { get; private set; }

    /// <summary>Reads one document; null if there is none.</summary>
    public Node? ReadRoot()
    {
        Next();
        while (
            !stopped
            && current
                is StreamStart
                    or DocumentStart
                    or DocumentEnd
                    or VersionDirective
                    or TagDirective
        )
        {
            if (current is VersionDirective or TagDirective)
            {
                Stop(SyntaxFaults.Directive(SpanOf(current)));
            }

            Next();
        }

        var root =
            stopped || current is StreamEnd
                ? null
                : ReadNode(depth: 1, indent: -1, mayBeUnindented: false);
        ReadEnd();
        if (reuse.Count > 0)
        {
            diagnostics.Add(SyntaxFaults.Reuse(reuse));
        }

        return root;
    }

    /// <summary>After the document nothing may follow.</summary>
    private void ReadEnd()
    {
        var isClosed = false;
        while (!stopped && current is DocumentEnd)
        {
            isClosed = true;
            Next();
        }

        if (stopped || current is StreamEnd)
        {
            return;
        }

        if (isClosed || current is DocumentStart or VersionDirective or TagDirective)
        {
            Stop(SyntaxFaults.SecondDocument(SpanOf(current!)));
        }
        else
        {
            Fail(ErrorHere(), error => SyntaxErrors.UnexpectedLine(error, inList: false));
        }
    }

    /// <summary>Reads the node at the current token and steps past it; null for what is refused.</summary>
    /// <param name="indent">The column that the lines of a block of text are indented from.</param>
    /// <param name="mayBeUnindented">Whether a list may begin in the column of its key.</param>
    private Node? ReadNode(int depth, int indent, bool mayBeUnindented)
    {
        if (!MayRead(depth))
        {
            return null;
        }

        var hasProperties = RefuseProperties();
        switch (current)
        {
            case Scalar scalar when !stopped:
                Next();
                return ScalarOf(scalar, indent);
            case AnchorAlias alias when !stopped:
                reuse.Add(new Diagnostics.Label(SpanOf(alias), "referred to here"));
                Next();
                return null;
            case BlockMappingStart when !stopped:
                return ReadBlockMap(depth);
            case BlockSequenceStart when !stopped:
                return ReadBlockList(depth);
            case BlockEntry when mayBeUnindented && !stopped:
                return ReadUnindentedList(depth, indent);
            case FlowMappingStart when !stopped:
                return ReadFlowMap(depth, indent);
            case FlowSequenceStart when !stopped:
                return ReadFlowList(depth, indent);
            default:
                if (hasProperties)
                {
                    return Nothing();
                }

                Fail(ErrorHere(), SyntaxErrors.NothingToRead);
                return null;
        }
    }

    private bool MayRead(int depth)
    {
        if (diagnostics.IsFull)
        {
            stopped = true;
        }
        else if (++nodes > MaximumNodes)
        {
            Stop(SyntaxFaults.TooManyNodes(SpanOf(current!), MaximumNodes));
        }
        else if (depth > MaximumDepth)
        {
            Stop(SyntaxFaults.TooDeep(SpanOf(current!), MaximumDepth));
        }

        return !stopped;
    }

    private MapNode ReadBlockMap(int depth)
    {
        var begin = IndexOf(current!.Start);
        var column = (int)current.Start.Column - 1;
        var entries = new EntryList(diagnostics);
        Enter(begin, column);
        while (!stopped && current is not BlockEnd)
        {
            if (current is not (Key or Value))
            {
                Fail(ErrorHere(), error => SyntaxErrors.UnexpectedLine(error, inList: false));
                break;
            }

            ReadEntry(entries, depth, column, inFlow: false);
        }

        Leave();
        return entries.ToMap(SpanTo(begin, begin, entries.Last));
    }

    private MapNode? ReadFlowMap(int depth, int indent)
    {
        var begin = IndexOf(current!.Start);
        var entries = new EntryList(diagnostics);
        Enter(begin, column: null);
        while (!stopped && current is not FlowMappingEnd)
        {
            if (current is FlowEntry)
            {
                Fail(ErrorHere(), SyntaxErrors.NothingToRead);
                break;
            }

            ReadEntry(entries, depth, indent, inFlow: true);
            ReadComma(current is FlowMappingEnd);
        }

        var end = stopped ? begin : IndexOf(current!.Start) + 1;
        Leave();
        // Braces around something else than keys, such as {{ }}: reported, and not to be reported again as a map.
        return entries.HasOnlyRefused ? null : entries.ToMap(SpanTo(begin, end, entries.Last));
    }

    /// <summary>One key with its value, either of which may be missing.</summary>
    private void ReadEntry(EntryList entries, int depth, int indent, bool inFlow)
    {
        var keyAt = SpanOf(current!);
        if (current is Key)
        {
            Next();
        }

        var key =
            stopped ? null
            : EndsEntry() ? Nothing()
            : ReadNode(depth + 1, indent, mayBeUnindented: !inFlow);
        if (stopped)
        {
            // A key without its value: the rest of the entry could not be read.
            return;
        }

        Node? value = null;
        if (current is not Value)
        {
            value = Nothing();
        }
        else
        {
            Next();
            if (!stopped)
            {
                value = EndsEntry()
                    ? Nothing()
                    : ReadNode(depth + 1, indent, mayBeUnindented: !inFlow);
            }
        }

        entries.Add(keyAt, key, value is not null && IsCutOff(value) ? null : value);
    }

    private bool EndsEntry() =>
        current is Key or Value or BlockEnd or FlowEntry or FlowMappingEnd or FlowSequenceEnd;

    private ListNode ReadBlockList(int depth)
    {
        var begin = IndexOf(current!.Start);
        var column = (int)current.Start.Column - 1;
        var items = ImmutableArray.CreateBuilder<Node>();
        Enter(begin, column);
        while (!stopped && current is not BlockEnd)
        {
            if (current is not BlockEntry)
            {
                Fail(ErrorHere(), error => SyntaxErrors.UnexpectedLine(error, inList: true));
                break;
            }

            ReadItem(items, depth, column);
        }

        Leave();
        return ListOf(begin, begin, items);
    }

    /// <summary>A list whose dashes stand in the column of its key.</summary>
    private ListNode ReadUnindentedList(int depth, int indent)
    {
        var begin = IndexOf(current!.Start);
        var items = ImmutableArray.CreateBuilder<Node>();
        while (!stopped && current is BlockEntry)
        {
            ReadItem(items, depth, indent);
        }

        return ListOf(begin, begin, items);
    }

    private void ReadItem(ImmutableArray<Node>.Builder items, int depth, int indent)
    {
        Next();
        if (stopped)
        {
            return;
        }

        var item = current is BlockEntry or BlockEnd or Key or Value
            ? Nothing()
            : ReadNode(depth + 1, indent, mayBeUnindented: false);
        if (item is not null)
        {
            items.Add(item);
        }
    }

    private ListNode ReadFlowList(int depth, int indent)
    {
        var begin = IndexOf(current!.Start);
        var items = ImmutableArray.CreateBuilder<Node>();
        Enter(begin, column: null);
        while (!stopped && current is not FlowSequenceEnd)
        {
            var item =
                current is Key
                    ? ReadPair(depth + 1, indent)
                    : ReadNode(depth + 1, indent, mayBeUnindented: false);
            if (item is not null)
            {
                items.Add(item);
            }

            ReadComma(current is FlowSequenceEnd);
        }

        var end = stopped ? begin : IndexOf(current!.Start) + 1;
        Leave();
        return ListOf(begin, end, items);
    }

    /// <summary>A map of one entry without braces, as an item of a list: <c>[a: b]</c>.</summary>
    private MapNode? ReadPair(int depth, int indent)
    {
        if (!MayRead(depth))
        {
            return null;
        }

        var begin = IndexOf(current!.Start);
        var entries = new EntryList(diagnostics);
        ReadEntry(entries, depth, indent, inFlow: true);
        return entries.ToMap(SpanTo(begin, begin, entries.Last));
    }

    /// <summary>Between two items of a bracketed list or map stands a comma.</summary>
    private void ReadComma(bool isLast)
    {
        if (stopped || isLast)
        {
            return;
        }

        if (current is FlowEntry)
        {
            Next();
        }
        else
        {
            Fail(ErrorHere(), SyntaxErrors.FlowBroken);
        }
    }

    private ListNode ListOf(int begin, int end, ImmutableArray<Node>.Builder items)
    {
        var all = items.ToImmutable();
        return new ListNode(SpanTo(begin, end, all.IsEmpty ? null : all[^1]), all);
    }

    /// <summary>Whether a value is empty only because the file is not read beyond it.</summary>
    private bool IsCutOff(Node value) =>
        value is ScalarNode { Style: ScalarStyle.Plain, IsEmpty: true }
        && readable < source.Text.Length
        && source.Text.AsSpan(lastIndex, Math.Max(readable - lastIndex, 0)).Trim().IsEmpty;

    /// <summary>
    /// A collection ends with its bracket, or with the last thing in it: the scanner's own mark of a block's end stands
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

    /// <summary>The value that is not there, right after the last token.</summary>
    private ScalarNode Nothing() => new(source, "", ScalarStyle.Plain, lastIndex, lastIndex, -1);

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

    /// <summary>Steps past anchors and tags before a node; says whether there were any.</summary>
    private bool RefuseProperties()
    {
        var found = false;
        while (!stopped && current is Anchor or Tag)
        {
            found = true;
            if (current is Tag tag)
            {
                diagnostics.Add(SyntaxFaults.Tag(SpanOf(tag), tag.Handle + tag.Suffix));
            }
            else
            {
                reuse.Add(new Diagnostics.Label(SpanOf(current), "named here"));
            }

            Next();
        }

        return found;
    }

    private int IndexOf(in Mark mark) => from + (int)mark.Index;

    private Span SpanOf(Token token) => source.SpanOf(IndexOf(token.Start), IndexOf(token.End));

    /// <summary>Steps into a collection.</summary>
    /// <param name="column">Its column from 0, or null for a bracketed one.</param>
    private void Enter(int begin, int? column)
    {
        open.Add(new Open(begin, column));
        Next();
    }

    /// <summary>Steps out of a collection past its end, except after an error, which wants to know what is open.</summary>
    private void Leave()
    {
        if (!stopped)
        {
            open.RemoveAt(open.Count - 1);
            Next();
        }
    }

    private void Next()
    {
        if (stopped)
        {
            return;
        }

        if (current is not null)
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

        try
        {
            stopped = !scanner.MoveNext();
            current = scanner.Current;
            if (current is Error error)
            {
                Fail(
                    ErrorAt(error.Start, error.End),
                    where => SyntaxErrors.Explain(where, error.Value)
                );
            }
        }
        catch (YamlException error)
        {
            Fail(
                ErrorAt(error.Start, error.End),
                where => SyntaxErrors.Explain(where, error.Message)
            );
        }
        // The scanner answers some malformed files with exceptions of other kinds; none may reach the designer.
        catch (Exception error) when (error is not OutOfMemoryException)
        {
            Fail(ErrorAt(lastIndex, lastIndex), where => SyntaxErrors.Explain(where, ""));
        }
    }

    private SyntaxError ErrorHere() => ErrorAt(current!.Start, current.End);

    private SyntaxError ErrorAt(in Mark start, in Mark end) =>
        ErrorAt(IndexOf(start), IndexOf(end));

    private SyntaxError ErrorAt(int start, int end)
    {
        // The outermost bracket still open, or the last thing read: before that all is closed.
        var lookFrom = lastIndex;
        var indents = new List<int>();
        foreach (var collection in open)
        {
            if (collection.Indent is { } indent)
            {
                indents.Add(indent);
            }
            else
            {
                lookFrom = Math.Min(lookFrom, collection.Index);
            }
        }

        return new SyntaxError(source, readable, lookFrom, start, end, indents, lastWasBlock);
    }

    private void Fail(SyntaxError error, Func<SyntaxError, Diagnostic> explain)
    {
        Stop(explain(error));
        FailedAt = Math.Max(error.Start, lastIndex);
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
