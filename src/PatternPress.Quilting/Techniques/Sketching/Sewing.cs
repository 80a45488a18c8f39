using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>
/// Patches of a form as they lie with their seam allowance: cut, sewn to others, or turned over onto them. Groups
/// of patches are given by index; within a group, patches that share an edge are sewn to each other.
/// </summary>
internal sealed class Sewing(UnitForm form, House house)
{
    private readonly Length _seam = house.Seam;

    private Dictionary<SlantLine, List<(int Patch, Point From, Point To)>>? _edgesByLine;

    /// <summary>All patches of the form.</summary>
    public ImmutableArray<int> All => [.. Enumerable.Range(0, form.Patches.Length)];

    /// <summary>The unit with its seam allowance, and more where it is cut oversize.</summary>
    public Rect Whole(Length more = default)
    {
        Length out_ = _seam + more;
        return new Rect(-out_, -out_, form.Width + (out_ * 2), form.Height + (out_ * 2));
    }

    /// <summary>The middle of the edge that two patches share.</summary>
    public Point Middle(int a, int b)
    {
        (Point from, Point to) = Shared(a, b);
        return new Point((from.X + to.X) / 2, (from.Y + to.Y) / 2);
    }

    /// <summary>The seam between two patches; its outside is the second one's side.</summary>
    public SlantLine Seam(int a, int b)
    {
        (Point from, Point to) = Shared(a, b);
        SlantLine line = SlantLine.Through(from, to);
        return line.SideOf(form.Patches[b].Shape.Corners.First(c => line.SideOf(c) != 0)) > 0
            ? line
            : line.Reversed;
    }

    /// <summary>A group, right side up: edges sewn within the group lie on their seam, all others keep their allowance.</summary>
    /// <param name="more">Beyond the seam allowance, where pieces are cut oversize.</param>
    public ImmutableArray<SketchShape> RightSide(
        ImmutableArray<int> group,
        Length more = default
    ) =>
        [
            .. group.Select(i => new SketchShape(
                Convex.Of([
                    .. Convex
                        .Edges(form.Patches[i].Shape)
                        .Select(
                            (edge, n) => IsSewn(group, i, n) ? edge : edge.MovedOut(_seam + more)
                        ),
                ]),
                form.Patches[i].Role,
                FabricSide.Right
            )),
        ];

    /// <summary>A group turned over along a line, so that its wrong side shows.</summary>
    public ImmutableArray<SketchShape> TurnedOver(ImmutableArray<int> group, SlantLine along) =>
        [
            .. RightSide(group)
                .Select(s => new SketchShape(along.Mirror(s.Shape), s.Role, FabricSide.Wrong)),
        ];

    /// <summary>
    /// Two groups right sides together: the second turned over onto the first along a seam, with the seam to sew.
    /// </summary>
    public FrameDrawing Together(
        ImmutableArray<int> lower,
        ImmutableArray<int> upper,
        SlantLine seam
    )
    {
        ImmutableArray<SketchShape> below = RightSide(lower);
        ImmutableArray<SketchShape> above = TurnedOver(upper, seam);
        Rect under = Bounds(below),
            over = Bounds(above);
        var drawing = new FrameDrawing();
        bool hidden =
            under.X >= over.X
            && under.Y >= over.Y
            && under.Right <= over.Right
            && under.Bottom <= over.Bottom;
        if (hidden)
        {
            // Moved along the seam, so that the raw edges that are sewn still lie on each other.
            Length peek = Length.Max(under.Width, under.Height) / 16;
            var aside = new Point(
                peek * Math.Abs(seam.B),
                peek * (seam.B == 0 ? 1 : -seam.A * seam.B)
            );
            below = [.. below.Select(s => s with { Shape = s.Shape.MoveBy(aside) })];
        }
        drawing.Shapes(below).Shapes(above);
        if (Convex.Chord(above.Select(s => s.Shape), seam) is { } chord)
        {
            drawing.Sewn(chord.From, chord.To);
        }
        return drawing;
    }

    /// <summary>One more group laid onto a drawing, turned over along its seam.</summary>
    public FrameDrawing Onto(FrameDrawing drawing, ImmutableArray<int> upper, SlantLine seam)
    {
        ImmutableArray<SketchShape> above = TurnedOver(upper, seam);
        drawing.Shapes(above);
        return Convex.Chord(above.Select(s => s.Shape), seam) is { } chord
            ? drawing.Sewn(chord.From, chord.To)
            : drawing;
    }

    /// <summary>A group as it lies when sewn, with the arrows of the seams just sewn.</summary>
    /// <param name="pressed">Pairs of patches; the allowance of their seam is pressed to the second.</param>
    public FrameDrawing Opened(
        ImmutableArray<int> group,
        params ReadOnlySpan<(int From, int To)> pressed
    )
    {
        var drawing = new FrameDrawing().Shapes(RightSide(group));
        foreach ((int from, int to) in pressed)
        {
            // Not longer than the patch it points into.
            Rect patch = form.Patches[to].Shape.Bounds;
            Length reach = Length.Min(
                Length.Max(form.Width, form.Height) / 10,
                Length.Min(patch.Width, patch.Height) * new Rational(2, 5)
            );
            drawing.Press(Seam(from, to), Middle(from, to), reach, house);
        }
        return drawing;
    }

