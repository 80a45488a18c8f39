using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Drawings;

public class DrawingTests
{
    static readonly StyleSheet Styles = new(Points.Zero, []);

    static Page Show(Drawing drawing, int width = 200) =>
        new Typesetter(TestFonts.Measurer)
            .Typeset(
                new Document(
                    new DocumentInformation("x", new DateOnly(2026, 1, 1)),
                    Styles,
                    [
                        new PageSequence(
                            new PageFrame(new PaperSize(width.Pt, 400.Pt), Insets.None),
                            new Figure(drawing, "x") { MaxWidth = width.Pt }
                        ),
                    ]
                )
            )
            .Pages[0];

    [Test]
    public void Shapes_scale_and_pens_do_not()
    {
        var drawing = new DrawingBuilder()
            .Area(VectorPath.Rectangle(0, 0, 10, 5), null, new Stroke(0.5.Pt, Ink.Black))
            .ToDrawing(10, 5);
        var path = Show(drawing).Items.OfType<PageItem.Path>().Single();
        path.Outline.Bounds().ShouldBe((0, 0, 200, 100));
        path.Stroke!.Width.ShouldBe(0.5.Pt);
    }

    [Test]
    public void Letters_keep_their_size_and_stand_where_anchored()
    {
        Points[] Ink(LabelAcross across, LabelDown down)
        {
            var style = new LabelStyle
            {
                Size = 10.Pt,
                Across = across,
                Down = down,
            };
            var text = Show(new DrawingBuilder().Label("H", new(5, 5), style).ToDrawing(10, 10))
                .Items.OfType<PageItem.Text>()
                .Single();
            text.Size.ShouldBe(10.Pt);
            var ink = PageInspection.InkOf(text);
            return [ink.X, ink.Y, ink.Right, ink.Bottom];
        }

        var middle = Ink(LabelAcross.Centre, LabelDown.Middle);
        ((middle[0] + middle[2]) / 2).ShouldBeInRange(99.7.Pt, 100.3.Pt);
        ((middle[1] + middle[3]) / 2).ShouldBeInRange(99.98.Pt, 100.02.Pt);
        Ink(LabelAcross.Left, LabelDown.Baseline)[3].ShouldBe(100.Pt);
        Ink(LabelAcross.Left, LabelDown.Top)[1].ShouldBeInRange(99.98.Pt, 100.02.Pt);
        Ink(LabelAcross.Right, LabelDown.Top)[2].ShouldBeLessThan(100.Pt);
    }

    [Test]
    public void Groups_turn_mirror_and_move()
    {
        var drawing = new DrawingBuilder()
            .Group(
                Transform.Turn(90).Then(Transform.Move(100, 0)),
                inner => inner.Line(new(0, 0), new(50, 10), new Stroke(1.Pt, Ink.Black))
            )
            .ToDrawing(100, 100);
        Show(drawing, 100)
            .Items.OfType<PageItem.Path>()
            .Single()
            .Outline.Points.ShouldBe([new XY(100, 0), new XY(90, 50)]);
        Transform.MirrorAcross(10).Apply(new(3, 4)).ShouldBe(new XY(17, 4));
        Transform.MirrorDown(10).Apply(new(3, 4)).ShouldBe(new XY(3, 16));
        Transform.Turn(180, new(5, 5)).Apply(new(0, 0)).ShouldBe(new XY(10, 10));
    }

    [Test]
    public void There_are_many_hatches_and_all_differ()
    {
        Hatches.All.Length.ShouldBeGreaterThanOrEqualTo(30);
        Hatches.All.Select(hatch => hatch.Name).Distinct().Count().ShouldBe(Hatches.All.Length);
        Hatches.All.Select(Ink).Distinct().Count().ShouldBe(Hatches.All.Length);

        static string Ink(Hatch hatch)
        {
            var items = Show(Hatched(hatch, VectorPath.Rectangle(0, 0, 100, 100))).Items;
            return string.Join(
                ';',
                items
                    .OfType<PageItem.Clip>()
                    .Single()
                    .Items.OfType<PageItem.Path>()
                    .Select(Described)
            );
        }

        static string Described(PageItem.Path path) =>
            $"{path.Fill} {path.Stroke?.Width} {path.Stroke?.Dashes.Length} {string.Join(' ', path.Outline.Points.Take(40))}";
    }

