using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.FirstAnswer;

/// <summary>A complete study from five answers, so that a first answer comes from the same model as the last one.</summary>
/// <remarks>
/// One area lit every day of the year from six in the morning, a flat price, one option. What nobody has said keeps a wide
/// range: hours, price and watts 10 %, first cost 25 % for want of a written offer, lives 25 %: common practice, no source.
/// </remarks>
public static class FirstAnswerStudy
{
    private const int MostLuminaires = 100_000;
    private const double HighestPrice = 10;
    private const int SecondsPerDay = 24 * 60 * 60;
    private static readonly LocalTime LightsOn = new(6, 0);

    /// <summary>What is wrong with the answers, in plain words; empty when they can be used.</summary>
    /// <param name="facts">The answers.</param>
    /// <param name="catalogue">The catalogue.</param>
    public static IReadOnlyList<StudyProblem> Check(FirstFacts facts, CatalogueExtract catalogue)
    {
        var problems = new List<StudyProblem>();
        void Ask(bool good, string field, string message)
        {
            if (!good) problems.Add(new StudyProblem(field, message));
        }
        Ask(facts.Luminaires is >= 1 and <= MostLuminaires, nameof(facts.Luminaires), "Give a whole number of luminaires, from 1 to 100 000.");
        Ask(catalogue.SetUps.Any(s => s.Id == facts.SetUp), nameof(facts.SetUp), "Choose what hangs there now from the catalogue.");
        Ask(facts.HoursPerDay is >= 0 and <= 24, nameof(facts.HoursPerDay), "A day has 24 hours: give a number from 0 to 24.");
        Ask(facts.PricePerKilowattHour is > 0 and <= HighestPrice, nameof(facts.PricePerKilowattHour),
            $"Give the price of one kilowatt-hour in whole currency units, above 0 and up to {HighestPrice}; 15 cents are a fraction of one unit.");
        Ask(facts.Replacement is null || MeasureFor(facts.Replacement, catalogue) is not null, nameof(facts.Replacement),
            "Choose a tube or a luminaire from the catalogue, or none.");
        return problems;
    }

    /// <summary>Makes the study.</summary>
    /// <param name="facts">The answers.</param>
    /// <param name="catalogue">The catalogue; the study takes along the rows it uses.</param>
    /// <exception cref="InvalidStudyException"><see cref="Check"/> finds problems.</exception>
    public static Study From(FirstFacts facts, CatalogueExtract catalogue)
    {
        var problems = Check(facts, catalogue);
        if (problems.Count > 0) throw new InvalidStudyException(problems);
        return new Study
        {
            Name = "First answer",
            Site = new Site { Name = facts.SiteName },
            Areas = [new Area { Id = "room", Name = "All luminaires", Weekly = EveryDay(facts.HoursPerDay) }],
            Lines = [new SurveyLine { Id = "line-1", Name = "All luminaires", Area = "room", SetUp = facts.SetUp, Count = facts.Luminaires }],
            Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(facts.PricePerKilowattHour), facts.Currency),
            Options = facts.Replacement is { } id && MeasureFor(id, catalogue) is { } measure ? [Option(measure)] : [],
            Assumptions = new Assumptions { FirstCostUncertainty = 0.25 },
            Catalogue = UsedRows(facts, catalogue),
        };
    }

    private static WeeklySchedule EveryDay(double hours)
    {
        var seconds = (int)Math.Round(hours * SecondsPerDay / 24);
        var days = Enum.GetValues<IsoDayOfWeek>().Where(day => day != IsoDayOfWeek.None).ToList();
        return seconds == 0
            ? new WeeklySchedule()
            : new WeeklySchedule { Hours = [new WeeklyHours(days, LightsOn, LightsOn.PlusSeconds(seconds % SecondsPerDay))] };
    }

    private static RetrofitOption Option(Measure measure) => new()
    {
        Id = "change",
        Name = measure is DirectWire ? "Direct-wire tubes" : "New luminaires",
        Measures = [new LineMeasure("line-1", measure)],
    };

    private static Measure? MeasureFor(string id, CatalogueExtract catalogue) =>
        catalogue.Tubes.Any(tube => tube.Id == id) ? new DirectWire(id)
        : catalogue.Luminaires.Any(luminaire => luminaire.Id == id) ? new ReplaceLuminaire(id)
        : null;

    private static CatalogueExtract UsedRows(FirstFacts facts, CatalogueExtract catalogue)
    {
        var setUp = catalogue.SetUps.First(row => row.Id == facts.SetUp);
        var ballasts = setUp.Ballasts.Select(position => position.Ballast).ToHashSet();
        return new CatalogueExtract
        {
            SetUps = [setUp],
            Lamps = [.. catalogue.Lamps.Where(row => row.Id == setUp.Lamp)],
            Ballasts = [.. catalogue.Ballasts.Where(row => ballasts.Contains(row.Id))],
            Tubes = [.. catalogue.Tubes.Where(row => row.Id == facts.Replacement)],
            Luminaires = [.. catalogue.Luminaires.Where(row => row.Id == facts.Replacement)],
        };
    }
}
