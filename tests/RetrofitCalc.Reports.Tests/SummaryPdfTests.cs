using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace RetrofitCalc.Reports.Tests;

/// <summary>The PDF read back by PdfPig, an independent reader.</summary>
public class Summary_on_paper
{
    private static readonly byte[] Quillmere = Samples.Pdf(Samples.Quillmere);
    private static readonly BudgetSummary Summary = BudgetSummary.From(Samples.Quillmere, Samples.Request);

    [Fact]
    public void puts_title_key_figures_and_open_stops_on_the_first_sheet()
    {
        using var pdf = PdfDocument.Open(Quillmere);
        var first = Text(pdf.GetPage(1));
        Contains(Summary.Title, first);
        Assert.All(Summary.Figures, figure => Contains(figure.Value, first));
        Assert.NotEmpty(Summary.OpenStops);
        Contains("STOP, open", first);
        Assert.All(Summary.OpenStops, stop => Contains(stop, first));
        Contains(BudgetSummary.NotProven, first);
    }

    [Theory, InlineData("Quillmere"), InlineData("Crowded"), InlineData("InRupees")]
    public void keeps_the_board_to_one_sheet(string sample)
    {
        using var pdf = PdfDocument.Open(Samples.Pdf(Samples.Named(sample)));
        Contains("The study file is attached to this PDF.", Text(pdf.GetPage(1)));
        Contains("Annex A: figures and inputs", Text(pdf.GetPage(2)));
        Assert.DoesNotContain(pdf.GetPages(), page => page.Letters.Any(letter => letter.BoundingBox.Bottom < 20 || letter.BoundingBox.Right > page.Width - 30));
    }

    [Fact]
    public void defers_on_every_sheet_and_counts_them()
    {
        using var pdf = PdfDocument.Open(Quillmere);
        foreach (var page in pdf.GetPages())
        {
            Contains(Summary.Head.Deferral, Text(page));
            Contains($"Page {page.Number} of {pdf.NumberOfPages}", Text(page));
        }
    }

    [Fact]
    public void carries_the_study_file_byte_for_byte()
    {
        using var pdf = PdfDocument.Open(Quillmere);
        Assert.True(pdf.Advanced.TryGetEmbeddedFiles(out var files));
        Assert.Equal(Samples.File(Samples.Quillmere), files.Single().Memory.ToArray());
    }

    [Theory, InlineData("en-US", "USD", "$"), InlineData("de-DE", "EUR", "€"), InlineData("en-IN", "INR", "₹"), InlineData("en-GB", "GBP", "£"), InlineData("he-IL", "ILS", "₪"), InlineData("en-US", "CAD", "CAD")]
    public void prints_the_sign_of_the_currency_and_misses_no_glyph(string culture, string currency, string sign)
    {
        using var pdf = PdfDocument.Open(Samples.Pdf(Samples.In(culture, currency)));
        Contains(sign, Text(pdf.GetPage(1)));
        Assert.DoesNotContain(pdf.GetPages().SelectMany(page => page.Letters), letter => letter.Value.Contains('\uFFFD') || letter.Value == "\0");
    }

    [Fact]
    public void is_tagged_titled_and_in_a_language()
    {
        using var pdf = PdfDocument.Open(Quillmere);
        Assert.Equal(Summary.Title, pdf.Information.Title);
        var catalogue = pdf.Structure.Catalog.CatalogDictionary;
        Assert.Contains("StructTreeRoot", catalogue.Data.Keys);
        Assert.Contains("Lang", catalogue.Data.Keys);
        var tags = System.Text.Encoding.Latin1.GetString(Quillmere);
        Assert.All(new[] { "/H1", "/P", "/Table", "/TR", "/TH", "/TD", "/Figure", "/Alt" }, tag => Assert.Contains(tag, tags));
    }

    [Fact]
    public void is_the_same_bytes_for_the_same_request() => Assert.Equal(Quillmere, Samples.Pdf(Samples.Quillmere));

    [Fact]
    public void is_made_in_about_a_second()
    {
        var watch = System.Diagnostics.Stopwatch.StartNew();
        Samples.Pdf(Samples.Quillmere);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(5), $"It took {watch.Elapsed}; aim is one second, five allow for a busy machine.");
    }

    [Fact]
    public void names_the_option_that_never_pays_back_as_such_and_does_not_ask_for_it()
    {
        var crowded = BudgetSummary.From(Samples.Crowded, Samples.Request);
        Assert.DoesNotContain("Approve", crowded.Title);
        Contains("never pays back in 10 years", crowded.Title);
    }

    [Fact]
    public void uses_letter_paper_in_north_america_and_A4_elsewhere()
    {
        using var american = PdfDocument.Open(Quillmere);
        using var german = PdfDocument.Open(Samples.Pdf(Samples.In("de-DE", "EUR", "eu")));
        Assert.Equal((612, 792), (american.GetPage(1).Width, american.GetPage(1).Height));
        Assert.Equal((595, 842), (Math.Round(german.GetPage(1).Width), Math.Round(german.GetPage(1).Height)));
    }

    private static void Contains(string expected, string text) => Assert.Contains(Squeezed(expected), Squeezed(text), StringComparison.Ordinal);

    /// <summary>Lines are broken where the sheet ends: spaces are no part of the comparison.</summary>
    private static string Squeezed(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    private static string Text(Page page) => ContentOrderTextExtractor.GetText(page);
}

public class Safety_checklist_on_paper
{
    [Fact]
    public void stands_alone_with_every_item_and_defers_on_every_sheet()
    {
        using var bytes = new MemoryStream();
        var summary = BudgetSummary.From(Samples.Quillmere, Samples.Request);
        SafetyChecklistPdf.Write(summary, bytes);
        using var pdf = PdfDocument.Open(bytes.ToArray());
        var all = string.Concat(pdf.GetPages().Select(page => page.Text));
        Assert.All(pdf.GetPages(), page => Assert.Contains("licensed electrician decide", page.Text));
        Assert.All(Samples.Request.Rules.Checklist.SelectMany(phase => phase.Items), item => Assert.Contains(item.Id, all));
        Assert.Contains("does not apply", all);
    }
}
