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

    private static SyntaxTree Read(SourceText source, int readable, DiagnosticList diagnostics)
    {
        var reader = new SyntaxReader(source, readable, diagnostics);
        var root = reader.ReadRoot();
        return new SyntaxTree(source, root, !diagnostics.HasErrors, diagnostics.ToImmutable());
    }
}
