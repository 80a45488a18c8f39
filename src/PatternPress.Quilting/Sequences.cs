namespace PatternPress.Quilting;

/// <summary>What LINQ has too, without generic virtual methods: looking one of those up for the first time takes longer than
/// all the rest of a short query, and every start of the program pays for it.</summary>
internal static class Sequences
{
    /// <summary>In order; what compares alike stays in the order it had.</summary>
    public static T[] Sorted<T>(this IEnumerable<T> items, Comparison<T> comparison)
    {
        T[] all = [.. items];
        if (all.Length > 1)
        {
            var ranked = new (T Item, int Place)[all.Length];
            for (int i = 0; i < ranked.Length; i++)
            {
                ranked[i] = (all[i], i);
            }
            Array.Sort(
                ranked,
                (a, b) =>
                    comparison(a.Item, b.Item) is not 0 and int order ? order : a.Place - b.Place
            );
            for (int i = 0; i < ranked.Length; i++)
            {
                all[i] = ranked[i].Item;
            }
        }
        return all;
    }

    /// <summary>Of the items of which the condition is true, what is selected.</summary>
    public static IEnumerable<TResult> SelectWhere<T, TResult>(
        this IEnumerable<T> items,
        Func<T, bool> condition,
        Func<T, TResult> selector
    )
    {
        foreach (T item in items)
        {
            if (condition(item))
            {
                yield return selector(item);
            }
        }
    }
}
