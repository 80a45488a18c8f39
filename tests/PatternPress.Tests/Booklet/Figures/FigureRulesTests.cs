using PatternPress.Booklet.Figures;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Tests.Booklet.Figures;

/// <summary>What every figure must keep, in colour and in black only.</summary>
public sealed class FigureRulesTests
{
    private static IEnumerable<TestCaseData> Figures()
    {
        foreach (SampleFigures.Sample sample in SampleFigures.All)
        {
            yield return new TestCaseData(sample, FigureStyle.Colored).SetArgDisplayNames(
                $"{sample}"
            );
            yield return new TestCaseData(sample, FigureStyle.BlackOnly).SetArgDisplayNames(
                $"{sample}, black only"
            );
        }
    }

    [TestCaseSource(nameof(Figures))]
    public void Stays_within_its_room_and_uses_it(object sample, FigureStyle style)
    {
        var figure = (SampleFigures.Sample)sample;
        Drawing drawing = figure.In(style).Drawing;
        drawing.UnitSize.ShouldBe(1.Pt);
        drawing.NaturalWidth.ShouldBeLessThanOrEqualTo(figure.Room.Width + 0.02.Pt);
        drawing.NaturalHeight.ShouldBeLessThanOrEqualTo(figure.Room.Height + 0.02.Pt);
        drawing.NaturalWidth.ShouldBeGreaterThan(5.Pt);
        drawing.NaturalHeight.ShouldBeGreaterThan(5.Pt);
    }

    [TestCaseSource(nameof(Figures))]
    public void Draws_nothing_outside(object sample, FigureStyle style)
    {
        Drawing drawing = ((SampleFigures.Sample)sample).In(style).Drawing;
        foreach (Mark mark in FigurePage.Marks(drawing.Marks))
        {
            (double left, double top, double right, double bottom) = mark switch
            {
                Mark.Outline outline => outline.Path.Bounds(),
                Mark.Line line => VectorPath.Polyline(line.From, line.To).Bounds(),
                Mark.Label label => (label.At.X, label.At.Y, label.At.X, label.At.Y),
                _ => (0, 0, 0, 0),
            };
            const double rounding = 0.02;
            left.ShouldBeGreaterThanOrEqualTo(-rounding);
            top.ShouldBeGreaterThanOrEqualTo(-rounding);
            right.ShouldBeLessThanOrEqualTo(drawing.Width + rounding, mark.ToString());
            bottom.ShouldBeLessThanOrEqualTo(drawing.Height + rounding, mark.ToString());
        }
    }

    [TestCaseSource(nameof(Figures))]
    public void Keeps_the_least_line_and_type(object sample, FigureStyle style)
    {
        foreach (
            Mark mark in FigurePage.Marks(((SampleFigures.Sample)sample).In(style).Drawing.Marks)
        )
        {
            if (mark is Mark.Outline { Stroke: { } outline })
            {
                outline.Width.Value.ShouldBeGreaterThanOrEqualTo(FigureStyle.ThinnestLine);
            }
            if (mark is Mark.Line line)
            {
                line.Stroke.Width.Value.ShouldBeGreaterThanOrEqualTo(FigureStyle.ThinnestLine);
            }
            if (mark is Mark.Outline { Hatch: { } hatch })
            {
                HatchTests
                    .ThinnestLine(hatch.Hatch, hatch.Scale)
                    .ShouldBeGreaterThanOrEqualTo(FigureStyle.ThinnestLine);
            }
            if (mark is Mark.Label label)
            {
                label.Style.Size.Value.ShouldBeGreaterThanOrEqualTo(FigureStyle.SmallestType);
            }
        }
    }

    [TestCaseSource(nameof(Figures))]
    public void Words_neither_overlap_nor_leave_the_figure(object sample, FigureStyle style)
    {
        Picture picture = ((SampleFigures.Sample)sample).In(style);
        foreach (string family in style.IsBlackOnly ? new[] { "Lato" } : ["Lato", "Vollkorn"])
        {
            TypesetDocument set = FigurePage.Typeset(picture, family);
            set.Pages.Length.ShouldBe(1);
            PageInspection.Inspect(set).Select(finding => finding.ToString()).ShouldBeEmpty(family);
        }
    }

    [TestCaseSource(nameof(Figures))]
    public void Is_the_same_every_time(object sample, FigureStyle style)
    {
        var figure = (SampleFigures.Sample)sample;
        FigurePage.Text(figure.Anew(style)).ShouldBe(FigurePage.Text(figure.In(style)));
    }

    [TestCaseSource(nameof(Figures))]
    public void Says_in_sentences_what_it_shows(object sample, FigureStyle style)
    {
        string alt = ((SampleFigures.Sample)sample).In(style).AltText;
        alt.ShouldNotBeNullOrWhiteSpace();
        alt.ShouldEndWith(".");
        char.IsUpper(alt[0]).ShouldBeTrue(alt);
        foreach (string slip in new[] { "  ", "..", " .", " ,", "()", ": .", "null" })
        {
            alt.ShouldNotContain(slip);
        }
    }

    [TestCaseSource(nameof(Figures))]
    public void Black_only_prints_nothing_but_black(object sample, FigureStyle style)
    {
        if (!style.IsBlackOnly)
        {
            return;
        }
        foreach (
            Ink ink in FigurePage
                .Marks(((SampleFigures.Sample)sample).In(style).Drawing.Marks)
                .SelectMany(Inks)
        )
        {
            (ink == Ink.Black || ink == Ink.White).ShouldBeTrue(ink.ToString());
        }
    }

    private static IEnumerable<Ink> Inks(Mark mark)
    {
        switch (mark)
        {
            case Mark.Outline outline:
                if (outline.Fill is { } fill)
                {
                    yield return fill;
                }
                if (outline.Hatch is { } hatch)
                {
                    yield return hatch.Ink;
                }
                if (outline.Stroke is { } stroke)
                {
                    yield return stroke.Ink;
                }
                break;
            case Mark.Line line:
                yield return line.Stroke.Ink;
                break;
            case Mark.Label label:
                yield return label.Style.Ink;
                break;
            default:
                break;
        }
    }
}
