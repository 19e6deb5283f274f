using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Files.Spectra;

namespace RetrofitCalc.Engine.Tests.Spectra;

public class Colour_of_light
{
    // Regression values of the colour-science library for FL1, R1 to R14 (seen in its tests).
    [Fact]
    public void of_FL1_is_rendered_as_a_general_purpose_library_has_it()
    {
        double[] library = [69.2, 83.7, 92.1, 72.7, 73.9, 79.6, 82.3, 53.4, -47.3, 61.6, 67.5, 74.9, 72.8, 94.9];
        var rendering = SampleSpectra.Figures("FL1").Colour!.Rendering!;
        Assert.All(library.Zip(rendering.Special), pair => Assert.Equal(pair.First, pair.Second, 0.2));
        Assert.Equal(75.853, rendering.General, 0.15);
        Assert.Equal(ReferenceLight.Daylight, rendering.Reference);
    }

    // FL8 and FL10 lie a kelvin or two below 5,000 K: the black body gives 95.5 and 81.0, daylight 95.1 and 80.7.
    [Theory, InlineData("FL8", 95.5), InlineData("FL10", 81.0)]
    public void just_below_5000_K_is_compared_with_a_black_body(string name, double general)
    {
        var colour = SampleSpectra.Figures(name).Colour!;
        Assert.InRange(colour.Temperature!.Kelvins, 4990, 5000);
        Assert.Equal(ReferenceLight.BlackBody, colour.Rendering!.Reference);
        Assert.Equal(general, colour.Rendering.General, 0.1);
    }

    // Illuminant A is a black body of 2,856 K by definition (CIE 15).
    [Fact]
    public void of_a_glowing_body_is_its_temperature_and_renders_everything_truly()
    {
        var colour = SampleSpectra.Figures("A").Colour!;
        Assert.Equal(2856, colour.Temperature!.Kelvins, 2.0);
        Assert.Equal(0, colour.Temperature.DistanceFromLocus, 1e-4);
        Assert.All(colour.Rendering!.Special, index => Assert.Equal(100, index, 0.1));
    }

    // D65: x 0.3127, y 0.3290, 6504 K, 0.0032 above the locus (CIE 15; from memory).
    [Fact]
    public void of_daylight_is_that_of_the_tables()
    {
        var colour = SampleSpectra.Figures("D65").Colour!;
        Assert.Equal(0.3127, colour.Chromaticity.X, 1e-4);
        Assert.Equal(0.3290, colour.Chromaticity.Y, 1e-4);
        Assert.Equal(6504, colour.Temperature!.Kelvins, 5.0);
        Assert.Equal(0.0032, colour.Temperature.DistanceFromLocus, 1e-4);
        Assert.All(colour.Rendering!.Special, index => Assert.Equal(100, index, 0.3));
    }

    [Fact]
    public void does_not_depend_on_whether_sums_go_by_5_or_1_nm()
    {
        var coarse = SampleSpectra.Named("LED-B3");
        var fine = SampleSpectra.Shape(Enumerable.Range(380, 401).Select(nm => SpectralSample.Of(nm, coarse.Curve.At(Quantities.Wavelength.FromNanometres(nm)))));
        var (by5, by1) = (SampleSpectra.Figures(coarse).Colour!, SampleSpectra.Figures(fine).Colour!);
        Assert.Equal(by5.Chromaticity.X, by1.Chromaticity.X, 2e-4);
        Assert.Equal(by5.Temperature!.Kelvins, by1.Temperature!.Kelvins, 5.0);
        Assert.Equal(by5.Rendering!.General, by1.Rendering!.General, 0.2);
    }

    // Colours add (Grassmann): flat light has X = Y = Z = 106.86 per unit (sums of the 1 nm observer, CIE 15); to it comes a line
    // at 547.5 nm, half a nanometre wide and 200 high, area 100, between two whole fives, where sums every 5 nm would not see it.
    [Fact]
    public void counts_a_narrow_line_that_a_fine_instrument_saw()
    {
        SpectralSample[] line = [SpectralSample.Of(547, 1), SpectralSample.Of(547.5, 201), SpectralSample.Of(548, 1)];
        var flat = Enumerable.Range(380, 401).Where(nm => nm is < 547 or > 548).Select(nm => SpectralSample.Of(nm, 1));
        var seen = SampleSpectra.Figures(SampleSpectra.Shape([.. flat.Concat(line).OrderBy(sample => sample.At.Nanometres)])).Colour!.Chromaticity;
        double Added(SpectralCurve observer) => 106.86 + 100 * observer.At(Quantities.Wavelength.FromNanometres(547.5));
        var (x, y, z) = (Added(ShippedSpectra.Tables.X), Added(ShippedSpectra.Tables.Y), Added(ShippedSpectra.Tables.Z));
        Assert.Equal(x / (x + y + z), seen.X, 1e-3);
        Assert.Equal(y / (x + y + z), seen.Y, 1e-3);
    }

    [Fact]
    public void far_from_white_has_no_temperature_and_says_so()
    {
        // A green line at 530 nm on next to nothing.
        var figures = SampleSpectra.Figures(SampleSpectra.Shape(
            [SpectralSample.Of(380, 0.001), SpectralSample.Of(525, 0.001), SpectralSample.Of(530, 1), SpectralSample.Of(535, 0.001), SpectralSample.Of(780, 0.001)]));
        Assert.Null(figures.Colour!.Temperature);
        Assert.Null(figures.Colour.Rendering);
        Assert.Contains(figures.Remarks, remark => remark.Contains("too far from white"));
    }

    [Fact]
    public void farther_from_its_reference_than_the_method_allows_is_flagged() =>
        Assert.Contains(SampleSpectra.Figures("FL6").Remarks, remark => remark.Contains("CIE 13.3"));

    [Fact]
    public void needs_all_fourteen_test_colours() =>
        Assert.Throws<ArgumentException>(() => ShippedSpectra.Tables with { TestColours = [] });
}
