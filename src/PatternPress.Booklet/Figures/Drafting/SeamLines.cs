namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>
/// The edges of many patches sorted onto the straight lines they lie on. From there two drawings follow: the seams
/// (every edge once, runs joined end to end) and the outline of the patches together (edges that two patches share
/// cancel, also where a long edge meets several short ones). Both make a drawing of thousands of patches small.
/// Patches run clockwise and do not overlap.
/// </summary>
internal sealed class SeamLines
{
    /// <summary>Places closer than this are one: finer than any ruler mark, coarser than the rounding of doubles.</summary>
    private const double Near = 1e-5;

    private readonly List<Line> _lines = [];
    private readonly Dictionary<(long Angle, long Offset), int> _index = [];

    /// <param name="Along">Unit vector, pointing right or straight down.</param>
    /// <param name="Foot">The line's nearest place to the origin.</param>
    private sealed record Line(Spot Along, Spot Foot, List<Edge> Edges)
    {
        public Spot At(double distance) => Foot + (Along * distance);
    }

    /// <param name="Sign">+1 where the patch runs along the line, −1 where it runs back.</param>
    private readonly record struct Edge(double Low, double High, int Sign, int Tag);

    /// <summary>Adds the edges of a patch, moved by <paramref name="by"/>.</summary>
    /// <param name="tag">Whose patch it is, for <see cref="Neighbors"/>.</param>
    public void Add(ReadOnlySpan<Spot> corners, Spot by = default, int tag = 0)
    {
        if (corners.Length == 0)
        {
            return;
        }
        Spot from = corners[^1] + by;
        foreach (Spot corner in corners)
        {
            Spot to = corner + by;
            AddEdge(from, to, tag);
            from = to;
        }
    }

    /// <summary>Every seam once, as the longest straight runs.</summary>
    public List<(Spot From, Spot To)> Seams()
    {
        var seams = new List<(Spot, Spot)>();
        foreach (Line line in _lines)
        {
            line.Edges.Sort((a, b) => a.Low.CompareTo(b.Low));
            double start = line.Edges[0].Low,
                reach = start;
            foreach (Edge edge in line.Edges)
            {
                if (edge.Low > reach + Near)
                {
                    seams.Add((line.At(start), line.At(reach)));
                    start = edge.Low;
                }
                reach = Math.Max(reach, edge.High);
            }
            seams.Add((line.At(start), line.At(reach)));
        }
        return seams;
    }

    /// <summary>The outline of all patches together: closed loops, holes running the other way round.</summary>
    public List<Spot[]> Outline()
    {
        var corners = new PlaceIndex(Near);
        var starts = new List<(int From, int To)>();
        foreach (Line line in _lines)
        {
            foreach ((double low, double high, int sign) in Net(line))
            {
                int a = corners.IdOf(line.At(low)),
                    b = corners.IdOf(line.At(high));
                if (a != b)
                {
                    starts.Add(sign > 0 ? (a, b) : (b, a));
                }
            }
        }
        return Loops(starts, corners);
    }

    /// <summary>How long the seams between patches of two different tags are together.</summary>
    public SortedDictionary<(int First, int Second), double> Neighbors()
    {
        var lengths = new SortedDictionary<(int, int), double>();
        foreach (Line line in _lines)
        {
            line.Edges.Sort((a, b) => a.Low.CompareTo(b.Low));
            var open = new List<Edge>();
            foreach (Edge edge in line.Edges)
            {
                open.RemoveAll(e => e.High <= edge.Low + Near);
                foreach (Edge other in open)
                {
                    double shared = Math.Min(edge.High, other.High) - edge.Low;
                    if (other.Sign != edge.Sign && other.Tag != edge.Tag && shared > Near)
                    {
                        var pair = (Math.Min(edge.Tag, other.Tag), Math.Max(edge.Tag, other.Tag));
                        lengths[pair] = lengths.GetValueOrDefault(pair) + shared;
                    }
                }
                open.Add(edge);
            }
        }
        return lengths;
    }

