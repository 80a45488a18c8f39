using System.Collections.Immutable;

namespace PatternPress.Source.Shapes;

/// <summary>The shape of a pattern's source file: the whole language except the words of the trade.</summary>
public sealed class PatternShape
{
    private readonly Vocabulary words;
    private readonly TextShape fabricName;
    private readonly MapShape house;
    private readonly NamesShape methods;

    private PatternShape(Vocabulary words)
    {
        this.words = words;
        fabricName = new TextShape("the name of a fabric", "A fabric, by its name under `fabrics`.")
        {
            Examples = ["A"],
        };
        house = House();
        methods = Methods();
    }

    /// <summary>The shape of a whole file.</summary>
    public static MapShape Of(Vocabulary words)
    {
        var shape = new PatternShape(words);
        return new MapShape(
            "the file",
            "One quilt pattern in all its sizes.",
            [
                new Key("pattern", shape.Heading(), Required: true),
                new Key("house", shape.house),
                new Key("fabrics", shape.Fabrics(), Required: true),
                new Key("foundations", Foundations()),
                new Key("appliques", Appliques()),
                new Key("blocks", shape.Blocks()),
                new Key("colorings", Colorings()),
                new Key("methods", shape.methods),
                new Key("quilt", shape.Quilt(), Required: true),
                new Key("sizes", shape.Sizes(), Required: true),
            ]
        );
    }

    private static NamesShape Appliques() =>
        new(
            "the appliqués",
            "Shapes to fuse onto a ground, drawn as SVG path data.",
            new TextShape("an appliqué's name", "Short name of an appliqué.", TextForm.Name),
            new MapShape(
                "an appliqué",
                "Shapes to fuse onto a ground.",
                [
                    new Key(
                        "grid",
                        Text(
                            "a grid",
                            "Units across x units down, in which paths are drawn.",
                            "24 x 24"
                        ),
                        Required: true
                    ),
                    new Key(
                        "shapes",
                        new ListShape(
                            "a list of shapes",
                            "The shapes in the order they are laid down.",
                            new MapShape(
                                "a shape",
                                "What it is, and its outline.",
                                [
                                    new Key(
                                        "part",
                                        Text(
                                            "a part",
                                            "What the shape is: a name of your own.",
                                            "body"
                                        ),
                                        Required: true
                                    ),
                                    new Key(
                                        "path",
                                        Text(
                                            "path data",
                                            "One closed outline as SVG path data.",
                                            "M 2 12 C 6 4 18 4 22 12 Z"
                                        ),
                                        Required: true
                                    ),
                                ]
                            )
                        ),
                        Required: true
                    ),
                ]
            )
        );

    private static NamesShape Foundations() =>
        new(
            "the foundations",
            "Sections to sew on paper, drawn by their seam lines in the order of sewing.",
            new TextShape("a section's name", "Short name of a section.", TextForm.Name),
            new MapShape(
                "a section",
                "A section to sew on paper.",
                [
                    new Key(
                        "grid",
                        Text(
                            "a grid",
                            "Units across x units down, in which its places are given.",
                            "4 x 6"
                        ),
                        Required: true
                    ),
                    new Key(
                        "pieces",
                        new TextShape(
                            "pieces",
                            "A piece a line in the order of sewing; all but the first with two places on its seam line, at whose left hand it lies."
                        )
                        {
                            Use = TextUse.Drawing,
                            Examples = ["tower\nsky 0,6 - 2,0\nsky 2,0 - 4,6"],
                        },
                        Required: true
                    ),
                ]
            )
        );

