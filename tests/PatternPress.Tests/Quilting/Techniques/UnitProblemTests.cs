using NUnit.Framework;
using PatternPress.Quilting.Techniques;
using Shouldly;

namespace PatternPress.Tests.Quilting.Techniques;

/// <summary>What a designer reads when a unit cannot be drawn: source and message together.</summary>
public class UnitProblemTests
{
    [TestCase(
        "geese up, ray on sky",
        "3",
        "2",
        "flying geese that point up need a region twice as wide as it is high",
        "region G is 3 × 2 in (width × height, finished)",
        "make the region 2 × 1 equal cells of the map"
    )]
    [TestCase(
        "geese up, ray on sky",
        "2",
        "4",
        "flying geese that point up need a region twice as wide as it is high",
        "region G is 2 × 4 in (width × height, finished)",
        "should they point left or right?"
    )]
    [TestCase(
        "geese left, ray on sky",
        "5 cm",
        "5 cm",
        "flying geese that point left need a region twice as high as it is wide",
        "region G is 5 × 5 cm (width × height, finished)",
        "make the region 1 × 2 equal cells of the map"
    )]
    [TestCase(
        "square core",
        "3",
        "2 1/2",
        "a plain square needs a region as wide as it is high",
        "region G is 3 × 2 1/2 in (width × height, finished)",
        "write rectangle core, or change the map"
    )]
    [TestCase(
        "half-square upper-left, ray on sky",
        "3",
        "2",
        "half-square triangles need a region as wide as it is high",
        "region G is 3 × 2 in (width × height, finished)",
        "make the region square in the map or the grid"
    )]
    [TestCase(
        "corners upper-left upper-right of 2 1/2, ray on sky",
        "4",
        "4",
        "flipped corners overlap",
        "corners of 2 1/2 in in region G, which is 4 × 4 in (width × height, finished)",
        "make them 2 in at most"
    )]
    [TestCase(
        "corners upper-left lower-right of 4, ray on sky",
        "4",
        "4",
        "flipped corners leave nothing between them",
        "corners of 4 in in region G, which is 4 × 4 in (width × height, finished)",
        "make them smaller than 4 in"
    )]
    [TestCase(
        "corners upper-left of 5, ray on sky",
        "6",
        "4",
        "flipped corners are larger than their region",
        "corners of 5 in in region G, which is 6 × 4 in (width × height, finished)",
        "make them 4 in at most"
    )]
    [TestCase(
        "log-cabin 3 rounds center 2 logs 1 1/2, a b c",
        "12",
        "12",
        "center and logs do not fill the region",
        "region G is 12 × 12 in (width × height, finished)",
        "a center of 2 in and 3 rounds of logs make 11 × 11 in: with these logs the center is 3 in, with this center the logs are 1 2/3 in"
    )]
    [TestCase(
        "half-log-cabin 4 rounds logs 3, a b c",
        "12",
        "12",
        "the logs leave no room for a center",
        "region G is 12 × 12 in (width × height, finished)",
        "4 rounds of logs take 12 × 12 in; write fewer rounds or narrower logs"
    )]
    [TestCase(
        "courthouse-steps 2 rounds, a b c",
        "12",
        "10",
        "a courthouse steps unit that is not square needs the width of its logs",
        "region G is 12 × 10 in (width × height, finished)",
        "write courthouse-steps 2 rounds logs 1, and the center is what is left"
    )]
    [TestCase(
        "log-cabin center 3 logs 2, a b c",
        "12",
        "12",
        "no whole number of rounds fills the region",
        "region G is 12 × 12 in (width × height, finished)",
        "each round adds 4 in to a center of 3 in: 2 make 11 in, 3 make 15 in; change center or logs"
    )]
    [TestCase(
        "log-cabin 2 rounds center 12, a b c",
        "12",
        "12",
        "the center leaves no room for logs",
        "region G is 12 × 12 in (width × height, finished)",
        "the center is 12 in; make it smaller than 12 in"
    )]
    public void Regions(
        string unit,
        string width,
        string height,
        string title,
        string text,
        string hint
    )
    {
        UnitProblem problem = Written.Problem(unit, width, height);
        problem.Kind.ShouldBe(UnitProblemKind.Region);
        (problem.Title, problem.Text, problem.Hint).ShouldBe((title, text, hint));
    }

