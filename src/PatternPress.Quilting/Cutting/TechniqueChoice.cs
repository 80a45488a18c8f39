using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
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
    // Sizes mostly share their blocks.
    private readonly Dictionary<(Technique, PartGroup), Known> _recipes = [];

    private sealed record Known(UnitForm Form, Length Width, House House, Recipe Recipe);

    /// <returns>Null with a problem added where no technique will do.</returns>
    public Technique? Choose(ShapeDraft shape, List<MakingProblem> problems)
    {
        List<Technique> candidates = [.. techniques.Where(t => t.Kind == shape.First.Kind.Keyword)];
        return shape.Parts[0].Method is { } method
            ? Asked(method, shape, candidates, problems)
            : Thriftiest(shape, candidates, problems);
    }

    /// <summary>Everything a maker needs for one batch of a part in one size.</summary>
    public Recipe Recipe(Technique technique, PartGroup part, int size)
    {
        UnitForm form = part.Forms[size]!;
        Length width = NarrowestWidth(part, size);
        House house = quilts[size].House;
        if (
            !_recipes.TryGetValue((technique, part), out Known? known)
            || !ReferenceEquals(known.Form, form)
            || known.Width != width
            || known.House != house
        )
        {
            Recipe recipe = technique.Recipe(form, part.Fabrics, width, house);
            known = new(form, width, house, recipe);
            _recipes[(technique, part)] = known;
        }
        return known.Recipe;
    }

    private Length NarrowestWidth(PartGroup part, int size)
    {
        Length narrowest = drafts.StripLength(part.Fabrics[0], size);
        foreach (string fabric in part.Fabrics.AsSpan()[1..])
        {
            narrowest = Length.Min(narrowest, drafts.StripLength(fabric, size));
        }
        return narrowest;
    }

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
        var fitting = new List<Technique>();
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
            fitting.Add(technique);
        }
        if (fitting.Count == 0)
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
            return null;
        }
        Technique best = fitting[0];
        if (fitting.Count > 1)
        {
            Area least = FabricFor(best, shape);
            foreach (Technique other in fitting.Skip(1))
            {
                Area area = FabricFor(other, shape);
                if (area < least)
                {
                    (best, least) = (other, area);
                }
            }
        }
        return best;
    }

    private List<(int Size, string Reason)> Refusals(Technique technique, ShapeDraft shape)
    {
        var refusals = new List<(int, string)>();
        (UnitForm Form, House House, Length Width, string? Refusal)? last = null;
        foreach (int size in shape.Sizes)
        {
            UnitForm form = shape.Forms[size]!;
            House house = quilts[size].House;
            Length? narrowest = null;
            foreach (PartGroup part in shape.Parts)
            {
                if (part.Forms[size] is not null)
                {
                    Length own = NarrowestWidth(part, size);
                    narrowest = narrowest is { } other ? Length.Min(own, other) : own;
                }
            }
            Length width = narrowest!.Value;
            if (
                last is not { } known
                || !ReferenceEquals(known.Form, form)
                || known.Width != width
                || known.House != house
            )
            {
                bool can = technique.CanMake(form, house, width, out string reason);
                known = (form, house, width, can ? null : reason);
                last = known;
            }
            if (known.Refusal is { } refusal)
            {
                refusals.Add((size, refusal));
            }
        }
        return refusals;
    }

    private Area FabricFor(Technique technique, ShapeDraft shape)
    {
        Area area = Area.Zero;
        foreach (PartGroup part in shape.Parts)
        {
            for (int size = 0; size < part.Forms.Length; size++)
            {
                if (part.Forms[size] is null)
                {
                    continue;
                }
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
