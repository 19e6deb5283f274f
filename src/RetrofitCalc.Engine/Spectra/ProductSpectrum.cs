namespace RetrofitCalc.Engine.Spectra;

/// <summary>The spectrum a study gives to one of its lamps, tubes or luminaires.</summary>
/// <param name="Product">Catalogue id of the product.</param>
/// <param name="Name">Its name.</param>
/// <param name="Figures">What the spectrum tells; null where none is known.</param>
public sealed record ProductSpectrum(string Product, string Name, SpectrumFigures? Figures);
