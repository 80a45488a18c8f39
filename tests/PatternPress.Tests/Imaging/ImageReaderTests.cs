using System.Diagnostics;
using PatternPress.Imaging;
using static PatternPress.Tests.Imaging.SampleImages;

namespace PatternPress.Tests.Imaging;

public sealed class ImageReaderTests
{
    [Test]
    public void A_png_keeps_its_pixels()
    {
        StandardImage image = Read(Png(80, 50, (x, y) => (x * 3, y * 5, (x + y) % 256)));
        (image.Width, image.Height, image.MediaType).ShouldBe((80, 50, "image/png"));
        for (int y = 0; y < 50; y++)
        {
            for (int x = 0; x < 80; x++)
            {
                At(image, x, y).ShouldBe((x * 3, y * 5, (x + y) % 256));
            }
        }
        Read([.. image.Encoded]).Pixels.ShouldBe(image.Pixels);
    }

    [Test]
    public void A_jpeg_keeps_its_colors_nearly()
    {
        StandardImage image = Read(Jpeg(80, 50, Flat(200, 80, 40)));
        (image.Width, image.Height, image.MediaType).ShouldBe((80, 50, "image/jpeg"));
        (int r, int g, int b) = At(image, 40, 25);
        r.ShouldBeInRange(198, 202);
        g.ShouldBeInRange(78, 82);
        b.ShouldBeInRange(38, 42);
        image.Encoded[..3].ShouldBe([0xFF, 0xD8, 0xFF]);
    }

    [Test]
    public void A_large_image_is_made_smaller_without_changing_its_light()
    {
        // Black and white by turns: half the light is not half the value. sRGB of 0.5 is 187.5 (IEC 61966-2-1).
        StandardImage image = Read(
            Png(1200, 600, (x, y) => (x + y) % 2 == 0 ? (255, 255, 255) : (0, 0, 0)),
            across: 300
        );
        (image.Width, image.Height).ShouldBe((300, 150));
        image.Pixels.Distinct().ShouldBe([(byte)188]);
    }

    [TestCase(10, 64, 32)]
    [TestCase(300, 300, 150)]
    [TestCase(5000, 600, 300)]
    public void No_more_pixels_than_are_seen_and_no_fewer(int across, int width, int height)
    {
        StandardImage image = Read(Png(1000, 500, Rings), across);
        (image.Width, image.Height).ShouldBe((width, height));
    }

    [Test]
    public void A_small_image_stays_as_it_is()
    {
        StandardImage image = Read(Png(40, 30, Rings), across: 600);
        (image.Width, image.Height).ShouldBe((40, 30));
    }

    [Test]
    public void The_same_file_gives_the_same_bytes()
    {
        byte[] file = Jpeg(900, 700, Rings);
        StandardImage first = Read(file, 240),
            second = Read([.. file], 240);
        second.Pixels.ShouldBe(first.Pixels);
        second.Encoded.ShouldBe(first.Encoded);
    }

    // Exif 2.32, tag 0x0112: where the upper left corner of what is seen is stored.
    [TestCase(1, false, 0)]
    [TestCase(2, false, 1)]
    [TestCase(3, false, 3)]
    [TestCase(4, false, 2)]
    [TestCase(5, true, 0)]
    [TestCase(6, true, 2)]
    [TestCase(7, true, 3)]
    [TestCase(8, true, 1)]
    public void A_photograph_is_set_upright(int orientation, bool swaps, int corner)
    {
        // Four quarters of four colors: upper left 0, upper right 1, lower left 2, lower right 3.
        (int, int, int)[] colors = [(220, 30, 30), (30, 220, 30), (30, 30, 220), (220, 220, 30)];
        byte[] stored = Jpeg(96, 64, (x, y) => colors[(x < 48 ? 0 : 1) + (y < 32 ? 0 : 2)]);
        StandardImage image = Read(Held(stored, (byte)orientation));
        (image.Width, image.Height).ShouldBe(swaps ? (64, 96) : (96, 64));
        (int r, int g, int b) = At(image, 10, 10);
        (int wantR, int wantG, int wantB) = colors[corner];
        (Math.Abs(r - wantR) + Math.Abs(g - wantG) + Math.Abs(b - wantB)).ShouldBeLessThan(30);
    }

