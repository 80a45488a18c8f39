using PatternPress.Source;

namespace PatternPress.Tests.Source;

public sealed class AsideTests
{
    [Test]
    public void Every_part_is_done_once_and_lies_in_its_place()
    {
        int[] done = new int[1000];
        int[] results = Aside.ForEach(
            done.Length,
            i =>
            {
                Interlocked.Increment(ref done[i]);
                return i * i;
            }
        );
        done.ShouldAllBe(times => times == 1);
        results.ShouldBe(Enumerable.Range(0, done.Length).Select(i => i * i));
        Aside.ForEach(0, i => i).ShouldBeEmpty();
    }

    [Test]
    public void What_the_first_part_threw_is_thrown_when_all_have_ended()
    {
        int ended = 0;
        Should
            .Throw<InvalidOperationException>(() =>
                Aside.ForEach(
                    20,
                    i =>
                    {
                        Interlocked.Increment(ref ended);
                        return i is 7 or 8 ? throw new InvalidOperationException($"{i}") : i;
                    }
                )
            )
            .Message.ShouldBe("7");
        ended.ShouldBe(20);
    }

    [Test]
    public void Shared_work_may_share_in_turn()
    {
        int Sum(int depth) => depth == 0 ? 1 : Aside.ForEach(3, _ => Sum(depth - 1)).Sum();
        Sum(6).ShouldBe(729);
    }

    [Test]
    public void Many_may_share_at_once() =>
        Enumerable
            .Range(0, 16)
            .AsParallel()
            .WithDegreeOfParallelism(8)
            .Select(n =>
            {
                Aside<string> value = Aside.Start(() =>
                    string.Join(",", Aside.ForEach(n, i => $"{i}"))
                );
                int[] others = Aside.ForEach(50, i => i + n);
                return others[^1] == 49 + n
                    && value.Value() == string.Join(",", Enumerable.Range(0, n));
            })
            .ShouldAllBe(right => right);

    [Test]
    public void A_value_is_worked_out_once_however_often_it_is_asked_for()
    {
        int times = 0;
        Aside<string> value = Aside.Start(() =>
        {
            Interlocked.Increment(ref times);
            return "made";
        });
        value.Value().ShouldBe("made");
        value.Value().ShouldBe("made");
        times.ShouldBe(1);
        Aside<string> none = Aside.Start<string>(() => throw new OverflowException());
        Should.Throw<OverflowException>(() => none.Value());
        Should.Throw<OverflowException>(() => none.Value());
    }
}
