namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>Keeps the boxes of a drawing's labels apart: a label goes to the first of its candidate places that is free.</summary>
/// <param name="gap">Least distance between two labels.</param>
internal sealed class LabelBoard(double gap)
{
    private readonly List<Box> _taken = [];
    private readonly Dictionary<(int, int), List<Box>> _cells = [];
    private const double Cell = 48;

    public IReadOnlyList<Box> Taken => _taken;

    /// <summary>Whether nothing has been put where the box would lie.</summary>
    public bool IsFree(Box box)
    {
        Box grown = box.Grown(gap / 2);
        foreach ((int, int) cell in CellsOf(grown))
        {
            if (_cells.TryGetValue(cell, out List<Box>? here))
            {
                foreach (Box taken in here)
                {
                    if (taken.Overlaps(grown))
                    {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /// <summary>Keeps later labels off a place.</summary>
    public void Take(Box box)
    {
        Box grown = box.Grown(gap / 2);
        _taken.Add(box);
        foreach ((int, int) cell in CellsOf(grown))
        {
            if (!_cells.TryGetValue(cell, out List<Box>? here))
            {
                _cells.Add(cell, here = []);
            }
            here.Add(grown);
        }
    }

    /// <summary>Keeps labels off a line.</summary>
    public void TakeLine(Spot from, Spot to, double width)
    {
        double length = (to - from).Length;
        int parts = Math.Max(1, (int)Math.Ceiling(length / Math.Max(width, 2)));
        for (int i = 0; i < parts; i++)
        {
            Spot a = Spot.Between(from, to, (double)i / parts),
                b = Spot.Between(from, to, (i + 1.0) / parts);
            Take(Box.Of([a, b]).Grown(width / 2));
        }
    }

    /// <summary>Takes the first candidate that is free.</summary>
    public Box? Place(IEnumerable<Box> candidates)
    {
        foreach (Box box in candidates)
        {
            if (IsFree(box))
            {
                Take(box);
                return box;
            }
        }
        return null;
    }

    private static IEnumerable<(int, int)> CellsOf(Box box)
    {
        int left = (int)Math.Floor(box.X / Cell),
            right = (int)Math.Floor(box.Right / Cell),
            top = (int)Math.Floor(box.Y / Cell),
            bottom = (int)Math.Floor(box.Bottom / Cell);
        for (int y = top; y <= bottom; y++)
        {
            for (int x = left; x <= right; x++)
            {
                yield return (x, y);
            }
        }
    }
}
