using Microsoft.AspNetCore.Components;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>A distance to one side or the other: a length with a sign, in metres within the study. A blank is the middle, 0.</summary>
public sealed class OffsetField : TypedField<double?>
{
    private const string Minus = "−";

    /// <summary>Farthest to either side. [m]</summary>
    [Parameter] public double Most { get; set; } = 100;

    protected override void OnParametersSet() => Unit ??= LengthField.Sign(Own);

    protected override string InputClass => "num";

    protected override string Write(double? value) => (value < 0 ? Minus : "") + LengthField.Short(Length.FromMetres(Math.Abs(value!.Value)), Culture, Own);

    protected override Parsed<double?> Read(string typed)
    {
        var text = typed.Trim();
        var negative = text.StartsWith('-') || text.StartsWith(Minus, StringComparison.Ordinal);
        var read = LengthText.Parse(negative ? text[1..] : text, Culture, Own);
        if (!read.Ok) return new(null, read.Problems);
        var metres = read.Value?.Metres ?? 0;
        return metres <= Most
            ? Parsed.Good<double?>(negative ? -metres : metres)
            : Parsed.Bad<double?>($"\"{text}\" is farther than {LengthText.Write(Length.FromMetres(Most), Culture, Own)}.");
    }

    private LengthUnit Own => LengthField.OwnUnit(Session, small: true);
}
