using Microsoft.AspNetCore.Components;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Typing;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>A length or height, typed with any unit: 14 in, 1 ft 2 in, 35 cm. A plain number is in the unit beside the label.</summary>
public sealed class LengthField : TypedField<Length?>
{
    /// <summary>A blank is an answer: the study then holds nothing.</summary>
    [Parameter] public bool MayBeBlank { get; set; }

    /// <summary>Inches instead of feet where people think in these: shelves and racks.</summary>
    [Parameter] public bool Small { get; set; }

    /// <summary>Least length. [m]</summary>
    [Parameter] public double Least { get; set; }

    /// <summary>Greatest length. [m]</summary>
    [Parameter] public double Most { get; set; } = double.PositiveInfinity;

    /// <summary>The unit people of the site think in.</summary>
    public static LengthUnit OwnUnit(StudySession session, bool small) => UnitSystems.Usual(session.Study.Site) switch
    {
        UnitSystem.Metric => LengthUnit.Metres,
        _ => small ? LengthUnit.Inches : LengthUnit.Feet,
    };

    /// <summary>Its sign: m, ft or in.</summary>
    public static string Sign(LengthUnit unit) => unit switch { LengthUnit.Metres => "m", LengthUnit.Feet => "ft", _ => "in" };

    protected override void OnParametersSet() => Unit ??= Sign(Own);

    /// <summary>As written in fields: to a quarter of a millimetre, finer than anyone hangs a lamp. A text left alone is not read back.</summary>
    public static string Short(Length length, System.Globalization.CultureInfo culture, LengthUnit unit)
    {
        var (metres, decimals) = unit switch { LengthUnit.Metres => (1.0, 4), LengthUnit.Feet => (UnitConversions.MetresPerFoot, 3), _ => (UnitConversions.MetresPerFoot / 12, 2) };
        return $"{NumberText.Write(Math.Round(length.Metres / metres, decimals), culture)} {Sign(unit)}";
    }

    protected override string InputClass => "num";

    protected override string Write(Length? value) => Short(value!.Value, Culture, Own);

    protected override Parsed<Length?> Read(string typed) => LengthText.Parse(typed, Culture, Own) switch
    {
        { Ok: true, Value: null } when !MayBeBlank => Parsed.Bad<Length?>($"A length is needed here. {Allowed}"),
        { Ok: true, Value: { } length } when length.Metres < Least - Tolerance || length.Metres > Most + Tolerance =>
            Parsed.Bad<Length?>($"\"{typed.Trim()}\" is out of range. {Allowed}"),
        var read => read,
    };

    private const double Tolerance = 1e-9;

    private LengthUnit Own => OwnUnit(Session, Small);

    private string Allowed => double.IsFinite(Most) ? $"Type {Text(Least)} to {Text(Most)}." : $"Type {Text(Least)} or more, such as {Text(Math.Max(Least, 0.3048))}.";

    private string Text(double metres) => LengthText.Write(Length.FromMetres(metres), Culture, Own);
}
