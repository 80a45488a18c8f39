namespace PatternPress.Quilting.Techniques;

/// <summary>One step of a recipe.</summary>
/// <param name="name">Names the step's text in the templates: "mark", "sew", "cut", "press", "trim".</param>
/// <param name="draw">Draws its diagram; called when the diagram is first wanted, as checking a pattern never does.</param>
public sealed class Step(string name, Func<Sketch> draw)
{
    private readonly Lazy<Sketch> _sketch = new(draw);

    /// <summary>Names the step's text in the templates: a heading of the technique's file.</summary>
    public string Name => name;

    /// <summary>Its diagram.</summary>
    public Sketch Sketch => _sketch.Value;

    public override string ToString() => name;
}
