using RetrofitCalc.Engine.Catalogue;

namespace RetrofitCalc.Engine.Studies;

/// <summary>One site's question, complete: everything the engine needs, and nothing it must fetch.</summary>
public sealed record Study
{
    /// <summary>Name of the study.</summary>
    public required string Name { get; init; }

    /// <summary>True when the site, prices and readings are made up; printed on every page.</summary>
    public bool Invented { get; init; }

    /// <summary>Where it is.</summary>
    public required Site Site { get; init; }

    /// <summary>Rooms or benches with one schedule each.</summary>
    public IReadOnlyList<Area> Areas { get; init; } = [];

    /// <summary>Groups of like luminaires.</summary>
    public IReadOnlyList<SurveyLine> Lines { get; init; } = [];

    /// <summary>What electricity costs.</summary>
    public required Tariff Tariff { get; init; }

    /// <summary>A year of the site's interval meter; null without one: then the site's stated base load stands for everything else.</summary>
    public MeterYear? Meter { get; init; }

    /// <summary>A year of outdoor air for the plant by the hour; null without one.</summary>
    public WeatherYear? Weather { get; init; }

    /// <summary>Ways to change the lighting, compared with keeping it.</summary>
    public IReadOnlyList<RetrofitOption> Options { get; init; } = [];

    /// <summary>Id of the option asked for; null for the first.</summary>
    public string? ChosenOption { get; init; }

    /// <summary>How lamps, tubes and luminaires of this study give their light.</summary>
    public IReadOnlyList<ProductLight> Products { get; init; } = [];

    /// <summary>Photometric files taken in.</summary>
    public IReadOnlyList<StudyDistribution> Distributions { get; init; } = [];

    /// <summary>Spectra taken in.</summary>
    public IReadOnlyList<StudySpectrum> Spectra { get; init; } = [];

    /// <summary>Rates, periods and policies.</summary>
    public Assumptions Assumptions { get; init; } = new();

    /// <summary>Facts and answers about safety.</summary>
    public SafetyRecord Safety { get; init; } = new();

    /// <summary>The catalogue rows that lines and options name.</summary>
    public CatalogueExtract Catalogue { get; init; } = new();
}
