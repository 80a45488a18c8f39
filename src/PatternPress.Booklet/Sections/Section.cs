using System.Collections.Immutable;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>
/// A part of a document: its words come from the template of its name, its tables and figures from the pattern.
/// </summary>
public abstract class Section
{
    /// <summary>Its name in <c>templates/documents.yaml</c>, and of its template.</summary>
    public abstract string Name { get; }

    /// <summary>Whether it speaks about all other sections and therefore is built last.</summary>
    public virtual bool ComesLast => false;

    /// <summary>Whether it has anything to say about a pattern; decides about documents that are made only where needed.</summary>
    public virtual bool HasSomethingToSay(PrintedTables tables) => true;

    /// <summary>The section's blocks; none where it has nothing to say in this pattern.</summary>
    public abstract ImmutableArray<Block> Build(SectionContext context);
}
