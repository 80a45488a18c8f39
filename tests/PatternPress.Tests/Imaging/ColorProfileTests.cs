using PatternPress.Imaging;
using static PatternPress.Tests.Imaging.SampleImages;

namespace PatternPress.Tests.Imaging;

/// <summary>Profiles worked out from the primaries that their standards give, by Bradford adaptation to D50.</summary>
public sealed class ColorProfileTests
{
    // Chromaticities of IEC 61966-2-1 (sRGB), SMPTE RP 431-2 with D65 (known as P3) and Adobe RGB (1998), section 4.3.
    private static readonly double[] Standard = [0.64, 0.33, 0.30, 0.60, 0.15, 0.06];
    private static readonly double[] Wide = [0.680, 0.320, 0.265, 0.690, 0.150, 0.060];
    private static readonly double[] Adobe = [0.64, 0.33, 0.21, 0.71, 0.15, 0.06];

    [Test]
    public void The_profile_that_is_written_is_that_of_the_standard()
    {
        byte[] profile = PatternPress.Pdf.Images.StandardProfile.Write();
        double[] colorants = Colorants(Standard);
        for (int i = 0; i < 3; i++)
        {
            for (int axis = 0; axis < 3; axis++)
            {
                Tag(profile, "rgb"[i] + "XYZ", axis)
                    .ShouldBe(colorants[(3 * i) + axis], 0.0003, $"{i} {axis}");
            }
        }
        // What it stands for changes nothing.
        ColorProfile.Read(profile, 3, out _)!.IsStandard.ShouldBeTrue();
        profile.Length.ShouldBe(BitConverter.ToInt32([.. profile[..4].Reverse()]));
    }

    [Test]
    public void A_standard_profile_leaves_every_pixel_alone()
    {
        byte[] profile = PatternPress.Pdf.Images.StandardProfile.Write();
        byte[] plain = Png(64, 64, (x, y) => (x * 4, y * 4, 255 - (x * 4)));
        byte[] tagged = Png(64, 64, (x, y) => (x * 4, y * 4, 255 - (x * 4)), profile);
        Read(tagged).Pixels.ShouldBe(Read(plain).Pixels);
    }

    // What a camera or screen with other primaries calls a color, in sRGB: from the same chromaticities by plain matrix
    // algebra, with the power curve of the profile.
    [Test]
    public void Colors_of_other_screens_are_converted()
    {
        foreach (
            (double[] primaries, int gamma) in new[] { (Wide, 563), (Adobe, 563), (Standard, 461) }
        )
        {
            byte[] profile = Profile(Colorants(primaries), gamma);
            foreach (
                (int r, int g, int b) in new[]
                {
                    (200, 60, 40),
                    (80, 150, 90),
                    (128, 128, 128),
                    (240, 230, 210),
                    (20, 30, 60),
                }
            )
            {
                double[] light =
                [
                    .. new[] { r, g, b }.Select(v => Math.Pow(v / 255.0, gamma / 256.0)),
                ];
                double[] there = Times(
                    Inverse(FromPrimaries(Standard)),
                    Times(FromPrimaries(primaries), light)
                );
                (int, int, int) wanted = (Encoded(there[0]), Encoded(there[1]), Encoded(there[2]));
                (int, int, int) found = At(Read(Png(20, 20, Flat(r, g, b), profile)), 5, 5);
                Math.Abs(found.Item1 - wanted.Item1)
                    .ShouldBeLessThanOrEqualTo(1, $"{found} {wanted}");
                Math.Abs(found.Item2 - wanted.Item2)
                    .ShouldBeLessThanOrEqualTo(1, $"{found} {wanted}");
                Math.Abs(found.Item3 - wanted.Item3)
                    .ShouldBeLessThanOrEqualTo(1, $"{found} {wanted}");
            }
        }
    }

    [Test]
    public void A_jpegs_profile_is_found_in_its_parts()
    {
        byte[] profile = Profile(Colorants(Wide), 563);
        int half = profile.Length / 2;
        byte[] jpeg = Jpeg(40, 40, Flat(80, 150, 90), 100);
        byte[] split = WithSegment(
            WithSegment(jpeg, 0xE2, [.. "ICC_PROFILE\0"u8, 2, 2, .. profile[half..]]),
            0xE2,
            [.. "ICC_PROFILE\0"u8, 1, 2, .. profile[..half]]
        );
        (int, int, int) plain = At(Read(jpeg), 20, 20),
            converted = At(Read(split), 20, 20);
        converted.Item1.ShouldBeLessThan(plain.Item1 - 10);
    }

    [Test]
    public void Greys_keep_being_grey()
    {
        byte[] grey = Profile([], 461, "GRAY");
        ColorProfile profile = ColorProfile.Read(grey, 1, out _)!;
        byte[] pixel = [128, 128, 128];
        profile.Convert(pixel);
        // (128/255)^(461/256) is 0.28905 of white, which sRGB writes as 146.4 (derived).
        pixel.ShouldBe([146, 146, 146]);
    }

