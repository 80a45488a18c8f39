using System.Collections.Immutable;

namespace PatternPress.Source.Shapes;

/// <summary>
/// What a place in a source file may contain, as data. <see cref="ShapeChecker"/> holds a tree against it,
/// <see cref="JsonSchemaWriter"/> writes it down for editors: both say the same because both read this.
/// </summary>
/// <param name="What">What stands here, with its article, as a message would say it: "a fabric", "the binding".</param>
/// <param name="Description">One or two sentences for whoever writes the file.</param>
public abstract record Shape(string What, string Description)
{
    /// <summary>Good values; every one of them fits the shape.</summary>
    public ImmutableArray<string> Examples { get; init; } = [];

    /// <summary>A good value on one line as it stands in a file, for messages; null where examples or keys give one.</summary>
    public string? Sample { get; init; }

    /// <summary>"fabric" for "a fabric".</summary>
    internal string Noun
    {
        get
        {
            var space = What.IndexOf(' ');
            return space > 0 && What[..space] is "a" or "an" or "the" ? What[(space + 1)..] : What;
        }
    }
}
