using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;

namespace PatternPress.Quilting.Techniques;

/// <summary>A unit's shape together with how one region of a block uses it.</summary>
/// <param name="Form">The shape, in canonical orientation, so that the same unit turned is the same form.</param>
/// <param name="Turn">Quarter turns from the canonical orientation to the region.</param>
/// <param name="Parts">The block's part name for each role of the form.</param>
public sealed record DrawnUnit(UnitForm Form, Turn Turn, ImmutableArray<string> Parts);
