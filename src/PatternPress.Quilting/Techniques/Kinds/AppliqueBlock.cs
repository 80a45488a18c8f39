using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// A ground of one fabric, the last role, with shapes fused onto it. The outlines of the shapes are no exact numbers: they are
/// drawn through places rounded to 1/1024 in, which then are exact.
/// </summary>
public sealed class AppliqueBlock : UnitKind
{
    public static AppliqueBlock Kind { get; } = new();

    /// <summary>Straight pieces that a curve is drawn by.</summary>
    private const int Pieces = 12;

    private const long Parts = 1024;

    private AppliqueBlock() { }

    public override string Keyword => "applique";

    public override string Name => "appliqué unit";

    public override string Example => "applique gull, body beak on sky";

    public override bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        drawn = null;
        problem = UnitWords.Unwanted(this, design);
        if (problem is not null)
        {
            return false;
        }
        if (design.Applique is not { } applique)
        {
            problem = UnitWords.Problem(
                this,
                design.Kind.Span,
                "an appliqué is called by its name",
                "none is named before the comma"
            );
            return false;
        }
        ImmutableArray<string> roles = applique.Roles;
        if (
            !UnitWords.TryParts(
                this,
                design,
                roles.Length + 1,
                roles.Length + 1,
                $"{roles.Length + 1} parts for \"{applique.Key}\": {string.Join(", ", roles)}, and the ground",
                out ImmutableArray<string> parts,
                out problem
            )
        )
        {
            return false;
        }
        if (width * applique.Rows != height * applique.Columns)
        {
            problem = UnitWords.Region(
                this,
                design,
                $"appliqué \"{applique.Key}\" is drawn {applique.Columns} × {applique.Rows}, and its region is of another shape",
                width,
                height,
                "make the region as wide to its height as the grid is"
            );
            return false;
        }
        double scale = width.Inches.ToDouble() / applique.Columns;
        var overlays = ImmutableArray.CreateBuilder<Overlay>();
        foreach (AppliqueShape shape in applique.Shapes)
        {
            Polygon outline = Flat(shape.Outline, scale);
            Rect bounds = outline.Bounds;
            if (
                bounds.X.Sign < 0
                || bounds.Y.Sign < 0
                || bounds.Right > width
                || bounds.Bottom > height
            )
            {
                problem = UnitWords.Problem(
                    this,
                    shape.Span,
                    $"a shape of appliqué \"{applique.Key}\" reaches beyond its grid",
                    $"{shape.Role} reaches from {Told.Decimal(bounds.X)}, {Told.Decimal(bounds.Y)} to {Told.Decimal(bounds.Right)}, {Told.Decimal(bounds.Bottom)}",
                    "move it inside, or make the grid larger"
                );
                return false;
            }
            overlays.Add(new Overlay(outline, roles.IndexOf(shape.Role)));
        }
        drawn = new DrawnUnit(
            new UnitForm(
                Kind,
                applique.Key,
                width,
                height,
                Length.Zero,
                [
                    new RolePatch(
                        new Rect(Length.Zero, Length.Zero, width, height).ToPolygon(),
                        roles.Length,
                        []
                    ),
                ],
                roles.Length + 1
            )
            {
                Overlays = overlays.ToImmutable(),
            },
            Turn.None,
            parts
        );
        return true;
    }

    // Clockwise, through the places of its curves.
    private static Polygon Flat(PathPart outline, double scale)
    {
        var corners = new List<Point>();
        foreach (PathCurve curve in outline.Curves)
        {
            int pieces = curve.IsLine ? 1 : Pieces;
            for (int i = 0; i < pieces; i++)
            {
                (double x, double y) = curve.At((double)i / pieces);
                var at = new Point(Rounded(x * scale), Rounded(y * scale));
                if (corners.Count == 0 || corners[^1] != at)
                {
                    corners.Add(at);
                }
            }
        }
        if (corners.Count > 1 && corners[^1] == corners[0])
        {
            corners.RemoveAt(corners.Count - 1);
        }
        if (outline.Area < 0)
        {
            corners.Reverse();
        }
        return new Polygon([.. corners]);
    }

    private static Length Rounded(double inches) =>
        Length.FromInches(new Rational((long)Math.Round(inches * Parts), Parts));
}
