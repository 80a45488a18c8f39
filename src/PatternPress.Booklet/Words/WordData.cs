using System.Collections.Immutable;
using System.Collections.ObjectModel;
using Scriban.Runtime;

namespace PatternPress.Booklet.Words;

/// <summary>
/// What a template may see: names with values, none of which can be changed. A value is text, a whole number, a truth
/// value, a <see cref="Sized"/> value, further data, a list of data, or a <see cref="WordFunction"/>.
/// </summary>
public sealed class WordData
{
    private readonly ImmutableSortedDictionary<string, object?> values;
    private object? script;

    private WordData(ImmutableSortedDictionary<string, object?> values) => this.values = values;

    public static WordData Empty { get; } =
        new(ImmutableSortedDictionary.Create<string, object?>(StringComparer.Ordinal));

    /// <summary>The names there are, in ordinal order.</summary>
    public IEnumerable<string> Names => values.Keys;

    /// <summary>A value by name; null where there is none.</summary>
    public object? this[string name] => values.GetValueOrDefault(name);

    /// <summary>The same data with one more value, or with another value for the name.</summary>
    /// <param name="value">Null for something a pattern may leave out; templates ask <c>if</c> before they use it.</param>
    public WordData With(string name, object? value)
    {
        if (
            value
            is not (
                null
                or string
                or int
                or long
                or bool
                or Sized
                or WordData
                or WordFunction
                or ImmutableArray<WordData>
                or ImmutableArray<string>
            )
        )
        {
            throw new ArgumentException(
                $"Templates cannot see a {value.GetType().Name}.",
                nameof(value)
            );
        }
        return new WordData(values.SetItem(name, value));
    }

    /// <summary>The same data with all values of another; the other's win.</summary>
    public WordData With(WordData other) => new(values.SetItems(other.values));

    /// <summary>The data as the template language sees it: read-only all the way down.</summary>
    internal ScriptObject ToScript()
    {
        if (script is not ScriptObject known)
        {
            var made = new ScriptObject(values.Count);
            foreach ((string name, object? value) in values)
            {
                made.SetValue(name, ToScript(value), readOnly: true);
            }
            made.IsReadOnly = true;
            script = known = made;
        }
        return known;
    }

    private static object? ToScript(object? value) =>
        value switch
        {
            WordData data => data.ToScript(),
            ImmutableArray<WordData> list => ReadOnly(list.Select(d => (object)d.ToScript())),
            ImmutableArray<string> list => ReadOnly(list),
            WordFunction function => new ScriptedFunction(function),
            int number => (long)number,
            _ => value,
        };

    // The template language's own arrays can be written to even when marked read-only.
    private static ReadOnlyCollection<object> ReadOnly(IEnumerable<object> items) =>
        new([.. items]);
}
