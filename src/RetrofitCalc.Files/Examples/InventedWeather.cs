using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Examples;

/// <summary>A made-up year of outdoor air, the same on every machine.</summary>
/// <remarks>
/// The seasons and the day are two cosines, coldest on 21 January and at 5 in the morning; spells of weather are a first-order
/// autoregressive series. Random numbers are those of <see cref="InventedNumbers"/>.
/// </remarks>
internal sealed class InventedWeather(ulong seed)
{
    private const ulong QuillmereSeed = 20_260_107;
    private const double Mean = 10.5;
    private const double SeasonSwing = 13.5;
    private const double DaySwing = 4.5;
    private const double Persistence = 0.985;
    private const double Unrest = 0.75;

    private readonly InventedNumbers _numbers = new(seed);

    public static WeatherYear Quillmere() => new()
    {
        Name = "Quillmere (invented)",
        Source = new Provenance(EvidenceKind.Invented, $"Invented weather year, generated from seed {QuillmereSeed}"),
        UtcOffset = -5,
        DryBulb = [.. new InventedWeather(QuillmereSeed).Hours()],
    };

    private IEnumerable<double> Hours()
    {
        var spell = 0.0;
        for (var hour = 0; hour < OutdoorAir.Hours; hour++)
        {
            spell = Persistence * spell + Unrest * _numbers.Normal();
            var season = -SeasonSwing * Math.Cos(2 * Math.PI * (hour / 24.0 - 20) / 365);
            var day = -DaySwing * Math.Cos(2 * Math.PI * (hour % 24 - 5) / 24);
            yield return Math.Round(Mean + season + day + spell, 1);
        }
    }
}
