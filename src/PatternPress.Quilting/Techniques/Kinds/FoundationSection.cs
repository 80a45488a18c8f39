using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// A section drawn by straight seam lines, sewn in their order on a paper foundation. Patches come in the order of sewing;
/// each lies on one side of a line that has all earlier ones on the other.
/// </summary>
public sealed class FoundationSection : UnitKind
{
    public static FoundationSection Kind { get; } = new();

    private static readonly ImmutableArray<string> Ways = ["up", "right", "down", "left"];

    private FoundationSection() { }

    public override string Keyword => "foundation";

    public override string Name => "foundation section";

    public override string Example => "foundation spire up, tower sky";

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
        if (problem is not null)
        {
            return false;
        }
        if (design.Foundation is not { } foundation)
        {
            problem = UnitWords.Problem(
                this,
                design.Kind.Span,
                "a foundation section is called by its name",
                "no section is named before the comma"
            );
            return false;
        }
        ImmutableArray<string> roles = foundation.Roles;
        if (
            !UnitWords.TryPlace(this, design, Ways, 0, out int way, out problem)
            || !UnitWords.TryParts(
                this,
                design,
                roles.Length,
                roles.Length,
                $"{roles.Length} parts in section \"{foundation.Key}\", for {string.Join(", ", roles)}",
                out ImmutableArray<string> parts,
                out problem
            )
        )
        {
            return false;
        }
        var turn = new Turn(way);
        (Length across, Length down) = turn.SwapsSides ? (height, width) : (width, height);
        ImmutableArray<RolePatch>.Builder patches = ImmutableArray.CreateBuilder<RolePatch>();
        for (int i = 0; i < foundation.Pieces.Length; i++)
        {
            if (Shape(foundation, i, across, down) is not { } shape)
            {
                FoundationPiece piece = foundation.Pieces[i];
                problem = UnitWords.Problem(
                    this,
                    piece.Span,
                    $"piece {i + 1} of section \"{foundation.Key}\" does not show",
                    $"{piece.Role} lies outside the section, or later pieces cover all of it",
                    "a piece lies on the left hand of one going from its first place to its second: change the line, or the order"
                );
                return false;
            }
            patches.Add(
                new RolePatch(shape, roles.IndexOf(foundation.Pieces[i].Role), Bias(shape))
            );
        }
        drawn = new DrawnUnit(
            new UnitForm(
                Kind,
                foundation.Key,
                across,
                down,
                Length.Zero,
                patches.ToImmutable(),
                roles.Length
            ),
            turn,
            parts
        );
        return true;
    }

    private static Polygon? Shape(
        FoundationDesign foundation,
        int index,
        Length width,
        Length height
    )
    {
        Polygon? shape = new Rect(Length.Zero, Length.Zero, width, height).ToPolygon();
        for (int i = index; i < foundation.Pieces.Length && shape is not null; i++)
        {
            if (foundation.Pieces[i].Line is { } line)
            {
                var plane = new HalfPlane(At(line.From), At(line.To));
                shape = (i == index ? plane : plane.Reversed).Keep(shape);
            }
        }
        return shape;

        Point At((Rational X, Rational Y) place) =>
            new(width * (place.X / foundation.Columns), height * (place.Y / foundation.Rows));
    }

    private static ImmutableArray<int> Bias(Polygon shape)
    {
        var bias = ImmutableArray.CreateBuilder<int>();
        for (int i = 0; i < shape.Corners.Length; i++)
        {
            Point way = shape.Corners[(i + 1) % shape.Corners.Length] - shape.Corners[i];
            if (way.X.Sign != 0 && way.Y.Sign != 0)
            {
                bias.Add(i);
            }
        }
        return bias.ToImmutable();
    }

    /// <summary>The edge of a patch along which it is sewn on: all earlier patches lie on the other side of its line. Null for
    /// the first.</summary>
    public static (Point From, Point To)? SeamOf(UnitForm form, int patch)
    {
        Polygon shape = form.Patches[patch].Shape;
        for (int i = 0; patch > 0 && i < shape.Corners.Length; i++)
        {
            Point from = shape.Corners[i],
                to = shape.Corners[(i + 1) % shape.Corners.Length];
            // The inside of a clockwise shape is on the right hand.
            var beyond = new HalfPlane(from, to);
            if (
                form
                    .Patches.Take(patch)
                    .All(earlier => earlier.Shape.Corners.All(c => beyond.SideOf(c) >= 0))
            )
            {
                return (from, to);
            }
        }
        return null;
    }
}
