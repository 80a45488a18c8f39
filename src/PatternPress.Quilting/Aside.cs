using System.Runtime.ExceptionServices;

namespace PatternPress.Quilting;

/// <summary>Work on two threads.</summary>
internal static class Aside
{
    /// <summary>The results of the work for 0 to <paramref name="count"/> - 1, every other one worked out aside. The work
    /// must not depend on what comes before.</summary>
    public static T[] ForEach<T>(int count, Func<int, T> work)
    {
        var results = new T[count];
        Aside<T[]>? others = count > 1 ? new(() => Every(1)) : null;
        Every(0);
        return others?.Value() ?? results;

        T[] Every(int first)
        {
            for (int i = first; i < count; i += 2)
            {
                results[i] = work(i);
            }
            return results;
        }
    }
}

/// <summary>A value that is worked out on a thread of its own from now on.</summary>
internal sealed class Aside<T>
    where T : class
{
    private readonly Thread _thread;
    private T? _value;
    private ExceptionDispatchInfo? _problem;

    public Aside(Func<T> work)
    {
        _thread = new Thread(() =>
        {
            try
            {
                _value = work();
            }
            catch (Exception problem)
            {
                _problem = ExceptionDispatchInfo.Capture(problem);
            }
        });
        _thread.Start();
    }

    /// <summary>Waits for the value; throws what working it out threw.</summary>
    public T Value()
    {
        _thread.Join();
        _problem?.Throw();
        return _value!;
    }
}
