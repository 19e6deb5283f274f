using CsCheck;
using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight;

public class Measured_light
{
    private static readonly AreaLight Bench = new() { BenchLength = Length.FromMetres(1.2), BenchWidth = Length.FromMetres(0.6) };

    // Example of the reference set, computed by hand: trapezoid over the quarter 90.06; the plain mean would be 88.0.
    [Fact]
    public void of_a_quadrant_weighs_edges_half_and_corners_a_quarter()
    {
        var measured = Measured(Quadrant([[120, 110, 90], [105, 96, 80], [70, 66, 55]]));
        Assert.Equal(90.0625, measured.Statistics.Mean.MicromolesPerSquareMetre, tolerance: 1e-9);
        Assert.Equal(9, measured.Readings.Count);
        Assert.Equal(new PlanePoint(0.3, 0.15), measured.Readings[4].Point);
        Assert.Contains("one quarter stands for all four", measured.Weighting, StringComparison.Ordinal);
    }

    // Same set: 200/185/150/110/80 at 0 to 0.4 m, weights of rings 123.75; the plain mean would be 145.
    [Fact]
    public void outwards_weighs_by_rings_and_lies_on_lines_in_their_directions()
    {
        var set = Quadrant([[200, 185, 150, 110, 80]]) with { Pattern = ReadingPattern.Outwards, Columns = [0, 0.1, 0.2, 0.3, 0.4], Rows = [90] };
        var measured = Measured(set);
        Assert.Equal(123.75, measured.Statistics.Mean.MicromolesPerSquareMetre, tolerance: 1e-9);
        Assert.Equal(0, measured.Readings[4].Point.X, tolerance: 1e-12);
        Assert.Equal(0.4, measured.Readings[4].Point.Y, tolerance: 1e-12);
        Assert.Contains("disc out to 0.4 m", measured.Weighting, StringComparison.Ordinal);
    }

    [Fact]
    public void at_one_row_of_crossings_weighs_its_ends_half() =>
        Assert.Equal((5 + 20 + 15) / 4.0, Measured(Quadrant([[10, 10, 10], [10, 20, 30]]) with { Rows = [0.3], Values = [[10, 10, 10]], Pattern = ReadingPattern.Crossings }).Statistics.Mean.MicromolesPerSquareMetre);

    [Fact]
    public void leaves_blanks_out_and_keeps_the_places_of_the_rest()
    {
        var measured = Measured(Quadrant([[100, null, 100], [100, 100, 100], [100, 100, 100]]) with { Pattern = ReadingPattern.CellCentres });
        Assert.Equal([0, 2, 3, 4, 5, 6, 7, 8], measured.Readings.Select(reading => reading.Index));
        Assert.Equal(100, measured.Statistics.Mean.MicromolesPerSquareMetre);
        Assert.EndsWith("; 1 place without a reading left out", measured.Weighting, StringComparison.Ordinal);
    }

    // 74 lx per µmol: 7400 lx are 100; 1 fc is 10.7639 lx. Meter 5 % and factor 7 %: √(0.05² + 0.07²) = 8.6 %.
    [Fact]
    public void converts_lux_and_foot_candles_and_adds_their_uncertainty()
    {
        var lux = Quadrant([[7400, 7400, 7400]]) with { Rows = [0], Unit = LightUnit.Lux, Conversion = new(74, 0.07, Provenance.None) };
        Assert.Equal(100, Measured(lux).Statistics.Mean.MicromolesPerSquareMetre, tolerance: 1e-9);
        Assert.Equal(Math.Sqrt(0.0025 + 0.0049), Measured(lux).Uncertainty, tolerance: 1e-12);
        Assert.Equal(7400 * 10.763910417 / 74, Measured(lux with { Unit = LightUnit.FootCandles }).Statistics.Mean.MicromolesPerSquareMetre, tolerance: 1e-5);
        Assert.Equal(0.05, Measured(lux with { Unit = LightUnit.Micromoles }).Uncertainty);
    }

    [Fact]
    public void is_nothing_where_no_reading_tells_of_photons()
    {
        var good = Quadrant([[120, 110, 90], [105, 96, 80], [70, 66, 55]]);
        Assert.Null(MeasuredLight.Of(good with { Unit = LightUnit.Lux }, Bench));
        Assert.Null(MeasuredLight.Of(good with { Values = [[null, null, null], [null, null, null], [null, null, null]] }, Bench));
        Assert.Null(MeasuredLight.Of(good with { Values = [[1, 2, 3]] }, Bench));
        Assert.Null(MeasuredLight.Of(good with { Columns = [0, 0, 1] }, Bench));
        Assert.Null(MeasuredLight.Of(good with { Columns = [], Rows = [], Values = [] }, Bench));
    }

    [Fact]
    public void is_not_doubted_where_readings_are_smooth_and_circumstances_noted()
    {
        Assert.Empty(Measured(Quadrant([[120, 110, 90], [105, 96, 80], [70, 66, 55]])).Doubts);
        Assert.Empty(Measured(Quadrant([[200, 185, 150, 110, 80], [198, 180, 149, 113, 82]]) with { Pattern = ReadingPattern.Outwards, Columns = [0, 0.1, 0.2, 0.3, 0.4], Rows = [0, 90] }).Doubts);
    }

