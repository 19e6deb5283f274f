using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Files.Spectra;

namespace RetrofitCalc.Files.Tests.Spectra;

public class The_shipped_spectra
{
    // 12 + 15 + 9 + 5 + 6 illuminants of CIE, 22 + 10 + 15 lamps
    [Fact]
    public void are_all_there_each_with_a_name_of_its_own_and_a_source()
    {
        Assert.Equal(94, ShippedSpectra.All.Count);
        Assert.Equal(94, ShippedSpectra.All.Select(shipped => shipped.Spectrum.Name).Distinct().Count());
        Assert.All(ShippedSpectra.All, shipped => Assert.NotEmpty(shipped.Spectrum.Provenance.Source));
        Assert.Equal(8, ShippedSpectra.All.Select(shipped => shipped.Group).Distinct().Count());
    }

    [Fact]
    public void and_the_tables_are_read_once()
    {
        Assert.Same(ShippedSpectra.All, ShippedSpectra.All);
        Assert.Same(ShippedSpectra.Tables, ShippedSpectra.Tables);
        Assert.Null(ShippedSpectra.Find("no such lamp"));
    }

    // V(λ) is one at 555 nm, and the same function as ȳ (CIE).
    [Fact]
    public void come_with_the_eye_of_the_standard()
    {
        var tables = ShippedSpectra.Tables;
        Assert.Equal(1, tables.EyeSensitivity.Samples.Max(sample => sample.Value));
        Assert.Equal(555, tables.EyeSensitivity.Samples.MaxBy(sample => sample.Value).At.Nanometres);
        Assert.All(tables.Y.Samples, sample => Assert.Equal(sample.Value, tables.EyeSensitivity.At(sample.At), 1e-8)); // the library's copies differ in the last digit at 819 nm
        Assert.All(tables.TestColours, colour => Assert.True(colour.Covers(PlantBands.Visible)));
    }

    [Fact]
    public void give_figures_one_and_all() =>
        Assert.All(ShippedSpectra.All, shipped =>
        {
            var figures = SpectrumFigures.Of(shipped.Spectrum, ShippedSpectra.Tables);
            Assert.InRange(figures.Lux!.LuxPerMicromole, 30, 110);
            Assert.InRange(figures.LuminousEfficacy!.Value, 10, 683);
        });
}
