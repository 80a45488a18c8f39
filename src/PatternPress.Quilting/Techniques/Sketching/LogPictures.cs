using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>Logs sewn one after the other around a center, numbered in that order.</summary>
internal sealed class LogPictures(UnitForm form, House house)
{
    private readonly LogSequence _sequence = LogSequence.Of(form);
    private readonly Sewing _sewing = new(form, house);

    /// <summary>Name of the measure that is the width after a round, from 1.</summary>
    public static string WidthAfter(int round) => $"round-{round}-width";

    /// <summary>Name of the measure that is the height after a round, from 1.</summary>
    public static string HeightAfter(int round) => $"round-{round}-height";

    /// <summary>The whole unit with the number of every log.</summary>
    public Sketch Order()
    {
        FrameDrawing drawing = new FrameDrawing().Shapes(_sewing.RightSide(_sewing.All));
        for (int log = 1; log <= _sequence.Logs.Length; log++)
        {
            drawing.Number(Beside(log, new Rational(1, 2)), log);
        }
        return drawing;
    }

    /// <summary>Logs laid on what is sewn so far, then folded out.</summary>
    /// <param name="first">Number of the first log, from 1.</param>
    /// <param name="count">Logs that are sewn to what is there already, before any is folded out.</param>
    public IEnumerable<SketchFrame> Add(int first, int count)
    {
        ImmutableArray<int> sewn = [.. Enumerable.Range(0, first)];
        FrameDrawing drawing = _sewing.Together(sewn, [first], Inner(first));
        for (int log = first + 1; log < first + count; log++)
        {
            drawing = _sewing.Onto(drawing, [log], Inner(log));
        }
        yield return drawing.Done();
        yield return Sewn(first, count).Done(FrameLink.Then);
    }

    /// <summary>All up to some logs, with their numbers and the way their seams are pressed.</summary>
    public FrameDrawing Sewn(int first, int count)
    {
        FrameDrawing drawing = _sewing.Opened(
            [.. Enumerable.Range(0, first + count)],
            [.. Enumerable.Range(first, count).Select(log => (Under(log), log))]
        );
        for (int log = first; log < first + count; log++)
        {
            // The arrow is in the middle.
            drawing.Number(Beside(log, new Rational(1, 5)), log);
        }
        return drawing;
    }

    /// <summary>All up to the end of a round, with the sizes to check.</summary>
    public FrameDrawing AfterRound(int round)
    {
        int first = ((round - 1) * _sequence.PerRound) + 1;
        FrameDrawing drawing = Sewn(first, _sequence.PerRound);
        return Measured(drawing, round);
    }

    /// <summary>Adds the sizes to check after a round.</summary>
    public FrameDrawing Measured(FrameDrawing drawing, int round)
    {
        Rect size = Size(round);
        return drawing.Size(
            size,
            WidthAfter(round),
            size.Width == size.Height ? null : HeightAfter(round)
        );
    }

    /// <summary>What has been sewn after a round, with its seam allowance.</summary>
    public Rect Size(int round)
    {
        Rect bounds = new Polygon([
            .. form
                .Patches.Take((round * _sequence.PerRound) + 1)
                .SelectMany(patch => patch.Shape.Corners),
        ]).Bounds;
        Length seam = house.Seam;
        return new Rect(
            bounds.X - seam,
            bounds.Y - seam,
            bounds.Width + (seam * 2),
            bounds.Height + (seam * 2)
        );
    }

    public Sketch Finish(bool trim, Length larger) => _sewing.Finish(trim, larger, 1);

    // What a log is sewn to for most of its length: the log of the round before on the same side.
    private int Under(int log) => Math.Max(0, log - _sequence.PerRound);

    private SlantLine Inner(int log) => _sewing.Seam(Under(log), log);

    private Point Beside(int log, Rational share)
    {
        Rect place = form.Patches[log].Shape.Bounds;
        Rational half = new(1, 2);
        return _sequence.Logs[log - 1].Side is LogSide.Left or LogSide.Right
            ? new Point(place.X + (place.Width * half), place.Y + (place.Height * share))
            : new Point(place.X + (place.Width * share), place.Y + (place.Height * half));
    }
}
