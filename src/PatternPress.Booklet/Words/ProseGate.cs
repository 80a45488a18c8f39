using System.Collections.Immutable;
using Scriban.Syntax;

namespace PatternPress.Booklet.Words;

/// <summary>
/// Lets through only what a designer's text needs: names and calls of the functions given, with plain values. No
/// loops, conditions, assignments or arithmetic: such a text takes time and space in proportion to its length.
/// </summary>
internal static class ProseGate
{
    /// <summary>Everything in a template that is not let through, in the order of the text.</summary>
    public static IEnumerable<TemplateFault> Check(ScriptNode page, WordData data)
    {
        var waiting = new Stack<ScriptNode>();
        waiting.Push(page);
        while (waiting.TryPop(out ScriptNode? node))
        {
            if (Fault(node, data) is { } problem)
            {
                yield return new(
                    Math.Max(0, node.Span.Start.Offset),
                    Math.Max(1, node.Span.Length),
                    problem
                );
                continue;
            }
            for (int i = node.ChildrenCount - 1; i >= 0; i--)
            {
                if (node.GetChildren(i) is { } child)
                {
                    waiting.Push(child);
                }
            }
        }
    }

    private static WordProblem? Fault(ScriptNode node, WordData data) =>
        node switch
        {
            ScriptPage
            or ScriptBlockStatement
            or ScriptRawStatement
            or ScriptEscapeStatement
            or ScriptExpressionStatement
            or ScriptNopStatement
            or ScriptNestedExpression
            or ScriptFunctionCall
            or ScriptPipeCall
            or ScriptLiteral
            or ScriptToken
            or ScriptEndStatement => null,
            // The list of a call's arguments; the type is generic.
            _ when node.GetType().Name.StartsWith("ScriptList", StringComparison.Ordinal) => null,
            ScriptVariableGlobal name => data.Names.Contains(name.Name)
                ? null
                : new(WordProblemKind.UnknownName, name.Name, [.. data.Names]),
            _ => new(WordProblemKind.NotAllowed, Describe(node), [.. data.Names]),
        };

    private static string Describe(ScriptNode node) =>
        node switch
        {
            ScriptForStatement or ScriptWhileStatement or ScriptTableRowStatement => "a loop",
            ScriptIfStatement
            or ScriptElseStatement
            or ScriptCaseStatement
            or ScriptWhenStatement
            or ScriptConditionalExpression => "a condition",
            ScriptAssignExpression
            or ScriptCaptureStatement
            or ScriptIncrementDecrementExpression => "an assignment",
            ScriptBinaryExpression or ScriptUnaryExpression => "arithmetic",
            ScriptFunction or ScriptAnonymousFunction => "a function of its own",
            ScriptMemberExpression or ScriptIndexerExpression => "a look inside a value",
            _ => "this",
        };
}
