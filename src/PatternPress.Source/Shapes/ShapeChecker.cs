using System.Collections.Immutable;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;

namespace PatternPress.Source.Shapes;

/// <summary>Holds a tree against a shape: unknown and missing keys, wrong kinds of value, words outside a list.</summary>
public sealed class ShapeChecker
{
    private readonly DiagnosticList diagnostics = new();
    private readonly bool isComplete;
    private readonly List<Level> levels = [];

    private ShapeChecker(bool isComplete) => this.isComplete = isComplete;

    /// <summary>All that is wrong, in the order of the file, up to <see cref="DiagnosticList.DefaultLimit"/>.</summary>
    public static ImmutableArray<Diagnostic> Check(SyntaxTree tree, Shape shape)
    {
        var checker = new ShapeChecker(tree.IsComplete);
        checker.Check(tree.Root, shape, new Place(tree.Root.Span, shape.What, null));
        return checker.diagnostics.ToImmutable().Sort(DiagnosticOrder.Instance);
    }

    /// <summary>A node's place in words and where to point when the node itself is empty.</summary>
    /// <param name="Owner">The key or dash it stands behind.</param>
    /// <param name="Subject">How a message calls it: "fabric A".</param>
    /// <param name="Key">The key it stands behind, if any.</param>
    private readonly record struct Place(Span Owner, string Subject, string? Key);

    private sealed record Level(MapShape Shape, string Subject)
    {
        /// <summary>Keys of this level that stand further in.</summary>
        public HashSet<string> Misplaced { get; } = [];
    }

    private void Check(Node node, Shape shape, Place place)
    {
        if (diagnostics.IsFull)
        {
            return;
        }

        if (node is ScalarNode { IsEmpty: true } empty)
        {
            diagnostics.Add(ShapeFaults.NoValue(empty, shape, place.Key, place.Owner));
            return;
        }

        switch (shape, node)
        {
            case (MapShape map, MapNode found):
                CheckMap(found, map, place);
                break;
            case (NamesShape names, MapNode found):
                CheckNames(found, names, place);
                break;
            case (ListShape list, ListNode found):
                foreach (var item in found.Items)
                {
                    Check(item, list.Item, new Place(item.Span, list.Item.What, null));
                }

                break;
            case (TextShape text, ScalarNode found):
                if (text.Form is { } form && !form.Matches(found.Value.TrimEnd('\n')))
                {
                    diagnostics.Add(ShapeFaults.WrongForm(found, text));
                }
                else if (text.Use == TextUse.Drawing && found.RunsTogether)
                {
                    diagnostics.Add(ShapeFaults.RowsRunTogether(found, text, place.Key));
                }
                else if (text.Use == TextUse.Prose && ShapeFaults.RemarkIn(found) is { } remark)
                {
                    diagnostics.Add(ShapeFaults.RemarkInText(found, remark, text, place.Key));
                }

                break;
            case (ChoiceShape choice, ScalarNode found):
                if (!choice.Words.Contains(found.Value.TrimEnd('\n')))
                {
                    diagnostics.Add(ShapeFaults.UnknownWord(found, choice));
                }

                break;
            case (EitherShape either, _) when Fitting(either, node) is { } fitting:
                Check(node, fitting, place);
                break;
            default:
                diagnostics.Add(ShapeFaults.WrongKind(node, shape, place.Key));
                break;
        }
    }

    /// <summary>The shape of the node's kind among several.</summary>
    private static Shape? Fitting(EitherShape either, Node node)
    {
        foreach (var shape in either.Shapes)
        {
            var fits = node switch
            {
                MapNode => shape is MapShape or NamesShape,
                ListNode => shape is ListShape,
                _ => shape is TextShape or ChoiceShape,
            };
            if (fits)
            {
                return shape;
            }
        }

        return null;
    }

