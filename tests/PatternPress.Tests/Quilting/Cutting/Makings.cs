using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques;
using PatternPress.Tests.Quilting.Techniques;

namespace PatternPress.Tests.Quilting.Cutting;

/// <summary>Works out patterns written in tests.</summary>
internal static class Makings
{
    public static Making Of(string yaml) => Of(yaml, new FabricPlanner());

    public static Making Of(string yaml, ICuttingPlanner planner)
    {
        Pattern pattern = Designs.Read(yaml);
        var maker = new Maker(TechniqueCatalog.All, planner);
        return maker.Make(pattern, [.. Designs.Resolve(pattern)]);
    }

    /// <summary>
    /// A quilt whose top measures this much, raw edge to raw edge: what published figures for backing, batting and binding
    /// start from. The finished quilt is a seam of 1/4 in smaller on every side.
    /// </summary>
    public static SizeMaking Top(
        string width,
        string height,
        string house = "",
        string quilt = "",
        string fabric = "",
        string binding = "B"
    ) => Plain(Finished(width), Finished(height), house, quilt, fabric, binding);

    private static string Finished(string top) =>
        LengthText.Mixed((Written.Inches(top) - Written.Inches("1/2")).Inches.One);

    /// <summary>A quilt of one plain piece: only its finished size matters. Published counts are those of the whole width.</summary>
    public static SizeMaking Plain(
        string width,
        string height,
        string house = "",
        string quilt = "",
        string fabric = "",
        string binding = "B"
    )
    {
        Making making = Of(
            $$"""
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
            house: {usable-width: 40, end-squaring: 0, {{house}} }
            fabrics:
              A: {name: Ink, color: "#15233b"}
              B: {name: Amber, color: "#f2a71b"}
              {{fabric}}
            blocks:
              whole:
                size: {{width}} x {{height}}
                map: s
                units: {s: rectangle a}
            colorings: {W: whole a=A}
            quilt: {fill: W, binding: {{binding}}, {{quilt}} }
            sizes: {only: {blocks: 1 x 1} }
            """
        );
        return making.Sizes.Single();
    }
}
