using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

internal static class CatalogueCheck
{
    public static void Run(Study study, Problems problems)
    {
        var catalogue = study.Catalogue;
        CheckUnique(catalogue, problems);
        var lamps = catalogue.Lamps.Select(lamp => lamp.Id).ToHashSet();
        var ballasts = catalogue.Ballasts.Select(ballast => ballast.Id).ToHashSet();
        foreach (var (index, setUp) in catalogue.SetUps.Index())
        {
            var path = $"Catalogue.SetUps[{index}]";
            if (!lamps.Contains(setUp.Lamp))
                problems.Add($"{path}.Lamp", $"Set-up \"{setUp.Name}\" has lamp \"{setUp.Lamp}\", which is not in the catalogue.");
            if (setUp.Ballasts.Count == 0)
                problems.Add($"{path}.Ballasts", $"Set-up \"{setUp.Name}\" has no ballast position; say at least how many lamps it has.");
            foreach (var (number, position) in setUp.Ballasts.Index())
                if (position.Ballast is { } id && !ballasts.Contains(id))
                    problems.Add($"{path}.Ballasts[{number}].Ballast", $"Set-up \"{setUp.Name}\" has ballast \"{id}\", which is not in the catalogue.");
        }
        Values("SetUps", catalogue.SetUps, problems);
        Values("Ballasts", catalogue.Ballasts, problems);
        Values("Lamps", catalogue.Lamps, problems);
        Values("Tubes", catalogue.Tubes, problems);
        Values("Luminaires", catalogue.Luminaires, problems);
    }

    /// <summary>What is wrong with the values of one entry, whatever else the catalogue holds.</summary>
    public static void Values(CatalogueEntry entry, string path, Problems problems)
    {
        switch (entry)
        {
            case SetUp setUp: CheckSetUp(setUp, path, problems); break;
            case Ballast ballast: CheckBallast(ballast, path, problems); break;
            case Lamp lamp: CheckLamp(lamp, path, problems); break;
            case Replacement product: CheckReplacement(product, path, problems); break;
        }
    }

    private static void Values(string kind, IReadOnlyList<CatalogueEntry> entries, Problems problems)
    {
        foreach (var (index, entry) in entries.Index()) Values(entry, $"Catalogue.{kind}[{index}]", problems);
    }

    private static void CheckBallast(Ballast ballast, string path, Problems problems)
    {
        problems.InRange($"{path}.BallastFactor", $"Ballast factor of \"{ballast.Name}\"", ballast.BallastFactor, 0.4, 1.4);
        problems.InRange($"{path}.LuminousEfficiency", $"Ballast efficiency of \"{ballast.Name}\"", ballast.LuminousEfficiency, 0.3, 1);
        problems.NotNegative($"{path}.LampsOutPower", $"Dark power of \"{ballast.Name}\"", ballast.LampsOutPower?.Watts);
        problems.Life($"{path}.RatedLife", $"Rated life of \"{ballast.Name}\"", ballast.RatedLife);
        problems.InRange($"{path}.RatedCaseTemperature", $"Rated case temperature of \"{ballast.Name}\" (°C)", ballast.RatedCaseTemperature, 20, 150);
        problems.NotNegative($"{path}.Price", $"Price of \"{ballast.Name}\"", ballast.Price?.Units);
    }

    private static void CheckLamp(Lamp lamp, string path, Problems problems)
    {
        problems.Positive($"{path}.ArcPower", $"Arc power of \"{lamp.Name}\" (watts)", lamp.ArcPower?.Watts);
        problems.InRange($"{path}.MeanOverInitial", $"Mean over initial light of \"{lamp.Name}\"", lamp.MeanOverInitial, 0.3, 1);
        problems.NotNegative($"{path}.Price", $"Price of \"{lamp.Name}\"", lamp.Price?.Units);
        foreach (var (number, life) in lamp.Lives.Index())
            problems.Life($"{path}.Lives[{number}].Life", $"Rated life of \"{lamp.Name}\"", life.Life);
    }

    private static void CheckUnique(CatalogueExtract catalogue, Problems problems)
    {
        problems.Unique("Catalogue.SetUps", "Set-up", catalogue.SetUps.Select(entry => entry.Id));
        problems.Unique("Catalogue.Lamps", "Lamp", catalogue.Lamps.Select(entry => entry.Id));
        problems.Unique("Catalogue.Ballasts", "Ballast", catalogue.Ballasts.Select(entry => entry.Id));
        problems.Unique("Catalogue.Tubes", "Tube", catalogue.Tubes.Select(entry => entry.Id));
        problems.Unique("Catalogue.Luminaires", "Luminaire", catalogue.Luminaires.Select(entry => entry.Id));
    }

    private static void CheckSetUp(SetUp setUp, string path, Problems problems)
    {
        foreach (var (number, position) in setUp.Ballasts.Index())
            problems.InRange($"{path}.Ballasts[{number}].LampsDriven", $"Lamps on a ballast of \"{setUp.Name}\"", position.LampsDriven, 1, 100);
        problems.Positive($"{path}.TestedPower", $"Tested power of \"{setUp.Name}\" (watts)", setUp.TestedPower?.Watts);
        problems.Positive($"{path}.NameplatePower", $"Nameplate power of \"{setUp.Name}\" (watts)", setUp.NameplatePower?.Watts);
        foreach (var (number, step) in setUp.Steps.Index())
        {
            problems.NotNegative($"{path}.Steps[{number}].TestedPower", $"Tested power of step \"{step.Name}\" (watts)", step.TestedPower?.Watts);
            if (step.BallastIndexes.Count == 0 || step.BallastIndexes.Distinct().Count() < step.BallastIndexes.Count
                || step.BallastIndexes.Any(index => index < 0 || index >= setUp.Ballasts.Count))
                problems.Add($"{path}.Steps[{number}].BallastIndexes", $"Step \"{step.Name}\" of \"{setUp.Name}\" names ballasts {string.Join(", ", step.BallastIndexes)}; each must be different and 0 to {setUp.Ballasts.Count - 1}.");
        }
    }

    private static void CheckReplacement(Replacement product, string path, Problems problems)
    {
        problems.Positive($"{path}.LinePower", $"Line power of \"{product.Name}\" (watts)", product.LinePower.Watts);
        problems.Life($"{path}.RatedLife", $"Rated life of \"{product.Name}\"", product.RatedLife);
        problems.NotNegative($"{path}.Price", $"Price of \"{product.Name}\"", product.Price?.Units);
        if (product.Voltage is { } range && range.Lowest > range.Highest)
            problems.Add($"{path}.Voltage", $"\"{product.Name}\" takes {Problems.Text(range.Lowest)} to {Problems.Text(range.Highest)} V; the first must be the lower.");
    }
}
