using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;

namespace PatternPress.Booklet.Sections;

/// <summary>What the texts about a unit and its steps may use.</summary>
internal sealed class UnitWords
{
    private readonly UnitTable unit;
    private readonly SectionContext context;

    public UnitWords(UnitTable unit, SectionContext context)
    {
        this.unit = unit;
        this.context = context;
        UnitCell? first = FirstCells.FirstOrDefault();
        int roles = Roles;
        ImmutableArray<string> fabric = [.. Enumerable.Range(0, roles).Select(FabricOf)];
        Data = WordData
            .Empty.With("unit", UnitData())
            .With("piece", Pieces())
            .With("measure", Measures())
            .With("fabric", fabric)
            .With("numbered", Enumerable.Range(0, roles).Any(IsNumbered))
            .With("figure", fabric.IsEmpty ? "" : fabric[0])
            .With("ground", fabric.IsEmpty ? "" : fabric[^1])
            .With("fabrics", unit.Rows.Length)
            .With("yield", first?.Yield ?? 1)
            .With(
                "pressing",
                context.Pattern.House.Pressing switch
                {
                    PressingStyle.Open => "open",
                    PressingStyle.Nested => "nested",
                    _ => "side",
                }
            )
            .With("trim", FirstCells.Any(c => c.Trim))
            .With("measured", IsMeasured)
            .With("leftovers", Leftovers())
            .With("sets", Sets())
            .With("rounds", Rounds());
    }

    /// <summary>
    /// Which fabrics the unit's words mean in one combination, "fabric one: B, fabric two: D"; null where they call all of
    /// them by name.
    /// </summary>
    public string? Legend(UnitRow row)
    {
        spoken ??= context.Words($"techniques/{unit.Technique}", Data);
        List<string> meant = [];
        for (int role = 0; role < row.Fabrics.Length; role++)
        {
            if (IsNumbered(role) && spoken.Contains(NumberedRole(role), StringComparison.Ordinal))
            {
                meant.Add(
                    context.Labels.Format("role-letter", NumberedRole(role), row.Fabrics[role])
                );
            }
        }
        return meant.Count == 0 ? null : string.Join(", ", meant);
    }

    private string? spoken;

    /// <summary>"fabric one": in words, since a number would look like a part of a fabric's letter. Of two fabrics of which
    /// only one differs it is "the other fabric".</summary>
    private string NumberedRole(int role)
    {
        if (Roles == 2 && !Enumerable.Range(0, Roles).All(Differs))
        {
            return context.Labels["role-other"];
        }
        string[] names = context.Labels["role-fabrics"].Split(',', StringSplitOptions.TrimEntries);
        return role < names.Length ? names[role] : context.Labels.Format("role-fabric", role + 1);
    }

    public WordData Data { get; }

    /// <summary>Whether the sizes of pieces differ by the size of quilt and stand in a table of their own.</summary>
    public bool IsMeasured =>
        unit.Rows.SelectMany(r => r.BySize)
            .Where(c => c is not null)
            .Select(c =>
                string.Join(
                    "|",
                    c!.Pieces.Select(p => $"{p.Name} {context.Numbers.Size(p.Width, p.Height)}")
                )
            )
            .Distinct()
            .Count() > 1;

    private IEnumerable<UnitCell> FirstCells =>
        context.Sizes.Select((_, i) => CellOf(i)).Where(c => c is not null).Select(c => c!);

    /// <summary>A size's cell; the sizes of pieces are alike in all combinations of fabrics.</summary>
    private UnitCell? CellOf(int size) =>
        unit.Rows.Select(r => r.BySize[size]).FirstOrDefault(c => c is not null);

