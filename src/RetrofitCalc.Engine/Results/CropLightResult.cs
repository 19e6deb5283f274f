using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Results;

/// <summary>Whether a crop keeps its light.</summary>
public enum LightVerdict
{
    /// <summary>Readings, sizes or outputs are missing.</summary>
    NotKnown,
    /// <summary>Nothing is done in the area.</summary>
    Unchanged,
    /// <summary>It keeps enough light, to the end of the lamps' interval.</summary>
    Keeps,
    /// <summary>Enough when new, too little before the lamps are due; without a target, noticeably less by then than the present lamps give when they are due.</summary>
    KeepsAtFirst,
    /// <summary>Too little light.</summary>
    Loses,
}

/// <summary>Light in all areas in one state of the lighting.</summary>
/// <param name="Stages">A verdict for each growing area, season and stage, in the study's order.</param>
/// <param name="People">Light for people, by area.</param>
public sealed record CropLightResult(IReadOnlyList<StageLight> Stages, IReadOnlyList<TaskLight> People)
{
    /// <summary>The worst verdict of all stages; null when no crop grows here.</summary>
    /// <remarks>Losing is worst, then not known, then enough at first, keeping, unchanged.</remarks>
    public LightVerdict? Worst => Stages.Count == 0 ? null : Stages.Select(stage => stage.Verdict).MaxBy(Rank);

    /// <summary>Growing areas by their worst stage, in the study's order: of stages that lose, one that misses its target before one that has none.</summary>
    public IReadOnlyList<StageLight> WorstByArea =>
        [.. Stages.GroupBy(stage => stage.Area).Select(area => area.MaxBy(stage => (Rank(stage.Verdict), stage.Target is not null, -stage.Change ?? 0))!)];

    /// <summary>The same, the worst area first.</summary>
    public IReadOnlyList<StageLight> WorstFirst => [.. WorstByArea.OrderByDescending(stage => Rank(stage.Verdict)).ThenBy(stage => stage.Change ?? 0)];

    private static int Rank(LightVerdict verdict) => verdict switch
    {
        LightVerdict.Loses => 4,
        LightVerdict.NotKnown => 3,
        LightVerdict.KeepsAtFirst => 2,
        LightVerdict.Keeps => 1,
        _ => 0,
    };
}

/// <summary>Light of one stage now and after a change.</summary>
public sealed record StageLight
{
    /// <summary>Id of the area.</summary>
    public required string Area { get; init; }

    /// <summary>Season.</summary>
    public required string Season { get; init; }

    /// <summary>Stage.</summary>
    public required string Stage { get; init; }

    /// <summary>Whether the crop keeps its light.</summary>
    public required LightVerdict Verdict { get; init; }

    /// <summary>Daily light after over daily light now, less one, both as the lamps are when the change is made; where lit hours stay, that of the light while lit. [unitless]; null when not known.</summary>
    public double? Change { get; init; }

    /// <summary>How far <see cref="Change"/> may be off, either way, 19 times in 20. [unitless]</summary>
    public double? ChangeUncertainty { get; init; }

    /// <summary>What makes <see cref="ChangeUncertainty"/>, the largest first.</summary>
    public IReadOnlyList<UncertaintyPart> UncertainBy { get; init; } = [];

    /// <summary>Photons the lamps send out after over now, less one, by their rated outputs: all that can be said without readings. [unitless]; null when not known.</summary>
    public double? RatedChange { get; init; }

    /// <summary>Light now, as read; null when not known.</summary>
    public LightFigures? Now { get; init; }

    /// <summary>Light after the change when new; the same as now where nothing is done; null when not known.</summary>
    public LightFigures? After { get; init; }

    /// <summary>Light at the end of the interval after which lamps, tubes or luminaires are due; null when not known.</summary>
    public LightFigures? AtEnd { get; init; }

    /// <summary>Light of the present lamps at the end of their interval, what the light after the change is held against without a target; null when not known.</summary>
    public LightFigures? NowAtEnd { get; init; }

    /// <summary>Years from the change until the light falls below the target; null when it does not within the interval.</summary>
    public double? BelowTargetAfterYears { get; init; }

    /// <summary>What the crop wants; null when nobody has said.</summary>
    public LightTarget? Target { get; init; }

    /// <summary>Lit hours of a day in this stage.</summary>
    public required OperatingTime Photoperiod { get; init; }

    /// <summary>True when no number of hours that the crop bears gives the target under the light after the change.</summary>
    public bool Unreachable { get; init; }

    /// <summary>True when the light after the change, new, is more than the target allows. It says nothing of the verdict, which asks for enough.</summary>
    public bool TooMuch => CropLight.LightWanted.IsTooMuch(Target, After, Photoperiod);

    /// <summary>What the figures rest on, such as "45 readings at two heights".</summary>
    public string RestsOn { get; init; } = "";

    /// <summary>What would settle it; null when nothing is missing.</summary>
    public string? Ask { get; init; }

    /// <summary>What a grower should know: day length, stray light, readings out of line.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];

