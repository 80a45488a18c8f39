using System.Collections.Immutable;

namespace PatternPress.Booklet.Sections;

/// <summary>Every section by name. A table that can be searched by eye; nothing is scanned for.</summary>
public static class SectionCatalog
{
    private static readonly ImmutableArray<Section> All =
    [
        new Cover(),
        new Masthead(),
        new About(),
        new ContentsPage(),
        new Sizes(),
        new Requirements(),
        new Scraps(),
        new BeforeYouBegin(),
        new Cautions(),
        new Cutting(),
        new Patches(),
        new Units(),
        new Blocks(),
        new Sorting(),
        new Assembly(),
        new Borders(),
        new Finishing(),
        new GlossaryPage(),
        new ColoringPage(),
        new Placement(),
        new TemplatePages(),
        new FoundationPages(),
        new AppliquePages(),
    ];

    public static IEnumerable<string> Names => All.Select(s => s.Name);

    public static Section? Find(string name) => All.FirstOrDefault(s => s.Name == name);
}
