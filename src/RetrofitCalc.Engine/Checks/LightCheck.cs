using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>What is said of the light of areas: benches, layouts, readings, light that strays, light for people.</summary>
internal static class LightCheck
{
    /// <summary>Daylight reaches about 2,000 µmol m⁻² s⁻¹: five times as much is a slip of the keyboard.</summary>
    public const double MostMicromoles = 10_000;

    /// <summary>Highest a luminaire hangs, in metres; a slip between units is higher.</summary>
    public const double HighestMetres = 30;

    /// <summary>How far from the edge of the bench a luminaire or reading still belongs to it, in metres.</summary>
    private const double BesideMetres = 2;

    private const double LongestMetres = 500;
    private const int MostPlaces = 2_000;

    public static void Run(Study study, Problems problems)
    {
        foreach (var (index, area) in study.Areas.Index())
        {
            foreach (var (number, season) in area.Seasons.Index())
                foreach (var (which, stage) in season.Stages.Index())
                    LightTargetCheck.Run(stage, $"Areas[{index}].Seasons[{number}].Stages[{which}].Target", problems);
            if (area.Light is { } light)
                CheckArea(study, area, light, ($"Areas[{index}].Light", problems));
        }
    }

    private static void CheckArea(Study study, Area area, AreaLight light, (string Path, Problems Problems) at)
    {
        var (path, problems) = at;
        problems.InRange($"{path}.BenchLength", $"Length of the bench of {area.Name} (metres)", light.BenchLength?.Metres, 0.05, LongestMetres);
        problems.InRange($"{path}.BenchWidth", $"Width of the bench of {area.Name} (metres)", light.BenchWidth?.Metres, 0.05, LongestMetres);
        problems.InRange($"{path}.AirAtLamps", "Air at the lamps (°C)", light.AirAtLamps, -30, 80);
        problems.InRange($"{path}.DirtLoss", "Light lost to dirt between two cleanings", light.DirtLoss, 0, 0.9);
        problems.InRange($"{path}.CleaningMonths", "Time between cleanings (months)", light.CleaningMonths, 1, 120);
        CheckSurroundings(light, $"{path}.Surroundings", problems);
        CheckLayout(study, area, light, at);
        ReadingCheck.Run(light, path, problems);
        CheckStray(study, area, light, at);
        CheckTask(area, light, path, problems);
        problems.InRange($"{path}.People.Illuminance", "Illuminance wanted for people (lx)", light.People?.Illuminance?.Lux, 1, 100_000);
        problems.InRange($"{path}.People.LampsAbovePlane", "Height of the lamps over the plane people work on (metres)", light.People?.LampsAbovePlane?.Metres, 0.05, HighestMetres);
    }

    private static void CheckTask(Area area, AreaLight light, string path, Problems problems)
    {
        if (light.People is not { } people) return;
        if (people.Task is { } task && TaskLights.Find(task) is null)
            problems.Add($"{path}.People.Task", $"\"{task}\" is not among the tasks with a recommended light. Choose one, or give the illuminance wanted.");
        else if (people is { Task: null, Illuminance: null })
            problems.Add($"{path}.People.Task", $"Say what people do in {area.Name}, or which illuminance is wanted there.");
    }

    /// <summary>A place that is not near the bench is one in another unit, or one of another bench.</summary>
    public static void CheckPlace(string path, string what, double place, (Length? Side, Problems Problems) at)
    {
        var farthest = at.Side is { } side ? side.Metres / 2 + BesideMetres : LongestMetres;
        if (!(Math.Abs(place) <= farthest))
            at.Problems.Add(path, $"{what} is {Problems.Text(place)} m from the middle of the bench; places are in metres and at most {Problems.Text(BesideMetres)} m beside the bench, here {Problems.Text(farthest)} m from its middle.");
    }

