using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Tests.Features.Results;

/// <summary>An invented result with round figures, so that each sentence and cell can be redone by head.</summary>
/// <remarks>Culture: 100 luminaires of 60 W, 8 W of them lost; direct-wire 30 W. Hall: 10 luminaires of 120 W, 20 W lost; kept.</remarks>
public static class SampleResult
{
    private static Provenance Invented { get; } = new(EvidenceKind.Invented, "Invented for this test");

    public static Study Study { get; } = new()
    {
        Name = "Trial house",
        Site = new Site { Name = "Trial house", Jurisdiction = "us" },
        Areas = [new Area { Id = "culture", Name = "Culture room", GrowsCrop = true }, new Area { Id = "hall", Name = "Packing hall" }],
        Lines =
        [
            new SurveyLine { Id = "l1", Name = "Shelves", Area = "culture", SetUp = "two-t8", Count = 100 },
            new SurveyLine { Id = "l2", Name = "Hall north", Area = "hall", SetUp = "two-t12", Count = 10 },
        ],
        Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.1)),
        Options = [new RetrofitOption { Id = "dw", Name = "Direct-wire" }],
        Catalogue = new CatalogueExtract { SetUps = [SetUp("two-t8", "Two 4 ft T8"), SetUp("two-t12", "Two 8 ft T12")] },
    };

    public static StudyResult Small { get; } = Make();

    public static StudyResult WithoutOptions { get; } = Small with { Options = [], Notices = [], Study = Small.Study with { Options = [] } };

    public static StudyResult With(Func<OptionResult, OptionResult> change) => Small with { Options = [change(Small.Options[0])] };

    public static StudyResult WithNow(Func<LightingCase, LightingCase> change) => Small with { Now = change(Small.Now) };

    private static SetUp SetUp(string id, string name) =>
        new() { Id = id, Name = name, Source = Invented, Lamp = "lamp", Ballasts = [new BallastPosition("ballast", 2)] };

    private static StudyResult Make() => new()
    {
        Study = Study,
        Now = Case("Now", culture: (6000, 800), hall: (1200, 200), costs: (600, 200, 50)) with { Replacements = Due() },
        Light = new([], []),
        Options = [Option()],
        Questions = [new Question("l1", "SupplyVolts", "What is the supply voltage?"), new Question("l2", "SupplyVolts", "What is the supply voltage?")],
        Notices = [new SafetyNotice("L02", "Lampholders", NoticeSeverity.Stop, "Holders may be joined.", "Which holders are there?", ["E"], ["UL2010"], ["l1"], [])],
        Remarks = ["Lamps out are counted as lit."],
    };

    private static LightingCase Case(string name, (double All, double Loss) culture, (double All, double Loss) hall, (double Summer, double Winter, double Weekly) costs)
    {
        var (summer, winter, weekly) = costs;
        return new LightingCase
        {
            Name = name,
            Lines = [Line("l1", 100, culture, Clocks(lamps: 4, ballasts: 2.5)), Line("l2", 10, hall, Clocks(lamps: 3, ballasts: 6))],
            Areas = [Share("Culture room", culture, summer + winter), Share("Packing hall", hall, weekly)],
            Seasons = [Share("Summer", culture, summer), Share("Winter", culture, winter), Share("All year", hall, weekly), Share("Between seasons", (0, 0), 0)],
            Site = Share("Site", (culture.All + hall.All, culture.Loss + hall.Loss), summer + winter + weekly),
            Bills = [],
            Replacements = [],
        };
    }

    /// <summary>Energy is ten times the cost, as at 0.10 a kilowatt-hour.</summary>
    private static ShareFigures Share(string name, (double All, double Loss) watts, double cost) => new(
        name, Power.FromWatts(watts.All), Power.FromWatts(watts.Loss), OperatingTime.FromHours(cost > 0 ? 1000 : 0),
        Energy.FromKilowattHours(cost * 10), Energy.Zero, 0, Money.FromUnits(cost)) { Heat = Power.FromWatts(watts.All) };

    private static LineFigures Line(string id, double luminaires, (double All, double Loss) watts, IReadOnlyList<WearClock> clocks) => new()
    {
        Line = id,
        Luminaires = luminaires,
        PerLuminaire = new InputPower(Power.FromWatts(watts.All / luminaires), Power.FromWatts(watts.Loss / luminaires), EvidenceKind.Invented, Invented),
        Connected = Power.FromWatts(watts.All),
        BallastLoss = Power.FromWatts(watts.Loss),
        Hours = OperatingTime.FromHours(1000),
        Starts = 365,
        Energy = Energy.FromKilowattHours(watts.All),
        Cost = Money.FromUnits(watts.All / 10),
        Clocks = clocks,
    };

    private static IReadOnlyList<WearClock> Clocks(double lamps, double ballasts) =>
    [
        new(WearPart.Lamp, OperatingTime.FromHours(lamps * 1000), lamps, lamps, "invented"),
        new(WearPart.Ballast, OperatingTime.FromHours(ballasts * 1000), ballasts, ballasts, "invented"),
    ];

    private static IReadOnlyList<ReplacementEvent> Due() =>
    [
        new("l1", WearPart.Ballast, new LocalDate(2029, 7, 2), 2.5, 100, Money.FromUnits(3000)),
        new("l2", WearPart.Lamp, new LocalDate(2030, 1, 1), 3, 20, Money.FromUnits(400)),
        new("l1", WearPart.Lamp, new LocalDate(2031, 1, 1), 4, 200, Money.FromUnits(1600)),
    ];

    private static OptionResult Option() => new()
    {
        Option = Study.Options[0],
        After = Case("Direct-wire", culture: (3000, 0), hall: (1200, 200), costs: (300, 100, 50)),
        FirstCost = new FirstCost(Money.FromUnits(800), Money.FromUnits(300), Money.Zero, Money.Zero, Money.FromUnits(110), Money.FromUnits(10)),
        CashFlow = Flow(-1200, 400, 500, 600),
        SimplePayback = new Payback(2.5),
        PlainPayback = new Payback(3),
        DiscountedPayback = new Payback(2.8),
        NetPresentValue = Money.FromUnits(150),
        InternalRates = [0.112],
        AnnualBillSaving = Money.FromUnits(400),
        FirstYearBillSaving = Money.FromUnits(400),
        Bill = BillSavings.Of([], [], [], Energy.Zero, Energy.Zero),
        Ranges = new OptionRanges(new(2.1, 2.5, 3), Range(100, 150, 220), Range(380, 400, 430), Range(1100, 1200, 1400),
            [new Swing("FirstCost", "First cost", "Get one written offer.", new(2.2, 2.5, 2.9), Range(120, 150, 180), new(2.3, 2.5, 2.7))]),
        Light = new([], []),
        AtEqualLight = new(Money.FromUnits(400), Money.FromUnits(1200), new Payback(2.5), Power.Zero, Differs: false),
        Refused = [],
    };

    public static IReadOnlyList<CashFlowYear> Flow(double start, params double[] years)
    {
        var flow = new List<CashFlowYear> { new(0, Money.FromUnits(start), Money.Zero, Money.Zero, Money.FromUnits(start), Money.FromUnits(start)) };
        foreach (var (saved, i) in years.Select((saved, i) => (saved, i)))
            flow.Add(new(i + 1, Money.Zero, Money.FromUnits(saved), Money.Zero, flow[i].Cumulative + Money.FromUnits(saved), flow[i].CumulativeDiscounted + Money.FromUnits(saved * 0.9)));
        return flow;
    }

    private static Range<Money> Range(double low, double likely, double high) => new(Money.FromUnits(low), Money.FromUnits(likely), Money.FromUnits(high));
}
