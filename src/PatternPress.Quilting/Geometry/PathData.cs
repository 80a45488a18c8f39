using System.Collections.Immutable;
using System.Globalization;

namespace PatternPress.Quilting.Geometry;

/// <summary>
/// An outline given as path data of W3C's Scalable Vector Graphics 2, chapter Paths: all commands, absolute and relative, with
/// numbers run together as its grammar allows. Curves are no exact numbers: they are held as doubles, arcs of ellipses as the
/// cubic curves that stay within 0.03 % of them.
/// </summary>
/// <param name="Parts">Its subpaths; each is closed by a line where the data leaves it open, as a fill does.</param>
public sealed record PathData(ImmutableArray<PathPart> Parts)
{
    /// <param name="at">Where the data breaks off, counted from 0.</param>
    /// <param name="problem">What would have to stand there.</param>
    public static bool TryParse(string text, out PathData path, out int at, out string problem)
    {
        var reader = new Reader(text);
        bool whole = reader.Read();
        path = new PathData([.. reader.Parts]);
        (at, problem) = (reader.At, reader.Problem);
        return whole;
    }

    private sealed class Reader(string text)
    {
        private readonly List<PathCurve> _curves = [];
        private (double X, double Y) _start,
            _now,
            _control;
        private char _last;

        public List<PathPart> Parts { get; } = [];

        public int At { get; private set; }

        public string Problem { get; private set; } = "";

        public bool Read()
        {
            Blanks();
            if (At >= text.Length)
            {
                return Fail("a path begins with M");
            }
            bool first = true;
            while (At < text.Length)
            {
                char command = text[At];
                if (first && command is not ('M' or 'm'))
                {
                    return Fail("a path begins with M");
                }
                if (!"MmZzLlHhVvCcSsQqTtAa".Contains(command, StringComparison.Ordinal))
                {
                    return Fail("one of the letters M Z L H V C S Q T A, large or small");
                }
                At++;
                if (!Command(command))
                {
                    return false;
                }
                first = false;
                Blanks();
            }
            Close();
            return true;
        }

        private bool Command(char command)
        {
            if (command is 'Z' or 'z')
            {
                Line(_start);
                _last = 'Z';
                return true;
            }
            bool any = false;
            Blanks();
            while (true)
            {
                int before = At;
                if (any)
                {
                    Comma();
                    if (At >= text.Length || !StartsNumber(text[At]))
                    {
                        // A comma must be followed by numbers.
                        if (text.AsSpan(before, At - before).Contains(','))
                        {
                            return Fail("a number");
                        }
                        At = before;
                        return true;
                    }
                }
                if (!Arguments(command, any))
                {
                    return false;
                }
                any = true;
            }
        }

        private static bool StartsNumber(char c) => char.IsAsciiDigit(c) || c is '.' or '+' or '-';

        private bool Arguments(char command, bool repeated)
        {
            bool relative = char.IsAsciiLetterLower(command);
            char kind = char.ToUpperInvariant(command);
            (double X, double Y) origin = relative ? _now : default;
            Span<double> n = stackalloc double[7];
            int count = kind switch
            {
                'H' or 'V' => 1,
                'C' => 6,
                'S' or 'Q' => 4,
                'A' => 7,
                _ => 2,
            };
            for (int i = 0; i < count; i++)
            {
                if (i > 0)
                {
                    Comma();
                }
                bool flag = kind == 'A' && i is 3 or 4;
                if (!(kind == 'A' && i is 3 or 4 ? Flag(out n[i]) : Number(out n[i])))
                {
                    return Fail(flag && kind == 'A' ? "0 or 1" : "a number");
                }
            }
            switch (kind)
            {
                case 'M' when !repeated:
                    Close();
                    _start = _now = At2(n, 0, origin);
                    break;
                case 'M' or 'L':
                    Line(At2(n, 0, origin));
                    break;
                case 'H':
                    Line((origin.X + n[0], _now.Y));
                    break;
                case 'V':
                    Line((_now.X, origin.Y + n[0]));
                    break;
                case 'C':
                    Curve(At2(n, 0, origin), At2(n, 2, origin), At2(n, 4, origin));
                    break;
                case 'S':
                    Curve(
                        _last is 'C' or 'S' ? Mirrored() : _now,
                        At2(n, 0, origin),
                        At2(n, 2, origin)
                    );
                    break;
                case 'Q':
                    Quadratic(At2(n, 0, origin), At2(n, 2, origin));
                    break;
                case 'T':
                    Quadratic(_last is 'Q' or 'T' ? Mirrored() : _now, At2(n, 0, origin));
                    break;
                case 'A':
                    Arc(n[0], n[1], n[2], n[3] != 0, n[4] != 0, At2(n, 5, origin));
                    break;
            }
            _last = kind;
            return true;
        }