    /// <summary>What would keep the light, least watts first; empty where nothing is lost.</summary>
    public IReadOnlyList<LightFix> Fixes { get; init; } = [];
}

/// <summary>One part of what an amount of light may be off by; parts are combined as the root of the sum of their squares.</summary>
/// <param name="Name">In plain words, such as "light of a product".</param>
/// <param name="Share">How far it may move the light, either way, 19 times in 20. [unitless]</param>
public sealed record UncertaintyPart(string Name, double Share);

/// <summary>Light over a bench in figures.</summary>
/// <param name="Mean">Mean over its area. [µmol m⁻² s⁻¹]</param>
/// <param name="Minimum">Lowest. [µmol m⁻² s⁻¹]</param>
/// <param name="Maximum">Highest. [µmol m⁻² s⁻¹]</param>
/// <param name="Daily">Of the mean, in the stage's lit hours. [mol m⁻² d⁻¹]</param>
/// <param name="CoefficientOfVariation">Spread over the area. [unitless]; null in the dark.</param>
/// <param name="ShareOnTarget">Area with the least light wanted or more. [unitless, 0–1]; null without a target.</param>
public sealed record LightFigures(
    PhotonFluxDensity Mean, PhotonFluxDensity Minimum, PhotonFluxDensity Maximum, DailyLight Daily,
    double? CoefficientOfVariation, double? ShareOnTarget)
{
    /// <summary>Uniformity: lowest over mean; null in the dark. [unitless, 0–1]</summary>
    public double? MinimumToMean => Mean > PhotonFluxDensity.Zero ? Minimum / Mean : null;
}

/// <summary>A change to an option that would keep the light of a stage. Exactly one of its ways is given.</summary>
public sealed record LightFix
{
    /// <summary>In plain words, such as "18 W tube instead of 14 W".</summary>
    public required string Text { get; init; }

    /// <summary>Survey lines it changes.</summary>
    public required IReadOnlyList<string> Lines { get; init; }

    /// <summary>New height of the lamps over the crop.</summary>
    public Length? Height { get; init; }

    /// <summary>Catalogue id of another tube or luminaire.</summary>
    public string? Product { get; init; }

    /// <summary>New luminaires for each old one, or tubes in each luminaire.</summary>
    public double? PerLuminaire { get; init; }

    /// <summary>Another lit step, dimming or photoperiod for the stage.</summary>
    public StageChange? Stage { get; init; }

    /// <summary>Light with it.</summary>
    public required LightFigures Light { get; init; }

    /// <summary>Connected load more than without it.</summary>
    public required Power ExtraPower { get; init; }

    /// <summary>Lighting energy more in a year than without it; negative when less. [kWh]</summary>
    public required double ExtraKilowattHours { get; init; }

    /// <summary>What to watch: evenness, reach, hours the crop bears.</summary>
    public string WatchOut { get; init; } = "";
}

/// <summary>Light for people in an area.</summary>
public sealed record TaskLight
{
    /// <summary>Id of the area.</summary>
    public required string Area { get; init; }

    /// <summary>What people do, and the mean illuminance wanted. [lx]</summary>
    public required string Task { get; init; }

    /// <summary>Mean illuminance wanted, maintained. [lx]</summary>
    public required Illuminance Wanted { get; init; }

    /// <summary>Where the wanted value comes from.</summary>
    public required Catalogue.Provenance Source { get; init; }

    /// <summary>Mean now; null when not known. [lx]</summary>
    public Illuminance? Now { get; init; }

    /// <summary>Mean after the change; null when not known. [lx]</summary>
    public Illuminance? After { get; init; }

    /// <summary>How it was found, or what is missing.</summary>
    public required string Basis { get; init; }

    /// <summary>Whether enough is kept; null when not known.</summary>
    public bool? Enough => After is { } after ? after.Lux >= Wanted.Lux : null;
}

/// <summary>An option's saving if every growing area kept the light it has now, both lights at the end of their intervals: lines that lose light get more of the same.</summary>
/// <remarks>Light gained is no saving: such lines stay as the option has them.</remarks>
/// <param name="AnnualBillSaving">Bill and fuel saved in a steady year.</param>
/// <param name="FirstCost">First cost with as many parts.</param>
/// <param name="SimplePayback">First cost over the saving, as for the option itself.</param>
/// <param name="Connected">Connected load of the site.</param>
/// <param name="Differs">False when it is the option itself: nothing loses light, or its light is not known.</param>
public sealed record EqualLight(Money AnnualBillSaving, Money FirstCost, Payback SimplePayback, Power Connected, bool Differs)
{
    /// <summary>A smaller change in the number of luminaires is not told. [unitless]</summary>
    public const double LeastDifference = 0.001;

    /// <summary>Names of the growing areas that the option changes but whose light is not known; they stand as the option has them.</summary>
    public IReadOnlyList<string> Without { get; init; } = [];

    /// <summary>False when every growing area it would have to bring to the light of now is left out: the figures are then the option's own.</summary>
    public bool Known { get; init; } = true;
}
