using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Rules.Neighbors;

/// <summary>
/// Finds the fabrics that share a seam. Each colored block is looked into once; between blocks, sashing and borders
/// only the sides that meet are compared, and equal meetings only once.
/// </summary>
internal static class NeighborFinder
{
    public static IEnumerable<SizeNeighbors> Find(RuleContext context)
    {
        var faces = new Faces();
        foreach (Quilt quilt in context.Quilts)
        {
            var found = new Found(quilt.Pattern);
            foreach (ColoredBlock block in context.BlocksOf(quilt))
            {
                foreach ((string a, string b) in faces.PairsWithin(block))
                {
                    if (!found.Has(a, b))
                    {
                        found.Add(a, b, $"in {Tile.NameOf(block)}");
                    }
                }
            }
            // What lies on point is compared in its own coordinates, and then with what lies along the edge.
            foreach (bool onPoint in quilt.OnPoint ? (bool[])[false, true] : [false])
            {
                List<Tile> tiles = Tiles(quilt, faces, onPoint);
                Between(tiles, beside: true, found);
                Between(tiles, beside: false, found);
            }
            if (quilt.OnPoint || !quilt.Pieces.IsEmpty)
            {
                AlongTheEdge(quilt, faces, found);
            }
            yield return new SizeNeighbors(quilt.Size.Key, found.Pairs());
        }
    }

    private static List<Tile> Tiles(Quilt quilt, Faces faces, bool onPoint)
    {
        var tiles = new List<Tile>(
            quilt.Places.Length
                + quilt.Sashes.Length
                + quilt.Borders.Sum(border => border.Pieces.Length + border.Blocks.Length)
        );
        foreach (BlockPlace place in quilt.Places)
        {
            if (place.Frame.OnPoint == onPoint)
            {
                tiles.Add(Tile.Of(place.Place, faces.Of(place), place.Block, ""));
            }
        }
        foreach (Sash sash in quilt.Sashes)
        {
            if (sash.Frame.OnPoint == onPoint)
            {
                tiles.Add(
                    Tile.Of(sash.Place, faces.Of(sash.Place, sash.Fabric), null, NameOf(sash))
                );
            }
        }
        foreach (Border border in onPoint ? [] : quilt.Borders)
        {
            foreach (BorderPiece piece in border.Pieces)
            {
                tiles.Add(
                    Tile.Of(
                        piece.Place,
                        faces.Of(piece.Place, piece.Fabric),
                        null,
                        $"border {border.Number}"
                    )
                );
            }
            foreach (BorderBlock block in border.Blocks)
            {
                BlockPlace place = block.Place;
                tiles.Add(Tile.Of(place.Place, faces.Of(place), place.Block, ""));
            }
        }
        return tiles;
    }

    private static string NameOf(Sash sash) =>
        sash.Kind == SashKind.Cornerstone ? "a cornerstone" : "the sashing";

