using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>A linear program min c·x with x ≥ 0 and lo ≤ A·x ≤ hi, to which columns may be added: the primal simplex
/// method on an explicit inverse. Its answers are floating point and are only ever used as advice; what is proved is
/// proved elsewhere in whole numbers.</summary>
internal sealed class Simplex
{
    private const double Tolerance = 1e-7;
    private const double Pivot = 1e-9;
    private const int RefactorEvery = 80;

    private int rows;
    private double[] lower = [];
    private double[] upper = [];

    /// <summary>The columns one after another: in which rows, how much, and where each column begins.</summary>
    private readonly List<int> index = new(64);
    private readonly List<double> value = new(64);
    private readonly List<int> begin = new(16);
    private readonly List<double> cost = [];

    /// <summary>Per variable (first one for each row: its activity; then the columns): basic, or at which bound.</summary>
    private readonly List<State> state = [];

    private int[] head = [];
    private double[] inverse = [];
    private double[] basic = [];
    private double[] dual = [];
    private double[] direction = [];
    private bool[] taken = [];
    private int updates;

    private enum State : byte
    {
        Lower,
        Upper,
        Basic,
    }

    public enum Outcome
    {
        Optimal,
        Infeasible,

        /// <summary>Rounding errors won; the caller goes on without this answer.</summary>
        Failed,
    }

    public Simplex() { }

    public Simplex(double[] lower, double[] upper) => Begin(lower, upper);

    /// <summary>A new program without columns, in the room of the last one.</summary>
    public void Begin(double[] lower, double[] upper)
    {
        rows = lower.Length;
        this.lower = lower;
        this.upper = upper;
        if (head.Length < rows)
        {
            head = new int[rows];
            inverse = new double[rows * rows];
            basic = new double[rows];
            dual = new double[rows];
            direction = new double[rows];
            taken = new bool[rows];
        }
        index.Clear();
        value.Clear();
        begin.Clear();
        begin.Add(0);
        cost.Clear();
        state.Clear();
        updates = 0;
        for (var row = 0; row < rows; row++)
            state.Add(State.Basic);
        Factor();
    }

    /// <summary>Pivots times the size of the inverse, for the count of work done.</summary>
    public long Work { get; private set; }

    public int Columns => cost.Count;

    /// <summary>After <see cref="Solve"/>: the price of each row; when infeasible, the prices that show it.</summary>
    public ReadOnlySpan<double> Duals => dual.AsSpan(0, rows);

    public void Add(ReadOnlySpan<int> rowIndex, ReadOnlySpan<double> rowValue, double columnCost)
    {
        index.AddRange(rowIndex);
        value.AddRange(rowValue);
        begin.Add(index.Count);
        cost.Add(columnCost);
        state.Add(State.Lower);
    }

    public bool IsColumnBasic(int column) => state[rows + column] == State.Basic;

    public bool IsRowBasic(int row) => state[row] == State.Basic;

    public bool IsRowAtUpper(int row) => state[row] == State.Upper;

    /// <summary>Value of each column in the last solution.</summary>
    public double[] Values()
    {
        var values = new double[cost.Count];
        for (var i = 0; i < rows; i++)
            if (head[i] >= rows)
                values[head[i] - rows] = basic[i];
        return values;
    }

    /// <summary>Begins from the given basic columns and rows, as far as they are independent; rows' own activities fill
    /// the rest.</summary>
    public void Start(
        List<int> basicColumns,
        ReadOnlySpan<bool> rowBasic,
        ReadOnlySpan<bool> rowAtUpper
    )
    {
        for (var row = 0; row < rows; row++)
            state[row] =
                rowBasic[row] ? State.Basic
                : rowAtUpper[row] && double.IsFinite(upper[row]) ? State.Upper
                : double.IsFinite(lower[row]) ? State.Lower
                : State.Upper;
        for (var column = 0; column < cost.Count; column++)
            state[rows + column] = State.Lower;
        foreach (var column in basicColumns)
            state[rows + column] = State.Basic;
        Factor();
    }

    public Outcome Solve()
    {
        if (rows == 0)
            return Outcome.Optimal;
        if (updates > 0)
            Factor();
        var limit = 20_000 + 50 * rows;
        var stalled = 0;
        var refreshed = false;
        for (var round = 0; round < limit; round++)
        {
            if (updates >= RefactorEvery)
                Factor();
            var feasible = Price();
            var bland = stalled > 2 * rows + 50;
            var entering = Enter(feasible, bland, out var increase);
            if (entering < 0)
            {
                if (!refreshed && updates > 0)
                {
                    Factor();
                    refreshed = true;
                    continue;
                }
                return feasible ? Outcome.Optimal : Outcome.Infeasible;
            }
            Ftran(entering);
            var leaving = Leave(entering, increase, bland, out var step, out var toUpper);
            if (leaving == Unbounded)
            {
                if (refreshed || updates == 0)
                    return Outcome.Failed;
                Factor();
                refreshed = true;
                continue;
            }
            refreshed = false;
            stalled = step > 1e-10 ? 0 : stalled + 1;
            Move(entering, increase, leaving, step, toUpper);
        }
        return Outcome.Failed;
    }