    /// <summary>A measure or piece as a diagram prints it; null where it differs by the size of quilt.</summary>
    public string? MeasureLabel(string name)
    {
        UnitPiece? piece = FirstCells.SelectMany(c => c.Pieces).FirstOrDefault(p => p.Name == name);
        Sized value = piece is not null
            ? SizedPiece(name, SizeOf)
            : Sized(c =>
                c.Measures.FirstOrDefault(m => m.Name == name) is { } measure
                    ? context.Numbers.Measure(measure.Value)
                    : null
            );
        return value.One
            ?? (name == "seam" ? context.Numbers.Measure(context.Sizes[0].Seam) : null);
    }

    private WordData UnitData()
    {
        NumberWords numbers = context.Numbers;
        return WordData
            .Empty.With("number", unit.Number)
            .With("name", MarkdownText.Escape(unit.KindName))
            .With("technique", MarkdownText.Escape(unit.TechniqueName))
            .With("yield", FirstCells.FirstOrDefault()?.Yield ?? 1)
            .With("trim", FirstCells.Any(c => c.Trim))
            .With("variant", FirstCells.FirstOrDefault()?.Variant ?? "")
            .With("unfinished", Sized(c => numbers.Square(c.UnfinishedWidth, c.UnfinishedHeight)))
            .With("finished", Sized(c => numbers.Square(c.FinishedWidth, c.FinishedHeight)))
            .With("width", Sized(c => numbers.Measure(c.UnfinishedWidth)))
            .With("height", Sized(c => numbers.Measure(c.UnfinishedHeight)));
    }

    private WordData Pieces()
    {
        WordData pieces = WordData.Empty;
        foreach (string name in FirstCells.SelectMany(c => c.Pieces).Select(p => p.Name).Distinct())
        {
            UnitPiece first = FirstCells.SelectMany(c => c.Pieces).First(p => p.Name == name);
            pieces = pieces.With(
                name,
                WordData
                    .Empty.With("name", name)
                    .With("count", CountOf(name))
                    .With("size", SizedPiece(name, SizeOf))
                    .With("each", SizedPiece(name, p => $"{p.InStrip}"))
                    .With("fabric", FabricOf(first.Role))
            );
        }
        return pieces;
    }

    /// <summary>"3 7/8 in" for a square or a strip, else both sides.</summary>
    private string SizeOf(UnitPiece piece) =>
        piece.WholeStrip || piece.Width == piece.Height
            ? context.Numbers.Measure(piece.Height)
            : context.Numbers.Size(piece.Width, piece.Height);

    private int CountOf(string piece) =>
        FirstCells.First().Pieces.Where(p => p.Name == piece).Sum(p => p.Count);

    private WordData Measures()
    {
        WordData measures = WordData.Empty;
        foreach (
            string name in FirstCells.SelectMany(c => c.Measures).Select(m => m.Name).Distinct()
        )
        {
            measures = measures.With(
                name,
                Sized(c =>
                    c.Measures.FirstOrDefault(m => m.Name == name) is { } measure
                        ? context.Numbers.Measure(measure.Value)
                        : null
                )
            );
        }
        return measures;
    }

    /// <summary>The most fabrics that one role may have and still be named in running text.</summary>
    private const int MostNames = 2;

    private ImmutableArray<string> KeysOf(int role) =>
        [.. unit.Rows.Select(r => r.Fabrics[Math.Min(role, r.Fabrics.Length - 1)]).Distinct()];

    private int Roles => unit.Rows.Select(r => r.Fabrics.Length).DefaultIfEmpty(0).Max();

    private bool Differs(int role) => KeysOf(role).Length > 1;

    /// <summary>Two letters tell what is meant only where they are all that differs: with "B or A" and "D or B" it must be said
    /// which goes with which.</summary>
    private bool IsNumbered(int role) =>
        KeysOf(role).Length > MostNames
        || (Differs(role) && Enumerable.Range(0, Roles).Count(Differs) > 1);

