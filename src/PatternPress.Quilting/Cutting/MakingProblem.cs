using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Techniques;
using PatternPress.Source;

namespace PatternPress.Quilting.Cutting;

/// <summary>Why a quilt cannot be made as designed. Rules turn it into words.</summary>
/// <param name="Sizes">Keys of the sizes it is found in.</param>
public abstract record MakingProblem(ImmutableArray<string> Sizes)
{
    /// <summary>No technique that the house allows makes a unit.</summary>
    /// <param name="Reasons">Why not, by technique keyword, in order of preference.</param>
    /// <param name="At">The unit's words in the source.</param>
    public sealed record NoTechnique(
        UnitForm Form,
        ImmutableArray<BlockUse> Uses,
        ImmutableArray<(string Technique, string Reason)> Reasons,
        Span At,
        ImmutableArray<string> Sizes
    ) : MakingProblem(Sizes);

    /// <summary>The technique the designer asks for is not known for the kind of unit.</summary>
    /// <param name="Known">Keywords of the techniques that make this kind.</param>
    public sealed record UnknownMethod(
        string Method,
        UnitKind Kind,
        ImmutableArray<string> Known,
        Span At,
        ImmutableArray<string> Sizes
    ) : MakingProblem(Sizes);

    /// <summary>The technique the designer asks for does not make the unit.</summary>
    public sealed record MethodDoesNotFit(
        Technique Technique,
        UnitForm Form,
        ImmutableArray<BlockUse> Uses,
        string Reason,
        Span At,
        ImmutableArray<string> Sizes
    ) : MakingProblem(Sizes);

    /// <summary>A piece cannot be cut from its fabric.</summary>
    public sealed record PieceDoesNotFit(PieceProblem Piece, ImmutableArray<string> Sizes)
        : MakingProblem(Sizes)
    {
        /// <summary>How much is missing, for a piece too wide.</summary>
        public Length By => Piece.By;
    }

    /// <summary>Binding strips as wide as they are long cannot be joined.</summary>
    public sealed record NoBinding(
        string Fabric,
        Length StripWidth,
        Length UsableWidth,
        Span At,
        ImmutableArray<string> Sizes
    ) : MakingProblem(Sizes);

    /// <summary>Backing panels are narrower than what a seam takes.</summary>
    public sealed record NoBacking(
        Length BackingWidth,
        Length JoinLoss,
        ImmutableArray<string> Sizes
    ) : MakingProblem(Sizes);
}
