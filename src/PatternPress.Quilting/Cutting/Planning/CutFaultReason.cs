namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>Why a cutting list cannot be planned.</summary>
public enum CutFaultReason
{
    /// <summary>The fabric's width is zero or negative.</summary>
    StockNotPositive,

    /// <summary>The piece's width or height is zero or negative.</summary>
    SizeNotPositive,

    /// <summary>The count is negative.</summary>
    CountNegative,

    /// <summary>The piece fits the stock in no allowed direction.</summary>
    LargerThanStock,

    /// <summary>A size is beyond what is computed with.</summary>
    SizeBeyondLimit,

    /// <summary>The count is beyond what is computed with.</summary>
    CountBeyondLimit,

    /// <summary>More kinds of pieces than are computed with.</summary>
    TooManyKinds,

    /// <summary>Two kinds share one id.</summary>
    IdRepeated,
}
