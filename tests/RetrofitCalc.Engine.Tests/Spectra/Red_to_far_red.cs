using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;

namespace RetrofitCalc.Engine.Tests.Spectra;

public class Red_to_far_red
{
    // A triphosphor lamp with almost nothing at 725–735 nm: the quotient comes out at about 147.
    [Fact]
    public void of_a_triphosphor_lamp_is_not_to_be_trusted()
    {
        var figures = SampleSpectra.Figures("FL3.10");
        var ratio = figures.RedFarRed[0];
        Assert.Equal(RatioTrust.TooLittleFarRed, ratio.Trust);
        Assert.InRange(ratio.Value!.Value, 140, 155);
        Assert.Contains(figures.Remarks, remark => remark.Contains("Smith, 10 nm") && remark.Contains("unstable"));
    }

    [Theory, InlineData("D65"), InlineData("FL8"), InlineData("LED-B3"), InlineData("A")]
    public void of_light_with_far_red_is_stable(string name) => Assert.Equal(RatioTrust.Stable, SampleSpectra.Figures(name).RedFarRed[0].Trust);

    [Fact]
    public void needs_two_steps_of_the_instrument_in_its_band()
    {
        var coarse = SampleSpectra.Shape([.. Enumerable.Range(0, 50).Select(i => SpectralSample.Of(380 + 10 * i, 1))]);
        Assert.Equal([RatioTrust.TooCoarse, RatioTrust.Stable], SampleSpectra.Figures(coarse).RedFarRed.Take(2).Select(ratio => ratio.Trust));
    }

    [Fact]
    public void to_850_nm_is_not_known_where_tables_end_at_780() =>
        Assert.Equal(RatioTrust.NotCovered, SampleSpectra.Figures("FL8").RedFarRed.Single(ratio => ratio.Bands.Name == "Warrington").Trust);

    // FL8: 7.69 µmol of 700–750 nm come with 100 µmol of PAR, as context.
    [Fact]
    public void stands_beside_the_far_red_of_a_reading()
    {
        var extended = SampleSpectra.Figures("FL8").WithFarRed(PhotonFluxDensity.FromMicromolesPerSquareMetre(100))!;
        Assert.Equal(107.69, extended.Total.MicromolesPerSquareMetre, 0.2);
        Assert.Equal(extended.FarRed / extended.Total, extended.FarRedShare, 1e-12);
    }
}
