namespace PatternPress.Booklet.Looks;

/// <summary>The forms that tables, notes and the cover take.</summary>
public sealed record PageForms
{
    /// <summary>What stands behind the heads of tables.</summary>
    public Ground TableHead { get; init; } = Ground.Tint;

    /// <summary>What parts the rows of tables.</summary>
    public TableRules TableRules { get; init; } = TableRules.Rows;

    /// <summary>What sets notes and warnings apart.</summary>
    public NoteShape Notes { get; init; } = NoteShape.Bar;

    /// <summary>What stands behind the cover, to the edges of the sheet.</summary>
    public Ground Cover { get; init; } = Ground.None;
}

/// <summary>What stands behind something.</summary>
public enum Ground
{
    /// <summary>Nothing: the paper.</summary>
    None,

    /// <summary>The tint of the looks.</summary>
    Tint,

    /// <summary>A pale mixture of the accent.</summary>
    Pale,

    /// <summary>The accent itself; what stands on it is white or black.</summary>
    Accent,
}

/// <summary>What parts the rows and columns of a table.</summary>
public enum TableRules
{
    /// <summary>Thin rules between rows.</summary>
    Rows,

    /// <summary>Every other row on the tint.</summary>
    Stripes,

    /// <summary>Thin rules between rows and between columns.</summary>
    Grid,
}

/// <summary>What sets a note apart from the text around it.</summary>
public enum NoteShape
{
    /// <summary>A tint with a bar at its left.</summary>
    Bar,

    /// <summary>A frame.</summary>
    Frame,

    /// <summary>A tint.</summary>
    Plain,
}
