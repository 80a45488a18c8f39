using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Reading;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;

namespace PatternPress.Tests.Quilting.Reading;

public sealed class PatternReaderTests
{
    private static IEnumerable<string> OwnPatterns() =>
        Directory
            .EnumerateFiles(Repository.Patterns, "*.quilt.yaml")
            .Select(f => Path.GetFileName(f)!)
            .Order(StringComparer.Ordinal);

    [TestCaseSource(nameof(OwnPatterns))]
    public void Every_pattern_of_the_repository_reads_without_a_finding(string file)
    {
        var findings = new DiagnosticList();
        byte[] bytes = File.ReadAllBytes(Path.Combine(Repository.Patterns, file));
        Pattern? pattern = PatternReader.Read(file, SyntaxTree.Read(file, bytes), null, findings);
        findings.ToImmutable().Select(Designs.Show).ShouldBeEmpty();
        pattern.ShouldNotBeNull();
    }

    [Test]
    public void A_block_knows_its_regions_row_by_row()
    {
        Pattern pattern = Designs.Read(Designs.Star("fill: S1", "one: {blocks: 1 x 1}"));
        BlockDesign star = pattern.Blocks.Single();
        star.Units.Select(u => $"{u.Design.Letter} {u.Column},{u.Row} {u.Columns}x{u.Rows}")
            .ShouldBe([
                "s 0,0 1x1",
                "G 1,0 2x1",
                "s 3,0 1x1",
                "E 0,1 1x2",
                "H 1,1 2x2",
                "W 3,1 1x2",
                "s 0,3 1x1",
                "F 1,3 2x1",
                "s 3,3 1x1",
            ]);
        star.Parts.Select(p => p.Value).ShouldBe(["sky", "ray", "heart"], ignoreOrder: true);
    }

    [Test]
    public void Each_cuts_touching_cells_into_units_of_their_own()
    {
        Pattern pattern = Designs.Read(
            """
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
            fabrics:
              A: {name: Night, color: "#15233b"}
              B: {name: Amber, color: "#f2a71b"}
            blocks:
              field:
                size: 8 x 4
                map: |
                  h h g g
                  h h g g
                units:
                  h: each half-square upper-left, a on b
                  g: each 2 x 1 geese up, a on b
            colorings: {F: field a=A b=B}
            quilt: {fill: F}
            sizes: {one: {blocks: 1 x 1}}
            """
        );
        pattern
            .Blocks.Single()
            .Units.Select(u => $"{u.Design.Letter} {u.Column},{u.Row} {u.Columns}x{u.Rows}")
            .ShouldBe([
                "h 0,0 1x1",
                "h 1,0 1x1",
                "g 2,0 2x1",
                "h 0,1 1x1",
                "h 1,1 1x1",
                "g 2,1 2x1",
            ]);
    }

    [Test]
    public void A_size_changes_what_it_names_and_keeps_the_rest()
    {
        Pattern pattern = Designs.Read(
            Designs.Star(
                """
                sashing: {width: 2, fabric: A, cornerstones: B}
                fill: S1
                borders: [{width: 3, fabric: B}]
                binding: C
                """,
                """
                plain: {blocks: 2 x 2}
                other: {blocks: 2 x 2, block: 6, change: {sashing: {width: 1 1/2}, borders: [{width: 1, fabric: C}, {width: 2, fabric: D, corners: squares A}], house: {seam: 3/8}}}
                """
            )
        );
        SizeDesign plain = pattern.Sizes[0],
            other = pattern.Sizes[1];
        plain.Quilt.Sashing!.Width.ShouldBe(Length.FromInches(2));
        plain.House.Seam.ShouldBe(Length.FromInches(0, 1, 4));
        other.Quilt.Sashing!.Width.ShouldBe(Length.FromInches(1, 1, 2));
        other.Quilt.Sashing.Fabric.Value.ShouldBe("A");
        other.Quilt.Sashing.Cornerstones!.Value.Value.ShouldBe("B");
        other.Quilt.Borders.Select(b => b.Fabric!.Value.Value).ShouldBe(["C", "D"]);
        other.Quilt.Borders[1].Corners.ShouldBe(BorderCorners.Squares);
        other.Quilt.Borders[1].CornerFabric!.Value.Value.ShouldBe("A");
        other.Quilt.Binding!.Fabric.Value.ShouldBe("C");
        other.House.Seam.ShouldBe(Length.FromInches(0, 3, 8));
        other.BlockSize.ShouldBe(Length.FromInches(6));
    }

    [Test]
    public void All_errors_of_a_file_come_at_once_each_with_its_place()
    {
        string yaml = Designs
            .Star(
                "fill: S1 S9\nborders: [{width: 0, fabric: Q}]\nbinding: B",
                "one: {blocks: 2 by 2}"
            )
            .Replace("ray=B heart=C", "ray=B hart=C", StringComparison.Ordinal)
            .Replace("geese up", "gese up", StringComparison.Ordinal);
        IReadOnlyList<Diagnostic> findings = Designs.TryRead(yaml).Findings;
        findings
            .Select(f => f.Code)
            .Order(StringComparer.Ordinal)
            .ShouldBe(["PP0205", "PP0210", "PP0211", "PP0212", "PP0213", "PP0216", "PP0219"]);
        findings.ShouldAllBe(f => f.Primary.Span.StartLine > 0);
        Diagnostic unit = findings.Single(f => f.Code == "PP0205");
        string line = yaml.Split('\n')[unit.Primary.Span.StartLine - 1];
        line[(unit.Primary.Span.StartColumn - 1)..(unit.Primary.Span.EndColumn - 1)]
            .ShouldBe("gese");
    }
}
