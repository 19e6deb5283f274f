using RetrofitCalc.Engine.Carbon;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Carbon;

public class Carbon_of_a_change
{
    private static readonly StudyResult Result = StudyEvaluation.Run(SampleStudy.Small, new());
    private static readonly GridRegion Texas = GridFactors.Find("ERCT")!;

    private static ShareFigures Now => Result.Now.Site;

    private static ShareFigures After => Result.Options[0].After.Site;

    // EPA, note to the table: average rates for an inventory, non-baseload rates to estimate what a change brings, never the other way round.
    [Fact]
    public void is_worked_out_with_the_rate_of_plants_that_answer_to_it()
    {
        var kilowattHours = (Now.Lighting + Now.Plant - After.Lighting - After.Plant).KilowattHours;
        var rate = 1264.939 + 28 * 0.076 + 265 * 0.010;
        var fuelMadeUp = (Now.FuelTherms - After.FuelTherms) * 5.306;
        Assert.Equal(kilowattHours * rate * 0.45359237 / 1000 - fuelMadeUp, CarbonAccount.Saved(Texas, Result.Now, Result.Options[0].After), 1e-6);
    }

    [Fact]
    public void stands_beside_an_inventory_by_the_average_rate() =>
        Assert.Equal((Now.Lighting + Now.Plant).KilowattHours * 740.832 * 0.45359237 / 1000 - Now.FuelTherms * 5.306, CarbonAccount.Inventory(Texas, Result.Now), 1e-6);

    [Fact]
    public void knows_every_region_once_with_more_from_plants_that_answer_than_on_average()
    {
        Assert.Equal(28, GridFactors.All.Select(region => region.Code).Distinct().Count());
        Assert.All(GridFactors.All, region => Assert.InRange(region.NonBaseload, region.Average, 2000));
    }
}

public class Mercury_of_an_option
{
    private static readonly CatalogueExtractWithMercury Sample = new();

    // 40 luminaires of 2 and 12 of 3 T8 lamps at 3 mg; 20 of 2 T12 lamps nobody knows.
    [Fact]
    public void counts_the_lamps_it_takes_out_once_and_names_those_nobody_knows()
    {
        var retired = Sample.Retired(SampleStudy.TubesEverywhere);
        Assert.Equal((156.0, 40.0), (retired.Lamps, retired.Unknown));
        Assert.Equal(116 * 3 / 1000.0, retired.MercuryGrams, 1e-12);
    }

    [Fact]
    public void leaves_out_lines_that_are_kept()
    {
        var racksKept = SampleStudy.TubesEverywhere with { Measures = [new("racks", new KeepAsIs()), .. SampleStudy.TubesEverywhere.Measures.Skip(1)] };
        Assert.Equal(76, Sample.Retired(racksKept).Lamps);
    }

    [Fact]
    public void leaves_out_lines_whose_measure_is_refused()
    {
        var nothingFits = SampleStudy.TubesEverywhere with { Measures = [new("racks", new DirectWire("no-such-tube"))] };
        Assert.Equal(new RetiredLamps(0, 0, 0), Sample.Retired(nothingFits));
    }

    private sealed class CatalogueExtractWithMercury
    {
        public RetiredLamps Retired(RetrofitOption option)
        {
            var study = SampleStudy.Small with
            {
                Options = [option],
                Catalogue = SampleCatalogue.All with { Lamps = [SampleCatalogue.LampT8 with { MercuryMilligrams = 3 }, SampleCatalogue.LampT12] },
            };
            return RetiredLamps.Of(study, StudyEvaluation.Run(study, new()).Options[0]);
        }
    }
}
