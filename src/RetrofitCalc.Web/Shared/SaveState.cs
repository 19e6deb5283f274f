using NodaTime;

namespace RetrofitCalc.Web.Shared;

/// <summary>Where the last edit stands.</summary>
public abstract record SaveState
{
    public sealed record Saved(Instant At) : SaveState;

    public sealed record Saving : SaveState;

    public sealed record Failed(Instant Since, string Why) : SaveState;

    /// <summary>Someone else saved this study in the meantime; both versions are kept until the user chooses.</summary>
    public sealed record Conflict(Instant TheirTime) : SaveState;
}
