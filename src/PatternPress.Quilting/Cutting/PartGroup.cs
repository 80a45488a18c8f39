using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Techniques;
using PatternPress.Source;

namespace PatternPress.Quilting.Cutting;

/// <summary>Regions of blocks that are filled with the same thing in every size; grows while blocks are sorted.</summary>
internal sealed class PartGroup(
    ImmutableArray<string> fabrics,
    string? method,
    Span methodAt,
    Span at,
    bool plain,
    int sizes
)
{
    public ImmutableArray<string> Fabrics { get; } = fabrics;

    /// <summary>The technique the designer asks for.</summary>
    public string? Method { get; } = method;

    public Span MethodAt { get; } = methodAt;

    /// <summary>The words of its first use in the source.</summary>
    public Span At { get; } = at;

    /// <summary>A single patch of fabric, cut and not made.</summary>
    public bool Plain { get; } = plain;

    public UnitForm?[] Forms { get; } = new UnitForm?[sizes];

    /// <summary>Finished size as cut; a patch of a directional print keeps the way it lies in its block.</summary>
    public (Length Width, Length Height)?[] Cuts { get; } =
        new (Length Width, Length Height)?[sizes];

    public long[] Needed { get; } = new long[sizes];

    public List<BlockUse> Uses { get; } = [];

    /// <summary>Whether both have a form in some size, and equal forms wherever both have one.</summary>
    public bool Agrees(PartGroup other)
    {
        bool common = false;
        for (int i = 0; i < Forms.Length; i++)
        {
            if (Forms[i] is { } mine && other.Forms[i] is { } its)
            {
                // Plain patches are alike when they are cut alike, whatever word drew them.
                if (Plain ? Cuts[i] != other.Cuts[i] : !mine.Equals(its))
                {
                    return false;
                }
                common = true;
            }
        }
        return common;
    }

    public void Add(PartGroup other)
    {
        for (int i = 0; i < Forms.Length; i++)
        {
            Forms[i] ??= other.Forms[i];
            Cuts[i] ??= other.Cuts[i];
            Needed[i] += other.Needed[i];
        }
        foreach (BlockUse use in other.Uses)
        {
            if (!Uses.Contains(use))
            {
                Uses.Add(use);
            }
        }
    }
}
