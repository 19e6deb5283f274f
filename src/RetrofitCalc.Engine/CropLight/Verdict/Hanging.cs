using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>How the luminaires of a line hang over a bench.</summary>
/// <param name="Height">Of their lamps over the crop.</param>
/// <param name="RowSpread">Distance between their rows by that of the layout. [unitless, above 0]</param>
internal readonly record struct Hanging(Length Height, double RowSpread = 1)
{
    /// <summary>
    /// The bench with the rows of a line drawn together or apart (E-84): each luminaire moves across its own lamps, about the middle of the line's luminaires.
    /// Lamps within a luminaire keep their distance.
    /// </summary>
    /// <param name="light">The bench and where luminaires hang now.</param>
    /// <param name="line">Id of the line.</param>
    public AreaLight Over(AreaLight light, string line)
    {
        if (RowSpread == 1)
            return light;
        var own = light.Layout.Where(place => place.Line == line).ToList();
        var middle = own.Count == 0 ? default : new PlanePoint(own.Average(place => place.Centre.X), own.Average(place => place.Centre.Y));
        var more = RowSpread - 1;
        return light with { Layout = [.. light.Layout.Select(place => place.Line == line ? place with { Centre = Moved(place, middle, more) } : place)] };
    }

    private static PlanePoint Moved(LuminairePlace place, PlanePoint middle, double more)
    {
        var (sine, cosine) = Math.SinCos(place.AxisDegrees * Math.PI / 180);
        var across = more * ((place.Centre.Y - middle.Y) * cosine - (place.Centre.X - middle.X) * sine);
        return new(place.Centre.X - across * sine, place.Centre.Y + across * cosine);
    }
}
