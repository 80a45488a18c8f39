using System.Collections.Immutable;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>What a picture of a block carries besides its colours.</summary>
public enum BlockMarking
{
    /// <summary>Colours and prints only.</summary>
    None,

    /// <summary>Hatches and letters of the fabrics.</summary>
    Letters,
}

/// <summary>One block in one coloring, finished.</summary>
public static class BlockPicture
{
    public static Picture Draw(
        ColoredBlock block,
        Pattern pattern,
        Palette palette,
        FigureRoom room,
        BlockMarking marking = BlockMarking.Letters
    )
    {
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        double edge = style.Edge.Value;
        double width = block.Width.Inches.ToDouble(),
            height = block.Height.Inches.ToDouble();
        double scale = Math.Min(
            (room.Width.Value - edge) / width,
            (room.Height.Value - edge) / height
        );
        var by = new Spot(edge / 2, edge / 2);
        Paint(draft, block, Turn.None, palette, scale, by, marking);
        return new(
            draft.Finish((width * scale) + edge, (height * scale) + edge),
            FigureWords.Block(block, pattern)
        );
    }

    /// <summary>A block inside another drawing.</summary>
    internal static void Paint(
        Draft draft,
        ColoredBlock block,
        Turn turn,
        Palette palette,
        double scale,
        Spot by,
        BlockMarking marking
    )
    {
        ImmutableArray<FlatQuilt.FlatPatch> patches = FlatQuilt.PatchesOf(block, turn);
        PaintPatches(draft, patches, palette, scale, by, marking);
        (double width, double height) = turn.SwapsSides
            ? (block.Height.Inches.ToDouble(), block.Width.Inches.ToDouble())
            : (block.Width.Inches.ToDouble(), block.Height.Inches.ToDouble());
        draft.Area(
            Paths.Of(new Box(by.X, by.Y, width * scale, height * scale)),
            stroke: draft.Style.Pen(draft.Style.Edge) with
            {
                Join = StrokeJoin.Miter,
            }
        );
    }

    /// <summary>Patches with their seams and, where there is room, letters.</summary>
    internal static void PaintPatches(
        Draft draft,
        IReadOnlyCollection<FlatQuilt.FlatPatch> patches,
        Palette palette,
        double scale,
        Spot by,
        BlockMarking marking
    )
    {
        FigureStyle style = draft.Style;
        bool hatched = marking == BlockMarking.Letters || style.IsBlackOnly;
        foreach (
            var same in patches.GroupBy(p =>
                (p.Layer, p.Fabric, Degrees: hatched ? 0 : palette[p.Fabric].PrintDegrees(p.Print))
            )
        )
        {
            FabricLook look = palette[same.Key.Fabric];
            VectorPath path = Paths.Closed(same.Select(p => p.Placed()), scale, by);
            if (hatched)
            {
                draft.Area(path, look.Color, hatch: look.Hatch);
            }
            else
            {
                ClothPainter.Paint(draft, path, look, scale, by, same.Key.Degrees);
            }
        }
        var seams = new SeamLines();
        foreach (FlatQuilt.FlatPatch patch in patches)
        {
            seams.Add(patch.Corners, patch.By);
        }
        draft.Area(Paths.Lines(seams.Seams(), scale, by), stroke: style.Pen(style.Seam));
        if (marking == BlockMarking.Letters)
        {
            var letters = new PatchLetters(style, scale);
            FabricLetters.Write(
                draft,
                patches,
                letters,
                letters.SizeFor(patches),
                palette,
                scale,
                by
            );
        }
    }
}
