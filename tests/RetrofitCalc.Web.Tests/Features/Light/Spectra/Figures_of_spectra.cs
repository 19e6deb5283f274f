using System.Globalization;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Files.Spectra;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Charts;
using RetrofitCalc.Web.Features.Light.Spectra;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Light.Spectra;

public class Figures_of_spectra
{
    private static readonly QuantityText Text = QuantityText.For(SmallStudies.OneRack());

    private static SpectrumFigures Of(string name) => SpectrumFigures.Of(ShippedSpectra.Find(name)!, ShippedSpectra.Tables);

    private static string Cell(string figure, params string[] spectra) =>
        SpectrumSheet.Of([.. spectra.Select(Of)], Text).Rows.Single(row => row.Cells[0].StartsWith(figure, StringComparison.Ordinal)).Cells[^1];

    // FL2 by the CIE tables: .243/.507/.250, 76.5 lx per µmol, 337 lm/W, 4,225 K, Ra 64 (CIE 15).
    [Theory]
    [InlineData("Blue", "24\u00A0%"), InlineData("Green", "51\u00A0%"), InlineData("Red, 600", "25\u00A0%")]
    [InlineData("Lux of one", "76.5"), InlineData("Luminous efficacy", "337"), InlineData("Colour temperature", "4,225"), InlineData("Colour rendering Ra", "64")]
    [InlineData("Light of one lamp", "shape only")]
    public void of_cool_white_stand_in_the_table(string figure, string shown) => Assert.Equal(shown, Cell(figure, "FL2"));

    [Fact]
    public void of_two_spectra_stand_side_by_side()
    {
        var table = SpectrumSheet.Of([Of("FL2"), Of("LED-B3")], Text);
        Assert.Equal(["Figure", "FL2", "LED-B3"], table.Columns.Select(column => column.Head));
        Assert.Equal("85", Cell("Colour rendering Ra", "FL2", "LED-B3"));
    }

    [Fact]
    public void an_unstable_red_to_far_red_is_no_number() =>
        Assert.Equal("very high, unstable", Cell("Red to far red, Smith, 10 nm", "FL3.10"));

    // FL6 lies farther from its reference than CIE 13.3 allows.
    [Fact]
    public void colour_rendering_outside_its_tolerance_carries_a_caution() => Assert.EndsWith(", with caution", Cell("Colour rendering Ra", "FL6"));

    // FL2's R9 is −84 by the CIE tables.
    [Fact]
    public void every_test_colour_is_listed()
    {
        var rows = SpectrumSheet.TestColours([Of("FL2")], Text).Rows;
        Assert.Equal(14, rows.Count);
        Assert.Equal("−84", rows[8].Cells[1]);
    }

    // Red shares: LED-B3 .368, FL2 .250.
    [Fact]
    public void the_drawing_says_in_which_band_two_spectra_differ_most() =>
        Assert.Equal("LED-B3 has more red than FL2: 37\u00A0% of its photons against 25\u00A0%", SpectrumChart.Of([Of("FL2"), Of("LED-B3")], photons: true, Text).Finding);

    [Theory, InlineData(true), InlineData(false)]
    public void both_are_drawn_with_the_same_photons_and_the_highest_point_is_100(bool photons)
    {
        var figure = SpectrumChart.Of([Of("FL2"), Of("LED-B3")], photons, Text);
        Assert.Equal(100, figure.Spec.Series.SelectMany(series => series.Points).Max(point => point.Y), 1e-9);
        if (!photons) return;
        var areas = figure.Spec.Series.Select(series => Area(series.Points.Select(point => (point.X, point.Y)))).ToList();
        Assert.Equal(1, areas[0] / areas[1], 0.001);
    }

    // Photons weigh a joule by its wavelength: red over blue grows by about 660/450 against watts.
    [Fact]
    public void watts_and_photons_draw_another_curve()
    {
        var (watts, photons) = (SpectrumChart.Of([Of("E")], photons: false, Text), SpectrumChart.Of([Of("E")], photons: true, Text));
        Assert.Equal(1, Ratio(watts), 1e-9);
        Assert.Equal(660.0 / 450, Ratio(photons), 1e-9);
        static double Ratio(ChartFigure figure) => figure.Spec.Series[0].Points.Single(p => p.X == 660).Y / figure.Spec.Series[0].Points.Single(p => p.X == 450).Y;
    }

    [Fact]
    public void the_twin_has_the_mean_of_every_twenty_nanometres()
    {
        var twin = SpectrumChart.Of([Of("E")], photons: false, Text).Twin;
        Assert.Equal(20, twin.Rows.Count);
        Assert.All(twin.Rows, row => Assert.Equal("100.0", row[1]));
    }

    // One lamp of 40 µmol/s of FL2 and two of 10 of LED-B3: blue (40 · .243 + 20 · .184) / 60 = .223.
    [Fact]
    public void tubes_of_two_spectra_are_weighted_by_what_they_put_out()
    {
        var spectra = StudySpectra.All(SmallStudies.OneRack());
        MixturePart[] parts =
        [
            new MixturePartDraft { Spectrum = "FL2", Output = "40" }.Read(spectra, CultureInfo.InvariantCulture).Value!,
            new MixturePartDraft { Spectrum = "LED-B3", Count = "2", Output = "10" }.Read(spectra, CultureInfo.InvariantCulture).Value!,
        ];
        Assert.Equal(0.223, SpectrumFigures.Of(SpectralMixture.Of("Mixed", parts), ShippedSpectra.Tables).Fractions!.Blue, 0.001);
    }

    [Theory]
    [InlineData("", "1", "40", "Choose a spectrum."), InlineData("FL2", "0", "40", "how many burn"), InlineData("FL2", "1", "", "the output of one lamp")]
    public void a_mixture_says_what_is_missing(string spectrum, string count, string output, string told)
    {
        var read = new MixturePartDraft { Spectrum = spectrum, Count = count, Output = output }.Read(StudySpectra.All(SmallStudies.OneRack()), CultureInfo.InvariantCulture);
        Assert.Null(read.Value);
        Assert.Contains(told, read.Problems[0].Message, StringComparison.Ordinal);
    }

    private static double Area(IEnumerable<(double X, double Y)> points)
    {
        var inside = points.Where(point => point.X is >= 400 and <= 700).ToList();
        return inside.Zip(inside.Skip(1), (a, b) => (b.X - a.X) * (a.Y + b.Y) / 2).Sum();
    }
}
