using CsCheck;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Files.Spectra;

namespace RetrofitCalc.Engine.Tests.Spectra;

public class Lamps_burning_together
{
    private static SpectralDistribution Lamp(string name, double micromoles) =>
        LampSpectrum.WithPhotons(SampleSpectra.Named(name), PhotonFlux.FromMicromolesPerSecond(micromoles));

    // Three lamps of 20 and one of 40 µmol/s: 100 µmol/s, blue 0.6 · 0.1844 + 0.4 · 0.2359 = 0.2050 (shares of LED-B3 and FL11).
    [Fact]
    public void weigh_by_what_each_puts_out()
    {
        var mixed = SampleSpectra.Figures(SpectralMixture.Of("Mixed", [new(Lamp("LED-B3", 20), 3), new(Lamp("FL11", 40), 1)]));
        Assert.Equal(100, mixed.Photons!.Value.MicromolesPerSecond, 1e-6);
        Assert.Equal(0.2050, mixed.Fractions!.Blue, 0.004);
    }

    [Fact]
    public void add_up_in_every_band() =>
        Gen.Select(SampleSpectra.Any, SampleSpectra.Any, Gen.Double[0.1, 5], Gen.Double[0.1, 5]).Sample((one, other, count, otherCount) =>
        {
            var (first, second) = (LampSpectrum.WithRadiation(one, Power.FromWatts(10)), LampSpectrum.WithRadiation(other, Power.FromWatts(7)));
            var mixed = SpectralMixture.Of("Mixed", [new(first, count), new(second, otherCount)]);
            foreach (var band in (SpectralBand[])[PlantBands.Blue, PlantBands.Green, PlantBands.Red, PlantBands.FarRed])
                Assert.Equal(count * first.Radiation(band) + otherCount * second.Radiation(band), mixed.Radiation(band), 1e-6);
        }, iter: 50);

    [Fact]
    public void sold_by_lumens_give_those_lumens()
    {
        var lamp = LampSpectrum.WithLight(SampleSpectra.Named("FL11"), LuminousFlux.FromLumens(2900), ShippedSpectra.Tables);
        Assert.Equal(2900, SampleSpectra.Figures(lamp).Light!.Value.Lumens, 1e-6);
    }

    [Fact]
    public void are_known_only_where_every_lamp_is()
    {
        var shorter = LampSpectrum.WithRadiation(SampleSpectra.Shape([SpectralSample.Of(400, 1), SpectralSample.Of(720, 1)]), Power.FromWatts(1));
        var mixed = SpectralMixture.Of("Mixed", [new(shorter, 1), new(Lamp("FL11", 20), 1)]);
        Assert.Equal(SpectralBand.OfNanometres(400, 720), mixed.Curve.Range);
        Assert.Null(SampleSpectra.Figures(mixed).FarRedOverPar);
    }

    [Fact]
    public void need_an_output_each_and_a_count_above_zero()
    {
        Assert.Throws<ArgumentException>(() => SpectralMixture.Of("None", []));
        Assert.Throws<ArgumentException>(() => SpectralMixture.Of("Shape", [new(SampleSpectra.Named("FL11"), 1)]));
        Assert.Throws<ArgumentException>(() => SpectralMixture.Of("No lamps", [new(Lamp("FL11", 20), 0)]));
        Assert.Throws<ArgumentException>(() => Lamp("FL11", 0));
    }
}
