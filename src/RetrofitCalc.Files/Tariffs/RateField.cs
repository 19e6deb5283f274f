using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Tariffs;

/// <summary>What became of a field of a rate record.</summary>
public enum FieldUse
{
    Used,

    /// <summary>Used, but its meaning or something missing had to be guessed: the note says how.</summary>
    Doubtful,
    NotUsed,
}

/// <summary>A field of a rate record and what became of it.</summary>
/// <param name="Path">Its place in the file, such as $.items[0].demandwindow.</param>
/// <param name="Note">Why it is doubtful or not used; for a used field what it became, or nothing.</param>
public sealed record RateField(int Line, int Column, string Path, FieldUse Use, string Note);

/// <summary>A tariff read from a rate record.</summary>
/// <param name="Tariff">Without a value the record cannot be billed by this program, for the reasons in its problems; with problems it needs mending first.</param>
/// <param name="Fields">Every field of the record, in the order of the file.</param>
public sealed record RateReading(Parsed<Tariff> Tariff, IReadOnlyList<RateField> Fields)
{
    public IEnumerable<RateField> With(FieldUse use) => Fields.Where(field => field.Use == use);
}
