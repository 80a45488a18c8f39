using PatternPress.Cli.Files;
using PatternPress.Quilting.Compiling;
using PatternPress.Quilting.Editions;

namespace PatternPress.Cli.Commands;

/// <summary>Fixes what an edition prints, once it has been built without an error and proved in every size.</summary>
internal static class Release
{
    public static void Fix(Compilation built, EditionFiles editions, TextWriter news)
    {
        if (built is not { Tables: { } tables, Pattern: { } pattern })
        {
            return;
        }
        string number = pattern.Info.Edition.Value;
        if (built.HasErrors)
        {
            news.WriteLine($"{built.Id} {number} is not released: see the errors");
            return;
        }
        // Building has found that a released edition of this number prints the same.
        if (editions.Find(pattern.File, number) is not null)
        {
            news.WriteLine($"{built.Id} {number} was released before, with the same numbers");
            return;
        }
        string file = editions.Write(pattern.File, Edition.Of(tables, pattern.Info.Date));
        news.WriteLine($"released {built.Id} {number}: {file}");
    }
}
