using System.Globalization;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Cutting;

/// <summary>Derivations in words, in the unit a house prints in. For proofreaders; booklets do not print them.</summary>
public static class DerivationText
{
    /// <summary>"5", "3 7/8 in", "1 3/8 yd".</summary>
    public static string Value(Quantity quantity, LengthUnit unit) =>
        quantity switch
        {
            Quantity.Count count => count.Value.ToString(CultureInfo.InvariantCulture),
            Quantity.Measure measure => HouseText.Of(measure.Value, unit),
            Quantity.Panels panels => panels.Kind.Told(panels.Value),
            Quantity.Bought bought => HouseText.Bought(bought.Value, unit),
            _ => "",
        };

    /// <summary>
    /// What is derived: a yardage or a count is the last term; of pieces and of batting it is all that is printed, "80 of
    /// 3 1/2 in × 3 1/2 in".
    /// </summary>
    public static string Result(Derivation derivation, LengthUnit unit)
    {
        string pieces = Joined("pieces"),
            size = Joined("width", "height");
        return pieces.Length > 0 ? $"{pieces} of {size}"
            : derivation.Terms.IsEmpty ? ""
            : derivation.Terms[^1].Value is Quantity.Measure && size.Length > 0 ? size
            : Value(derivation.Terms[^1].Value, unit);

        string Joined(params string[] names) =>
            string.Join(
                " × ",
                derivation
                    .Terms.Where(t => names.Contains(t.Name))
                    .Select(t => Value(t.Value, unit))
            );
    }

    /// <summary>All terms in one line: "strips of 3 7/8 in: 5 × 3 7/8 in, each 10 B1 = 19 3/8 in; …".</summary>
    public static string Line(Derivation derivation, LengthUnit unit) =>
        string.Join(
            "; ",
            derivation.Terms.Select(term => $"{term.Name}: {term.How} = {Value(term.Value, unit)}")
        );
}
