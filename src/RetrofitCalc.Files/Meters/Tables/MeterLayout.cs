namespace RetrofitCalc.Files.Meters.Tables;

/// <summary>What the columns of a table of readings mean. The program guesses it; its user decides.</summary>
public sealed record MeterLayout
{
    /// <summary>Line of the first row with a reading.</summary>
    public int FirstLine { get; init; } = 2;

    /// <summary>Column of the date, or of date and time together, from 0.</summary>
    public int StampColumn { get; init; }

    /// <summary>Column of the time of day where it stands apart; null where it stands with the date, or in the headings.</summary>
    public int? TimeColumn { get; init; }

    /// <summary>Column of the value; several for a table with a day in each row, the first beginning at midnight.</summary>
    public IReadOnlyList<int> ValueColumns { get; init; } = [1];

    /// <summary>Unit of the values.</summary>
    public MeterUnit Unit { get; init; }

    /// <summary>Whether a stamp tells when an interval begins or ends.</summary>
    public StampMeaning Stamps { get; init; }

    /// <summary>Which clock the stamps follow; an offset within a stamp goes before it.</summary>
    public StampClock Clock { get; init; }

    /// <summary>Order of day and month in dates that do not begin with the year.</summary>
    public DateOrder Dates { get; init; }

    /// <summary>Decimal mark of the values.</summary>
    public char DecimalMark { get; init; } = '.';

    /// <summary>Whether each row holds a day.</summary>
    public bool IsDayPerRow => ValueColumns.Count > 1;
}

/// <summary>Units of a meter's values.</summary>
public enum MeterUnit
{
    KilowattHours,
    WattHours,
    Kilowatts,
    Watts,
}

/// <summary>What a time stamp marks.</summary>
public enum StampMeaning
{
    Start,
    End,
}

/// <summary>The clock of time stamps.</summary>
public enum StampClock
{
    /// <summary>The clock on the site's wall, moved in spring and autumn where the site's is.</summary>
    Site,
    /// <summary>Coordinated universal time.</summary>
    Utc,
    /// <summary>The site's standard time all year.</summary>
    SiteStandard,
}

/// <summary>Order of day and month.</summary>
public enum DateOrder
{
    MonthFirst,
    DayFirst,
}
