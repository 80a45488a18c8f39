using System.Collections.Immutable;

namespace PatternPress.Source.Diagnostics;

/// <summary>
/// Collects findings, up to a limit: nobody reads the thousandth, and a hostile file must not fill the memory with
/// them. What comes after the limit is counted only.
/// </summary>
public sealed class DiagnosticList(int limit = DiagnosticList.DefaultLimit)
{
    public const int DefaultLimit = 100;

    private readonly ImmutableArray<Diagnostic>.Builder found =
        ImmutableArray.CreateBuilder<Diagnostic>();

    /// <summary>True once the limit is reached: checkers may stop looking.</summary>
    public bool IsFull => found.Count >= limit;

    public int Count => found.Count;

    public bool HasErrors { get; private set; }

    public void Add(Diagnostic diagnostic)
    {
        HasErrors |= diagnostic.Severity == Severity.Error;
        if (!IsFull)
        {
            found.Add(diagnostic);
        }
    }

    public void AddRange(IEnumerable<Diagnostic> diagnostics)
    {
        foreach (var diagnostic in diagnostics)
        {
            Add(diagnostic);
        }
    }

    public ImmutableArray<Diagnostic> ToImmutable() => found.ToImmutable();
}
