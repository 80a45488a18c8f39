using System.Collections.Immutable;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;
using SkiaSharp;

namespace PatternPress.Tests.Typesetting;

/// <summary>
/// The shapes of a finished page painted dot by dot, to measure what is seen: areas, lines and what is clipped. Letters
/// and images are left out.
/// </summary>
internal sealed class PageRaster
{
    private readonly SKColor[] _dots;

    /// <param name="dotsPerPoint">4 are 288 to the inch.</param>
    public PageRaster(Page page, int dotsPerPoint)
    {
        Width = (int)Math.Ceiling(page.Paper.Width.Value * dotsPerPoint);
        Height = (int)Math.Ceiling(page.Paper.Height.Value * dotsPerPoint);
        using var bitmap = new SKBitmap(Width, Height, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.White);
        canvas.Scale(dotsPerPoint);
        Paint(canvas, page.Items);
        canvas.Flush();
        _dots = bitmap.Pixels;
    }

    public int Width { get; }

    public int Height { get; }

    public Ink this[int x, int y]
    {
        get
        {
            SKColor dot = _dots[(y * Width) + x];
            return new(dot.Red, dot.Green, dot.Blue);
        }
    }

    private static void Paint(SKCanvas canvas, ImmutableArray<PageItem> items)
    {
        foreach (PageItem item in items)
        {
            switch (item)
            {
                case PageItem.Path path:
                    Paint(canvas, path);
                    break;
                case PageItem.Clip clip:
                    canvas.Save();
                    using (SKPath outline = PathOf(clip.Outline, clip.EvenOdd))
                    {
                        canvas.ClipPath(outline, SKClipOperation.Intersect, antialias: true);
                    }
                    Paint(canvas, clip.Items);
                    canvas.Restore();
                    break;
                default:
                    break;
            }
        }
    }

    private static void Paint(SKCanvas canvas, PageItem.Path path)
    {
        using SKPath outline = PathOf(path.Outline, path.EvenOdd);
        using var paint = new SKPaint { IsAntialias = true };
        if (path.Fill is { } fill)
        {
            paint.Color = new SKColor(fill.Red, fill.Green, fill.Blue);
            canvas.DrawPath(outline, paint);
        }
        if (path.Stroke is { } stroke)
        {
            paint.Style = SKPaintStyle.Stroke;
            paint.Color = new SKColor(stroke.Ink.Red, stroke.Ink.Green, stroke.Ink.Blue);
            paint.StrokeWidth = (float)stroke.Width.Value;
            paint.StrokeCap = stroke.Cap switch
            {
                StrokeCap.Round => SKStrokeCap.Round,
                StrokeCap.Square => SKStrokeCap.Square,
                _ => SKStrokeCap.Butt,
            };
            if (!stroke.Dashes.IsDefaultOrEmpty)
            {
                paint.PathEffect = SKPathEffect.CreateDash(
                    [.. stroke.Dashes.Select(d => (float)d.Value)],
                    0
                );
            }
            canvas.DrawPath(outline, paint);
        }
    }

    private static SKPath PathOf(VectorPath path, bool evenOdd)
    {
        using var builder = new SKPathBuilder();
        int at = 0;
        foreach (PathVerb verb in path.Verbs)
        {
            switch (verb)
            {
                case PathVerb.Move:
                    builder.MoveTo(Point(path.Points[at]));
                    break;
                case PathVerb.Line:
                    builder.LineTo(Point(path.Points[at]));
                    break;
                case PathVerb.Curve:
                    builder.CubicTo(
                        Point(path.Points[at]),
                        Point(path.Points[at + 1]),
                        Point(path.Points[at + 2])
                    );
                    break;
                default:
                    builder.Close();
                    break;
            }
            at += VectorPath.PointsOf(verb);
        }
        builder.FillType = evenOdd ? SKPathFillType.EvenOdd : SKPathFillType.Winding;
        return builder.Detach();

        static SKPoint Point(XY p) => new((float)p.X, (float)p.Y);
    }
}
