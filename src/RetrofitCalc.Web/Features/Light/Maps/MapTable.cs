using RetrofitCalc.Reports;
using RetrofitCalc.Web.Charts;

namespace RetrofitCalc.Web.Features.Light.Maps;

/// <summary>A map's values as a table and as a sentence.</summary>
public static class MapTable
{
    public static ChartTable Of(BenchMap bench, BenchAxis along, BenchAxis across) => new(
        [$"{LightText.LightUnit}: {across.Unit} from the far edge, by {along.Unit} from the left end", .. bench.Points.X.Select(along.Place)],
        [.. bench.Points.Y.Select((y, row) => (IReadOnlyList<string>)[across.Place(y), .. bench.Points.X.Select((_, column) => Text(bench, row, column))])]);

    /// <summary>"From 102 to 243 µmol/m²·s".</summary>
    public static string Span(BenchMap bench)
    {
        var values = bench.Map.Light.Cast<double>().ToList();
        return $"From {bench.Text.Number(values.Min())} to {bench.Text.Number(values.Max())} {LightText.LightUnit}";
    }

    private static string Text(BenchMap bench, int row, int column) =>
        bench.Value(row, column) is var value && double.IsNaN(value) ? "not read" : bench.Text.Number(value);
}
