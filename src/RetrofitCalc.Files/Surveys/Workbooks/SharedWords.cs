using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using RetrofitCalc.Files.Surveys.Tables;

namespace RetrofitCalc.Files.Surveys.Workbooks;

/// <summary>The texts a workbook keeps once and cells point to.</summary>
internal static class SharedWords
{
    /// <summary>All shared texts in order; null when there are far too many.</summary>
    public static IReadOnlyList<string>? Of(SpreadsheetDocument book)
    {
        var words = new List<string>();
        if (book.WorkbookPart?.SharedStringTablePart is not { } part) return words;
        long characters = 0;
        using var reader = OpenXmlReader.Create(part);
        while (reader.Read())
        {
            if (reader.ElementType != typeof(SharedStringItem) || !reader.IsStartElement) continue;
            var text = TextOf((SharedStringItem)reader.LoadCurrentElement()!);
            characters += text.Length;
            words.Add(text);
            if (words.Count > WorkbookLimits.SharedStrings || characters > TableLimits.Characters) return null;
        }
        return words;
    }

    /// <summary>Plain or in formatted runs; reading aids for East Asian names are left out.</summary>
    public static string TextOf(OpenXmlElement item) =>
        string.Concat(item.Descendants<Text>().Where(t => t.Parent is not PhoneticRun).Select(t => t.Text));
}