    /// <summary>The house rules: in a pattern under <c>house</c>, and as a file of their own among the templates.</summary>
    public static MapShape House() =>
        new(
            "the house rules",
            "What this pattern does differently from the house's rules for seams, widths and allowances.",
            [
                new Key(
                    "seam",
                    Measure("the seam allowance", "Seam allowance on every edge.", "1/4 in")
                ),
                new Key(
                    "usable-width",
                    Measure(
                        "a usable width",
                        "Width of fabric that can be cut, selvages off; of a range, all holds at the narrow end.",
                        "40 in"
                    )
                ),
                new Key(
                    "end-squaring",
                    Measure(
                        "what squaring the ends takes",
                        "Taken off the usable width of every strip, for squaring its ends.",
                        "1/2 in"
                    )
                ),
                new Key(
                    "shrinkage",
                    Text(
                        "the shrinkage",
                        "Per cent of its length and width that fabric loses when it is washed before it is cut.",
                        "3 %"
                    )
                ),
                new Key(
                    "ruler",
                    Measure(
                        "the ruler's step",
                        "Distance between the marks of the ruler; cut sizes are rounded up to it.",
                        "1/8 in"
                    )
                ),
                new Key(
                    "unit",
                    new ChoiceShape(
                        "a unit of length",
                        "The unit that numbers are printed in.",
                        ["inch", "centimetre"]
                    )
                ),
                new Key(
                    "yard-step",
                    Measure("the yardage step", "Steps in which fabric is bought.", "1/8 yd")
                ),
                new Key(
                    "thirds",
                    YesOrNo("thirds of a yard", "Whether fabric is bought in thirds of a yard too.")
                ),
                new Key(
                    "allowance",
                    Text(
                        "the yardage allowance",
                        "Per cent added to the length of each fabric for mistakes.",
                        "5 %"
                    )
                ),
                new Key(
                    "squaring",
                    Measure(
                        "the squaring allowance",
                        "Added once to each fabric for straightening its cut edge.",
                        "2 in"
                    )
                ),
                new Key(
                    "long-borders",
                    new ChoiceShape(
                        "a way of cutting long borders",
                        "How borders longer than the fabric is wide are cut: joined from strips, in one length along the fabric, or whichever takes less.",
                        ["least-fabric", "joined", "in-one-length"]
                    )
                ),
                new Key(
                    "backing-overhang",
                    Measure(
                        "the backing's overhang",
                        "How far the backing reaches beyond the top on every side.",
                        "4 in"
                    )
                ),
                new Key(
                    "backing-width",
                    Measure("the backing's width", "Usable width of the backing fabric.", "40 in")
                ),
                new Key(
                    "backing-seam",
                    Measure(
                        "the backing's seam allowance",
                        "Seam allowance between the panels of a backing.",
                        "1/2 in"
                    )
                ),
                new Key(
                    "batting-overhang",
                    Measure(
                        "the batting's overhang",
                        "How far the batting reaches beyond the top on every side.",
                        "4 in"
                    )
                ),
                new Key(
                    "binding-width",
                    Measure("the binding's width", "Cut width of a binding strip.", "2 1/2 in")
                ),
                new Key(
                    "binding-extra",
                    Measure(
                        "the binding's extra length",
                        "Added to the way round the quilt for mitred corners and the closing join.",
                        "12 in"
                    )
                ),
                new Key(
                    "binding-apart",
                    YesOrNo(
                        "whether binding is bought apart",
                        "Whether binding is a line of its own in the requirements. With no it is part of its fabric."
                    )
                ),
                new Key(
                    "thrifty-gain",
                    Measure(
                        "the gain of a thrifty plan",
                        "A thrifty plan is taken only where it saves at least this much of what is bought.",
                        "1/8 yd"
                    )
                ),
                new Key(
                    "cutting",
                    new ChoiceShape(
                        "a way of cutting",
                        "Exact: units come out at size. Oversize: pieces are cut larger and units trimmed.",
                        ["exact", "oversize"]
                    )
                ),
                new Key(
                    "oversize",
                    Measure(
                        "the oversize",
                        "How much larger pieces are cut where they are trimmed later.",
                        "1/8 in"
                    )
                ),
                new Key(
                    "miter-allowance",
                    Measure(
                        "the miter's allowance",
                        "Added to the length of each strip of a mitered border, and trimmed off.",
                        "2 in"
                    )
                ),
                new Key(
                    "coping-least",
                    Measure(
                        "the least width of a coping strip",
                        "The narrowest coping strip inside a border of blocks, finished.",
                        "1/2 in"
                    )
                ),
                new Key(
                    "coping-most",
                    Measure(
                        "the greatest width of a coping strip",
                        "The widest coping strip inside a border of blocks, finished.",
                        "4 in"
                    )
                ),
                new Key(
                    "triangle-oversize",
                    Measure(
                        "the triangles' oversize",
                        "How much larger the squares for setting and corner triangles are cut, to be trimmed later.",
                        "1/2 in"
                    )
                ),
                new Key(
                    "plan",
                    new ChoiceShape(
                        "a style of cutting plan",
                        "Plain: one piece height a strip. Thrifty: pieces mix in a strip to save fabric.",
                        ["plain", "thrifty"]
                    )
                ),
                new Key(
                    "joins",
                    new ChoiceShape(
                        "a way of joining strips",
                        "How strips longer than the fabric is wide are joined.",
                        ["straight", "diagonal"]
                    )
                ),
                new Key(
                    "pressing",
                    new ChoiceShape(
                        "a way of pressing",
                        "How seams are pressed. Nested: rows in opposite directions by turns, so that seams lock.",
                        ["nested", "to-one-side", "open"]
                    )
                ),
                new Key(
                    "without",
                    Text(
                        "techniques",
                        "Techniques that are never used, by their words.",
                        "stitch-and-flip"
                    )
                ),
            ]
        );

