using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Files.Photometry;

/// <summary>The numbers of a file made into a distribution.</summary>
internal static class Lm63Body
{
    public static Parsed<PhotometricFile> Of(string[] lines, Lm63Head head, List<string> notes)
    {
        var numbers = new Lm63Numbers(lines, head.NumbersFrom);
        var tilt = head.TiltIncluded ? TiltOf(numbers) : null;
        var sheet = Lm63Sheet.Of(numbers, notes);
        if (numbers.Problem is { } early) return Parsed.Bad<PhotometricFile>(early);
        if (TooMany(sheet) is { } message) return Parsed.Bad<PhotometricFile>(new FileProblem(numbers.Line, null, "", message));
        var type = sheet.Type switch { 1 => PhotometricType.C, 2 => PhotometricType.B, _ => PhotometricType.A };
        var vertical = Lm63Angles.Of(numbers, (sheet.Verticals, "vertical"), type, notes);
        var horizontal = Lm63Angles.Of(numbers, (sheet.Horizontals, "horizontal"), type, notes);
        var factor = Lm63Remarks.Factor(head.Edition, sheet, notes);
        var planes = PlanesOf(numbers, sheet, factor);
        if (numbers.Problem is { } late) return Parsed.Bad<PhotometricFile>(late);
        Lm63Angles.NoteEnds(type, vertical, horizontal, notes);
        Lm63Remarks.Of(head, sheet, numbers, notes);
        double[][] sorted = [.. horizontal.Places.Select(plane => vertical.Places.Select(at => planes[plane][at]).ToArray())];
        return Parsed.Good(new PhotometricFile(head.Edition, Distribution(type, vertical, horizontal, sorted, sheet))
        {
            Labels = head.Labels, Tilt = tilt, Factors = new(sheet.Multiplier, sheet.BallastFactor, sheet.Second),
        });
    }

    private static string? TooMany(Lm63Sheet sheet) =>
        (long)sheet.Verticals * sheet.Horizontals > PhotometricLimits.Intensities ? $"The file announces more than {PhotometricLimits.Intensities} intensities."
        : sheet.Type != 1 && sheet.Horizontals < 2 ? "Types A and B need two horizontal angles at least."
        : null;

    private static LampTilt TiltOf(Lm63Numbers numbers)
    {
        var geometry = numbers.Whole("The lamp geometry of the tilt", 1, 3);
        var pairs = numbers.Whole("The number of tilt angles", 1, PhotometricLimits.Angles);
        return new(geometry, Values(numbers.Many(pairs, "tilt angle")), Values(numbers.Many(pairs, "tilt multiplier")));
    }

    private static double[] Values(PlacedNumber[] numbers) => [.. numbers.Select(number => number.Value)];

    private static double[][] PlanesOf(Lm63Numbers numbers, Lm63Sheet sheet, double factor)
    {
        var planes = new double[sheet.Horizontals][];
        for (var plane = 0; plane < planes.Length && numbers.Problem is null; plane++)
        {
            var found = numbers.Many(sheet.Verticals, $"plane {plane + 1} of {planes.Length}, intensity");
            foreach (var intensity in found)
                if (intensity.Value < 0) numbers.Reject(intensity, FormattableString.Invariant($"The intensity {intensity.Value} is below zero."));
            planes[plane] = [.. found.Select(intensity => intensity.Value * factor)];
        }
        return planes;
    }

    private static LuminousIntensityDistribution Distribution(PhotometricType type, Lm63Angles vertical, Lm63Angles horizontal, double[][] candelas, Lm63Sheet sheet)
    {
        var metres = sheet.Units == 1 ? UnitConversions.MetresPerFoot : 1;
        return new(type, vertical.Degrees, horizontal.Degrees, candelas)
        {
            Opening = new(sheet.Opening.Width * metres, sheet.Opening.Length * metres, sheet.Opening.Height * metres),
            InputPower = sheet.Watts > 0 ? Power.FromWatts(sheet.Watts) : null,
            LampCount = sheet.Lamps,
            LampFlux = sheet.LumensPerLamp < 0 ? null : LuminousFlux.FromLumens(sheet.LumensPerLamp),
        };
    }
}
