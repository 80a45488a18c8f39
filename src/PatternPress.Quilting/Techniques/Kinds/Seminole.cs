using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// A band of segments that are cut from strips at 45° and joined so that their stripes run up and down by turns. The first part
/// is the uppermost stripe; the part after <c>on</c> fills the band above and below. <c>level</c>, also without the word: the
/// band lies; <c>upright</c>: it stands.
/// </summary>
/// <remarks>
/// A stripe of finished width a is a√2 high where the segment's side cuts it. A band of height h with segments of width b
/// keeps (h − n·a√2 − b) / 2 above its highest points and below its lowest.
/// </remarks>
public sealed class Seminole : UnitKind
{
    /// <summary>More segments than anyone would sew into one unit; bounds what a source file can ask for.</summary>
    public const int MostSegments = 48;

    public const int MostStripes = 12;

    public static Seminole Kind { get; } = new();

    private Seminole() { }

    public override string Keyword => "seminole";

    public override string Name => "seminole band";

    public override string Example => "seminole 4 segments of 1/2, ray glow on sky";

    public override bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        drawn = null;
        problem = UnitWords.Unwanted(this, design, places: true, measure: true, rounds: true);
        if (
            problem is not null
            || !UnitWords.TryPlace(this, design, ["level", "upright"], 0, out int turn, out problem)
        )
        {
            return false;
        }
        if (design.Rounds is not { } count || count.Value % 2 != 0 || count.Value > MostSegments)
        {
            problem = UnitWords.Problem(
                this,
                design.Rounds?.Span ?? design.Kind.Span,
                $"a seminole band has an even number of segments, {MostSegments} at most",
                design.Rounds is { } written ? $"{written.Value} are written" : "none is written"
            );
            return false;
        }
        if (design.Measure is not { } stripe || stripe.Value.Sign <= 0)
        {
            problem = UnitWords.Problem(
                this,
                design.Measure?.Span ?? design.Kind.Span,
                "a seminole band needs the finished width of its stripes",
                "none is written"
            );
            return false;
        }
        if (design.Ground is not { } ground || design.Parts.Length is < 1 or > MostStripes)
        {
            problem = UnitWords.Problem(
                this,
                UnitWords.PartsSpan(design),
                $"a seminole band has 1 to {MostStripes} stripes on another part",
                design.Ground is null
                    ? "no \"on\" is written"
                    : $"{design.Parts.Length} parts are written before \"on\""
            );
            return false;
        }
        (Length along, Length across) = turn == 0 ? (width, height) : (height, width);
        Length rest = Margin(along, across, count.Value, stripe.Value, design.Parts.Length);
        if (rest.Sign <= 0)
        {
            problem = UnitWords.Region(
                this,
                design,
                "the stripes of a seminole band leave nothing above and below them",
                width,
                height,
                $"points and stripes are {Told.Decimal(across - (rest * 2))} high; make the band higher, the stripes narrower or the segments more"
            );
            return false;
        }
        drawn = new DrawnUnit(
            FormOf(along, across, count.Value, stripe.Value, design.Parts.Length),
            new Turn(turn),
            [.. design.Parts.Select(p => p.Value), ground.Value]
        );
        return true;
    }

    /// <summary>What lies above the highest point of the stripes.</summary>
    public static Length Margin(
        Length width,
        Length height,
        int segments,
        Length stripe,
        int stripes
    ) => (height - (Allowance.Diagonal(stripe) * stripes) - (width / segments)) / 2;

    /// <summary>Segments of a form and the finished width of its stripes.</summary>
    public static (int Segments, Length Stripe, int Stripes) Of(UnitForm form)
    {
        string[] words = form.Variant.Split(' ');
        return (
            int.Parse(words[0], CultureInfo.InvariantCulture),
            form.Measure,
            form.RoleCount - 1
        );
    }

    /// <summary>The lying form: for each segment from the left the ground above, the stripes from the top, the ground below.</summary>
    public static UnitForm FormOf(
        Length width,
        Length height,
        int segments,
        Length stripe,
        int stripes
    )
    {
        Length one = width / segments,
            rise = Allowance.Diagonal(stripe),
            margin = Margin(width, height, segments, stripe, stripes);
        var patches = ImmutableArray.CreateBuilder<RolePatch>();
        for (int k = 0; k < segments; k++)
        {
            Length x = one * k,
                right = one * (k + 1);
            // Down to the right and up again by turns.
            Length left = k % 2 == 0 ? margin : margin + one,
                next = k % 2 == 0 ? margin + one : margin;
            patches.Add(
                new RolePatch(
                    new Polygon([
                        new(x, Length.Zero),
                        new(right, Length.Zero),
                        new(right, next),
                        new(x, left),
                    ]),
                    stripes,
                    [0, 1, 3]
                )
            );
            for (int i = 0; i < stripes; i++)
            {
                patches.Add(
                    new RolePatch(
                        new Polygon([
                            new(x, left + (rise * i)),
                            new(right, next + (rise * i)),
                            new(right, next + (rise * (i + 1))),
                            new(x, left + (rise * (i + 1))),
                        ]),
                        i,
                        [1, 3]
                    )
                );
            }
            patches.Add(
                new RolePatch(
                    new Polygon([
                        new(x, left + (rise * stripes)),
                        new(right, next + (rise * stripes)),
                        new(right, height),
                        new(x, height),
                    ]),
                    stripes,
                    [1, 2, 3]
                )
            );
        }
        Rational a = stripe.Inches.One;
        return new UnitForm(
            Kind,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{segments} {a.Numerator}/{a.Denominator}"
            ),
            width,
            height,
            stripe,
            patches.ToImmutable(),
            stripes + 1
        );
    }
}
