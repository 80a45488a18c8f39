using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Source;

namespace PatternPress.Quilting.Settings;

/// <summary>Whether a design says what its setting needs, and nothing that it has no place for.</summary>
internal static class SettingNeeds
{
    public static bool AreMet(Setting setting, SizeDesign size, FindingCollector findings)
    {
        QuiltDesign design = size.Quilt;
        bool met = true;
        if (!setting.StandsOnPoint)
        {
            Refuse(design.Triangles?.Span, "triangles", "on-point");
            Refuse(design.Between?.Span, "between", "on-point");
        }
        if (!setting.HasGrid)
        {
            Refuse(design.Columns?.Span, "columns", "in-sections");
            Refuse(design.Rows?.Span, "rows", "in-sections");
        }
        else
        {
            Refuse(size.BlockSize is null ? null : size.Span, "block size", "straight");
            if (design.Columns is null || design.Rows is null)
            {
                Need(
                    PP0260_NoGrid.Found(
                        design.FieldSetting.Span,
                        design.Columns is not null ? "rows"
                            : design.Rows is not null ? "columns"
                            : "columns and rows"
                    )
                );
            }
        }
        if (!setting.TakesSashing)
        {
            Refuse(design.Sashing?.Span, "sashing", "straight");
        }
        if (setting.HasOnlyLongStrips)
        {
            Refuse(design.Sashing?.Cornerstones?.Span, "cornerstones", "straight");
        }
        if (!setting.IsStaggered)
        {
            Refuse(design.Ends?.Span, "ends", "staggered");
            Refuse(design.AlongColumns?.Span, "along", "staggered");
        }
        else if (design.Ends is null)
        {
            Need(PP0264_NoEnds.Found(design.Setting.Span));
        }
        else if (design.Ends.Rows is not [{ Length: 1 or 2 }])
        {
            Need(
                PP0230_WrongNumberOfEntries.Found(
                    design.Ends.Span,
                    "the ends of staggered lines",
                    "one coloring, or one for each end: H H/180",
                    design.Ends.Rows.Sum(row => row.Length)
                )
            );
        }
        if (setting is Strippy && design.Sashing is null)
        {
            Need(PP0263_NoStrips.Found(design.Setting.Span));
        }
        if (setting.StandsOnPoint && design.Triangles is null)
        {
            Need(PP0242_NoTriangles.Found(design.FieldSetting.Span));
        }
        if (design.Triangles is { Float.Sign: > 0 } triangles && design.Sashing is { } sashing)
        {
            Need(PP0245_FloatWithSashing.Found(triangles.Span, sashing.Span));
        }
        return met;

        void Refuse(Span? place, string key, string other)
        {
            if (place is { } span)
            {
                Need(
                    PP0243_KeyOfAnotherSetting.Found(
                        span,
                        key,
                        setting.Keyword,
                        other,
                        design.CenterSetting is null ? "setting" : "center"
                    )
                );
            }
        }

        void Need(Source.Diagnostics.Diagnostic diagnostic)
        {
            findings.Add(new Finding(diagnostic));
            met = false;
        }
    }
}
