using PatternPress.Cli.Files;
using PatternPress.Cli.Messages;
using PatternPress.Quilting.Compiling;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Source;

namespace PatternPress.Cli.Commands;

/// <summary>Shows how a printed number came about: <c>explain harbor-lights throw yards B</c>.</summary>
internal sealed class NumberExplanation(Terminal terminal, string directory)
{
    // What can be asked for, and the beginning of the derivations' names that answer it.
    private static readonly (string Word, bool Named, string[] Answers)[] _things =
    [
        ("yards", true, ["fabric", "total"]),
        ("meters", true, ["fabric", "total"]),
        ("cut", true, ["cut", "joined"]),
        ("unit", true, ["unit"]),
        ("border", true, ["border"]),
        ("binding", false, ["binding strips", "binding"]),
        ("backing", false, ["backing"]),
        ("batting", false, ["batting"]),
    ];

    /// <param name="words">A pattern, a size, a thing and its name; the pattern may be left out where there is but one.</param>
    public int Explain(IReadOnlyList<string> words, string templates)
    {
        (string file, words) = PatternOf(words);
        Compilation compilation = PatternLoader.Compile(directory, [file], templates)[0];
        if (compilation.Making is not { } making || compilation.HasErrors)
        {
            Report.Write(terminal, MessageFormats.Default, [compilation]);
            return ExitCode.Errors;
        }
        string[] sizes = [.. making.Sizes.Select(size => size.Key)];
        if (words.Count == 0)
        {
            throw new CannotRunException(
                $"say which size of {compilation.Id}: {string.Join(", ", sizes)}; for example: explain {compilation.Id} {sizes[^1]} yards {making.Pattern.Fabrics[0].Key}"
            );
        }
        SizeMaking size = making.Sizes[Index(sizes, words[0], "size", $" in {compilation.Id}")];
        LengthUnit unit = size.Quilt.House.Unit;
        List<Derivation> all = [.. Derivations.Of(making, size)];
        if (words.Count == 1)
        {
            foreach (Derivation derivation in all)
            {
                terminal.Output.WriteLine(
                    $"{derivation.Of}: {DerivationText.Result(derivation, unit)}"
                );
            }
            return ExitCode.Clean;
        }
        foreach (Derivation derivation in Wanted([.. words.Skip(1)], all, size))
        {
            Write(derivation, compilation, size);
        }
        return ExitCode.Clean;
    }

    private void Write(Derivation derivation, Compilation compilation, SizeMaking size)
    {
        LengthUnit unit = size.Quilt.House.Unit;
        string name = compilation.Pattern?.Fabrics.FirstOrDefault(f =>
            derivation.Of == $"fabric {f.Key}" || derivation.Of == $"total {f.Key}"
        )
            is { } fabric
            ? $" ({fabric.Name})"
            : "";
        terminal.Output.WriteLine(
            $"{compilation.Id}, {size.Key}, {derivation.Of}{name}: {DerivationText.Result(derivation, unit)}"
        );
        int names = derivation.Terms.Max(term => term.Name.Length);
        int values = derivation.Terms.Max(term => DerivationText.Value(term.Value, unit).Length);
        foreach (DerivationTerm term in derivation.Terms)
        {
            terminal.Output.WriteLine(
                $"  {term.Name.PadRight(names)}  {DerivationText.Value(term.Value, unit).PadLeft(values)}  {term.How}"
            );
        }
    }

    private static IEnumerable<Derivation> Wanted(
        IReadOnlyList<string> words,
        List<Derivation> all,
        SizeMaking size
    )
    {
        // "yards binding" asks for the same as "binding".
        if (words is ["yards" or "meters", "binding" or "backing"])
        {
            words = [words[1]];
        }
        // Somebody who has only the name in mind: "B", "A4", "1a".
        if (words.Count == 1 && !_things.Any(t => Same(t.Word, words[0])))
        {
            List<Derivation> named =
            [
                .. all.Where(d =>
                    d.Of.IndexOf(' ') is > 0 and var at && Same(d.Of[(at + 1)..], words[0])
                ),
            ];
            if (named.Count > 0)
            {
                return named;
            }
        }
        int thing = Index([.. _things.Select(t => t.Word)], words[0], "kind of number", "");
        (string word, bool isNamed, string[] answers) = _things[thing];
        if (!isNamed)
        {
            List<Derivation> found = [.. all.Where(d => answers.Contains(d.Of))];
            return found.Count > 0
                ? found
                : throw new CannotRunException($"the size {size.Key} has no {word}");
        }
        List<(string Name, Derivation Derivation)> candidates =
        [
            .. all.SelectMany(d =>
                answers
                    .Where(a => d.Of.StartsWith(a + " ", StringComparison.Ordinal))
                    .Select(a => (d.Of[(a.Length + 1)..], d))
            ),
        ];
        string[] names = [.. candidates.Select(c => c.Name).Distinct()];
        if (words.Count == 1)
        {
            throw new CannotRunException(
                $"say which: {word} {(names.Length == 0 ? "(none)" : string.Join(", ", names))}"
            );
        }
        string name = names[Index(names, words[1], answers[0], $" in the size {size.Key}")];
        return candidates.Where(c => c.Name == name).Select(c => c.Derivation);
    }

    /// <summary>The pattern that the first word names: a file, or the short name of one in the folder patterns.</summary>
    private (string File, IReadOnlyList<string> Words) PatternOf(IReadOnlyList<string> words)
    {
        string first = words[0];
        if (
            first.EndsWith(PatternFiles.Extension, StringComparison.OrdinalIgnoreCase)
            || File.Exists(Path.Combine(directory, first))
        )
        {
            return (PatternFiles.Find(directory, [first])[0], [.. words.Skip(1)]);
        }
        IReadOnlyList<string> files = Directory.Exists(Path.Combine(directory, "patterns"))
            ? PatternFiles.Find(directory, [])
            : [];
        string[] ids = [.. files.Select(PatternFiles.IdOf)];
        int at = Array.FindIndex(ids, id => Same(id, first));
        if (at >= 0)
        {
            return (files[at], [.. words.Skip(1)]);
        }
        if (files.Count == 1)
        {
            return (files[0], words);
        }
        throw new CannotRunException(
            files.Count == 0
                ? "name the pattern's file first: explain patterns/harbor-lights.quilt.yaml throw yards B"
                : Unknown(first, ids, "pattern", " in the folder patterns")
        );
    }

    private static int Index(string[] names, string word, string what, string place)
    {
        int at = Array.FindIndex(
            names,
            name => string.Equals(name, word, StringComparison.Ordinal)
        );
        at = at >= 0 ? at : Array.FindIndex(names, name => Same(name, word));
        return at >= 0 ? at : throw new CannotRunException(Unknown(word, names, what, place));
    }

    private static string Unknown(string word, string[] names, string what, string place)
    {
        string? nearest = Nearest.To(word, names);
        return $"there is no {what} \"{word}\"{place}"
            + (nearest is null ? "" : $"; did you mean \"{nearest}\"?")
            + $" (known: {string.Join(", ", names)})";
    }

    private static bool Same(string a, string b) =>
        string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
