using System.Collections.Immutable;
using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;

namespace PatternPress.Booklet.Words;

/// <summary>A <see cref="WordFunction"/> as the template language calls it.</summary>
internal sealed class ScriptedFunction(WordFunction function) : IScriptCustomFunction
{
    public int RequiredParameterCount => function.Required;

    public int ParameterCount => function.Required + function.Optional;

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
        WordAnswer answer = function.Call(given);
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