    [TestCase("", "empty")]
    [TestCase("GIF89a...........", "a GIF")]
    [TestCase("RIFF....WEBPVP8 .....", "a WebP")]
    [TestCase("%PDF-1.7 ........", "a PDF")]
    [TestCase("<svg xmlns=''></svg>", "a text, perhaps an SVG")]
    [TestCase("just some words of text", "no image that is known")]
    public void Other_types_are_named(string start, string name)
    {
        ImageFault fault = Refused(System.Text.Encoding.Latin1.GetBytes(start));
        fault.Kind.ShouldBe(ImageFaultKind.WrongType);
        fault.What.ShouldBe($"it is neither PNG nor JPEG but {name}");
    }

    [Test]
    public void An_image_cut_off_anywhere_is_refused()
    {
        foreach (byte[] whole in new[] { Png(120, 90, Rings), Jpeg(120, 90, Rings) })
        {
            // After the last pixel there are only check sums and marks.
            int end = whole.Length - 24;
            for (int length = 3; length < end; length += Math.Max(1, end / 120))
            {
                Refused(whole[..length])
                    .Kind.ShouldBeOneOf(ImageFaultKind.Broken, ImageFaultKind.WrongType);
            }
        }
    }

    [Test]
    public void Whatever_the_bytes_the_answer_is_an_image_or_a_fault()
    {
        var random = new Random(20261101);
        foreach (byte[] whole in new[] { Png(60, 40, Rings), Jpeg(60, 40, Rings) })
        {
            for (int round = 0; round < 400; round++)
            {
                byte[] spoiled = [.. whole];
                for (int i = 0; i < 1 + (round % 8); i++)
                {
                    spoiled[random.Next(round % 2 == 0 ? 200 : spoiled.Length) % spoiled.Length] =
                        (byte)random.Next(256);
                }
                (StandardImage? image, ImageFault? fault) = ImageReader.Read(spoiled, 100);
                (image is null).ShouldBe(fault is not null);
            }
        }
    }

    [Test]
    public void A_bomb_is_refused_by_its_head()
    {
        byte[] bomb = Png(20, 20, Rings, claimed: (60_000, 60_000));
        ImageFault fault = Refused(bomb);
        fault.Kind.ShouldBe(ImageFaultKind.TooLarge);
        fault.What.ShouldContain("60,000 × 60,000");
        // Just within a side, and still too many in all.
        Refused(Png(20, 20, Rings, claimed: (20_000, 19_999)))
            .Kind.ShouldBe(ImageFaultKind.TooLarge);
        // A profile that unpacks to many times what any has.
        Refused(Png(20, 20, Rings, profile: new byte[30_000_000]))
            .Kind.ShouldBe(ImageFaultKind.Broken);
    }

    [Test]
    public void A_head_that_claims_more_than_there_is_is_broken() =>
        Refused(Png(20, 20, Rings, claimed: (400, 400))).Kind.ShouldBe(ImageFaultKind.Broken);

    [Test]
    public void Too_many_bytes_are_refused_unseen()
    {
        ImageFault fault = Refused(new byte[20_000_001]);
        fault.Kind.ShouldBe(ImageFaultKind.TooLarge);
        fault.What.ShouldBe("it has 20.0 MB; 20 MB is the most");
    }

    [Test]
    public void A_speck_is_too_small() =>
        Refused(Png(15, 200, Rings)).Kind.ShouldBe(ImageFaultKind.TooSmall);

    [Test]
    public void The_inks_of_a_press_are_refused()
    {
        // The frame's head says four components.
        byte[] jpeg = Jpeg(40, 40, Rings);
        int frame = Array.FindIndex(jpeg, 2, b => b == 0xC0 || b == 0xC2);
        jpeg[frame + 8] = 4;
        ImageFault fault = Refused(jpeg);
        fault.Kind.ShouldBe(ImageFaultKind.WrongColors);
        fault.What.ShouldBe("its colors are those of a press (CMYK)");
    }
}
