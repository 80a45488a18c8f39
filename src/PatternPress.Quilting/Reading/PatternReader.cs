using System.Collections.Immutable;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Pictures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Shapes;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>Reads the tree of a source file as a pattern. Finds as many faults as it can in one go.</summary>
public static class PatternReader
{
    /// <param name="id">The pattern's short name, from its file name.</param>
    /// <param name="tree">The pattern's file.</param>
    /// <param name="house">House defaults; null for the built-in ones.</param>
    /// <param name="pictures">The pictures beside the file; null to look at none.</param>
    /// <param name="findings">Everything found wrong is added, the tree's own findings included.</param>
    /// <returns>The pattern, or null where errors were found.</returns>
    public static Pattern? Read(
        string id,
        SyntaxTree tree,
        SyntaxTree? house,
        DiagnosticList findings,
        IPictureFiles? pictures = null
    )
    {
        Pattern? pattern = ReadDespiteErrors(id, tree, house, findings, pictures);
        return findings.HasErrors ? null : pattern;
    }

    /// <summary>
    /// The parts that could be read, errors or not: good for finding more errors in one go, and for nothing else. Null
    /// where too little is left.
    /// </summary>
    internal static Pattern? ReadDespiteErrors(
        string id,
        SyntaxTree tree,
        SyntaxTree? house,
        DiagnosticList findings,
        IPictureFiles? pictures = null
    )
    {
        findings.AddRange(tree.Diagnostics);
        MapShape shape = PatternShape.Of(SourceVocabulary.Words);
        findings.AddRange(ShapeChecker.Check(tree, shape));
        var sections = tree.Root as MapNode;
        var context = new ReadContext(findings)
        {
            // What stands under a misspelt section is not known to be missing.
            IsComplete =
                tree.IsComplete
                && sections?.Entries.All(e => shape.Find(e.Key.Value) is not null) != false,
            Pictures = pictures ?? NoPictureFiles.Instance,
            Named = (
                Names(sections, "fabrics"),
                Names(sections, "blocks"),
                Names(sections, "colorings")
            ),
        };
        House defaults = House.Default;
        if (house is not null)
        {
            findings.AddRange(house.Diagnostics);
            findings.AddRange(ShapeChecker.Check(house, PatternShape.House()));
            defaults = HouseReader.Read(house.Root as MapNode, defaults, context);
        }
        if (sections is not { } root)
        {
            return null;
        }
        House own = HouseReader.Read(ReadContext.Map(root, "house"), defaults, context);
        context.Unit = own.Unit;
        PatternInfo? info = InfoReader.Read(ReadContext.Map(root, "pattern"), context);
        ImmutableArray<Fabric> fabrics = FabricReader.Read(
            ReadContext.Map(root, "fabrics"),
            context
        );
        context.Fabrics = fabrics.ToImmutableDictionary(f => f.Key, StringComparer.Ordinal);
        context.FoundationNames = Names(root, "foundations");
        context.Foundations = FoundationReader.Read(ReadContext.Map(root, "foundations"), context);
        context.AppliqueNames = Names(root, "appliques");
        context.Appliques = AppliqueReader.Read(ReadContext.Map(root, "appliques"), context);
        ImmutableArray<BlockDesign> blocks = BlockReader.Read(
            ReadContext.Map(root, "blocks"),
            context
        );
        ImmutableArray<Coloring> colorings = ColoringReader.Read(
            ReadContext.Map(root, "colorings"),
            ReadContext.Map(root, "blocks"),
            blocks,
            context
        );
        var methods = MethodReader.Read(ReadContext.Map(root, "methods"), blocks, context);
        ImmutableArray<SizeDesign> sizes = SizeReader.Read(
            ReadContext.Map(root, "sizes"),
            ReadContext.Map(root, "quilt"),
            own,
            blocks,
            colorings,
            context
        );
        return info is null || sizes.IsEmpty || fabrics.IsEmpty
            ? null
            : new Pattern(
                id,
                tree.Source.File,
                info,
                own,
                fabrics,
                blocks,
                colorings,
                methods,
                sizes
            )
            {
                Suits = PromiseReader.Read(ReadContext.Map(root, "pattern")?["suits"], context),
                Scraps = ReadContext.Flag(
                    ReadContext.Map(root, "pattern"),
                    "scraps",
                    otherwise: false
                ),
            };
    }

    private static ImmutableHashSet<string> Names(MapNode? sections, string section) =>
        ReadContext
            .Map(sections, section)
            ?.Entries.Select(entry => entry.Key.Value)
            .ToImmutableHashSet(StringComparer.Ordinal)
        ?? [];
}
