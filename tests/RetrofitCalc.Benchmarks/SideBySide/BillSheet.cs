using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace RetrofitCalc.Benchmarks.SideBySide;

/// <summary>The same year of bills as formulas of a LibreOffice sheet: one row for each 15 minutes, a sum or a maximum for each bill line.</summary>
internal static class BillSheet
{
    /// <summary>Copies of the bill in the sheet that is timed: the program's start and the reading of the rows weigh little against them.</summary>
    private const int Copies = 10;

    /// <summary>Seconds for one year of bills, and its total: the sheet with formulas less the same sheet without.</summary>
    public static (double Seconds, string Total) Measure(BillCase bill, string folder)
    {
        var without = Convert(Write(bill, folder, "rows", 0));
        var with = Convert(Write(bill, folder, "bills", Copies));
        var lines = Formulas(bill).Count();
        var total = File.ReadLines(Path.Combine(folder, "bills.csv")).Take(lines).Sum(row => double.Parse(row.Split(',')[^1], CultureInfo.InvariantCulture)) + 12 * bill.Fixed;
        return ((with - without) / Copies, total.ToString("0.00", CultureInfo.InvariantCulture));
    }

    private static string Write(BillCase bill, string folder, string name, int copies)
    {
        var text = new StringBuilder("""
            <?xml version="1.0" encoding="UTF-8"?>
            <office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
            <office:body><office:spreadsheet><table:table table:name="Year">
            """);
        var formulas = Enumerable.Repeat(Formulas(bill).ToList(), copies).SelectMany(copy => copy).ToList();
        foreach (var (row, interval) in bill.Intervals.Index())
        {
            text.Append("<table:table-row>");
            Number(text, interval.Kilowatts);
            Number(text, interval.Month);
            Number(text, interval.EnergyCharge);
            foreach (var counts in interval.Counts)
                Number(text, counts ? 1 : 0);
            if (row < formulas.Count)
                text.Append(CultureInfo.InvariantCulture, $"<table:table-cell table:formula=\"of:={formulas[row]}\"/>");
            text.Append("</table:table-row>\n");
        }
        text.Append("</table:table></office:spreadsheet></office:body></office:document>");
        var path = Path.Combine(folder, name + ".fods");
        File.WriteAllText(path, text.ToString());
        return path;
    }

    /// <summary>A cell for each bill line of the year; fixed amounts are added to their sum.</summary>
    private static IEnumerable<string> Formulas(BillCase bill)
    {
        var rows = bill.Intervals.Count;
        string column(char letter) => $"[.{letter}$1:.{letter}${rows}]";
        for (var month = 0; month < 12; month++)
        {
            foreach (var (charge, price) in bill.EnergyPrices.Index())
                yield return FormattableString.Invariant($"ROUND(SUMIFS({column('A')};{column('B')};{month};{column('C')};{charge})/4*{price};2)");
            foreach (var (charge, price) in bill.DemandPrices.Index())
                yield return FormattableString.Invariant($"ROUND(COM.MICROSOFT.MAXIFS({column('A')};{column('B')};{month};{column((char)('D' + charge))};1)*{price};2)");
        }
    }

    private static void Number(StringBuilder text, double value) =>
        text.Append(CultureInfo.InvariantCulture, $"<table:table-cell office:value-type=\"float\" office:value=\"{value:R}\"/>");

    private static double Convert(string path)
    {
        var folder = Path.GetDirectoryName(path)!;
        var start = new ProcessStartInfo("soffice") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in (string[])[$"-env:UserInstallation=file://{folder}/profile", "--headless", "--convert-to", "csv", "--outdir", folder, path])
            start.ArgumentList.Add(argument);
        var clock = Stopwatch.StartNew();
        using var process = Process.Start(start)!;
        process.WaitForExit();
        return process.ExitCode == 0 ? clock.Elapsed.TotalSeconds : throw new InvalidOperationException("LibreOffice did not compute the sheet.");
    }
}
