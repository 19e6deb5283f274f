using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>The readings of an area and the model fitted to them: the same for every option, so found once.</summary>
internal sealed class PresentBench
{
    private PresentBench(StudyContext context, Area area)
    {
        (Context, Area, Light) = (context, area, area.Light ?? new());
        Sources = new(context);
        Sets = [.. Light.Readings.Select(set => MeasuredLight.Of(set, Light)).OfType<MeasuredLight>()];
        var placed = Light.Layout.Select(place => place.Line).ToHashSet();
        HasLayout = placed.Count > 0;
        var counted = context.Lines.Select(line => line.Fitted).Where(line => line.Area.Id == area.Id).ToList();
        Lines = [.. counted.Where(line => !HasLayout || placed.Contains(line.Line.Id))];
        Elsewhere = [.. counted.Except(Lines)];
        var uncounted = context.Study.Lines.Where(line => line.Area == area.Id && counted.All(each => each.Line.Id != line.Id)).Select(line => line.Id).ToList();
        Uncounted = [.. uncounted.Where(line => !HasLayout || placed.Contains(line))];
        UncountedElsewhere = [.. uncounted.Except(Uncounted)];
        var read = Sets.Select(set => set.Set.Date).Max();
        Ageing = Lines.ToDictionary(line => line.Line.Id,
            line => LineAgeing.Present(line, context.Operations[area.Id].LineOperation(1), read, context.Study.Assumptions));
        Missing = Lines.Select(line => LineSources.Missing(line, context)).FirstOrDefault(missing => missing is not null);
        Fit = Fitted();
    }

    /// <summary>The bench of an area, kept with the study's context.</summary>
    /// <param name="context">The context of the study as it is.</param>
    /// <param name="area">A growing area of the study.</param>
    public static PresentBench Of(StudyContext context, Area area)
    {
        if (!context.Benches.TryGetValue(area.Id, out var bench))
            context.Benches[area.Id] = bench = new(context, area);
        return bench;
    }

    /// <summary>The context of the study as it is.</summary>
    public StudyContext Context { get; }

    /// <summary>The area.</summary>
    public Area Area { get; }

    /// <summary>Its bench.</summary>
    public AreaLight Light { get; }

    /// <summary>What luminaires hold.</summary>
    public LineSources Sources { get; }

    /// <summary>Readings that can be used.</summary>
    public IReadOnlyList<MeasuredLight> Sets { get; }

    /// <summary>Whether it is known where luminaires hang.</summary>
    public bool HasLayout { get; }

    /// <summary>Lines that light the bench: those of the layout, else all of the area.</summary>
    public IReadOnlyList<FittedLine> Lines { get; }

    /// <summary>Counted lines of the area that nobody has laid out, such as another tier; none without a layout.</summary>
    public IReadOnlyList<FittedLine> Elsewhere { get; }

    /// <summary>Ids of lines that light the bench but are not counted.</summary>
    public IReadOnlyList<string> Uncounted { get; }

    /// <summary>Ids of lines of the area that are neither laid out nor counted.</summary>
    public IReadOnlyList<string> UncountedElsewhere { get; }

    /// <summary>What is left of their rated light, from the day of the readings on, by id of the line.</summary>
    public IReadOnlyDictionary<string, LineAgeing> Ageing { get; }

    /// <summary>What must be known before the photons of the present lamps are; null when they are.</summary>
    public string? Missing { get; }

    /// <summary>The model; null without readings, layout or outputs, or where the layout lights none of the readings.</summary>
    public FittedLight? Fit { get; }

    /// <summary>Readings times lamps over the bench: what one look at it costs. [count]</summary>
    public long Work => Sets.Sum(set => (long)set.Readings.Count)
        * Light.Layout.Sum(place => Lines.FirstOrDefault(line => line.Line.Id == place.Line)?.Fitting is BallastedFitting lamps ? (long)lamps.SetUp.LampCount : 1);

    /// <summary>Light per unit of what is left of the rated output, found once for each way in which a line is fitted.</summary>
    public Dictionary<LitLine, double[]> Known { get; } = [];

    /// <summary>Height of the lamps of a line over the crop: as surveyed, else as read.</summary>
    /// <param name="line">The line.</param>
    /// <param name="read">The readings.</param>
    public static Length HeightOf(FittedLine line, MeasuredLight read) => line.Line.MountingHeight ?? read.Set.Height;

    /// <summary>The readings that speak best for a stage: taken with the same lamps lit, then nearest in height; null without any.</summary>
    /// <param name="step">Name of the step lit in the stage; null for all lamps.</param>
    public MeasuredLight? BestFor(string? step)
    {
        var height = Lines.Select(line => line.Line.MountingHeight).FirstOrDefault(height => height is not null);
        return Sets.OrderBy(set => set.Set.LitStep == step ? 0 : 1)
            .ThenBy(set => height is { } known ? Math.Abs(set.Set.Height.Metres - known.Metres) : set.Set.Height.Metres).FirstOrDefault();
    }

    /// <summary>
    /// Output of a line while a step is lit, its lamps new; null when it cannot be compared. In photons [µmol/s]; while those of the present lamps are
    /// not known, in present lamps lit [count].
    /// </summary>
    public double? Output(FittedLine line, string? step)
    {
        var output = FittedOutput.Of(line, step, Context);
        return Missing is null ? output.Photons?.MicromolesPerSecond * line.Luminaires
            : line.Fitting is BallastedFitting ? output.Lamps * line.Luminaires
            : null;
    }

    private FittedLight? Fitted()
    {
        if (Sets.Count == 0 || !HasLayout || Lines.Count == 0 || Uncounted.Count > 0 || Missing is not null
            || Sets.Any(set => set.Statistics.Mean == PhotonFluxDensity.Zero))
            return null;
        var sets = Sets.Select(set => (set, Sources: Lit(set.Set))).ToList();
        if (sets.Any(set => set.Sources.Sum(source => source.Tube.Output.MicromolesPerSecond) <= 0))
            return null;
        try
        {
            return LightModel.Fit(sets, Light.Surroundings);
        }
        catch (ArgumentException)
        {
            return null; // lamps aimed away from every reading explain none of them
        }
    }

    private IReadOnlyList<LightSource> Lit(ReadingSet set)
    {
        var fitted = Lines.Select(line => (line.Line.Id, Source: Sources.Of(line, line, set.LitStep))).Where(line => line.Source is not null);
        return BenchLayout.Sources(Light, new(fitted.ToDictionary(line => line.Id, line => line.Source! with { Share = line.Source.Share * Ageing[line.Id].At(0) })), set.Height, set.LitStep);
    }
}

/// <summary>A line as it lights some places.</summary>
/// <param name="Places">The places: readings of a set, or a map.</param>
/// <param name="Line">Id of the line.</param>
/// <param name="Fitting">What is fitted.</param>
/// <param name="Luminaires">How many luminaires. [count]</param>
/// <param name="Hung">How it hangs.</param>
/// <param name="Step">Name of the lit step; null for all lamps.</param>
internal readonly record struct LitLine(object Places, string Line, Fitting Fitting, double Luminaires, Hanging Hung, string? Step);
