using System.Collections.Immutable;
using System.Globalization;
using PatternPress.Quilting.Geometry;

namespace PatternPress.Quilting.Resolving;

/// <summary>Blocks and smaller sections that are sewn to a section of a quilt; equal ones are made together.</summary>
/// <param name="Number">From 1 in the order of sewing: a section's parts come before it. The last is the whole field.</param>
/// <param name="Count">How many are made.</param>
/// <param name="Parts">In the order of sewing.</param>
/// <param name="Place">Where the first of them lies in the quilt.</param>
public sealed record QuiltSection(
    int Number,
    int Count,
    SectionJoin Join,
    ImmutableArray<QuiltSectionPart> Parts,
    Rect Place
)
{
    /// <summary>The sections of a quilt that is not sewn in rows; none of others.</summary>
    public static ImmutableArray<QuiltSection> Of(Quilt quilt) =>
        quilt.Order is { } order ? new Gathering(quilt).Gather(order) : [];

    private sealed class Gathering(Quilt quilt)
    {
        private readonly List<QuiltSection> _sections = [];
        private readonly Dictionary<string, int> _numbers = [];

        public ImmutableArray<QuiltSection> Gather(SewingOrder order)
        {
            if (order is SewingOrder.Unit unit)
            {
                // One block is the whole field.
                return
                [
                    new(
                        1,
                        1,
                        SectionJoin.SideBySide,
                        [new(quilt.PieceAt(unit.Index), 0)],
                        quilt.PlaceOf(quilt.PieceAt(unit.Index))
                    ),
                ];
            }
            _ = Number(order);
            // Parts come before what they are sewn to, so that counts can be passed down from the last.
            int[] counts = new int[_sections.Count];
            counts[^1] = 1;
            for (int i = counts.Length - 1; i >= 0; i--)
            {
                foreach (QuiltSectionPart part in _sections[i].Parts)
                {
                    if (part.Section > 0)
                    {
                        counts[part.Section - 1] += counts[i];
                    }
                }
            }
            return [.. _sections.Select((s, i) => s with { Count = counts[i] })];
        }

        private int Number(SewingOrder order)
        {
            (SectionJoin join, IEnumerable<SewingOrder> inner) = order switch
            {
                SewingOrder.Around around => (TurnOf(around), around.Parts.Prepend(around.Middle!)),
                SewingOrder.Group { Level: true } group => (
                    SectionJoin.OneBelowTheOther,
                    group.Parts
                ),
                _ => (SectionJoin.SideBySide, ((SewingOrder.Group)order).Parts),
            };
            ImmutableArray<QuiltSectionPart> parts =
            [
                .. inner.Select(part =>
                    part is SewingOrder.Unit unit
                        ? new QuiltSectionPart(quilt.PieceAt(unit.Index), 0)
                        : new QuiltSectionPart(default, Number(part))
                ),
            ];
            string likeness = $"{join}: {string.Join(' ', parts.Select(Likeness))}";
            if (!_numbers.TryGetValue(likeness, out int number))
            {
                number = _sections.Count + 1;
                _numbers.Add(likeness, number);
                Rect[] places = [.. order.Units().Select(PlaceOf)];
                Rect first = places[0];
                Measures.Length left = first.X,
                    top = first.Y,
                    right = first.Right,
                    bottom = first.Bottom;
                foreach (Rect place in places)
                {
                    left = Measures.Length.Min(left, place.X);
                    top = Measures.Length.Min(top, place.Y);
                    right = Measures.Length.Max(right, place.Right);
                    bottom = Measures.Length.Max(bottom, place.Bottom);
                }
                _sections.Add(
                    new QuiltSection(
                        number,
                        0,
                        join,
                        parts,
                        new Rect(left, top, right - left, bottom - top)
                    )
                );
            }
            return number;
        }

        // The second part stands on the right or on the left of the middle.
        private SectionJoin TurnOf(SewingOrder.Around around)
        {
            Rect second = PlaceOf(around.Parts[1].Units().First()),
                middle = PlaceOf(around.Middle!.Units().First());
            return second.X > middle.X ? SectionJoin.Clockwise : SectionJoin.Counterclockwise;
        }

        private Rect PlaceOf(int index) => quilt.PlaceOf(quilt.PieceAt(index));

        private string Likeness(QuiltSectionPart part)
        {
            if (part.Section > 0)
            {
                return part.Section.ToString(CultureInfo.InvariantCulture);
            }
            if (part.Piece.Kind == LayoutPartKind.Sash)
            {
                Sash sash = quilt.Sashes[part.Piece.Index];
                return $"{sash.Kind}/{sash.Fabric}/{sash.Place.Width}/{sash.Place.Height}";
            }
            BlockPlace place = quilt.Places[part.Piece.Index];
            return $"{place.Block.Key}/{place.Block.Width}/{place.Block.Height}/{place.Turn.Quarters}";
        }
    }
}

/// <summary>A block, strip or section within a section.</summary>
/// <param name="Piece">The block or strip, of the first section like this; not used for a section.</param>
/// <param name="Section">The section's number; 0 for a block or strip.</param>
public readonly record struct QuiltSectionPart(LayoutPart Piece, int Section);

/// <summary>How the parts of a section lie.</summary>
public enum SectionJoin
{
    /// <summary>From left to right.</summary>
    SideBySide,

    /// <summary>From the top down.</summary>
    OneBelowTheOther,

    /// <summary>The first in the middle; then above, right, below and left of it, with a partial seam.</summary>
    Clockwise,

    /// <summary>The first in the middle; then above, left, below and right of it, with a partial seam.</summary>
    Counterclockwise,
}
