namespace RetrofitCalc.Reports;

/// <summary>What the drawings show: rounded values with their labels made.</summary>
public sealed record SummaryDrawings(CashFlowDrawing? CashFlow, BarDrawing Seasons, BarDrawing Watts, CalendarDrawing Calendar);

/// <summary>Cumulative cash flow against keeping.</summary>
/// <param name="Title">The finding.</param>
/// <param name="Alt">The same for a reader who cannot see it.</param>
/// <param name="Cumulative">Sum at the end of each year, year 0 first. [whole currency units]</param>
/// <param name="Ticks">Values and labels of the money axis.</param>
public sealed record CashFlowDrawing(string Title, string Alt, IReadOnlyList<double> Cumulative, IReadOnlyList<(double Value, string Label)> Ticks)
{
    /// <summary>Years at which the money is back; null when it never is.</summary>
    public double? PaybackYears { get; init; }

    public string PaybackLabel { get; init; } = "";
}

/// <summary>Pairs of bars: now hatched above, proposed solid below.</summary>
/// <param name="Title">The finding.</param>
/// <param name="Alt">The same for a reader who cannot see it.</param>
/// <param name="Pairs">The pairs, in order.</param>
/// <param name="LossIsHatched">True when only the ballast loss at the end of a bar is hatched.</param>
public sealed record BarDrawing(string Title, string Alt, IReadOnlyList<BarPair> Pairs, bool LossIsHatched = false);

/// <param name="Name">What the pair is.</param>
/// <param name="Now">Present bar.</param>
/// <param name="Proposed">Bar after the change; null when nothing is proposed.</param>
public sealed record BarPair(string Name, Bar Now, Bar? Proposed);

/// <param name="Value">Whole length.</param>
/// <param name="Label">The value in words.</param>
/// <param name="Loss">Part of it that is ballast loss.</param>
public sealed record Bar(double Value, string Label, double Loss = 0);

/// <summary>When lamps and ballasts of the present lighting fall due, by area.</summary>
/// <param name="Title">The finding.</param>
/// <param name="Alt">The same for a reader who cannot see it.</param>
/// <param name="FirstYear">Calendar year at the left edge.</param>
/// <param name="Years">Years drawn.</param>
/// <param name="Rows">One row for each area.</param>
public sealed record CalendarDrawing(string Title, string Alt, int FirstYear, int Years, IReadOnlyList<CalendarRow> Rows);

/// <param name="Name">Area.</param>
/// <param name="Lamps">Years from the start at which lamps fall due.</param>
/// <param name="Ballasts">The same for ballasts.</param>
/// <param name="Tubes">The same for tubes or luminaires after the change.</param>
public sealed record CalendarRow(string Name, IReadOnlyList<double> Lamps, IReadOnlyList<double> Ballasts, IReadOnlyList<double> Tubes);
