using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Cases;

/// <summary>When load falls in the year and how the tariff sees it: everything of a bill that does not depend on watts.</summary>
public sealed class SiteLoad
{
    /// <summary>Lays the areas' operation and the tariff over the year.</summary>
    /// <param name="areas">Operation of each lit area.</param>
    /// <param name="counted">How many of them, from the first, count for hours with light; the others are only what the meter holds today.</param>
    /// <param name="study">The study.</param>
    /// <param name="year">The year at the site's clock.</param>
    public SiteLoad(IReadOnlyList<AreaOperation> areas, int counted, Study study, SiteYear year)
    {
        Tariff = new(study.Tariff, year);
        SeasonNames = NamesOf(study.Areas);
        FirstSlots = [.. areas.Select((_, index) => areas.Take(index).Sum(area => area.Modes.Count))];
        Slots = [.. areas.SelectMany(SlotsOf)];
        Timeline = new(areas, FirstSlots, year);
        LitHours = HoursWith(slot => slot.Area < counted);
        SeasonHours = [.. SeasonNames.Select((_, season) => HoursWith(slot => slot.Area < counted && slot.Season == season))];
        Meter = study.Meter is { } meter ? new(meter, year) : null;
        MeteredCells = Meter is null ? null : Tariff.MeteredByCell(Meter);
        Demand = [.. study.Tariff.Demand.Select((charge, index) =>
            Tariff.DemandSpans[index].Select(spans => new DemandWindows(charge.WindowMinutes, spans, Timeline, Meter)).ToArray())];
        EnergyShares = [.. year.Months.Select(month => study.Tariff.Energy.Select(charge => Tariff.ShareInForce(charge.When, month)).ToArray())];
        DemandShares = [.. year.Months.Select(month => study.Tariff.Demand.Select(charge => Tariff.ShareInForce(charge.When, month)).ToArray())];
    }

    /// <summary>The tariff over the year.</summary>
    public TariffCalendar Tariff { get; }

    /// <summary>Season names of the site, then "All year" where a weekly schedule is used, then "Between seasons".</summary>
    public IReadOnlyList<string> SeasonNames { get; }

    /// <summary>Number of the first slot of each lit area.</summary>
    public IReadOnlyList<int> FirstSlots { get; }

    /// <summary>Modes of all lit areas, with their hours.</summary>
    public IReadOnlyList<Slot> Slots { get; }

    /// <summary>The site's year in segments of constant load.</summary>
    public SiteTimeline Timeline { get; }

    /// <summary>By demand charge and month: the loads it could bill.</summary>
    public IReadOnlyList<IReadOnlyList<DemandWindows>> Demand { get; }

    /// <summary>The meter; null without meter data.</summary>
    public MeterLoad? Meter { get; }

    /// <summary>Metered energy in each cell of the tariff calendar; null without meter data. [kWh]</summary>
    public double[]? MeteredCells { get; }

    /// <summary>By billing month: share of its days on which each energy charge is in force. [unitless, 0–1]</summary>
    public IReadOnlyList<double[]> EnergyShares { get; }

    /// <summary>By billing month: share of its days on which each demand charge is in force. [unitless, 0–1]</summary>
    public IReadOnlyList<double[]> DemandShares { get; }

    /// <summary>Hours with any light. [h]</summary>
    public double LitHours { get; }

    /// <summary>Hours with any light of each season, in the order of <see cref="SeasonNames"/>. [h]</summary>
    public IReadOnlyList<double> SeasonHours { get; }

    private double HoursWith(Func<Slot, bool> holds) => Timeline.States.Index()
        .Where(state => state.Item.Any(slot => slot != SiteTimeline.Dark && holds(Slots[slot])))
        .Sum(state => Timeline.Hours[state.Index]);

    private IEnumerable<Slot> SlotsOf(AreaOperation area, int index) => area.Modes.Select(mode =>
    {
        LitSpell[] spells = [.. area.Spells.Where(spell => spell.Mode == mode)];
        var season = SeasonNames.Index().First(name => name.Item == mode.Season).Index;
        return new Slot(index, mode, season, spells.Sum(spell => spell.Hours), Tariff.HoursByCell(spells))
        {
            Plant = PlantResponse.Of(area.Plant, mode.Plant) * area.Area.HeatInSpace,
        };
    });

    private static List<string> NamesOf(IReadOnlyList<Area> areas) =>
    [
        .. areas.Where(area => area.GrowsCrop).SelectMany(area => area.Seasons).Select(season => season.Name)
            .Concat(areas.Where(area => !area.GrowsCrop && area.Weekly is not null).Select(_ => LitMode.AllYear))
            .Distinct(),
        LitMode.BetweenSeasons,
    ];
}
