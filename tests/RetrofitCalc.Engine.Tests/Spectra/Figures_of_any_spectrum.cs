using CsCheck;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;

namespace RetrofitCalc.Engine.Tests.Spectra;

public class Figures_of_any_spectrum
{
    [Fact]
    public void share_all_photons_among_three_colours() =>
        SampleSpectra.Any.Sample(spectrum =>
        {
            var shares = SampleSpectra.Figures(spectrum).Fractions!;
            Assert.Equal(1, shares.Blue + shares.Green + shares.Red, 1e-12);
        }, iter: 30);

    [Fact]
    public void never_find_more_in_a_part_than_in_the_whole() =>
        Gen.Select(SampleSpectra.Any, Gen.Double[300, 900], Gen.Double[0, 300], Gen.Double[0, 1]).Sample((spectrum, from, width, share) =>
        {
            var whole = SpectralBand.OfNanometres(from, from + width);
            var (left, right) = (SpectralBand.OfNanometres(from, from + share * width), SpectralBand.OfNanometres(from + share * width, from + width));
            var (photons, parts) = (spectrum.Photons(whole), spectrum.Photons(left) + spectrum.Photons(right));
            Assert.True(spectrum.Photons(left) <= photons * (1 + 1e-5) + 1e-12);
            Assert.Equal(photons, parts, 1e-3 * photons + 1e-9); // a cut within a nanometre takes the curve λ·S a little apart
            Assert.Equal(spectrum.Radiation(whole), spectrum.Radiation(left) + spectrum.Radiation(right), 1e-9 * (1 + spectrum.Radiation(whole)));
        });

    [Fact]
    public void do_not_ask_on_what_scale_it_was_measured() =>
        Gen.Select(SampleSpectra.Any, Gen.Double[0.001, 1000]).Sample((spectrum, factor) =>
        {
            var scaled = SampleSpectra.Shape(spectrum.Curve.Samples.Select(sample => sample with { Value = sample.Value * factor }));
            var (one, other) = (SampleSpectra.Figures(spectrum), SampleSpectra.Figures(scaled));
            Assert.Equal(one.Fractions!.Red, other.Fractions!.Red, 1e-12);
            Assert.Equal(one.FarRedFraction!.Value, other.FarRedFraction!.Value, 1e-12);
            Assert.Equal(one.Lux!.LuxPerMicromole, other.Lux!.LuxPerMicromole, 1e-9);
            Assert.Equal(one.LuminousEfficacy!.Value, other.LuminousEfficacy!.Value, 1e-9);
            Assert.Equal(one.Colour!.Chromaticity.X, other.Colour!.Chromaticity.X, 1e-12);
            Assert.Equal(one.Colour.Temperature?.Kelvins ?? 0, other.Colour.Temperature?.Kelvins ?? 0, 0.1);
        }, iter: 20);

    [Fact]
    public void keep_what_lies_between_the_ends_of_the_scale_of_photons() =>
        SampleSpectra.Any.Sample(spectrum =>
        {
            // PAR photons carry between 400 / 119.627 = 3.344 and 700 / 119.627 = 5.852 µmol/J.
            var photons = SampleSpectra.Figures(spectrum).PhotonsPerJoule!.Value;
            Assert.InRange(photons, 3.3437, 5.8516);
        }, iter: 30);

    // An equal-energy spectrum by hand: ∫λ dλ = (700² − 400²)/2 = 165,000; blue (500² − 400²)/2 = 45,000; green 55,000; red 65,000.
    [Fact]
    public void agree_with_a_flat_spectrum_worked_by_hand()
    {
        var figures = SampleSpectra.Figures("E");
        Assert.Equal(45.0 / 165, figures.Fractions!.Blue, 1e-9);
        Assert.Equal(55.0 / 165, figures.Fractions.Green, 1e-9);
        Assert.Equal(65.0 / 165, figures.Fractions.Red, 1e-9);
        Assert.Equal((750.0 * 750 - 700 * 700) / 2 / 165_000, figures.FarRedOverPar!.Value, 1e-9);
        Assert.Equal(550 / 119.62657, figures.PhotonsPerJoule!.Value, 1e-5);
        Assert.Equal(1.0 / 3, figures.Colour!.Chromaticity.X, 1e-4); // CIE 15: illuminant E lies at one third
        Assert.Equal(1.0 / 3, figures.Colour.Chromaticity.Y, 1e-4);
    }

    // 100 W of a flat spectrum from 400 to 700 nm: 100 · 550 / 119.62657 = 459.764 µmol/s; from 200 W of electricity 2.29882 µmol/J.
    [Fact]
    public void give_photons_and_efficacy_once_the_amount_is_known()
    {
        var lamp = LampSpectrum.WithRadiation(SampleSpectra.Shape([SpectralSample.Of(400, 1), SpectralSample.Of(700, 1)]), Power.FromWatts(100));
        var figures = SampleSpectra.Figures(lamp);
        Assert.Equal(459.764, figures.Photons!.Value.MicromolesPerSecond, 1e-3);
        Assert.Equal(2.29882, figures.EfficacyAt(Power.FromWatts(200))!.Value.MicromolesPerJoule, 1e-5);
        Assert.Null(SampleSpectra.Figures("FL11").EfficacyAt(Power.FromWatts(200)));
    }

    [Fact]
    public void are_not_given_where_the_samples_do_not_reach()
    {
        var figures = SampleSpectra.Figures(SampleSpectra.Shape([SpectralSample.Of(400, 1), SpectralSample.Of(650, 1)]));
        Assert.Null(figures.Fractions);
        Assert.Null(figures.Lux);
        Assert.Null(figures.FarRedOverPar);
        Assert.Null(figures.FarRedFraction);
        Assert.Null(figures.LuminousEfficacy);
        Assert.Null(figures.Colour);
        Assert.All(figures.RedFarRed, ratio => Assert.Equal(RatioTrust.NotCovered, ratio.Trust));
        Assert.Contains(figures.Remarks, remark => remark.Contains("from 400 to 650 nm"));
    }

    [Fact]
    public void tell_that_equal_lux_is_not_equal_light_for_the_plant()
    {
        var gain = SampleSpectra.Figures("FL2").Lux!.PhotonGainAtEqualLux(SampleSpectra.Figures("LED-B3").Lux!);
        Assert.Equal(76.51 / 69.77 - 1, gain, 0.002); // +9.7 %, both factors computed from the CIE spectra
    }
}
