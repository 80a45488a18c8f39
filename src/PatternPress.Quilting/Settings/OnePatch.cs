using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Settings.Fills;

namespace PatternPress.Quilting.Settings;

/// <summary>
/// Patches of one shape with angles of 60 degrees, sewn in rows; the first and the last of each row are cut off, so that the
/// quilt's sides are straight. There are no blocks: every place has a fabric of its own.
/// </summary>
public sealed class OnePatch : Setting
{
    public override string Keyword => "one-patch";

    public override bool HasBlocks => false;

    /// <summary>What a fill spreads over: for triangles and diamonds the places as they are; hexagons reach over two rows, and
    /// every second column has one more.</summary>
    public override FillGrid Places(SizeDesign size) =>
        size.Quilt.Patch?.Shape == PatchShape.Hexagon
            ? new((size.Rows / 2) + 1, size.Columns)
            : new(size.Rows, size.Columns);

    public override Field? Lay(Layout layout)
    {
        bool plain = true;
        var reported = new HashSet<string>();
        foreach (FillCell cell in layout.Cells.SelectMany(row => row))
        {
            Coloring coloring = layout.Pattern.Coloring(cell.Coloring)!;
            plain &= coloring.IsPlain;
            if (!coloring.IsPlain && reported.Add(coloring.Key))
            {
                layout.Findings.Add(
                    new Finding(
                        PP0257_BlockAmongPatches.Found(cell.Span, coloring.Key, coloring.Block!)
                    )
                );
            }
        }
        return plain
            ? Lay(
                layout.Design.Patch!,
                layout.Size.Rows,
                layout.Size.Columns,
                [
                    .. layout.Cells.Select(row =>
                        row.Select(cell =>
                                (
                                    cell.Coloring,
                                    layout.Pattern.Coloring(cell.Coloring)!.Fabrics[
                                        Coloring.PlainPart
                                    ]
                                )
                            )
                            .ToArray()
                    ),
                ]
            )
            : null;
    }

    /// <param name="rows">Rows to sew.</param>
    /// <param name="columns">Places in each.</param>
    /// <param name="cells">The coloring and fabric of each place of the grid.</param>
    private static Field Lay(
        PatchDesign patch,
        int rows,
        int columns,
        (string Coloring, string Fabric)[][] cells
    )
    {
        var pieces = ImmutableArray.CreateBuilder<SettingPiece>(rows * columns);
        var layout = ImmutableArray.CreateBuilder<LayoutRow>(rows);
        Length width = SixtyDegrees.Width(patch.Shape, patch.Height, columns);
        (SettingPieceKind whole, SettingPieceKind end) = SixtyDegrees.KindsOf(patch.Shape);
        for (int r = 0; r < rows; r++)
        {
            var parts = ImmutableArray.CreateBuilder<LayoutPart>(columns);
            for (int c = 0; c < columns; c++)
            {
                bool first = c == 0,
                    last = c == columns - 1;
                (Polygon shape, bool reversed) = patch.Shape switch
                {
                    PatchShape.Triangle => Triangle(r, c, first, last),
                    PatchShape.Diamond => Diamond(r, c, first, last),
                    _ => HalfHexagon(r, c, first, last),
                };
                (string coloring, string fabric) = cells[GridRow(r, c)][c];
                parts.Add(new LayoutPart(LayoutPartKind.SettingPiece, pieces.Count));
                pieces.Add(
                    new SettingPiece(first || last ? end : whole, shape, fabric, patch.Height)
                    {
                        Reversed = (first || last) && reversed,
                        Row = r,
                        Column = c,
                        Coloring = coloring,
                    }
                );
            }
            layout.Add(new LayoutRow(LayoutRowKind.Blocks, r, parts.MoveToImmutable()));
        }
        return new Field(
            width,
            patch.Height * rows,
            [],
            [],
            pieces.MoveToImmutable(),
            layout.MoveToImmutable()
        );

        int GridRow(int r, int c)
        {
            if (patch.Shape != PatchShape.Hexagon)
            {
                return r;
            }
            int top = IsUp(r, c) ? r : r - 1;
            return (top + 1) / 2;
        }

        static bool IsUp(int r, int c) => (r + c) % 2 == 0;

        (Polygon, bool) Triangle(int r, int c, bool first, bool last)
        {
            Length half = SixtyDegrees.Step(PatchShape.Triangle, patch.Height),
                x = half * c,
                left = first ? x : x - half,
                right = last ? x : x + half;
            (Length top, Length bottom) = Edges(r);
            bool up = IsUp(r, c);
            return (
                up
                    ? Of((x, top), (right, bottom), (left, bottom))
                    : Of((left, top), (right, top), (x, bottom)),
                // The right half of one that points up, and that turned half round.
                up == last
            );
        }

        (Polygon, bool) Diamond(int r, int c, bool first, bool last)
        {
            Length half = SixtyDegrees.OverRootThree(patch.Height),
                x = half * (2 * (c - 1));
            (Length top, Length bottom) = Edges(r);
            bool right = r % 2 == 0;
            // Where its two slanting edges meet the row's edges; an end has but one.
            (Length Top, Length Bottom) before = right ? (x + half, x) : (x, x + half),
                after = (before.Top + (half * 2), before.Bottom + (half * 2));
            Length o = Length.Zero;
            if (first)
            {
                return (
                    right
                        ? Of((o, top), (half, top), (o, bottom))
                        : Of((o, top), (half, bottom), (o, bottom)),
                    !right
                );
            }
            if (last)
            {
                return (
                    right
                        ? Of((before.Top, top), (before.Top, bottom), (before.Bottom, bottom))
                        : Of((before.Top, top), (before.Bottom, top), (before.Bottom, bottom)),
                    !right
                );
            }
            return (
                Of(
                    (before.Top, top),
                    (after.Item1, top),
                    (after.Item2, bottom),
                    (before.Bottom, bottom)
                ),
                false
            );
        }

        (Polygon, bool) HalfHexagon(int r, int c, bool first, bool last)
        {
            Length half = SixtyDegrees.OverRootThree(patch.Height),
                x = half * (3 * c);
            (Length top, Length bottom) = Edges(r);
            bool up = IsUp(r, c);
            (Length near, Length far) = (half, half * 2);
            (Length upper, Length lower) = up ? (near, far) : (far, near);
            return (
                Of(
                    (first ? x : x - upper, top),
                    (last ? x : x + upper, top),
                    (last ? x : x + lower, bottom),
                    (first ? x : x - lower, bottom)
                ),
                up == last
            );
        }

        (Length Top, Length Bottom) Edges(int r) => (patch.Height * r, patch.Height * (r + 1));

        static Polygon Of(params ReadOnlySpan<(Length X, Length Y)> corners)
        {
            var points = new Point[corners.Length];
            for (int i = 0; i < points.Length; i++)
            {
                points[i] = new Point(corners[i].X, corners[i].Y);
            }
            return new Polygon([.. points]);
        }
    }
}
