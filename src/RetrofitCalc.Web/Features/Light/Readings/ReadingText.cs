using System.Globalization;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Typing;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Light.Readings;

/// <summary>Words about readings and where they lie.</summary>
public sealed class ReadingText(Study study, AreaLight light)
{
    private readonly CultureInfo _culture = CultureInfo.GetCultureInfo(study.Site.Culture);
    private readonly LengthUnit _unit = UnitOf(study, light);

    private const double FeetFrom = 5; // m

    /// <summary>Inches over a bench and feet over a hall where people count in these, else metres.</summary>
    public static LengthUnit UnitOf(Study study, AreaLight light) =>
        UnitSystems.Usual(study.Site) != UnitSystem.UsCustomary ? LengthUnit.Metres
        : light.BenchLength is { Metres: > FeetFrom } ? LengthUnit.Feet : LengthUnit.Inches;

    public static string Name(ReadingPattern pattern) => pattern switch
    {
        ReadingPattern.CellCentres => "Middles of cells",
        ReadingPattern.Crossings => "Crossings, edges included",
        ReadingPattern.Quadrant => "One quarter, from the middle outwards",
        _ => "Lines outwards from the middle",
    };

    public static string Hint(ReadingPattern pattern) => pattern switch
    {
        ReadingPattern.CellCentres => "The bench in equal cells, a reading in the middle of each. The plain mean is the mean of the area.",
        ReadingPattern.Crossings => "Lines from edge to edge, a reading where they cross. Readings at the edge count half, at corners a quarter.",
        ReadingPattern.Quadrant => "Fewest readings. Only where the luminaires hang evenly about the middle: the other quarters are taken as its mirror.",
        _ => "From the point under the middle of the luminaire to the edge, along two lines or more. Outer readings count for more area.",
    };

    public static string Unit(LightUnit unit) => unit switch
    {
        LightUnit.Micromoles => "µmol/m²·s (PPFD)",
        LightUnit.Lux => "lux",
        _ => "foot-candle",
    };

    /// <summary>Sign of the places in heads of the grid.</summary>
    public string PlaceUnit(ReadingSet set, bool row) => row && set.Pattern == ReadingPattern.Outwards ? "°" : LengthField.Sign(_unit);

    /// <summary>A place along a row as one measures it: from the left end of the bench where that is known, else from the middle.</summary>
    public string Column(ReadingSet set, int column) => Place(set, set.Columns[column], light.BenchLength);

    public string Row(ReadingSet set, int row) => set.Pattern == ReadingPattern.Outwards ? Number(set.Rows[row]) : Place(set, set.Rows[row], light.BenchWidth);

    /// <summary>"from the left end" or "from the middle".</summary>
    public string ColumnFrom(ReadingSet set) => FromEdge(set, light.BenchLength) ? "from the left end" : "from the middle";

    public string RowFrom(ReadingSet set) => FromEdge(set, light.BenchWidth) ? "from the far edge" : "from the middle";

    /// <summary>"18 in from the left end, 6 in from the far edge".</summary>
    public string Where(ReadingSet set, int row, int column)
    {
        var along = $"{Column(set, column)} {PlaceUnit(set, row: false)}";
        return set.Pattern == ReadingPattern.Outwards
            ? $"{along} out, {Direction(set.Rows[row])}"
            : $"{along} {ColumnFrom(set)}, {Row(set, row)} {PlaceUnit(set, row: true)} {RowFrom(set)}";
    }

    /// <summary>"24 readings, 12 in under the lamps".</summary>
    public string Title(ReadingSet set)
    {
        var (taken, all) = (ReadingGrids.Taken(set), set.Columns.Count * set.Rows.Count);
        return string.Create(CultureInfo.InvariantCulture, $"{(taken == all ? $"{all}" : $"{taken} of {all}")} {(all == 1 ? "reading" : "readings")}, {Height(set)} under the lamps");
    }

    public string Height(ReadingSet set) => Near(set.Height);

    /// <summary>What the spacing rule asks for on this bench.</summary>
    public string Spacing(Length length, Length width)
    {
        var cells = GridSpacing.For(length, width);
        var largest = GridSpacing.Largest(length < width ? length : width);
        return $"EN 12464-1 wants readings at most {Near(largest)} apart here, as the shorter side asks: {cells.AlongLength} by {cells.AlongWidth} cells. The finer of what both sides ask for is kept.";
    }

    private static string Direction(double degrees) => degrees switch
    {
        0 => "to the right",
        90 => "towards you",
        180 => "to the left",
        270 => "away from you",
        _ => $"{degrees:0}° from the right towards you",
    };

    private string Place(ReadingSet set, double metres, Length? side) => Number((FromEdge(set, side) ? metres + side!.Value.Metres / 2 : metres) / Metre);

    private static bool FromEdge(ReadingSet set, Length? side) => side is not null && set.Pattern is (ReadingPattern.CellCentres or ReadingPattern.Crossings);

    private double Metre => _unit switch { LengthUnit.Inches => UnitConversions.MetresPerFoot / 12, LengthUnit.Feet => UnitConversions.MetresPerFoot, _ => 1 };

    /// A tenth of an inch or a centimetre: nobody places a sensor closer.
    private string Number(double value) => NumberText.Write(Math.Round(value, _unit == LengthUnit.Metres ? 2 : 1), _culture);

    /// <summary>A length near the crop: "12 in" or "0.3 m".</summary>
    public string Near(Length length) => $"{Number(length.Metres / Metre)} {LengthField.Sign(_unit)}";
}
