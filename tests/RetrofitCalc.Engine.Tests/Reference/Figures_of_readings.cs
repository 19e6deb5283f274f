using System.Text.Json;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Figures_of_readings
{
    [CanopyAnswer("DLI", "dli")]
    private static Answers Daily(JsonElement i) => DailyLight.Of(Light(i.Number("ppfd")), Hours(i.Number("hours"))).MolesPerSquareMetre;

    [CanopyAnswer("DLI", "ppfd_for_dli")]
    private static Answers LightNeeded(JsonElement i) =>
        DailyLight.FromMolesPerSquareMetre(i.Number("dli")).LightOver(Hours(i.Number("hours"))).MicromolesPerSquareMetre;

    [CanopyAnswer("DLI", "hours_for_dli")]
    private static Answers HoursNeeded(JsonElement i) =>
        DailyLight.FromMolesPerSquareMetre(i.Number("dli")).HoursUnder(Light(i.Number("ppfd")), Hours(24))!.Value.Hours;

    [CanopyAnswer("weighting", "quadrant_means")]
    private static Answers Quadrant(JsonElement i)
    {
        double[][] rows = [.. i.GetProperty("quadrant_rows_y_by_x").EnumerateArray().Select(Numbers)];
        double[] readings = [.. rows.SelectMany(row => row)];
        double[] x = [.. Enumerable.Range(0, rows[0].Length)], y = [.. Enumerable.Range(0, rows.Length)];
        return new()
        {
            ["naive_mean"] = Mean(readings, AreaWeights.OfCells(readings.Length)),
            ["mirrored_node_mean"] = Mean(readings, AreaWeights.OfMirroredNodes(x.Length, y.Length)),
            ["area_weighted_trapezoid_mean"] = Mean(readings, AreaWeights.OfNodes(x, y)),
        };
    }

    [CanopyAnswer("weighting", "radial_means")]
    private static Answers Outwards(JsonElement i)
    {
        var readings = Numbers(i.GetProperty("readings"));
        return new()
        {
            ["naive_mean"] = Mean(readings, AreaWeights.OfCells(readings.Length)),
            ["area_weighted_mean"] = Mean(readings, AreaWeights.OfRings(Numbers(i.GetProperty("radii")))),
        };
    }

    /// <summary>The sample's coefficient is the population's times √(n/(n−1)); the engine reports the population's.</summary>
    [CanopyAnswer("uniformity", "simple_stats")]
    private static Answers Simple(JsonElement i)
    {
        var readings = Numbers(i.GetProperty("readings"));
        var found = Statistics(readings, AreaWeights.OfCells(readings.Length));
        return new()
        {
            ["mean"] = found.Mean.MicromolesPerSquareMetre,
            ["min_avg"] = found.MinimumToMean!.Value,
            ["min_max"] = found.MinimumToMaximum!.Value,
            ["cv_population"] = found.CoefficientOfVariation!.Value,
            ["cv_sample"] = found.CoefficientOfVariation!.Value * Math.Sqrt(readings.Length / (readings.Length - 1.0)),
        };
    }

    [CanopyAnswer("grid rule", "en_grid")]
    private static Answers Spacing(JsonElement i) => GridSpacing.Largest(Length.FromMetres(i.Number("d_m"))).Metres;

    private static double Mean(double[] readings, IReadOnlyList<double> weights) => Statistics(readings, weights).Mean.MicromolesPerSquareMetre;

    private static LightStatistics Statistics(double[] readings, IReadOnlyList<double> weights) => LightStatistics.Of([.. readings.Select(Light)], weights);

    private static double[] Numbers(JsonElement list) => [.. list.EnumerateArray().Select(item => item.GetDouble())];

    private static PhotonFluxDensity Light(double value) => PhotonFluxDensity.FromMicromolesPerSquareMetre(value);

    private static OperatingTime Hours(double value) => OperatingTime.FromHours(value);
}
