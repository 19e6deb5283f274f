using NodaTime;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>A time of day.</summary>
public sealed class TimeField : TypedField<LocalTime?>
{
    protected override string Write(LocalTime? value) => ClockText.Write(value!.Value);

    protected override Parsed<LocalTime?> Read(string typed)
    {
        var read = ClockText.Parse(typed);
        return read is { Ok: true, Value: null } ? Parsed.Bad<LocalTime?>("A time is needed here. Type it like 6:00, 18:30 or 6:30 pm.") : read;
    }
}
