using System.CommandLine;
using System.Globalization;
using System.Text;
using PatternPress.Cli.Files;

namespace PatternPress.Cli.Commands;

/// <summary><c>new</c>: writes a small complete pattern to start from.</summary>
internal static class New
{
    public static Command Command(Terminal terminal, string directory)
    {
        var name = new Argument<string>("name")
        {
            Description = "The new pattern's short name: letters, digits and hyphens.",
        };
        var folder = new Option<string>("--folder")
        {
            Description = "The folder it is written to.",
            DefaultValueFactory = _ => "patterns",
        };
        var command = new Command("new", "Writes a small complete pattern that builds.")
        {
            name,
            folder,
        };
        command.SetAction(parsed =>
            Run(terminal, directory, parsed.GetValue(name)!, parsed.GetValue(folder)!)
        );
        return command;
    }

    private static int Run(Terminal terminal, string directory, string name, string folder)
    {
        string id = name.EndsWith(PatternFiles.Extension, StringComparison.Ordinal)
            ? name[..^PatternFiles.Extension.Length]
            : name;
        if (id.Length == 0 || !id.All(c => char.IsAsciiLetterOrDigit(c) || c == '-'))
        {
            throw new CannotRunException(
                $"\"{name}\" cannot be a pattern's short name; use letters, digits and hyphens: spring-meadow"
            );
        }
        string shown = Path.Combine(folder, id + PatternFiles.Extension).Replace('\\', '/');
        string path = Path.Combine(directory, shown);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        try
        {
            using var file = new FileStream(path, FileMode.CreateNew);
            file.Write(Encoding.UTF8.GetBytes(Text(id)));
        }
        catch (IOException) when (File.Exists(path))
        {
            throw new CannotRunException($"{shown} exists already; choose another name");
        }
        terminal.Output.WriteLine($"wrote {shown}");
        terminal.Output.WriteLine($"next: patternpress build {shown}");
        return ExitCode.Clean;
    }

    private static string Text(string id)
    {
        string title = CultureInfo.InvariantCulture.TextInfo.ToTitleCase(id.Replace('-', ' '));
        using Stream starter = typeof(New).Assembly.GetManifestResourceStream(
            "starter.quilt.yaml"
        )!;
        using var reader = new StreamReader(starter);
        return reader
            .ReadToEnd()
            .Replace("{title}", title, StringComparison.Ordinal)
            .Replace("{date}", DateTime.Today.ToString("yyyy-MM-dd"), StringComparison.Ordinal);
    }
}
