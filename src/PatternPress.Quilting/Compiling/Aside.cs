using System.Runtime.ExceptionServices;

namespace PatternPress.Quilting.Compiling;

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
