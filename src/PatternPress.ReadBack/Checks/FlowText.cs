using System.Collections.Immutable;
using System.Text;
using PatternPress.ReadBack.Expecting;
using PatternPress.ReadBack.Reading;

namespace PatternPress.ReadBack.Checks;

/// <summary>All that a file gives to be read, bare, in one string; figures and artifacts left out.</summary>
internal sealed class FlowText
{
    private readonly ImmutableArray<(int Start, int Page)> _pages;

    public FlowText(ImmutableArray<ReadPage> pages)
    {
        var bare = new StringBuilder();
        var starts = ImmutableArray.CreateBuilder<(int, int)>(pages.Length);
        foreach (ReadPage page in pages)
        {
            starts.Add((bare.Length, page.Number));
            foreach (ReadPiece piece in page.Pieces)
            {
                if (!piece.Artifact && piece.Tag != "Figure")
                {
                    bare.Append(Bare.Of(piece.Words));
                }
            }
        }
        Text = bare.ToString();
        _pages = starts.MoveToImmutable();
        Used = new bool[Text.Length];
    }

    public string Text { get; }

    /// <summary>Which letters have been found to be expected.</summary>
    public bool[] Used { get; }

    public int PageAt(int at)
    {
        int page = 0;
        foreach ((int start, int number) in _pages)
        {
            if (start > at)
            {
                break;
            }
            page = number;
        }
        return page;
    }
}