    private const int Unbounded = -1;
    private const int Flip = -2;

    private double Bound(int variable) =>
        variable >= rows ? 0
        : state[variable] == State.Upper ? upper[variable]
        : lower[variable];

    /// <summary>Prices of the rows: for the true cost when the basis is feasible, else for the sum by which it is not.
    /// </summary>
    private bool Price()
    {
        var feasible = true;
        for (var i = 0; i < rows; i++)
            if (IsBelow(i) || IsAbove(i))
                feasible = false;
        Array.Clear(dual);
        for (var i = 0; i < rows; i++)
        {
            var weight =
                feasible ? (head[i] >= rows ? cost[head[i] - rows] : 0)
                : IsBelow(i) ? -1
                : IsAbove(i) ? 1
                : 0;
            if (weight != 0)
                AddScaled(dual.AsSpan(0, rows), inverse.AsSpan(i * rows, rows), weight);
        }
        Work += rows * rows;
        return feasible;
    }

    /// <summary>What counts as zero beside a bound: counts may run to millions.</summary>
    private static double Slack(double bound) => Tolerance * Math.Max(1, Math.Abs(bound) * 1e-2);

    private bool IsBelow(int position) =>
        Low(head[position]) is var low && basic[position] < low - Slack(low);

    private bool IsAbove(int position) =>
        High(head[position]) is var high
        && double.IsFinite(high)
        && basic[position] > high + Slack(high);

    private double Low(int variable) => variable >= rows ? 0 : lower[variable];

    private double High(int variable) =>
        variable >= rows ? double.PositiveInfinity : upper[variable];

    private int Enter(bool feasible, bool bland, out bool increase)
    {
        var best = Tolerance;
        var entering = -1;
        increase = true;
        for (var row = 0; row < rows; row++)
        {
            if (state[row] == State.Basic || lower[row] == upper[row])
                continue;
            // A row's activity stands in the program with factor -1, so its reduced cost is the row's price.
            var gain = state[row] == State.Lower ? -dual[row] : dual[row];
            if (gain <= best)
                continue;
            entering = row;
            increase = state[row] == State.Lower;
            best = gain;
            if (bland)
                return entering;
        }
        var states = CollectionsMarshal.AsSpan(state);
        var costs = CollectionsMarshal.AsSpan(cost);
        var begins = CollectionsMarshal.AsSpan(begin);
        var allRows = CollectionsMarshal.AsSpan(index);
        var allValues = CollectionsMarshal.AsSpan(value);
        for (var column = 0; column < costs.Length; column++)
        {
            if (states[rows + column] == State.Basic)
                continue;
            var gain = feasible ? -costs[column] : 0;
            for (var k = begins[column]; k < begins[column + 1]; k++)
                gain += dual[allRows[k]] * allValues[k];
            if (gain <= best)
                continue;
            entering = rows + column;
            increase = true;
            best = gain;
            if (bland)
                return entering;
        }
        Work += (costs.Length * 4) + (rows * 4);
        return entering;
    }

    private void Ftran(int variable)
    {
        Array.Clear(direction);
        if (variable < rows)
        {
            for (var i = 0; i < rows; i++)
                direction[i] = -inverse[i * rows + variable];
            return;
        }
        var first = begin[variable - rows];
        var count = begin[variable - rows + 1] - first;
        var at = CollectionsMarshal.AsSpan(index).Slice(first, count);
        var by = CollectionsMarshal.AsSpan(value).Slice(first, count);
        for (var i = 0; i < rows; i++)
        {
            double sum = 0;
            for (var k = 0; k < at.Length; k++)
                sum += inverse[i * rows + at[k]] * by[k];
            direction[i] = sum;
        }
    }

    /// <summary>The basic variable that first reaches a bound when the entering one moves.</summary>
    private int Leave(int entering, bool increase, bool bland, out double step, out bool toUpper)
    {
        var leaving = Unbounded;
        step = double.PositiveInfinity;
        toUpper = false;
        double size = 0;
        if (entering < rows && double.IsFinite(lower[entering]) && double.IsFinite(upper[entering]))
        {
            step = upper[entering] - lower[entering];
            leaving = Flip;
        }
        for (var i = 0; i < rows; i++)
        {
            var rate = increase ? -direction[i] : direction[i];
            if (Math.Abs(rate) < Pivot)
                continue;
            var low = Low(head[i]);
            var high = High(head[i]);
            double target;
            if (rate > 0)
            {
                target = IsBelow(i) ? low : high;
                if (IsAbove(i) || !double.IsFinite(target))
                    continue;
            }
            else
            {
                target = IsAbove(i) ? high : low;
                if (IsBelow(i) || !double.IsFinite(target))
                    continue;
            }
            var ratio = Math.Max(0, (target - basic[i]) / rate);
            var tie = Math.Abs(ratio - step) <= 1e-11 * (1 + ratio);
            if (tie)
            {
                if (leaving >= 0 && (bland ? head[i] > head[leaving] : Math.Abs(rate) <= size))
                    continue;
            }
            else if (ratio > step)
                continue;
            if (!tie || ratio < step)
                step = ratio;
            leaving = i;
            size = Math.Abs(rate);
            toUpper = target == high;
        }
        return leaving;
    }

