using System.Text;

namespace PatternPress.Quilting.Tables;

/// <summary>The printed values as comma-separated text (RFC 4180), one value a line.</summary>
public static class TablesCsv
{
    public static string Of(PrintedTables tables)
    {
        var text = new StringBuilder("table,row,item,size,value,unit\r\n");
        foreach (PrintedFact fact in PrintedFacts.Of(tables))
        {
            foreach (
                string field in new[] { fact.Table, fact.Row, fact.Item, fact.Size, fact.Value }
            )
            {
                Field(text, field);
                text.Append(',');
            }
            Field(text, fact.Unit);
            text.Append("\r\n");
        }
        return text.ToString();
    }

    private static void Field(StringBuilder text, string field)
    {
        if (field.AsSpan().IndexOfAny(",\"\r\n") < 0)
        {
            text.Append(field);
            return;
        }
        text.Append('"').Append(field.Replace("\"", "\"\"")).Append('"');
    }
}
