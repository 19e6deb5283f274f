using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

internal static class LineCheck
{
    public static void Run(Study study, Problems problems)
    {
        problems.Unique("Lines", "Survey line", study.Lines.Select(line => line.Id));
        var areas = study.Areas.Select(area => area.Id).ToHashSet();
        var lampCounts = study.Catalogue.SetUps.DistinctBy(setUp => setUp.Id).ToDictionary(setUp => setUp.Id, setUp => (setUp.LampCount, Ballasts: setUp.Ballasts.Count));
        foreach (var (index, line) in study.Lines.Index())
        {
            var path = $"Lines[{index}]";
            if (!areas.Contains(line.Area))
                problems.Add($"{path}.Area", $"{NameOf(line)} is in area \"{line.Area}\", which the study does not have.");
            if (line.SetUp is { } setUp && !lampCounts.ContainsKey(setUp))
                problems.Add($"{path}.SetUp", $"{NameOf(line)} has set-up \"{setUp}\", which is not in the catalogue.");
            CheckCounts(line, line.SetUp is { } id && lampCounts.TryGetValue(id, out var counts) ? counts : null, path, problems);
            problems.InRange($"{path}.SupplyVolts", "Supply voltage", line.SupplyVolts, 1, 1000);
            problems.InRange($"{path}.BallastYear", "Year of the ballast", line.BallastYear, 1930, 2100);
            problems.InRange($"{path}.Reading.Power", "Power read at the luminaire (watts)", line.Reading?.Power.Watts, 0.1, 10_000);
            problems.InRange($"{path}.Reading.Amperes", "Current read at the luminaire (amperes)", line.Reading?.Amperes, 0.001, 200);
        }
    }

    private static void CheckCounts(SurveyLine line, (int Lamps, int Ballasts)? setUp, string path, Problems problems)
    {
        problems.InRange($"{path}.Count", $"Number of luminaires of {NameOf(line)}", line.Count, 0, 1_000_000);
        problems.NotNegative($"{path}.LampsOut", $"Lamps out of {NameOf(line)}", line.LampsOut);
        problems.NotNegative($"{path}.DeadBallasts", $"Dead ballasts of {NameOf(line)}", line.DeadBallasts);
        if (setUp is not { } one || line.Count is not { } count || count < 0)
            return;
        if (line.LampsOut > (long)count * one.Lamps)
            problems.Add($"{path}.LampsOut", $"{line.LampsOut} lamps are out in {NameOf(line)}, but {count} luminaires hold {(long)count * one.Lamps} lamps.");
        if (line.DeadBallasts > (long)count * one.Ballasts)
            problems.Add($"{path}.DeadBallasts", $"{line.DeadBallasts} ballasts are dead in {NameOf(line)}, but {count} luminaires hold {(long)count * one.Ballasts}.");
    }

    internal static string NameOf(SurveyLine line) => line.Name.Length > 0 ? $"\"{line.Name}\"" : $"line {line.Id}";
}