    /// <summary>Groups laid out beside and below each other, not yet sewn together.</summary>
    /// <param name="groups">Each with the gaps to leave to the right of and below those before it.</param>
    public FrameDrawing Apart(
        params ReadOnlySpan<(ImmutableArray<int> Group, int Right, int Down)> groups
    )
    {
        Length gap = Length.Max(form.Width, form.Height) / 10 + _seam;
        var drawing = new FrameDrawing();
        foreach ((ImmutableArray<int> group, int right, int down) in groups)
        {
            var aside = new Point(gap * right, gap * down);
            drawing.Shapes(RightSide(group).Select(s => s with { Shape = s.Shape.MoveBy(aside) }));
        }
        return drawing;
    }

    /// <summary>
    /// The last picture of every technique: the unit with its unfinished size; before it, where it is trimmed, the
    /// larger unit with the cuts.
    /// </summary>
    /// <param name="larger">How much larger than unfinished it comes out.</param>
    public Sketch Finish(bool trim, Length larger, int count)
    {
        SketchFrame unit = new FrameDrawing()
            .Shapes(RightSide(All))
            .Size(Whole(), UnfinishedWidth, form.Width == form.Height ? null : UnfinishedHeight)
            .Done(trim ? FrameLink.Then : FrameLink.None, count);
        if (!trim)
        {
            return new Sketch([unit]);
        }
        return new Sketch([
            new FrameDrawing().Shapes(RightSide(All, larger / 2)).CutRound(Whole()).Done(),
            unit,
        ]);
    }

    public const string UnfinishedWidth = "unfinished-width";

    public const string UnfinishedHeight = "unfinished-height";

    private (Point From, Point To) Shared(int a, int b) =>
        SharedOrNull(form.Patches[a].Shape, form.Patches[b].Shape)
        ?? throw new ArgumentException($"Patches {a} and {b} share no edge.");

    private bool IsSewn(ImmutableArray<int> group, int patch, int edge)
    {
        ImmutableArray<Point> corners = form.Patches[patch].Shape.Corners;
        var piece = (From: corners[edge], To: corners[(edge + 1) % corners.Length]);
        return EdgesByLine.TryGetValue(
                SlantLine.Through(piece.From, piece.To).Reversed,
                out List<(int Patch, Point From, Point To)>? facing
            )
            && facing.Exists(other =>
                Overlap(piece, (other.From, other.To)) is not null && group.Contains(other.Patch)
            );
    }

    // A checkerboard has hundreds of patches; only edges on one line need to be compared.
    private Dictionary<SlantLine, List<(int Patch, Point From, Point To)>> EdgesByLine =>
        _edgesByLine ??= FindEdges(form);

    private static Dictionary<SlantLine, List<(int Patch, Point From, Point To)>> FindEdges(
        UnitForm form
    )
    {
        var found = new Dictionary<SlantLine, List<(int Patch, Point From, Point To)>>();
        for (int patch = 0; patch < form.Patches.Length; patch++)
        {
            ImmutableArray<Point> corners = form.Patches[patch].Shape.Corners;
            for (int i = 0; i < corners.Length; i++)
            {
                Point from = corners[i],
                    to = corners[(i + 1) % corners.Length];
                var line = SlantLine.Through(from, to);
                if (!found.TryGetValue(line, out List<(int Patch, Point From, Point To)>? edges))
                {
                    found.Add(line, edges = []);
                }
                edges.Add((patch, from, to));
            }
        }
        return found;
    }

    private static (Point From, Point To)? SharedOrNull(Polygon a, Polygon b)
    {
        for (int i = 0; i < a.Corners.Length; i++)
        {
            for (int j = 0; j < b.Corners.Length; j++)
            {
                if (
                    Overlap(
                        (a.Corners[i], a.Corners[(i + 1) % a.Corners.Length]),
                        (b.Corners[j], b.Corners[(j + 1) % b.Corners.Length])
                    ) is
                    { } both
                )
                {
                    return both;
                }
            }
        }
        return null;
    }

    // Edges of clockwise neighbours run against each other.
    private static (Point From, Point To)? Overlap(
        (Point From, Point To) a,
        (Point From, Point To) b
    )
    {
        SlantLine line = SlantLine.Through(a.From, a.To);
        if (SlantLine.Through(b.From, b.To).Reversed != line)
        {
            return null;
        }
        // Places along the line, rising from a.From to a.To.
        Length At(Point p) => (p.X * -line.B) + (p.Y * line.A);
        Point from = At(a.From) >= At(b.To) ? a.From : b.To;
        Point to = At(a.To) <= At(b.From) ? a.To : b.From;
        return At(from) < At(to) ? (from, to) : null;
    }

    private static Rect Bounds(ImmutableArray<SketchShape> shapes) =>
        new Polygon([.. shapes.SelectMany(s => s.Shape.Corners)]).Bounds;
}
