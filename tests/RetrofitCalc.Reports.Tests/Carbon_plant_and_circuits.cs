using System.Globalization;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Carbon;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Examples;
using UglyToad.PdfPig;

namespace RetrofitCalc.Reports.Tests;

public class Carbon_plant_and_circuits
{
    private static readonly StudyResult Result = Samples.Quillmere;
    private static readonly QuantityText Text = QuantityText.For(Result.Study);

    private static StudyResult With(Func<Study, Study> change) => StudyEvaluation.Run(change(WorkedExample.Load()), Samples.Request.Rules);

    // RFCW in EPA eGRID2023: 915.959 lb/MWh on average; natural gas 53.06 kg per million BTU, 10 therms (from memory).
    [Fact]
    public void stand_in_the_table_of_results_and_can_be_redone_from_it()
    {
        var inventory = Csv("carbon, average of the grid");
        Assert.Equal(
            Csv("site: lighting energy").Zip(Csv("site: plant energy"), Csv("site: fuel saved by the lights' heat")).Select(year => Math.Round((year.First + year.Second) * 915.959 * 0.45359237 / 1000 - year.Third * 5.306, 6)),
            inventory.Select(kilograms => Math.Round(kilograms, 6)));
        Assert.True(inventory[0] > inventory[1]);
    }

    [Fact]
    public void call_carbon_unknown_without_a_grid_region()
    {
        var nowhere = new CarbonFigures(With(study => study with { Site = study.Site with { GridRegion = null } }));
        Assert.Equal("not known", CarbonFigures.Text(nowhere.Inventory(Result.Now), Text));
    }

    [Theory, InlineData(0, 0, 0, "none taken out"), InlineData(40, 0.12, 0, "0.12 in 40 lamps"), InlineData(40, 0.06, 20, "at least 0.06 in 40 lamps"), InlineData(40, 0, 40, "not known, 40 lamps")]
    public void say_how_much_of_the_mercury_is_known(double lamps, double grams, double unknown, string words) =>
        Assert.Equal(words, CarbonFigures.Mercury(new RetiredLamps(lamps, grams, unknown), Text));

    [Fact]
    public void print_how_each_plant_was_worked_out_with_weather_and_grid()
    {
        var rows = BudgetSummary.From(Result, Samples.Request).Assumptions[0].Tables[0].Rows.ToDictionary(row => row.Cells[0], row => row.Cells[1]);
        Assert.StartsWith("cooled 65", rows["Plant"]);
        Assert.StartsWith("a sealed room, cooled whenever its lights burn at COP 3.2", rows["Plant of Tissue culture"]);
        Assert.StartsWith("by the hour: cooled from 12.0 °C outdoors, outside air alone up to 15.0 °C", rows["Plant of Seedling racks"]);
        Assert.Contains("Invented weather year", rows["Weather"]);
        Assert.StartsWith("RFCW, Ohio Valley: 916.0 lb", rows["Grid"]);
    }

    [Fact]
    public void print_circuit_loads_with_who_decides_in_the_checklist()
    {
        using var bytes = new MemoryStream();
        SafetyChecklistPdf.Write(BudgetSummary.From(Result, Samples.Request), bytes);
        using var pdf = PdfDocument.Open(bytes.ToArray());
        var all = string.Concat(pdf.GetPages().Select(page => page.Text));
        Assert.Contains("Circuit loads, for the electrician", all);
        Assert.Contains("section numbers differ from place to place", all);
    }

    [Fact]
    public void give_every_line_two_rows_and_no_current_without_a_voltage()
    {
        var unsaid = With(study => study with { Lines = [study.Lines[0] with { SupplyVolts = null }, .. study.Lines.Skip(1)] });
        var table = CircuitTable.Of(unsaid, unsaid.Chosen, Text);
        Assert.Equal(2 * unsaid.Now.Lines.Count, table.Rows.Count);
        Assert.All(table.Rows.Take(2), row => Assert.All(row.Cells.Skip(2), cell => Assert.Equal("not known", cell)));
    }

    private static List<double> Csv(string name)
    {
        using var text = new StringWriter();
        ResultsCsv.Write(Result, text);
        var row = text.ToString().Split("\r\n").Single(line => line.StartsWith(name + ",", StringComparison.Ordinal) || line.StartsWith($"\"{name}\",", StringComparison.Ordinal));
        return [.. row.Split(',')[^(Result.Options.Count + 1)..].Select(cell => double.Parse(cell, CultureInfo.InvariantCulture))];
    }
}
