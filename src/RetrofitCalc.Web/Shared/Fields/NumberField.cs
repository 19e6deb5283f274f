using Microsoft.AspNetCore.Components;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>A number, typed with the site's own decimal mark. A share can be typed as a percentage.</summary>
public sealed class NumberField : TypedField<double?>
{
    /// <summary>Least value, as typed.</summary>
    [Parameter] public double Least { get; set; } = double.NegativeInfinity;

    /// <summary>Greatest value, as typed.</summary>
    [Parameter] public double Most { get; set; } = double.PositiveInfinity;

    [Parameter] public bool Whole { get; set; }

    /// <summary>The study holds a share; one types hundredths.</summary>
    [Parameter] public bool Percent { get; set; }

    /// <summary>A blank is an answer: the study then holds nothing.</summary>
    [Parameter] public bool MayBeBlank { get; set; }

    protected override string InputMode => Whole ? "numeric" : "decimal";

    protected override string InputClass => "num";

    protected override string Write(double? value) => NumberText.Write(Math.Round(value!.Value * (Percent ? 100 : 1), 10), Culture);

    protected override Parsed<double?> Read(string typed)
    {
        var read = NumberText.Parse(typed, Culture);
        if (!read.Ok) return read;
        if (read.Value is not { } number) return MayBeBlank ? read : Parsed.Bad<double?>($"A number is needed here. {Allowed()}".TrimEnd());
        if (Whole && number != Math.Floor(number)) return Parsed.Bad<double?>($"\"{typed.Trim()}\" is not a whole number. {Allowed()}".TrimEnd());
        if (number < Least || number > Most) return Parsed.Bad<double?>($"\"{typed.Trim()}\" is out of range. {Allowed()}");
        return Parsed.Good<double?>(Percent ? number / 100 : number);
    }

    private string Allowed() => (double.IsFinite(Least), double.IsFinite(Most)) switch
    {
        (true, true) => $"Type {NumberText.Write(Least, Culture)} to {NumberText.Write(Most, Culture)}.",
        (true, false) => $"Type {NumberText.Write(Least, Culture)} or more.",
        (false, true) => $"Type {NumberText.Write(Most, Culture)} or less.",
        _ => "",
    };
}
