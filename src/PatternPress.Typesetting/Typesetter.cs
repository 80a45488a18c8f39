using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting;

/// <summary>Turns a document into pages of positioned items. Safe to use from several threads at once.</summary>
public sealed class Typesetter
{
    readonly TextMeasurer measurer;

    /// <summary>A typesetter that knows these fonts only.</summary>
    public Typesetter(FontLibrary fonts) => measurer = new TextMeasurer(fonts);

    /// <summary>A typesetter that shares its measured words with others.</summary>
    public Typesetter(TextMeasurer measurer) => this.measurer = measurer;

    /// <summary>
    /// Lays out a document. Never fails: what does not fit is placed anyway and listed among the problems.
    /// </summary>
    public TypesetDocument Typeset(Document document) => throw new NotImplementedException();
}
