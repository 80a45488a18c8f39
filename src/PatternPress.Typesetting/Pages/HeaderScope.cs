namespace PatternPress.Typesetting.Pages;

/// <summary>What a header cell heads.</summary>
public enum HeaderScope
{
    None,
    Column,
    Row,
}
