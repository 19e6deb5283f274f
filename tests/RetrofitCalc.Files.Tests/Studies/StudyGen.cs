using CsCheck;
using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Tests.Studies;

/// <summary>Makes studies of every shape the types allow; their figures need not make sense.</summary>
internal static class StudyGen
{
    public static readonly Gen<string> Text = Gen.OneOf(
        Gen.Const(""), Gen.Const("=1+1"), Gen.Const("<b>Bank & \"Söhne\"</b>"), Gen.Const("Ränge 1–2 \u2028 🌱"), Gen.String[Gen.Char[' ', '~'], 0, 12]);

    internal static readonly Gen<double> Number = Gen.Double[0, 1e6];
    internal static readonly Gen<double> Share = Gen.Double[0, 1];
    private static readonly Gen<string> Id = Gen.String[Gen.Char['a', 'z'], 1, 8];
    internal static readonly Gen<LocalDate> Date = Gen.Int[-20000, 40000].Select(d => new LocalDate(2000, 1, 1).PlusDays(d));
    internal static readonly Gen<AnnualDate> Day = Date.Select(d => new AnnualDate(d.Month, d.Day));
    internal static readonly Gen<LocalTime> Time = Gen.Int[0, 86399].Select(s => LocalTime.FromSecondsSinceMidnight(s));
    internal static readonly Gen<Provenance> Source = Gen.Select(Enum<EvidenceKind>(), Text, Gen.Bool, (k, s, m) => new Provenance(k, s, m));
    private static readonly Gen<IReadOnlyList<IsoDayOfWeek>> Days = List(Gen.Int[1, 7].Select(d => (IsoDayOfWeek)d));

    internal static Gen<T> Enum<T>() where T : struct, Enum => Gen.Int[0, System.Enum.GetValues<T>().Length - 1].Select(i => System.Enum.GetValues<T>()[i]);
    internal static Gen<T?> Maybe<T>(Gen<T> gen) where T : struct => Gen.Select(Gen.Bool, gen, (some, value) => some ? value : (T?)null);
    internal static Gen<T?> MaybeRef<T>(Gen<T> gen) where T : class => Gen.Select(Gen.Bool, gen, (some, value) => some ? value : null);
    internal static Gen<IReadOnlyList<T>> List<T>(Gen<T> gen) => gen.Array[0, 3].Select(a => (IReadOnlyList<T>)a);

    private static readonly Gen<Lamp> Lamps = Gen.Select(Id, Text, Source, Maybe(Number), Maybe(Share),
        List(Gen.Select(Number, Maybe(Enum<StartMethod>()), Number, (h, s, l) => new LampLife(h, s, OperatingTime.FromHours(l)))),
        (id, name, source, n, share, lives) => new Lamp
        {
            Id = id, Name = name, Source = source, Family = "T8", Base = "G13", Length = Length.FromFeet(4), NominalPower = Power.FromWatts(32),
            ArcPower = n is { } w ? Power.FromWatts(w) : null, MeanOverInitial = share, Lives = lives, Note = name, Retired = lives.Count == 1,
            FieldSources = new Dictionary<string, Provenance> { ["ArcPower"] = source },
            PhotonFlux = n is { } p ? PhotonFlux.FromMicromolesPerSecond(p) : null, InitialFlux = n is { } f ? LuminousFlux.FromLumens(f) : null,
        });

    private static readonly Gen<Ballast> Ballasts = Gen.Select(Id, Source, Maybe(Enum<LampCircuit>()), Maybe(Share), Maybe(Number),
        (id, source, circuit, bf, n) => new Ballast
        {
            Id = id, Name = id, Source = source, Technology = BallastTechnology.Magnetic, StartMethod = StartMethod.Rapid, Circuit = circuit,
            BallastFactor = bf, LampsOutPower = n is { } w ? Power.FromWatts(w) : null, Price = n is { } m ? Money.FromUnits(-m) : null,
        });

