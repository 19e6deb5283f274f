using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;

namespace RetrofitCalc.Engine.Tests.Spectra;

public class A_factor_between_lux_and_photons
{
    [Fact]
    public void takes_a_reading_there_and_back()
    {
        var factor = new LuxFactor(74);
        Assert.Equal(1000 / 74.0, factor.MicromolesPerKilolux, 1e-12);
        Assert.Equal(300, factor.ToPhotonFluxDensity(factor.ToIlluminance(PhotonFluxDensity.FromMicromolesPerSquareMetre(300))).MicromolesPerSquareMetre, 1e-9);
        Assert.Equal(1000, Illuminance.FromFootCandles(92.90304).Lux, 1e-4); // 0.09290304 m² in a square foot
    }

    [Theory, InlineData(0), InlineData(-1), InlineData(double.NaN), InlineData(double.PositiveInfinity)]
    public void is_more_than_zero(double factor) => Assert.Throws<ArgumentOutOfRangeException>(() => new LuxFactor(factor));

    [Fact]
    public void of_a_family_names_its_source_and_its_spread() =>
        Assert.All(NamedLuxFactors.All, named =>
        {
            Assert.InRange(named.Uncertainty, 0.05, 0.15);
            Assert.NotEmpty(named.Provenance.Source);
        });

    // Within the stated spread: cool white by its CIE spectrum is 76.5 lx per µmol, the family's factor 74.
    [Fact]
    public void of_a_family_holds_for_a_measured_lamp_of_it()
    {
        var family = NamedLuxFactors.All.Single(named => named.Name == "Cool white fluorescent");
        var measured = SampleSpectra.Figures("FL2").Lux!;
        Assert.InRange(measured.LuxPerMicromole / family.Factor.LuxPerMicromole, 1 - family.Uncertainty, 1 + family.Uncertainty);
    }

    [Fact]
    public void and_efficacy_need_something_to_divide_by()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PhotonEfficacy.Of(PhotonFlux.FromMicromolesPerSecond(1), Power.Zero));
        Assert.Throws<InvalidOperationException>(() => PhotonEfficacy.Zero.EnergyPerMole);
    }
}
