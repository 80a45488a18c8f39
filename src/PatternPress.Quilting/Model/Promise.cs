using System.Collections.Immutable;
using PatternPress.Source;

namespace PatternPress.Quilting.Model;

/// <summary>What a pattern promises: that fabrics it lists by the yard can be cut from panels just as well.</summary>
/// <param name="Panel">What they can be cut from: fat quarters.</param>
/// <param name="Fabrics">Which fabrics; none for all of the quilt top.</param>
public sealed record Promise(Panel Panel, ImmutableArray<Sourced<string>> Fabrics, Span Span)
{
    /// <summary>Whether the promise is made of a fabric. One that is bought in panels anyway needs none.</summary>
    public bool Includes(Fabric fabric)
    {
        if (fabric.Panel is not null)
        {
            return false;
        }
        foreach (Sourced<string> named in Fabrics)
        {
            if (named.Value == fabric.Key)
            {
                return true;
            }
        }
        return Fabrics.IsEmpty;
    }
}
