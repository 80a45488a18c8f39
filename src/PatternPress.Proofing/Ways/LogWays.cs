using System.Globalization;
using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Proofing.Ways;

/// <summary>
/// Log cabins, courthouse steps and half log cabins: logs sewn one after the other around a center. Here the unit grows as
/// a maker sews it, from its center; what it measures at the end must be what is asked for.
/// </summary>
internal static class LogWays
{
    public static UnitWay[] All { get; } =
    [
        new("log-cabin-cut-to-length", "log-cabin", order => Plan(order, "ltrb", "tlbr", false)),
        new("log-cabin-trim-each-round", "log-cabin", order => Plan(order, "ltrb", "tlbr", true)),
        new(
            "courthouse-steps-cut-to-length",
            "courthouse-steps",
            order => Plan(order, "lrtb", "lrtb", false)
        ),
        new(
            "courthouse-steps-trim-each-round",
            "courthouse-steps",
            order => Plan(order, "lrtb", "lrtb", true)
        ),
        new(
            "half-log-cabin-cut-to-length",
            "half-log-cabin",
            order => Plan(order, "lt", "tl", false)
        ),
        new(
            "half-log-cabin-trim-each-round",
            "half-log-cabin",
            order => Plan(order, "lt", "tl", true)
        ),
    ];

    private sealed record Log(char Side, Length Width, int Role);

    private static WayPlan? Plan(UnitOrder order, string around, string otherWay, bool trimmed)
    {
        string[] words = order.Variant.Split(' ');
        int inRound = around.Length;
        if (words[0] != $"{inRound}" || (words.Length - 1) % inRound != 0 || words.Length == 1)
        {
            return null;
        }
        var logs = new List<Log>();
        foreach (string word in words.Skip(1))
        {
            if (Read(word) is not { } log || log.Role >= order.Roles)
            {
                return null;
            }
            logs.Add(log);
        }
        string sides = string.Concat(logs.Select(log => log.Side));
        if (
            sides != string.Concat(Enumerable.Repeat(around, logs.Count / inRound))
            && sides != string.Concat(Enumerable.Repeat(otherWay, logs.Count / inRound))
        )
        {
            return null;
        }
        // The center is what all the logs leave.
        Length width = order.Width,
            height = order.Height;
        foreach (Log log in logs)
        {
            if (log.Side is 'l' or 'r')
            {
                width -= log.Width;
            }
            else
            {
                height -= log.Width;
            }
        }
        if (width.Sign <= 0 || height.Sign <= 0)
        {
            return null;
        }
        var sewn = new Rect(Length.Zero, Length.Zero, width, height);
        var patches = new List<(Rect Place, int Role)> { (sewn, 0) };
        var pieces = new List<NeededPiece> { Piece("center", 0, width, height, trimmed) };
        var measures = new Dictionary<string, Length>();
        for (int i = 0; i < logs.Count; i++)
        {
            Log log = logs[i];
            Rect place = Beside(sewn, log);
            patches.Add((place, log.Role));
            NeededPiece piece = Piece(
                Name(logs, i),
                log.Role,
                log.Side is 'l' or 'r' ? place.Height : place.Width,
                log.Width,
                trimmed
            );
            if (pieces[^1].Name == piece.Name && pieces[^1].Role == piece.Role)
            {
                pieces[^1] = pieces[^1] with { Count = pieces[^1].Count + 1 };
            }
            else
            {
                pieces.Add(piece);
            }
            sewn = Together(sewn, place);
            if ((i + 1) % inRound == 0)
            {
                // Read off a ruler, but for the last round, which is the unit.
                bool last = i == logs.Count - 1;
                int round = (i + 1) / inRound;
                Length wide = sewn.Width + (order.Seam * 2),
                    high = sewn.Height + (order.Seam * 2);
                measures[$"round-{round}-width"] = last ? wide : order.Ruler.Up(wide);
                measures[$"round-{round}-height"] = last ? high : order.Ruler.Up(high);
            }
        }
        if (sewn.Width != order.Width || sewn.Height != order.Height)
        {
            return null;
        }
        var home = new Point(-sewn.X, -sewn.Y);
        return new WayPlan(
            [.. pieces],
            1,
            [.. patches.Select(p => new UnitPatch(p.Place.ToPolygon().MoveBy(home), p.Role))]
        )
        {
            Measures = measures,
        };
    }

    // Opposite logs that are sewn together and of one width share a name.
    private static string Name(List<Log> logs, int index)
    {
        int first = index / 2 * 2;
        if (first + 1 >= logs.Count)
        {
            return $"log {index + 1}";
        }
        string sides = $"{logs[first].Side}{logs[first + 1].Side}";
        return sides is "lr" or "tb" && logs[first].Width == logs[first + 1].Width
            ? $"logs {first + 1} and {first + 2}"
            : $"log {index + 1}";
    }

    private static NeededPiece Piece(
        string name,
        int role,
        Length along,
        Length across,
        bool trimmed
    ) =>
        new(name, role, 1, new(SeamLoss.Straight, along), new(SeamLoss.Straight, across))
        {
            DecidesTrim = trimmed,
            CutLarger = trimmed,
        };

    private static Rect Beside(Rect sewn, Log log) =>
        log.Side switch
        {
            'l' => new Rect(sewn.X - log.Width, sewn.Y, log.Width, sewn.Height),
            'r' => new Rect(sewn.Right, sewn.Y, log.Width, sewn.Height),
            't' => new Rect(sewn.X, sewn.Y - log.Width, sewn.Width, log.Width),
            _ => new Rect(sewn.X, sewn.Bottom, sewn.Width, log.Width),
        };

    private static Rect Together(Rect a, Rect b)
    {
        Length left = Length.Min(a.X, b.X),
            top = Length.Min(a.Y, b.Y);
        return new Rect(
            left,
            top,
            Length.Max(a.Right, b.Right) - left,
            Length.Max(a.Bottom, b.Bottom) - top
        );
    }

    // "l3/2:1": on the left, 1 1/2 in wide, the fabric of role 1.
    private static Log? Read(string word)
    {
        string[] parts = word.Length > 1 ? word[1..].Split(':', '/') : [];
        return
            parts.Length == 3
            && word[0] is 'l' or 't' or 'r' or 'b'
            && Whole(parts[0]) is { } numerator
            && Whole(parts[1]) is { } denominator
            && Whole(parts[2]) is { } role
            && numerator > 0
            && denominator > 0
            ? new Log(word[0], Length.FromInches(new Rational(numerator, denominator)), (int)role)
            : null;
    }

    private static long? Whole(string text) =>
        long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out long number)
            ? number
            : null;
}
