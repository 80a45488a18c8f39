using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using PatternPress.Proofing;

namespace PatternPress.Tests.Proofing;

/// <summary>
/// The proof would prove nothing if it reckoned with what it proves. Looks at the compiled project, so that no alias and
/// no inferred type slips through.
/// </summary>
public sealed class VocabularyTests
{
    // Names the tables are written in, and what hangs on them. None of them computes.
    private static readonly HashSet<string> Words =
    [
        "Cutting.BlockPart",
        "Cutting.BlockUse",
        "Cutting.BorderPart",
        "Cutting.CutPurpose",
        "Cutting.FabricUse",
        "Finishing.BackingSeams",
        "Finishing.BattingPackage",
        "Techniques.DrawnUnit",
        "Techniques.Leftover",
        "Techniques.Notch",
        "Techniques.Overlay",
        "Techniques.PieceCut",
        "Techniques.PieceTemplate",
        "Techniques.RolePatch",
        "Techniques.UnitForm",
    ];

    private static readonly string[] Rooms =
    [
        "Measures",
        "Geometry",
        "Model",
        "Resolving",
        "Tables",
    ];

    [Test]
    public void The_proof_knows_tables_and_drawing_and_none_of_the_planner()
    {
        using var file = new PEReader(File.OpenRead(typeof(Proof).Assembly.Location));
        MetadataReader metadata = file.GetMetadataReader();
        var foreign = metadata
            .TypeReferences.Select(metadata.GetTypeReference)
            .Select(type =>
                (Space: metadata.GetString(type.Namespace), Name: metadata.GetString(type.Name))
            )
            .Where(type =>
                type.Space.StartsWith("PatternPress.Quilting.", StringComparison.Ordinal)
            )
            .Select(type => (Room: type.Space["PatternPress.Quilting.".Length..], type.Name))
            .Where(type =>
                !Rooms.Contains(type.Room) && !Words.Contains($"{type.Room}.{type.Name}")
            )
            .Select(type => $"{type.Room}.{type.Name}");
        foreign.ShouldBeEmpty();
    }

    // Of the planner's words, only their parts are read and written.
    [Test]
    public void The_words_of_the_planner_are_used_as_words_alone()
    {
        using var file = new PEReader(File.OpenRead(typeof(Proof).Assembly.Location));
        MetadataReader metadata = file.GetMetadataReader();
        var called = new List<string>();
        foreach (MemberReferenceHandle handle in metadata.MemberReferences)
        {
            MemberReference member = metadata.GetMemberReference(handle);
            if (member.Parent.Kind != HandleKind.TypeReference)
            {
                continue;
            }
            TypeReference type = metadata.GetTypeReference((TypeReferenceHandle)member.Parent);
            string name = metadata.GetString(member.Name);
            string word =
                $"{metadata.GetString(type.Namespace).Replace("PatternPress.Quilting.", "")}.{metadata.GetString(type.Name)}";
            if (
                Words.Contains(word)
                && !name.StartsWith("get_", StringComparison.Ordinal)
                && name is not (".ctor" or "Equals" or "op_Equality" or "GetHashCode" or "ToString")
            )
            {
                called.Add($"{word}.{name}");
            }
        }
        called.ShouldBeEmpty();
    }

    [Test]
    public void The_sources_name_no_other_room()
    {
        string folder = Path.Combine(Repository.Root, "src", "PatternPress.Proofing");
        Directory
            .EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories)
            .Where(path =>
                !path.Contains(
                    $"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}",
                    StringComparison.Ordinal
                )
                && Path.GetFileName(path) != "Vocabulary.cs"
            )
            .SelectMany(path =>
                File.ReadLines(path)
                    .Where(line =>
                        line.Contains("Quilting.Cutting", StringComparison.Ordinal)
                        || line.Contains("Quilting.Finishing", StringComparison.Ordinal)
                        || line.Contains("Quilting.Techniques", StringComparison.Ordinal)
                        || line.Contains("Quilting.Compiling", StringComparison.Ordinal)
                    )
                    .Select(line => $"{Path.GetFileName(path)}: {line.Trim()}")
            )
            .ShouldBeEmpty();
    }
}