    /// <summary>The triangles and cut strips along the edge of a field on point, and all they touch.</summary>
    private static void AlongTheEdge(Quilt quilt, Faces faces, Found found)
    {
        var all = new List<(List<Edge> Edges, string Name, bool Loose)>();
        foreach (BlockPlace place in quilt.Places)
        {
            all.Add(
                (Lain(faces.Of(place), place.Place, place.Frame), Tile.NameOf(place.Block), false)
            );
        }
        foreach (Sash sash in quilt.Sashes)
        {
            string name = NameOf(sash);
            bool loose = sash.Trimmed is not null;
            all.Add(
                loose
                    ? ([.. Edge.Of(new Patch(sash.Outline, sash.Fabric))], name, true)
                    : (Lain(faces.Of(sash.Place, sash.Fabric), sash.Place, sash.Frame), name, false)
            );
        }
        foreach (SettingPiece piece in quilt.Pieces)
        {
            string name =
                piece.IsPatch ? "another patch"
                : piece.Kind == SettingPieceKind.Side ? "a side triangle"
                : "a corner triangle";
            all.Add(([.. Edge.Of(new Patch(piece.Shape, piece.Fabric))], name, true));
        }
        if (quilt.Borders.Length > 0)
        {
            foreach (BorderPiece piece in quilt.Borders[0].Pieces)
            {
                Patch patch = new(piece.Outline, piece.Fabric);
                all.Add(([.. Edge.Of(patch)], $"border {quilt.Borders[0].Number}", false));
            }
            foreach (BorderBlock block in quilt.Borders[0].Blocks)
            {
                List<Edge> edges = [.. block.Place.Patches().SelectMany(Edge.Of)];
                all.Add((edges, Tile.NameOf(block.Place.Block), false));
            }
        }
        (double Left, double Top, double Right, double Bottom)[] bounds =
        [
            .. all.Select(item =>
                (
                    item.Edges.Min(e => Math.Min(e.FromX, e.ToX)),
                    item.Edges.Min(e => Math.Min(e.FromY, e.ToY)),
                    item.Edges.Max(e => Math.Max(e.FromX, e.ToX)),
                    item.Edges.Max(e => Math.Max(e.FromY, e.ToY))
                )
            ),
        ];
        const double near = 1e-6;
        for (int i = 0; i < all.Count; i++)
        {
            for (int j = 0; all[i].Loose && j < all.Count; j++)
            {
                bool close =
                    bounds[i].Left < bounds[j].Right + near
                    && bounds[j].Left < bounds[i].Right + near
                    && bounds[i].Top < bounds[j].Bottom + near
                    && bounds[j].Top < bounds[i].Bottom + near;
                if (close && i != j && (j > i || !all[j].Loose))
                {
                    Meet(all[i].Edges, all[j].Edges, all[i].Name, all[j].Name, found);
                }
            }
        }
    }

    private static void Meet(
        List<Edge> first,
        List<Edge> second,
        string firstName,
        string secondName,
        Found found
    )
    {
        foreach (Edge a in first)
        {
            foreach (Edge b in second)
            {
                // Most edges do not touch: that is told faster than whether the pair is known.
                if (a.Fabric != b.Fabric && a.Touches(b) && !found.Has(a.Fabric, b.Fabric))
                {
                    found.Add(a.Fabric, b.Fabric, $"where {secondName} meets {firstName}");
                }
            }
        }
    }

    // A face's outer edges where they lie in the quilt.
    private static List<Edge> Lain(TileFace face, Rect place, Frame frame)
    {
        var edges = new List<Edge>();
        double x = place.X.Inches.ToDouble(),
            y = place.Y.Inches.ToDouble(),
            atX = frame.Origin.X.Inches.ToDouble(),
            atY = frame.Origin.Y.Inches.ToDouble(),
            half = Math.Sqrt(0.5);
        foreach (List<Edge> side in new[] { face.Left, face.Right, face.Top, face.Bottom })
        {
            foreach (Edge e in side)
            {
                (double fromX, double fromY) = Lie(e.FromX, e.FromY);
                (double toX, double toY) = Lie(e.ToX, e.ToY);
                edges.Add(new Edge(fromX, fromY, toX, toY, e.Fabric));
            }
        }
        return edges;

        (double, double) Lie(double u, double v) =>
            frame.OnPoint
                ? (((u + x + v + y) * half) + atX, ((v + y - u - x) * half) + atY)
                : (u + x + atX, v + y + atY);
    }