    private MapShape Heading() =>
        new(
            "the pattern's heading",
            "What the cover and the footers say.",
            [
                new Key(
                    "title",
                    Prose("a title", "The pattern's title.", "Harbor Lights"),
                    Required: true
                ),
                new Key(
                    "subtitle",
                    Prose("a subtitle", "A line below the title.", "A quilt in five sizes")
                ),
                new Key(
                    "edition",
                    new TextShape(
                        "an edition",
                        "Three numbers with full stops. Raise it whenever a printed number changes.",
                        TextForm.Edition
                    )
                    {
                        Examples = ["1.0.0"],
                    },
                    Required: true
                ),
                new Key(
                    "date",
                    new TextShape(
                        "a date",
                        "The edition's date as year-month-day; every date in the output comes from here.",
                        TextForm.Date
                    )
                    {
                        Examples = ["2026-11-01"],
                    },
                    Required: true
                ),
                new Key(
                    "designer",
                    Prose(
                        "a designer",
                        "Who designed and publishes the pattern.",
                        "Tern & Tide Patterns"
                    ),
                    Required: true
                ),
                new Key(
                    "skill",
                    Prose("a skill level", "For whom the pattern is.", "confident beginner")
                ),
                new Key(
                    "about",
                    Prose(
                        "an introduction",
                        "The designer's introduction: Markdown, with {{ }} for computed figures."
                    )
                ),
                new Key(
                    "copyright",
                    Prose("a copyright line", "Who holds the rights, and since when.")
                ),
                new Key("website", Text("a website", "Where makers find more.")),
                new Key("contact", Prose("a contact", "Where makers ask.")),
                new Key(
                    "language",
                    Text("a language", "The language of the booklet, by its code.", "en")
                ),
                new Key(
                    "suits",
                    new EitherShape(
                        "what the pattern suits",
                        "What its fabrics can be cut from besides yardage; the build proves it for every size.",
                        [
                            new TextShape(
                                "what the pattern suits",
                                "fat quarters, fat eighths, 2 1/2 in strips, 10 in squares or 5 in squares."
                            )
                            {
                                Examples = ["fat quarters"],
                            },
                            new MapShape(
                                "what the pattern suits",
                                "What fabrics can be cut from, and which.",
                                [
                                    new Key(
                                        "buy",
                                        Panel(
                                            "what they can be cut from",
                                            "What the fabrics can be cut from besides yardage."
                                        ),
                                        Required: true
                                    ),
                                    new Key(
                                        "fabrics",
                                        Text(
                                            "names of fabrics",
                                            "The fabrics it holds for; all of the quilt top without it.",
                                            "B C D"
                                        )
                                    ),
                                ]
                            ),
                        ]
                    )
                ),
                new Key(
                    "scraps",
                    YesOrNo(
                        "a list for scraps",
                        "Whether the booklet also counts all pieces by what their fabrics are for, for makers who use up scraps."
                    )
                ),
                new Key(
                    "notes",
                    new NamesShape(
                        "the notes",
                        "Extra Markdown for places in the booklet, by the place's name.",
                        Name("the name of a place"),
                        Prose("a note", "Markdown, with {{ }} for computed figures.")
                    )
                ),
            ]
        );

