namespace RetrofitCalc.Engine.Spectra;

/// <summary>Bands of wavelength the trade names. Sources: S-50 (PAR, far red), S-51 (extended PAR), horticultural papers (blue, green, red).</summary>
public static class PlantBands
{
    /// <summary>Photosynthetically active radiation, 400–700 nm (ANSI/ASABE S640).</summary>
    public static SpectralBand Par { get; } = SpectralBand.OfNanometres(400, 700);

    /// <summary>Blue, 400–500 nm: usual in horticultural papers, not verified as a clause of a standard.</summary>
    public static SpectralBand Blue { get; } = SpectralBand.OfNanometres(400, 500);

    /// <summary>Green, 500–600 nm: usual in horticultural papers, not verified as a clause of a standard.</summary>
    public static SpectralBand Green { get; } = SpectralBand.OfNanometres(500, 600);

    /// <summary>Red, 600–700 nm: usual in horticultural papers, not verified as a clause of a standard.</summary>
    public static SpectralBand Red { get; } = SpectralBand.OfNanometres(600, 700);

    /// <summary>Far red as the studies of extended PAR count it, 700–750 nm. ANSI/ASABE S640 names 700–800 nm, where most tables of lamps end too early.</summary>
    public static SpectralBand FarRed { get; } = SpectralBand.OfNanometres(700, 750);

    /// <summary>The visible range over which lumens and colours are summed, 380–780 nm (CIE 15).</summary>
    public static SpectralBand Visible { get; } = SpectralBand.OfNanometres(380, 780);
}
