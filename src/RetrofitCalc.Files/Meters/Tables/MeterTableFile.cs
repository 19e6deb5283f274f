using System.Globalization;
using NodaTime;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Files.Surveys.Tables;
using RetrofitCalc.Files.Surveys.Workbooks;

namespace RetrofitCalc.Files.Meters.Tables;

/// <summary>
/// Reads interval data from CSV or XLSX in two steps: a look at the first rows, from which a layout is guessed, then the whole
/// file by the layout its user agrees to. Rows are read one by one; a file of ten years is never held as cells.
/// </summary>
public static class MeterTableFile
{
    /// <summary>Rows looked at: at quarter-hours more than a month, so that day and month can be told apart.</summary>
    private const int RowsLookedAt = 4000;

    /// <summary>Looks at the first rows and guesses what they mean.</summary>
    public static Parsed<MeterSample> Look(Stream stream, CultureInfo culture, string? sheet = null)
    {
        var rows = new FirstRows(RowsLookedAt);
        if (Fill(stream, culture, rows, sheet) is { } problem) return Parsed.Bad<MeterSample>(problem);
        return rows.Rows.Count == 0
            ? Parsed.Bad<MeterSample>("There is nothing in the table.")
            : MeterGuess.Of(rows.Rows, culture) is { } sample
                ? Parsed.Good(sample with { Notes = rows.Notes })
                : Parsed.Bad<MeterSample>("No row of the table has a date and a number side by side. Interval data need a column of dates or times and a column of values.");
    }

    /// <summary>Reads the whole file by a layout.</summary>
    public static Parsed<MeterSource> Read(Stream stream, MeterTableOptions options, MeterLayout layout, DateTimeZone zone)
    {
        var rows = new StampReader(layout, zone);
        if (Fill(stream, options.Culture, rows, options.Sheet) is { } problem) return Parsed.Bad<MeterSource>(problem);
        if (rows.Read.Count == 0) return Parsed.Bad<MeterSource>([FileProblem.Of("No reading could be read with these columns."), .. rows.Unread.Take(3)]);
        if (LengthsOf(rows, layout) is not { } lengths) return Parsed.Bad<MeterSource>("All readings stand at the same time, so their length cannot be told.");
        var readings = new List<RawReading>(rows.Read.Count);
        foreach (var (i, read) in rows.Read.Index())
            readings.Add(new(read.Instant - (layout is { Stamps: StampMeaning.End, IsDayPerRow: false } ? lengths[i] : 0), lengths[i], Watts(read.Value, layout.Unit, lengths[i])) { Line = read.Line, Marks = read.Marks });
        var about = FormattableString.Invariant($"{About(layout)}, {readings.Count:N0} readings");
        return Parsed.Good(new MeterSource(options.Name, about, readings, [.. rows.Notes, .. UnreadNotes(rows)]));
    }

    private static int[]? LengthsOf(StampReader rows, MeterLayout layout)
    {
        if (!layout.IsDayPerRow) return StepFinder.Of([.. rows.Read.Select(read => read.Instant)], layout.Stamps);
        var lengths = new int[rows.Read.Count];
        Array.Fill(lengths, 86_400 / layout.ValueColumns.Count);
        return lengths;
    }

    private static FileProblem? Fill(Stream stream, CultureInfo culture, TableSink sink, string? sheet)
    {
        try
        {
            var start = BoundedRead.UpTo(stream, 2);
            using var whole = new HeadAndRest(start, stream);
            using var limited = new LimitedStream(whole, MeterLimits.FileBytes);
            var problem = start.AsSpan().SequenceEqual("PK"u8)
                ? WorkbookTable.Fill(limited, (culture, WithTimes: true), sink, sheet)
                : CsvTable.Fill(limited, sink);
            return sink.Refusal is { } refusal ? FileProblem.Of(refusal) : problem;
        }
        catch (IOException unreadable)
        {
            return FileProblem.Of($"The file could not be read: {unreadable.Message}");
        }
    }

    private static double Watts(double value, MeterUnit unit, int seconds) => unit switch
    {
        MeterUnit.KilowattHours => value * 3.6e6 / seconds,
        MeterUnit.WattHours => value * 3600 / seconds,
        MeterUnit.Kilowatts => value * 1000,
        _ => value,
    };

    private static string About(MeterLayout layout) => layout.Unit switch
    {
        MeterUnit.KilowattHours => "energy, kWh",
        MeterUnit.WattHours => "energy, Wh",
        MeterUnit.Kilowatts => "average power, kW",
        _ => "average power, W",
    };

    private static IEnumerable<string> UnreadNotes(StampReader rows)
    {
        if (rows.UnreadCount > 0)
            yield return $"{rows.UnreadCount} {(rows.UnreadCount == 1 ? "cell" : "cells")} could not be read and count as missing. {string.Join(" ", rows.Unread.Take(3))}";
    }
}

/// <summary>How a table file is to be read apart from its columns.</summary>
/// <param name="Name">Name of the meter or file.</param>
/// <param name="Culture">The site's culture, in which numbers of a workbook are written out.</param>
/// <param name="Sheet">Sheet of a workbook; null for the first.</param>
public sealed record MeterTableOptions(string Name, CultureInfo Culture, string? Sheet = null);

/// <summary>The first rows of a table and what they seem to mean.</summary>
/// <param name="Headings">Heading of each column, "Column 3" where there is none.</param>
/// <param name="Rows">The first rows with readings, as text.</param>
/// <param name="Guess">What the columns seem to mean.</param>
public sealed record MeterSample(IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<string>> Rows, MeterLayout Guess)
{
    /// <summary>What a careful person wants to know of how the file was read.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}
