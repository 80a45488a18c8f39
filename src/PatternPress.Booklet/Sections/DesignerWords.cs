using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Sections;

/// <summary>Sets what the pattern's designer wrote. What is wrong with it is for <see cref="ProseCheck"/> to say.</summary>
internal sealed class DesignerWords(SectionContext context)
{
    /// <summary>The note for a place, in a box; nothing where there is none.</summary>
    public ImmutableArray<Block> Note(string place) =>
        context.Pattern.Info.Notes.TryGetValue(place, out Sourced<string> note) ? Boxed(note) : [];

    public ImmutableArray<Block> Boxed(Sourced<string> note)
    {
        ImmutableArray<Block> blocks = Set(note, "note");
        if (blocks.IsEmpty)
        {
            return [];
        }
        return
        [
            NoteBox.Around(
                new Stack([new Text(context.Labels["designers-note"], "note-label"), .. blocks]),
                context.Theme,
                context.Theme.AccentTint
            ) with
            {
                Origin = note.Span,
            },
        ];
    }

    public ImmutableArray<Block> Set(Sourced<string> text, string style)
    {
        Prose prose = ProseCheck.ProseOf(text, context.Manuscript.Source);
        return MarkdownBlocks.Read(
            prose.Render(context.Functions, out _),
            context.Setting(null, style) with
            {
                FirstHeading = 3,
                Listed = false,
                Places = null,
            },
            out _
        );
    }
}
