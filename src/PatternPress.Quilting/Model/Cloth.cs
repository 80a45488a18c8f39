using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Pictures;

namespace PatternPress.Quilting.Model;

/// <summary>A fabric's print as its designer's picture shows it.</summary>
/// <param name="File">The picture's path, relative to the pattern's folder.</param>
/// <param name="Width">How wide the cloth in the picture is.</param>
/// <param name="Height">How high it is, by the picture's shape.</param>
public sealed record Cloth(string File, FabricPicture Picture, Length Width, Length Height);
