namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>Numbers places, giving places that differ only by rounding the same number.</summary>
/// <param name="near">Places closer than this are one.</param>
internal sealed class PlaceIndex(double near)
{
    private readonly double _cell = near * 100;
    private readonly List<Spot> _places = [];
    private readonly Dictionary<(long X, long Y), int> _ids = [];

    public int Count => _places.Count;

    public Spot this[int id] => _places[id];

    /// <summary>The number of a place, new if none is near.</summary>
    public int IdOf(Spot place)
    {
        (long x, int besideX) = CellOf(place.X);
        (long y, int besideY) = CellOf(place.Y);
        if (
            _ids.TryGetValue((x, y), out int id)
            || (besideX != 0 && _ids.TryGetValue((x + besideX, y), out id))
            || (besideY != 0 && _ids.TryGetValue((x, y + besideY), out id))
            || (
                besideX != 0 && besideY != 0 && _ids.TryGetValue((x + besideX, y + besideY), out id)
            )
        )
        {
            return id;
        }
        _ids.Add((x, y), _places.Count);
        _places.Add(place);
        return _places.Count - 1;
    }

    // The cell, and which neighbour cell is so near that the same place may have fallen there.
    private (long Cell, int Beside) CellOf(double value)
    {
        double scaled = value / _cell,
            cell = Math.Floor(scaled),
            rest = scaled - cell;
        return (
            (long)cell,
            rest < 0.02 ? -1
            : rest > 0.98 ? 1
            : 0
        );
    }
}
