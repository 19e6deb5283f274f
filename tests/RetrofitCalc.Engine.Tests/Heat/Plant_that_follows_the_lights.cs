using NodaTime;
using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;
using RetrofitCalc.Engine.Tracing;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Tests.Heat;

/// <summary>An energy balance: heat in cooled hours over COP, heat in heated hours over furnace efficiency (Uniform Methods Project chapter 2, from memory).</summary>
public class Plant_that_follows_the_lights
{
    private static readonly PlantInteraction Hourly = SampleStudy.Plant with { Method = PlantMethod.Hourly };

    private static Study With(PlantInteraction plant, WeatherYear? weather = null) =>
        SampleStudy.Small with { Site = SampleStudy.Small.Site with { Plant = plant }, Weather = weather };

    private static LightingCase Now(Study study) => CaseEvaluation.Evaluate(new(study), "Now", new Dictionary<string, Measure>(), null, Perturbation.None);

    [Fact]
    public void is_all_cooling_in_a_hot_year_as_in_a_sealed_room()
    {
        var (hot, sealedRoom) = (Now(With(Hourly, SampleWeather.Steady(30))), Now(With(Hourly with { Method = PlantMethod.SealedRoom })));
        Assert.Equal(sealedRoom.Site, hot.Site);
        Assert.Equal(hot.Areas.Sum(area => area.Lighting.KilowattHours * (area.Id == "room" ? 0.9 : 1)) / 3, hot.Site.Plant.KilowattHours, 1e-6);
        Assert.Equal(0, hot.Site.FuelTherms);
    }

    [Fact]
    public void is_all_heating_in_a_cold_year()
    {
        var cold = Now(With(Hourly, SampleWeather.Steady(-5)));
        var heat = cold.Areas.Sum(area => area.Lighting.KilowattHours * (area.Id == "room" ? 0.9 : 1));
        Assert.Equal(0, cold.Site.Plant.KilowattHours);
        Assert.Equal(heat * 3412.142 / 100_000 / 0.8, cold.Site.FuelTherms, 1e-3);
    }

    // The hall's 20 luminaires of 158 W, 06:50 to 17:05 on weekdays, minute by minute by the wall clock; outdoor air by standard time.
    [Fact]
    public void meets_the_prices_of_the_hours_in_which_it_runs()
    {
        var weather = SampleWeather.Of(hour => 10 + 14 * Math.Sin(hour * 0.0007) * Math.Sin(hour * 0.26));
        var study = With(Hourly, weather) with { Lines = [SampleStudy.Small.Lines[2]], Options = [] };
        var zone = DateTimeZoneProviders.Tzdb["America/New_York"];
        var (onPeak, therms) = (0.0, 0.0);
        for (var at = zone.AtStartOfDay(new(2027, 1, 1)).ToInstant(); at < zone.AtStartOfDay(new(2028, 1, 1)).ToInstant(); at += Duration.FromMinutes(1))
        {
            var wall = at.InZone(zone).LocalDateTime;
            var lit = wall.DayOfWeek <= IsoDayOfWeek.Friday && wall.TimeOfDay >= new LocalTime(6, 50) && wall.TimeOfDay < new LocalTime(17, 5)
                && !(wall is { Month: 1, Day: 1 } or { Month: 12, Day: 25 });
            if (!lit) continue;
            var standard = at.WithOffset(Offset.FromHours(-5)).LocalDateTime;
            var outdoor = weather.DryBulb[(standard.DayOfYear - 1) * 24 + standard.Hour];
            var kilowattHours = 20 * 0.158 / 60;
            if (outdoor < 8) therms += kilowattHours * 3412.142 / 100_000 / 0.8;
            var summerPeak = wall.Month is >= 6 and <= 9 && wall.Hour is >= 12 and < 20 && wall is not { Month: 7, Day: 4 };
            if (summerPeak) onPeak += kilowattHours * (outdoor >= 12 ? 1 + 1 / 3.0 : 1);
        }
        var result = Now(study with { Site = study.Site with { BaseLoad = Power.Zero }, Assumptions = study.Assumptions with { Start = new(2027, 1, 1) } });
        Assert.Equal(therms, result.Site.FuelTherms, 1e-3);
        Assert.Equal(onPeak, result.Bills.SelectMany(bill => bill.Lines).Where(line => line is { Kind: BillLineKind.Energy, Charge: 0 }).Sum(line => line.Quantity), 1e-6);
    }

