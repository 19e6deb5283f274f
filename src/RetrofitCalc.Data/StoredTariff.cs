using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Data;

/// <summary>A tariff of the library.</summary>
/// <param name="Version">Number of the edit that was read; a save must name it.</param>
/// <param name="Note">What a reader must know beside the values, such as which of them were derived.</param>
/// <param name="Own">Added or edited here; shipped ones nobody touched are not own.</param>
public sealed record StoredTariff(string Id, int Version, Tariff Tariff, string Note, bool Retired, bool Own);

/// <summary>How the save of a tariff ended.</summary>
public abstract record TariffOutcome
{
    private TariffOutcome() { }

    public sealed record Saved(int NewVersion) : TariffOutcome;

    /// <summary>Someone else saved first; nothing was written.</summary>
    public sealed record Conflict(StoredTariff Current) : TariffOutcome;

    public sealed record Missing : TariffOutcome;
}

/// <summary>One edit of a tariff, with the values after it.</summary>
public sealed record TariffEdit(int Version, CatalogueChange Change, Tariff Tariff, Instant At);
