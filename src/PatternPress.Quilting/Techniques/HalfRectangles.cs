using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;

namespace PatternPress.Quilting.Techniques;

/// <summary>
/// How large the rectangles of half-rectangle triangles are cut. For a finished unit of a × b with the diagonal
/// c = √(a² + b²) a triangle with seams s all round has legs of a + s(1 + (a + c) / b) and b + s(1 + (b + c) / a): the finished
/// triangle, enlarged about its incircle. Sewn s from its long edge, a pair cut from W × H opens to a rectangle of
/// W − sC / H by H − sC / W with the seam on its diagonal (C = √(W² + H²)).
/// </summary>
/// <remarks>
/// The ends of the seam are matched, so a pair is longer than such triangles need be; and rounded to the ruler, W and H are no
/// longer in the proportion of a and b, so the unit is trimmed a little turned, that the seam may run through the points s
/// inside its corners. The least rectangle that leaves enough for that is cut. The roots are of any number, so they are
/// computed in floating point, to a millionth of an inch, far below any ruler's mark.
/// </remarks>
internal static class HalfRectangles
{
    private const double Millionth = 1e-6;

    // Marks of the ruler beyond the exact size that are tried on each side.
    private const int MostMarks = 48;

    /// <summary>Width and height, exactly (to a millionth of an inch) and as cut.</summary>
    public static (CutSize Width, CutSize Height)? Sides(UnitForm form, House house)
    {
        double a = Double(form.Width),
            b = Double(form.Height),
            s = Double(house.Seam),
            c = Math.Sqrt((a * a) + (b * b));
        Length width = Exactly(a + (s * (1 + ((a + c) / b)))),
            height = Exactly(b + (s * (1 + ((b + c) / a))));
        Length step = house.Ruler.Step,
            least = house.Ruler.Up(width),
            low = house.Ruler.Up(height);
        (Length Width, Length Height)? best = null;
        for (int i = 0; i <= MostMarks; i++)
        {
            Length wide = least + (step * i);
            for (int j = 0; j <= MostMarks; j++)
            {
                Length high = low + (step * j);
                if (best is { } found && wide * high >= found.Width * found.Height)
                {
                    break;
                }
                if (Leaves(Double(wide), Double(high), a, b, s))
                {
                    best = (wide, high);
                    break;
                }
            }
        }
        if (best is not { } cut)
        {
            return null;
        }
        Length more =
            house.Cutting == CuttingStyle.Oversize ? house.Ruler.Up(house.Oversize) : Length.Zero;
        return (new CutSize(width, cut.Width + more), new CutSize(height, cut.Height + more));
    }

    /// <summary>What a pair opens to before it is trimmed.</summary>
    public static (double Width, double Height) Opened(double width, double height, double seam)
    {
        double diagonal = Math.Sqrt((width * width) + (height * height));
        return (width - (seam * diagonal / height), height - (seam * diagonal / width));
    }

    public static ImmutableArray<RecipePiece> Pieces(UnitForm form, House house)
    {
        (CutSize width, CutSize height) = Sides(form, house)!.Value;
        return
        [
            CutSize.Rectangle("rectangle", 0, 1, width, height),
            CutSize.Rectangle("rectangle", 1, 1, width, height),
        ];
    }

    public static string? Refusal(UnitForm form, House house) =>
        Sides(form, house) is null
            ? $"no rectangle near its size leaves enough to trim {Told.Size(form.Width, form.Height)} with the seam through its corners"
            : null;

    public static bool LeansRight(UnitForm form) => form.Variant == HalfRectangle.LeaningRight;

    // Whether the unit with its seams, turned so that its diagonal lies on the seam, lies within what the pair opens to.
    private static bool Leaves(double wide, double high, double a, double b, double s)
    {
        (double width, double height) = Opened(wide, high, s);
        double scale = Math.Sqrt(((wide * wide) + (high * high)) * ((a * a) + (b * b)));
        double cosine = ((wide * a) + (high * b)) / scale,
            sine = Math.Abs((high * a) - (wide * b)) / scale;
        double x = a + (2 * s),
            y = b + (2 * s);
        return (x * cosine) + (y * sine) <= width + Millionth
            && (y * cosine) + (x * sine) <= height + Millionth;
    }

    private static double Double(Length length) => length.Inches.ToDouble();

    private static Length Exactly(double inches) =>
        Length.FromInches(new Rational((long)Math.Ceiling((inches - 1e-9) / Millionth), 1_000_000));
}
