namespace RetrofitCalc.Engine.FirstAnswer;

/// <summary>The five answers a first estimate needs.</summary>
/// <param name="Luminaires">How many luminaires. [count, 1–100 000]</param>
/// <param name="SetUp">Catalogue id of the existing set-up.</param>
/// <param name="HoursPerDay">Hours lit each day. [h, 0–24]</param>
/// <param name="PricePerKilowattHour">Price of electricity. [currency/kWh, above 0 to 10]</param>
/// <param name="Replacement">Catalogue id of a tube or luminaire; null to look at the present lighting only.</param>
public sealed record FirstFacts(int Luminaires, string SetUp, double HoursPerDay, double PricePerKilowattHour, string? Replacement)
{
    /// <summary>ISO 4217 code of the currency.</summary>
    public string Currency { get; init; } = "USD";

    /// <summary>Name of the site.</summary>
    public string SiteName { get; init; } = "My site";
}
