using System.Collections.Immutable;

namespace PatternPress.Quilting.Pictures;

/// <summary>What became of reading a picture.</summary>
public abstract record PictureReading
{
    public sealed record Found(FabricPicture Picture) : PictureReading;

    /// <summary>There is no such file.</summary>
    /// <param name="Near">Pictures that are there, relative to the pattern's folder.</param>
    public sealed record Missing(ImmutableArray<string> Near) : PictureReading;

    /// <summary>The file is there and cannot be read.</summary>
    public sealed record Unreadable(string Why) : PictureReading;

    /// <summary>The file lies outside the pattern's folder, by way of a link.</summary>
    public sealed record Outside : PictureReading;

    /// <summary>The file is no picture that can be used.</summary>
    /// <param name="What">What is wrong with it: "it ends before its last pixel".</param>
    /// <param name="Remedy">What to do.</param>
    public sealed record Unusable(string What, string Remedy) : PictureReading;

    /// <summary>Pictures are not looked at: only numbers are wanted.</summary>
    public sealed record NotLookedAt : PictureReading;
}
