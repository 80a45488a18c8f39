using PatternPress.Booklet.Words;
using PatternPress.Typesetting.Fonts;

namespace PatternPress.Cli.Files;

/// <summary>Reads the folder of words, looks and fonts.</summary>
/// <param name="style">The style of the pages; null for the one that the house has chosen.</param>
internal sealed class TemplateLoader(string directory, string folder, string? style = null)
{
    private readonly Dictionary<string, Templates> _byLanguage = new(StringComparer.Ordinal);
    private readonly Lazy<IReadOnlyDictionary<string, string>> _files = new(() =>
        ReadTexts(folder)
    );

    /// <summary>The words of a language. What is wrong with them is in the result's own diagnostics.</summary>
    public Templates Words(string language)
    {
        lock (_byLanguage)
        {
            if (!_byLanguage.TryGetValue(language, out Templates? templates))
            {
                string shown = Path.GetRelativePath(directory, folder).Replace('\\', '/') + "/";
                templates = Templates.Read(_files.Value, language, shown, KnownStyle());
                _byLanguage.Add(language, templates);
            }
            return templates;
        }
    }

    private string? KnownStyle() =>
        style is null || _files.Value.ContainsKey(Templates.StyleFile(style))
            ? style
            : throw new CannotRunException(
                $"there is no file {Templates.StyleFile(style)} in {folder} for --style"
            );

    /// <summary>
    /// The faces in <c>fonts</c>. A file is named Family-Style.ttf, with Regular, Bold, Italic or BoldItalic for the
    /// style; a blank in the family is left out of the file's name.
    /// </summary>
    public FontLibrary Fonts()
    {
        string fonts = Path.Combine(folder, "fonts");
        string[] files = Directory.Exists(fonts) ? Directory.GetFiles(fonts, "*.ttf") : [];
        if (files.Length == 0)
        {
            throw new CannotRunException($"the folder {fonts} holds no font (a .ttf file)");
        }
        Array.Sort(files, StringComparer.Ordinal);
        return new FontLibrary(files.Select(FaceOf));
    }

    private static FontFace FaceOf(string path)
    {
        string name = Path.GetFileNameWithoutExtension(path);
        int hyphen = name.LastIndexOf('-');
        string style = hyphen < 0 ? "Regular" : name[(hyphen + 1)..];
        return new FontFace(
            hyphen < 0 ? name : name[..hyphen],
            style.Contains("Bold", StringComparison.Ordinal),
            style.Contains("Italic", StringComparison.Ordinal),
            () => File.ReadAllBytes(path)
        );
    }

    private static Dictionary<string, string> ReadTexts(string folder) =>
        Directory
            .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Where(file => Path.GetExtension(file) is ".md" or ".yaml")
            .ToDictionary(
                file => Path.GetRelativePath(folder, file).Replace('\\', '/'),
                File.ReadAllText,
                StringComparer.Ordinal
            );
}
