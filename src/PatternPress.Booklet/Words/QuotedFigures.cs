using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text;

namespace PatternPress.Booklet.Words;

/// <summary>
/// Fills in figures in the form that nearly all of them have, a name and texts in quotation marks:
/// <c>{{ yards "A" "throw" }}</c>. Saves the time that the template language takes to start; what has any other form is
/// left to it.
/// </summary>
internal static class QuotedFigures
{
    /// <returns>False if the text holds anything but figures of that form; then nothing was filled in.</returns>
    public static bool TryRender(
        string text,
        WordData data,
        [NotNullWhen(true)] out string? rendered,
        out ImmutableArray<TemplateFault> faults
    )
    {
        rendered = null;
        faults = [];
        if (text.Length > WordTemplate.LongestText)
        {
            return false;
        }
        var result = new StringBuilder(text.Length);
        var found = ImmutableArray.CreateBuilder<TemplateFault>();
        int at = 0;
        for (
            int open = text.IndexOf("{{", StringComparison.Ordinal);
            open >= 0;
            open = text.IndexOf("{{", at, StringComparison.Ordinal)
        )
        {
            result.Append(text, at, open - at);
            int next = open + 2;
            if (
                !TryRead(
                    text,
                    ref next,
                    out int nameAt,
                    out int end,
                    out string name,
                    out var values
                )
                || data[name] is not WordFunction function
                || values.Length < function.Required
                || values.Length > function.Required + function.Optional
            )
            {
                return false;
            }
            WordAnswer answer = function.Call(values);
            if (answer.Problem is { } problem)
            {
                found.Add(new(nameAt, end - nameAt, problem));
            }
            else
            {
                result.Append(answer.Value);
            }
            if (result.Length > WordsContext.LongestResult)
            {
                return false;
            }
            at = next;
        }
        result.Append(text, at, text.Length - at);
        faults = found.ToImmutable();
        rendered = result.ToString();
        return true;
    }

    /// <summary>Reads a name, texts in quotation marks and the closing braces.</summary>
    private static bool TryRead(
        string text,
        ref int at,
        out int nameAt,
        out int end,
        out string name,
        out ImmutableArray<object?> values
    )
    {
        name = "";
        values = [];
        SkipBlanks(text, ref at);
        nameAt = at;
        while (at < text.Length && char.IsAsciiLetter(text[at]))
        {
            at++;
        }
        name = text[nameAt..at];
        end = at;
        var read = ImmutableArray.CreateBuilder<object?>();
        while (true)
        {
            int before = at;
            SkipBlanks(text, ref at);
            if (at + 1 < text.Length && text[at] == '}' && text[at + 1] == '}')
            {
                at += 2;
                values = read.ToImmutable();
                return name.Length > 0;
            }
            if (at >= text.Length || text[at] != '"' || at == before || read.Count > 4)
            {
                return false;
            }
            int close = text.IndexOf('"', at + 1);
            if (close < 0 || text.AsSpan(at + 1, close - at - 1).IndexOfAny('\\', '\n') >= 0)
            {
                return false;
            }
            read.Add(text[(at + 1)..close]);
            end = at = close + 1;
        }
    }

    private static void SkipBlanks(string text, ref int at)
    {
        while (at < text.Length && text[at] is ' ' or '\t')
        {
            at++;
        }
    }
}