    [Test]
    public void Profiles_of_presses_and_broken_ones_are_refused()
    {
        Refused(Png(20, 20, Rings, Profile(Colorants(Wide), 563, "CMYK")))
            .What.ShouldBe("its color profile is for \"CMYK\", not for RGB");
        Refused(Png(20, 20, Rings, Profile([], 563, tables: true)))
            .What.ShouldBe("its color profile is made of tables, as that of a press or printer is");
        Refused(Png(20, 20, Rings, [1, 2, 3])).What.ShouldBe("its color profile is broken");
        byte[] whole = Profile(Colorants(Wide), 563);
        for (int length = 1; length < whole.Length - 2; length += 7)
        {
            Refused(Png(20, 20, Rings, whole[..length])).Kind.ShouldBe(ImageFaultKind.WrongColors);
        }
    }

    private static byte Encoded(double light)
    {
        double l = Math.Clamp(light, 0, 1);
        return (byte)
            Math.Round(255 * (l <= 0.0031308 ? 12.92 * l : (1.055 * Math.Pow(l, 1 / 2.4)) - 0.055));
    }

    private static double Tag(byte[] profile, string name, int axis)
    {
        for (int at = 132; ; at += 12)
        {
            if (System.Text.Encoding.ASCII.GetString(profile, at, 4) == name)
            {
                int offset = BitConverter.ToInt32([.. profile[(at + 4)..(at + 8)].Reverse()]);
                int place = offset + 8 + (4 * axis);
                return BitConverter.ToInt32([.. profile[place..(place + 4)].Reverse()]) / 65536.0;
            }
        }
    }

    // X, Y, Z of each primary, rows of a matrix from light to XYZ relative to D65 (0.3127, 0.3290).
    private static double[] FromPrimaries(double[] xy)
    {
        double[] columns = new double[9];
        for (int i = 0; i < 3; i++)
        {
            double x = xy[2 * i],
                y = xy[(2 * i) + 1];
            (columns[i], columns[3 + i], columns[6 + i]) = (x / y, 1, (1 - x - y) / y);
        }
        double[] white = [0.3127 / 0.3290, 1, (1 - 0.3127 - 0.3290) / 0.3290];
        double[] share = Times(Inverse(columns), white);
        return [.. columns.Select((c, i) => c * share[i % 3])];
    }

    // Relative to D50 (0.9642, 1, 0.8249 of ISO 15076-1), by the cone response of Bradford (as in ISO 15076-1, annex E; the matrix from memory).
    private static double[] Colorants(double[] xy)
    {
        double[] bradford =
        [
            0.8951,
            0.2664,
            -0.1614,
            -0.7502,
            1.7135,
            0.0367,
            0.0389,
            -0.0685,
            1.0296,
        ];
        double[] from = Times(bradford, [0.3127 / 0.3290, 1, (1 - 0.3127 - 0.3290) / 0.3290]);
        double[] to = Times(bradford, [0.9642, 1, 0.8249]);
        double[] light = FromPrimaries(xy);
        double[] colorants = new double[9];
        for (int i = 0; i < 3; i++)
        {
            double[] cones = Times(bradford, [light[i], light[3 + i], light[6 + i]]);
            double[] adapted = Times(
                Inverse(bradford),
                [cones[0] * to[0] / from[0], cones[1] * to[1] / from[1], cones[2] * to[2] / from[2]]
            );
            adapted.CopyTo(colorants, 3 * i);
        }
        return colorants;
    }

    private static double[] Times(double[] m, double[] v)
    {
        if (v.Length == 3)
        {
            return
            [
                (m[0] * v[0]) + (m[1] * v[1]) + (m[2] * v[2]),
                (m[3] * v[0]) + (m[4] * v[1]) + (m[5] * v[2]),
                (m[6] * v[0]) + (m[7] * v[1]) + (m[8] * v[2]),
            ];
        }
        throw new ArgumentException("a vector of three is needed");
    }

    // By Cramer's rule, one column at a time.
    private static double[] Inverse(double[] m)
    {
        double[] inverse = new double[9];
        double whole = Determinant(m);
        for (int column = 0; column < 3; column++)
        {
            for (int unknown = 0; unknown < 3; unknown++)
            {
                double[] replaced = [.. m];
                for (int row = 0; row < 3; row++)
                {
                    replaced[(3 * row) + unknown] = row == column ? 1 : 0;
                }
                inverse[(3 * unknown) + column] = Determinant(replaced) / whole;
            }
        }
        return inverse;
    }

    private static double Determinant(double[] m) =>
        (m[0] * ((m[4] * m[8]) - (m[5] * m[7])))
        - (m[1] * ((m[3] * m[8]) - (m[5] * m[6])))
        + (m[2] * ((m[3] * m[7]) - (m[4] * m[6])));
}
