using System.Collections.Immutable;
using System.Globalization;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Techniques;

/// <summary>
/// Logs around a center in the order they are sewn: each is as long as what has been sewn before it is on that side.
/// The center is role 0.
/// </summary>
/// <param name="PerRound">Logs in a round: four, or two where the center lies in a corner.</param>
internal sealed record LogSequence(int PerRound, ImmutableArray<Log> Logs)
{
    public int Rounds => Logs.Length / PerRound;

    /// <summary>What the logs add to the center's width.</summary>
    public Length Across => Sum(LogSide.Left) + Sum(LogSide.Right);

    /// <summary>What the logs add to the center's height.</summary>
    public Length Down => Sum(LogSide.Top) + Sum(LogSide.Bottom);

    /// <summary>The sequence of a form made by <see cref="Form"/>.</summary>
    public static LogSequence Of(UnitForm form)
    {
        string[] parts = form.Variant.Split(' ');
        return new LogSequence(
            int.Parse(parts[0], CultureInfo.InvariantCulture),
            [.. parts.Skip(1).Select(Log.Parse)]
        );
    }

    /// <summary>The finished unit: patch 0 is the center, patch k the k-th log.</summary>
    public UnitForm Form(UnitKind kind, Length width, Length height)
    {
        // From the outside in: the last log lies along the whole of its side.
        Length left = Length.Zero,
            top = Length.Zero,
            right = width,
            bottom = height;
        var patches = new RolePatch[Logs.Length + 1];
        for (int i = Logs.Length - 1; i >= 0; i--)
        {
            Log log = Logs[i];
            Rect place;
            switch (log.Side)
            {
                case LogSide.Left:
                    place = new Rect(left, top, log.Width, bottom - top);
                    left += log.Width;
                    break;
                case LogSide.Top:
                    place = new Rect(left, top, right - left, log.Width);
                    top += log.Width;
                    break;
                case LogSide.Right:
                    right -= log.Width;
                    place = new Rect(right, top, log.Width, bottom - top);
                    break;
                default:
                    bottom -= log.Width;
                    place = new Rect(left, bottom, right - left, log.Width);
                    break;
            }
            patches[i + 1] = new RolePatch(place.ToPolygon(), log.Role, []);
        }
        patches[0] = new RolePatch(
            new Rect(left, top, right - left, bottom - top).ToPolygon(),
            0,
            []
        );
        return new UnitForm(
            kind,
            string.Join(' ', [$"{PerRound}", .. Logs.Select(log => log.ToString())]),
            width,
            height,
            Length.Zero,
            [.. patches],
            patches.Max(patch => patch.Role) + 1
        );
    }

    /// <summary>How long a log is, finished.</summary>
    public static Length LengthOf(UnitForm form, int log)
    {
        Rect place = form.Patches[log + 1].Shape.Bounds;
        return LogSequence.Of(form).Logs[log].Side is LogSide.Left or LogSide.Right
            ? place.Height
            : place.Width;
    }

    /// <summary>
    /// What a log is called: its number in the order of sewing, or two numbers for a pair on opposite sides that are
    /// cut alike.
    /// </summary>
    public string NameOf(int log)
    {
        int first = log - (log % 2);
        bool pair =
            PerRound == 4
            && (int)Logs[first].Side % 2 == (int)Logs[first + 1].Side % 2
            && Logs[first].Width == Logs[first + 1].Width;
        return pair ? $"logs {first + 1} and {first + 2}" : $"log {log + 1}";
    }

    private Length Sum(LogSide side)
    {
        Length sum = Length.Zero;
        foreach (Log log in Logs)
        {
            if (log.Side == side)
            {
                sum += log.Width;
            }
        }
        return sum;
    }
}

/// <summary>A log: the side of what is sewn so far that it is added to, its finished width, whose fabric it is.</summary>
internal sealed record Log(LogSide Side, Length Width, int Role)
{
    private const string Letters = "ltrb";

    public static Log Parse(string text)
    {
        string[] parts = text[1..].Split(':');
        string[] width = parts[0].Split('/');
        return new Log(
            (LogSide)Letters.IndexOf(text[0]),
            Length.FromInches(
                new Rational(
                    long.Parse(width[0], CultureInfo.InvariantCulture),
                    long.Parse(width[1], CultureInfo.InvariantCulture)
                )
            ),
            int.Parse(parts[1], CultureInfo.InvariantCulture)
        );
    }

    public override string ToString()
    {
        Rational width = Width.Inches.One;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{Letters[(int)Side]}{width.Numerator}/{width.Denominator}:{Role}"
        );
    }
}

/// <summary>The sides clockwise, so that opposite ones are two apart.</summary>
internal enum LogSide
{
    Left,
    Top,
    Right,
    Bottom,
}
