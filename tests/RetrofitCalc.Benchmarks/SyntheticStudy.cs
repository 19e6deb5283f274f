using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Benchmarks;

/// <summary>An invented study of any size: growing rooms and halls, a full tariff, three options. The same size gives the same study.</summary>
internal static class SyntheticStudy
{
    private static readonly Provenance Invented = new(EvidenceKind.Invented, "Invented for benchmarks");

    /// <summary>A study of some lines: 6 areas and 8 set-ups when small as the worked example, 50 and 60 when large.</summary>
    public static Study Sized(int lines) => Of(lines, areas: lines < 200 ? 6 : 50, setUps: lines < 200 ? 8 : 60);

    private static Study Of(int lines, int areas, int setUps)
    {
        SurveyLine[] survey = [.. Enumerable.Range(0, lines).Select(i => Line(i, areas, setUps))];
        return new()
        {
            Name = $"{lines} lines",
            Invented = true,
            Site = new() { Name = "Invented", BaseLoad = Power.FromKilowatts(40), Plant = new() { CooledShare = 0.6, HeatedShare = 0.3, FuelPricePerTherm = Money.FromUnits(1.1) } },
            Areas = [.. Enumerable.Range(0, areas).Select(AreaAt)],
            Lines = survey,
            Tariff = FullTariff,
            Options = [Option("tubes", survey, (_, _) => new DirectWire("tube")), Option("new", survey, (_, _) => new ReplaceLuminaire("strip")), Option("mixed", survey, Mixed)],
            Catalogue = Catalogue(setUps),
        };
    }

    /// <summary>A year of readings every 15 minutes: a day shape, a season and a saw, nothing random.</summary>
    public static MeterYear Meter { get; } = new()
    {
        Name = "Invented meter", Source = Invented, FirstDay = new(2027, 1, 1), IntervalMinutes = 15,
        Watts = [.. Enumerable.Range(0, 365 * 96).Select(i => (double?)Math.Round(90_000 + 25_000 * Math.Sin(i % 96 / 96.0 * Math.Tau) + 10_000 * Math.Cos(i / 35_040.0 * Math.Tau) + i * 37 % 1_009))],
    };

    /// <summary>The same study with the meter's year and some options, all alike but for their prices.</summary>
    public static Study Metered(int lines, int options)
    {
        var study = Sized(lines);
        return study with { Meter = Meter, Options = [.. Enumerable.Range(0, options).Select(i => study.Options[i % study.Options.Count] with { Id = $"option-{i}" })] };
    }

    private static SurveyLine Line(int i, int areas, int setUps) => new()
    {
        Id = $"line-{i}", Name = $"Line {i}", Area = $"area-{i % areas}", SetUp = $"set-up-{i * 7 % setUps}", Count = 4 + i % 23, LampsOut = i % 5,
        SupplyVolts = 120, BallastYear = 2010 + i % 15, BurnHours = OperatingTime.FromHours(i % 20_000),
    };

    private static Area AreaAt(int i) => i % 3 == 2
        ? new() { Id = $"area-{i}", Name = $"Hall {i}", Weekly = new() { Hours = [new([.. Enum.GetValues<IsoDayOfWeek>().Where(day => day is > IsoDayOfWeek.None and < IsoDayOfWeek.Saturday)], new(6, i % 60), new(18, 0))] } }
        : new()
        {
            Id = $"area-{i}", Name = $"Room {i}", GrowsCrop = true, BallastCaseTemperature = 75,
            Seasons =
            [
                new() { Name = "Winter", Start = new(10, 15), End = new(4, 1), Stages = [Stage("Rooting", 21, 18, i, "half"), Stage("Growing", null, 20, i, null)] },
                new() { Name = "Summer", Start = new(5, 1), End = new(9, 1), Stages = [Stage("All", null, 4, i, null)] },
            ],
        };

