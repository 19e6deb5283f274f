namespace RetrofitCalc.Engine.Spectra;

/// <summary>How a light looks to people.</summary>
/// <param name="Chromaticity">Its colour in the CIE 1931 diagram.</param>
/// <param name="Temperature">Its colour temperature; null where it says nothing.</param>
/// <param name="Rendering">How true colours look; null where no reference exists.</param>
public sealed record ColourFigures(Chromaticity Chromaticity, ColourTemperature? Temperature, ColourRendering? Rendering)
{
    /// <summary>Figures of a spectrum (E-45, E-46).</summary>
    internal static ColourFigures Of(SpectralCurve curve, ColorimetricTables tables)
    {
        var sums = new ColourSums(SpectralNodes.ForColour(curve), tables);
        var power = sums.Nodes.Of(curve);
        var colour = Chromaticity.Of(sums.Of(power));
        var temperature = ColourTemperature.Of(colour, sums);
        return new(colour, temperature, temperature is null ? null : TestColourMethod.Of(power, temperature.Kelvins, sums, tables));
    }
}
