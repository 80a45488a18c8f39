using System.Text.Json;
using PatternPress.Quilting.Tables;
using PatternPress.Tests.Quilting.Cutting;

namespace PatternPress.Tests.Quilting.Tables;

public sealed class TablesExportTests
{
    private static readonly PrintedTables Star = Tabulator.Tabulate(
        Makings.Of(
            File.ReadAllText(
                Path.Combine(Repository.Root, "tests", "cases", "tables", "star.quilt.yaml")
            )
        )
    );

    [Test]
    public void Json_says_what_the_tables_say()
    {
        using var json = JsonDocument.Parse(TablesJson.Of(Star));
        JsonElement root = json.RootElement;
        root.GetProperty("unit").GetString().ShouldBe("in");
        root.GetProperty("sizes").GetArrayLength().ShouldBe(2);
        JsonElement night = root.GetProperty("requirements").GetProperty("fabrics")[0];
        night.GetProperty("fabric").GetString().ShouldBe("A");
        night
            .GetProperty("bySize")
            .GetProperty("throw")
            .GetProperty("buy")
            .GetString()
            .ShouldBe("2 7/8 yd");
        JsonElement geese = root.GetProperty("units")[0].GetProperty("rows")[0];
        JsonElement made = geese.GetProperty("bySize").GetProperty("throw");
        made.GetProperty("needed").GetInt64().ShouldBe(40);
        made.GetProperty("batch")[0].GetProperty("width").GetString().ShouldBe("7 1/4");
        root.GetProperty("placement")[1].GetProperty("rows").GetArrayLength().ShouldBe(5);
    }

    [Test]
    public void Json_and_csv_are_the_same_each_time()
    {
        TablesJson.Of(Star).ShouldBe(TablesJson.Of(Star));
        TablesCsv.Of(Star).ShouldBe(TablesCsv.Of(Star));
    }

    [Test]
    public void Csv_has_a_line_for_each_value()
    {
        string[] lines = TablesCsv.Of(Star).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        lines[0].ShouldBe("table,row,item,size,value,unit");
        lines.Length.ShouldBe(PrintedFacts.Of(Star).Count() + 1);
        lines.ShouldContain("requirements,fabric A,buy,throw,2 7/8,yd");
        lines.ShouldContain("sizes,quilt,width,throw,68 1/2,in");
    }

    [Test]
    public void Csv_quotes_what_needs_it()
    {
        PrintedTables tables = Star with
        {
            Sizes = [Star.Sizes[0] with { Name = "Wall, \"small\"" }, Star.Sizes[1]],
        };
        TablesCsv.Of(tables).ShouldContain("sizes,quilt,name,wall,\"Wall, \"\"small\"\"\",\r\n");
    }

    [Test]
    public void No_value_is_told_twice()
    {
        var seen = new HashSet<(string, string, string, string)>();
        foreach (PrintedFact fact in PrintedFacts.Of(Star))
        {
            // One piece may be cut from two places of a strip.
            if (fact.Table != "strips")
            {
                seen.Add((fact.Table, fact.Row, fact.Item, fact.Size))
                    .ShouldBeTrue(fact.ToString());
            }
        }
    }
}
