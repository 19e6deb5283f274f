using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Lifetimes;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>The known point in the fall of light, from a catalogue row or, where the row leaves it open, from its family (S-73).</summary>
internal static class MaintainedLight
{
    /// <summary>Hours per start of the test cycle to which rated life, and with it mean light, refers.</summary>
    private const double TestCycle = 3;

    private static readonly OperatingTime CommonLampLife = OperatingTime.FromHours(20_000);
    private static readonly OperatingTime CommonLedLife = OperatingTime.FromHours(50_000);
    private static readonly OperatingTime Seasoned = OperatingTime.FromHours(LumenMaintenance.SeasoningHours);

    public static LumenMaintenance OfLamp(Lamp lamp, StartMethod? start)
    {
        var life = LampLives.At(lamp.Lives, start, TestCycle);
        var share = lamp.MeanOverInitial ?? OfFamily(lamp.Family);
        var point = (life ?? CommonLampLife) * LumenMaintenance.MeanLightAt;
        var basis = lamp.MeanOverInitial is null
            ? $"The sheet gives no mean light: {Percent(share)} of the initial light is taken, as is common for {lamp.Family}"
            : $"Mean light {Percent(share)} of the initial light";
        return LumenMaintenance.Through(Seasoned, point > Seasoned ? point : Seasoned * 2, share,
            $"{basis}, at 40 % of {(life is null ? "a common life of 20 000 h, for the sheet gives none" : "rated life")}, the same share lost each hour.");
    }

    /// <summary>A claim beyond six times the test is not believed, for light as little as for life.</summary>
    public static LumenMaintenance OfLed(Replacement product)
    {
        var life = product.RatedLife is { } rated ? RatedLives.Quotable(rated, product.TestHours > OperatingTime.Zero ? product.TestHours : null) : CommonLedLife;
        return LumenMaintenance.Through(OperatingTime.Zero, life, LumenMaintenance.EndOfLifeShare,
            $"70 % of its light at {(product.RatedLife is null ? "a common life of 50 000 h, for the sheet gives none" : "rated life")}, the same share lost each hour.");
    }

    /// <summary>Low ends of what is published of each family, so that a lamp nobody knows is not counted too bright.</summary>
    private static double OfFamily(string family) => family switch
    {
        _ when family.StartsWith("T5", StringComparison.Ordinal) => 0.95,
        _ when family.StartsWith("T8", StringComparison.Ordinal) => 0.92,
        _ => 0.80,
    };

    private static string Percent(double share) => $"{Math.Round(share * 100)} %";
}
