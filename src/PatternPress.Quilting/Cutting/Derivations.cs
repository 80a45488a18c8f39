using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Cutting;

/// <summary>How every number of one size came about, for the proof sheet and for explaining a single number.</summary>
public static class Derivations
{
    /// <summary>Fabrics, binding, backing, batting, then units, cuts and joined strips, in the order of the tables.</summary>
    public static IEnumerable<Derivation> Of(Making making, SizeMaking size)
    {
        foreach (FabricPlan plan in size.Fabrics)
        {
            yield return plan.Derivation;
        }
        foreach (FabricPlan plan in size.Substitutes)
        {
            yield return plan.Derivation with
            {
                Of = $"fabric {plan.Fabric} as {plan.Panels!.Stock.Kind.Name}",
            };
        }
        if (size.Binding is { } binding)
        {
            yield return binding.Derivation;
        }
        if (size.Backing is { } backing)
        {
            yield return backing.Derivation;
        }
        foreach (FabricTotal total in FabricTotals.Of(size))
        {
            yield return total.Derivation;
        }
        if (size.Batting is { } batting)
        {
            yield return batting.Derivation;
        }
        for (int i = 0; i + 1 < size.Quilt.Borders.Length; i++)
        {
            if (size.Quilt.Borders[i].IsCoping)
            {
                yield return OfCoping(size, size.Quilt.Borders[i], size.Quilt.Borders[i + 1]);
            }
        }
        foreach (UnitBatch unit in size.Units)
        {
            yield return unit.Derivation;
        }
        foreach (Cut cut in size.Cuts)
        {
            yield return OfCut(making, size, cut);
        }
        foreach (JoinedStrips joined in size.Joined)
        {
            yield return OfJoined(size, joined);
        }
    }

    // Half of what a row of blocks is longer than the edge it would be sewn to without the strip.
    private static Derivation OfCoping(SizeMaking size, Border coping, Border pieced)
    {
        LengthUnit unit = size.Quilt.House.Unit;
        BorderBlock[] ends = [.. pieced.Blocks.Where(b => b.Side == BorderSide.Top)],
            sides = [.. pieced.Blocks.Where(b => b.Side == BorderSide.Left)];
        Length across = ends.Aggregate(Length.Zero, (sum, b) => sum + b.Place.Place.Width),
            down = sides.Aggregate(Length.Zero, (sum, b) => sum + b.Place.Place.Height);
        string Told(Length length) => Decimal(length, unit);
        return new Derivation(
            $"border {coping.Number}",
            [
                new("top and bottom row", $"{ends.Length} blocks", new Quantity.Measure(across)),
                new(
                    "left and right",
                    $"({Told(across)} − {Told(across - (coping.Widths.Left * 2))}) ÷ 2, what the row is longer than its edge without the strip",
                    new Quantity.Measure(coping.Widths.Left)
                ),
                new("side row", $"{sides.Length} blocks", new Quantity.Measure(down)),
                new(
                    "top and bottom",
                    $"({Told(down)} − {Told(down - (coping.Widths.Top * 2))}) ÷ 2",
                    new Quantity.Measure(coping.Widths.Top)
                ),
            ]
        );
    }

    private static Derivation OfCut(Making making, SizeMaking size, Cut cut)
    {
        LengthUnit unit = size.Quilt.House.Unit;
        string Told(Length length) => HouseText.Of(length, unit);
        var terms = ImmutableArray.CreateBuilder<DerivationTerm>();
        terms.Add(new("pieces", HowMany(making, size, cut), new Quantity.Count(cut.Count)));
        if (cut.Purpose is CutPurpose.SettingTriangle triangle)
        {
            // Both sides are one: a square.
            terms.AddRange(OfTriangle(size, cut, triangle));
            return new Derivation($"cut {cut.Id}", terms.ToImmutable());
        }
        if (!cut.WholeStrip)
        {
            terms.Add(
                new(
                    "width",
                    $"exactly {Told(cut.Exactly.Width)}, up to the ruler's next mark",
                    new Quantity.Measure(cut.Width)
                )
            );
        }
        terms.Add(
            new(
                "height",
                $"exactly {Told(cut.Exactly.Height)}, up to the ruler's next mark",
                new Quantity.Measure(cut.Height)
            )
        );
        return new Derivation($"cut {cut.Id}", terms.ToImmutable());
    }