    // One hot hour on Wednesday 14 July, 13:00 to 14:00 standard time, while the hall's 3.16 kW burn beside 3 kW of base load: COP 3 adds a third.
    [Fact]
    public void raises_demand_in_the_hours_in_which_it_runs_and_in_no_other()
    {
        var hot = (new LocalDate(2027, 7, 14).DayOfYear - 1) * 24 + 13;
        var study = With(Hourly, SampleWeather.Of(hour => hour == hot ? 30 : 10)) with { Lines = [SampleStudy.Small.Lines[2]], Options = [] };
        study = study with { Tariff = study.Tariff with { Demand = [study.Tariff.Demand[0] with { Ratchet = null }] } };
        var demand = Now(study).Bills.ToDictionary(bill => bill.Month.Month, bill => bill.Lines.Single(line => line.Kind == BillLineKind.Demand).Quantity);
        Assert.Equal(3 + 3.16 * 4 / 3, demand[7], 1e-9);
        Assert.All(demand.Where(month => month.Key != 7), month => Assert.Equal(6.16, month.Value, 1e-9));
    }

    [Fact]
    public void is_counted_apart_where_an_area_has_its_own()
    {
        var study = With(new());
        var own = study with { Areas = [study.Areas[0], study.Areas[1] with { Plant = new() { Method = PlantMethod.SealedRoom, CoolingCop = 4 } }] };
        var areas = Now(own).Areas;
        Assert.Equal(0, areas[0].Plant.KilowattHours);
        Assert.Equal(areas[1].Lighting.KilowattHours / 4, areas[1].Plant.KilowattHours, 1e-6);
    }

    // 0.96 of each lighting kWh saved is kept, so 0.04 of each kWh burned is saved elsewhere; the hall releases all heat inside.
    [Fact]
    public void keeps_the_published_share_of_a_saving()
    {
        var factors = Now(With(new() { Method = PlantMethod.InteractionFactors, InteractionFactor = 0.96, InteractionTherms = -0.02138 })).Areas[1];
        Assert.Equal(-0.04 * factors.Lighting.KilowattHours, factors.Plant.KilowattHours, 1e-6);
        Assert.Equal(0.02138 * factors.Lighting.KilowattHours, factors.FuelTherms, 1e-6);
    }

    [Fact]
    public void multiplies_neither_seasons_nor_steps_of_an_explanation()
    {
        var hourly = With(Hourly, SampleWeather.Of(hour => 10 + 14 * Math.Sin(hour * 0.26)));
        Assert.Equal(Now(SampleStudy.Small).Seasons.Select(season => season.Name), Now(hourly).Seasons.Select(season => season.Name));
        var (plain, cut) = (Steps(SampleStudy.Small), Steps(hourly));
        Assert.Equal(plain.Select(step => (step.Name, Math.Round(step.Result.Value, 6))), cut.Select(step => (step.Name, Math.Round(step.Result.Value, 6))));
        Assert.Equal(new AreaStarts(SampleStudy.Small).Counts, new AreaStarts(hourly).Counts);
    }

    [Fact]
    public void adds_up_over_areas_seasons_and_lines()
    {
        var result = Now(With(Hourly, SampleWeather.Of(hour => 10 + 14 * Math.Sin(hour * 0.26))));
        Assert.Equal(result.Site.Cost.Units, result.Areas.Sum(area => area.Cost.Units), 1e-6);
        Assert.Equal(result.Site.Cost.Units, result.Seasons.Sum(season => season.Cost.Units), 1e-6);
        Assert.Equal(result.Site.Cost.Units, result.Lines.Sum(line => line.Cost.Units), 1e-6);
        Assert.Equal(result.Site.Plant.KilowattHours, result.Seasons.Sum(season => season.Plant.KilowattHours), 1e-6);
    }

    // Half of the heat within the room as water vapour at 2450 kJ/kg; cooling and its bill stay the same.
    [Fact]
    public void turns_a_share_of_the_heat_into_moisture_and_none_away()
    {
        var (dry, moist) = (Now(With(Hourly, SampleWeather.Steady(30))).Site, Now(With(Hourly with { LatentShare = 0.5 }, SampleWeather.Steady(30))).Site);
        Assert.Equal(dry.Heat.Watts * 0.5 * 3.6 / 2450, moist.MoisturePerHour, 1e-9);
        Assert.Equal(dry, moist with { MoisturePerHour = 0 });
    }

    private static List<TraceStep> Steps(Study study) => [.. StudyExplanation.Of(study, ExplainedFigure.YearlyEnergy, "shelves")];

    private sealed class AreaStarts(Study study)
    {
        public IEnumerable<double> Counts => new StudyContext(study).LitAreas.Select(area => (double)area.Starts);
    }
}