    [Test]
    public void Hatches_keep_their_size_whatever_the_scale()
    {
        var drawing = Hatched(Hatches.Find("level lines")!, VectorPath.Rectangle(0, 0, 100, 100));
        Lines(100).ShouldBe(26);
        Lines(200).ShouldBe(51);

        int Lines(int width) =>
            Show(drawing, width)
                .Items.OfType<PageItem.Clip>()
                .Single()
                .Items.OfType<PageItem.Path>()
                .Single()
                .Outline.Verbs.Count(verb => verb == PathVerb.Move);
    }

    [Test]
    public void Hatches_of_far_apart_areas_do_not_cross_what_lies_between()
    {
        var areas = VectorPath.Combine([
            VectorPath.Rectangle(0, 0, 10, 10),
            VectorPath.Rectangle(90, 0, 10, 10),
        ]);
        foreach (var hatch in Hatches.All)
        {
            var paths = Show(Hatched(hatch, areas), 100)
                .Items.OfType<PageItem.Clip>()
                .Single()
                .Items.OfType<PageItem.Path>();
            paths
                .SelectMany(path => path.Outline.Parts())
                .ShouldAllBe(
                    part => !(part.Bounds().Left < 25 && part.Bounds().Right > 75),
                    hatch.Name
                );
        }
    }

    [Test]
    public void A_halo_is_no_text()
    {
        var items = Show(
            new DrawingBuilder()
                .Label("A", new(5, 5), new LabelStyle { Halo = 1.Pt })
                .ToDrawing(10, 10)
        ).Items;
        items.OfType<PageItem.Text>().Count().ShouldBe(1);
        items.OfType<PageItem.Path>().Single().Stroke!.Width.ShouldBe(2.Pt);
    }

    [Test]
    public void Arcs_stay_on_their_circle()
    {
        foreach (
            var point in VectorPath.Arc(new(0, 0), 10, 30, 300).Points.Where((_, i) => i % 3 == 0)
        )
        {
            point.Length.ShouldBe(10, 1e-9);
        }

        VectorPath.Circle(new(0, 0), 10).Bounds().ShouldBe((-10, -10, 10, 10));
    }

    [Test]
    public void Fitting_keeps_the_shape()
    {
        var drawing = new DrawingBuilder().ToDrawing(40, 20, 2.Pt);
        drawing.NaturalWidth.ShouldBe(80.Pt);
        drawing.HeightFor(100.Pt).ShouldBe(50.Pt);
        drawing.WidthWithin(100.Pt, 20.Pt).ShouldBe(40.Pt);
        drawing.Sized(120.Pt).NaturalHeight.ShouldBe(60.Pt);
    }

    [Test]
    public void A_drawing_becomes_svg()
    {
        var svg = PagesAsSvg.Write(
            new DrawingBuilder()
                .Area(VectorPath.Circle(new(5, 5), 5), Ink.FromHex("#15233b"))
                .Label("A & B", new(5, 5))
                .ToDrawing(10, 10),
            TestFonts.Measurer,
            Styles,
            "a <circle>"
        );
        var root = System.Xml.Linq.XDocument.Parse(svg).Root!;
        root.Attribute("viewBox")!.Value.ShouldBe("0 0 10 10");
        root.Elements()
            .Select(element => element.Name.LocalName)
            .ShouldBe(["title", "path", "text"]);
        root.Elements().Last().Value.ShouldBe("A & B");
    }

    static Drawing Hatched(Hatch hatch, VectorPath area) =>
        new DrawingBuilder()
            .Area(area, null, null, new HatchFill(hatch, Ink.Black))
            .ToDrawing(100, 100);
}
