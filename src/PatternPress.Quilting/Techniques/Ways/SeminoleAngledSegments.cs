using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Stripes between two wider strips, sewn side by side, the set folded across its length and cut through both layers at 45°: pairs of
/// segments that lean to either side. Set upright and joined by turns they make a band, whose edges are trimmed.
/// </summary>
/// <remarks>
/// A segment is cut b + 2s wide across the cut. Above the seam of the first stripe the trimmed band with its allowances needs
/// m + b + 2s, measured along the segment's side, which is 1 / √2 of that across the strip, and the seam: the outer strips are
/// (m + b + 2s) / √2 + s wide. All edges of the band are on the bias.
/// </remarks>
public sealed class SeminoleAngledSegments : Technique
{
    private const string Strip = "strip";
    private const string EdgeStrip = "edge strip";

    public override string Keyword => "seminole-angled-segments";

    public override string Kind => Seminole.Kind.Keyword;

    public override string Name => "Seminole bands from segments cut at an angle";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        (CutSize strip, CutSize edge, CutSize segment) = Sizes(form, house);
        StripSet set = Set(form, house, usableWidth);
        var pictures = new SeminolePictures(form, strip.Cut, edge.Cut, segment.Cut, house);
        return Batch.Of(
            this,
            form,
            house,
            Pieces(form, house, usableWidth),
            set.SegmentsPerSet / Share(set),
            trim: true,
            measures: [("segment", segment.Cut)],
            steps:
            [
                new Step("sew-strips", pictures.Sew),
                new Step("cut-segments", pictures.Cut),
                new Step("join-segments", pictures.Join),
                new Step("trim", () => pictures.Finish(house.Ruler.Step * 4)),
            ]
        ) with
        {
            StripSets = [set],
        };
    }

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    )
    {
        (CutSize strip, CutSize edge, _) = Sizes(form, house);
        StripSet set = Set(form, house, usableWidth);
        int stripes = form.RoleCount - 1,
            sets = set.SegmentsPerUnit / Share(set);
        return
        [
            .. Enumerable.Range(0, stripes).Select(role => Whole(Strip, role, strip, sets)),
            Whole(EdgeStrip, stripes, edge, sets * 2),
        ];

        RecipePiece Whole(string name, int role, CutSize height, int count) =>
            new(
                name,
                role,
                usableWidth,
                height.Cut,
                (usableWidth, height.Exactly),
                count,
                PieceCut.None,
                true
            );
    }

    protected override string? Refusal(UnitForm form, House house, Length usableWidth)
    {
        (CutSize strip, _, CutSize segment) = Sizes(form, house);
        (int segments, _, int stripes) = Seminole.Of(form);
        if ((strip.Cut - strip.Exactly) * stripes > CutSize.Hair)
        {
            return $"its stripes of {Told.Decimal(strip.Exactly)}, cut, are not near a mark of the ruler";
        }
        if ((segment.Cut - segment.Exactly) * segments > CutSize.Hair)
        {
            return $"its segments of {Told.Decimal(segment.Exactly)}, cut, lie between the ruler's marks: {segments} of them would make the band too long";
        }
        return Set(form, house, usableWidth).SegmentsPerSet < 2
            ? $"a set of strips folded in half, {Told.One(usableWidth / 2)}, is too short for a segment at 45°"
            : null;
    }

    private static (CutSize Strip, CutSize Edge, CutSize Segment) Sizes(UnitForm form, House house)
    {
        (int segments, Length stripe, int stripes) = Seminole.Of(form);
        Length width = form.Width / segments,
            margin = Seminole.Margin(form.Width, form.Height, segments, stripe, stripes);
        return (
            CutSize.Close(house.Unfinished(stripe), house),
            CutSize.Trimmable(
                Allowance.SideOfDiagonal(margin + width + (house.Seam * 2)) + house.Seam,
                house
            ),
            CutSize.Close(house.Unfinished(width), house)
        );
    }

    private static StripSet Set(UnitForm form, House house, Length usableWidth)
    {
        (CutSize strip, CutSize edge, CutSize segment) = Sizes(form, house);
        (int segments, _, int stripes) = Seminole.Of(form);
        // Sewn, the set is as high as its strips less two seams for each join; a slanted cut reaches as far along as it is high.
        Length high = (edge.Cut * 2) + (strip.Cut * stripes) - (house.Seam * 2 * (stripes + 1));
        Length room = (usableWidth / 2) - high;
        long pairs = room.Sign > 0 ? room.CountOf(Allowance.Diagonal(segment.Cut)) : 0;
        return new StripSet(
            [stripes, .. Enumerable.Range(0, stripes), stripes],
            segments,
            (int)pairs * 2,
            segment.Cut
        );
    }

    private static int Share(StripSet set) =>
        set.SegmentsPerSet >= set.SegmentsPerUnit ? set.SegmentsPerUnit : 1;
}
