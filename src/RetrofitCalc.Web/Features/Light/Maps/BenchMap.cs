using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Light.Maps;

/// <summary>Light over a bench, with all a drawing of it needs.</summary>
/// <param name="Map">The light.</param>
/// <param name="Length">Of the bench. [m]</param>
/// <param name="Width">Of the bench. [m]</param>
/// <param name="Scale">Tints, the same for now and proposed.</param>
/// <param name="Points">Places at which values are shown.</param>
public sealed record BenchMap(LightMap Map, double Length, double Width, LightScale Scale, MapPoints Points)
{
    public required QuantityText Text { get; init; }

    /// <summary>What was read at the points, row by row; null shows the map's own values.</summary>
    public IReadOnlyList<IReadOnlyList<double?>>? Read { get; init; }

    /// <summary>Light at a point, as read where it was; NaN where a reading is missing.</summary>
    public double Value(int row, int column) => Read is { } read ? read[row][column] ?? double.NaN : Map.At(new(Points.X[column], Points.Y[row]));
}
