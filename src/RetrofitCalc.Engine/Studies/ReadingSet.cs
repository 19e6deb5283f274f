using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Studies;

/// <summary>How readings lie on the bench.</summary>
public enum ReadingPattern
{
    /// <summary>In the middles of equal cells over the whole bench.</summary>
    CellCentres,
    /// <summary>At the crossings of lines over the whole bench, its edges included.</summary>
    Crossings,
    /// <summary>At the crossings of lines over one quarter: from the middle of the bench to two of its edges.</summary>
    Quadrant,
    /// <summary>Along one or more lines outwards from the point under the middle.</summary>
    Outwards,
}

/// <summary>Unit of the meter.</summary>
public enum LightUnit
{
    /// <summary>Photons of 400–700 nm. [µmol m⁻² s⁻¹]</summary>
    Micromoles,
    /// <summary>Light for the eye. [lx]</summary>
    Lux,
    /// <summary>Light for the eye. [fc = lm/ft²]</summary>
    FootCandles,
}

/// <summary>How lux become photons.</summary>
/// <param name="LuxPerMicromole">Lux of one µmol m⁻² s⁻¹. [lx per µmol m⁻² s⁻¹, above 0]</param>
/// <param name="Uncertainty">How far it may be off, either way. [unitless, 0–0.5]</param>
/// <param name="Source">The spectrum or the named family it was taken from.</param>
public sealed record LuxConversion(double LuxPerMicromole, double Uncertainty, Provenance Source);

/// <summary>Readings of the present light at one height.</summary>
public sealed record ReadingSet
{
    /// <summary>Stable identifier within the area.</summary>
    public required string Id { get; init; }

    /// <summary>How the readings lie.</summary>
    public ReadingPattern Pattern { get; init; }

    /// <summary>Unit of the values.</summary>
    public LightUnit Unit { get; init; }

    /// <summary>How lux or foot-candles become photons; null when nobody has chosen: then the set tells nothing about photons.</summary>
    public LuxConversion? Conversion { get; init; }

    /// <summary>Height of the lamps over the sensor.</summary>
    public required Length Height { get; init; }

    /// <summary>Places along a row, rising: x from the middle of the bench, or the distance outwards. [m]</summary>
    public IReadOnlyList<double> Columns { get; init; } = [];

    /// <summary>A row of readings each: y from the middle of the bench, rising [m]; for lines outwards their direction from x towards y [degrees].</summary>
    public IReadOnlyList<double> Rows { get; init; } = [];

    /// <summary>A list for each row with a value for each column; null where nothing was read. [<see cref="Unit"/>]</summary>
    public IReadOnlyList<IReadOnlyList<double?>> Values { get; init; } = [];

    /// <summary>Name of the lit step while reading; null for all lamps.</summary>
    public string? LitStep { get; init; }

    /// <summary>Day of the readings; null when not noted.</summary>
    public LocalDate? Date { get; init; }

    /// <summary>Whether other light was kept out; null when not noted.</summary>
    public bool? RoomDark { get; init; }

    /// <summary>Whether the sensor lay level; null when not noted.</summary>
    public bool? SensorLevel { get; init; }

    /// <summary>How far the meter may be off, either way. [unitless, 0–0.5]</summary>
    public double MeterUncertainty { get; init; } = 0.05;

    /// <summary>Meter and circumstances.</summary>
    public string Note { get; init; } = "";

    /// <summary>Positions of readings someone has looked at again and stands by. [0-based, row · columns + column]</summary>
    public IReadOnlyList<int> Confirmed { get; init; } = [];

    /// <summary>Where a value is read, from the middle of the bench.</summary>
    /// <param name="row">Its row. [0-based]</param>
    /// <param name="column">Its column. [0-based]</param>
    /// <exception cref="ArgumentOutOfRangeException">No such row or column.</exception>
    public PlanePoint PointAt(int row, int column)
    {
        if (Pattern != ReadingPattern.Outwards) return new(Columns[column], Rows[row]);
        var (sine, cosine) = Math.SinCos(Rows[row] * Math.PI / 180);
        return new(Columns[column] * cosine, Columns[column] * sine);
    }
}
