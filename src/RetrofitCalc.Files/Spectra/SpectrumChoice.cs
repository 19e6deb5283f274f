namespace RetrofitCalc.Files.Spectra;

/// <summary>Unit of the wavelengths.</summary>
public enum WavelengthUnit
{
    Nanometres,
    Micrometres,
}

/// <summary>Unit of the values. A photon count taken for watts shifts blue against red by about 1.45.</summary>
public enum SpectrumUnit
{
    /// <summary>Shape only, watts.</summary>
    Relative,
    /// <summary>Shape only, photons.</summary>
    RelativePhotons,
    WattsPerNanometre,
    MilliwattsPerNanometre,
    /// <summary>Photons: µmol s⁻¹ nm⁻¹.</summary>
    MicromolesPerSecondNanometre,
}

/// <summary>Which column is which, and in what unit.</summary>
/// <param name="Wavelength">Column of the wavelengths, from 0.</param>
/// <param name="Value">Column of the values, from 0.</param>
/// <param name="WavelengthUnit">Unit of the wavelengths. Values are per nanometre all the same.</param>
/// <param name="Unit">Unit of the values.</param>
public sealed record SpectrumChoice(int Wavelength, int Value, WavelengthUnit WavelengthUnit, SpectrumUnit Unit)
{
    private const double NoLampReachesMicrometres = 20;

    /// <summary>The likeliest reading of a table, to be confirmed by whoever knows the instrument; null without a second column.</summary>
    public static SpectrumChoice? Guess(SpectrumTable table)
    {
        var wavelength = Math.Max(0, table.Headings.ToList().FindIndex(IsWavelength));
        var value = Enumerable.Range(0, table.Headings.Count).FirstOrDefault(column => column != wavelength, -1);
        return value < 0 ? null : new(wavelength, value, WavelengthUnitOf(table, wavelength), UnitOf(table.Headings[value]));
    }

    /// <summary>The same with another column of values, its unit read from its heading.</summary>
    public SpectrumChoice WithValue(int column, SpectrumTable table) => this with { Value = column, Unit = UnitOf(table.Headings[column]) };

    private static bool IsWavelength(string heading) =>
        heading.Contains("wavelength", StringComparison.OrdinalIgnoreCase) || heading.Contains("lambda", StringComparison.OrdinalIgnoreCase)
        || heading.Contains('λ') || heading.Trim().Trim('(', ')', '[', ']').Equals("nm", StringComparison.OrdinalIgnoreCase);

    private static WavelengthUnit WavelengthUnitOf(SpectrumTable table, int column) =>
        table.Rows.Max(row => row.Cells[column] ?? 0) < NoLampReachesMicrometres ? WavelengthUnit.Micrometres : WavelengthUnit.Nanometres;

    /// <summary>A unit per area or per angle tells the shape only: what the lamp puts out cannot be known from it.</summary>
    private static SpectrumUnit UnitOf(string heading)
    {
        var text = heading.ToLowerInvariant().Replace(" ", "");
        var photons = text.Contains("mol") || text.Contains("photon") || text.Contains("quanta");
        if (!text.Contains("/nm") || text.Contains("m2") || text.Contains("m²") || text.Contains("m^2") || text.Contains("sr"))
            return photons ? SpectrumUnit.RelativePhotons : SpectrumUnit.Relative;
        if (photons)
            return text.Contains("µmol/s") || text.Contains("μmol/s") || text.Contains("umol/s") ? SpectrumUnit.MicromolesPerSecondNanometre : SpectrumUnit.RelativePhotons;
        if (text.Contains("µw") || text.Contains("μw") || text.Contains("uw"))
            return SpectrumUnit.Relative;
        return text.Contains("mw/") ? SpectrumUnit.MilliwattsPerNanometre : text.Contains("w/") ? SpectrumUnit.WattsPerNanometre : SpectrumUnit.Relative;
    }
}
