using PatternPress.Typesetting;

namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>Writes the letters of many patches, each on a plate of its fabric's colour that keeps the hatch off it.</summary>
internal static class FabricLetters
{
    public static void Write(
        Draft draft,
        IReadOnlyCollection<FlatQuilt.FlatPatch> patches,
        PatchLetters letters,
        Points size,
        Palette palette,
        double scale,
        Spot by
    )
    {
        var places = new List<(FabricLook Look, Spot Center)>();
        foreach (FlatQuilt.FlatPatch patch in patches)
        {
            if (letters.PlaceIn(patch, size) is { } center)
            {
                places.Add((palette[patch.Fabric], ((center + patch.By) * scale) + by));
            }
        }
        // The plates of a fabric are one path: a large chart has more than a thousand.
        foreach (var same in places.GroupBy(p => p.Look))
        {
            draft.Area(
                Paths.Closed(same.Select(p => Draft.PlateFor(p.Look.Key, p.Center, size))),
                same.Key.Color
            );
        }
        foreach ((FabricLook look, Spot center) in places)
        {
            draft.Label(look.Key, center, size, bold: true, look.LetterInk);
        }
    }
}