    // Smooth light under a few tubes with 2 % of noise, one reading wrong by half: it is found, wherever it is, and nothing else.
    [Fact]
    public void doubts_the_one_reading_that_does_not_fit_its_neighbours() =>
        Gen.Select(Gen.Int[0, 44], Gen.Double[-0.02, 0.02].Array[45], Gen.OneOf(Gen.Const(0.5), Gen.Const(1.6))).Sample((wrong, noise, factor) =>
        {
            var grid = Grid(noise);
            var values = grid.Values.Select((row, y) => (IReadOnlyList<double?>)[.. row.Select((value, x) => y * 9 + x == wrong ? value * factor : value)]).ToList();
            Assert.Equal([wrong], Measured(grid with { Values = values }).Doubts.Where(doubt => doubt.Index >= 0).Select(doubt => doubt.Index));
            Assert.DoesNotContain(Measured(grid with { Values = values, Confirmed = [wrong] }).Doubts, doubt => doubt.Index >= 0);
            Assert.Empty(Measured(grid).Doubts);
        }, iter: 100);

    [Fact]
    public void doubts_the_one_reading_of_a_line_that_does_not_fit()
    {
        var line = Quadrant([[200, 185, 250, 110, 80]]) with { Pattern = ReadingPattern.Outwards, Columns = [0, 0.1, 0.2, 0.3, 0.4], Rows = [0] };
        Assert.Equal(2, Assert.Single(Measured(line).Doubts).Index);
        Assert.Empty(Measured(line with { Values = [[200, 185, 150, 110, 80]] }).Doubts);
        Assert.Empty(Measured(line with { Columns = [0, 0.1], Values = [[200, 20]] }).Doubts);
    }

    [Fact]
    public void doubts_what_cannot_be()
    {
        var set = Quadrant([[120, -4, 90], [105, 96, 80], [70, 66, 55]]);
        Assert.Contains(new(1, "Light below zero cannot be; left out."), Measured(set).Doubts);
        Assert.Equal(8, Measured(set).Readings.Count);
        var bright = Quadrant([[9200, 9110, 9090], [9105, 9096, 9080], [9070, 9066, 9055]]);
        Assert.Equal(9, Measured(bright).Doubts.Count(doubt => doubt.Text.Contains("full sun", StringComparison.Ordinal)));
        Assert.Equal(8, Measured(bright with { Confirmed = [3] }).Doubts.Count);
    }

    [Theory]
    [InlineData(false, true, true, "Other light was not kept out")]
    [InlineData(null, true, true, "Nobody noted whether other light")]
    [InlineData(true, false, true, "The sensor was not level")]
    [InlineData(true, true, false, "The day of the readings")]
    public void doubts_circumstances_that_were_wrong_or_not_noted(bool? dark, bool? level, bool dated, string text)
    {
        var set = Quadrant([[120, 110, 90], [105, 96, 80], [70, 66, 55]]);
        var doubt = Assert.Single(Measured(set with { RoomDark = dark, SensorLevel = level, Date = dated ? set.Date : null }).Doubts);
        Assert.Equal(-1, doubt.Index);
        Assert.StartsWith(text, doubt.Text, StringComparison.Ordinal);
    }

    // Left half 100, right half 130: a quarter has 30 % more than another.
    [Fact]
    public void doubts_quarters_that_differ()
    {
        var set = Quadrant([[100, 100, 130, 130], [100, 100, 130, 130], [100, 100, 130, 130]]) with { Pattern = ReadingPattern.CellCentres, Columns = [-0.45, -0.15, 0.15, 0.45], Rows = [-0.2, 0, 0.2] };
        Assert.Contains(Measured(set).Doubts, doubt => doubt.Index == -1 && doubt.Text.Contains("30 % more light", StringComparison.Ordinal));
    }

    private static ReadingSet Grid(double[] noise)
    {
        double[] x = [.. Enumerable.Range(0, 9).Select(i => (i - 4) * 0.13)], y = [.. Enumerable.Range(0, 5).Select(i => (i - 2) * 0.12)];
        PlacedTube[] tubes = [.. new[] { -0.15, 0.0, 0.15 }.Select(at => new PlacedTube(TubeEmission.DownFacingStrip, Length.FromMetres(1.2), PhotonFlux.FromMicromolesPerSecond(40), Length.FromMetres(0.35)) { Centre = new(0, at) })];
        return Quadrant([]) with
        {
            Pattern = ReadingPattern.CellCentres, Columns = x, Rows = y,
            Values = [.. y.Select((row, j) => (IReadOnlyList<double?>)[.. x.Select((column, i) => (double?)(LightField.At(tubes, new(column, row)).MicromolesPerSquareMetre * (1 + noise[j * 9 + i])))])],
        };
    }

    private static MeasuredLight Measured(ReadingSet set) => MeasuredLight.Of(set, Bench)!;

    private static ReadingSet Quadrant(IReadOnlyList<IReadOnlyList<double?>> values) => new()
    {
        Id = "r", Pattern = ReadingPattern.Quadrant, Height = Length.FromMetres(0.4), Columns = [0, 0.3, 0.6], Rows = [.. values.Select((_, i) => i * 0.15)], Values = values,
        RoomDark = true, SensorLevel = true, Date = new LocalDate(2026, 3, 2),
    };
}
