using PatternPress.Quilting.Model;
using PatternPress.Quilting.Reading;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;

namespace PatternPress.Tests.Quilting;

/// <summary>Reads pattern sources written in tests.</summary>
internal static class Designs
{
    /// <summary>Reads a source that must be free of errors.</summary>
    public static Pattern Read(string yaml)
    {
        (Pattern? pattern, IReadOnlyList<Diagnostic> findings) = TryRead(yaml);
        pattern.ShouldNotBeNull(string.Join('\n', findings.Select(Show)));
        return pattern;
    }

    public static (Pattern? Pattern, IReadOnlyList<Diagnostic> Findings) TryRead(string yaml)
    {
        var findings = new DiagnosticList();
        Pattern? pattern = PatternReader.Read(
            "test",
            SyntaxTree.Read("test.quilt.yaml", yaml),
            null,
            findings
        );
        return (pattern, findings.ToImmutable());
    }

    /// <summary>Every size of a pattern placed; nothing may be found wrong.</summary>
    public static IReadOnlyList<Quilt> Resolve(Pattern pattern)
    {
        var findings = new FindingCollector(pattern.Sizes.Select(s => s.Key));
        BlockSet blocks = QuiltResolver.ResolveBlocks(pattern, findings);
        List<Quilt?> quilts =
        [
            .. pattern.Sizes.Select(s => QuiltResolver.Resolve(pattern, s, blocks, findings)),
        ];
        findings.ToDiagnostics().Select(Show).ShouldBeEmpty();
        return [.. quilts.Select(q => q.ShouldNotBeNull())];
    }

    public static string Show(Diagnostic d) =>
        $"{d.Primary.Span} {d.Severity} {d.Code} {d.Title} {d.Text} {d.Hint}";

    /// <summary>A pattern around a quilt, with four fabrics, one star block and a plain one.</summary>
    public static string Star(string quilt, string sizes) =>
        $$"""
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
            fabrics:
              A: {name: Night, color: "#15233b"}
              B: {name: Amber, color: "#f2a71b"}
              C: {name: Rose, color: "#d1495b"}
              D: {name: Cream, color: "#f6ead2"}
            blocks:
              star:
                size: 8
                map: |
                  s G G s
                  E H H W
                  E H H W
                  s F F s
                units:
                  s: square sky
                  G: geese up, ray on sky
                  F: geese down, ray on sky
                  E: geese left, ray on sky
                  W: geese right, ray on sky
                  H: square heart
            colorings:
              S1: star sky=A ray=B heart=C
              S2: star sky=A ray=C heart=D
              S3: star sky=A ray=D heart=B
              P: plain A
            quilt:
            {{quilt.ReplaceLineEndings("\n").Insert(0, "  ").Replace("\n", "\n  ")}}
            sizes:
            {{sizes.ReplaceLineEndings("\n").Insert(0, "  ").Replace("\n", "\n  ")}}
            """;
}
