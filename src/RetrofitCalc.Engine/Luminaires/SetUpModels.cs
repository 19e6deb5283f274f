using RetrofitCalc.Engine.Catalogue;

namespace RetrofitCalc.Engine.Luminaires;

/// <summary>Power of every set-up in a catalogue.</summary>
public static class SetUpModels
{
    /// <summary>Models by set-up id. A set-up whose lamp is not in the catalogue is left out.</summary>
    /// <param name="catalogue">The catalogue rows.</param>
    public static IReadOnlyDictionary<string, SetUpModel> Of(CatalogueExtract catalogue)
    {
        var lamps = catalogue.Lamps.ToDictionary(lamp => lamp.Id);
        var ballasts = catalogue.Ballasts.ToDictionary(ballast => ballast.Id);
        return catalogue.SetUps.Where(setUp => lamps.ContainsKey(setUp.Lamp)).ToDictionary(
            setUp => setUp.Id,
            setUp => new SetUpModel(setUp, lamps[setUp.Lamp],
                [.. setUp.Ballasts.Select(position => position.Ballast is { } id ? ballasts.GetValueOrDefault(id) : null)]));
    }
}
