namespace PatternPress.Typesetting.Pages;

/// <summary>Turns finished pages into a file.</summary>
public interface IPagesWriter
{
    /// <summary>The file's content. The same pages give the same bytes.</summary>
    byte[] Write(TypesetDocument document);
}