        private static (double X, double Y) At2(
            ReadOnlySpan<double> n,
            int i,
            (double X, double Y) origin
        ) => (origin.X + n[i], origin.Y + n[i + 1]);

        private (double X, double Y) Mirrored() =>
            ((2 * _now.X) - _control.X, (2 * _now.Y) - _control.Y);

        private void Line((double X, double Y) to)
        {
            if (to != _now)
            {
                _curves.Add(new PathCurve(_now, _now, to, to, true));
            }
            _now = to;
        }

        private void Curve(
            (double X, double Y) one,
            (double X, double Y) two,
            (double X, double Y) to
        )
        {
            _curves.Add(new PathCurve(_now, one, two, to, false));
            _control = two;
            _now = to;
        }

        // Raised by a degree: the controls lie two thirds of the way to the one control.
        private void Quadratic((double X, double Y) control, (double X, double Y) to)
        {
            (double X, double Y) from = _now;
            Curve(
                (from.X + ((control.X - from.X) * 2 / 3), from.Y + ((control.Y - from.Y) * 2 / 3)),
                (to.X + ((control.X - to.X) * 2 / 3), to.Y + ((control.Y - to.Y) * 2 / 3)),
                to
            );
            _control = control;
        }

        // The implementation notes of SVG 2, "Conversion from endpoint to center parameterization", and radii that are too small
        // grown until the ends fit.
        private void Arc(
            double rx,
            double ry,
            double degrees,
            bool large,
            bool sweep,
            (double X, double Y) to
        )
        {
            (double X, double Y) from = _now;
            (rx, ry) = (Math.Abs(rx), Math.Abs(ry));
            if (from == to)
            {
                return;
            }
            if (rx == 0 || ry == 0)
            {
                Line(to);
                return;
            }
            (double sin, double cos) = Math.SinCos(degrees * Math.PI / 180);
            double dx = (from.X - to.X) / 2,
                dy = (from.Y - to.Y) / 2;
            double x = (cos * dx) + (sin * dy),
                y = (cos * dy) - (sin * dx);
            double grown = (x * x / (rx * rx)) + (y * y / (ry * ry));
            if (grown > 1)
            {
                (rx, ry) = (rx * Math.Sqrt(grown), ry * Math.Sqrt(grown));
            }
            double below = (rx * rx * y * y) + (ry * ry * x * x);
            double root = Math.Sqrt(Math.Max(0, ((rx * rx * ry * ry) - below) / below));
            if (large == sweep)
            {
                root = -root;
            }
            double cx = root * rx * y / ry,
                cy = -root * ry * x / rx;
            double first = Math.Atan2((y - cy) / ry, (x - cx) / rx),
                turn = Math.Atan2((-y - cy) / ry, (-x - cx) / rx) - first;
            if (sweep && turn < 0)
            {
                turn += 2 * Math.PI;
            }
            else if (!sweep && turn > 0)
            {
                turn -= 2 * Math.PI;
            }
            (double X, double Y) center = (
                (cos * cx) - (sin * cy) + ((from.X + to.X) / 2),
                (sin * cx) + (cos * cy) + ((from.Y + to.Y) / 2)
            );
            int pieces = Math.Max(1, (int)Math.Ceiling(Math.Abs(turn) / (Math.PI / 2) - 1e-9));
            double step = turn / pieces,
                reach = 4.0 / 3 * Math.Tan(step / 4);
            for (int i = 0; i < pieces; i++)
            {
                double a = first + (step * i),
                    b = a + step;
                (double sinA, double cosA) = Math.SinCos(a);
                (double sinB, double cosB) = Math.SinCos(b);
                Curve(
                    Place(cosA - (reach * sinA), sinA + (reach * cosA)),
                    Place(cosB + (reach * sinB), sinB - (reach * cosB)),
                    i == pieces - 1 ? to : Place(cosB, sinB)
                );
            }

            (double, double) Place(double unitX, double unitY) =>
                (
                    center.X + (cos * rx * unitX) - (sin * ry * unitY),
                    center.Y + (sin * rx * unitX) + (cos * ry * unitY)
                );
        }

