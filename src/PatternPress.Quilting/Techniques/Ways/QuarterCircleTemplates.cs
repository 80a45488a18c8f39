using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// A quarter circle and its hollow background, each cut around a template out of the square that holds it. The seam lies on one
/// arc of radius r: the quarter circle is cut along r + s, the background along r − s. At the ends of the arc the cut edges run
/// on along its tangents, so that all corners are exact and the ends can be laid on each other.
/// </summary>
public sealed class QuarterCircleTemplates : Technique
{
    /// <summary>Names of the pieces.</summary>
    public const string Pie = "quarter circle",
        Ground = "background";

    public override string Keyword => "quarter-circle-templates";

    public override string Kind => QuarterCircle.Kind.Keyword;

    public override string Name => "Quarter circles, from templates";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        var pictures = new QuarterCirclePictures(form, house);
        return Batch.Of(
            this,
            form,
            house,
            Pieces(form, house, usableWidth),
            1,
            trim: false,
            measures: [("radius", form.Measure)],
            steps:
            [
                new Step("cut", pictures.CutOut),
                new Step("mark", pictures.Marked),
                new Step("pin", pictures.Pinned),
                new Step("sew", pictures.Sewn),
                new Step("press", pictures.Pressed),
                new Step("measure", pictures.Finished),
            ]
        );
    }

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    ) =>
        [
            CutSize.Around(Pie, 0, 1, PieOf(form, house.Seam), house),
            CutSize.Around(Ground, 1, 1, GroundOf(form, house.Seam), house),
        ];

    protected override string? Refusal(UnitForm form, House house, Length usableWidth) =>
        form.Measure <= house.Seam
            ? $"a radius of {Told.One(form.Measure)} leaves no edge inside a seam of {Told.One(house.Seam)}"
            : null;

    /// <summary>The template of the quarter circle.</summary>
    public static PieceTemplate PieOf(UnitForm form, Length seam)
    {
        Length o = Length.Zero,
            r = form.Measure,
            outer = r + seam;
        var cut = new Polygon([
            new(-seam, -seam),
            new(outer, -seam),
            new(outer, o),
            new(o, outer),
            new(-seam, outer),
        ])
        {
            Arcs = [new QuarterArc(2, Point.Origin)],
        };
        Polygon finished = form.Patches[0].Shape;
        return new PieceTemplate(
            finished,
            cut,
            [new Notch(finished.Arcs[0].Middle(finished), cut.Arcs[0].Middle(cut))]
        );
    }

    /// <summary>The template of the background.</summary>
    public static PieceTemplate GroundOf(UnitForm form, Length seam)
    {
        Length o = Length.Zero,
            a = form.Width,
            inner = form.Measure - seam,
            outer = a + seam;
        var cut = new Polygon([
            new(inner, -seam),
            new(outer, -seam),
            new(outer, outer),
            new(-seam, outer),
            new(-seam, inner),
            new(o, inner),
            new(inner, o),
        ])
        {
            Arcs = [new QuarterArc(5, Point.Origin)],
        };
        Polygon finished = form.Patches[1].Shape;
        return new PieceTemplate(
            finished,
            cut,
            [new Notch(finished.Arcs[0].Middle(finished), cut.Arcs[0].Middle(cut))]
        );
    }
}
