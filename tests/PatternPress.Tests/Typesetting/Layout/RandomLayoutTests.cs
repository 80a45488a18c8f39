using CsCheck;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Pages;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Layout;

/// <summary>Whatever is nested in whatever: nothing is lost, doubled, out of order or outside the page.</summary>
public class RandomLayoutTests
{
    const int Rounds = 400;

    static readonly Gen<Block> Leaf = Gen.Select(
        Gen.Bool,
        Gen.Int[1, 100],
        Gen.Int[0, 140],
        (solid, width, height) =>
            solid
                ? new Solid("?", width, Math.Min(height, 90))
                : (Block)new Flowing("?", width, height * 3)
    );

    static Gen<Block> Tree(int depth, bool columns) =>
        depth == 0
            ? Leaf
            : Gen.Frequency(
                (3, Leaf),
                (
                    4,
                    Gen.Select(
                        Tree(depth - 1, columns).Array[0, 4],
                        Gen.Int[0, 9],
                        Gen.Int[0, 7],
                        (items, gap, rhythm) =>
                            (Block)new Stack(items) { Gap = gap.Pt, Rhythm = rhythm.Pt }
                    )
                ),
                (1, Tree(depth - 1, columns).Select(inner => (Block)new KeepTogether(inner))),
                (1, Tree(depth - 1, columns).Select(inner => (Block)new KeepWithNext(inner))),
                (
                    1,
                    Gen.Select(
                        Gen.Int[0, 150],
                        Tree(depth - 1, columns),
                        (need, inner) => (Block)new NeedSpace(need.Pt, inner)
                    )
                ),
                (
                    1,
                    Tree(depth - 1, columns)
                        .Select(inner => (Block)new Tagged(TagRole.Section, inner))
                ),
                (
                    1,
                    Tree(depth - 1, columns)
                        .Select(inner => (Block)new Box(inner) { Padding = Insets.All(2.Pt) })
                ),
                (1, Gen.Const((Block)new PageBreak())),
                (
                    columns ? 2 : 0,
                    Gen.Select(Tree(depth - 1, columns), Tree(depth - 1, columns), SideBySide)
                ),
                (
                    columns ? 2 : 0,
                    Gen.Select(Tree(depth - 1, columns), Tree(depth - 1, columns), Gen.Bool, Rows)
                )
            );

    static Block SideBySide(Block a, Block b) =>
        new Columns(Column.Share(a), Column.Share(b)) { Gap = 0.Pt };

    static Block Rows(Block a, Block b, bool keep) =>
        new Table(
            [TableColumn.Share()],
            [new TableRow(new TableCell(a)) { KeepWithNext = keep }, new TableRow(new TableCell(b))]
        )
        {
            Style = TableStyle.Bare with { Padding = Insets.None },
        };

    [Test]
    public void Nothing_is_lost_and_all_is_in_order() =>
        Tree(4, columns: false).Sample(tree => Check(tree, inOrder: true), iter: Rounds);

    [Test]
    public void Nothing_is_lost_in_columns_and_tables() =>
        Tree(4, columns: true).Sample(tree => Check(tree, inOrder: false), iter: Rounds);

    static void Check(Block tree, bool inOrder)
    {
        var number = 0;
        var named = Named(tree, ref number);
        var document = LayoutOf.Typeset(named);
        var shown = document.Pages.SelectMany(LayoutOf.Mocks).ToList();
        foreach (var leaf in Leaves(named))
        {
            var (name, height) = leaf is Solid solid
                ? (solid.Name, solid.Height)
                : (((Flowing)leaf).Name, ((Flowing)leaf).Height);
            var parts = shown.Where(mock => mock.Name == name).ToList();
            parts.Select(part => part.Place.Height).Sum().ShouldBe(height.Pt, name);
            parts.Count.ShouldBeGreaterThan(0, name);
            if (leaf is Solid)
            {
                parts.Count.ShouldBe(1, name);
            }
        }

        if (inOrder)
        {
            shown.Select(mock => int.Parse(mock.Name)).ShouldBeInOrder();
        }

        if (document.Problems.IsEmpty)
        {
            var foot = 140.Pt;
            shown.ShouldAllBe(mock => mock.Place.Y >= Points.Zero && mock.Place.Bottom <= foot);
        }

        if (inOrder && document.Pages.Length > 1)
        {
            document
                .Pages.Where(page => !page.Items.OfType<PageItem.RegionBegin>().Any())
                .Select(page => page.Number)
                .ShouldBeEmpty(LayoutOf.Tell(document) + Told(named));
        }

        CheckTags(document);
        LayoutOf.Tell(LayoutOf.Typeset(named)).ShouldBe(LayoutOf.Tell(document));
    }

    static void CheckTags(TypesetDocument document)
    {
        foreach (var page in document.Pages)
        {
            var open = new Stack<Tag>();
            foreach (var item in page.Items)
            {
                if (item is PageItem.TagBegin begin)
                {
                    open.Push(begin.Tag);
                }
                else if (item is PageItem.TagEnd end)
                {
                    open.Pop().ShouldBe(end.Tag);
                }
            }

            open.ShouldBeEmpty();
        }
    }

    static Block Named(Block block, ref int number)
    {
        switch (block)
        {
            case Solid solid:
                return solid with { Name = $"{++number}" };
            case Flowing flowing:
                return flowing with { Name = $"{++number}" };
            case Stack stack:
                var items = new List<Block>();
                foreach (var item in stack.Items)
                {
                    items.Add(Named(item, ref number));
                }

                return stack with
                {
                    Items = [.. items],
                };
            case Wrapper wrapper:
                return wrapper with { Content = Named(wrapper.Content, ref number) };
            case Box box:
                return box with { Content = Named(box.Content, ref number) };
            case Columns columns:
                var (left, right) = (
                    Named(columns.Items[0].Content, ref number),
                    Named(columns.Items[1].Content, ref number)
                );
                return SideBySide(left, right);
            case Table table:
                var (first, second) = (
                    Named(table.Rows[0].Cells[0].Content, ref number),
                    Named(table.Rows[1].Cells[0].Content, ref number)
                );
                return Rows(first, second, table.Rows[0].KeepWithNext);
            default:
                return block;
        }
    }

    static IEnumerable<Block> Leaves(Block block) =>
        block is Solid or Flowing ? [block] : block.Children.SelectMany(Leaves);

    static string Told(Block block) =>
        block switch
        {
            Solid solid => $"{solid.Name}[{solid.Height}]",
            Flowing flowing => $"{flowing.Name}~{flowing.Height}",
            Stack stack =>
                $"Stack{stack.Gap}/{stack.Rhythm}({string.Join(", ", stack.Items.Select(Told))})",
            _ => $"{block.GetType().Name}({string.Join(", ", block.Children.Select(Told))})",
        };
}
