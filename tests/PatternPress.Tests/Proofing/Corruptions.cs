using System.Collections;
using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Reflection;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Tables;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Tests.Proofing;

/// <summary>
/// Every way to change one thing in printed tables. Walks the records themselves, so that a number that is added to
/// a table later is reached without a word here.
/// </summary>
internal sealed class Corruptions
{
    // Words of the title page and of the trade, pictures and steps: no numbers, letters or names of rows.
    private static readonly HashSet<string> Words =
    [
        "PrintedTables.Pattern",
        "PrintedTables.Title",
        "PrintedTables.Edition",
        "UnitTable.KindName",
        "UnitTable.TechniqueName",
        "UnitTable.Picture",
        "UnitTable.Steps",
        "UnitCell.Variant",
        "Leftover.Name",
    ];

    // Where the place in the list carries meaning. Elsewhere rows carry their own names and may stand in any order.
    private static readonly HashSet<string> Ordered =
    [
        "BySize",
        "Sizes",
        "Binding",
        "Backing",
        "Batting",
        "Placement.Rows",
        "Placement.Rows[]",
        "Placement.Sections",
        "Placement.Sections.Parts",
        "Blocks.Columns",
        "Blocks.Rows",
        "Units.Rows.Fabrics",
        "StripSets.Roles",
        "Borders.BySize.Parts",
        "Borders.BySize.Rows",
        "BySize.Rows.Blocks",
    ];

    private static readonly Length Eighth = Length.FromInches(0, 1, 8);

    // A mark of the metric ruler.
    private static readonly Length HalfCentimetre = Length.FromCentimetres(new Rational(1, 2));

    private readonly Dictionary<string, SortedSet<string>> _names = [];
    private readonly PrintedTables _tables;

    private Corruptions(PrintedTables tables) => _tables = tables;

    public static IReadOnlyList<Corruption> Of(PrintedTables tables)
    {
        var corruptions = new Corruptions(tables);
        corruptions.Collect(tables, typeof(PrintedTables), "PrintedTables");
        return
        [
            .. corruptions.Walk(
                tables,
                typeof(PrintedTables),
                "",
                "PrintedTables",
                changed => (PrintedTables)changed!
            ),
        ];
    }

    // All names of each sort, so that one can be put in another's place.
    private void Collect(object? node, Type type, string member)
    {
        if (node is null || Words.Contains(member))
        {
            return;
        }
        if (node is string text)
        {
            string sort = SortOf(member);
            if (!_names.TryGetValue(sort, out SortedSet<string>? names))
            {
                _names.Add(sort, names = new SortedSet<string>(StringComparer.Ordinal));
            }
            names.Add(text);
            return;
        }
        if (IsList(node.GetType()))
        {
            foreach (object? element in (IEnumerable)node)
            {
                Collect(element, ElementOf(type), member);
            }
            return;
        }
        if (!IsLeaf(node.GetType()))
        {
            foreach (PropertyInfo property in Members(node.GetType()))
            {
                Collect(property.GetValue(node), property.PropertyType, Named(node, property));
            }
        }
    }

    private static string SortOf(string member) =>
        member[(member.LastIndexOf('.') + 1)..] switch
        {
            "Fabric" or "Fabrics" => "fabric",
            "Key" when member.StartsWith("FabricLabel", StringComparison.Ordinal) => "fabric",
            "Cut" or "Cuts" or "Id" => "cut",
            "Label" => "unit",
            "Unit" => "unit",
            "Coloring" => "coloring",
            _ => member,
        };

    private IEnumerable<Corruption> Walk(
        object? node,
        Type type,
        string place,
        string member,
        Func<object?, PrintedTables> rebuild
    )
    {
        if (node is null || Words.Contains(member))
        {
            yield break;
        }
        Type actual = node.GetType();
        if (IsList(actual))
        {
            foreach (Corruption corruption in WalkList(node, actual, place, member, rebuild))
            {
                yield return corruption;
            }
            yield break;
        }
        foreach ((object? value, CorruptionKind kind) in Changes(node, member))
        {
            yield return new Corruption(place, $"{node} to {value}", kind, () => rebuild(value));
        }
        if (IsLeaf(actual))
        {
            yield break;
        }
        PropertyInfo[] members = Members(actual);
        foreach (PropertyInfo property in members)
        {
            object? value = property.GetValue(node);
            string inner = Named(node, property);
            string at = place.Length == 0 ? property.Name : $"{place}.{property.Name}";
            Func<object?, PrintedTables> with = changed =>
                rebuild(With(node, members, property, changed));
            if (
                value is not null
                && IsOptional(property)
                && !Words.Contains(inner)
                && value is not string
            )
            {
                yield return new Corruption(
                    at,
                    "dropped",
                    CorruptionKind.Dropped,
                    () => with(null)
                );
            }
            foreach (Corruption corruption in Walk(value, property.PropertyType, at, inner, with))
            {
                yield return corruption;
            }
        }
    }

