using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// Eight diamonds of 45° that meet in the center of a square, with squares in its corners and triangles at its sides. The
/// diamonds are of one part, of two by turns, or of eight, clockwise from the one to the right of the top; the background
/// is the last role. With the word <c>split</c> its squares and triangles are halved, so that every seam is straight.
/// </summary>
/// <remarks>
/// All patches have sides of d = s(1 − √2/2) but the long edges of the triangles, which are d√2: the square is d + d√2 + d
/// wide, so s = d(2 + √2).
/// </remarks>
public sealed class EightPointStar : UnitKind
{
    public const string Whole = "whole";

    public const string Split = "split";

    public static EightPointStar Kind { get; } = new();

    private EightPointStar() { }

    public override string Keyword => "eight-point-star";

    public override string Name => "star of eight diamonds";

    public override string Example => "eight-point-star, ray glow on sky";

    public override bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        drawn = null;
        problem = UnitWords.Unwanted(this, design, places: true);
        if (
            problem is not null
            || !UnitWords.TryPlace(this, design, [Whole, Split], 0, out int cut, out problem)
        )
        {
            return false;
        }
        if (design.Ground is not { } ground)
        {
            problem = UnitWords.Problem(
                this,
                UnitWords.PartsSpan(design),
                "an eight-pointed star needs the part it lies on",
                "no \"on\" is written"
            );
            return false;
        }
        if (design.Parts.Length is not (1 or 2 or 8))
        {
            problem = UnitWords.Problem(
                this,
                UnitWords.PartsSpan(design),
                "an eight-pointed star has 1 part for its diamonds, 2 that take turns, or 8",
                design.Parts.Length == 0
                    ? "none is written"
                    : $"{design.Parts.Length} are written: {string.Join(", ", design.Parts)}"
            );
            return false;
        }
        if (width != height)
        {
            problem = UnitWords.Region(
                this,
                design,
                "an eight-pointed star needs a region as wide as it is high",
                width,
                height,
                "make the region square in the map or the grid"
            );
            return false;
        }
        drawn = new DrawnUnit(
            FormOf(width, cut == 1, design.Parts.Length),
            Turn.None,
            [.. design.Parts.Select(p => p.Value), ground.Value]
        );
        return true;
    }

    /// <summary>Finished side of the diamonds, and of the squares, of a star of a finished size.</summary>
    public static Length DiamondOf(Length side) => side * new Exact(1, new Rational(-1, 2));

    /// <summary>Finished size of a star of diamonds of a finished side.</summary>
    public static Length SizeOf(Length diamond) => diamond * new Exact(2, 1);

    public static bool IsSplit(UnitForm form) =>
        form.Variant.StartsWith(Split, StringComparison.Ordinal);

    /// <summary>
    /// Patches in this order: the eight diamonds clockwise from the one to the right of the top, then the background clockwise:
    /// four squares from the upper right and four triangles from the top; or split, the eight halves of squares and the eight of
    /// triangles beside the diamonds of the same number.
    /// </summary>
    /// <param name="rays">1, 2 or 8 roles for the diamonds; the background is the next.</param>
    public static UnitForm FormOf(Length side, bool split, int rays)
    {
        Length o = Length.Zero,
            d = DiamondOf(side),
            half = side / 2;
        Point center = new(half, half),
            corner = new(side, o),
            tipAbove = new(side - d, o),
            tipBeside = new(side, d),
            between = new(side - d, d),
            above = new(half, half - d),
            beside = new(half + d, half);
        // The quarter in the upper right; the others are turns of it.
        Polygon[] diamonds =
        [
            new([center, above, tipAbove, between]),
            new([center, between, tipBeside, beside]),
        ];
        ImmutableArray<int>[] bias =
        [
            [1, 3],
            [0, 2],
        ];
        var patches = ImmutableArray.CreateBuilder<RolePatch>();
        for (int i = 0; i < 8; i++)
        {
            patches.Add(
                new RolePatch(Turned(diamonds[i % 2], i / 2), rays == 8 ? i : i % rays, bias[i % 2])
            );
        }
        if (split)
        {
            Polygon[] squares =
            [
                new([tipAbove, corner, between]),
                new([corner, tipBeside, between]),
            ];
            Polygon[] triangles =
            [
                new([new Point(half, o), tipAbove, above]),
                new([tipBeside, new Point(side, half), beside]),
            ];
            for (int i = 0; i < 8; i++)
            {
                patches.Add(
                    new RolePatch(Turned(squares[i % 2], i / 2), rays, i % 2 == 0 ? [1] : [2])
                );
            }
            for (int i = 0; i < 8; i++)
            {
                patches.Add(
                    new RolePatch(Turned(triangles[i % 2], i / 2), rays, i % 2 == 0 ? [1] : [2])
                );
            }
        }
        else
        {
            Polygon square = new([tipAbove, corner, tipBeside, between]),
                triangle = new([new Point(d, o), tipAbove, above]);
            for (int i = 0; i < 4; i++)
            {
                patches.Add(new RolePatch(Turned(square, i), rays, []));
            }
            for (int i = 0; i < 4; i++)
            {
                patches.Add(new RolePatch(Turned(triangle, i), rays, [1, 2]));
            }
        }
        return new UnitForm(
            Kind,
            string.Create(CultureInfo.InvariantCulture, $"{(split ? Split : Whole)} {rays}"),
            side,
            side,
            Length.Zero,
            patches.ToImmutable(),
            rays + 1
        );

        Polygon Turned(Polygon shape, int quarters) => shape.Turned(new Turn(quarters), side, side);
    }
}
