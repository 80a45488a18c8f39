using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Techniques;
using PatternPress.Source;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>Reads house rules: the house's own file, <c>house:</c> in a pattern, <c>house:</c> in a size's changes.</summary>
internal static class HouseReader
{
    // Cotton shrinks by some 3 to 5 % (common practice, no source); far more is a slip of the pen.
    private const int MostShrinkage = 25;

    /// <param name="start">The rules that hold where the map says nothing.</param>
    public static House Read(MapNode? map, House start, ReadContext context)
    {
        if (map is null)
        {
            return start;
        }
        if (ReadContext.Text(map, "unit")?.Value is { } unit)
        {
            start = start with
            {
                Unit = unit == "centimetre" ? LengthUnit.Centimetre : LengthUnit.Inch,
            };
            context.Unit = start.Unit;
        }
        Length Measure(string key, Length otherwise, bool allowZero = false) =>
            context.Measure(map, key, key.Replace('-', ' '), allowZero) ?? otherwise;
        T Choice<T>(string key, T otherwise, params (string Word, T Value)[] words)
        {
            string? given = ReadContext.Text(map, key)?.Value;
            foreach ((string word, T value) in words)
            {
                if (word == given)
                {
                    return value;
                }
            }
            return otherwise;
        }
        (Length From, Length? To)? width = context.MeasureRange(
            map,
            "usable-width",
            "usable width"
        );
        return start with
        {
            Seam = Measure("seam", start.Seam),
            UsableWidth = width?.From ?? start.UsableWidth,
            UsableWidthTo = width is { } given ? given.To : start.UsableWidthTo,
            EndSquaring = Measure("end-squaring", start.EndSquaring, allowZero: true),
            Shrinkage = ReadPerCent(map, "shrinkage", context, MostShrinkage) ?? start.Shrinkage,
            Ruler = new Ruler(Measure("ruler", start.Ruler.Step)),
            YardStep = Measure("yard-step", start.YardStep),
            Thirds = ReadContext.Flag(map, "thirds", start.Thirds),
            Allowance = ReadPerCent(map, "allowance", context, 100) ?? start.Allowance,
            Squaring = Measure("squaring", start.Squaring, allowZero: true),
            Cutting = Choice(
                "cutting",
                start.Cutting,
                ("exact", CuttingStyle.Exact),
                ("oversize", CuttingStyle.Oversize)
            ),
            Oversize = Measure("oversize", start.Oversize),
            MiterAllowance = Measure("miter-allowance", start.MiterAllowance, allowZero: true),
            CopingLeast = Measure("coping-least", start.CopingLeast),
            CopingMost = Measure("coping-most", start.CopingMost),
            TriangleOversize = Measure(
                "triangle-oversize",
                start.TriangleOversize,
                allowZero: true
            ),
            Plan = Choice(
                "plan",
                start.Plan,
                ("plain", PlanStyle.Plain),
                ("thrifty", PlanStyle.Thrifty)
            ),
            ThriftyGain = Measure("thrifty-gain", start.ThriftyGain, allowZero: true),
            LongBorders = Choice(
                "long-borders",
                start.LongBorders,
                ("least-fabric", LongBorders.LeastFabric),
                ("joined", LongBorders.Joined),
                ("in-one-length", LongBorders.InOneLength)
            ),
            BackingOverhang = Measure("backing-overhang", start.BackingOverhang, allowZero: true),
            BackingWidth = Measure("backing-width", start.BackingWidth),
            BackingSeam = Measure("backing-seam", start.BackingSeam, allowZero: true),
            BattingOverhang = Measure("batting-overhang", start.BattingOverhang, allowZero: true),
            BindingWidth = Measure("binding-width", start.BindingWidth),
            BindingExtra = Measure("binding-extra", start.BindingExtra, allowZero: true),
            BindingApart = ReadContext.Flag(map, "binding-apart", start.BindingApart),
            Joins = Choice(
                "joins",
                start.Joins,
                ("straight", JoinStyle.Straight),
                ("diagonal", JoinStyle.Diagonal)
            ),
            Pressing = Choice(
                "pressing",
                start.Pressing,
                ("nested", PressingStyle.Nested),
                ("to-one-side", PressingStyle.ToOneSide),
                ("open", PressingStyle.Open)
            ),
            Without = ReadTechniques(map, context) ?? start.Without,
        };
    }

    private static Rational? ReadPerCent(MapNode map, string key, ReadContext context, int most)
    {
        if (ReadContext.Text(map, key) is not { } text)
        {
            return null;
        }
        string number = text
            .Value.Replace("per cent", "", StringComparison.Ordinal)
            .Replace("%", "", StringComparison.Ordinal);
        if (!LengthText.TryParseNumber(number, out Rational perCent, out _))
        {
            context.Report(
                PP0215_NotAMeasure.NotPerCent(
                    text.Span,
                    key,
                    $"\"{text.Value}\" is not a number of per cent",
                    most
                )
            );
            return null;
        }
        if (perCent.Sign < 0 || perCent > most)
        {
            context.Report(
                PP0215_NotAMeasure.NotPerCent(
                    text.Span,
                    key,
                    $"\"{text.Value}\" is not between 0 % and {most} %",
                    most
                )
            );
            return null;
        }
        return perCent / 100;
    }

    private static ImmutableArray<string>? ReadTechniques(MapNode map, ReadContext context)
    {
        if (ReadContext.Text(map, "without") is not { } text)
        {
            return null;
        }
        var techniques = ImmutableArray.CreateBuilder<string>();
        foreach (Slice word in text.Words())
        {
            Slice name = word.Text.EndsWith(',') ? word.Sub(0, word.Length - 1) : word;
            if (TechniqueCatalog.TryFind(name.Text, out _))
            {
                techniques.Add(name.Text);
            }
            else
            {
                context.Report(
                    PP0222_UnsuitableMethod.Unknown(
                        name.Span,
                        name.Text,
                        TechniqueCatalog.All.Select(t => t.Keyword)
                    )
                );
            }
        }
        return techniques.ToImmutable();
    }
}
