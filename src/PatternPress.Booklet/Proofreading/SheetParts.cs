using System.Collections.Immutable;
using System.Globalization;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Editions;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Tables;

namespace PatternPress.Booklet.Proofreading;

/// <summary>What stands on a proof sheet, in order: verdict, changes, findings, then every size line by line.</summary>
internal static class SheetParts
{
    public static IEnumerable<SheetPart> Of(ProofNotes notes, PrintedTables tables, Labels labels)
    {
        yield return new SheetPart(labels["proof-verdict"], 1, "", Verdict(notes, tables, labels));
        yield return Changes(notes, labels);
        yield return new SheetPart(
            labels["proof-findings"],
            1,
            notes.Findings.IsEmpty ? labels["proof-no-findings"] : "",
            notes.Findings.IsEmpty
                ? null
                : new SheetTable(
                    [labels["proof-code"], labels["proof-severity"], labels["proof-finding"]],
                    [
                        .. notes.Findings.Select(f =>
                            ImmutableArray.Create(f.Code, f.Severity, f.Text)
                        ),
                    ],
                    Ticked: true
                )
        );
        for (int i = 0; i < tables.Sizes.Length; i++)
        {
            foreach (SheetPart part in Size(notes, tables, i, labels))
            {
                yield return part;
            }
        }
        yield return new SheetPart(
            labels["proof-fingerprints"],
            1,
            labels["proof-fingerprints-why"],
            new SheetTable(
                [labels["proof-file"], "SHA-256"],
                [.. notes.Fingerprints.Select(f => ImmutableArray.Create(f.Name, f.Digest))],
                Ticked: false
            )
        );
    }

    private static SheetTable Verdict(ProofNotes notes, PrintedTables tables, Labels labels) =>
        new(
            [labels["proof-size"], labels["proof-result"], labels["proof-compared"]],
            [
                .. notes.Sizes.Select(
                    (size, i) =>
                        ImmutableArray.Create(
                            tables.Sizes[i].Name,
                            ResultOf(size, labels),
                            size.Checked.ToString("N0", CultureInfo.InvariantCulture)
                        )
                ),
            ],
            Ticked: false
        );

    private static string ResultOf(SizeNotes size, Labels labels)
    {
        string result = labels[size.Holds ? "proof-proved" : "proof-refuted"];
        string mistakes = string.Join("; ", size.Mistakes);
        return mistakes.Length == 0 ? result
            : size.Holds ? labels.Format("proof-excess", result, mistakes)
            : $"{result}: {mistakes}";
    }

    private static SheetPart Changes(ProofNotes notes, Labels labels)
    {
        if (notes.Since is not { } since)
        {
            return new SheetPart(labels["proof-changes"], 1, labels["proof-first-edition"], null);
        }
        string edition = since.Old.Number;
        if (since.Changes.IsEmpty)
        {
            return new SheetPart(
                labels["proof-changes"],
                1,
                labels.Format("proof-no-changes", edition),
                null
            );
        }
        return new SheetPart(
            labels["proof-changes"],
            1,
            labels.Format("proof-changed", since.Changes.Length, edition),
            new SheetTable(
                [
                    labels["proof-size"],
                    labels["proof-where"],
                    labels.Format("edition", edition),
                    labels["proof-now"],
                    labels["proof-effect"],
                ],
                [
                    .. since.Changes.Select(change =>
                        ImmutableArray.Create(
                            change.Size.Length == 0 ? labels["erratum-all-sizes"] : change.Size,
                            $"{change.Table}, {change.Row}: {change.Item}",
                            change.Old ?? labels["none"],
                            change.New ?? labels["none"],
                            labels[
                                change.Effect switch
                                {
                                    ChangeEffect.Hurts => "proof-hurts",
                                    ChangeEffect.Spends => "proof-spends",
                                    ChangeEffect.Alters => "proof-alters",
                                    _ => "proof-harmless",
                                }
                            ]
                        )
                    ),
                ],
                Ticked: true
            )
        );
    }

