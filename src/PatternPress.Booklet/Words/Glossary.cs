using System.Collections.Immutable;
using PatternPress.Source;

namespace PatternPress.Booklet.Words;

/// <summary>The terms that the booklet explains where it uses them: <c>templates/&lt;language&gt;/glossary.md</c>.</summary>
public sealed class Glossary(string heading, ImmutableArray<GlossaryTerm> terms)
{
    /// <summary>The section's heading.</summary>
    public string Heading { get; } = heading;

    public ImmutableArray<GlossaryTerm> Terms { get; } = terms;

    private const string Other = "not ";

    /// <summary>
    /// Reads the file: a heading, then for each term a line of its names, the first the one that is printed, and a line
    /// that begins with a colon and explains it. A name that begins with "not" is a phrase in which the words mean
    /// something else: "coloring, not coloring page".
    /// </summary>
    public static Glossary Read(SourceText source)
    {
        string heading = "";
        var terms = ImmutableArray.CreateBuilder<GlossaryTerm>();
        string names = "";
        for (int number = 1; number <= source.LineCount; number++)
        {
            string line = source.Line(number).Trim();
            if (line.StartsWith("# ", StringComparison.Ordinal))
            {
                heading = line[2..].Trim();
            }
            else if (line.StartsWith(':') && names.Length > 0)
            {
                string[] all = names.Split(',', StringSplitOptions.TrimEntries);
                terms.Add(
                    new GlossaryTerm(
                        [.. all.Where(n => !n.StartsWith(Other, StringComparison.Ordinal))],
                        line[1..].Trim()
                    )
                    {
                        Others =
                        [
                            .. all.Where(n => n.StartsWith(Other, StringComparison.Ordinal))
                                .Select(n => n[Other.Length..]),
                        ],
                    }
                );
                names = "";
            }
            else if (line.Length > 0)
            {
                names = line;
            }
        }
        return new Glossary(heading, terms.ToImmutable());
    }

    /// <summary>The terms that occur in a text, with those that their explanations use, in the order of the file.</summary>
    public ImmutableArray<GlossaryTerm> UsedIn(string text)
    {
        var used = new HashSet<GlossaryTerm>(ReferenceEqualityComparer.Instance);
        var waiting = new Queue<string>([text]);
        while (waiting.TryDequeue(out string? next))
        {
            foreach (GlossaryTerm term in Terms)
            {
                if (!used.Contains(term) && term.OccursIn(next))
                {
                    used.Add(term);
                    waiting.Enqueue(term.Meaning);
                }
            }
        }
        return [.. Terms.Where(used.Contains)];
    }
}

/// <summary>A term and what it means.</summary>
/// <param name="Names">The term, then other forms of it.</param>
/// <param name="Meaning">One or two sentences, Markdown.</param>
public sealed record GlossaryTerm(ImmutableArray<string> Names, string Meaning)
{
    public string Name => Names[0];

    /// <summary>Phrases with the term's words that mean something else.</summary>
    public ImmutableArray<string> Others { get; init; } = [];

    /// <summary>Whether a text uses the term, in the singular or with an s.</summary>
    public bool OccursIn(string text)
    {
        foreach (string other in Others)
        {
            text = text.Replace(other, "", StringComparison.OrdinalIgnoreCase);
        }
        return Names.Any(name => Occurs(text, name));
    }

    private static bool Occurs(string text, string name)
    {
        for (
            int at = text.IndexOf(name, StringComparison.OrdinalIgnoreCase);
            at >= 0;
            at = text.IndexOf(name, at + 1, StringComparison.OrdinalIgnoreCase)
        )
        {
            int end = at + name.Length;
            if (end < text.Length && text[end] is 's' or 'S')
            {
                end++;
            }
            if (
                (at == 0 || !char.IsLetter(text[at - 1]))
                && (end >= text.Length || !char.IsLetter(text[end]))
            )
            {
                return true;
            }
        }
        return false;
    }
}