    private void AddEdge(Spot from, Spot to, int tag)
    {
        Spot step = to - from;
        double length = step.Length;
        if (length < Near)
        {
            return;
        }
        bool along = step.X > Near || (step.X > -Near && step.Y > 0);
        Spot direction = step * ((along ? 1 : -1) / length);
        Line line = LineOf(from, direction);
        double a = Spot.Dot(from, line.Along),
            b = Spot.Dot(to, line.Along);
        line.Edges.Add(along ? new(a, b, 1, tag) : new(b, a, -1, tag));
    }

    private Line LineOf(Spot place, Spot direction)
    {
        const double anglesPerRadian = 1e6,
            offsetsPerUnit = 1e4;
        double angle = Math.Atan2(direction.Y, direction.X) * anglesPerRadian;
        double offset = Spot.Cross(direction, place) * offsetsPerUnit;
        long nearAngle = (long)Math.Round(angle),
            nearOffset = (long)Math.Round(offset);
        // The same line, met a second time, may round to the neighbouring cell.
        for (int i = 0; i < 9; i++)
        {
            long otherAngle = nearAngle + Around(i % 3, angle - nearAngle),
                otherOffset = nearOffset + Around(i / 3, offset - nearOffset);
            if (_index.TryGetValue((otherAngle, otherOffset), out int found))
            {
                return _lines[found];
            }
            if (i == 0 && Math.Abs(angle - nearAngle) < 0.4 && Math.Abs(offset - nearOffset) < 0.4)
            {
                break;
            }
        }
        var normal = new Spot(-direction.Y, direction.X);
        var line = new Line(direction, normal * Spot.Dot(normal, place), []);
        _index.Add((nearAngle, nearOffset), _lines.Count);
        _lines.Add(line);
        return line;
    }

    private static long Around(int which, double rest) =>
        which switch
        {
            0 => 0,
            1 => rest < 0 ? -1 : 1,
            _ => rest < 0 ? 1 : -1,
        };

    // Runs of a line where the patches on its two sides do not cancel.
    private static List<(double Low, double High, int Sign)> Net(Line line)
    {
        var ends = new List<(double At, int Step)>(line.Edges.Count * 2);
        foreach (Edge edge in line.Edges)
        {
            ends.Add((edge.Low, edge.Sign));
            ends.Add((edge.High, -edge.Sign));
        }
        ends.Sort((a, b) => a.At.CompareTo(b.At));
        var runs = new List<(double, double, int)>();
        int net = 0;
        double start = 0;
        for (int i = 0; i < ends.Count; )
        {
            double at = ends[i].At;
            int before = net;
            for (; i < ends.Count && ends[i].At <= at + Near; i++)
            {
                net += ends[i].Step;
            }
            if (net == before)
            {
                continue;
            }
            if (before != 0)
            {
                runs.Add((start, at, Math.Sign(before)));
            }
            start = at;
        }
        return runs;
    }

    private static List<Spot[]> Loops(List<(int From, int To)> edges, PlaceIndex corners)
    {
        var next = new List<int>[corners.Count];
        for (int i = edges.Count - 1; i >= 0; i--)
        {
            (next[edges[i].From] ??= []).Add(edges[i].To);
        }
        var loops = new List<Spot[]>();
        var loop = new List<Spot>();
        foreach ((int first, _) in edges)
        {
            while (next[first] is { Count: > 0 })
            {
                loop.Clear();
                int at = first;
                do
                {
                    loop.Add(corners[at]);
                    List<int> ways = next[at];
                    int to = ways[^1];
                    ways.RemoveAt(ways.Count - 1);
                    at = to;
                } while (at != first && next[at] is { Count: > 0 });
                loops.Add([.. loop]);
            }
        }
        return loops;
    }
}
