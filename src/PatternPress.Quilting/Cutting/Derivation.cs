using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Cutting;

/// <summary>How a printed number came about: named terms, the last of which is the number.</summary>
public sealed record Derivation
{
    private readonly Func<ImmutableArray<DerivationTerm>> _terms;

    public Derivation(string of, ImmutableArray<DerivationTerm> terms)
        : this(of, () => terms) { }

    /// <param name="of">What is derived: "fabric B", "binding".</param>
    /// <param name="terms">Put into words only when somebody asks, which hardly any build does.</param>
    public Derivation(string of, Func<ImmutableArray<DerivationTerm>> terms) =>
        (Of, _terms) = (of, terms);

    public string Of { get; init; }

    public ImmutableArray<DerivationTerm> Terms => _terms();
}

/// <summary>One line of a derivation.</summary>
/// <param name="Name">What the value is: "strips", "to buy".</param>
/// <param name="How">The working: "5 × 3 7/8 in".</param>
public sealed record DerivationTerm(string Name, string How, Quantity Value);

/// <summary>A value of a derivation.</summary>
public abstract record Quantity
{
    private Quantity() { }

    public sealed record Count(long Value) : Quantity;

    public sealed record Measure(Length Value) : Quantity;

    /// <summary>Panels as the shop sells them.</summary>
    public sealed record Panels(long Value, Panel Kind) : Quantity;

    /// <summary>A length as the shop sells it.</summary>
    public sealed record Bought(Yardage Value) : Quantity;
}
