using System.Text.Json;
using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Reference;

/// <summary>Each answer evaluates a whole study: one line, measured before, a new luminaire of known watts after.</summary>
internal static class Energy_figures
{
    [ReferenceTopic("daily_kwh_cost")]
    private static double DailyCost(JsonElement i)
    {
        var study = Study(1, i.Number("fixture_w"), 1, i.Number("h"), Tariff.Flat(SampleTariff.Price(i.Number("usd_per_kwh"))));
        return Evaluate(study).Now.Site.Cost.Units / 365;
    }

    [ReferenceTopic("demand_reduction_w")]
    private static double PowerSaved(JsonElement i)
    {
        var result = Evaluate(Study(i.Count("fixtures"), i.Number("before_w"), i.Number("after_w"), 10, FlatPrice));
        return (result.Now.Site.Connected - result.Chosen!.After.Site.Connected).Watts;
    }

    [ReferenceTopic("annual_kwh_saved")]
    private static double EnergySaved(JsonElement i)
    {
        var result = Evaluate(Study(i.Count("qty"), i.Number("base_w"), i.Number("new_w"), i.Number("hours") / 365, FlatPrice));
        return (result.Now.Site.Lighting - result.Chosen!.After.Site.Lighting).KilowattHours;
    }

    private static Tariff FlatPrice => Tariff.Flat(SampleTariff.Price(0.15));

    private static StudyResult Evaluate(Study study) => StudyEvaluation.Run(study, new());

    private static Study Study(int count, double before, double after, double hoursPerDay, Tariff tariff) => SampleStudy.Small with
    {
        Site = new() { Name = "Reference", TimeZone = "Etc/UTC" },
        Areas = [SampleStudy.Hall with { Weekly = new() { Hours = [new(EveryDay, new(6, 0), new LocalTime(6, 0).PlusMinutes((long)Math.Round(hoursPerDay * 60)))] } }],
        Lines = [SampleStudy.Line("line", "hall", SampleCatalogue.TwoT8.Id, count) with { Reading = new(Power.FromWatts(before), new(2026, 1, 1)) }],
        Tariff = tariff,
        Options = [new() { Id = "new", Name = "New", Measures = [new("line", new ReplaceLuminaire(SampleCatalogue.NewLuminaire.Id))] }],
        Catalogue = SampleCatalogue.All with { Luminaires = [SampleCatalogue.NewLuminaire with { LinePower = Power.FromWatts(after) }] },
    };

    private static IReadOnlyList<IsoDayOfWeek> EveryDay => [.. Enum.GetValues<IsoDayOfWeek>().Where(day => day != IsoDayOfWeek.None)];
}
