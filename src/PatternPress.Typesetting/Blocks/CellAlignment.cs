namespace PatternPress.Typesetting.Blocks;

/// <summary>How the content of a column's cells stands across.</summary>
public enum CellAlignment
{
    Left,
    Centre,
    Right,

    /// <summary>Numbers line up where the whole number ends: fractions, decimals and units stand to the right of that.</summary>
    Number,

    /// <summary>As <see cref="Number"/>, with the column of numbers as a whole at the left, where its words stand too.</summary>
    NumberLeft,
}
