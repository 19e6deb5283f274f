using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports.Workbook;

/// <summary>Light: verdicts with the light of a day by formula, then readings with their weights and the mean over area by formula.</summary>
internal sealed class LightSheet
{
    private const string MolesOfMicromoleHours = "0.0036";
    private readonly WorkbookContext _context;

    private LightSheet(WorkbookContext context)
    {
        _context = context;
        Sheet.Texts(CellStyle.Title, "Light");
        Sheet.Texts(CellStyle.Line, "The light of a day is mean light times lit hours times 0.0036 (E-53). A mean is weighted by the area each reading stands for (E-55, E-60). Light after the change is the engine's; it stands here as a value.");
        Verdicts();
        foreach (var area in context.Result.Study.Areas)
            foreach (var set in area.Light?.Readings ?? []) Readings(area, set);
        People();
    }

    public SheetBuilder Sheet { get; } = new("Light", [44, 16, 16, 16, 16, 16, 16, 16, 16, 30], 0);

    public static SheetBuilder Of(WorkbookContext context) => new LightSheet(context).Sheet;

    private CropLightResult Light => _context.Option?.Light ?? _context.Result.Light;

    private void Verdicts()
    {
        Sheet.Texts(CellStyle.Head, "Area, season, stage", "Lit now, h", "Mean now, µmol/m²·s", "Daily now, mol/m²", "Lit after, h", "Mean after", "Daily after, mol/m²", "Mean at the end", "Change of daily light", "Verdict");
        foreach (var stage in Light.Stages) Verdict(stage);
    }

    private void Verdict(StageLight stage)
    {
        var hours = _context.Result.Light.Stages.FirstOrDefault(now => (now.Area, now.Season, now.Stage) == (stage.Area, stage.Season, stage.Stage))?.Photoperiod ?? stage.Photoperiod;
        Sheet.NewRow().Text($"{LightWords.Area(_context.Result.Study, stage.Area)}: {stage.Season}, {stage.Stage}");
        var row = Sheet.RowNumber;
        Daily(hours, stage.Now, $"B{row}*C{row}");
        Daily(stage.Photoperiod, stage.After, $"E{row}*F{row}");
        Known(stage.AtEnd?.Mean);
        if (stage is { Now: not null, After: not null }) Sheet.Formula($"G{row}/D{row}-1", CellStyle.Percent);
        else Sheet.Text(QuantityText.NotKnown);
        Sheet.Text(LightWords.Short(stage, _context.Text));
    }

    private void Daily(OperatingTime hours, LightFigures? light, string product)
    {
        Sheet.Number(hours.Hours, CellStyle.InputDecimal);
        Known(light?.Mean);
        if (light is null) Sheet.Text(QuantityText.NotKnown);
        else Sheet.Formula($"{product}*{MolesOfMicromoleHours}", CellStyle.Decimal);
    }

    private void Known(PhotonFluxDensity? light)
    {
        if (light is { } known) Sheet.Number(known.MicromolesPerSquareMetre, CellStyle.InputDecimal);
        else Sheet.Text(QuantityText.NotKnown);
    }

    private void Readings(Area area, ReadingSet set)
    {
        if (area.Light is not { } light || MeasuredLight.Of(set, light) is not { } read) return;
        var name = $"{area.Name}, set {set.Id}, {_context.Text.Length(set.Height)} under the lamps";
        Sheet.NewRow();
        Sheet.Texts(CellStyle.Head, $"Readings: {name}", "x from the middle, m", "y from the middle, m", "As read", "µmol of one unit", "Light, µmol/m²·s", "Weight");
        var first = Sheet.RowNumber + 1;
        foreach (var (at, reading) in read.Readings.Index()) Reading(set, reading, read.Weights[at]);
        var (lights, weights) = ($"F{first}:F{Sheet.RowNumber}", $"G{first}:G{Sheet.RowNumber}");
        var mean = Line($"Mean over area: {name}", $"SUMPRODUCT({lights},{weights})/SUM({weights})", CellStyle.Decimal);
        Line($"Lowest over mean: {name}", $"MIN({lights})/{mean}", CellStyle.Percent);
        Line($"Spread: {name}", $"SQRT(SUMPRODUCT({weights},({lights}-{mean})*({lights}-{mean}))/SUM({weights}))/{mean}", CellStyle.Percent);
        Sheet.Texts(CellStyle.Line, $"Weighting: {read.Weighting}.");
    }

    private void Reading(ReadingSet set, LightReading reading, double weight)
    {
        var typed = set.Values[reading.Index / set.Columns.Count][reading.Index % set.Columns.Count]!.Value;
        Sheet.NewRow().Text($"Reading {reading.Index + 1}");
        Sheet.Number(reading.Point.X, CellStyle.Decimal);
        Sheet.Number(reading.Point.Y, CellStyle.Decimal);
        Sheet.Number(typed, CellStyle.InputDecimal);
        Sheet.Number(typed > 0 ? reading.Light.MicromolesPerSquareMetre / typed : 1, CellStyle.InputDecimal);
        Sheet.Formula($"D{Sheet.RowNumber}*E{Sheet.RowNumber}", CellStyle.Decimal);
        Sheet.Number(weight, CellStyle.InputDecimal);
    }

    private string Line(string name, string formula, CellStyle style)
    {
        Sheet.NewRow().Text(name, CellStyle.Strong);
        return Sheet.Formula(formula, style);
    }

    private void People()
    {
        if (Light.People.Count == 0) return;
        Sheet.NewRow();
        Sheet.Texts(CellStyle.Head, "Light for people", "Wanted, lx", "Now, lx", "After, lx");
        foreach (var place in Light.People)
        {
            Sheet.NewRow().Text($"{LightWords.Area(_context.Result.Study, place.Area)}: {place.Task}");
            Sheet.Number(place.Wanted.Lux, CellStyle.Whole);
            foreach (var lux in new[] { place.Now, place.After })
            {
                if (lux is { } known) Sheet.Number(known.Lux, CellStyle.Whole);
                else Sheet.Text(QuantityText.NotKnown);
            }
        }
    }
}
