using System.Collections.Immutable;
using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;

namespace PatternPress.Booklet.Words;

/// <summary>
/// A function that templates may call: text in, text out, no effects. Arguments are short texts or whole numbers.
/// </summary>
/// <param name="name">What templates call it.</param>
/// <param name="required">How many arguments it must be given.</param>
/// <param name="optional">How many more it may be given.</param>
/// <param name="call">The function. Arguments left out are not in the list.</param>
public sealed class WordFunction(
    string name,
    int required,
    int optional,
    Func<ImmutableArray<object?>, WordAnswer> call
) : IScriptCustomFunction
{
    public string Name { get; } = name;

    public int RequiredParameterCount { get; } = required;

    public int ParameterCount { get; } = required + optional;

    public ScriptVarParamKind VarParamKind => ScriptVarParamKind.None;

    public Type ReturnType => typeof(object);

    public ScriptParameterInfo GetParameterInfo(int index) =>
        index < RequiredParameterCount
            ? new ScriptParameterInfo(typeof(object), $"value{index + 1}")
            : new ScriptParameterInfo(typeof(object), $"value{index + 1}", null!);

    public object? Invoke(
        TemplateContext context,
        ScriptNode? callerContext,
        ScriptArray arguments,
        ScriptBlockStatement? blockStatement
    )
    {
        ImmutableArray<object?> given = [.. arguments];
        while (given.Length > RequiredParameterCount && given[^1] is null)
        {
            given = given.RemoveAt(given.Length - 1);
        }
        WordAnswer answer = call(given);
        if (answer.Problem is { } problem)
        {
            ((WordsContext)context).Report(callerContext?.Span ?? default, problem);
            return "";
        }
        return answer.Value;
    }

    public ValueTask<object?> InvokeAsync(
        TemplateContext context,
        ScriptNode? callerContext,
        ScriptArray arguments,
        ScriptBlockStatement? blockStatement
    ) => ValueTask.FromResult(Invoke(context, callerContext, arguments, blockStatement));
}
