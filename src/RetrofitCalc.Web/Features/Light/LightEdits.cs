using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Features.Schedules;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Light;

/// <summary>Changes of what is known of light in an area: pure functions of the study.</summary>
public static class LightEdits
{
    public static Study Light(Study study, int area, Func<AreaLight, AreaLight> change) =>
        ScheduleEdits.Area(study, area, a => a with { Light = change(a.Light ?? new()) });

    public static Study Set(Study study, ReadingPlace at, Func<ReadingSet, ReadingSet> change) =>
        Light(study, at.Area, light => light with { Readings = light.Readings.At(at.Index, change) });

    /// <summary>The set joins at the end, under an id of its own.</summary>
    public static Study Add(Study study, int area, ReadingSet set) => Light(study, area, light => light with
    {
        Readings = [.. light.Readings, set with { Id = new NewIds("readings", light.Readings.Select(r => r.Id)).Next() }],
    });

    public static EditState Remove(EditState state, ReadingPlace at) => new(
        Light(state.Study, at.Area, light => light with { Readings = light.Readings.WithoutAt(at.Index) }),
        state.Drafts.AfterDeleting(ReadingPlace.ListOf(at.Area), at.Index));

    /// <summary>The same grid at another height, blank: what was read at one height says nothing of another.</summary>
    public static Study CopyTo(Study study, ReadingPlace from, Length height)
    {
        var set = study.Areas[from.Area].Light!.Readings[from.Index];
        return Add(study, from.Area, set with { Height = height, Values = ReadingGrids.Blank(set.Columns.Count, set.Rows.Count), Confirmed = [] });
    }

    /// <summary>Someone stands by a reading that was questioned, or no longer does.</summary>
    public static Study Confirm(Study study, ReadingPlace at, int reading, bool stands) => Set(study, at, set => set with
    {
        Confirmed = stands ? [.. set.Confirmed.Append(reading).Distinct().Order()] : [.. set.Confirmed.Where(index => index != reading)],
    });
}

/// <summary>A set of readings of an area.</summary>
public readonly record struct ReadingPlace(int Area, int Index)
{
    public string Path => $"{ListOf(Area)}[{Index}]";

    public static string ListOf(int area) => $"{LightOf(area)}.Readings";

    public static string LightOf(int area) => $"Areas[{area}].Light";

    /// <summary>Name of a cell within the set, as the engine names places.</summary>
    public static string Cell(int row, int column) => $"Values[{row}][{column}]";
}
