using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Spectra;

namespace RetrofitCalc.Files.Studies;

/// <summary>Whether every spectrum a study names is its own or a shipped one. The engine does not know which are shipped.</summary>
internal static class SpectrumIds
{
    public static IEnumerable<StudyProblem> ProblemsOf(Study study)
    {
        foreach (var (index, own) in study.Spectra.Index())
            if (ShippedSpectra.Find(own.Id) is not null)
                yield return new($"Spectra[{index}].Id", $"\"{own.Id}\" is the name of a spectrum that comes with the program; give this one another id.");
        foreach (var (index, product) in study.Products.Index())
            if (product.Spectrum is { } id && study.Spectra.All(own => own.Id != id) && ShippedSpectra.Find(id) is null)
                yield return new($"Products[{index}].Spectrum", $"\"{product.Product}\" has spectrum \"{id}\", which neither the study nor the program has.");
    }
}