    private static readonly Gen<SetUp> SetUps = Gen.Select(Id, Source, List(Gen.Select(MaybeRef(Id), Gen.Int[1, 6], (b, n) => new BallastPosition(b, n))),
        List(Gen.Select(Text, List(Gen.Int[0, 3]), Maybe(Number), (n, i, w) => new LitStep(n, i, w is { } v ? Power.FromWatts(v) : null))),
        (id, source, ballasts, steps) => new SetUp { Id = id, Name = id, Source = source, Lamp = id, Ballasts = ballasts, Steps = steps });

    private static readonly Gen<DirectWireTube> Tubes = Gen.Select(Id, Source, Maybe(Number), Maybe(Enum<TubeFeed>()), Maybe(Enum<LocationClass>()),
        (id, source, n, feed, wet) => new DirectWireTube
        {
            Id = id, Name = id, Source = source, LinePower = Power.FromWatts(15), Length = Length.FromFeet(4), Base = "G13", Feed = feed, Location = wet,
            Voltage = n is { } v ? new VoltageRange(v, v + 1) : null, Dims = n is null ? null : n > 5e5, RatedLife = n is { } h ? OperatingTime.FromHours(h) : null,
        });

    private static readonly Gen<CatalogueExtract> Catalogues = Gen.Select(List(Lamps), List(Ballasts), List(SetUps), List(Tubes),
        (lamps, ballasts, setUps, tubes) => new CatalogueExtract { Lamps = lamps, Ballasts = ballasts, SetUps = setUps, Tubes = tubes });

    internal static readonly Gen<Holiday> Holidays = Gen.OneOf<Holiday>(
        Gen.Select(Day, Enum<WeekendMove>(), (day, moves) => (Holiday)new FixedHoliday(day, moves)),
        Gen.Select(Gen.Int[0, 4].Select(n => n == 0 ? -1 : n), Enum<IsoDayOfWeek>().Where(d => d != IsoDayOfWeek.None), Gen.Int[1, 12], Gen.Int[-7, 7], (n, d, m, after) => (Holiday)new WeekdayHoliday(n, d, m, after)),
        Gen.Int[-60, 60].Select(days => (Holiday)new EasterHoliday(days)), Date.Select(date => (Holiday)new SingleHoliday(date)));

    private static readonly Gen<Stage> Stages = Gen.Select(Text, Maybe(Gen.Int[1, 300]), Time, Time, Days, MaybeRef(Text), Share, Gen.Select(Enum<ClockRule>(), MaybeRef(LightGen.Targets)),
        (name, days, on, off, week, step, dim, rest) => new Stage
        {
            Name = name, Days = days, LightsOn = on, LightsOff = off, DaysOfWeek = week, LitStep = step, Dimming = dim, ClockRule = rest.Item1, Target = rest.Item2,
        });

    private static readonly Gen<PlantInteraction> Plants = Gen.Select(Enum<PlantMethod>(), Share, Maybe(Number), MaybeRef(Text), (method, share, n, text) => new PlantInteraction
    {
        Method = method, CooledShare = share, HeatingCop = n, EconomiserLimit = n, InteractionTherms = -share, InteractionBuilding = text, LatentShare = share,
    });

    private static readonly Gen<Area> Areas = Gen.Select(Id, Text, Gen.Bool,
        List(Gen.Select(Text, Day, Day, List(Stages), (n, s, e, g) => new Season { Name = n, Start = s, End = e, Stages = g })),
        MaybeRef(Gen.Select(List(Gen.Select(Days, Time, Time, (d, on, off) => new WeeklyHours(d, on, off))), List(Holidays),
            (hours, off) => new WeeklySchedule { Hours = hours, Holidays = off })), Share, Gen.Select(MaybeRef(Plants), MaybeRef(LightGen.Areas)),
        (id, name, crop, seasons, weekly, heat, rest) => new Area { Id = id, Name = name, GrowsCrop = crop, Seasons = seasons, Weekly = weekly, HeatInSpace = heat, Plant = rest.Item1, Light = rest.Item2 });

