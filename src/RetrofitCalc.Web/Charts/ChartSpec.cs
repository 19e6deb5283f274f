using System.Text.Json.Serialization;

namespace RetrofitCalc.Web.Charts;

/// <summary>Ways of drawing.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<ChartKind>))]
public enum ChartKind
{
    /// <summary>Lying bars, a label at the end of each.</summary>
    Bars,
    /// <summary>A line over years.</summary>
    Line,
    /// <summary>Marks on a row of years for each thing that wears out.</summary>
    Calendar,
    /// <summary>A small field for every hour of a year, in shades.</summary>
    YearMap,
}

/// <summary>How something is inked. The colours stand in the style sheet.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Ink>))]
public enum Ink
{
    Now,
    NowHatched,
    Proposed,
    ProposedHatched,
    NowLine,
    ProposedLine,
    /// <summary>A thin line through many samples.</summary>
    NowCurve,
    /// <summary>The same, dashed, so that it reads in grey.</summary>
    ProposedCurve,
    /// <summary>A wide pale stroke along an axis: how far a value may lie off.</summary>
    Span,
    /// <summary>A ring in ink: the one point that matters.</summary>
    Ring,
    HollowCircle,
    FilledSquare,
    /// <summary>The lowest of seven shades, from that of the paper to the darkest; on a dark screen from dark to light.</summary>
    Shade1,
    Shade2,
    Shade3,
    Shade4,
    Shade5,
    Shade6,
    Shade7,
}

/// <summary>A drawing with every position and every word decided: the script only draws it.</summary>
public sealed record ChartSpec(ChartKind Kind, IReadOnlyList<ChartSeries> Series)
{
    /// <summary>Names of the bars' groups, in lines; empty for other kinds.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Groups { get; init; } = [];

    public ChartAxis Across { get; init; } = ChartAxis.Bare;

    public ChartAxis Up { get; init; } = ChartAxis.Bare;

    /// <summary>One sign for each field of a year map, day by day: a digit for a shade, a letter for the same shade filled in, a point for nothing known, a dash for export.</summary>
    public string Cells { get; init; } = "";

    /// <summary>Names of the groups stand above their bars, as they are too long to stand beside them.</summary>
    public bool NamesAbove => Groups.Any(lines => lines.Any(line => line.Length > LongestBeside));

    private const int LongestBeside = 26;

    /// <summary>Rows of bars or of a calendar; the plot grows with them.</summary>
    public int Rows => Kind == ChartKind.Bars ? Groups.Count : Up.Ticks.Count;
}

/// <param name="Stack">Bars of the same stack lie end to end.</param>
public sealed record ChartSeries(string Name, Ink Ink, IReadOnlyList<ChartPoint> Points, string Stack = "");

/// <param name="X">Position along; for bars the length.</param>
/// <param name="Y">Position up; for bars the number of the group.</param>
/// <param name="Label">Written beside it; null for none.</param>
public sealed record ChartPoint(double X, double Y, string? Label = null);

/// <param name="Low">Where the axis begins.</param>
/// <param name="High">Where it ends.</param>
public sealed record ChartAxis(double Low, double High, IReadOnlyList<ChartTick> Ticks, string Title = "")
{
    public static ChartAxis Bare { get; } = new(0, 0, []);
}

/// <param name="Lines">The label, in one or two lines.</param>
public sealed record ChartTick(double At, IReadOnlyList<string> Lines);
