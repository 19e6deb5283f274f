using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports.Workbook;

/// <summary>What the sheets read.</summary>
/// <param name="Summary">The summary as printed.</param>
/// <param name="Result">The result, unrounded.</param>
/// <param name="Option">The option asked for; null when there is none.</param>
internal sealed record WorkbookContext(BudgetSummary Summary, StudyResult Result, OptionResult? Option)
{
    public QuantityText Text { get; } = QuantityText.For(Result.Study);

    public string LineName(string id) => Result.Study.Lines.FirstOrDefault(line => line.Id == id) is { Name.Length: > 0 } line ? line.Name : $"line {id}";

    public string AreaOf(string id) => Result.Study.Areas.FirstOrDefault(area => area.Id == Result.Study.Lines.FirstOrDefault(line => line.Id == id)?.Area)?.Name ?? "";
}
