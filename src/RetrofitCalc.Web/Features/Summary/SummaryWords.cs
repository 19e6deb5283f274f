namespace RetrofitCalc.Web.Features.Summary;

/// <summary>Names of the files one can take away.</summary>
public static class SummaryWords
{
    public static string Of(string path) => path switch
    {
        "summary.pdf" => "Summary, PDF",
        "checklist.pdf" => "Checklist, PDF",
        "summary.xlsx" => "Workbook, XLSX",
        "results.csv" => "Results, CSV",
        _ => path,
    };
}
