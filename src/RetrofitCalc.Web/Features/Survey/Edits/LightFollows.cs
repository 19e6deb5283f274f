using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Survey.Edits;

/// <summary>What is known of the light follows the survey: no luminaire hangs over a bench that the survey has not, no light strays where nothing is.</summary>
public static class LightFollows
{
    /// <summary>Layouts without the luminaires of a line that is gone, or that now belongs to another area.</summary>
    public static IReadOnlyList<Area> WithoutLine(IReadOnlyList<Area> areas, string line) =>
        [.. areas.Select(area => area.Light is { } light && light.Layout.Any(place => place.Line == line)
            ? area with { Light = light with { Layout = FromLowest([.. light.Layout.Where(place => place.Line != line)]) } }
            : area)];

    /// <summary>Light that strayed onto an area that is gone.</summary>
    public static IReadOnlyList<Area> WithoutArea(IReadOnlyList<Area> areas, string gone) =>
        [.. areas.Select(area => area.Light is { } light && light.Stray.Any(stray => stray.Onto == gone)
            ? area with { Light = light with { Stray = [.. light.Stray.Where(stray => stray.Onto != gone)] } }
            : area)];

    /// <summary>Heights count from the lowest luminaire, which may be the one that went.</summary>
    private static IReadOnlyList<LuminairePlace> FromLowest(IReadOnlyList<LuminairePlace> layout)
    {
        var lowest = layout.Count == 0 ? 0 : layout.Min(place => place.HigherBy);
        return lowest == 0 ? layout : [.. layout.Select(place => place with { HigherBy = place.HigherBy - lowest })];
    }
}
