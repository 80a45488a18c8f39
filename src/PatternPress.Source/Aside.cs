using System.Runtime.ExceptionServices;

namespace PatternPress.Source;

/// <summary>
/// Work shared with one other thread, which is started once and kept. Whoever asks for a result does what the other thread has
/// not begun, so it does no harm to share more than two threads can do, nor to share from within shared work.
/// </summary>
public static class Aside
{
    private static readonly object Gate = new();

    // What is not all begun, oldest first.
    private static readonly List<Shared> Open = [];
    private static bool _helped;
    private static long _offers;

    /// <summary>The results of the work for 0 to <paramref name="count"/> - 1, which must not depend on one another. Throws
    /// what the first of them threw.</summary>
    public static T[] ForEach<T>(int count, Func<int, T> work)
    {
        var results = new T[count];
        var parts = new Shared(count, i => results[i] = work(i));
        if (count > 1)
        {
            Offer(parts);
        }
        Finish(parts);
        return results;
    }

    /// <summary>A value that is worked out from now on, or when it is asked for before anybody was free.</summary>
    public static Aside<T> Start<T>(Func<T> work)
        where T : class
    {
        T? value = null;
        var only = new Shared(1, _ => value = work());
        Offer(only);
        return new Aside<T>(() =>
        {
            Finish(only);
            return value!;
        });
    }

    private static void Offer(Shared work)
    {
        lock (Gate)
        {
            work.Offer = ++_offers;
            Open.Add(work);
            Monitor.PulseAll(Gate);
            if (_helped)
            {
                return;
            }
            _helped = true;
        }
        new Thread(Help) { IsBackground = true }.Start();
    }

    private static void Help()
    {
        while (true)
        {
            Shared work;
            int part;
            lock (Gate)
            {
                while (Open.Count == 0)
                {
                    Monitor.Wait(Gate);
                }
                work = Open[0];
                part = Begin(work);
            }
            Do(work, part);
        }
    }

    private static void Finish(Shared work)
    {
        while (true)
        {
            Shared next = work;
            int part;
            lock (Gate)
            {
                if (work.Ended == work.Count)
                {
                    break;
                }
                // What is waited for may have shared in turn, later: that is helped with. Anything older could take longer
                // than what is waited for.
                if (work.Begun == work.Count)
                {
                    if (Open.Count == 0 || Open[^1].Offer < work.Offer)
                    {
                        Monitor.Wait(Gate);
                        continue;
                    }
                    next = Open[^1];
                }
                part = Begin(next);
            }
            Do(next, part);
        }
        work.Problem?.Throw();
    }

    private static int Begin(Shared work)
    {
        int part = work.Begun++;
        if (work.Begun == work.Count)
        {
            Open.Remove(work);
        }
        return part;
    }

    private static void Do(Shared work, int part)
    {
        ExceptionDispatchInfo? problem = null;
        try
        {
            work.Do(part);
        }
        catch (Exception thrown)
        {
            problem = ExceptionDispatchInfo.Capture(thrown);
        }
        lock (Gate)
        {
            if (problem is not null && part < work.ProblemPart)
            {
                (work.Problem, work.ProblemPart) = (problem, part);
            }
            if (++work.Ended == work.Count)
            {
                Monitor.PulseAll(Gate);
            }
        }
    }

    /// <summary>Parts of work, of which anybody takes the next. What changes is changed under the gate.</summary>
    private sealed class Shared(int count, Action<int> work)
    {
        public int Count { get; } = count;

        public long Offer { get; set; }

        public int Begun { get; set; }

        public int Ended { get; set; }

        public ExceptionDispatchInfo? Problem { get; set; }

        public int ProblemPart { get; set; } = int.MaxValue;

        public void Do(int part) => work(part);
    }
}

/// <summary>A value that is worked out beside other work.</summary>
public sealed class Aside<T>
    where T : class
{
    private readonly Func<T> _finish;

    internal Aside(Func<T> finish) => _finish = finish;

    /// <summary>Waits for the value; throws what working it out threw.</summary>
    public T Value() => _finish();
}
