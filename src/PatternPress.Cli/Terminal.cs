namespace PatternPress.Cli;

/// <summary>Where a command writes, and what it may assume about who reads it.</summary>
/// <param name="Output">Results.</param>
/// <param name="Error">Progress and what could not be run.</param>
/// <param name="Color">Whether output may be coloured.</param>
/// <param name="Interactive">Whether a person watches, so that progress is worth showing.</param>
/// <param name="Width">Characters a line.</param>
public sealed record Terminal(
    TextWriter Output,
    TextWriter Error,
    bool Color,
    bool Interactive,
    int Width
)
{
    private const int UsualWidth = 100;

    /// <summary>The console of this process. Colour only on a terminal, and never against NO_COLOR (no-color.org).</summary>
    public static Terminal OfThisProcess()
    {
        Console.OutputEncoding = System.Text.Encoding.UTF8;
        bool terminal = !Console.IsOutputRedirected;
        bool color =
            terminal && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));
        return new Terminal(
            Console.Out,
            Console.Error,
            color,
            Interactive: !Console.IsErrorRedirected,
            terminal ? ConsoleWidth() : UsualWidth
        );
    }

    // Some terminals report no width at all.
    private static int ConsoleWidth()
    {
        try
        {
            return Console.WindowWidth is > 20 and var width ? width : UsualWidth;
        }
        catch (IOException)
        {
            return UsualWidth;
        }
    }
}
