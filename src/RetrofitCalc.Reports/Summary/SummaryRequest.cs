using NodaTime;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Spectra;

namespace RetrofitCalc.Reports;

/// <summary>What a reader asks of a summary beyond the study itself. Every date comes from here, so the same request gives the same bytes.</summary>
public sealed record SummaryRequest
{
    /// <summary>Day printed on every sheet.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>Rules, roles, checklist and sources of the safety annex.</summary>
    public required SafetyRuleBook Rules { get; init; }

    /// <summary>Who is asked, such as "the budget meeting of March"; may be empty.</summary>
    public string ForWhom { get; init; } = "";

    /// <summary>True for an issued revision, false for a draft.</summary>
    public bool Issued { get; init; }

    /// <summary>Number of the revision. [1 or more]</summary>
    public int Revision { get; init; } = 1;

    /// <summary>Id of the option asked for; null for the one the study names.</summary>
    public string? Option { get; init; }

    /// <summary>Spectra of the lamps in use and of those proposed; none leaves that part of the light annex out.</summary>
    public IReadOnlyList<ProductSpectrum> Spectra { get; init; } = [];

    /// <summary>Units of lengths; null for the usual ones of the site.</summary>
    public UnitSystem? Units { get; init; }
}