    private IEnumerable<Corruption> WalkList(
        object list,
        Type type,
        string place,
        string member,
        Func<object?, PrintedTables> rebuild
    )
    {
        object?[] elements = [.. ((IEnumerable)list).Cast<object?>()];
        Type element = ElementOf(type);
        string bare = Bare(place);
        bool ordered = Ordered.Any(o =>
            bare == o || bare.EndsWith("." + o, StringComparison.Ordinal)
        );
        for (int i = 0; i < elements.Length; i++)
        {
            int index = i;
            string at = $"{place}[{i}]";
            yield return new Corruption(
                at,
                "dropped",
                CorruptionKind.Dropped,
                () => rebuild(ListOf(element, [.. elements[..index], .. elements[(index + 1)..]]))
            );
            if (ordered && i + 1 < elements.Length && Text(elements[i]) != Text(elements[i + 1]))
            {
                yield return new Corruption(
                    at,
                    "swapped with the next",
                    CorruptionKind.Swapped,
                    () =>
                        rebuild(
                            ListOf(
                                element,
                                [
                                    .. elements[..index],
                                    elements[index + 1],
                                    elements[index],
                                    .. elements[(index + 2)..],
                                ]
                            )
                        )
                );
            }
            bool bySize =
                bare.EndsWith("BySize", StringComparison.Ordinal)
                || bare is "Binding" or "Backing" or "Requirements.Batting";
            if (elements[i] is not null && bySize)
            {
                yield return new Corruption(
                    at,
                    "left empty",
                    CorruptionKind.Dropped,
                    () => rebuild(Replaced(null))
                );
            }
            foreach (
                Corruption corruption in Walk(
                    elements[i],
                    element,
                    at,
                    member,
                    changed => rebuild(Replaced(changed))
                )
            )
            {
                yield return corruption;
            }

            object Replaced(object? changed)
            {
                var copy = (object?[])elements.Clone();
                copy[index] = changed;
                return ListOf(element, copy);
            }
        }
    }

    private IEnumerable<(object? Value, CorruptionKind Kind)> Changes(object node, string member)
    {
        switch (node)
        {
            case int count:
                yield return (count + 1, CorruptionKind.Count);
                yield return (count - 1, CorruptionKind.Count);
                break;
            case long count:
                yield return (count + 1, CorruptionKind.Count);
                yield return (count - 1, CorruptionKind.Count);
                break;
            case Length length:
                yield return (length + Eighth, CorruptionKind.Measure);
                yield return (length - Eighth, CorruptionKind.Measure);
                if (_tables.Unit == LengthUnit.Centimetre)
                {
                    yield return (length + HalfCentimetre, CorruptionKind.Measure);
                    yield return (length - HalfCentimetre, CorruptionKind.Measure);
                }
                break;
            case Rational share:
                yield return (share + 1, CorruptionKind.Measure);
                yield return (share / 2, CorruptionKind.Measure);
                break;
            case Yardage yardage:
                Length step = Length.FromYards(new Rational(1, 8));
                yield return (
                    yardage with
                    {
                        ToBuy = yardage.ToBuy - step,
                    },
                    CorruptionKind.Yardage
                );
                yield return (
                    yardage with
                    {
                        ToBuy = yardage.ToBuy + (step * 4),
                    },
                    CorruptionKind.Yardage
                );
                break;
            case Turn turn:
                for (int quarters = 1; quarters < 4; quarters++)
                {
                    yield return (turn + new Turn(quarters), CorruptionKind.Turn);
                }
                break;
            case bool choice:
                yield return (!choice, CorruptionKind.Choice);
                break;
            case Enum choice:
                foreach (object other in Enum.GetValues(choice.GetType()))
                {
                    if (!other.Equals(choice))
                    {
                        yield return (other, CorruptionKind.Choice);
                    }
                }
                break;
            case string text:
                SortedSet<string> names = _names[SortOf(member)];
                string next =
                    names.FirstOrDefault(name => string.CompareOrdinal(name, text) > 0)
                    ?? names.First();
                yield return (next == text ? text + "?" : next, CorruptionKind.Letter);
                break;
        }
    }

