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
    public static Diagnostic Found(Span place, string key, string setting, string other) =>
        Instance.Report(
            place,
            $"a quilt set {setting} has no {key}",
            $"only a quilt set {other} has {key}",
            hint: $"leave {key} out, or write setting: {other}"
        );
}
