using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;

namespace RetrofitCalc.Engine.Tests.Spectra;

public class A_curve_over_wavelength
{
    private static readonly SpectralCurve Uneven = new([SpectralSample.Of(403.1, 2), SpectralSample.Of(405.5, 4), SpectralSample.Of(411.5, 1)]);

    [Theory, InlineData(403.1, 2), InlineData(404.3, 3), InlineData(408.5, 2.5), InlineData(403, 0), InlineData(412, 0)]
    public void is_straight_between_samples_and_zero_outside(double nm, double value) =>
        Assert.Equal(value, Uneven.At(Wavelength.FromNanometres(nm)), 1e-9);

    [Fact]
    public void knows_its_steps_and_its_reach()
    {
        Assert.Equal(6, Uneven.WidestStep(Uneven.Range), 1e-9);
        Assert.Equal(2.4, Uneven.NarrowestStep(Uneven.Range), 1e-9);
        Assert.True(Uneven.Covers(SpectralBand.OfNanometres(402, 414))); // half a step of 2.4 below, at most 2.5 nm above
        Assert.False(Uneven.Covers(SpectralBand.OfNanometres(401.8, 411)));
        Assert.False(Uneven.Covers(SpectralBand.OfNanometres(404, 414.1)));
    }

    [Fact]
    public void needs_two_samples_of_rising_wavelength_and_finite_value()
    {
        Assert.Throws<ArgumentException>(() => new SpectralCurve([SpectralSample.Of(400, 1)]));
        Assert.Throws<ArgumentException>(() => new SpectralCurve([SpectralSample.Of(400, 1), SpectralSample.Of(400, 2)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SpectralCurve([SpectralSample.Of(400, 1), SpectralSample.Of(401, double.NaN)]));
    }

    [Fact]
    public void of_a_lamp_is_nowhere_negative_and_not_dark()
    {
        Assert.Throws<ArgumentException>(() => SampleSpectra.Shape([SpectralSample.Of(400, 1), SpectralSample.Of(401, -0.1)]));
        Assert.Throws<ArgumentException>(() => SampleSpectra.Shape([SpectralSample.Of(400, 0), SpectralSample.Of(401, 0)]));
    }

    // One watt a nanometre at 450 nm is 450 / 119.62657 = 3.76171 µmol s⁻¹ nm⁻¹.
    [Fact]
    public void of_a_lamp_is_drawn_in_photons_too()
    {
        var photons = SampleSpectra.Shape([SpectralSample.Of(450, 1), SpectralSample.Of(660, 1)], SpectralScale.RadiantPower).PhotonSamples;
        Assert.Equal(3.76171, photons[0].Value, 1e-5);
        Assert.Equal(5.51717, photons[1].Value, 1e-5);
    }

    [Fact]
    public void and_its_bands_do_not_run_backwards()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SpectralBand.OfNanometres(500, 400));
        Assert.Equal(0.45, Wavelength.FromNanometres(450).Micrometres, 1e-12);
        Assert.Equal(450, Wavelength.FromMicrometres(0.45).Nanometres, 1e-9);
    }
}