    private static IEnumerable<SheetPart> Size(
        ProofNotes notes,
        PrintedTables tables,
        int index,
        Labels labels
    )
    {
        Making making = notes.Making;
        SizeMaking size = making.Sizes[index];
        LengthUnit unit = tables.Unit;
        var numbers = new NumberWords(unit, labels);
        SizeColumn column = tables.Sizes[index];
        List<Derivation> all = [.. Derivations.Of(making, size)];
        yield return new SheetPart(
            labels.Format("size-measuring", column.Name, numbers.Size(column.Width, column.Height)),
            1,
            labels.Format("proof-width", numbers.Measure(size.Quilt.House.UsableWidth)),
            null
        )
        {
            IsWhole = false,
        };
        yield return Lines(
            labels["proof-buy"],
            all.Where(d =>
                IsOf(d, "fabric ")
                || IsOf(d, "total ")
                || d.Of is "binding" or "backing" or "batting"
            )
        );
        if (all.Exists(d => IsOf(d, "border ")))
        {
            yield return Lines(labels["proof-coping"], all.Where(d => IsOf(d, "border ")));
        }
        yield return Lines(labels["proof-make"], all.Where(d => IsOf(d, "unit ")));
        yield return Lines(
            labels["proof-cut"],
            all.Where(d => IsOf(d, "cut ") || IsOf(d, "joined ") || d.Of is "binding strips")
        );
        yield return new SheetPart(
            labels["proof-totals"],
            2,
            "",
            new SheetTable(
                [labels["proof-what"], labels["proof-printed"]],
                [
                    .. Totals(size, column, numbers, labels),
                    .. notes
                        .Sizes[index]
                        .Left.Select(left =>
                            ImmutableArray.Create(
                                labels.Format("proof-left", left.What),
                                left.HowMuch
                            )
                        ),
                ],
                Ticked: false
            )
        );

        SheetPart Lines(string heading, IEnumerable<Derivation> derivations) =>
            new(
                heading,
                2,
                "",
                new SheetTable(
                    [labels["proof-what"], labels["proof-printed"], labels["proof-how"]],
                    [
                        .. derivations.Select(d =>
                            ImmutableArray.Create(
                                Named(d.Of),
                                DerivationText.Result(d, unit),
                                DerivationText.Line(d, unit)
                            )
                        ),
                    ],
                    Ticked: true
                )
            );

        string Named(string of) =>
            tables.Fabrics.FirstOrDefault(f => of == $"fabric {f.Key}" || of == $"total {f.Key}")
                is { } fabric
                ? $"{of}, {fabric.Name}"
                : of;
    }

    private static bool IsOf(Derivation derivation, string kind) =>
        derivation.Of.StartsWith(kind, StringComparison.Ordinal);

    private static IEnumerable<ImmutableArray<string>> Totals(
        SizeMaking size,
        SizeColumn column,
        NumberWords numbers,
        Labels labels
    )
    {
        Length bought = size.Fabrics.Aggregate(
            Length.Zero,
            (sum, plan) => sum + plan.Yardage.ToBuy
        );
        yield return Row("proof-total-fabric", numbers.Yards(new Yardage(bought, bought)));
        yield return Row(
            "proof-total-strips",
            Count(size.Fabrics.SelectMany(plan => plan.Strips).Sum(strip => strip.Count))
        );
        yield return Row("proof-total-pieces", Count(size.Cuts.Sum(cut => cut.Count)));
        yield return Row("proof-total-units", Count(size.Units.Sum(batch => batch.Made)));
        yield return Row("proof-total-blocks", Count(column.Blocks));

        ImmutableArray<string> Row(string label, string value) => [labels[label], value];
        static string Count(long count) => count.ToString(CultureInfo.InvariantCulture);
    }
}
