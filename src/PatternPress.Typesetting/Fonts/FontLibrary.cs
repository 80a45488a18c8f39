using System.Collections.Immutable;

namespace PatternPress.Typesetting.Fonts;

/// <summary>The faces a document may use. Given by the caller; nothing is read from disk or from the system's fonts.</summary>
public sealed class FontLibrary
{
    readonly Dictionary<(string Family, bool Bold, bool Italic), FontFace> faces = [];

    readonly HashSet<string> families;

    /// <exception cref="ArgumentException">There is no face, or two faces for the same family, weight and slope.</exception>
    public FontLibrary(params IEnumerable<FontFace> faces)
    {
        Faces = [.. faces];
        if (Faces.Length == 0)
        {
            throw new ArgumentException("A font library needs at least one face.", nameof(faces));
        }

        families = [.. Faces.Select(face => face.Family)];
        foreach (var face in Faces)
        {
            if (!this.faces.TryAdd((face.Family, face.Bold, face.Italic), face))
            {
                throw new ArgumentException($"There are two faces for {face}.", nameof(faces));
            }
        }
    }

    /// <summary>All faces in the order given.</summary>
    public ImmutableArray<FontFace> Faces { get; }

    /// <summary>Whether the library has any face of a family.</summary>
    public bool HasFamily(string family) => families.Contains(family);

    /// <summary>
    /// The face for a family, weight and slope; failing that the nearest of the family (slope given up before weight);
    /// failing that, the same of the first family.
    /// </summary>
    public FontFace Find(string family, bool bold, bool italic) =>
        faces.GetValueOrDefault((family, bold, italic))
        ?? faces.GetValueOrDefault((family, bold, false))
        ?? faces.GetValueOrDefault((family, false, italic))
        ?? faces.GetValueOrDefault((family, false, false))
        ?? Faces.FirstOrDefault(face => face.Family == family)
        ?? (family == Faces[0].Family ? Faces[0] : Find(Faces[0].Family, bold, italic));
}
