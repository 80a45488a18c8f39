using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>
/// Two edges that are sewn together differ in length, computed exactly: a unit and its place in the block, a block
/// and its place in the row, sashing and the block beside it, a unit as made and as drawn.
/// </summary>
public sealed class PP0236_SeamsOfUnequalLength : CheckingRule
{
    public PP0236_SeamsOfUnequalLength()
        : base("PP0236", Severity.Error, "Seams of unequal length") { }

    public override bool NeedsMaking => true;

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (Quilt quilt in context.Quilts)
        {
            foreach (Finding finding in InBlocks(quilt, context).Concat(BetweenBlocks(quilt)))
            {
                yield return finding;
            }
        }
        foreach (SizeMaking size in context.Making.Sizes)
        {
            foreach (Finding finding in AsMade(size))
            {
                yield return finding;
            }
        }
    }

    private IEnumerable<Finding> InBlocks(Quilt quilt, RuleContext context)
    {
        var seen = new HashSet<Block>();
        foreach (ColoredBlock colored in context.BlocksOf(quilt))
        {
            if (colored.Block is not { } block || !seen.Add(block))
            {
                continue;
            }
            foreach (BlockUnit unit in block.Units)
            {
                UnitForm form = unit.Drawn.Form;
                bool swap = unit.Drawn.Turn.SwapsSides;
                Length width = swap ? form.Height : form.Width,
                    height = swap ? form.Width : form.Height;
                if (width != unit.Place.Width || height != unit.Place.Height)
                {
                    yield return FindIn(
                        quilt.Size.Key,
                        unit.Region.Design.Span,
                        $"unit \"{unit.Region.Design.Letter}\" of block \"{block.Key}\" does not meet its neighbors",
                        $"a {form.Kind.Name}",
                        $"the unit is {Wording.Measure(width, height)}, its place {Wording.Measure(unit.Place.Width, unit.Place.Height)}",
                        others: new Label(unit.Region.Span, "its place")
                    );
                }
            }
        }
    }

    private static IEnumerable<(BlockPlace Place, Border? Border)> Placed(Quilt quilt)
    {
        foreach (BlockPlace place in quilt.Places)
        {
            yield return (place, null);
        }
        foreach (Border border in quilt.Borders)
        {
            foreach (BorderBlock block in border.Blocks)
            {
                yield return (block.Place, border);
            }
        }
    }

    private IEnumerable<Finding> BetweenBlocks(Quilt quilt)
    {
        string size = quilt.Size.Key;
        foreach ((BlockPlace place, Border? border) in Placed(quilt))
        {
            Length width = place.Turn.SwapsSides ? place.Block.Height : place.Block.Width,
                height = place.Turn.SwapsSides ? place.Block.Width : place.Block.Height;
            if (width != place.Place.Width || height != place.Place.Height)
            {
                string where = border is null
                    ? $"in row {place.Row + 1}, column {place.Column + 1}"
                    : $"in border {border.Number}";
                yield return FindIn(
                    size,
                    place.Block.Coloring.Span,
                    $"block \"{place.Block.Key}\" does not meet its neighbors",
                    "this coloring",
                    $"{where} the block is {Wording.Measure(width, height)}, its place {Wording.Measure(place.Place.Width, place.Place.Height)}"
                );
            }
        }
        // Every line of seams through the field must be met by whole edges on both sides.
        // The sections of other quilts are compared where their order of sewing is found.
        if (quilt.Order is not null || quilt.Size.Quilt.Sashing is not { } sashing)
        {
            yield break;
        }
        ILookup<Length, BlockPlace> rows = quilt.Places.ToLookup(p => p.Place.Y),
            columns = quilt.Places.ToLookup(p => p.Place.X);
        foreach (Sash sash in quilt.Sashes)
        {
            (Length Sash, Length Block)? differ = sash.Kind switch
            {
                SashKind.Upright when rows[sash.Place.Y].FirstOrDefault() is { } beside => (
                    sash.Place.Height,
                    beside.Place.Height
                ),
                SashKind.Level when columns[sash.Place.X].FirstOrDefault() is { } above => (
                    sash.Place.Width,
                    above.Place.Width
                ),
                SashKind.Row when !sash.Frame.OnPoint => (sash.Place.Width, quilt.Center.Width),
                SashKind.Cornerstone => (sash.Place.Width, sash.Place.Height),
                _ => null,
            };
            if (differ is { } pair && pair.Sash != pair.Block)
            {
                yield return FindIn(
                    size,
                    sashing.Span,
                    "a sashing strip does not meet its neighbors",
                    "the sashing",
                    $"a strip {Wording.Measure(sash.Place.Width, sash.Place.Height)} meets an edge of {Wording.Measure(pair.Block)}"
                );
            }
        }
    }

    private IEnumerable<Finding> AsMade(SizeMaking size)
    {
        foreach (UnitBatch batch in size.Units)
        {
            Length seams = size.Quilt.House.Seam * 2;
            Length width = batch.Form.Width + seams,
                height = batch.Form.Height + seams;
            if (batch.Recipe.UnfinishedWidth != width || batch.Recipe.UnfinishedHeight != height)
            {
                yield return FindIn(
                    size.Key,
                    Wording.SpanOf(size.Quilt.Pattern, batch.Class),
                    $"unit {batch.Class.Label} comes out at another size than its place in the block",
                    $"made {batch.Recipe.Technique}",
                    $"made {Wording.Measure(batch.Recipe.UnfinishedWidth, batch.Recipe.UnfinishedHeight)}, needed {Wording.Measure(width, height)} with seams"
                );
            }
        }
    }
}
