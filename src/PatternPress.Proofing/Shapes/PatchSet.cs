namespace PatternPress.Proofing.Shapes;

/// <summary>Compares two lists of patches whatever their order.</summary>
internal static class PatchSet
{
    /// <summary>A patch of the one that the other lacks, and the reverse; both null if they are alike.</summary>
    public static (SewnPatch? Extra, SewnPatch? Missing) Difference(
        IReadOnlyCollection<SewnPatch> sewn,
        IReadOnlyCollection<SewnPatch> drawn
    )
    {
        var left = new Dictionary<SewnPatch, int>(drawn.Count);
        foreach (SewnPatch patch in drawn)
        {
            left[patch] = left.GetValueOrDefault(patch) + 1;
        }
        SewnPatch? extra = null;
        foreach (SewnPatch patch in sewn)
        {
            int count = left.GetValueOrDefault(patch);
            if (count == 0)
            {
                extra ??= patch;
            }
            else
            {
                left[patch] = count - 1;
            }
        }
        // The first in the order of the drawing, so that the message is the same every time.
        SewnPatch? missing = drawn.FirstOrDefault(patch => left[patch] > 0);
        return (extra, missing);
    }
}
