using System.CommandLine;
using System.Text;
using PatternPress.Cli.Files;
using PatternPress.Quilting.Reading;
using PatternPress.Source.Shapes;

namespace PatternPress.Cli.Commands;

/// <summary><c>schema</c>: the JSON Schema of the source language, for editors.</summary>
internal static class Schema
{
    public static Command Command(Terminal terminal, string directory)
    {
        var output = new Option<string?>("--output")
        {
            Description = "A file to write to, instead of the terminal.",
        };
        var command = new Command(
            "schema",
            "Prints the JSON Schema of pattern files, for an editor that completes and checks YAML."
        )
        {
            output,
        };
        command.SetAction(parsed => Run(terminal, directory, parsed.GetValue(output)));
        return command;
    }

    private static int Run(Terminal terminal, string directory, string? output)
    {
        string text = JsonSchemaWriter.Write(
            PatternShape.Of(SourceVocabulary.Words),
            "A quilt pattern"
        );
        if (output is null)
        {
            terminal.Output.Write(text);
            return ExitCode.Clean;
        }
        string path = Path.GetFullPath(Path.Combine(directory, output));
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using var folder = new OutputFolder(Path.GetDirectoryName(path)!);
        folder.Write(Path.GetFileName(path), Encoding.UTF8.GetBytes(text));
        folder.Commit();
        terminal.Output.WriteLine($"wrote {output}");
        return ExitCode.Clean;
    }
}
