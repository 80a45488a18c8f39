using PatternPress.Cli.Messages;
using PatternPress.Quilting.Compiling;

namespace PatternPress.Cli.Commands;

/// <summary>Writes what was found in a run's patterns.</summary>
internal static class Report
{
    public static void Write(
        Terminal terminal,
        string format,
        IReadOnlyList<Compilation> compilations
    )
    {
        // What is wrong with the house's own file is found with every pattern, and said once.
        var messages = new MessageList(
            compilations
                .SelectMany(c => c.Diagnostics)
                .DistinctBy(d => (d.Code, d.Primary, d.Title, d.Text, string.Join(' ', d.Sizes))),
            compilations
                .Select(c => c.Tree.Source)
                .Concat(compilations.Select(c => c.House).OfType<Source.SourceText>())
        );
        MessageFormats.Find(format, terminal).Write(messages, terminal.Output);
        if (format != MessageFormats.Default)
        {
            return;
        }
        foreach (Compilation compilation in compilations)
        {
            if (compilation.Tables is { } tables && !compilation.HasErrors)
            {
                string sizes = string.Join(", ", tables.Sizes.Select(s => s.Name));
                terminal.Output.WriteLine(
                    $"{compilation.Tree.Source.File}: good in {tables.Sizes.Length} {(tables.Sizes.Length == 1 ? "size" : "sizes")} ({sizes})"
                );
            }
        }
    }
}
