namespace PatternPress.Typesetting.Drawings;

/// <summary>The small shapes that hatches repeat.</summary>
public enum HatchShape
{
    Ring,
    Square,
    Triangle,
    Diamond,
    Plus,
    Cross,
    Chevron,
    Bow,
}
