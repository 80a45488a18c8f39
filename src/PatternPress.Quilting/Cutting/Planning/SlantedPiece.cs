using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>A triangle, diamond or other piece with slanted ends, cut from a strip at one angle: side by side the pieces nest, so that
/// n of them take a first length and a pitch for each further one.</summary>
/// <param name="Height">Of the strip, exact: the piece reaches from edge to edge.</param>
/// <param name="First">Length of strip that a single piece takes, both slants included.</param>
/// <param name="Pitch">Length that each further piece takes.</param>
public sealed record SlantedPiece(Length Height, Length First, Length Pitch)
{
    /// <summary>Length of strip that so many pieces side by side take.</summary>
    public Length LengthFor(long count) => count <= 0 ? Length.Zero : First + (Pitch * (count - 1));

    /// <summary>How many go side by side into a length of strip.</summary>
    public long CountIn(Length strip)
    {
        if (strip < First)
        {
            return 0;
        }
        return 1 + (strip - First).CountOf(Pitch);
    }

    /// <summary>Strips of one length for so many pieces; null where not even one goes in.</summary>
    public long? StripsFor(long count, Length strip)
    {
        long each = CountIn(strip);
        return each == 0 ? null : (count + each - 1) / each;
    }

    /// <summary>How so many pieces are cut: strips that are full, and one with the rest, which as a rectangle of
    /// <see cref="LengthFor"/> by <see cref="Height"/> may share a strip with other pieces.</summary>
    /// <returns>Null where not even one goes into a strip.</returns>
    public (long FullStrips, long InEach, long InTheRest)? Runs(long count, Length strip)
    {
        long each = CountIn(strip);
        return each == 0 ? null : (count / each, each, count % each);
    }

    /// <summary>Equal-sided triangles of 60 degrees, every second one upside down: as wide as 2 / √3 of their height; each further one
    /// takes half its width.</summary>
    /// <param name="height">From the base to the tip, as cut, which is the strip's height.</param>
    public static SlantedPiece Triangle60(Length height)
    {
        // 2/√3 = 2√3/3.
        Length side = new(height.Inches * Exact.SquareRootOfThree * new Rational(2, 3));
        return new SlantedPiece(height, side, side / 2);
    }

    /// <summary>Diamonds with a tip of 60 degrees: slices at 60 degrees across the strip, as thick as the strip is high.</summary>
    /// <param name="height">Between opposite edges, as cut, which is the strip's height.</param>
    public static SlantedPiece Diamond60(Length height)
    {
        Length side = new(height.Inches * Exact.SquareRootOfThree * new Rational(2, 3));
        // The slanted end reaches height / √3 beyond the edge.
        return new SlantedPiece(height, side + (side / 2), side);
    }

    /// <summary>Diamonds with a tip of 45 degrees: slices at 45 degrees across the strip, as thick as the strip is high.</summary>
    /// <param name="height">Between opposite edges, as cut, which is the strip's height.</param>
    public static SlantedPiece Diamond45(Length height)
    {
        Length side = new(height.Inches * Exact.SquareRootOfTwo);
        return new SlantedPiece(height, side + height, side);
    }

    /// <summary>Right triangles of 45 degrees lying on their longest side, every second one upside down: twice as wide as high.</summary>
    /// <param name="height">From the longest side to the right angle, as cut, which is the strip's height.</param>
    public static SlantedPiece Triangle45(Length height) => new(height, height * 2, height);
}
