using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques;

/// <summary>The side of a piece: exactly, and as it is cut.</summary>
internal readonly record struct CutSize(Length Exactly, Length Cut)
{
    /// <summary>
    /// What sewing loses anyway: a unit that comes out larger by no more than this is joined as it is. Half a mark
    /// of the eighth-inch ruler (common practice, no source: it is why 7/8 and 1 1/4 are used untrimmed).
    /// </summary>
    public static Length Hair { get; } = Length.FromInches(0, 1, 16);

    /// <summary>Whether what is cut is so much larger than exact that the unit must be trimmed.</summary>
    public bool IsGenerous => Cut - Exactly > Hair;

    /// <summary>A side that must come out right: no more than the ruler's next mark.</summary>
    public static CutSize Close(Length exactly, House house) =>
        new(exactly, house.Ruler.Up(exactly));

    /// <summary>A side that trimming corrects: larger where the house cuts oversize.</summary>
    public static CutSize Trimmable(Length exactly, House house) =>
        new(
            exactly,
            house.Ruler.Up(
                house.Cutting == CuttingStyle.Oversize ? exactly + house.Oversize : exactly
            )
        );

    /// <summary>This side as many times, end to end; each part stays on a mark of the ruler.</summary>
    public static CutSize operator *(CutSize size, int times) =>
        new(size.Exactly * times, size.Cut * times);

    public RecipePiece Square(string name, int role, int count, PieceCut cut = PieceCut.None) =>
        new(name, role, Cut, Cut, (Exactly, Exactly), count, cut, false);

    public static RecipePiece Rectangle(
        string name,
        int role,
        int count,
        CutSize width,
        CutSize height
    ) =>
        new(
            name,
            role,
            width.Cut,
            height.Cut,
            (width.Exactly, height.Exactly),
            count,
            PieceCut.None,
            false
        );

    /// <summary>A piece cut around a template: first the rectangle that holds it.</summary>
    public static RecipePiece Around(
        string name,
        int role,
        int count,
        PieceTemplate template,
        House house
    )
    {
        var outline = Cutting.Planning.OutlinePiece.Of(template.Cut, eitherGrain: true);
        return Rectangle(
            name,
            role,
            count,
            Close(outline.Width, house),
            Close(outline.Height, house)
        ) with
        {
            Cut = PieceCut.AroundTemplate,
            Template = template,
        };
    }
}
