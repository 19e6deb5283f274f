using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports.Workbook;

/// <summary>Each line now and after: count × watts × hours × price, live. Prices by line are the engine's bills spread over its energy.</summary>
internal sealed class LinesSheet
{
    private const int Columns = 7;
    private readonly InputsSheet _inputs;

    public LinesSheet(WorkbookContext context, InputsSheet inputs)
    {
        _inputs = inputs;
        Sheet.Texts(CellStyle.Title, "Lines").Texts(CellStyle.Line, "Hours are hours at full load. The price of a line is what its energy adds to the bill, demand and plant included, over its kWh.");
        Sheet.Texts(CellStyle.Head, ["Line", "Area", "Way", "Luminaires", "W each", "Connected W", "Ballast loss W", "Full-load hours a year", "kWh a year", "Price per kWh", "Cost a year"]);
        Now = Case("now", context.Result.Now, context);
        After = context.Option is { } option ? Case("proposed", option.After, context) : null;
    }

    public SheetBuilder Sheet { get; } = new("Lines", [34, 24, 11, 12, 11, 14, 14, 14, 14, 14, 16], 3);

    public Sums Now { get; }

    public Sums? After { get; }

    /// <summary>Places of the sums of one case.</summary>
    internal sealed record Sums(string Connected, string BallastLoss, string Energy, string Cost);

    private Sums Case(string way, LightingCase lighting, WorkbookContext context)
    {
        var first = Sheet.RowNumber + 1;
        foreach (var line in lighting.Lines) Line(way, line, context);
        Remainder(way, lighting);
        var last = Sheet.RowNumber;
        Sheet.NewRow().Text("Sum", CellStyle.Strong).Text("", CellStyle.Strong).Text(way, CellStyle.Strong).Skip().Skip();
        string Sum(int column, CellStyle style) => Sheet.Formula($"SUM({SheetBuilder.Reference(column, first)}:{SheetBuilder.Reference(column, last)})", style);
        var (connected, loss) = (Sum(5, CellStyle.WholeStrong), Sum(6, CellStyle.WholeStrong));
        Sheet.Skip();
        var energy = Sum(8, CellStyle.WholeStrong);
        Sheet.Skip();
        return new Sums(connected, loss, energy, Sum(10, CellStyle.MoneyStrong));
    }

    private void Line(string way, LineFigures line, WorkbookContext context)
    {
        Sheet.NewRow().Text(context.LineName(line.Line)).Text(context.AreaOf(line.Line)).Text(way);
        var row = Sheet.RowNumber;
        var (watts, energy) = (line.Connected.Watts, line.Energy.KilowattHours);
        Sheet.Number(line.Luminaires, CellStyle.InputDecimal);
        Sheet.Number(line.Luminaires > 0 ? watts / line.Luminaires : 0, CellStyle.InputDecimal);
        Sheet.Formula($"D{row}*E{row}", CellStyle.Whole);
        if (line.BallastLoss is { } loss) Sheet.Number(loss.Watts, CellStyle.Whole);
        else Sheet.Text(QuantityText.NotKnown);
        Sheet.Number(watts > 0 ? energy * 1000 / watts : 0, CellStyle.InputDecimal);
        Sheet.Formula($"F{row}*H{row}*{_inputs.HoursFactor}/1000", CellStyle.Whole);
        Sheet.Number(energy > 0 ? line.Cost.Units / energy : 0, CellStyle.InputPrice);
        Sheet.Formula($"I{row}*J{row}*{_inputs.EnergyPriceFactor}", CellStyle.Money);
    }

    /// <summary>Cost that no line's energy carries, such as demand billed by a ratchet in dark months.</summary>
    private void Remainder(string way, LightingCase lighting)
    {
        var rest = lighting.Site.Cost.Units - lighting.Lines.Where(line => line.Energy.KilowattHours > 0).Sum(line => line.Cost.Units);
        if (Math.Abs(rest) < 0.005) return;
        Sheet.NewRow().Text("Not carried by any line's energy").Text("").Text(way);
        for (var i = 3; i < 3 + Columns; i++) Sheet.Skip();
        Sheet.Number(rest, CellStyle.InputMoney);
    }
}
