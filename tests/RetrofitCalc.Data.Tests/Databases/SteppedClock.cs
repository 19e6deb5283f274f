using NodaTime;

namespace RetrofitCalc.Data.Tests.Databases;

/// <summary>A clock that goes on a second each time it is read, and further when told.</summary>
public sealed class SteppedClock : IClock
{
    private Instant _now = Instant.FromUtc(2026, 3, 1, 12, 0);

    public Instant GetCurrentInstant() => _now += Duration.FromSeconds(1);

    public void Advance(Duration time) => _now += time;
}
