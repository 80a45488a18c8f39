using System.Collections.Immutable;

namespace PatternPress.Quilting.Settings;

/// <summary>Every setting, found by keyword.</summary>
public static class SettingCatalog
{
    public static ImmutableArray<Setting> All { get; } =
    [
        new Straight(),
        new OnPoint(),
        new InSections(),
        new Strippy(),
        new Staggered(),
        new Medallion(),
        new OnePatch(),
        new FreePlacement(),
    ];

    public static Setting? Find(string keyword) =>
        All.FirstOrDefault(setting => setting.Keyword == keyword);
}
