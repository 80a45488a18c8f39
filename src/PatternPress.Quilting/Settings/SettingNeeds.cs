using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;
using PatternPress.Source;

namespace PatternPress.Quilting.Settings;

/// <summary>Whether a design says what its setting needs, and nothing that it has no place for.</summary>
internal static class SettingNeeds
{
    private static bool PatchIsMet(QuiltDesign design, SizeDesign size, FindingCollector findings)
    {
        foreach (
            (string key, Source.Span? span, string other) in new[]
            {
                ("sashing", design.Sashing?.Span, "straight"),
                ("triangles", design.Triangles?.Span, "on-point"),
                ("between", design.Between?.Span, "on-point"),
            }
        )
        {
            if (span is { } place)
            {
                findings.Add(
                    new Finding(PP0243_KeyOfAnotherSetting.Found(place, key, "one-patch", other))
                );
                return false;
            }
        }
        if (design.Fill.IsNone)
        {
            findings.Add(PP0276_NoFill.Found(design.Fill.Span, size.Key));
            return false;
        }
        if (design.Patch is not { } patch)
        {
            findings.Add(new Finding(PP0256_NoPatch.Found(design.Setting.Span)));
            return false;
        }
        (SettingPieceKind whole, _) = SixtyDegrees.KindsOf(patch.Shape);
        Length strip = SixtyDegrees.StripHeight(whole, patch.Height, size.House.Seam);
        if (!size.House.Ruler.Shows(strip))
        {
            Length nearest = patch.Height + size.House.Ruler.Nearest(strip) - strip;
            findings.Add(
                new Finding(
                    PP0258_StripBetweenMarks.Found(
                        patch.Span,
                        size.Key,
                        patch.Height,
                        strip,
                        nearest
                    )
                )
            );
            return false;
        }
        const int least = 3;
        if (size.Columns < least)
        {
            findings.Add(
                new Finding(PP0259_RowTooShort.Found(size.Span, size.Key, size.Columns, least))
            );
            return false;
        }
        return true;
    }

    public static bool AreMet(Setting setting, SizeDesign size, FindingCollector findings)
    {
        QuiltDesign design = size.Quilt;
        if (setting.HasBlocks && design.Patch is { } stray)
        {
            findings.Add(
                new Finding(
                    PP0243_KeyOfAnotherSetting.Found(
                        stray.Span,
                        "patch",
                        setting.Keyword,
                        "one-patch"
                    )
                )
            );
            return false;
        }
        if (!setting.HasBlocks)
        {
            return PatchIsMet(design, size, findings);
        }
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
        if (setting.HasGrid || setting.IsFree)
        {
            Refuse(size.BlockSize is null ? null : size.Span, "block size", "straight");
        }
        if (setting.HasGrid)
        {
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
        if (!setting.IsFree)
        {
            Refuse(design.Places?.Span, "places", "free");
            if (design.Fill.IsNone)
            {
                findings.Add(PP0276_NoFill.Found(design.Fill.Span, size.Key));
                met = false;
            }
        }
        else if (design.Places is null)
        {
            Need(PP0268_NoPlaces.Found(design.FieldSetting.Span));
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
            Need(PP0264_NoEnds.Found(design.FieldSetting.Span));
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
            Need(PP0263_NoStrips.Found(design.FieldSetting.Span));
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
