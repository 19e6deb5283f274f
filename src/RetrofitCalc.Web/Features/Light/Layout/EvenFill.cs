using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Light.Layout;

/// <summary>Luminaires of a line in the middles of equal cells over a bench.</summary>
/// <param name="Along">One behind the other along the length. [count, 1–100]</param>
/// <param name="Across">Side by side across the width. [count, 1–100]</param>
/// <param name="AxisDegrees">Their lamps from the length towards the width. [degrees]</param>
public sealed record EvenFill(string Line, int Along, int Across, double AxisDegrees)
{
    public const int Most = 100;

    /// <param name="bench">The bench.</param>
    /// <param name="like">A luminaire whose spacing of lamps, height and aim they get; null for the defaults.</param>
    public IEnumerable<LuminairePlace> Over((Length Length, Length Width) bench, LuminairePlace? like) =>
        from j in Enumerable.Range(0, Across)
        from i in Enumerable.Range(0, Along)
        let centre = new PlanePoint(Middle(bench.Length, i, Along), Middle(bench.Width, j, Across))
        select (like ?? new(Line, centre)) with { Line = Line, Centre = centre, AxisDegrees = AxisDegrees };

    private static double Middle(Length side, int cell, int cells) => Math.Round(side.Metres * ((cell + 0.5) / cells - 0.5), 4);
}
