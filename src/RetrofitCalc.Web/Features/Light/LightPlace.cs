using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Light;

/// <summary>What the page shows, as its address says: an area, and one of its stages where it grows something.</summary>
/// <param name="Index">Place of the area in the study.</param>
/// <param name="Stage">The stage as the option asked for would light it, as it is lit now without one; null where nothing grows.</param>
/// <param name="Now">The same stage as it is lit now.</param>
public sealed record LightPlace(int Index, Area Area, StageLight? Stage, StageLight? Now)
{
    /// <summary>The area asked for, else the one whose crop is worst off, else the first.</summary>
    public static LightPlace? Of(Study study, StudyResult? result, LightAddress asked)
    {
        var light = LightOf(result);
        var id = study.Areas.Any(area => area.Id == asked.Area) ? asked.Area : light?.WorstFirst.FirstOrDefault()?.Area ?? study.Areas.FirstOrDefault(area => area.GrowsCrop)?.Id;
        var index = study.Areas.ToList().FindIndex(area => area.Id == id);
        if (index < 0) index = study.Areas.Count > 0 ? 0 : -1;
        if (index < 0) return null;
        var stage = StageOf(light, study.Areas[index], asked);
        return new(index, study.Areas[index], stage, stage is null ? null : result!.Light.Stages.FirstOrDefault(now => Same(now, stage)));
    }

    /// <summary>Light after the option asked for; now where there is none.</summary>
    public static CropLightResult? LightOf(StudyResult? result) => result?.Chosen?.Light ?? result?.Light;

    public static bool Same(StageLight one, StageLight other) => (one.Area, one.Season, one.Stage) == (other.Area, other.Season, other.Stage);

    private static StageLight? StageOf(CropLightResult? light, Area area, LightAddress asked)
    {
        var stages = light?.Stages.Where(stage => stage.Area == area.Id).ToList() ?? [];
        return stages.FirstOrDefault(stage => stage.Season == asked.Season && stage.Stage == asked.Stage)
            ?? light?.WorstByArea.FirstOrDefault(stage => stage.Area == area.Id);
    }
}

/// <summary>The part of the address that says what is shown; each may be missing.</summary>
public sealed record LightAddress(string? Area, string? Season, string? Stage)
{
    /// <summary>The address of an area's page, or of one of its stages.</summary>
    public static string Of(Guid study, string area, string? season = null, string? stage = null)
    {
        var address = $"/studies/{study}/light?area={Uri.EscapeDataString(area)}";
        return season is null ? address : $"{address}&season={Uri.EscapeDataString(season)}&stage={Uri.EscapeDataString(stage ?? "")}";
    }
}
