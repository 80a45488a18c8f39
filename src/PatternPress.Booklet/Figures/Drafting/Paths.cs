using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>Turns places into the paths of a drawing, rounded to 1/100 pt so that files stay small.</summary>
internal static class Paths
{
    public static XY At(Spot p) => new(Math.Round(p.X, 2), Math.Round(p.Y, 2));

    /// <summary>Closed shapes as one path.</summary>
    /// <param name="scale">Applied first.</param>
    /// <param name="by">Added then.</param>
    public static VectorPath Closed(IEnumerable<Spot[]> shapes, double scale = 1, Spot by = default)
    {
        var path = new PathBuilder();
        foreach (Spot[] shape in shapes)
        {
            for (int i = 0; i < shape.Length; i++)
            {
                XY at = At((shape[i] * scale) + by);
                _ = i == 0 ? path.MoveTo(at) : path.LineTo(at);
            }
            path.Close();
        }
        return path.ToPath();
    }

    public static VectorPath Closed(params Spot[] shape) => Closed([shape]);

    public static VectorPath Of(Box box) => Closed([box.Corners()]);

    /// <summary>Separate lines as one path.</summary>
    public static VectorPath Lines(
        IEnumerable<(Spot From, Spot To)> lines,
        double scale = 1,
        Spot by = default
    )
    {
        var path = new PathBuilder();
        foreach ((Spot from, Spot to) in lines)
        {
            path.MoveTo(At((from * scale) + by));
            path.LineTo(At((to * scale) + by));
        }
        return path.ToPath();
    }

    public static VectorPath Open(params Spot[] places)
    {
        var path = new PathBuilder();
        for (int i = 0; i < places.Length; i++)
        {
            _ = i == 0 ? path.MoveTo(At(places[i])) : path.LineTo(At(places[i]));
        }
        return path.ToPath();
    }
}
