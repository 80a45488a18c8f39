using System.Collections.Immutable;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Source.Syntax;

/// <summary>
/// A source file read into a tree. Reading cannot fail: what could not be read is reported, the rest stands in the tree.
/// </summary>
/// <param name="Source">The text, for snippets and spans.</param>
/// <param name="Root">What the file holds; an empty map where it holds nothing.</param>
/// <param name="IsComplete">False where something was reported and left out, so that a missing key need not be missing
/// in the file.</param>
/// <param name="Diagnostics">What went wrong, in the order of the file.</param>
public sealed record SyntaxTree(
    SourceText Source,
    Node Root,
    bool IsComplete,
    ImmutableArray<Diagnostic> Diagnostics
)
{
    /// <summary>How often reading goes on after a syntax error; a file with more of them is no pattern.</summary>
    private const int MaximumParts = 20;

    /// <summary>Reads a file from its bytes: UTF-8, at most <see cref="SourceGate.MaximumBytes"/>.</summary>
    /// <param name="file">The name to show in messages.</param>
    public static SyntaxTree Read(string file, ReadOnlyMemory<byte> bytes)
    {
        var diagnostics = new DiagnosticList();
        var source = SourceGate.Open(file, bytes.Span, diagnostics, out var readable);
        return Read(source, readable, diagnostics);
    }

    /// <summary>Reads a text already decoded, for tests and for texts that never were a file.</summary>
    public static SyntaxTree Read(string file, string text)
    {
        var diagnostics = new DiagnosticList();
        if (SourceGate.TooLarge(file, text.Length) is { } refusal)
        {
            diagnostics.Add(refusal);
            return Read(new SourceText(file, ""), 0, diagnostics);
        }

        var source = new SourceText(file, SourceGate.Normalize(text));
        return Read(source, SourceGate.Check(source, diagnostics), diagnostics);
    }

    /// <summary>
    /// Reads the file, and after a syntax error goes on at the next key at the left edge, so that the errors of all
    /// sections come at once.
    /// </summary>
    private static SyntaxTree Read(SourceText source, int readable, DiagnosticList diagnostics)
    {
        Node? root = null;
        int? from = 0;
        for (var parts = 0; from is { } start && parts < MaximumParts; parts++)
        {
            var reader = new SyntaxReader(source, start, readable, diagnostics);
            var part = reader.ReadRoot();
            root = root is null ? part : Join(root, part, diagnostics);
            from =
                reader.FailedAt is { } failed && root is null or MapNode
                    ? NextSection(source.Text, Math.Max(failed, start), readable)
                    : null;
        }

        if (root is null or ScalarNode { Style: ScalarStyle.Plain, IsEmpty: true })
        {
            root = new MapNode(source.SpanOf(0, 0), []);
            if (!diagnostics.HasErrors)
            {
                diagnostics.Add(SyntaxFaults.Empty(root.Span));
            }
        }

        return new SyntaxTree(
            source,
            root,
            !diagnostics.HasErrors,
            diagnostics.ToImmutable().Sort(DiagnosticOrder.Instance)
        );
    }

    private static Node Join(Node root, Node? part, DiagnosticList diagnostics)
    {
        if (root is not MapNode first || part is not MapNode second)
        {
            return root;
        }

        var entries = first.Entries.ToBuilder();
        foreach (var entry in second.Entries)
        {
            if (first.Find(entry.Key.Value) is { } same)
            {
                diagnostics.Add(SyntaxFaults.DuplicateKey(entry.Key, same.Key));
            }
            else
            {
                entries.Add(entry);
            }
        }

        var span = first.Span with
        {
            EndLine = second.Span.EndLine,
            EndColumn = second.Span.EndColumn,
        };
        return new MapNode(span, entries.ToImmutable());
    }

    /// <summary>The next line after a place that begins with a key at the left edge; null if there is none.</summary>
    private static int? NextSection(string text, int after, int readable)
    {
        for (
            var line = text.IndexOf('\n', Math.Min(after, text.Length)) + 1;
            line > 0 && line < readable;
            line = text.IndexOf('\n', line) + 1
        )
        {
            var end = line;
            while (end < readable && (char.IsAsciiLetterLower(text[end]) || text[end] == '-'))
            {
                end++;
            }

            var isKey = end > line && end < readable && text[end] == ':';
            if (isKey && text[line] != '-' && (end + 1 >= readable || text[end + 1] is ' ' or '\n'))
            {
                return line;
            }
        }

        return null;
    }
}
