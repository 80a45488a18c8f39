namespace PatternPress.Quilting.Pictures;

/// <summary>Which paths may name a picture: relative, with slashes, and never out of the pattern's folder.</summary>
internal static class PicturePath
{
    /// <returns>What is wrong with the path; null for one that can be looked up.</returns>
    public static string? Problem(string path)
    {
        if (path.AsSpan().IndexOfAny('\\', ':', '\0') is >= 0 and var at)
        {
            return path[at] switch
            {
                '\\' => "it is written with backslashes",
                ':' => path.Contains("://", StringComparison.Ordinal)
                    ? "it is an address on the web"
                    : "it names a drive",
                _ => "it holds a sign that no file name has",
            };
        }
        if (path.StartsWith('/') || path.StartsWith('~'))
        {
            return "it does not begin at the pattern's folder";
        }
        foreach (string part in path.Split('/'))
        {
            if (part is "..")
            {
                return "it leads out of the pattern's folder";
            }
            if (part.Length == 0)
            {
                return "a name is missing between two slashes or at the end";
            }
        }
        return null;
    }
}
