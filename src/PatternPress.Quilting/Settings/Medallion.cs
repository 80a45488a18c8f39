namespace PatternPress.Quilting.Settings;

/// <summary>
/// A center with rounds about it. The rounds are borders, so the setting itself only sets the center: straight, unless the
/// quilt says that it stands on point.
/// </summary>
public sealed class Medallion : Setting
{
    public const string Word = "medallion";

    private readonly Straight _center = new();

    public override string Keyword => Word;

    public override Field? Lay(Layout layout) => _center.Lay(layout);
}
