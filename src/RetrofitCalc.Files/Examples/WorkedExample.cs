using System.Reflection;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Files.Examples;

/// <summary>The invented site that ships with the program.</summary>
public static class WorkedExample
{
    private const string Resource = "RetrofitCalc.Files.Examples.quillmere.study.json";

    /// <summary>The example study, ready to evaluate.</summary>
    public static Study Load()
    {
        using var file = Assembly.GetExecutingAssembly().GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"This build does not contain {Resource}.");
        var read = StudyFile.Read(file);
        if (read.Value is not { } written)
            throw new InvalidOperationException("The worked example does not read: " + string.Join("; ", read.Problems));
        var study = written with { Weather = InventedWeather.Quillmere() };
        study = InventedReadings.Quillmere(study);
        study = study with { Meter = InventedMeter.Quillmere(study) };
        return StudyEvaluation.Check(study) is { Count: > 0 } problems
            ? throw new InvalidOperationException("The worked example cannot be evaluated: " + string.Join("; ", problems))
            : study;
    }
}
