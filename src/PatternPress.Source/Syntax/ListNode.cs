using System.Collections.Immutable;

namespace PatternPress.Source.Syntax;

/// <summary>A list: <c>- item</c> lines or <c>[item, item]</c>.</summary>
public sealed record ListNode(Span Span, ImmutableArray<Node> Items) : Node(Span);