    private NamesShape Fabrics() =>
        new(
            "the fabrics",
            "Every fabric, by the letter or short name that stands for it in maps, tables and diagrams.",
            Name("the name of a fabric", "A"),
            new MapShape(
                "a fabric",
                "A fabric's name, the color it is drawn in, and what is special about it.",
                [
                    new Key(
                        "name",
                        Prose(
                            "a fabric's full name",
                            "What it is called in the requirements.",
                            "Ink"
                        ),
                        Required: true
                    ),
                    new Key(
                        "color",
                        new TextShape(
                            "a color",
                            "The color it is drawn in: # and six hexadecimal digits, in quotation marks.",
                            TextForm.Color
                        )
                        {
                            Examples = ["#15233b"],
                        }
                    ),
                    new Key(
                        "print",
                        Text("a print", "A word for its print; leave it out for a solid.", "dot")
                    ),
                    new Key("use", Prose("a use", "Its role in the quilt.", "background")),
                    new Key("collection", Prose("a collection", "The collection it comes from.")),
                    new Key(
                        "directional",
                        YesOrNo(
                            "a direction",
                            "Whether the print has an up, so that pieces must not be turned."
                        )
                    ),
                    new Key(
                        "usable-width",
                        Measure(
                            "a usable width",
                            "Its own usable width, where it differs from the house's.",
                            "42 in"
                        )
                    ),
                    new Key(
                        "buy",
                        Panel(
                            "what it is bought as",
                            "What the fabric is bought as; by the yard without it."
                        )
                    ),
                    new Key("image", Image()),
                ]
            )
            {
                OneOrMoreOf = ["color", "image"],
            }
        )
        {
            AtLeastOne = true,
        };

    private static EitherShape Panel(string what, string description) =>
        new(
            what,
            description,
            [
                new TextShape(
                    what,
                    "yardage, fat quarters, fat eighths, 2 1/2 in strips, 10 in squares or 5 in squares."
                )
                {
                    Examples = ["fat quarters", "10 in squares"],
                },
                new MapShape(
                    what,
                    "Pieces of a size of their own.",
                    [
                        new Key(
                            "width",
                            Measure(
                                "a usable width",
                                "Usable width, across the fabric they were cut from.",
                                "20"
                            ),
                            Required: true
                        ),
                        new Key(
                            "height",
                            Measure(
                                "a usable height",
                                "Usable height, along the fabric they were cut from.",
                                "15"
                            ),
                            Required: true
                        ),
                    ]
                ),
            ]
        );

    private static EitherShape Image()
    {
        TextShape file = Text(
            "an image file",
            "A PNG or JPEG of the print, by its path from the pattern's folder; taken as 4 in wide.",
            "swatches/ink.jpg"
        );
        return new(
            "an image",
            "The designer's picture of the print: a file, or a file and how wide the cloth in it is.",
            [
                file,
                new MapShape(
                    "an image",
                    "A file and how wide the cloth in it is.",
                    [
                        new Key(
                            "file",
                            file with
                            {
                                Description =
                                    "A PNG or JPEG of the print, by its path from the pattern's folder.",
                            },
                            Required: true
                        ),
                        new Key(
                            "width",
                            Measure(
                                "a width of cloth",
                                "How wide the cloth in the image is, so that it is drawn at its true scale.",
                                "4 in"
                            )
                        ),
                    ]
                ),
            ]
        );
    }

    private NamesShape Blocks() =>
        new(
            "the blocks",
            "Every block, drawn as a map of its units.",
            Name("the name of a block"),
            new MapShape(
                "a block",
                "One block: a map, what each of its letters means, and the parts a coloring fills in.",
                [
                    new Key(
                        "name",
                        Prose("a block's full name", "What the booklet calls it.", "Lamp")
                    ),
                    new Key(
                        "size",
                        Measure(
                            "a finished size",
                            "Its finished size: one measure, or width x height.",
                            "12"
                        )
                    ),
                    new Key(
                        "map",
                        Drawing(
                            "a map",
                            "The block drawn in letters, one row a line; a region of one letter is one unit.",
                            "s G s\nE C W\ns F s"
                        ),
                        Required: true
                    ),
                    new Key(
                        "units",
                        new NamesShape(
                            "the units",
                            "What each letter of the map means.",
                            Name("a letter of a map", "s"),
                            Text(
                                "a unit",
                                $"A kind of unit and its parts. Kinds: {string.Join(", ", words.Units)}.",
                                "square sky"
                            )
                        ),
                        Required: true
                    ),
                    new Key(
                        "parts",
                        Text("part names", "The names that a coloring fills in.", "sky ray core")
                    ),
                    new Key(
                        "columns",
                        Text("column widths", "Relative widths of the map's columns.", "1 2 1")
                    ),
                    new Key(
                        "rows",
                        Text("row heights", "Relative heights of the map's rows.", "1 2 1")
                    ),
                    new Key("notes", Prose("a note", "Extra Markdown beside the block's steps.")),
                ]
            )
        );

