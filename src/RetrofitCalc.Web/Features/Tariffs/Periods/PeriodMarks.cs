using System.Globalization;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Tariffs.Periods;

/// <summary>How periods are told apart on the page: a letter each, and a darker ground for a dearer price.</summary>
public sealed class PeriodMarks
{
    private const int Letters = 26;
    private const int DarkestShade = 5;
    private readonly IReadOnlyList<int> _shades;
    private readonly Dictionary<int, int> _periodOf;

    private PeriodMarks(Tariff tariff)
    {
        var periods = EnergyPeriod.Of(tariff.Energy);
        (Tariff, Periods) = (tariff, periods);
        var prices = periods.Select(FirstPrice).Distinct().Order().ToList();
        _shades = [.. periods.Select(p => Math.Min(DarkestShade, prices.IndexOf(FirstPrice(p))))];
        _periodOf = periods.Index().SelectMany(p => p.Item.Charges.Select(c => (Charge: c, p.Index))).ToDictionary(p => p.Charge, p => p.Index);
    }

    /// <summary>The tariff marked: a part drawn with these marks must look at no newer one.</summary>
    public Tariff Tariff { get; }

    public IReadOnlyList<EnergyPeriod> Periods { get; }

    public static PeriodMarks Of(Tariff tariff) => new(tariff);

    /// <summary>A to Z, then A2 to Z2 and so on.</summary>
    public static string Letter(int period) =>
        (char)('A' + (period % Letters)) + (period < Letters ? "" : (period / Letters + 1).ToString(CultureInfo.InvariantCulture));

    public string Shade(int period) => string.Create(CultureInfo.InvariantCulture, $"shade-{_shades[period]}");

    public string Name(int period) => Periods[period].Price.Name;

    /// <summary>Period of an energy charge of the tariff.</summary>
    public int OfCharge(int charge) => _periodOf[charge];

    private static double FirstPrice(EnergyPeriod period) => period.Price.Blocks.Count == 0 ? 0 : period.Price.Blocks[0].Price.PerKilowattHour;
}
