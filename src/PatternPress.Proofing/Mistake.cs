namespace PatternPress.Proofing;

/// <summary>A printed number that does not stand the test of making.</summary>
/// <param name="Size">Key of the size; null if it concerns all.</param>
/// <param name="Table">Which table: "cutting A", "unit 1, flying geese".</param>
/// <param name="Row">Which row of it; empty if the table has a single one.</param>
/// <param name="What">Which number or word of the row.</param>
/// <param name="Printed">What is printed.</param>
/// <param name="Expected">What the maker finds, in words that follow "but".</param>
public sealed record Mistake(
    MistakeKind Kind,
    ProofStep Step,
    string? Size,
    string Table,
    string Row,
    string What,
    string Printed,
    string Expected
)
{
    /// <summary>In one sentence: "throw, cutting A, A4: pieces: 40 printed, but units and blocks take 48".</summary>
    public string Text
    {
        get
        {
            string size = Size is null ? "all sizes" : Size;
            string row = Row.Length == 0 ? "" : $", {Row}";
            return $"{size}, {Table}{row}: {What}: {Printed} printed, but {Expected}";
        }
    }

    public override string ToString() => Text;
}

public enum MistakeKind
{
    /// <summary>Two printed numbers, or a number and the drawing, contradict each other.</summary>
    Wrong,

    /// <summary>There is not enough of something.</summary>
    Short,

    /// <summary>There is more than need be; the quilt comes out all the same.</summary>
    Excess,
}

/// <summary>What the maker is doing, in the order of making.</summary>
public enum ProofStep
{
    /// <summary>Reading the tables: what each row names must be there.</summary>
    Read,
    Buy,
    Cut,
    Join,
    SewUnits,
    SewBlocks,
    LayOut,
    AddBorders,
    Finish,

    /// <summary>Counting what other tables say in other words.</summary>
    Count,
}
