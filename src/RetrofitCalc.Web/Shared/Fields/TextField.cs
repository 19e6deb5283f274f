using Microsoft.AspNetCore.Components;
using RetrofitCalc.Files;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>A name or a remark.</summary>
public sealed class TextField : TypedField<string>
{
    private const int Longest = 500;

    [Parameter] public bool MayBeBlank { get; set; }

    protected override string Write(string value) => value;

    protected override Parsed<string> Read(string typed)
    {
        var text = typed.Trim();
        if (text.Length == 0 && !MayBeBlank) return Parsed.Bad<string>("A name is needed here.");
        return text.Length <= Longest ? Parsed.Good(text) : Parsed.Bad<string>($"This is longer than {Longest} characters.");
    }
}
