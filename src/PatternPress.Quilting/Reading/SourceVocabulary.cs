using System.Collections.Immutable;
using PatternPress.Quilting.Settings;
using PatternPress.Quilting.Settings.Fills;
using PatternPress.Quilting.Techniques;
using PatternPress.Source.Shapes;

namespace PatternPress.Quilting.Reading;

/// <summary>The trade's words for the shape of a source file, from the catalogues of what we can draw and make.</summary>
public static class SourceVocabulary
{
    public static Vocabulary Words { get; } =
        new(
            [.. SettingCatalog.All.Select(s => s.Keyword)],
            [
                .. Array
                    .FindAll([.. FillCatalog.All], f => f.Kind != Model.FillKind.Map)
                    .Select(f => f.Keyword),
            ],
            [.. FillCatalog.All.Where(f => f.IsDrawn).Select(f => f.Keyword)],
            [.. UnitKindCatalog.All.Select(k => k.Keyword)],
            [.. TechniqueCatalog.All.Select(t => t.Keyword)],
            ["sides-first", "top-first", "squares", "blocks", "mitered"]
        );
}
