using CsCheck;

namespace PatternPress.Tests.Quilting.Cutting;

/// <summary>Random patterns as source text: every kind of unit, sashing, borders, sizes and house rules.</summary>
internal static class RandomPatterns
{
    // Every kind of unit in a block of a grid that suits it. Parts a, b and c.
    private static readonly string[] Blocks =
    [
        """
            map: |
              s G G s
              E H H W
              E H H W
              s F F s
            units: {s: square a, G: "geese up, b on a", F: "geese down, b on a", E: "geese left, b on a", W: "geese right, b on a", H: "square-in-square, c on b"}
            """,
        """
            map: |
              p q
              r t
            units: {p: "half-square upper-left, a on b", q: "half-square upper-right, a on b", r: "half-square lower-left, b on a", t: "half-square lower-right, a on c"}
            """,
        """
            map: |
              c q d
              u m v
              e w f
            units: {c: square a, d: square a, e: square b, f: rectangle b, m: "nine-patch, a b", q: "quarter-square, a b", w: "quarter-square left, a b", u: "quarter-square, a b c", v: "quarter-square, a b c b"}
            """,
        """
            map: |
              R R P
              R R k
            columns: 1 1 2
            units: {R: "rail upright, a b c", P: "four-patch, a b", k: "corners upper-left lower-right of 1, c on a"}
            """,
        """
            map: |
              u u w
              v x w
            columns: 1 2 2
            units: {u: "half-rectangle upper-left, a on b", v: "half-rectangle upper-right, b on c", w: "half-rectangle lower-left, a on b", x: "half-rectangle lower-right, c on a"}
            """,
        """
            map: |
              T T b
              l l b
            rows: 2 1
            units: {T: "checkerboard 4 x 4, a b", l: rectangle c, b: "rectangle a"}
            """,
        """
            map: X
            units: {X: "eight-point-star, b c on a"}
            """,
        """
            map: |
              Z
              r
              r
            units: {Z: "seminole 6 segments of 1/4, a b on c", r: rectangle b}
            """,
        """
            map: B
            units: {B: "bargello shifts 0 1 2 0, a b c"}
            """,
        """
            map: X
            units: {X: "eight-point-star split, b c on a"}
            """,
        """
            map: |
              L C
              l H
            units: {L: "log-cabin upper-right 2 rounds, a b c", C: "courthouse-steps level 1 round, a b c b c", l: "log-cabin counterclockwise lower-left 1 round, a b c", H: "half-log-cabin 3 rounds, a b c b"}
            """,
    ];

    private static readonly Gen<string> Fabric = Pick("A", "B", "C", "D");

    private static Gen<string> House { get; } =
        from cutting in Pick("exact", "oversize")
        from joins in Pick("straight", "diagonal")
        from apart in Pick("yes", "no")
        from plan in Pick("plain", "plain", "thrifty")
        from squaring in Pick("0", "2")
        from allowance in Pick("0 %", "5 %")
        select $"{{cutting: {cutting}, joins: {joins}, binding-apart: {apart}, plan: {plan}, squaring: {squaring}, allowance: {allowance}}}";

    private static Gen<string> Sashing { get; } =
        from any in Gen.Bool
        from width in Pick("1", "1 1/2", "2")
        from fabric in Fabric
        from corner in Fabric
        from cornerstones in Gen.Bool
        from around in Pick("yes", "no")
        select any
            ? $"sashing: {{width: {width}, fabric: {fabric}, {(cornerstones ? $"cornerstones: {corner}, " : "")}around: {around}}}"
            : "";

    private static Gen<string> Border { get; } =
        from width in Pick("1", "2 1/2", "6")
        from fabric in Fabric
        from corners in Pick("sides-first", "top-first", "squares B")
        select $"{{width: {width}, fabric: {fabric}, corners: {corners}}}";

    private static Gen<string> Size { get; } =
        from columns in Gen.Int[1, 7]
        from rows in Gen.Int[1, 7]
        from block in Pick("6", "9", "12", "18")
        select $"{{blocks: {columns} x {rows}, block: {block}}}";

    // Last, because it is made from the others.
    public static Gen<string> Any { get; } =
        from first in Gen.Int[0, Blocks.Length - 1]
        from second in Gen.Int[0, Blocks.Length - 1]
        from house in House
        from parts in Fabric.Array[9]
        from sashing in Sashing
        from borders in Border.Array[0, 3]
        from sizes in Size.Array[1, 4]
        from plain in Gen.Bool
        from directional in Gen.Bool
        select $$"""
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
            house: {{house}}
            fabrics:
              A: {name: Ink, color: "#15233b", directional: {{(directional ? "yes" : "no")}} }
              B: {name: Amber, color: "#f2a71b"}
              C: {name: Rose, color: "#d1495b", usable-width: 42}
              D: {name: Cream, color: "#f6ead2"}
            blocks:
              one:
                size: 12
            {{Indent(Blocks[first])}}
              two:
                size: 12
            {{Indent(Blocks[second])}}
            colorings:
              K: one a={{parts[0]}} b={{parts[1]}} c={{parts[2]}}
              L: two a={{parts[3]}} b={{parts[4]}} c={{parts[5]}}
              M: two a={{parts[6]}} b={{parts[7]}} c={{parts[8]}}
              P: plain D
            quilt:
              fill: |
                K L/90 M
                {{(plain ? "P" : "L")}} K/180 L
              {{sashing}}
              borders: [{{string.Join(", ", borders)}}]
              binding: C
              backing: D
            sizes:
              {{string.Join("\n  ", sizes.Select((size, i) => $"s{i}: {size}"))}}
            """;

    private static Gen<string> Pick(params string[] options) =>
        Gen.Int[0, options.Length - 1].Select(i => options[i]);

    private static string Indent(string text) =>
        string.Join('\n', text.ReplaceLineEndings("\n").Split('\n').Select(line => "    " + line));
}