    private void CheckMap(MapNode map, MapShape shape, Place place)
    {
        // Keys that stand in the map under a wrong name are not reported as missing too.
        HashSet<string>? meant = null;
        var own = new Level(shape, place.Subject);
        levels.Add(own);
        Entry? emptied = null;
        var isIndented = true;
        for (var i = 0; i < map.Entries.Length; i++)
        {
            var entry = map.Entries[i];
            var name = entry.Key.Value;
            if (shape.Find(name) is { } key)
            {
                emptied = null;
                if (IsEmptied(map, i, shape))
                {
                    emptied = entry;
                    isIndented = false;
                    continue;
                }

                Check(entry.Value, key.Value, new Place(entry.Key.Span, key.Value.What, key.Name));
            }
            else if (emptied is not null)
            {
                // One finding for all lines that should stand further in.
                if (!isIndented)
                {
                    isIndented = true;
                    diagnostics.Add(ShapeFaults.NotIndented(entry.Key, emptied.Key, shape));
                }
            }
            else if (!diagnostics.IsFull)
            {
                var glued = shape.GluedKey(name);
                var nearest = Nearest.To(name, shape.Names);
                diagnostics.Add(
                    ShapeFaults.UnknownKey(
                        entry.Key,
                        shape,
                        place.Subject,
                        MeantKey(shape, name, glued, nearest)
                    )
                );
                if ((glued ?? nearest) is { } known)
                {
                    (meant ??= []).Add(known);
                }
            }
        }

        levels.RemoveAt(levels.Count - 1);
        if (!isComplete)
        {
            return;
        }

        foreach (var key in shape.Keys)
        {
            if (
                key.Required
                && map.Find(key.Name) is null
                && meant?.Contains(key.Name) != true
                && !own.Misplaced.Contains(key.Name)
            )
            {
                diagnostics.Add(ShapeFaults.MissingKey(place.Owner, key, place.Subject));
            }
        }

        CheckExactlyOne(map, shape, place);
        if (
            shape.OneOrMoreOf is [var usual, ..]
            && shape.Find(usual) is { } missing
            && !shape.OneOrMoreOf.Any(name =>
                map.Find(name) is not null || meant?.Contains(name) == true
            )
        )
        {
            diagnostics.Add(ShapeFaults.MissingKey(place.Owner, missing, place.Subject));
        }
    }

    /// <summary>
    /// Whether an entry has no value because the lines below it, which are no keys of this map, are not indented.
    /// </summary>
    private static bool IsEmptied(MapNode map, int index, MapShape shape) =>
        map.Entries[index].Value is ScalarNode { IsEmpty: true, Style: ScalarStyle.Plain }
        && index + 1 < map.Entries.Length
        && map.Entries[index + 1].Key.Value is var next
        && shape.Find(next) is null
        && Nearest.To(next, shape.Names) is null
        && shape.Find(map.Entries[index].Key.Value)!.Value switch
        {
            NamesShape => true,
            MapShape inner => inner.Find(next) is not null,
            _ => false,
        };

    private void CheckExactlyOne(MapNode map, MapShape shape, Place place)
    {
        Entry? first = null;
        foreach (var name in shape.ExactlyOneOf)
        {
            if (map.Find(name) is not { } entry)
            {
                continue;
            }

            if (first is not null)
            {
                diagnostics.Add(ShapeFaults.OneTooMany(entry.Key, first.Key, shape));
                return;
            }

            first = entry;
        }

        if (first is null && shape.ExactlyOneOf.Length > 0)
        {
            diagnostics.Add(ShapeFaults.OneMissing(place.Owner, shape, place.Subject));
        }
    }

    /// <summary>What was probably meant by an unknown key, as a hint: a wrong place is likelier than a wrong word.</summary>
    private string? MeantKey(MapShape shape, string name, string? glued, string? nearest)
    {
        if (glued is not null)
        {
            return $"put a space after the colon: `{glued}: {Excerpt.Of(name[(glued.Length + 1)..])}`";
        }

        if (shape.Inner(name) is { } inner)
        {
            return $"`{name}` belongs under `{inner}`";
        }

        for (var i = levels.Count - 1; i >= 0; i--)
        {
            var level = levels[i];
            if (level.Shape.Find(name) is not null)
            {
                level.Misplaced.Add(name);
                return $"`{name}` belongs to {level.Subject}: is this line indented too far?";
            }
        }

        return nearest is null ? null : $"did you mean `{nearest}`?";
    }

    private void CheckNames(MapNode map, NamesShape shape, Place place)
    {
        foreach (var entry in map.Entries)
        {
            if (diagnostics.IsFull)
            {
                return;
            }

            if (shape.Name.Form is { } form && !form.Matches(entry.Key.Value))
            {
                diagnostics.Add(ShapeFaults.WrongName(entry.Key, shape));
            }

            var subject = $"{shape.Value.Noun} {entry.Key.Value}";
            Check(entry.Value, shape.Value, new Place(entry.Key.Span, subject, entry.Key.Value));
        }

        if (shape.AtLeastOne && map.Entries.IsEmpty && isComplete)
        {
            diagnostics.Add(ShapeFaults.NoNames(map.Span, shape, place.Key));
        }
    }
}