    [TestCase(
        "geese, ray on sky",
        "a flying geese unit needs one place word: up, right, down or left",
        "None is written.",
        "write it like this: geese up, ray on sky",
        "geese"
    )]
    [TestCase(
        "geese dwn, ray on sky",
        "a flying geese unit needs one place word: up, right, down or left",
        "\"dwn\" is none of these.",
        "did you mean down?",
        "dwn"
    )]
    [TestCase(
        "geese up down, ray on sky",
        "a flying geese unit needs one place word: up, right, down or left",
        "2 are written: up, down.",
        "write it like this: geese up, ray on sky",
        "down"
    )]
    [TestCase(
        "geese up, ray",
        "a flying geese unit has 2 parts, the goose and its sky",
        "1 is written: ray.",
        "write it like this: geese up, ray on sky",
        "ray"
    )]
    [TestCase(
        "half-square upper-left, a b on c",
        "a half-square triangle unit has 2 parts, the triangle in the corner named and the other one",
        "3 are written: a, b, c.",
        "write it like this: half-square upper-left, ray on sky",
        "a b on c"
    )]
    [TestCase(
        "square up, core",
        "a plain square takes no place word",
        "\"up\" stands before the parts.",
        "write it like this: square core",
        "up"
    )]
    [TestCase(
        "quarter-square top, a b c d",
        "four parts of a quarter-square run clockwise from the top",
        "\"top\" has no meaning with 4 parts.",
        "leave the place word out",
        "top"
    )]
    [TestCase(
        "square-in-square 3 x 3, a on b",
        "a square-in-a-square unit takes no grid",
        "3 x 3 is written.",
        "write it like this: square-in-square, core on sky",
        "3"
    )]
    [TestCase(
        "half-square upper-left of 2, a on b",
        "a half-square triangle unit takes no measure",
        "\"of 2 in\" is written; its size follows from its region.",
        "write it like this: half-square upper-left, ray on sky",
        "2"
    )]
    [TestCase(
        "corners upper-left, ray",
        "corners needs the part it lies on",
        "No \"on\" is written.",
        "write it like this: corners upper-left lower-right of 1 1/2, ray on sky",
        "ray"
    )]
    [TestCase(
        "corners upper-left upper-left, ray on sky",
        "a corner is named twice",
        "\"upper-left\" is written twice.",
        "name each corner once",
        "upper-left"
    )]
    [TestCase(
        "corners uper-left, ray on sky",
        "a corner is upper-left, upper-right, lower-right or lower-left",
        "\"uper-left\" is none of these.",
        "did you mean upper-left?",
        "uper-left"
    )]
    [TestCase(
        "corners upper-left upper-right lower-left, a b on sky",
        "corners has one part for all corners, or one for each",
        "3 corners and 2 parts are written.",
        "write it like this: corners upper-left lower-right of 1 1/2, ray on sky",
        "a b on sky"
    )]
    [TestCase(
        "corners upper-left of 0, ray on sky",
        "a flipped corner needs a size above zero",
        "Of 0 in is written.",
        "write it like this: corners upper-left lower-right of 1 1/2, ray on sky",
        "0"
    )]
    [TestCase(
        "rail, a b",
        "a rail unit needs one place word: upright or level",
        "None is written.",
        "write it like this: rail upright, ray sky ray",
        "rail"
    )]
    [TestCase(
        "rail level, a on b",
        "a rail unit lies on no other part",
        "\"on b\" is written.",
        "write it like this: rail upright, ray sky ray",
        "b"
    )]
    [TestCase(
        "checkerboard, a b",
        "a checkerboard unit needs its cells, columns x rows",
        "None are written.",
        "write it like this: checkerboard 4 x 4, ray sky",
        "checkerboard"
    )]
    [TestCase(
        "checkerboard 1 x 4, a b",
        "a checkerboard unit has 2 to 24 cells each way",
        "1 x 4 is written.",
        "write a single row of cells as a rail",
        "1"
    )]
    [TestCase(
        "bargello, a b c",
        "a bargello unit has 2 to 24 shifts, one for each column",
        "None is written.",
        "write it like this: bargello shifts 0 1 2 1, sky mist foam sand",
        "bargello"
    )]
    [TestCase(
        "bargello shifts 0 1, a b",
        "a bargello unit has 3 to 24 parts, one for each strip",
        "2 are written: a, b.",
        "write it like this: bargello shifts 0 1 2 1, sky mist foam sand",
        "a b"
    )]
    [TestCase(
        "log-cabin, a b c",
        "a log cabin needs the number of its rounds",
        "None is written.",
        "write log-cabin 4 rounds, or both center and logs",
        "log-cabin"
    )]
    [TestCase(
        "log-cabin 500 rounds, a b c",
        "a log cabin has 12 rounds at most",
        "500 are written.",
        "write it like this: log-cabin upper-left 4 rounds, hearth light dark",
        "500"
    )]
    [TestCase(
        "log-cabin 3 rounds, a b c d",
        "a log cabin of 3 rounds has a part for its center and 1, 2, 4, 6 or 12 for its 12 logs",
        "4 are written: a, b, c, d.",
        "write it like this: log-cabin upper-left 4 rounds, hearth light dark",
        "a b c d"
    )]
    [TestCase(
        "log-cabin 3 rounds, a b on c",
        "a log cabin lies on no other part",
        "\"on c\" is written.",
        "write the center's part first, then those of the logs",
        "c"
    )]
    [TestCase(
        "log-cabin 3 rounds logs 1 and 2 and 3, a b c",
        "the logs of a log cabin have one finished width, or two (for the first and the second half of a round), or one for each side",
        "3 are written.",
        "write it like this: log-cabin upper-left 4 rounds, hearth light dark",
        "logs"
    )]
    [TestCase(
        "geese up 2 rounds, a on b",
        "a flying geese unit has no rounds",
        "2 rounds are written.",
        "write it like this: geese up, ray on sky",
        "2"
    )]
    [TestCase(
        "checkerboard 4 x 1000000, a b",
        "a checkerboard unit has 2 to 24 cells each way",
        "4 x 1000000 is written.",
        "write it like this: checkerboard 4 x 4, ray sky",
        "4"
    )]
    public void Words(string unit, string title, string text, string hint, string blamed)
    {
        UnitProblem problem = Written.Problem(
            unit,
            "4",
            unit.StartsWith("geese", StringComparison.Ordinal) ? "2" : "4"
        );
        problem.Kind.ShouldBe(UnitProblemKind.Words);
        (problem.Title, problem.Text, problem.Hint).ShouldBe((title, text, hint));
        unit[(problem.Span.StartColumn - 1)..(problem.Span.EndColumn - 1)].ShouldBe(blamed);
    }
}
