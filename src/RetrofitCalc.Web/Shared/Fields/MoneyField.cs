using Microsoft.AspNetCore.Components;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Typing;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>An amount in the tariff's currency, zero or more. The currency sign may be typed or left out.</summary>
public sealed class MoneyField : TypedField<Money?>
{
    [Parameter] public bool MayBeBlank { get; set; }

    protected override string InputMode => "decimal";

    protected override string InputClass => "num";

    protected override void OnParametersSet() => Unit ??= Sign;

    protected override string Write(Money? value) => NumberText.Write(Math.Round(value!.Value.Units, 10), Culture);

    protected override Parsed<Money?> Read(string typed)
    {
        var read = NumberText.Parse(typed.Replace(Sign, "", StringComparison.OrdinalIgnoreCase), Culture);
        return read switch
        {
            { Ok: false } => new Parsed<Money?>(null, read.Problems),
            { Value: null } when MayBeBlank => Parsed.Good<Money?>(null),
            { Value: null } => Parsed.Bad<Money?>("An amount is needed here. Type 0 or more."),
            { Value: < 0 } => Parsed.Bad<Money?>($"\"{typed.Trim()}\" is negative. Type 0 or more."),
            { Value: { } units } => Parsed.Good<Money?>(Money.FromUnits(units)),
        };
    }

    private string Sign => QuantityText.For(Session.Study).CurrencySign;
}