        private void Close()
        {
            if (_curves.Count > 0)
            {
                Line(_start);
                Parts.Add(new PathPart([.. _curves]));
                _curves.Clear();
            }
        }

        private bool Number(out double value)
        {
            int i = At;
            if (i < text.Length && text[i] is '+' or '-')
            {
                i++;
            }
            int digits = i;
            while (i < text.Length && char.IsAsciiDigit(text[i]))
            {
                i++;
            }
            int count = i - digits;
            if (i < text.Length && text[i] == '.')
            {
                i++;
                int from = i;
                while (i < text.Length && char.IsAsciiDigit(text[i]))
                {
                    i++;
                }
                count += i - from;
            }
            value = 0;
            if (count == 0)
            {
                return false;
            }
            if (i < text.Length && text[i] is 'e' or 'E')
            {
                int e = i + 1;
                if (e < text.Length && text[e] is '+' or '-')
                {
                    e++;
                }
                int from = e;
                while (e < text.Length && char.IsAsciiDigit(text[e]))
                {
                    e++;
                }
                if (e > from)
                {
                    i = e;
                }
            }
            bool read =
                double.TryParse(
                    text.AsSpan(At, i - At),
                    NumberStyles.Float,
                    CultureInfo.InvariantCulture,
                    out value
                )
                && Math.Abs(value) <= 1e6;
            if (read)
            {
                At = i;
            }
            return read;
        }

        private bool Flag(out double value)
        {
            value = 0;
            if (At >= text.Length || text[At] is not ('0' or '1'))
            {
                return false;
            }
            value = text[At] - '0';
            At++;
            return true;
        }

        private void Blanks()
        {
            while (At < text.Length && text[At] is ' ' or '\t' or '\n' or '\f' or '\r')
            {
                At++;
            }
        }

        private void Comma()
        {
            Blanks();
            if (At < text.Length && text[At] == ',')
            {
                At++;
                Blanks();
            }
        }

        private bool Fail(string wanted)
        {
            Problem = wanted;
            return false;
        }
    }
}

/// <summary>A closed outline.</summary>
public sealed record PathPart(ImmutableArray<PathCurve> Curves)
{
    /// <summary>The enclosed area by Green's theorem, exact for its curves but for the rounding of doubles; positive for
    /// clockwise outlines (Y down).</summary>
    public double Area
    {
        get
        {
            double sum = 0;
            foreach (PathCurve c in Curves)
            {
                (double X, double Y) a = c.From,
                    b = c.One,
                    d = c.Two,
                    e = c.To;
                sum += c.IsLine
                    ? ((a.X * e.Y) - (e.X * a.Y)) / 2
                    : (
                        (6 * Cross(a, b))
                        + (3 * Cross(a, d))
                        + Cross(a, e)
                        + (3 * Cross(b, d))
                        + (3 * Cross(b, e))
                        + (6 * Cross(d, e))
                    ) / 20;
            }
            return sum;

            static double Cross((double X, double Y) p, (double X, double Y) q) =>
                (p.X * q.Y) - (q.X * p.Y);
        }
    }
}

/// <summary>A cubic curve, or a line from its first to its last place.</summary>
public readonly record struct PathCurve(
    (double X, double Y) From,
    (double X, double Y) One,
    (double X, double Y) Two,
    (double X, double Y) To,
    bool IsLine
)
{
    public (double X, double Y) At(double t)
    {
        double u = 1 - t;
        if (IsLine)
        {
            return ((From.X * u) + (To.X * t), (From.Y * u) + (To.Y * t));
        }
        double a = u * u * u,
            b = 3 * u * u * t,
            c = 3 * u * t * t,
            d = t * t * t;
        return (
            (a * From.X) + (b * One.X) + (c * Two.X) + (d * To.X),
            (a * From.Y) + (b * One.Y) + (c * Two.Y) + (d * To.Y)
        );
    }
}
