using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>What an option saves on the electricity bill, line by line: the same words and figures on pages, on paper and in the workbook.</summary>
/// <remarks>Amounts keep their cents, as a bill does, so that every total is the exact sum of the lines above it.</remarks>
public sealed record BillSavingPart
{
    /// <summary>What is saved, in one sentence with its sum.</summary>
    public required string Finding { get; init; }

    /// <summary>Demand apart, what the figures rest on, and what one average price would have said.</summary>
    public required IReadOnlyList<string> Sentences { get; init; }

    /// <summary>Each charge over the year, now and after.</summary>
    public required ReportTable Charges { get; init; }

    /// <summary>Each billing month, now and after.</summary>
    public required ReportTable Months { get; init; }

    /// <summary>The lights' own part of each billed peak; null without demand charges.</summary>
    public required ReportTable? Peaks { get; init; }

    /// <summary>For the board: one sentence where demand is a part of the saving worth its attention; else empty.</summary>
    public required string ForTheBoard { get; init; }

    /// <summary>Puts it together.</summary>
    /// <param name="result">The study's result.</param>
    /// <param name="option">One of its options.</param>
    /// <param name="text">How figures are printed.</param>
    public static BillSavingPart Of(StudyResult result, OptionResult option, QuantityText text) => new()
    {
        Finding = BillWords.Finding(option.Bill, text),
        Sentences = [.. BillWords.Sentences(result, option, text)],
        Charges = BillTables.Charges(option.Bill, text),
        Months = BillTables.Months(result.Now, option, text),
        Peaks = BillTables.Peaks(result, option, text),
        ForTheBoard = BillWords.ForTheBoard(option.Bill, text),
    };
}
