using System.Text.Json;
using RetrofitCalc.Engine.Luminaires;

namespace RetrofitCalc.Data.Tests;

/// <summary>Rows of published standard-wattage tables against the engine's answer for the shipped set-up they describe.</summary>
public sealed class Standard_input_watts
{
    /// <summary>Published description to shipped set-up.</summary>
    private static readonly Dictionary<string, string> SetUps = new()
    {
        ["4x F40T12 40W energy-saving magnetic"] = "f40t12-4-es",
        ["4x F34T12 34W energy-saving magnetic"] = "f34t12-4-es",
        ["4x F32T8 electronic"] = "f32t8-4-is-nlo",
        ["4x F28T8 28W electronic"] = "read-f28t8-4-electronic",
        ["6x F32T8 high BF"] = "f32t8-6-is-vhlo",
        ["2x F40T12 electronic (40W lamp run at ~34 W)"] = "read-f40t12-2-electronic",
        ["1x F32T8 IS NLO"] = "f32t8-1-is-nlo",
        ["2x F32T8 IS NLO"] = "f32t8-2-is-nlo",
        ["3x F32T8 IS NLO"] = "f32t8-3-is-nlo",
        ["2x F32T8 IS RLO"] = "f32t8-2-is-rlo",
        ["2x F54T5HO PS"] = "f54t5ho-2-ps",
        ["4x F54T5HO PS"] = "f54t5ho-4-ps",
        ["6x F54T5HO PS"] = "f54t5ho-6-ps",
        ["2x F17T8 IS NLO"] = "f17t8-2-is-nlo",
        ["2x F25T8 IS NLO"] = "f25t8-2-is-nlo",
        ["2x F96T12 75W energy-saving magnetic"] = "f96t12-2-es",
        ["2x F96T12/HO 110W magnetic"] = "f96t12ho-2-mag",
        ["2x F28T5 PS"] = "f28t5-2-ps",
    };

    public static IEnumerable<TheoryDataRow<string, double, double>> Rows()
    {
        using var stream = File.OpenRead(Path.Combine(AppContext.BaseDirectory, "Reference", "energy_checks.json"));
        foreach (var check in JsonDocument.Parse(stream).RootElement.GetProperty("checks").EnumerateArray())
            if (check.GetProperty("topic").GetString() == "standard_input_w")
                yield return new(check.GetProperty("inputs").GetProperty("system").GetString()!, check.GetProperty("expected").GetDouble(), check.GetProperty("tolerance").GetDouble())
                {
                    TestDisplayName = $"{check.GetProperty("id")} [{check.GetProperty("evidence")}] {check.GetProperty("source")}",
                };
    }

    [Theory, MemberData(nameof(Rows))]
    public void are_reached_by_the_shipped_set_up(string system, double watts, double tolerance)
    {
        var model = SetUpModels.Of(Seed.Shipped.Catalogue())[SetUps[system]];
        Assert.Equal(watts, model.Full!.Total.Watts, tolerance);
    }

    /// <summary>One luminaire with twice the ballasts draws twice the watts: table rows with two, three and four equal ballasts.</summary>
    [Theory, InlineData("f54t5ho-4-ps", 2), InlineData("f54t5ho-6-ps", 3), InlineData("f54t5ho-8-ps", 4)]
    public void grow_with_the_number_of_equal_ballasts(string setUp, int ballasts)
    {
        var models = SetUpModels.Of(Seed.Shipped.Catalogue());
        Assert.Equal(ballasts * models["f54t5ho-2-ps"].Full!.Total.Watts, models[setUp].Full!.Total.Watts, 1e-9);
    }

    [Fact]
    public void never_lose_a_negative_amount_in_the_ballast() => Assert.All(
        SetUpModels.Of(Seed.Shipped.Catalogue()).Values.Where(model => model.Full?.BallastLoss is not null),
        model => Assert.InRange(model.Full!.LossShare!.Value, 0, 0.5));
}