    private void Move(int entering, bool increase, int leaving, double step, bool toUpper)
    {
        var signed = increase ? step : -step;
        for (var i = 0; i < rows; i++)
            basic[i] -= signed * direction[i];
        if (leaving == Flip)
        {
            state[entering] = increase ? State.Upper : State.Lower;
            return;
        }
        var from = Bound(entering);
        state[head[leaving]] = toUpper ? State.Upper : State.Lower;
        head[leaving] = entering;
        state[entering] = State.Basic;
        basic[leaving] = from + signed;

        var pivotRow = inverse.AsSpan(leaving * rows, rows);
        Scale(pivotRow, 1 / direction[leaving]);
        for (var i = 0; i < rows; i++)
            if (i != leaving && Math.Abs(direction[i]) > 1e-14)
                AddScaled(inverse.AsSpan(i * rows, rows), pivotRow, -direction[i]);
        Work += rows * rows;
        updates++;
    }

    /// <summary>Inverts the basis anew by Gauss and Jordan, replacing what is not independent by rows' activities, and
    /// computes the basic variables from it.</summary>
    private void Factor()
    {
        Work += (long)rows * rows * rows;
        updates = 0;
        Array.Clear(inverse, 0, rows * rows);
        for (var i = 0; i < rows; i++)
            inverse[i * rows + i] = 1;
        Array.Clear(taken);

        // Rows' own activities first: each is minus a unit vector and takes its row without any elimination.
        for (var row = 0; row < rows; row++)
            if (state[row] == State.Basic)
            {
                taken[row] = true;
                head[row] = row;
                inverse[row * rows + row] = -1;
            }
        for (var variable = rows; variable < state.Count; variable++)
        {
            if (state[variable] != State.Basic)
                continue;
            Ftran(variable);
            var best = -1;
            for (var i = 0; i < rows; i++)
                if (!taken[i] && (best < 0 || Math.Abs(direction[i]) > Math.Abs(direction[best])))
                    best = i;
            if (best < 0 || Math.Abs(direction[best]) < 1e-8)
            {
                state[variable] = State.Lower;
                continue;
            }
            taken[best] = true;
            head[best] = variable;
            Eliminate(best);
        }
        for (var row = 0; row < rows; row++)
        {
            if (taken[row])
                continue;
            // The position may stand for another row by now; its own activity is independent of what was taken.
            Ftran(row);
            if (state[row] == State.Basic || Math.Abs(direction[row]) < 1e-8)
            {
                for (var other = 0; other < rows; other++)
                {
                    if (state[other] == State.Basic)
                        continue;
                    Ftran(other);
                    if (Math.Abs(direction[row]) < 1e-8)
                        continue;
                    Adopt(row, other);
                    break;
                }
            }
            else
                Adopt(row, row);
            taken[row] = true;
        }

        // x_B = -B⁻¹ N x_N, and of the nonbasic variables only rows' activities (factor -1) can be other than zero.
        Array.Clear(basic, 0, rows);
        for (var row = 0; row < rows; row++)
        {
            if (state[row] == State.Basic)
                continue;
            var bound = Bound(row);
            if (bound != 0)
                for (var i = 0; i < rows; i++)
                    basic[i] += inverse[i * rows + row] * bound;
        }
    }

    private void Adopt(int position, int row)
    {
        head[position] = row;
        state[row] = State.Basic;
        Eliminate(position);
    }

    private void Eliminate(int position)
    {
        var pivotRow = inverse.AsSpan(position * rows, rows);
        Scale(pivotRow, 1 / direction[position]);
        for (var i = 0; i < rows; i++)
            if (i != position && direction[i] != 0)
                AddScaled(inverse.AsSpan(i * rows, rows), pivotRow, -direction[i]);
    }

    private static void Scale(Span<double> target, double factor)
    {
        for (var i = 0; i < target.Length; i++)
            target[i] *= factor;
    }

    /// <summary>target += factor · source, element by element, so that every machine gets the same digits whatever the
    /// length of its vectors. Vectors of a fixed length, because methods on Vector of T are not compiled ahead of time.
    /// </summary>
    private static void AddScaled(Span<double> target, ReadOnlySpan<double> source, double factor)
    {
        var targets = MemoryMarshal.Cast<double, Vector128<double>>(target);
        var sources = MemoryMarshal.Cast<double, Vector128<double>>(source);
        var by = Vector128.Create(factor);
        for (var i = 0; i < targets.Length; i++)
            targets[i] += sources[i] * by;
        for (var i = targets.Length * Vector128<double>.Count; i < target.Length; i++)
            target[i] += source[i] * factor;
    }
}
