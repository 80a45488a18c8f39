using System.Collections.Immutable;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Drawings;

/// <summary>
/// Draws the strokes of a hatch around an area, to be clipped to it. Lines lie on a grid that starts at the sheet's corner,
/// so that neighbouring areas of one hatch look like one cloth; each part of the area gets only the strokes that it needs.
/// </summary>
static class HatchPainter
{
    public static ImmutableArray<PageItem> Paint(HatchFill fill, VectorPath area)
    {
        var items = ImmutableArray.CreateBuilder<PageItem>();
        var bounds = area.Parts()
            .Select(part => part.Bounds())
            .Where(box => box.Right > box.Left)
            .ToList();
        foreach (var layer in fill.Hatch.Layers)
        {
            items.AddRange(
                layer switch
                {
                    HatchLayer.Lines lines => Lines(lines, fill, bounds),
                    HatchLayer.Waves waves => Waves(waves, fill, bounds),
                    HatchLayer.Shapes shapes => Shapes(shapes, fill, bounds),
                    _ => [],
                }
            );
        }

        return items.DrainToImmutable();
    }

    static IEnumerable<PageItem> Lines(
        HatchLayer.Lines layer,
        HatchFill fill,
        List<(double Left, double Top, double Right, double Bottom)> bounds
    )
    {
        var scale = fill.Scale;
        var period = layer.Dashes.IsDefaultOrEmpty ? 0 : layer.Dashes.Sum() * scale;
        var builder = new PathBuilder();
        // Dots and thick bars whose line lies just outside still show in part.
        var margin = layer.Width * scale / 2;
        foreach (
            var run in Runs(
                layer.Degrees,
                layer.Spacing * scale,
                layer.Offset * scale,
                bounds,
                margin
            )
        )
        {
            var from = run.From;
            if (period > 0)
            {
                // Dashes start at whole periods, so that they line up from area to area.
                var shift = run.Index % 2 != 0 ? layer.Stagger * scale : 0;
                from = (Math.Floor((from - shift) / period) * period) + shift;
            }

            builder.MoveTo(run.At(from)).LineTo(run.At(run.To));
        }

        var path = builder.ToPath();
        if (path.IsEmpty)
        {
            yield break;
        }

        var round = !layer.Dashes.IsDefaultOrEmpty && layer.Dashes[0] == 0;
        yield return new PageItem.Path(
            path,
            null,
            new Stroke(Points.Of(layer.Width * scale), fill.Ink)
            {
                Dashes = layer.Dashes.IsDefaultOrEmpty
                    ? []
                    : [.. layer.Dashes.Select(dash => Points.Of(dash * scale))],
                Cap = round ? StrokeCap.Round : StrokeCap.Butt,
            }
        );
    }

    static IEnumerable<PageItem> Waves(
        HatchLayer.Waves layer,
        HatchFill fill,
        List<(double Left, double Top, double Right, double Bottom)> bounds
    )
    {
        var (step, rise) = (layer.Length * fill.Scale / 2, layer.Height * fill.Scale / 2);
        var builder = new PathBuilder();
        foreach (var run in Runs(layer.Degrees, layer.Spacing * fill.Scale, 0, bounds, rise))
        {
            var index = (long)Math.Floor(run.From / step);
            builder.MoveTo(run.At(index * step, Side(index)));
            for (; index * step < run.To; index++)
            {
                var (from, to) = (index * step, (index + 1) * step);
                if (layer.Round)
                {
                    var middle = (from + to) / 2;
                    builder.CurveTo(
                        run.At(middle, Side(index)),
                        run.At(middle, Side(index + 1)),
                        run.At(to, Side(index + 1))
                    );
                }
                else
                {
                    builder.LineTo(run.At(to, Side(index + 1)));
                }
            }
        }

        var path = builder.ToPath();
        if (!path.IsEmpty)
        {
            yield return new PageItem.Path(
                path,
                null,
                new Stroke(Points.Of(layer.Width * fill.Scale), fill.Ink)
            );
        }

        double Side(long index) => index % 2 == 0 ? -rise : rise;
    }

