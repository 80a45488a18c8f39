using NUnit.Framework;
using PatternPress.Quilting.Colors;
using PatternPress.Quilting.Model;
using Shouldly;

namespace PatternPress.Tests.Quilting.Colors;

public class ColorVisionSimulationTests
{
    // 8-bit results derived from the matrices of Machado, Oliveira, Fernandes 2009 at severity 1, applied to linear
    // RGB, clipped and rounded.
    [TestCase(ColorVision.Protan, "#ff0000", 109, 95, 0)]
    [TestCase(ColorVision.Protan, "#00ff00", 255, 229, 0)]
    [TestCase(ColorVision.Protan, "#0000ff", 0, 89, 255)]
    [TestCase(ColorVision.Deutan, "#ff0000", 163, 144, 0)]
    [TestCase(ColorVision.Deutan, "#00ff00", 239, 214, 58)]
    [TestCase(ColorVision.Deutan, "#0000ff", 0, 61, 251)]
    [TestCase(ColorVision.Tritan, "#ff0000", 255, 0, 15)]
    [TestCase(ColorVision.Tritan, "#00ff00", 0, 247, 217)]
    [TestCase(ColorVision.Tritan, "#0000ff", 0, 107, 150)]
    public void Primaries(ColorVision kind, string color, byte red, byte green, byte blue)
    {
        Color.TryParse(color, out Color parsed).ShouldBeTrue();
        ColorVisionSimulation.Seen(parsed, kind).ShouldBe(new Color(red, green, blue));
    }

    [Test]
    public void Greys_stay_as_they_are([Values] ColorVision kind)
    {
        for (int value = 0; value < 256; value++)
        {
            var grey = new Color((byte)value, (byte)value, (byte)value);
            ColorVisionSimulation.Seen(grey, kind).ShouldBe(grey);
            ColorVisionSimulation.SeenWeakly(grey, kind).ShouldBe(grey);
        }
    }

    [Test]
    public void A_weak_deficiency_changes_less_than_a_full_one([Values] ColorVision kind)
    {
        Color color = new(200, 60, 40);
        double weak = ColorDifference.Between(color, ColorVisionSimulation.SeenWeakly(color, kind));
        double full = ColorDifference.Between(color, ColorVisionSimulation.Seen(color, kind));
        weak.ShouldBeGreaterThan(0);
        full.ShouldBeGreaterThan(weak);
    }
}
