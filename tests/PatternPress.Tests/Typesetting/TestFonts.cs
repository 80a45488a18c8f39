using PatternPress.Typesetting.Fonts;

namespace PatternPress.Tests.Typesetting;

/// <summary>The fonts of templates/fonts, found above the test's folder.</summary>
static class TestFonts
{
    static readonly Lazy<FontLibrary> Loaded = new(Load);
    static readonly Lazy<TextMeasurer> Shared = new(() => new TextMeasurer(Loaded.Value));

    public static FontLibrary Library => Loaded.Value;

    public static TextMeasurer Measurer => Shared.Value;

    static FontLibrary Load()
    {
        var folder = Folder();
        return new FontLibrary(
            from family in (string[])["Lato", "Vollkorn", "Yrsa"]
            from style in (string[])["Regular", "Italic", "Bold", "BoldItalic"]
            select new FontFace(
                family,
                style.StartsWith("Bold", StringComparison.Ordinal),
                style.EndsWith("Italic", StringComparison.Ordinal),
                () => File.ReadAllBytes(Path.Combine(folder, $"{family}-{style}.ttf"))
            )
        );
    }

    static string Folder()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            var fonts = Path.Combine(at.FullName, "templates", "fonts");
            if (Directory.Exists(fonts))
            {
                return fonts;
            }
        }

        throw new DirectoryNotFoundException("templates/fonts is not above the tests' folder.");
    }
}
