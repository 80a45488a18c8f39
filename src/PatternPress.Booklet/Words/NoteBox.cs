using PatternPress.Booklet.Looks;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Words;

/// <summary>The one way notes and warnings are set apart: a tint and a bar at their left, or as the looks say.</summary>
internal static class NoteBox
{
    /// <param name="content">The note.</param>
    /// <param name="ground">Behind it, where the looks ask for a ground.</param>
    public static Box Around(Block content, Theme theme, Ink ground) =>
        new Box(content)
        {
            Padding = new Insets(12.Pt, 9.Pt, 12.Pt, 6.Pt),
            SpaceBefore = 6.Pt,
            SpaceAfter = 10.Pt,
            Background = theme.Forms.Notes == NoteShape.Frame ? null : ground,
            LeftBar = theme.Forms.Notes == NoteShape.Bar ? new Stroke(2.5.Pt, theme.Accent) : null,
            Border =
                theme.Forms.Notes == NoteShape.Frame ? new Stroke(0.75.Pt, theme.Accent) : null,
        };
}