    private static IEnumerable<DerivationTerm> OfTriangle(
        SizeMaking size,
        Cut cut,
        CutPurpose.SettingTriangle triangle
    )
    {
        Model.House house = size.Quilt.House;
        Length allowance = SettingTriangleCuts.AllowanceOf(triangle.Kind, house),
            edge = cut.Exactly.Width - allowance;
        bool side = triangle.Kind == SettingPieceKind.Side;
        yield return new(
            side ? "long edge" : "short edge",
            $"finished, {Decimal(edge, house.Unit)}",
            new Quantity.Measure(edge)
        );
        yield return new(
            "allowance",
            side
                ? "seam × (2 + 2√2) on the long edge, up to the ruler's next mark"
                : "seam × (2 + √2) on a short edge, up to the ruler's next mark",
            new Quantity.Measure(allowance)
        );
        if (house.TriangleOversize.Sign > 0)
        {
            yield return new(
                "oversize",
                "of the house, trimmed off later",
                new Quantity.Measure(house.TriangleOversize)
            );
        }
        foreach (string name in new[] { "width", "height" })
        {
            yield return new(
                name,
                $"together {Decimal(cut.Exactly.Width + house.TriangleOversize, house.Unit)}, up to the ruler's next mark",
                new Quantity.Measure(cut.Width)
            );
        }
    }

    // A length with a root in it as the ruler would nearly show it.
    private static string Decimal(Length length, LengthUnit unit) =>
        HouseText.IsMetric(unit)
            ? HouseText.Of(length, unit)
            : length
                .Inches.ToDouble()
                .ToString("0.####", System.Globalization.CultureInfo.InvariantCulture) + " in";

    private static string HowMany(Making making, SizeMaking size, Cut cut)
    {
        switch (cut.Purpose)
        {
            case CutPurpose.UnitPiece piece:
                UnitBatch batch = size.Units.First(u => u.Class.Label == piece.Unit);
                // Roles that share the fabric share the row.
                List<RecipePiece> alike =
                [
                    .. batch.Recipe.Pieces.Where(p =>
                        UnitPieces.PurposeOf(batch.Class, batch.Recipe, p) == piece
                    ),
                ];
                if (!batch.Recipe.StripSets.IsEmpty)
                {
                    IEnumerable<string> strips = batch.Recipe.StripSets.Select(set =>
                        $"{set.SetsFor(batch.Needed)} × {set.Roles.Count(role => alike.Exists(p => p.Role == role))}"
                    );
                    return $"{string.Join(" + ", strips)} in the strip sets of unit {piece.Unit}";
                }
                int each = alike.Sum(p => p.Count);
                return $"{batch.Batches} batches of unit {piece.Unit} × {each}";
            case CutPurpose.BlockPatch or CutPurpose.PlainBlock:
                IEnumerable<string> blocks = making
                    .Blocks.Select(block =>
                        (
                            Count: size.CountOf(block),
                            Each: block.Parts.Count(part => part.Cut == cut.Id),
                            block.Coloring
                        )
                    )
                    .Where(b => b.Count > 0 && b.Each > 0)
                    .Select(b => $"{b.Count} {b.Coloring} × {b.Each}");
                return string.Join(" + ", blocks);
            case CutPurpose.SettingTriangle triangle:
                TriangleRun run = SettingTriangleCuts
                    .Runs(size.Quilt)
                    .First(r =>
                        r.Kind == triangle.Kind
                        && r.Number == triangle.Number
                        && r.Fabric == cut.Fabric
                    );
                return $"{run.Count} triangles ÷ {run.PerSquare} from a square, rounded up";
            case CutPurpose.Border { Part: BorderPart.Joined } or CutPurpose.SashingJoined:
                return "joined, see below";
            case CutPurpose.Binding or CutPurpose.BiasSquare:
                return "see binding strips";
            case CutPurpose.Border border:
                return $"border {border.Number}";
            default:
                return "in the layout";
        }
    }

    private static Derivation OfJoined(SizeMaking size, JoinedStrips joined)
    {
        LengthUnit unit = size.Quilt.House.Unit;
        string Told(Length length) => HouseText.Of(length, unit);
        string pieces = string.Join(
            " + ",
            joined.Pieces.Select(piece => $"{piece.Count} × {Told(piece.Length)}")
        );
        return new Derivation(
            $"joined {joined.Cut}",
            [
                new("needed", pieces, new Quantity.Measure(joined.Needed)),
                new(
                    "a join takes",
                    joined.Joins == Model.JoinStyle.Diagonal ? "the strip's width" : "two seams",
                    new Quantity.Measure(joined.JoinLoss)
                ),
                new(
                    "strips",
                    $"{joined.Strips} × {Told(joined.StripLength)} − {joined.Strips - 1} × {Told(joined.JoinLoss)} = {Told(joined.Available)}",
                    new Quantity.Count(joined.Strips)
                ),
            ]
        );
    }
}
