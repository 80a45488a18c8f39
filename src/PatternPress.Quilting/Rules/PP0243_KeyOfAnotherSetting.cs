using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The quilt says something that only another setting has a place for.</summary>
public sealed class PP0243_KeyOfAnotherSetting : ReadingRule
{
    public static PP0243_KeyOfAnotherSetting Instance { get; } = new();

    private PP0243_KeyOfAnotherSetting()
        : base("PP0243", Severity.Error, "Key of another setting") { }

    /// <param name="place">What has no place.</param>
    /// <param name="key">Its key: "triangles".</param>
    /// <param name="setting">The quilt's setting.</param>
    /// <param name="other">The setting that has a place for it.</param>
    /// <param name="said">The key that names the setting: "setting", or "center" of a medallion.</param>
    public static Diagnostic Found(
        Span place,
        string key,
        string setting,
        string other,
        string said = "setting"
    )
    {
        string whole = said == "setting" ? "quilt" : said;
        return Instance.Report(
            place,
            $"a {whole} set {setting} has no {key}",
            $"only a {whole} set {other} has {key}",
            hint: $"leave {key} out, or write {said}: {other}"
        );
    }

    /// <summary>A key of a medallion in another setting.</summary>
    public static Diagnostic OfMedallion(Span place, string key, string setting) =>
        Instance.Report(
            place,
            $"a quilt set {setting} has no {key}",
            "only a medallion has a center and rounds",
            hint: $"leave {key} out, or write setting: medallion"
        );
}