    private static NamesShape Colorings() =>
        new(
            "the colorings",
            "Blocks with a fabric for each part, by the short name that fills use.",
            Name("the name of a coloring", "L1"),
            Text(
                "a coloring",
                "A block and a fabric for each of its parts, or plain and one fabric.",
                "lamp sky=A ray=B core=C"
            )
        );

    private NamesShape Methods() =>
        new(
            "the methods",
            "The technique to use, by kind of unit or by block and letter (lamp.G); the thriftiest otherwise.",
            new TextShape(
                "a kind of unit or a letter of a block",
                "A kind of unit (geese), or a block and a letter of its map (lamp.G).",
                TextForm.DottedName
            )
            {
                Examples = ["geese", "lamp.G"],
            },
            new ChoiceShape("a technique", "A way of making the unit.", words.Techniques)
        );

    private MapShape Quilt() =>
        new(
            "the quilt",
            "How blocks, sashing and borders make the quilt.",
            [
                new Key(
                    "setting",
                    new ChoiceShape("a setting", "How the blocks are set.", words.Settings)
                ),
                new Key("sashing", Sashing()),
                new Key(
                    "columns",
                    Text("column widths", "Finished widths of the columns; they repeat.", "6 12 6")
                ),
                new Key(
                    "rows",
                    Text("row heights", "Finished heights of the rows; they repeat.", "6 12 6")
                ),
                new Key(
                    "along",
                    new ChoiceShape(
                        "a direction",
                        "Whether staggered lines of blocks are rows or columns.",
                        ["rows", "columns"]
                    )
                ),
                new Key(
                    "ends",
                    Text(
                        "half blocks",
                        "The coloring of the half blocks at the ends of staggered lines, or one for each end.",
                        "H",
                        "H H/180"
                    )
                ),
                new Key(
                    "places",
                    Drawing(
                        "places",
                        "Blocks placed freely, one a line: a coloring, at, its distance from the left and from the top.",
                        "S at 0, 0\nP 6 x 12 at 12, 0"
                    )
                ),
                new Key("fill", Fill()),
                new Key("between", Fill()),
                new Key("triangles", Triangles()),
                new Key("patch", Patch()),
                new Key(
                    "borders",
                    new ListShape(
                        "a list of borders",
                        "The borders, from the inside out.",
                        Border()
                    )
                ),
                new Key(
                    "center",
                    new ChoiceShape(
                        "a setting",
                        "How the blocks in the center of a medallion are set.",
                        words.Settings.Remove("medallion")
                    )
                ),
                new Key(
                    "rounds",
                    new ListShape(
                        "a list of rounds",
                        "The rounds of a medallion, from its center out: borders that a size may have more or fewer of.",
                        Border()
                    )
                ),
                new Key(
                    "binding",
                    new EitherShape(
                        "the binding",
                        "The binding's fabric, or its fabric and the width of its strips.",
                        [
                            fabricName,
                            new MapShape(
                                "the binding",
                                "The binding's fabric and the width of its strips.",
                                [
                                    new Key("fabric", fabricName, Required: true),
                                    new Key(
                                        "width",
                                        Measure("a cut width", "Cut width of a strip.", "2 1/4 in")
                                    ),
                                    new Key(
                                        "cut",
                                        new ChoiceShape(
                                            "the grain of a binding",
                                            "Straight: strips across the fabric. Bias: strips on the bias, made from squares, for curved edges.",
                                            ["straight", "bias"]
                                        )
                                    ),
                                ]
                            ),
                        ]
                    )
                ),
                new Key(
                    "backing",
                    new EitherShape(
                        "the backing",
                        "The backing's fabric, or its fabric, width and overhang.",
                        [
                            fabricName,
                            new MapShape(
                                "the backing",
                                "The backing's fabric, width and overhang.",
                                [
                                    new Key("fabric", fabricName, Required: true),
                                    new Key(
                                        "width",
                                        Measure(
                                            "a usable width",
                                            "Usable width of the fabric.",
                                            "108 in"
                                        )
                                    ),
                                    new Key(
                                        "overhang",
                                        Measure(
                                            "an overhang",
                                            "How far it reaches beyond the top.",
                                            "4 in"
                                        )
                                    ),
                                ]
                            ),
                        ]
                    )
                ),
                new Key(
                    "rounded-corners",
                    Measure(
                        "a radius",
                        "Radius that the corners of the quilt are rounded with before it is bound, finished.",
                        "6"
                    )
                ),
                new Key("batting", YesOrNo("batting", "Whether the quilt has batting.")),
            ]
        );