    private static bool IsLeaf(Type type) =>
        type.IsPrimitive
        || type.IsEnum
        || type == typeof(string)
        || type == typeof(Length)
        || type == typeof(Rational)
        || type == typeof(Turn);

    private static bool IsList(Type type) =>
        type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>);

    private static Type ElementOf(Type list) =>
        list.IsGenericType ? list.GetGenericArguments()[0] : typeof(object);

    private static readonly NullabilityInfoContext Nullability = new();

    private static readonly ConcurrentDictionary<PropertyInfo, bool> KnownOptional = new();

    private static bool IsOptional(PropertyInfo property)
    {
        if (!KnownOptional.TryGetValue(property, out bool optional))
        {
            optional =
                !property.PropertyType.IsValueType
                && Nullability.Create(property).ReadState == NullabilityState.Nullable;
            KnownOptional[property] = optional;
        }
        return optional;
    }

    private static readonly ConcurrentDictionary<Type, PropertyInfo[]> KnownMembers = new();

    // The parameters of a record's own constructor, in their order.
    private static PropertyInfo[] Members(Type type)
    {
        if (!KnownMembers.TryGetValue(type, out PropertyInfo[]? members))
        {
            members =
            [
                .. ConstructorOf(type)
                    .GetParameters()
                    .Select(parameter => type.GetProperty(parameter.Name!)!),
            ];
            KnownMembers[type] = members;
        }
        return members;
    }

    private static readonly ConcurrentDictionary<Type, ConstructorInfo> KnownConstructors = new();

    private static ConstructorInfo ConstructorOf(Type type)
    {
        if (!KnownConstructors.TryGetValue(type, out ConstructorInfo? constructor))
        {
            constructor = type.GetConstructors()
                .OrderByDescending(c => c.GetParameters().Length)
                .First(c => c.GetParameters().All(p => type.GetProperty(p.Name!) is not null));
            KnownConstructors[type] = constructor;
        }
        return constructor;
    }

    private static object With(
        object record,
        PropertyInfo[] members,
        PropertyInfo changed,
        object? value
    ) =>
        ConstructorOf(record.GetType())
            .Invoke([.. members.Select(m => m == changed ? value : m.GetValue(record))]);

    private static readonly MethodInfo Typed = typeof(Corruptions).GetMethod(
        nameof(TypedList),
        BindingFlags.NonPublic | BindingFlags.Static
    )!;

    private static readonly ConcurrentDictionary<Type, Func<object?[], object>> KnownLists = new();

    private static object ListOf(Type element, object?[] elements)
    {
        if (!KnownLists.TryGetValue(element, out Func<object?[], object>? list))
        {
            list = Typed.MakeGenericMethod(element).CreateDelegate<Func<object?[], object>>();
            KnownLists[element] = list;
        }
        return list(elements);
    }

    private static object TypedList<T>(object?[] elements) =>
        elements.Select(element => (T)element!).ToImmutableArray();

    private static string Named(object node, PropertyInfo property) =>
        $"{node.GetType().Name}.{property.Name}";

    // "Placement[2].Rows[1]" is "Placement.Rows[]": the last index tells a list of lists.
    private static string Bare(string place)
    {
        bool nested = place.EndsWith(']');
        string bare = System.Text.RegularExpressions.Regex.Replace(place, @"\[\d+\]", "");
        return nested ? bare + "[]" : bare;
    }

    private static string Text(object? node)
    {
        if (node is null)
        {
            return "-";
        }
        if (IsList(node.GetType()))
        {
            return $"[{string.Join(", ", ((IEnumerable)node).Cast<object?>().Select(Text))}]";
        }
        return IsLeaf(node.GetType()) || node is Yardage || node is UnitForm or Step
            ? node.ToString()!
            : $"({string.Join(", ", Members(node.GetType()).Select(m => Text(m.GetValue(node))))})";
    }
}