    static IEnumerable<PageItem> Shapes(
        HatchLayer.Shapes layer,
        HatchFill fill,
        List<(double Left, double Top, double Right, double Bottom)> bounds
    )
    {
        var (spacing, size) = (layer.Spacing * fill.Scale, layer.Size * fill.Scale);
        var seen = new HashSet<(long Row, long Column)>();
        var shapes = new List<VectorPath>();
        foreach (var (left, top, right, bottom) in bounds)
        {
            for (
                var row = (long)Math.Floor((top - size) / spacing);
                row * spacing <= bottom + size;
                row++
            )
            {
                var shift = layer.Staggered && row % 2 != 0 ? spacing / 2 : 0;
                for (
                    var column = (long)Math.Floor((left - size - shift) / spacing);
                    (column * spacing) + shift <= right + size;
                    column++
                )
                {
                    if (seen.Add((row, column)))
                    {
                        shapes.Add(
                            HatchShapes.At(
                                layer.Shape,
                                new((column * spacing) + shift, row * spacing),
                                size / 2
                            )
                        );
                    }
                }
            }
        }

        if (shapes.Count > 0)
        {
            var stroke = layer.Filled
                ? null
                : new Stroke(Points.Of(layer.Width * fill.Scale), fill.Ink);
            yield return new PageItem.Path(
                VectorPath.Combine(shapes),
                layer.Filled ? fill.Ink : null,
                stroke
            );
        }
    }

    // The stretches of parallel lines over the bounds; those on the same line that touch become one.
    static IEnumerable<LineRun> Runs(
        double degrees,
        double spacing,
        double offset,
        List<(double Left, double Top, double Right, double Bottom)> bounds,
        double margin
    )
    {
        var turn = Transform.Turn(degrees);
        var back = Transform.Turn(-degrees);
        var stretches = new SortedDictionary<long, List<(double From, double To)>>();
        foreach (var (left, top, right, bottom) in bounds)
        {
            XY[] corners =
            [
                back.Apply(new(left, top)),
                back.Apply(new(right, top)),
                back.Apply(new(left, bottom)),
                back.Apply(new(right, bottom)),
            ];
            var (low, high) = (
                corners.Min(corner => corner.Y) - margin,
                corners.Max(corner => corner.Y) + margin
            );
            var box = new XY[] { corners[0], corners[1], corners[3], corners[2] };
            var first = (long)Math.Ceiling((low - offset) / spacing);
            for (var index = first; (index * spacing) + offset <= high; index++)
            {
                var stretch = Crossing(box, (index * spacing) + offset, margin);
                if (stretch.To > stretch.From)
                {
                    if (!stretches.TryGetValue(index, out var list))
                    {
                        stretches[index] = list = [];
                    }

                    list.Add(stretch);
                }
            }
        }

        foreach (var (index, list) in stretches)
        {
            list.Sort();
            var (from, to) = list[0];
            foreach (var next in list.Skip(1))
            {
                if (next.From <= to + 0.01)
                {
                    to = Math.Max(to, next.To);
                }
                else
                {
                    yield return new(turn, index, (index * spacing) + offset, from, to);
                    (from, to) = next;
                }
            }

            yield return new(turn, index, (index * spacing) + offset, from, to);
        }
    }

    // Where a level line crosses a turned box (corners in order).
    static (double From, double To) Crossing(XY[] box, double y, double margin)
    {
        // Lines just outside are taken to the edge and made longer by as much.
        var (low, high) = (box.Min(corner => corner.Y), box.Max(corner => corner.Y));
        y = Math.Clamp(y, low, high);
        var (from, to) = (double.MaxValue, double.MinValue);
        for (var i = 0; i < box.Length; i++)
        {
            var (a, b) = (box[i], box[(i + 1) % box.Length]);
            if (Math.Min(a.Y, b.Y) > y || Math.Max(a.Y, b.Y) < y)
            {
                continue;
            }

            if (Math.Abs(a.Y - b.Y) < 1e-9)
            {
                (from, to) = (Math.Min(from, Math.Min(a.X, b.X)), Math.Max(to, Math.Max(a.X, b.X)));
                continue;
            }

            var x = a.X + ((b.X - a.X) * (y - a.Y) / (b.Y - a.Y));
            (from, to) = (Math.Min(from, x), Math.Max(to, x));
        }

        // A slanted stroke reaches further by its width; three times covers every angle but the flattest.
        return (from - (3 * margin), to + (3 * margin));
    }

    readonly record struct LineRun(Transform Turn, long Index, double Y, double From, double To)
    {
        public XY At(double along, double aside = 0) => Turn.Apply(new(along, Y + aside));
    }
}
