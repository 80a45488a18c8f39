using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques;
using PatternPress.Quilting.Techniques.Kinds;

namespace PatternPress.Quilting.Resolving;

/// <summary>Draws a block design at a finished size.</summary>
public static class BlockResolver
{
    /// <summary>
    /// Draws every unit of a block at a scale.
    /// </summary>
    /// <param name="design">The block as designed.</param>
    /// <param name="longerSide">Finished length of the longer side; null for the size the design names.</param>
    /// <param name="problems">Units that cannot fill their regions are added here.</param>
    /// <returns>The block, or null if any unit has a problem.</returns>
    public static Block? Resolve(
        BlockDesign design,
        Length? longerSide,
        ICollection<(UnitRegion Region, Rect Place, UnitProblem Problem)> problems
    )
    {
        Rational scale = longerSide is { } side
            ? side.Inches.One / Length.Max(design.Width, design.Height).Inches.One
            : Rational.One;
        Length width = design.Width * scale,
            height = design.Height * scale;
        ImmutableArray<Length> x = Edges(design.Columns, width),
            y = Edges(design.Rows, height);
        var units = ImmutableArray.CreateBuilder<BlockUnit>(design.Units.Length);
        foreach (UnitRegion region in design.Units)
        {
            if (!UnitKindCatalog.TryFind(region.Design.Kind.Value, out UnitKind? kind))
            {
                // Reported when the block was read.
                continue;
            }
            var place = new Rect(
                x[region.Column],
                y[region.Row],
                x[region.Column + region.Columns] - x[region.Column],
                y[region.Row + region.Rows] - y[region.Row]
            );
            // A single patch is the same piece however an inner block is turned.
            Turn turn = kind is PlainSquare or PlainRectangle ? Turn.None : region.Turn;
            bool swapped = turn.SwapsSides;
            if (
                kind.TryDraw(
                    region.Design,
                    swapped ? place.Height : place.Width,
                    swapped ? place.Width : place.Height,
                    out DrawnUnit? drawn,
                    out UnitProblem? problem
                )
            )
            {
                units.Add(
                    new BlockUnit(
                        region,
                        turn.Quarters == 0 ? drawn : drawn with { Turn = drawn.Turn + turn },
                        place
                    )
                );
            }
            else
            {
                problems.Add((region, place, problem));
            }
        }
        return units.Count == design.Units.Length
            ? new Block(design, width, height, units.MoveToImmutable())
            : null;
    }

    /// <summary>Grid lines from 0 to the whole, in proportion to the parts.</summary>
    private static ImmutableArray<Length> Edges(ImmutableArray<Rational> parts, Length whole)
    {
        Rational sum = Rational.Zero;
        foreach (Rational part in parts)
        {
            sum += part;
        }
        var edges = ImmutableArray.CreateBuilder<Length>(parts.Length + 1);
        Rational reached = Rational.Zero;
        edges.Add(Length.Zero);
        foreach (Rational part in parts)
        {
            reached += part;
            edges.Add(whole * (reached / sum));
        }
        return edges.MoveToImmutable();
    }
}
