using System.Text.Json;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Files.Tariffs;

/// <summary>One record in a file of rate records, for choosing among them.</summary>
/// <param name="Name">Name of the rate; empty when the record has none.</param>
/// <param name="Utility">Who bills by it; empty when the record does not say.</param>
/// <param name="Path">Place in the file: $ for a file of one record, else such as $.items[3].</param>
public sealed record RateRecord(string Name, string Utility, string Path)
{
    internal ReadOnlyMemory<byte> File { get; init; }

    internal Range Bytes { get; init; }

    /// <summary>Turns the record into a tariff.</summary>
    public RateReading Read() => RateReader.Read(this);
}

/// <summary>A rate record as a file.</summary>
/// <param name="NotHeld">What of the tariff the record cannot hold, in words.</param>
public sealed record RateRecordText(byte[] Json, IReadOnlyList<string> NotHeld);

/// <summary>
/// Files of the open US Utility Rate Database: one record, a list of records, or a list named "items" as its web service answers.
/// See docs/rate-record.md.
/// </summary>
public static class RateRecordFile
{
    public const int LimitMegabytes = 32;
    public const int MostRecords = 5000;
    private const int LimitBytes = LimitMegabytes * 1024 * 1024;
    private const int DeepestNesting = 16;

    public static Parsed<IReadOnlyList<RateRecord>> Read(Stream stream)
    {
        try
        {
            return BoundedRead.All(stream, LimitBytes) is { } all ? Read(all) : Bad(FileProblem.Of($"The file is larger than {LimitMegabytes} MB. Save fewer records and try again."));
        }
        catch (IOException unreadable)
        {
            return Bad(FileProblem.Of($"The file could not be read: {unreadable.Message}"));
        }
    }

    /// <summary>A file with one record of a tariff, and what the record cannot hold; without a value no record can hold its energy prices.</summary>
    public static Parsed<RateRecordText> Write(Tariff tariff) => RateWriter.Write(tariff);

    /// <summary>The records of a file. Nothing in them is judged yet.</summary>
    public static Parsed<IReadOnlyList<RateRecord>> Read(ReadOnlyMemory<byte> text)
    {
        if (StudyFileText.ProblemOf(text) is { } notText)
            return Bad(notText);
        var body = StudyFileText.WithoutMark(text);
        try
        {
            return BrokenText(body) is { } broken ? Bad(broken) : Find(body);
        }
        catch (JsonException broken)
        {
            return Bad(JsonShape.BrokenText(broken));
        }
    }

    /// <summary>Well-formed JSON can still hold half of a character, which no text can be made of.</summary>
    private static FileProblem? BrokenText(ReadOnlyMemory<byte> body)
    {
        var reader = new Utf8JsonReader(body.Span, new JsonReaderOptions { MaxDepth = DeepestNesting });
        while (reader.Read())
        {
            if (!reader.ValueIsEscaped)
                continue;
            try
            {
                _ = reader.GetString();
            }
            catch (InvalidOperationException)
            {
                return Place(body, reader, "", "This text holds half of a character. Save the file as UTF-8 and try again.");
            }
        }
        return null;
    }

    private static Parsed<IReadOnlyList<RateRecord>> Find(ReadOnlyMemory<byte> body)
    {
        var reader = new Utf8JsonReader(body.Span, new JsonReaderOptions { MaxDepth = DeepestNesting });
        reader.Read();
        var records = new List<RateRecord>();
        var problem = reader.TokenType switch
        {
            JsonTokenType.StartArray => List(ref reader, "$", body, records),
            JsonTokenType.StartObject => Object(ref reader, body, records),
            _ => Place(body, reader, "$", "This is no rate record: it must be an object in { } or a list of them."),
        };
        if (problem is not null)
            return Bad(problem);
        reader.Read(); // what follows the end is malformed
        return records.Count == 0 ? Bad(FileProblem.Of("The file holds no rate record.")) : Parsed.Good<IReadOnlyList<RateRecord>>(records);
    }

    private static FileProblem? Object(ref Utf8JsonReader reader, ReadOnlyMemory<byte> body, List<RateRecord> records)
    {
        var ahead = reader;
        while (ahead.Read() && ahead.TokenType == JsonTokenType.PropertyName)
        {
            var items = ahead.ValueTextEquals("items"u8);
            ahead.Read();
            if (items && ahead.TokenType == JsonTokenType.StartArray)
            {
                var problem = List(ref ahead, "$.items", body, records);
                reader.Skip();
                return problem;
            }
            ahead.Skip();
        }
        records.Add(Record(ref reader, "$", body));
        return null;
    }

    private static FileProblem? List(ref Utf8JsonReader reader, string path, ReadOnlyMemory<byte> body, List<RateRecord> records)
    {
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            var place = $"{path}[{records.Count}]";
            if (reader.TokenType != JsonTokenType.StartObject)
                return Place(body, reader, place, "A rate record must be an object in { }.");
            if (records.Count == MostRecords)
                return Place(body, reader, place, $"The file holds more than {MostRecords} records. Save fewer and try again.");
            records.Add(Record(ref reader, place, body));
        }
        return null;
    }

    private static RateRecord Record(ref Utf8JsonReader reader, string path, ReadOnlyMemory<byte> body)
    {
        var start = (int)reader.TokenStartIndex;
        var (name, utility) = ("", "");
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var isName = reader.ValueTextEquals("name"u8);
            var isUtility = reader.ValueTextEquals("utility"u8);
            reader.Read();
            if (isName && reader.TokenType == JsonTokenType.String)
                name = RecordText.Line(reader.GetString()!);
            else if (isUtility && reader.TokenType == JsonTokenType.String)
                utility = RecordText.Line(reader.GetString()!);
            reader.Skip();
        }
        return new(name, utility, path) { File = body, Bytes = start..(int)reader.BytesConsumed };
    }

    private static FileProblem Place(ReadOnlyMemory<byte> body, Utf8JsonReader reader, string path, string message)
    {
        var (line, column) = JsonPlace.At(body.Span, reader.TokenStartIndex);
        return new(line, column, path, message);
    }

    private static Parsed<IReadOnlyList<RateRecord>> Bad(FileProblem problem) => Parsed.Bad<IReadOnlyList<RateRecord>>(problem);
}
