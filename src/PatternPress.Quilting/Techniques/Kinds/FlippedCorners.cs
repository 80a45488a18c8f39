using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Source;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// A square or rectangle with one to four of its corners in another fabric. Every corner is a role of its own,
/// clockwise from the upper left; the last role is the ground. In canonical orientation a rectangle is wider than
/// high and the corners sit as early as turning allows, counted clockwise from the upper left.
/// </summary>
public sealed class FlippedCorners : UnitKind
{
    public static FlippedCorners Kind { get; } = new();

    private FlippedCorners() { }

    public override string Keyword => "corners";

    public override string Name => "unit with flipped corners";

    public override string Example => "corners upper-left lower-right of 1 1/2, ray on sky";

    public override bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        drawn = null;
        problem = UnitWords.Unwanted(this, design, places: true, measure: true);
        if (
            problem is not null
            || !TryReadCorners(design, out SortedList<int, string>? partOf, out problem)
        )
        {
            return false;
        }
        Length shorter = Length.Min(width, height);
        Length leg = design.Measure?.Value ?? shorter / 2;
        problem = ProblemOfSize(design, width, height, leg, partOf);
        if (problem is not null)
        {
            return false;
        }

        bool tall = height > width;
        int step = width == height ? 1 : 2;
        // Of the turns that lead to the region, the one whose canonical corners come earliest.
        int best = -1;
        string bestCorners = "";
        for (int turn = tall ? 1 : 0; turn < 4; turn += step)
        {
            string corners = string.Concat(
                partOf.Keys.Select(c => (c - turn + 4) % 4).Order().Select(c => c.ToString())
            );
            if (best < 0 || string.CompareOrdinal(corners, bestCorners) < 0)
            {
                (best, bestCorners) = (turn, corners);
            }
        }
        drawn = new DrawnUnit(
            FormOf(Length.Max(width, height), shorter, leg, [.. bestCorners.Select(c => c - '0')]),
            new Turn(best),
            [.. bestCorners.Select(c => partOf[(c - '0' + best) % 4]), design.Ground!.Value.Value]
        );
        return true;
    }

    /// <summary>The form in canonical orientation.</summary>
    /// <param name="leg">Finished length of a corner's short edges.</param>
    /// <param name="corners">0 upper left, 1 upper right, 2 lower right, 3 lower left; ascending.</param>
    public static UnitForm FormOf(
        Length width,
        Length height,
        Length leg,
        ImmutableArray<int> corners
    )
    {
        Length zero = Length.Zero;
        Point[] at = [Point.Origin, new(width, zero), new(width, height), new(zero, height)];
        // Unit steps from a corner to the next one clockwise; the way back is the step before it, reversed.
        Point[] ahead = [new(leg, zero), new(zero, leg), new(-leg, zero), new(zero, -leg)];
        var patches = ImmutableArray.CreateBuilder<RolePatch>();
        var ground = new List<Point>();
        var groundBias = ImmutableArray.CreateBuilder<int>();
        int role = 0;
        for (int corner = 0; corner < 4; corner++)
        {
            if (!corners.Contains(corner))
            {
                Append(at[corner]);
                continue;
            }
            Point before = at[corner] - ahead[(corner + 3) % 4];
            Point after = at[corner] + ahead[corner];
            patches.Add(new RolePatch(new Polygon([at[corner], after, before]), role++, [1]));
            Append(before);
            groundBias.Add(ground.Count - 1);
            Append(after);
        }
        if (ground[^1] == ground[0])
        {
            ground.RemoveAt(ground.Count - 1);
        }
        patches.Add(new RolePatch(new Polygon([.. ground]), role, groundBias.ToImmutable()));
        return new UnitForm(
            Kind,
            string.Concat(corners),
            width,
            height,
            leg,
            patches.ToImmutable(),
            role + 1
        );

        // Corners that meet on an edge, or reach the next corner, share that point.
        void Append(Point point)
        {
            if (ground.Count == 0 || ground[^1] != point)
            {
                ground.Add(point);
            }
        }
    }

    /// <summary>The corners of a form, 0 upper left to 3 lower left.</summary>
    public static ImmutableArray<int> CornersOf(UnitForm form) =>
        [.. form.Variant.Select(c => c - '0')];

    private bool TryReadCorners(
        UnitDesign design,
        [NotNullWhen(true)] out SortedList<int, string>? partOf,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        partOf = null;
        problem = null;
        if (design.Places.Length is 0 or > 4)
        {
            problem = UnitWords.Problem(
                this,
                design.Places.Length == 0 ? design.Kind.Span : design.Places[4].Span,
                "corners names one to four corners",
                design.Places.Length == 0
                    ? "none is written"
                    : $"{design.Places.Length} are written"
            );
            return false;
        }
        if (design.Ground is null)
        {
            problem = UnitWords.Problem(
                this,
                UnitWords.PartsSpan(design),
                "corners needs the part it lies on",
                "no \"on\" is written"
            );
            return false;
        }
        int count = design.Places.Length;
        if (design.Parts.Length != 1 && design.Parts.Length != count)
        {
            problem = UnitWords.Problem(
                this,
                UnitWords.PartsSpan(design),
                "corners has one part for all corners, or one for each",
                $"{count} corner{(count == 1 ? "" : "s")} and {design.Parts.Length} part{(design.Parts.Length == 1 ? "" : "s")} are written"
            );
            return false;
        }
        var read = new SortedList<int, string>();
        for (int i = 0; i < count; i++)
        {
            string word = design.Places[i].Value;
            int corner = Corner.Words.IndexOf(word);
            if (corner < 0)
            {
                problem = UnitWords.Problem(
                    this,
                    design.Places[i].Span,
                    $"a corner is {UnitWords.OneOf(Corner.Words)}",
                    $"\"{word}\" is none of these",
                    UnitWords.DidYouMean(word, Corner.Words)
                );
                return false;
            }
            if (!read.TryAdd(corner, design.Parts[design.Parts.Length == 1 ? 0 : i].Value))
            {
                problem = UnitWords.Problem(
                    this,
                    design.Places[i].Span,
                    "a corner is named twice",
                    $"\"{word}\" is written twice",
                    "name each corner once"
                );
                return false;
            }
        }
        partOf = read;
        return true;
    }

    private UnitProblem? ProblemOfSize(
        UnitDesign design,
        Length width,
        Length height,
        Length leg,
        SortedList<int, string> corners
    )
    {
        Span at = design.Measure?.Span ?? design.Span;
        if (leg.Sign <= 0)
        {
            return UnitWords.Problem(
                this,
                at,
                "a flipped corner needs a size above zero",
                $"of {Told.One(leg)} is written"
            );
        }
        Length shorter = Length.Min(width, height);
        Length largest = shorter;
        bool opposite =
            (corners.ContainsKey(Corner.UpperLeft) && corners.ContainsKey(Corner.LowerRight))
            || (corners.ContainsKey(Corner.UpperRight) && corners.ContainsKey(Corner.LowerLeft));
        for (int corner = 0; corner < 4; corner++)
        {
            if (corners.ContainsKey(corner) && corners.ContainsKey((corner + 1) % 4))
            {
                largest = Length.Min(largest, (corner % 2 == 0 ? width : height) / 2);
            }
        }
        // Opposite corners as large as a square leave nothing between them.
        bool nothingLeft = opposite && width == height && leg == width;
        if (leg <= largest && !nothingLeft)
        {
            return null;
        }
        return new UnitProblem(
            UnitProblemKind.Region,
            at,
            leg > shorter ? "flipped corners are larger than their region"
                : nothingLeft ? "flipped corners leave nothing between them"
                : "flipped corners overlap",
            $"corners of {Told.One(leg)} in region {design.Letter}, which is {Told.Size(width, height)} (width × height, finished)",
            nothingLeft
                ? $"make them smaller than {Told.One(largest)}"
                : $"make them {Told.One(largest)} at most"
        );
    }
}
