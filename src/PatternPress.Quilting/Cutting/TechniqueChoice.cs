using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Cutting;

/// <summary>
/// Chooses one technique for a shape in all sizes, so that the booklet tells its steps once: the one the designer
/// names, else the one that takes the least area of fabric over all sizes, else the first in order of preference.
/// </summary>
/// <param name="techniques">In order of preference.</param>
internal sealed class TechniqueChoice(
    ImmutableArray<Technique> techniques,
    ImmutableArray<Quilt> quilts,
    CutDrafts drafts
)
{
    /// <returns>Null with a problem added where no technique will do.</returns>
    public Technique? Choose(ShapeDraft shape, List<MakingProblem> problems)
    {
        List<Technique> candidates = [.. techniques.Where(t => t.Kind == shape.First.Kind.Keyword)];
        return shape.Parts[0].Method is { } method
            ? Asked(method, shape, candidates, problems)
            : Thriftiest(shape, candidates, problems);
    }

    /// <summary>Everything a maker needs for one batch of a part in one size.</summary>
    public Recipe Recipe(Technique technique, PartGroup part, int size) =>
        technique.Recipe(
            part.Forms[size]!,
            part.Fabrics,
            NarrowestWidth(part, size),
            quilts[size].House
        );

    private Length NarrowestWidth(PartGroup part, int size) =>
        part.Fabrics.Select(fabric => drafts.StripLength(fabric, size)).Aggregate(Length.Min);

    private Technique? Asked(
        string method,
        ShapeDraft shape,
        List<Technique> candidates,
        List<MakingProblem> problems
    )
    {
        PartGroup part = shape.Parts[0];
        if (candidates.Find(t => t.Keyword == method) is not { } technique)
        {
            problems.Add(
                new MakingProblem.UnknownMethod(
                    method,
                    shape.First.Kind,
                    [.. candidates.Select(t => t.Keyword)],
                    part.MethodAt,
                    Keys(shape)
                )
            );
            return null;
        }
        if (Refusals(technique, shape) is { Count: > 0 } refusals)
        {
            problems.Add(
                new MakingProblem.MethodDoesNotFit(
                    technique,
                    shape.Forms[refusals[0].Size]!,
                    [.. shape.Parts.SelectMany(p => p.Uses)],
                    refusals[0].Reason,
                    part.MethodAt,
                    [.. refusals.Select(r => quilts[r.Size].Size.Key)]
                )
            );
            return null;
        }
        return technique;
    }

    private Technique? Thriftiest(
        ShapeDraft shape,
        List<Technique> candidates,
        List<MakingProblem> problems
    )
    {
        Technique? best = null;
        Area bestArea = Area.Zero;
        var reasons = ImmutableArray.CreateBuilder<(string, string)>();
        foreach (Technique technique in candidates)
        {
            if (shape.Sizes.Any(i => quilts[i].House.Without.Contains(technique.Keyword)))
            {
                reasons.Add((technique.Keyword, "the house rules leave it out"));
                continue;
            }
            if (Refusals(technique, shape) is { Count: > 0 } refusals)
            {
                reasons.Add((technique.Keyword, refusals[0].Reason));
                continue;
            }
            Area area = FabricFor(technique, shape);
            if (best is null || area < bestArea)
            {
                (best, bestArea) = (technique, area);
            }
        }
        if (best is null)
        {
            problems.Add(
                new MakingProblem.NoTechnique(
                    shape.First,
                    [.. shape.Parts.SelectMany(p => p.Uses)],
                    reasons.ToImmutable(),
                    shape.Parts[0].At,
                    Keys(shape)
                )
            );
        }
        return best;
    }

    private List<(int Size, string Reason)> Refusals(Technique technique, ShapeDraft shape)
    {
        var refusals = new List<(int, string)>();
        foreach (int size in shape.Sizes)
        {
            Length width = shape
                .Parts.Where(part => part.Forms[size] is not null)
                .Select(part => NarrowestWidth(part, size))
                .Aggregate(Length.Min);
            if (
                !technique.CanMake(shape.Forms[size]!, quilts[size].House, width, out string reason)
            )
            {
                refusals.Add((size, reason));
            }
        }
        return refusals;
    }

    private Area FabricFor(Technique technique, ShapeDraft shape)
    {
        Area area = Area.Zero;
        foreach (PartGroup part in shape.Parts)
        {
            foreach (int size in shape.Sizes.Where(i => part.Forms[i] is not null))
            {
                Recipe recipe = Recipe(technique, part, size);
                foreach (RecipePiece piece in recipe.PiecesFor(part.Needed[size]))
                {
                    area += piece.Width * piece.Height * piece.Count;
                }
            }
        }
        return area;
    }

    private ImmutableArray<string> Keys(ShapeDraft shape) =>
        [.. shape.Sizes.Select(i => quilts[i].Size.Key)];
}

/// <summary>Parts that are of one shape in every size, before a technique is chosen.</summary>
internal sealed class ShapeDraft(PartGroup first)
{
    public UnitForm?[] Forms { get; } = [.. first.Forms];

    public List<PartGroup> Parts { get; } = [first];

    public UnitForm First => Forms.First(form => form is not null)!;

    /// <summary>Indices of the sizes that use it.</summary>
    public IEnumerable<int> Sizes =>
        Enumerable.Range(0, Forms.Length).Where(i => Forms[i] is not null);

    /// <summary>Takes a part in if it is of this shape wherever both are used, and both are used somewhere.</summary>
    public bool TryAdd(PartGroup part)
    {
        bool common = false;
        for (int i = 0; i < Forms.Length; i++)
        {
            if (Forms[i] is { } mine && part.Forms[i] is { } its)
            {
                if (!mine.Equals(its))
                {
                    return false;
                }
                common = true;
            }
        }
        if (!common || part.Method != Parts[0].Method)
        {
            return false;
        }
        for (int i = 0; i < Forms.Length; i++)
        {
            Forms[i] ??= part.Forms[i];
        }
        Parts.Add(part);
        return true;
    }
}
