using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>Light for people in the cells of a comparison.</summary>
public static class PeopleText
{
    /// <summary>"320 lx", or that it is not known.</summary>
    public static string Now(TaskLight place, QuantityText text) => place.Now is { } light ? text.Illuminance(light) : QuantityText.NotKnown;

    /// <summary>"280 lx, 300 wanted" where it falls short.</summary>
    public static string After(CropLightResult light, string area, QuantityText text) => light.People.FirstOrDefault(place => place.Area == area) switch
    {
        { After: { } after, Enough: false } place => $"{text.Illuminance(after)}, {text.Number(place.Wanted.Lux)} wanted",
        { After: { } after } => text.Illuminance(after),
        _ => QuantityText.NotKnown,
    };
}
