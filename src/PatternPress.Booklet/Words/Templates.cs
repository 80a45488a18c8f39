using System.Collections.Immutable;
using PatternPress.Booklet.Looks;
using PatternPress.Quilting.Rules;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;

namespace PatternPress.Booklet.Words;

/// <summary>
/// Everything a house may change without a programmer: the words of one language, the looks, the list of documents. Read
/// once, then shared by all builds.
/// </summary>
public sealed class Templates
{
    /// <summary>The language that is used where a pattern's own has no folder.</summary>
    public const string DefaultLanguage = "en";

    private readonly ImmutableSortedDictionary<string, SourceText> files;
    private readonly ImmutableSortedDictionary<string, WordTemplate> words;

    private Templates(
        string language,
        ImmutableSortedDictionary<string, SourceText> files,
        ImmutableSortedDictionary<string, WordTemplate> words,
        Labels labels,
        Glossary glossary,
        PageLooks looks,
        ImmutableArray<DocumentPlan> documents,
        ImmutableArray<Diagnostic> diagnostics
    )
    {
        Language = language;
        this.files = files;
        this.words = words;
        Labels = labels;
        Glossary = glossary;
        Looks = looks;
        Documents = documents;
        Diagnostics = diagnostics;
    }

    /// <summary>The folder the words come from.</summary>
    public string Language { get; }

    public Labels Labels { get; }

    public Glossary Glossary { get; }

    public PageLooks Looks { get; }

    /// <summary>The documents of a build, in the order of the list.</summary>
    public ImmutableArray<DocumentPlan> Documents { get; }

    /// <summary>What is wrong with the files.</summary>
    public ImmutableArray<Diagnostic> Diagnostics { get; }

    /// <summary>Names of all texts of the language: "cutting", "techniques/geese-four-at-a-time".</summary>
    public IEnumerable<string> Names => words.Keys;

    /// <summary>All texts and settings as the house wrote them.</summary>
    internal IEnumerable<string> Texts => files.Values.Select(file => file.Text);

    /// <summary>Reads the templates.</summary>
    /// <param name="files">The text of each file by its path below the templates folder, with forward slashes.</param>
    /// <param name="language">The pattern's language tag: "en-US" takes the folder <c>en-US</c>, else <c>en</c>.</param>
    /// <param name="folder">Put before the paths in messages: "templates/".</param>
    /// <param name="style">The style of the pages; null for the one named in <c>looks.yaml</c>.</param>
    public static Templates Read(
        IReadOnlyDictionary<string, string> files,
        string language,
        string folder = "templates/",
        string? style = null
    )
    {
        string own = FolderOf(files, language);
        var diagnostics = new DiagnosticList();
        var texts = ImmutableSortedDictionary.CreateBuilder<string, SourceText>(
            StringComparer.Ordinal
        );
        var words = ImmutableSortedDictionary.CreateBuilder<string, WordTemplate>(
            StringComparer.Ordinal
        );
        foreach (string path in files.Keys.Order(StringComparer.Ordinal))
        {
            if (
                !path.StartsWith(own + "/", StringComparison.Ordinal)
                || !path.EndsWith(".md", StringComparison.Ordinal)
            )
            {
                continue;
            }
            string name = path[(own.Length + 1)..^3];
            var source = new SourceText(folder + path, files[path].ReplaceLineEndings("\n"));
            texts[name] = source;
            if (name == "glossary")
            {
                continue;
            }
            WordTemplate template = WordTemplate.Parse(source.Text);
            foreach (TemplateFault fault in template.Faults)
            {
                diagnostics.Add(
                    PP0452_BrokenTemplate.Found(fault.SpanIn(source), fault.Problem.Name)
                );
            }
            words[name] = template;
        }
        PageLooks looks = LooksReader.Read(
            Tree("looks.yaml"),
            name => files.ContainsKey(StyleFile(name)) ? Tree(StyleFile(name)) : null,
            style,
            out var looksFaults
        );
        diagnostics.AddRange(looksFaults);
        ImmutableArray<DocumentPlan> documents = DocumentPlan.Read(
            Tree("documents.yaml"),
            looks.Variants.Keys,
            out var planFaults
        );
        diagnostics.AddRange(planFaults);
        Labels labels = ReadLabels(Tree($"{own}/labels.yaml"), diagnostics);
        Glossary glossary = Glossary.Read(
            texts.GetValueOrDefault("glossary", new SourceText("", ""))
        );
        return new Templates(
            own,
            texts.ToImmutable(),
            words.ToImmutable(),
            labels,
            glossary,
            looks,
            documents,
            diagnostics.ToImmutable()
        );

        SyntaxTree Tree(string path) =>
            SyntaxTree.Read(folder + path, files.TryGetValue(path, out string? text) ? text : "");
    }

    /// <summary>A text by name; null where there is none.</summary>
    public WordTemplate? Find(string name) => words.GetValueOrDefault(name);

    /// <summary>Where a style of pages stands below the folder of templates.</summary>
    public static string StyleFile(string style) => $"looks/{style}.yaml";

    /// <summary>Where a text stands, for messages.</summary>
    public SourceText? SourceOf(string name) => files.GetValueOrDefault(name);

    /// <summary>The heading of a section's text: the words behind its first <c>#</c>.</summary>
    public string TitleOf(string section)
    {
        if (files.TryGetValue(section, out SourceText? source))
        {
            for (int line = 1; line <= source.LineCount; line++)
            {
                string text = source.Line(line);
                if (text.StartsWith("# ", StringComparison.Ordinal))
                {
                    return text[2..].Trim();
                }
            }
        }
        return section;
    }

    private static string FolderOf(IReadOnlyDictionary<string, string> files, string language)
    {
        // The tag is a designer's word: only what could be a language may become a folder's name.
        string tag = new([.. language.Where(c => char.IsAsciiLetterOrDigit(c) || c == '-')]);
        foreach (string candidate in new[] { tag, tag.Split('-')[0] })
        {
            if (candidate.Length > 0 && files.ContainsKey($"{candidate}/labels.yaml"))
            {
                return candidate;
            }
        }
        return DefaultLanguage;
    }

    private static Labels ReadLabels(SyntaxTree tree, DiagnosticList diagnostics)
    {
        diagnostics.AddRange(tree.Diagnostics);
        var labels = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (Entry entry in (tree.Root as MapNode)?.Entries ?? [])
        {
            if (entry.Value is ScalarNode word)
            {
                labels[entry.Key.Value] = word.Value;
            }
            else
            {
                diagnostics.Add(
                    PP0453_UnsuitableLook.Found(entry.Value.Span, entry.Key.Value, "a few words")
                );
            }
        }
        return new Labels(labels.ToImmutable());
    }
}
