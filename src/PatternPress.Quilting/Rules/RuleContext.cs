using System.Collections.Immutable;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Rules;

/// <summary>What the checking rules look at: the pattern as designed and what was computed from it.</summary>
/// <param name="Pattern">The design.</param>
/// <param name="Quilts">One for every size that could be resolved, in the designer's order.</param>
public sealed record RuleContext(Pattern Pattern, ImmutableArray<Quilt> Quilts);
