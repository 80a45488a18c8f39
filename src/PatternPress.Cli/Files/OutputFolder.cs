namespace PatternPress.Cli.Files;

/// <summary>
/// Writes the outputs of one pattern aside and moves them into place when all are complete, so that a build that
/// breaks off leaves the last good ones.
/// </summary>
internal sealed class OutputFolder(string folder) : IDisposable
{
    private readonly string _aside = Path.Combine(
        folder,
        $".unfinished-{Environment.ProcessId}-{Guid.NewGuid():N}"
    );
    private readonly List<string> _names = [];

    public void Write(string name, ReadOnlySpan<byte> bytes)
    {
        Directory.CreateDirectory(_aside);
        using (var file = new FileStream(Path.Combine(_aside, name), FileMode.CreateNew))
        {
            file.Write(bytes);
            file.Flush(flushToDisk: true);
        }
        _names.Add(name);
    }

    /// <summary>Moves everything written into place.</summary>
    public void Commit()
    {
        foreach (string name in _names)
        {
            File.Move(Path.Combine(_aside, name), Path.Combine(folder, name), overwrite: true);
        }
        _names.Clear();
    }

    public void Dispose()
    {
        if (Directory.Exists(_aside))
        {
            Directory.Delete(_aside, recursive: true);
        }
    }
}
