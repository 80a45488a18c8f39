namespace PatternPress.Source.Shapes;

/// <summary>
/// A scalar. With a form, what does not have it is refused here; without one, whoever reads the value judges it.
/// </summary>
public sealed record TextShape(string What, string Description, TextForm? Form = null)
    : Shape(What, Description)
{
    /// <summary>How the text is read.</summary>
    public TextUse Use { get; init; }
}
