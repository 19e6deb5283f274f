using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports.Workbook;

/// <summary>Cash flow against keeping, year by year and live. Replacements saved are inputs at prices of the start.</summary>
internal sealed class CashFlowSheet
{
    private const string Name = "Cash flow";
    private readonly uint _first;
    private readonly uint _last;
    private readonly string _discountRate;

    public CashFlowSheet(WorkbookContext context, InputsSheet inputs, string firstCost, string saving)
    {
        _discountRate = inputs.DiscountRate;
        var costEscalation = context.Result.Study.Assumptions.CostEscalation;
        Sheet.Texts(CellStyle.Title, Name);
        Sheet.Texts(CellStyle.Head, ["Year", "First cost", "Energy saved", "Replacements saved, prices of the start", "Replacements saved", "Net", "Sum so far", "Discounted", "Discounted sum", "Back in (years)", "Back, discounted"]);
        _first = Sheet.RowNumber + 1;
        foreach (var year in context.Option?.CashFlow ?? []) Row(year, costEscalation, inputs, Amount(year.Year));
        _last = Sheet.RowNumber;

        string Amount(int year) => year switch
        {
            0 => $"-{firstCost}",
            1 => $"({saving}-{inputs.FirstYearLess}*{inputs.EnergyPriceFactor})",
            _ => saving,
        };
    }

    public SheetBuilder Sheet { get; } = new(Name, [8, 15, 15, 22, 18, 15, 15, 15, 16, 14, 16], 2);

    public string NetPresentValue => $"NPV({_discountRate},{Column('F', _first + 1)})+{Cell('F', _first)}";

    /// <summary>Spreadsheets search from a guess; the yearly growth from first cost to the sum of the later flows starts them near.</summary>
    public string InternalRate
    {
        get
        {
            var (flows, later, start) = (Column('F', _first), Column('F', _first + 1), Cell('F', _first));
            return $"IFERROR(IRR({flows},(SUM({later})/-{start})^(1/{_last - _first})-1),IFERROR(IRR({flows}),\"none found\"))";
        }
    }

    public string SimplePayback => Payback('G', 'J');

    public string DiscountedPayback => Payback('I', 'K');

    public uint FirstRow => _first;

    public uint LastRow => _last;

    private void Row(CashFlowYear year, double costEscalation, InputsSheet inputs, string amount)
    {
        Sheet.NewRow().Number(year.Year, CellStyle.Whole);
        var r = Sheet.RowNumber;
        if (year.Year == 0) Sheet.Formula(amount, CellStyle.Money);
        else Sheet.Number(0, CellStyle.Money);
        if (year.Year == 0) Sheet.Number(0, CellStyle.Money);
        else Sheet.Formula($"{amount}*(1+{inputs.EnergyEscalation})^(A{r}-1)", CellStyle.Money);
        Sheet.Number(year.Year == 0 ? 0 : year.MaintenanceSaving.Units / Math.Pow(1 + costEscalation, year.Year - 1), CellStyle.InputMoney);
        Sheet.Formula(year.Year == 0 ? $"D{r}" : $"D{r}*(1+{inputs.CostEscalation})^(A{r}-1)", CellStyle.Money);
        Sheet.Formula($"B{r}+C{r}+E{r}", CellStyle.Money);
        Sheet.Formula(year.Year == 0 ? $"F{r}" : $"G{r - 1}+F{r}", CellStyle.Money);
        Sheet.Formula($"F{r}/(1+{inputs.DiscountRate})^A{r}", CellStyle.Money);
        Sheet.Formula(year.Year == 0 ? $"H{r}" : $"I{r - 1}+H{r}", CellStyle.Money);
        if (year.Year == 0) return;
        Sheet.Formula(Crossing('G', 'F', r), CellStyle.Decimal);
        Sheet.Formula(Crossing('I', 'H', r), CellStyle.Decimal);
    }

    /// <summary>Where the sum comes from below zero to zero or more, interpolated within the year.</summary>
    private static string Crossing(char sum, char flow, uint r) => $"IF(AND({sum}{r - 1}<0,{sum}{r}>=0),A{r - 1}-{sum}{r - 1}/{flow}{r},\"\")";

    private string Payback(char sum, char crossing) =>
        $"IF({Cell(sum, _first)}>=0,0,IF(COUNT({Column(crossing, _first + 1)})=0,\"never in {_last - _first} years\",MIN({Column(crossing, _first + 1)})))";

    private static string Cell(char column, uint row) => $"'{Name}'!${column}${row}";

    private string Column(char column, uint from) => $"'{Name}'!${column}${from}:${column}${_last}";
}