    /// <summary>"Ink (A)"; "B or C" where the unit comes in two; "fabric one" where it comes in more.</summary>
    private string FabricOf(int role)
    {
        ImmutableArray<string> keys = KeysOf(role);
        return keys.Length == 1
                ? context.Labels.Format(
                    "fabric-short",
                    MarkdownText.Escape(context.Fabric(keys[0])?.Name ?? ""),
                    MarkdownText.Escape(keys[0])
                )
            : IsNumbered(role) ? NumberedRole(role)
            : string.Join($" {context.Labels["or"]} ", keys.Select(MarkdownText.Escape));
    }

    private ImmutableArray<WordData> Leftovers() =>
        [
            .. (FirstCells.FirstOrDefault()?.Leftovers ?? []).Select(l =>
                WordData
                    .Empty.With("name", l.Name)
                    .With("count", l.Count)
                    .With(
                        "size",
                        Sized(c =>
                            c.Leftovers.FirstOrDefault(o => o.Name == l.Name) is { } other
                                ? context.Numbers.Square(other.Width, other.Height)
                                : null
                        )
                    )
            ),
        ];

    /// <summary>The strip sets of every combination of fabrics.</summary>
    private ImmutableArray<WordData> Sets()
    {
        var sets = ImmutableArray.CreateBuilder<WordData>();
        foreach (UnitRow row in unit.Rows)
        {
            int count = row.BySize.Max(c => c?.StripSets.Length ?? 0);
            for (int i = 0; i < count; i++)
            {
                int set = i;
                ImmutableArray<int> roles = row
                    .BySize.First(c => c is not null && c.StripSets.Length > set)!
                    .StripSets[set]
                    .Roles;
                sets.Add(
                    WordData
                        .Empty.With(
                            "one",
                            row.BySize.All(cell =>
                                cell is null
                                || cell.StripSets.Length <= set
                                || cell.StripSets[set].Sets == 1
                            )
                        )
                        .With(
                            "count",
                            context.Sized(size =>
                                row.BySize[size] is { } cell && cell.StripSets.Length > set
                                    ? $"{cell.StripSets[set].Sets}"
                                    : null
                            )
                        )
                        .With(
                            "each",
                            context.Sized(size =>
                                row.BySize[size] is { } cell && cell.StripSets.Length > set
                                    ? $"{cell.StripSets[set].SegmentsPerSet}"
                                    : null
                            )
                        )
                        .With(
                            "fabrics",
                            string.Join(
                                ", ",
                                roles.Select(r =>
                                    context.Labels.Format(
                                        "fabric-short",
                                        MarkdownText.Escape(
                                            context.Fabric(row.Fabrics[r])?.Name ?? ""
                                        ),
                                        MarkdownText.Escape(row.Fabrics[r])
                                    )
                                )
                            )
                        )
                );
            }
        }
        return sets.ToImmutable();
    }

    /// <summary>What a unit that grows in rounds measures after each of them.</summary>
    private ImmutableArray<WordData> Rounds()
    {
        var rounds = ImmutableArray.CreateBuilder<WordData>();
        while (
            FirstCells.Any(c => Size(c, rounds.Count + 1) is not null) && rounds.Count < MostRounds
        )
        {
            int round = rounds.Count + 1;
            rounds.Add(
                WordData.Empty.With("number", round).With("size", Sized(c => Size(c, round)))
            );
        }
        return rounds.ToImmutable();

        string? Size(UnitCell cell, int round) =>
            cell.Measures.FirstOrDefault(m => m.Name == $"round-{round}-width") is { } width
            && cell.Measures.FirstOrDefault(m => m.Name == $"round-{round}-height") is { } height
                ? context.Numbers.Square(width.Value, height.Value)
                : null;
    }

    private const int MostRounds = 99;

    private Sized Sized(Func<UnitCell, string?> value) =>
        context.Sized(i => CellOf(i) is { } cell ? value(cell) : null);

    private Sized SizedPiece(string name, Func<UnitPiece, string> value) =>
        Sized(c => c.Pieces.FirstOrDefault(p => p.Name == name) is { } piece ? value(piece) : null);
}
