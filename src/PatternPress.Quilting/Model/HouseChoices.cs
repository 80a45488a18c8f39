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

/// <summary>How borders longer than the fabric is wide are cut.</summary>
public enum LongBorders
{
    /// <summary>Whichever takes less fabric; where both take as much, joined.</summary>
    LeastFabric,

    /// <summary>From strips across the fabric, joined end to end.</summary>
    Joined,

    /// <summary>In one length, along the fabric.</summary>
    InOneLength,
}

/// <summary>How two strips are joined end to end.</summary>
public enum JoinStyle
{
    Straight,
    Diagonal,
}

/// <summary>How seams are pressed.</summary>
public enum PressingStyle
{
    /// <summary>All seams of a row to one side, every row alike.</summary>
    ToOneSide,

    /// <summary>To one side, rows by turns in opposite directions, so that seams that meet lock together.</summary>
    Nested,

    /// <summary>Allowances spread to either side.</summary>
    Open,
}