    private static Stage Stage(string name, int? days, int hour, int i, string? step) => new()
    {
        Name = name, Days = days, LightsOn = new(hour, i * 5 % 60), LightsOff = new((hour + 16) % 24, i * 5 % 60), LitStep = step,
    };

    public static Tariff FullTariff
    {
        get
        {
            TariffHours summer(params TariffWindow[] windows) => new() { Start = new(6, 1), End = new(9, 30), Windows = windows };
            EnergyCharge charge(string name, TariffHours when, double price) => new() { Name = name, When = when, Blocks = [new(null, EnergyPrice.FromPerKilowattHour(price))] };
            var peak = new TariffWindow(DayKind.Weekday, new(12, 0), new(20, 0));
            return new()
            {
                Name = "Invented",
                Fixed = [new("Customer", Money.FromUnits(120))],
                Energy = [charge("Summer on-peak", summer(peak), 0.22), charge("Summer rest", summer(), 0.12), charge("Winter", new() { Start = new(10, 1), End = new(5, 31) }, 0.11)],
                Demand = [new() { Name = "Demand", Price = DemandPrice.FromPerKilowatt(11), Ratchet = new(0.8) }, new() { Name = "Peak demand", Price = DemandPrice.FromPerKilowatt(7), When = summer(peak) }],
            };
        }
    }

    private static RetrofitOption Option(string id, SurveyLine[] lines, Func<SurveyLine, int, Measure> measure) =>
        new() { Id = id, Name = id, Measures = [.. lines.Select((line, i) => new LineMeasure(line.Id, measure(line, i)))] };

    private static Measure Mixed(SurveyLine line, int i) => (i % 4) switch
    {
        0 => new KeepAsIs(),
        1 => new RenewLikeForLike(),
        2 => new DirectWire("tube", 1),
        _ => new ReplaceLuminaire("strip", 0.8),
    };

    private static CatalogueExtract Catalogue(int setUps) => new()
    {
        Lamps =
        [
            new()
            {
                Id = "lamp", Name = "Lamp", Source = Invented, Family = "T8", Base = "G13", Length = Length.FromFeet(4), NominalPower = Power.FromWatts(32),
                ArcPower = Power.FromWatts(29), Price = Money.FromUnits(4),
                Lives = [new(3, StartMethod.Instant, OperatingTime.FromHours(24_000)), new(12, StartMethod.Instant, OperatingTime.FromHours(30_000))],
            },
        ],
        Ballasts = [.. Enumerable.Range(0, 10).Select(i => new Ballast
        {
            Id = $"ballast-{i}", Name = $"Ballast {i}", Source = Invented, Technology = BallastTechnology.Electronic, StartMethod = StartMethod.Instant, Circuit = LampCircuit.Parallel,
            BallastFactor = 0.78 + 0.02 * i, LuminousEfficiency = 0.9, RatedLife = OperatingTime.FromHours(50_000), RatedCaseTemperature = 70, Price = Money.FromUnits(18),
        })],
        SetUps = [.. Enumerable.Range(0, setUps).Select(i => new SetUp
        {
            Id = $"set-up-{i}", Name = $"Set-up {i}", Source = Invented, Lamp = "lamp", Steps = [new("half", [0])],
            Ballasts = [new($"ballast-{i % 10}", 1 + i % 2), new($"ballast-{i % 10}", 1 + i % 3)],
        })],
        Tubes = [new() { Id = "tube", Name = "Tube", Source = Invented, LinePower = Power.FromWatts(15), Length = Length.FromFeet(4), Base = "G13", Price = Money.FromUnits(11), RatedLife = OperatingTime.FromHours(50_000), TestHours = OperatingTime.FromHours(10_000) }],
        Luminaires = [new() { Id = "strip", Name = "Strip", Source = Invented, LinePower = Power.FromWatts(40), Length = Length.FromFeet(4), Price = Money.FromUnits(90), RatedLife = OperatingTime.FromHours(60_000) }],
    };
}
