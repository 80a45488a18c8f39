using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;
using PatternPress.Source;

namespace PatternPress.Quilting.Cutting;

/// <summary>
/// Sorts every region of every block of a pattern into groups that are alike in all sizes at once. A size in which a
/// block does not appear says nothing about it.
/// </summary>
internal sealed class PartSorting
{
    private readonly Pattern _pattern;
    private readonly ImmutableArray<Quilt> _quilts;
    private readonly List<PartGroup> _groups = [];

    // Where a group went when it was joined to another.
    private readonly Dictionary<PartGroup, PartGroup> _joined = [];

    private PartSorting(Pattern pattern, ImmutableArray<Quilt> quilts)
    {
        _pattern = pattern;
        _quilts = quilts;
    }

    /// <summary>Blocks by coloring, in the order of the source.</summary>
    public List<SortedBlock> Blocks { get; } = [];

    /// <summary>In the order of their first use.</summary>
    public IReadOnlyList<PartGroup> Groups => _groups;

    public PartGroup GroupOf(PartGroup part)
    {
        while (_joined.TryGetValue(part, out PartGroup? into))
        {
            part = into;
        }
        return part;
    }

    public static PartSorting Sort(Pattern pattern, ImmutableArray<Quilt> quilts)
    {
        var sorting = new PartSorting(pattern, quilts);
        sorting.CollectBlocks();
        foreach (SortedBlock block in sorting.Blocks)
        {
            sorting.CollectParts(block);
        }
        return sorting;
    }

    private void CollectBlocks()
    {
        var byKey = new Dictionary<(string Coloring, int Number), SortedBlock>();
        for (int size = 0; size < _quilts.Length; size++)
        {
            foreach ((ColoredBlock block, int number, long count) in Count(_quilts[size]))
            {
                if (!byKey.TryGetValue((block.Key, number), out SortedBlock? sorted))
                {
                    sorted = new SortedBlock(block.Coloring, number, _quilts.Length);
                    byKey.Add((block.Key, number), sorted);
                    Blocks.Add(sorted);
                }
                sorted.BySize[size] = block;
                sorted.Counts[size] = count;
            }
        }
        Blocks.Sort(
            (a, b) =>
                a.Coloring.Order != b.Coloring.Order
                    ? a.Coloring.Order.CompareTo(b.Coloring.Order)
                    : a.Number.CompareTo(b.Number)
        );
    }

    /// <inheritdoc cref="Quilt.NumberedBlocks"/>
    public static IEnumerable<(ColoredBlock Block, int Number, long Count)> Count(Quilt quilt) =>
        quilt.NumberedBlocks();

    private void CollectParts(SortedBlock block)
    {
        if (block.Coloring.IsPlain)
        {
            return;
        }
        int first = Array.FindIndex(block.BySize, b => b is not null);
        ColoredBlock example = block.BySize[first]!;
        for (int i = 0; i < example.Block!.Units.Length; i++)
        {
            BlockUnit unit = example.Block.Units[i];
            // Of the ways to name the fabrics of a unit that looks the same when turned, one is taken everywhere.
            (ImmutableArray<string> fabrics, Turn settled) = unit.Drawn.Form.Settle(
                example.FabricsOf(unit)
            );
            PartGroup part = NewPart(block, unit, fabrics);
            for (int size = 0; size < _quilts.Length; size++)
            {
                if (block.BySize[size]?.Block is { } sized)
                {
                    DrawnUnit drawn = sized.Units[i].Drawn;
                    part.Forms[size] = drawn.Form;
                    part.Cuts[size] = LiesAcross(part, drawn)
                        ? (drawn.Form.Height, drawn.Form.Width)
                        : (drawn.Form.Width, drawn.Form.Height);
                    part.Needed[size] = block.Counts[size];
                }
            }
            block.Parts.Add((unit, part, settled));
            Join(part);
        }
    }

    private bool LiesAcross(PartGroup part, DrawnUnit drawn) =>
        part.Plain
        && drawn.Turn.SwapsSides
        && _pattern.Fabric(part.Fabrics[0]) is { Directional: true };

    private PartGroup NewPart(SortedBlock block, BlockUnit unit, ImmutableArray<string> fabrics)
    {
        UnitDesign design = unit.Region.Design;
        string key = block.Coloring.Block!;
        bool plain = unit.Drawn.Form.Patches.Length == 1 && unit.Drawn.Form.Overlays.IsEmpty;
        string? method = null;
        Span methodAt = default;
        if (
            !plain
            && (
                _pattern.Methods.TryGetValue($"{key}.{design.Letter}", out Sourced<string> asked)
                || _pattern.Methods.TryGetValue(unit.Drawn.Form.Kind.Keyword, out asked)
            )
        )
        {
            method = asked.Value;
            methodAt = asked.Span;
        }
        var part = new PartGroup(fabrics, method, methodAt, design.Span, plain, _quilts.Length);
        part.Uses.Add(new BlockUse(key, block.Coloring.Key, design.Letter));
        return part;
    }

    // Two groups may only come to agree through a third, so what has been joined is compared again.
    private void Join(PartGroup part)
    {
        int target = _groups.FindIndex(g => SameStuff(g, part) && g.Agrees(part));
        if (target < 0)
        {
            _groups.Add(part);
            return;
        }
        _groups[target].Add(part);
        _joined.Add(part, _groups[target]);
        for (int i = 0; i < _groups.Count; i++)
        {
            PartGroup other = _groups[i],
                grown = _groups[target];
            if (i == target || !SameStuff(other, grown) || !other.Agrees(grown))
            {
                continue;
            }
            (int keep, int drop) = i < target ? (i, target) : (target, i);
            _groups[keep].Add(_groups[drop]);
            _joined.Add(_groups[drop], _groups[keep]);
            _groups.RemoveAt(drop);
            target = keep;
            i = -1;
        }
    }

    private static bool SameStuff(PartGroup a, PartGroup b) =>
        a.Plain == b.Plain
        && a.Method == b.Method
        && a.Fabrics.AsSpan().SequenceEqual(b.Fabrics.AsSpan());
}

/// <summary>A coloring at one of its block sizes, in all quilt sizes.</summary>
internal sealed class SortedBlock(Coloring coloring, int number, int sizes)
{
    public Coloring Coloring { get; } = coloring;

    public int Number { get; } = number;

    public ColoredBlock?[] BySize { get; } = new ColoredBlock?[sizes];

    public long[] Counts { get; } = new long[sizes];

    /// <summary>Every region of the map, the part as it was first sorted, and the turn that its fabrics' order calls for
    /// before the region's own.</summary>
    public List<(BlockUnit Unit, PartGroup Part, Turn Settled)> Parts { get; } = [];
}
