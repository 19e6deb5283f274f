using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Whether a photometric file taken into the study is a table of intensities <see cref="LuminousIntensityDistribution"/> accepts.</summary>
internal static class DistributionCheck
{
    private const int MostValues = 1_000_000;

    public static void Run(StudyDistribution file, string path, Problems problems)
    {
        var ofPlanes = file.Type == PhotometricType.C;
        CheckAngles($"{path}.Vertical", ("Vertical angles", 2), file.Vertical, (ofPlanes ? (0, 180) : (-90, 90), problems));
        CheckAngles($"{path}.Horizontal", ("Horizontal angles", ofPlanes ? 1 : 2), file.Horizontal, (ofPlanes ? (0, 360) : (-90, 90), problems));
        problems.InRange($"{path}.Opening.WidthMetres", $"Width of the luminous part of \"{file.Name}\" (metres)", file.Opening.WidthMetres, -100, 100);
        problems.InRange($"{path}.Opening.LengthMetres", $"Length of the luminous part of \"{file.Name}\" (metres)", file.Opening.LengthMetres, -100, 100);
        problems.InRange($"{path}.Opening.HeightMetres", $"Height of the luminous part of \"{file.Name}\" (metres)", file.Opening.HeightMetres, -100, 100);
        problems.Positive($"{path}.InputPower", $"Power of \"{file.Name}\" (watts)", file.InputPower?.Watts);
        if ((long)file.Vertical.Count * file.Horizontal.Count > MostValues)
            problems.Add($"{path}.Candelas", $"\"{file.Name}\" has {(long)file.Vertical.Count * file.Horizontal.Count} intensities; it may have {MostValues}.");
        else
            CheckCandelas(file, $"{path}.Candelas", problems);
    }

    private static void CheckAngles(string path, (string What, int Fewest) rule, IReadOnlyList<double> angles, ((double Low, double High) Range, Problems Problems) at)
    {
        if (angles.Count < rule.Fewest)
            at.Problems.Add(path, $"{rule.What} are {angles.Count}; there must be {rule.Fewest} or more.");
        foreach (var (index, angle) in angles.Index())
            at.Problems.InRange($"{path}[{index}]", $"{rule.What}: one (degrees)", angle, at.Range.Low, at.Range.High);
        ReadingCheck.Rising(path, rule.What, angles, at.Problems);
    }

    private static void CheckCandelas(StudyDistribution file, string path, Problems problems)
    {
        if (file.Candelas.Count != file.Horizontal.Count)
            problems.Add(path, $"\"{file.Name}\" has {file.Candelas.Count} rows of intensities for {file.Horizontal.Count} horizontal angles; there must be one for each.");
        foreach (var (index, row) in file.Candelas.Index())
        {
            if (row.Count != file.Vertical.Count)
                problems.Add($"{path}[{index}]", $"Row {index + 1} of \"{file.Name}\" has {row.Count} intensities for {file.Vertical.Count} vertical angles.");
            foreach (var (number, candelas) in row.Index())
                problems.NotNegative($"{path}[{index}][{number}]", $"An intensity of \"{file.Name}\" (candelas)", candelas);
        }
    }
}
