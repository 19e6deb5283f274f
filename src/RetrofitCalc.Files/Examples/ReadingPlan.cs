using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Examples;

/// <summary>Where the example's light was read. The seedling racks were not: their light is not known.</summary>
internal static class ReadingPlan
{
    private const string Shaded = "greens-tray";
    private const string WithBlank = "cuttings";

    public static IReadOnlyList<ReadingSet> Of(Area area) => area.Id switch
    {
        "tissue-culture" =>
        [
            new() { Id = "vessels", Pattern = ReadingPattern.Quadrant, Height = Metres(0.3556), Columns = [0, 0.15, 0.3, 0.45, 0.6], Rows = [0, 0.15, 0.3] },
        ],
        "leafy-greens" => [Grid("greens-canopy", area.Light!, 0.3048), Grid(Shaded, area.Light!, 0.4064)],
        "cuttings-bench" =>
        [
            new()
            {
                Id = WithBlank, Pattern = ReadingPattern.Crossings, Height = Metres(0.508),
                Columns = [-0.9144, -0.6, -0.3, 0, 0.3, 0.6, 0.9144], Rows = [-0.2286, -0.1, 0, 0.1, 0.2286],
                Unit = LightUnit.Lux, Conversion = CoolWhite(),
            },
        ],
        _ => [],
    };

    /// <summary>Behind a mist nozzle nothing could be read.</summary>
    public static bool IsBlank(ReadingSet set, int row, int column) => set.Id == WithBlank && (row, column) == (1, 3);

    /// <summary>A hand over the sensor took four tenths of the light of one reading.</summary>
    public static double Shade(ReadingSet set, int row, int column) => set.Id == Shaded && (row, column) == (2, 4) ? 0.6 : 1;

    private static ReadingSet Grid(string id, AreaLight light, double height)
    {
        var (length, width) = (light.BenchLength!.Value, light.BenchWidth!.Value);
        var cells = GridSpacing.For(length, width);
        return new() { Id = id, Height = Metres(height), Columns = Middles(length, cells.AlongLength), Rows = Middles(width, cells.AlongWidth) };
    }

    private static double[] Middles(Length side, int cells) =>
        [.. Enumerable.Range(0, cells).Select(i => Math.Round(side.Metres * ((i + 0.5) / cells - 0.5), 3))];

    private static LuxConversion CoolWhite()
    {
        var family = NamedLuxFactors.All.First(factor => factor.Name == "Cool white fluorescent");
        return new(family.Factor.LuxPerMicromole, family.Uncertainty, new Provenance(family.Provenance.Kind, $"{family.Name}: {family.Provenance.Source}"));
    }

    private static Length Metres(double metres) => Length.FromMetres(metres);
}