    private static MapShape Patch() =>
        new(
            "the patch",
            "The one shape that all patches of a one-patch quilt have.",
            [
                new Key(
                    "shape",
                    new ChoiceShape(
                        "a shape",
                        "Triangles and diamonds of 60 degrees, or hexagons sewn in halves.",
                        ["triangle", "diamond", "hexagon"]
                    ),
                    Required: true
                ),
                new Key(
                    "height",
                    Measure(
                        "a finished height",
                        "Finished height of a row: of a triangle or diamond, of half a hexagon.",
                        "4"
                    ),
                    Required: true
                ),
            ]
        );

    private EitherShape Triangles() =>
        new(
            "the triangles",
            "The fabric of the triangles along the edge of a setting on point, or their fabrics and how far blocks float.",
            [
                fabricName,
                new MapShape(
                    "the triangles",
                    "The triangles along the edge of a setting on point.",
                    [
                        new Key("fabric", fabricName, Required: true),
                        new Key(
                            "corners",
                            fabricName with
                            {
                                Description =
                                    "The fabric of the corner triangles; without it that of the others.",
                            }
                        ),
                        new Key(
                            "float",
                            Measure(
                                "a float",
                                "How far the points of the outer blocks stay away from the edge, finished.",
                                "1/2"
                            )
                        ),
                    ]
                ),
            ]
        );

    private MapShape Sashing() =>
        new(
            "the sashing",
            "Strips between the blocks.",
            [
                new Key(
                    "width",
                    Measure("a finished width", "Finished width of a strip.", "1 1/2"),
                    Required: true
                ),
                new Key("fabric", fabricName, Required: true),
                new Key(
                    "cornerstones",
                    fabricName with
                    {
                        Description = "The fabric of squares where strips meet.",
                    }
                ),
                new Key(
                    "around",
                    YesOrNo("strips around", "Whether strips run around the outside too.")
                ),
            ]
        );

    private EitherShape Fill()
    {
        var colorings = new TextShape("colorings", "The colorings, row by row.")
        {
            Examples = ["L1 L2\nL2 L1"],
        };
        var drawn = colorings with { Use = TextUse.Drawing, Sample = "L1 L2" };
        var keys = ImmutableArray.CreateBuilder<Key>();
        foreach (var fill in words.Fills)
        {
            keys.Add(new Key(fill, words.DrawnFills.Contains(fill) ? drawn : colorings));
        }

        keys.Add(
            new Key(
                "seed",
                Text("a seed", "A number that starts a scatter; another gives another quilt.", "7")
            )
        );
        return new EitherShape(
            "the fill",
            "How colorings are spread over the quilt: a drawing that repeats, or a way of filling and its colorings.",
            [
                drawn,
                new MapShape("a fill", "One way of filling and its colorings.", keys.ToImmutable())
                {
                    ExactlyOneOf = words.Fills,
                },
            ]
        );
    }

    private MapShape Border() =>
        new(
            "a border",
            "One border: strips of one fabric, or blocks in a row along each side.",
            [
                new Key(
                    "width",
                    Measure(
                        "a finished width",
                        "Finished width of the border. Blocks are made to it.",
                        "2"
                    )
                ),
                new Key("sides", BorderSides()),
                new Key("fabric", fabricName),
                new Key(
                    "blocks",
                    Text(
                        "the blocks of a border",
                        "Colorings that repeat along each side, drawn as they lie along the top; the other sides are turned.",
                        "L1 L2"
                    )
                ),
                new Key(
                    "middle",
                    Text(
                        "a coloring",
                        "A block that stands once, in the middle of each side.",
                        "M1"
                    )
                ),
                new Key(
                    "after-middle",
                    Text(
                        "the blocks after the middle",
                        "Colorings that repeat from the middle of each side on; without them those before it, backwards.",
                        "L2 L1"
                    )
                ),
                new Key("coping", Coping()),
                new Key(
                    "corners",
                    Text(
                        "corners",
                        $"How the border turns its corners: {string.Join(", ", words.Corners)}; squares name their fabric, blocks their coloring.",
                        [.. words.Corners]
                    )
                ),
                new Key(
                    "name",
                    Prose("a border's name", "What the booklet calls it.", "inner border")
                ),
            ]
        )
        {
            Sample = "{width: 2, fabric: C}",
        };

