using System.Collections.Immutable;

namespace PatternPress.Booklet.Words;

/// <summary>What a <see cref="WordFunction"/> answers: a value, or what is wrong with the question.</summary>
public sealed record WordAnswer(object? Value, WordProblem? Problem)
{
    public static implicit operator WordAnswer(string value) => new(value, null);

    public static implicit operator WordAnswer(Sized value) => new(value, null);

    public static implicit operator WordAnswer(WordProblem problem) => new(null, problem);
}

/// <summary>Why a template cannot be filled in.</summary>
/// <param name="Kind">What sort of fault.</param>
/// <param name="Name">The name that is to blame, or the remark of the template language.</param>
/// <param name="Known">The names there are in its place.</param>
public sealed record WordProblem(WordProblemKind Kind, string Name, ImmutableArray<string> Known);

public enum WordProblemKind
{
    /// <summary>The template language cannot read it.</summary>
    Unreadable,

    /// <summary>A name stands for nothing.</summary>
    UnknownName,

    /// <summary>No such fabric.</summary>
    UnknownFabric,

    /// <summary>No such size.</summary>
    UnknownSize,

    /// <summary>No such block, coloring, piece or section.</summary>
    UnknownThing,

    /// <summary>A function was given too few, too many or the wrong kind of values.</summary>
    WrongValues,

    /// <summary>Something a designer's text may not do: loops, assignments, arithmetic.</summary>
    NotAllowed,

    /// <summary>A limit was reached: length, depth, steps.</summary>
    TooMuch,
}