    /// <param name="beside">Whether the tiles meet left and right; else above and below.</param>
    private static void Between(List<Tile> tiles, bool beside, Found found)
    {
        var spans = new (double Begin, double End, double From, double To)[tiles.Count];
        var beginning = new Dictionary<double, List<int>>();
        var ending = new Dictionary<double, List<int>>();
        var lines = new List<double>();
        for (int i = 0; i < spans.Length; i++)
        {
            Tile tile = tiles[i];
            spans[i] = beside
                ? (tile.Left, tile.Right, tile.Top, tile.Bottom)
                : (tile.Top, tile.Bottom, tile.Left, tile.Right);
            Put(beginning, spans[i].Begin, i);
            if (Put(ending, spans[i].End, i))
            {
                lines.Add(spans[i].End);
            }
        }
        var met = new HashSet<(TileFace, TileFace, double)>();
        foreach (double line in lines)
        {
            if (!beginning.TryGetValue(line, out List<int>? seconds))
            {
                continue;
            }
            foreach (int first in ending[line])
            {
                foreach (int second in seconds)
                {
                    if (
                        spans[first].From < spans[second].To
                        && spans[second].From < spans[first].To
                        && met.Add(
                            (
                                tiles[first].Face,
                                tiles[second].Face,
                                spans[second].From - spans[first].From
                            )
                        )
                    )
                    {
                        Meet(tiles[first], tiles[second], beside, found);
                    }
                }
            }
        }
    }

    /// <returns>Whether it is the first on this line.</returns>
    private static bool Put(Dictionary<double, List<int>> tiles, double line, int tile)
    {
        if (tiles.TryGetValue(line, out List<int>? others))
        {
            others.Add(tile);
            return false;
        }
        tiles.Add(line, [tile]);
        return true;
    }

    private static void Meet(in Tile first, in Tile second, bool beside, Found found)
    {
        double x = second.Left - first.Left,
            y = second.Top - first.Top;
        foreach (Edge a in beside ? first.Face.Right : first.Face.Bottom)
        {
            foreach (Edge b in beside ? second.Face.Left : second.Face.Top)
            {
                if (a.Fabric == b.Fabric || found.Has(a.Fabric, b.Fabric))
                {
                    continue;
                }
                Edge moved = new(b.FromX + x, b.FromY + y, b.ToX + x, b.ToY + y, b.Fabric);
                if (a.Touches(moved))
                {
                    found.Add(
                        a.Fabric,
                        b.Fabric,
                        first.Name == second.Name
                            ? $"where {first.Name} meets itself"
                            : $"where {first.Name} meets {second.Name}"
                    );
                }
            }
        }
    }

    /// <summary>Edges and sides, worked out once for each block, turn and strip that looks different.</summary>
    private sealed class Faces
    {
        private readonly Dictionary<ColoredBlock, Edge[]> _edges = [];
        private readonly Dictionary<ColoredBlock, List<(string, string)>> _pairs = [];
        private readonly Dictionary<(ColoredBlock, Turn), TileFace> _blocks = [];
        private readonly Dictionary<(Length, Length, string), TileFace> _strips = [];

        public Edge[] EdgesOf(ColoredBlock block)
        {
            if (!_edges.TryGetValue(block, out Edge[]? edges))
            {
                var unturned = new BlockPlace(
                    0,
                    0,
                    block,
                    Turn.None,
                    new Rect(Length.Zero, Length.Zero, block.Width, block.Height)
                );
                edges = [.. unturned.Patches().SelectMany(Edge.Of)];
                _edges.Add(block, edges);
            }
            return edges;
        }

        /// <summary>The fabrics that touch within the block, each pair once.</summary>
        public List<(string, string)> PairsWithin(ColoredBlock block)
        {
            if (!_pairs.TryGetValue(block, out List<(string, string)>? pairs))
            {
                _pairs.Add(block, pairs = PairsOf(EdgesOf(block)));
            }
            return pairs;
        }

