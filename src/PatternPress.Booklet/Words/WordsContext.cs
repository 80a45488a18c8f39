using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace PatternPress.Booklet.Words;

/// <summary>
/// The room a template is filled in: strict about names, without files, clock, chance or patterns of text, and with
/// limits that do not depend on time. Even a template written to do harm ends soon and stays small.
/// </summary>
internal sealed class WordsContext : TemplateContext
{
    /// <summary>Nodes evaluated in one filling-in. The longest honest template takes some thousands.</summary>
    public const int MostSteps = 200_000;

    /// <summary>Characters of one filled-in template.</summary>
    public const int LongestResult = 200_000;

    private int steps;

    public WordsContext(WordData data)
        : base(new ScriptObject())
    {
        StrictVariables = true;
        EnableRelaxedMemberAccess = false;
        EnableRelaxedIndexerAccess = false;
        EnableRelaxedTargetAccess = false;
        LoopLimit = 2_000;
        RecursiveLimit = 20;
        ObjectRecursionLimit = 4;
        LimitToString = LongestResult;
        OutputLimit = LongestResult;
        OnStringLimit = ScriptLimitBehavior.Throw;
        OnOutputLimit = ScriptLimitBehavior.Throw;
        TemplateLoader = null;
        NewLine = "\n";
        PushGlobal(data.ToScript());
        // Templates may keep values of their own, but not in the data.
        PushGlobal(new ScriptObject());
    }

    /// <summary>What functions found wrong, with the place in the template.</summary>
    public List<(SourceSpan Span, WordProblem Problem)> Problems { get; } = [];

    public void Report(SourceSpan span, WordProblem problem)
    {
        if (Problems.Count < 100)
        {
            Problems.Add((span, problem));
        }
    }

    public override string? ObjectToString(object? value, bool nested = false) =>
        value is Sized sized ? sized.ToString() : base.ObjectToString(value, nested);

    public override object? Evaluate(ScriptNode? scriptNode, bool aliasReturnedFunction)
    {
        if (++steps > MostSteps)
        {
            throw new ScriptRuntimeException(
                scriptNode?.Span ?? default,
                $"more than {MostSteps} steps"
            );
        }
        return base.Evaluate(scriptNode, aliasReturnedFunction);
    }
}
