using System.Runtime.CompilerServices;
using PatternPress.Typesetting;

namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>Where the letters of a chart go inside its patches. Equal patches are looked at once.</summary>
/// <param name="scale">Points per inch of the chart.</param>
internal sealed class PatchLetters(FigureStyle style, double scale)
{
    /// <summary>Kept clear between a letter and the seams around it, in points.</summary>
    private const double Margin = 0.9;

    // Equal blocks share their corners, so a shape seen before is the same array.
    private readonly Dictionary<(Points Size, Spot[] Shape), Spot?> _known = new(SameArray);

    /// <summary>Share of the patches that have room for their letter at the smallest size.</summary>
    public double ShareWithRoom(IReadOnlyCollection<FlatQuilt.FlatPatch> patches) =>
        ShareWithRoom(patches, style.Small);

    /// <summary>The largest size at which no letter is lost that the smallest size has room for.</summary>
    public Points SizeFor(IReadOnlyCollection<FlatQuilt.FlatPatch> patches)
    {
        double share = ShareWithRoom(patches);
        foreach (Points size in new[] { style.Large, style.Medium })
        {
            if (ShareWithRoom(patches, size) >= share)
            {
                return size;
            }
        }
        return style.Small;
    }

    /// <summary>The place of a patch's letter in inches, before the patch is moved; null without room.</summary>
    public Spot? PlaceIn(FlatQuilt.FlatPatch patch, Points size)
    {
        var key = (size, patch.Corners);
        if (!_known.TryGetValue(key, out Spot? place))
        {
            double width = LabelSize.Width(patch.Fabric, size.Value) + (2 * Margin),
                height = (LabelSize.Capital * size.Value) + (2 * Margin);
            place = LabelRoom.Find(patch.Corners, width / scale, height / scale);
            _known.Add(key, place);
        }
        return place;
    }

    public double ShareWithRoom(IReadOnlyCollection<FlatQuilt.FlatPatch> patches, Points size) =>
        patches.Count == 0
            ? 0
            : (double)patches.Count(patch => PlaceIn(patch, size) is not null) / patches.Count;

    private static readonly IEqualityComparer<(Points Size, Spot[] Shape)> SameArray =
        EqualityComparer<(Points Size, Spot[] Shape)>.Create(
            (a, b) => a.Size == b.Size && ReferenceEquals(a.Shape, b.Shape),
            a => HashCode.Combine(a.Size, RuntimeHelpers.GetHashCode(a.Shape))
        );
}
