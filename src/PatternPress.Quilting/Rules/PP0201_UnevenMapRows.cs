using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Rows of a map hold different numbers of cells.</summary>
public sealed class PP0201_UnevenMapRows : ReadingRule
{
    public static PP0201_UnevenMapRows Instance { get; } = new();

    private PP0201_UnevenMapRows()
        : base("PP0201", Severity.Error, "Map rows of unequal length") { }

    /// <param name="map">Whose map: "the map of block \"lamp\"", "the fill".</param>
    /// <param name="row">The row that differs.</param>
    /// <param name="number">Its number, from 1.</param>
    /// <param name="first">The first row.</param>
    public static Diagnostic Found(
        string map,
        Span row,
        int number,
        int cells,
        Span first,
        int firstCells
    ) =>
        Instance.Report(
            row,
            $"row {number} of {map} has {Wording.Count(cells, "cell", "cells")}, not {firstCells}",
            $"{Wording.Count(cells, "cell", "cells")} here",
            "Every row of a map needs the same number of cells, or the map is not a rectangle.",
            cells < firstCells
                ? $"add {Wording.Count(firstCells - cells, "cell", "cells")} to row {number}, or was a space left out?"
                : $"take {Wording.Count(cells - firstCells, "cell", "cells")} out of row {number}, or does the first row lack some?",
            new Label(first, $"{Wording.Count(firstCells, "cell", "cells")} in the first row")
        );
}
