using NodaTime;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Results;

/// <summary>What it would bring if the lights of one area came on at another time, the length of each lit day kept.</summary>
/// <param name="Area">Id of the area.</param>
/// <param name="Shift">Later, or earlier when negative. [min]</param>
/// <param name="Saving">Saved on the bill in a steady year with the present lighting.</param>
/// <param name="Drop">The largest drop of a billed peak with the present lighting; null without demand charges.</param>
public sealed record StaggerOffer(string Area, int Shift, Money Saving, PeakDrop? Drop)
{
    /// <summary>Saved in a steady year with the chosen option in place; null when there is none.</summary>
    public Money? SavingAfter { get; init; }

    /// <summary>Of <see cref="Saving"/>: on demand and reactive lines.</summary>
    public Money Demand { get; init; }
}

/// <summary>How far one billed peak falls.</summary>
/// <param name="Power">Drop; below zero where every peak rises.</param>
/// <param name="Month">Billing month.</param>
/// <param name="Charge">Place among the tariff's demand charges. [0-based]</param>
public sealed record PeakDrop(Power Power, YearMonth Month, int Charge);
