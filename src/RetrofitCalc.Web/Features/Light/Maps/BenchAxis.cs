using System.Globalization;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Files.Typing;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Light.Maps;

/// <summary>Distances along one side of a bench, counted from its end in the reader's unit.</summary>
public sealed class BenchAxis(double metres, LengthUnit unit, CultureInfo culture)
{
    private static readonly double[] Inches = [1, 2, 3, 6, 12, 24, 48, 96, 240];
    private static readonly double[] Round = [0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100];
    private const int MostTicks = 5;

    private double UnitMetres => unit switch { LengthUnit.Inches => UnitConversions.MetresPerFoot / 12, LengthUnit.Feet => UnitConversions.MetresPerFoot, _ => 1 };

    private double Side => metres / UnitMetres;

    /// <summary>Where to mark, as a share of the side, and what to write; the unit stands with the last.</summary>
    public IReadOnlyList<(double Share, string Text)> Ticks()
    {
        var steps = unit == LengthUnit.Inches ? Inches : Round;
        var step = steps.FirstOrDefault(s => Side / s <= MostTicks, steps[^1]);
        var count = (int)Math.Floor(Side / step + 1e-6);
        return [.. Enumerable.Range(0, count + 1).Select(i => (i * step / Side, NumberText.Write(i * step, culture) + (i == count ? " " + Unit : "")))];
    }

    /// <summary>"in" or "m".</summary>
    public string Unit => LengthField.Sign(unit);

    /// <summary>A place counted from the middle, as the reader measures it from the end.</summary>
    public string Place(double fromMiddle) => Write(fromMiddle / UnitMetres + Side / 2);

    /// <summary>"48 in".</summary>
    public override string ToString() => $"{Write(Side)} {Unit}";

    private string Write(double value) => NumberText.Write(Math.Round(value, unit == LengthUnit.Metres ? 2 : 1), culture);
}
