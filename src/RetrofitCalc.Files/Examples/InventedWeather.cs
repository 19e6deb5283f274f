using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Examples;

/// <summary>A made-up year of outdoor air, the same on every machine.</summary>
/// <remarks>
/// The seasons and the day are two cosines, coldest on 21 January and at 5 in the morning; spells of weather are a first-order
/// autoregressive series. Random numbers come from Knuth's 64-bit linear congruential generator, so that a seed means the same year
/// whatever library runs it.
/// </remarks>
internal sealed class InventedWeather(ulong seed)
{
    private const ulong QuillmereSeed = 20_260_107;
    private const double Mean = 10.5;
    private const double SeasonSwing = 13.5;
    private const double DaySwing = 4.5;
    private const double Persistence = 0.985;
    private const double Unrest = 0.75;

    private ulong _state = seed;

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
            spell = Persistence * spell + Unrest * Normal();
            var season = -SeasonSwing * Math.Cos(2 * Math.PI * (hour / 24.0 - 20) / 365);
            var day = -DaySwing * Math.Cos(2 * Math.PI * (hour % 24 - 5) / 24);
            yield return Math.Round(Mean + season + day + spell, 1);
        }
    }

    /// <summary>Twelve even numbers less six: mean 0, deviation 1, never beyond 6.</summary>
    private double Normal() => Enumerable.Range(0, 12).Sum(_ => Even()) - 6;

    private double Even()
    {
        _state = unchecked(_state * 6_364_136_223_846_793_005 + 1_442_695_040_888_963_407);
        return (_state >> 11) / (double)(1UL << 53);
    }
}
