namespace RetrofitCalc.Reports.Workbook;

/// <summary>Rates and sums that the other sheets read. Each property is the place of one input cell.</summary>
internal sealed class InputsSheet
{
    public InputsSheet(WorkbookContext context)
    {
        var (a, option) = (context.Result.Study.Assumptions, context.Option);
        Sheet.Texts(CellStyle.Title, "Inputs").Texts(CellStyle.Line, "Ochre cells may be changed; the other sheets follow.");
        Sheet.Texts(CellStyle.Head, "What", "Value", "Remark");
        DiscountRate = Add("Discount rate, nominal, a year", a.DiscountRate, CellStyle.InputPercent);
        EnergyEscalation = Add("Rise of energy prices a year", a.EnergyEscalation, CellStyle.InputPercent);
        CostEscalation = Add("Rise of parts and labour a year", a.CostEscalation, CellStyle.InputPercent);
        EnergyPriceFactor = Add("Factor on all prices of electricity", 1, CellStyle.InputDecimal, "1 for the tariff as given; prices by line stand on the sheet Lines");
        HoursFactor = Add("Factor on all hours lit", 1, CellStyle.InputDecimal);
        if (option is null) return;
        var (first, costs) = (option.FirstCost, option.Option.Costs);
        var rate = costs.ElectricianRate.Units;
        Parts = Add("Tubes, luminaires, lamps, ballasts", first.Parts.Units, CellStyle.InputMoney, "sum over the lines");
        ElectricianRate = Add("Licensed electrician, hour", rate, CellStyle.InputMoney);
        ElectricianHours = Add("Licensed electrician, hours", rate > 0 ? first.Labour.Units / rate : 0, CellStyle.InputDecimal, "sum over the lines");
        Disposal = Add("Recycling", first.Disposal.Units, CellStyle.InputMoney, "sum over the lines");
        FixedSum = Add("Permits and other fixed sums", first.FixedSum.Units, CellStyle.InputMoney);
        Contingency = Add("Contingency, share of parts, labour and recycling", costs.Contingency, CellStyle.InputPercent);
        FirstYearLess = Add("Saved less in the first year", (option.AnnualBillSaving - option.FirstYearBillSaving).Units, CellStyle.InputMoney, "a ratchet remembers the peaks before the change; sheet Bill");
        Incentive = Add("Incentive, after its cap", first.Incentive.Units, CellStyle.InputMoney, "does not follow other inputs here");
    }

    public SheetBuilder Sheet { get; } = new("Inputs", [48, 16, 60], 3);

    public string DiscountRate { get; }
    public string EnergyEscalation { get; }
    public string CostEscalation { get; }
    public string EnergyPriceFactor { get; }
    public string HoursFactor { get; }
    public string Parts { get; } = "0";
    public string ElectricianRate { get; } = "0";
    public string ElectricianHours { get; } = "0";
    public string Disposal { get; } = "0";
    public string FixedSum { get; } = "0";
    public string Contingency { get; } = "0";
    public string Incentive { get; } = "0";
    public string FirstYearLess { get; } = "0";

    private string Add(string what, double value, CellStyle style, string remark = "")
    {
        Sheet.NewRow().Text(what);
        var place = Sheet.Number(value, style);
        Sheet.Text(remark);
        return place;
    }
}
