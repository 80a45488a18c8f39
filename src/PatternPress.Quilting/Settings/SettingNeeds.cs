using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;

namespace PatternPress.Quilting.Settings;

/// <summary>Whether a design says what its setting needs, and nothing that it has no place for.</summary>
internal static class SettingNeeds
{
    public static bool AreMet(Setting setting, SizeDesign size, FindingCollector findings)
    {
        QuiltDesign design = size.Quilt;
        if (!setting.StandsOnPoint)
        {
            if (design.Triangles is { } triangles)
            {
                Report("triangles", triangles.Span);
            }
            if (design.Between is { } between)
            {
                Report("between", between.Span);
            }
            return design.Triangles is null && design.Between is null;
        }
        if (design.Triangles is null)
        {
            findings.Add(new Finding(PP0242_NoTriangles.Found(design.Setting.Span)));
            return false;
        }
        if (design.Triangles.Float.Sign > 0 && design.Sashing is { } sashing)
        {
            findings.Add(
                new Finding(PP0245_FloatWithSashing.Found(design.Triangles.Span, sashing.Span))
            );
            return false;
        }
        return true;

        void Report(string key, Source.Span place) =>
            findings.Add(
                new Finding(
                    PP0243_KeyOfAnotherSetting.Found(place, key, setting.Keyword, "on-point")
                )
            );
    }
}