    private static MapShape BorderSides()
    {
        return new(
            "the sides of a border",
            "Finished widths of a border that is not as wide on all sides. A side without one is as wide as width says; without width it has no border.",
            [Side("left"), Side("top"), Side("right"), Side("bottom")]
        );

        static Key Side(string side) =>
            new(side, Measure("a finished width", $"Finished width of the border, {side}.", "4"));
    }

    private EitherShape Coping() =>
        new(
            "a coping strip",
            "A plain border inside one of blocks, whose width is computed so that the blocks come out: its fabric, or its fabric and limits.",
            [
                fabricName,
                new MapShape(
                    "a coping strip",
                    "The fabric of a coping strip and how wide it may be.",
                    [
                        new Key("fabric", fabricName, Required: true),
                        new Key(
                            "at-least",
                            Measure("a finished width", "The narrowest it may be, finished.", "1")
                        ),
                        new Key(
                            "at-most",
                            Measure("a finished width", "The widest it may be, finished.", "3")
                        ),
                        new Key(
                            "name",
                            Prose("a border's name", "What the booklet calls it.", "spacer")
                        ),
                    ]
                ),
            ]
        );

    private NamesShape Sizes() =>
        new(
            "the sizes",
            "Every size the pattern comes in.",
            Name("the name of a size", "throw"),
            new MapShape(
                "a size",
                "One size: how many blocks, and what it changes.",
                [
                    new Key(
                        "name",
                        Prose("a size's full name", "What the booklet calls it.", "Throw")
                    ),
                    new Key(
                        "blocks",
                        Text("a count of blocks", "Blocks across x blocks down.", "5 x 6"),
                        Required: true
                    ),
                    new Key(
                        "block",
                        Measure("a block size", "Finished size of the blocks at this size.", "9")
                    ),
                    new Key(
                        "rounds",
                        Text(
                            "a count of rounds",
                            "How many rounds of a medallion this size has, from the center; all without a word.",
                            "3"
                        )
                    ),
                    new Key(
                        "map",
                        Drawing(
                            "a placement map",
                            "The whole layout drawn in colorings, one row a line."
                        )
                    ),
                    new Key("change", Change()),
                ]
            )
        )
        {
            AtLeastOne = true,
        };

    /// <summary>What a size may do differently: any part of the quilt, and the house rules.</summary>
    private MapShape Change()
    {
        var keys = ImmutableArray.CreateBuilder<Key>();
        foreach (var key in Quilt().Partial().Keys)
        {
            keys.Add(
                key.Value switch
                {
                    MapShape map => key with { Value = map.Partial() },
                    // Triangles are changed key by key too, however they are written above.
                    EitherShape either when key.Name == "triangles" => key with
                    {
                        Value = either with
                        {
                            Shapes =
                            [
                                .. either.Shapes.Select(shape =>
                                    shape is MapShape one ? one.Partial() : shape
                                ),
                            ],
                        },
                    },
                    _ => key,
                }
            );
        }

        keys.Add(new Key("house", house));
        return new MapShape(
            "a size's changes",
            "What this size does differently from the quilt and the house rules above.",
            keys.ToImmutable()
        );
    }

    private static TextShape Name(string what, params ImmutableArray<string> examples) =>
        new(
            what,
            "A name begins with a letter or digit and goes on with letters, digits, hyphens and underscores.",
            TextForm.Name
        )
        {
            Examples = examples,
        };

    private static TextShape Text(
        string what,
        string description,
        params ImmutableArray<string> examples
    ) => new(what, description) { Examples = examples };

    private static TextShape Prose(
        string what,
        string description,
        params ImmutableArray<string> examples
    ) => new(what, description) { Examples = examples, Use = TextUse.Prose };

    private static TextShape Drawing(
        string what,
        string description,
        params ImmutableArray<string> examples
    ) => new(what, description) { Examples = examples, Use = TextUse.Drawing };

    private static TextShape Measure(string what, string description, string example) =>
        new(what, description) { Examples = [example] };

    private static ChoiceShape YesOrNo(string what, string description) =>
        new(what, description, ["yes", "no"]);
}
