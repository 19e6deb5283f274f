using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>One price for all months or twelve, January first, as typed or as pasted from a sheet: spaces, tabs, semicolons or new lines between.</summary>
public sealed class PricesField : TypedField<IReadOnlyList<EnergyPrice>>
{
    private const int Months = 12;
    private static readonly char[] Between = [' ', '\t', '\r', '\n', ';'];

    protected override string Write(IReadOnlyList<EnergyPrice> value) =>
        string.Join(value.Count > 1 ? "; " : "", value.Select(price => NumberText.Write(price.PerKilowattHour, Culture)));

    protected override Parsed<IReadOnlyList<EnergyPrice>> Read(string typed)
    {
        var parts = typed.Split(Between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var read = parts.Select(part => (Text: part, Number: NumberText.Parse(part, Culture))).ToList();
        if (read.FirstOrDefault(r => !r.Number.Ok) is { Number: { } bad }) return new Parsed<IReadOnlyList<EnergyPrice>>(null, bad.Problems);
        return parts.Length is 1 or Months
            ? Parsed.Good<IReadOnlyList<EnergyPrice>>([.. read.Select(r => EnergyPrice.FromPerKilowattHour(r.Number.Value!.Value))])
            : Parsed.Bad<IReadOnlyList<EnergyPrice>>($"{parts.Length} prices are typed here. Type one for all months, or twelve from January to December.");
    }
}
