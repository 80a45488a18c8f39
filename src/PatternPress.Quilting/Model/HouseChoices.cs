namespace PatternPress.Quilting.Model;

/// <summary>Whether pieces are cut to come out at size, or larger and trimmed.</summary>
public enum CuttingStyle
{
    Exact,
    Oversize,
}

/// <summary>How a cutting plan fills its strips.</summary>
public enum PlanStyle
{
    /// <summary>One piece height a strip; only the end of the last strip is reused.</summary>
    Plain,

    /// <summary>Pieces mix freely in a strip.</summary>
    Thrifty,
}

/// <summary>How two strips are joined end to end.</summary>
public enum JoinStyle
{
    Straight,
    Diagonal,
}

public enum PressingStyle
{
    ToOneSide,
    Open,
}