        private static List<(string, string)> PairsOf(Edge[] edges)
        {
            // By number: comparing names takes longer than all else.
            var fabrics = new List<string>();
            int[] numbers = new int[edges.Length];
            for (int i = 0; i < edges.Length; i++)
            {
                numbers[i] = fabrics.IndexOf(edges[i].Fabric);
                if (numbers[i] < 0)
                {
                    numbers[i] = fabrics.Count;
                    fabrics.Add(edges[i].Fabric);
                }
            }
            var met = new bool[fabrics.Count * fabrics.Count];
            var pairs = new List<(string, string)>();
            for (int i = 0; i < edges.Length; i++)
            {
                for (int j = 0; j < i; j++)
                {
                    int pair =
                        (Math.Max(numbers[i], numbers[j]) * fabrics.Count)
                        + Math.Min(numbers[i], numbers[j]);
                    if (numbers[i] != numbers[j] && !met[pair] && edges[i].Touches(edges[j]))
                    {
                        met[pair] = true;
                        pairs.Add((edges[i].Fabric, edges[j].Fabric));
                    }
                }
            }
            return pairs;
        }

        public TileFace Of(BlockPlace place)
        {
            if (!_blocks.TryGetValue((place.Block, place.Turn), out TileFace? face))
            {
                double width = place.Block.Width.Inches.ToDouble(),
                    height = place.Block.Height.Inches.ToDouble();
                face = new TileFace(
                    EdgesOf(place.Block).Select(e => Turned(e, place.Turn, width, height)),
                    place.Turn.SwapsSides ? height : width,
                    place.Turn.SwapsSides ? width : height
                );
                _blocks.Add((place.Block, place.Turn), face);
            }
            return face;
        }

        public TileFace Of(Rect place, string fabric)
        {
            if (!_strips.TryGetValue((place.Width, place.Height, fabric), out TileFace? face))
            {
                var patch = new Patch(
                    new Rect(Length.Zero, Length.Zero, place.Width, place.Height).ToPolygon(),
                    fabric
                );
                face = new TileFace(
                    Edge.Of(patch),
                    place.Width.Inches.ToDouble(),
                    place.Height.Inches.ToDouble()
                );
                _strips.Add((place.Width, place.Height, fabric), face);
            }
            return face;
        }

        private static Edge Turned(Edge e, Turn turn, double width, double height) =>
            turn.Quarters switch
            {
                1 => new(height - e.FromY, e.FromX, height - e.ToY, e.ToX, e.Fabric),
                2 => new(
                    width - e.FromX,
                    height - e.FromY,
                    width - e.ToX,
                    height - e.ToY,
                    e.Fabric
                ),
                3 => new(e.FromY, width - e.FromX, e.ToY, width - e.ToX, e.Fabric),
                _ => e,
            };
    }

    /// <summary>The pairs so far, each with the first place where it was met.</summary>
    private sealed class Found(Pattern pattern)
    {
        private readonly Dictionary<string, int> _order = pattern.Fabrics.ToDictionary(
            f => f.Key,
            f => f.Order
        );

        // Row and column by the order of the fabrics, the later one first.
        private readonly string?[] _where = new string?[
            pattern.Fabrics.Length * pattern.Fabrics.Length
        ];

        public bool Has(string a, string b) => _where[IndexOf(a, b)] is not null;

        public void Add(string a, string b, string where) => _where[IndexOf(a, b)] ??= where;

        public System.Collections.Immutable.ImmutableArray<FabricPair> Pairs()
        {
            int count = pattern.Fabrics.Length;
            var pairs = System.Collections.Immutable.ImmutableArray.CreateBuilder<FabricPair>();
            for (int first = 0; first < count; first++)
            {
                for (int second = first; second < count; second++)
                {
                    if (_where[(second * count) + first] is { } where)
                    {
                        pairs.Add(
                            new(pattern.Fabrics[first].Key, pattern.Fabrics[second].Key, where)
                        );
                    }
                }
            }
            return pairs.ToImmutable();
        }

        private int IndexOf(string a, string b)
        {
            int first = _order[a],
                second = _order[b];
            return (Math.Max(first, second) * pattern.Fabrics.Length) + Math.Min(first, second);
        }
    }
}
