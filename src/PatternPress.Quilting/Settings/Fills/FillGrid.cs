namespace PatternPress.Quilting.Settings.Fills;

/// <summary>The places that a fill is spread over: lines of places from the top.</summary>
/// <param name="Rows">Lines down, at least 1; those in between not counted.</param>
/// <param name="Columns">Places across, at least 1.</param>
/// <param name="Between">Whether between each two lines lies a line of one place less, as on point. Then the edge neighbors
/// of a place lie in the lines above and below it.</param>
public readonly record struct FillGrid(int Rows, int Columns, bool Between = false)
{
    /// <summary>Whether every other line lies half a place aside and has one place less; half a place at each of its ends is not
    /// filled. A place of it touches two of the line above and two of that below.</summary>
    public bool Shifted { get; init; }

    public int Lines => Between ? (2 * Rows) - 1 : Rows;

    public int Count =>
        (Rows * Columns)
        + (
            Between ? (Rows - 1) * (Columns - 1)
            : Shifted ? -(Rows / 2)
            : 0
        );

    /// <summary>Places in a line.</summary>
    public int LengthOf(int line) => (Between || Shifted) && line % 2 == 1 ? Columns - 1 : Columns;

    /// <summary>The stripe from lower left to upper right that a place lies in, from 0 at the upper left.</summary>
    public int Diagonal(int line, int place) =>
        Between || Shifted ? place + ((line + 1) / 2) : line + place;

    /// <summary>Fills every place.</summary>
    public T[][] Fill<T>(Func<int, int, T> at)
    {
        var cells = new T[Lines][];
        for (int line = 0; line < cells.Length; line++)
        {
            cells[line] = new T[LengthOf(line)];
            for (int place = 0; place < cells[line].Length; place++)
            {
                cells[line][place] = at(line, place);
            }
        }
        return cells;
    }

    /// <summary>The edge neighbors of every place; places are counted line by line.</summary>
    internal int[][] Neighbors()
    {
        int[] first = new int[Lines + 1];
        for (int line = 0; line < Lines; line++)
        {
            first[line + 1] = first[line] + LengthOf(line);
        }
        var neighbors = new int[Count][];
        var near = new List<int>(4);
        for (int line = 0; line < Lines; line++)
        {
            int length = LengthOf(line);
            for (int place = 0; place < length; place++)
            {
                near.Clear();
                if (!Between)
                {
                    Add(line, place - 1);
                    Add(line, place + 1);
                }
                if (!Between && !Shifted)
                {
                    Add(line - 1, place);
                    Add(line + 1, place);
                }
                else
                {
                    // A long line's place c touches c − 1 and c of the short lines, a short line's place c and c + 1.
                    int left = line % 2 == 0 ? place - 1 : place;
                    Add(line - 1, left);
                    Add(line - 1, left + 1);
                    Add(line + 1, left);
                    Add(line + 1, left + 1);
                }
                neighbors[first[line] + place] = [.. near];
            }
        }
        return neighbors;

        void Add(int line, int place)
        {
            if (
                line >= 0
                && line < first.Length - 1
                && place >= 0
                && place < first[line + 1] - first[line]
            )
            {
                near.Add(first[line] + place);
            }
        }
    }
}