    public static readonly Gen<SurveyLine> Lines = Gen.Select(Id, Text, MaybeRef(Id), Maybe(Gen.Int[0, 500]), Maybe(Number), Maybe(Date),
        Maybe(Enum<EmergencyRole>()), Maybe(Enum<LocationClass>()),
        (id, text, setUp, count, n, date, role, wet) => new SurveyLine
        {
            Id = id, Name = text, Area = id, SetUp = setUp, Count = count, LampsOut = count, DeadBallasts = count, MountingHeight = n is { } m ? Length.FromMetres(m) : null,
            SupplyVolts = n, BallastYear = count, LampsInstalled = date, Emergency = role, Location = wet, Note = text,
            Reading = n is { } w && date is { } d ? new PowerReading(Power.FromWatts(w), d) : null,
        });

    private static readonly Gen<Measure> Measures = Gen.OneOf<Measure>(
        Gen.Const<Measure>(new KeepAsIs()), Gen.Const<Measure>(new RenewLikeForLike()),
        Gen.Select(Id, Maybe(Gen.Int[1, 6]), (t, n) => (Measure)new DirectWire(t, n)), Gen.Select(Id, Number, (l, n) => (Measure)new ReplaceLuminaire(l, n)));

    private static readonly Gen<RetrofitOption> Options = Gen.Select(Id, Text, Maybe(Number),
        List(Gen.Select(Id, Measures, Maybe(Number), (l, m, n) => new LineMeasure(l, m) { PartsPerLuminaire = n is { } p ? Money.FromUnits(p) : null, Height = n is { } h ? Length.FromMetres(h) : null })), List(LightGen.Changes),
        (id, name, n, measures, stages) => new RetrofitOption
        {
            Id = id, Name = name, Measures = measures, Stages = stages, Costs = new OptionCosts { IncentiveCap = n, FixedSum = Money.FromUnits(n ?? 0) },
        });

    private static readonly Gen<SafetyRecord> Safety = Gen.Select(MaybeRef(Id), Text, Date, (line, text, date) => new SafetyRecord
    {
        Facts = [new SafetyFact(line, text, text)], Answers = [new NoticeAnswer(text, line, text, "EL", text, date)], Checklist = [new ChecklistAnswer(text, "EL", text, date)],
    });

    private static readonly Gen<MeterYear> Meters = Gen.Select(Text, Source, Date, Maybe(Gen.Double[-1e6, 1e6]).Array[0, 300], List(Gen.Select(Gen.Int[0, 40000], Gen.Int[1, 100], Text, (f, c, r) => new FilledGap(f, c, r))),
        (name, source, first, watts, filled) => new MeterYear { Name = name, Source = source, FirstDay = first, IntervalMinutes = 15, Watts = watts, Filled = filled });

    private static readonly Gen<WeatherYear> Weathers = Gen.Select(Text, Source, Gen.Double[-80, 60].Array[0, 200], Gen.Double[-12, 14],
        (name, source, dryBulb, offset) => new WeatherYear { Name = name, Source = source, DryBulb = dryBulb, UtcOffset = offset });

    private static readonly Gen<Site> Sites = Gen.Select(Text, Maybe(Share), MaybeRef(Text), Plants, (name, factor, grid, plant) => new Site { Name = name, PowerFactor = factor, GridRegion = grid, Plant = plant });

    public static readonly Gen<Study> Studies = Gen.Select(Text, TariffGen.Tariffs, List(Areas), List(Lines), List(Options), Catalogues, Safety,
        Gen.Select(MaybeRef(Id), Share, MaybeRef(Meters), MaybeRef(Weathers), Sites,
            Gen.Select(List(LightGen.Products), List(LightGen.Distributions), List(LightGen.Spectra))),
        (name, tariff, areas, lines, options, catalogue, safety, rest) => new Study
        {
            Name = name, Invented = areas.Count > 0, Tariff = tariff, Areas = areas, Lines = lines, Options = options, Catalogue = catalogue, Safety = safety, ChosenOption = rest.Item1,
            Meter = rest.Item3, Weather = rest.Item4, Site = rest.Item5, Products = rest.Item6.Item1, Distributions = rest.Item6.Item2, Spectra = rest.Item6.Item3,
            Assumptions = new Assumptions { DiscountRate = rest.Item2, LightRelampShare = rest.Item2, RelampPolicy = RelampPolicy.Light },
        });
}
