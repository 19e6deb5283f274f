using System.Text;

namespace RetrofitCalc.Files.Surveys.Tables;

/// <summary>Reads text copied from a spreadsheet: tabs between cells, cells with line breaks in quotation marks.</summary>
public static class PastedTable
{
    /// <summary>A table whose first row holds headings.</summary>
    public static Parsed<SurveyTable> Read(string text)
    {
        if (!text.Contains('\t')) return CsvTable.Read(new MemoryStream(Encoding.UTF8.GetBytes(text)));
        var cells = Cells(text);
        if (cells.Value is not { } rows) return new Parsed<SurveyTable>(null, cells.Problems);
        var builder = new TableBuilder();
        for (var i = 0; i < rows.Count; i++)
            if (!builder.Add(i + 1, rows[i])) break;
        return builder.Finish();
    }

    /// <summary>The bare cells, for pasting into the survey grid at the cell one stands on. Empty cells are kept.</summary>
    public static Parsed<IReadOnlyList<IReadOnlyList<string>>> Cells(string text)
    {
        var rows = new List<IReadOnlyList<string>>();
        var cells = new List<string>();
        for (var at = 0; at < text.Length;)
        {
            cells.Add(NextCell(text, ref at));
            var ends = at >= text.Length || text[at] is '\n' or '\r';
            if (at < text.Length) at += text.AsSpan(at).StartsWith("\r\n") ? 2 : 1;
            if (!ends) continue;
            rows.Add(cells);
            cells = [];
            if (rows.Count > TableLimits.Rows) return Parsed.Bad<IReadOnlyList<IReadOnlyList<string>>>(TableLimits.TooManyRows);
        }
        if (cells.Count > 0) rows.Add([.. cells, ""]);
        return Parsed.Good<IReadOnlyList<IReadOnlyList<string>>>(rows);
    }

    /// <summary>Reads up to the tab or line end, which stays for the caller.</summary>
    private static string NextCell(string text, ref int at)
    {
        if (text[at] == '"' && ClosingQuote(text, at) is var close and > 0)
        {
            var inside = text[(at + 1)..close].Replace("\"\"", "\"");
            at = close + 1;
            return inside;
        }
        var end = text.AsSpan(at).IndexOfAny('\t', '\n', '\r');
        var cell = end < 0 ? text[at..] : text.Substring(at, end);
        at += cell.Length;
        return cell;
    }

    /// <summary>The quote that closes a cell: single, and followed by a tab, a line end or nothing. Inches (4") are not quotes.</summary>
    private static int ClosingQuote(string text, int open)
    {
        for (var i = open + 1; i < text.Length; i++)
        {
            if (text[i] != '"') continue;
            if (i + 1 < text.Length && text[i + 1] == '"') i++;
            else return i + 1 == text.Length || text[i + 1] is '\t' or '\n' or '\r' ? i : -1;
        }
        return -1;
    }
}
