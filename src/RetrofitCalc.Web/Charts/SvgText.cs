using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace RetrofitCalc.Web.Charts;

/// <summary>A text in a drawing; markup cannot hold one, since Razor keeps the tag "text" for itself.</summary>
public sealed class SvgText : ComponentBase
{
    [Parameter, EditorRequired] public double X { get; set; }

    [Parameter, EditorRequired] public double Y { get; set; }

    [Parameter] public string? Class { get; set; }

    [Parameter, EditorRequired] public string Text { get; set; } = "";

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        builder.OpenElement(0, "text");
        builder.AddAttribute(1, "class", Class);
        builder.AddAttribute(2, "x", X.ToString("0.##", CultureInfo.InvariantCulture));
        builder.AddAttribute(3, "y", Y.ToString("0.##", CultureInfo.InvariantCulture));
        builder.AddContent(4, Text);
        builder.CloseElement();
    }
}
