using System.Reflection;

namespace PatternPress.Cli;

internal static class ProgramVersion
{
    /// <summary>The version without what the build appends to it: "0.1.0".</summary>
    public static string Text { get; } =
        typeof(ProgramVersion)
            .Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()
            ?.InformationalVersion.Split('+')[0]
        ?? "";
}
