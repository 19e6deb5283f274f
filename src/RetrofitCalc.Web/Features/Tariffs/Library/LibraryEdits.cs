using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Tariffs.Library;

/// <summary>A tariff from elsewhere put into the study.</summary>
public static class LibraryEdits
{
    /// <summary>The study gets a copy; texts that waited to be mended in the old tariff go with it and come back with undo.</summary>
    public static EditState Use(EditState state, Tariff tariff) =>
        new(TariffEdits.With(state.Study, _ => tariff), [.. state.Drafts.Where(d => d.Line != "Tariff" && !d.Line.StartsWith("Tariff.", StringComparison.Ordinal))]);

    /// <summary>Whether every word typed is in its name, source or note.</summary>
    public static bool Matches(Tariff tariff, string note, string? typed) =>
        (typed ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .All(word => $"{tariff.Name} {tariff.Source.Source} {note} {tariff.Currency}".Contains(word, StringComparison.OrdinalIgnoreCase));
}
