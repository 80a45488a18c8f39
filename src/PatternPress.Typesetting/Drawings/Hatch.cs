using System.Collections.Immutable;

namespace PatternPress.Typesetting.Drawings;

/// <summary>A black-and-white texture that tells one area from another without colour.</summary>
/// <param name="Name">A plain name, for example <c>rising lines</c>.</param>
/// <param name="Layers">What is drawn, in order.</param>
public sealed record Hatch(string Name, ImmutableArray<HatchLayer> Layers)
{
    public override string ToString() => Name;
}
