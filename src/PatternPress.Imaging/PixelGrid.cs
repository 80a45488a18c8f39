namespace PatternPress.Imaging;

/// <summary>Red, green and blue of an image's pixels, row by row.</summary>
sealed record PixelGrid(int Width, int Height, byte[] Pixels)
{
    /// <summary>
    /// The image made smaller: each new pixel is the mean light of the area it covers, in whole numbers. An image that is
    /// small enough stays as it is.
    /// </summary>
    /// <param name="longest">The most pixels along its longer side.</param>
    public PixelGrid Within(int longest)
    {
        if (Math.Max(Width, Height) <= longest)
        {
            return this;
        }

        var (width, height) =
            Width >= Height
                ? (longest, Math.Max(1, (int)(((long)Height * longest + (Width / 2)) / Width)))
                : (Math.Max(1, (int)(((long)Width * longest + (Height / 2)) / Height)), longest);
        var light = StandardCurve.Light;
        // Across first: sums of light weighted by how much of each old pixel a new one covers, in parts of the new width.
        var narrow = new long[width * Height * 3];
        for (var y = 0; y < Height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                long from = (long)x * Width,
                    to = from + Width;
                long r = 0,
                    g = 0,
                    b = 0;
                for (var old = from / width; old * width < to; old++)
                {
                    var share = Math.Min(to, (old + 1) * width) - Math.Max(from, old * width);
                    var at = (int)((y * (long)Width) + old) * 3;
                    r += share * light[Pixels[at]];
                    g += share * light[Pixels[at + 1]];
                    b += share * light[Pixels[at + 2]];
                }

                var place = ((y * width) + x) * 3;
                // Sixteen times as fine as a unit of light.
                narrow[place] = r * 16 / Width;
                narrow[place + 1] = g * 16 / Width;
                narrow[place + 2] = b * 16 / Width;
            }
        }

        var pixels = new byte[width * height * 3];
        for (var y = 0; y < height; y++)
        {
            long from = (long)y * Height,
                to = from + Height;
            for (var i = 0; i < width * 3; i++)
            {
                long sum = 0;
                for (var old = from / height; old * height < to; old++)
                {
                    var share = Math.Min(to, (old + 1) * height) - Math.Max(from, old * height);
                    sum += share * narrow[(old * width * 3) + i];
                }

                pixels[(y * width * 3) + i] = StandardCurve.Encode(
                    (int)Math.Min(StandardCurve.Full, (sum + (8L * Height)) / (16L * Height))
                );
            }
        }

        return new(width, height, pixels);
    }

    /// <summary>The image set upright by the note a camera leaves (Exif, orientation 1 to 8).</summary>
    public PixelGrid Upright(int orientation)
    {
        if (orientation is < 2 or > 8)
        {
            return this;
        }

        var swaps = orientation >= 5;
        var (width, height) = swaps ? (Height, Width) : (Width, Height);
        var pixels = new byte[Pixels.Length];
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var (fromX, fromY) = orientation switch
                {
                    2 => (Width - 1 - x, y),
                    3 => (Width - 1 - x, Height - 1 - y),
                    4 => (x, Height - 1 - y),
                    5 => (y, x),
                    6 => (y, Height - 1 - x),
                    7 => (Width - 1 - y, Height - 1 - x),
                    _ => (Width - 1 - y, x),
                };
                Pixels
                    .AsSpan(((fromY * Width) + fromX) * 3, 3)
                    .CopyTo(pixels.AsSpan(((y * width) + x) * 3));
            }
        }

        return new(width, height, pixels);
    }
}
