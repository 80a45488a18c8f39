namespace PatternPress.Imaging;

/// <summary>Why an image cannot be used.</summary>
public enum ImageFaultKind
{
    /// <summary>It is neither PNG nor JPEG.</summary>
    WrongType,

    /// <summary>It ends too early, or contradicts itself.</summary>
    Broken,

    /// <summary>It has more bytes or pixels than a swatch needs, or says that it has.</summary>
    TooLarge,

    /// <summary>It has too few pixels to be seen as cloth.</summary>
    TooSmall,

    /// <summary>Its colors cannot be turned into those of the standard.</summary>
    WrongColors,
}

/// <summary>An image that cannot be used.</summary>
/// <param name="What">What is wrong, as the end of a sentence about the file: "it ends after 812 of 4,096 lines".</param>
/// <param name="Remedy">What to do.</param>
public sealed record ImageFault(ImageFaultKind Kind, string What, string Remedy);
