namespace RetrofitCalc.Reports.Tests;

/// <summary>Writes the documents into an ignored folder, to be looked at.</summary>
public class Documents_for_the_eye
{
    private static readonly string Folder = Directory.CreateDirectory(Path.Combine(AppContext.BaseDirectory, "out")).FullName;

    [Fact]
    public void are_written_for_every_sample()
    {
        foreach (var (name, result) in new[] { ("quillmere", Samples.Quillmere), ("crowded", Samples.Crowded), ("rupees", Samples.InRupees), ("ratchet", Samples.Ratcheted) })
        {
            var path = Path.Combine(Folder, name + ".pdf");
            File.WriteAllBytes(path, Samples.Pdf(result));
            using var book = File.Create(Path.ChangeExtension(path, ".xlsx"));
            SummaryWorkbook.Write(BudgetSummary.From(result, Samples.Request), result, book);
            Assert.True(new FileInfo(path).Length > 10_000, path);
        }
    }

    [Fact]
    public void are_written_for_the_bench_too()
    {
        foreach (var area in Samples.Quillmere.Study.Areas)
        {
            var path = Path.Combine(Folder, $"measure-{area.Id}.pdf");
            using (var file = File.Create(path)) MeasuringSheetPdf.Write(MeasuringSheet.Of(Samples.Quillmere.Study, area.Id, Samples.Request.Date)!, file);
            Assert.True(new FileInfo(path).Length > 10_000, path);
        }
    }
}
