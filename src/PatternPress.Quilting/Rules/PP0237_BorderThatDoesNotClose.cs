using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The strips and squares of a border do not go once around what they enclose.</summary>
public sealed class PP0237_BorderThatDoesNotClose : CheckingRule
{
    public PP0237_BorderThatDoesNotClose()
        : base("PP0237", Severity.Error, "Border that does not close") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (Quilt quilt in context.Quilts)
        {
            Rect inside = quilt.Center;
            foreach (Border border in quilt.Borders)
            {
                if (Fault(border, inside) is { } fault)
                {
                    yield return FindIn(
                        quilt.Size.Key,
                        border.Design.Span,
                        $"border {border.Number} does not close",
                        "this border",
                        fault
                    );
                }
                inside = border.Outside;
            }
            if (inside.Width != quilt.Width || inside.Height != quilt.Height)
            {
                yield return FindIn(
                    quilt.Size.Key,
                    quilt.Size.Quilt.Span,
                    "the quilt is not as large as its last border",
                    "the quilt",
                    $"the last border measures {Wording.Measure(inside.Width, inside.Height)}, the quilt {Wording.Measure(quilt.Width, quilt.Height)}"
                );
            }
        }
    }

    private static string? Fault(Border border, Rect inside)
    {
        if (border.Inside != inside)
        {
            return $"it goes around {border.Inside}, but encloses {inside}";
        }
        Rect outside = border.Outside;
        if (border.Design.Corners == BorderCorners.Mitered)
        {
            // Every strip is as long as its side; what its ends lose is told by the area of all.
            foreach (BorderPiece piece in border.Pieces)
            {
                bool level = piece.Side is BorderSide.Top or BorderSide.Bottom;
                (Length strip, Length whole) = level
                    ? (piece.Place.Width, outside.Width)
                    : (piece.Place.Height, outside.Height);
                if (strip != whole)
                {
                    return Sum(level ? "width" : "height", strip, whole);
                }
            }
            return null;
        }
        // Along each of the four sides the pieces must add up to the whole side.
        Length left = Along(border, p => p.X == outside.X, p => p.Height),
            right = Along(border, p => p.Right == outside.Right, p => p.Height),
            top = Along(border, p => p.Y == outside.Y, p => p.Width),
            bottom = Along(border, p => p.Bottom == outside.Bottom, p => p.Width);
        BorderWidths widths = border.Widths;
        return Differs(widths.Left, left, outside.Height) ? Sum("left", left, outside.Height)
            : Differs(widths.Right, right, outside.Height) ? Sum("right", right, outside.Height)
            : Differs(widths.Top, top, outside.Width) ? Sum("top", top, outside.Width)
            : Differs(widths.Bottom, bottom, outside.Width) ? Sum("bottom", bottom, outside.Width)
            : null;

        // Where a side has no border, what it goes round is the outside.
        static bool Differs(Length width, Length pieces, Length whole) =>
            width.Sign > 0 && pieces != whole;
    }

    private static Length Along(Border border, Func<Rect, bool> lies, Func<Rect, Length> length) =>
        border
            .Pieces.Select(piece => piece.Place)
            .Concat(border.Blocks.Select(block => block.Place.Place))
            .Where(lies)
            .Aggregate(Length.Zero, (sum, place) => sum + length(place));

    private static string Sum(string side, Length pieces, Length whole) =>
        $"its pieces add up to {Wording.Measure(pieces)} along the {side}, which is {Wording.Measure(whole)} long";
}