    private static void CheckSurroundings(AreaLight light, string path, Problems problems)
    {
        if (light.Surroundings is not { } around) return;
        problems.InRange($"{path}.Height", "Height from the bench to what is above the lamps (metres)", around.Height.Metres, 0.02, HighestMetres);
        problems.InRange($"{path}.Reflectance.Base", "Reflectance of the bench", around.Reflectance.Base, 0, 0.99);
        problems.InRange($"{path}.Reflectance.Sides", "Reflectance of the sides", around.Reflectance.Sides, 0, 0.99);
        problems.InRange($"{path}.Reflectance.Top", "Reflectance of what is above", around.Reflectance.Top, 0, 0.99);
    }

    private static void CheckLayout(Study study, Area area, AreaLight light, (string Path, Problems Problems) at)
    {
        var (path, problems) = ($"{at.Path}.Layout", at.Problems);
        if (light.Layout.Count > MostPlaces)
            problems.Add(path, $"The layout of {area.Name} hangs {light.Layout.Count} luminaires; describe one bench, with at most {MostPlaces}.");
        var areaOf = study.Lines.DistinctBy(line => line.Id).ToDictionary(line => line.Id, line => line.Area);
        foreach (var (index, place) in light.Layout.Take(MostPlaces).Index())
        {
            if (!areaOf.TryGetValue(place.Line, out var own))
                problems.Add($"{path}[{index}].Line", $"The layout of {area.Name} hangs a luminaire of line \"{place.Line}\", which the survey does not have.");
            else if (own != area.Id)
                problems.Add($"{path}[{index}].Line", $"The layout of {area.Name} hangs a luminaire of line \"{place.Line}\", which is in another area.");
            CheckHanging(light, place, $"{path}[{index}]", problems);
        }
        if (light.Layout.Count > 0 && light.Layout.Min(place => place.HigherBy) > 0)
            problems.Add($"{path}[0].HigherBy", $"Every luminaire over {area.Name} is said to hang higher than the lowest; the lowest itself is 0 m higher.");
    }

    private static void CheckHanging(AreaLight light, LuminairePlace place, string path, Problems problems)
    {
        CheckPlace($"{path}.Centre.X", "A luminaire", place.Centre.X, (light.BenchLength, problems));
        CheckPlace($"{path}.Centre.Y", "A luminaire", place.Centre.Y, (light.BenchWidth, problems));
        problems.InRange($"{path}.AxisDegrees", "Direction of the lamps (degrees)", place.AxisDegrees, -360, 360);
        problems.InRange($"{path}.LampSpacing", "Distance between lamps of a luminaire (metres)", place.LampSpacing.Metres, 0, 5);
        problems.InRange($"{path}.HigherBy", "How much higher than the lowest a luminaire hangs (metres)", place.HigherBy, 0, HighestMetres);
        problems.InRange($"{path}.TiltDegrees", "Aim of a luminaire (degrees)", place.TiltDegrees, -90, 90);
    }

    private static void CheckStray(Study study, Area area, AreaLight light, (string Path, Problems Problems) at)
    {
        foreach (var (index, stray) in light.Stray.Index())
        {
            var path = $"{at.Path}.Stray[{index}]";
            if (stray.Onto == area.Id)
                at.Problems.Add($"{path}.Onto", $"Light of {area.Name} is said to stray onto {area.Name} itself; name another area.");
            else if (study.Areas.All(other => other.Id != stray.Onto))
                at.Problems.Add($"{path}.Onto", $"Light of {area.Name} strays onto area \"{stray.Onto}\", which the study does not have.");
            else if (light.Stray.Take(index).Any(earlier => earlier.Onto == stray.Onto))
                at.Problems.Add($"{path}.Onto", $"Light that strays from {area.Name} onto \"{stray.Onto}\" is given twice; give the higher reading once.");
            at.Problems.InRange($"{path}.Light", "Light that strays (µmol m⁻² s⁻¹)", stray.Light.MicromolesPerSquareMetre, 0, MostMicromoles);
        }
    }
}
