using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Light.Spectra;

namespace RetrofitCalc.Web.Features.Light.Layout;

/// <summary>A bench seen from above with its luminaires and readings, in the units of a drawing.</summary>
public sealed record BenchPlan
{
    private const double Border = 26, LampMetres = 1.2192, TubeMetres = 0.038, LeastHeight = 120;

    public double Width { get; private init; }

    public double Height { get; private init; }

    public required PlanBox Bench { get; init; }

    /// <summary>Lamps, each a bar turned about its middle.</summary>
    public required IReadOnlyList<PlanLamp> Lamps { get; init; }

    /// <summary>Where light was read.</summary>
    public required IReadOnlyList<(double X, double Y)> Readings { get; init; }

    /// <summary>A drawing so wide; null without a bench.</summary>
    public static BenchPlan? Of(Study study, AreaLight light, double width)
    {
        if (light is not { BenchLength.Metres: > 0 and var length, BenchWidth.Metres: > 0 and var across }) return null;
        var lamps = light.Layout.SelectMany((place, i) => LampsOf(study, place, i)).ToList();
        var halfLength = Math.Max(length / 2, lamps.Select(lamp => Math.Abs(lamp.X) + Reach(lamp, Math.Cos)).DefaultIfEmpty(0).Max());
        var halfWidth = Math.Max(across / 2, lamps.Select(lamp => Math.Abs(lamp.Y) + Reach(lamp, Math.Sin)).DefaultIfEmpty(0).Max());
        var scale = Math.Min((width - 2 * Border) / (2 * halfLength), (width - 2 * Border) / (2 * halfWidth));
        var height = Math.Max(LeastHeight, 2 * halfWidth * scale + 2 * Border);
        double X(double metres) => width / 2 + metres * scale;
        double Y(double metres) => height / 2 - metres * scale;
        return new()
        {
            Width = width,
            Height = height,
            Bench = new(X(-length / 2), Y(across / 2), length * scale, across * scale),
            Lamps = [.. lamps.Select(lamp => lamp with { X = X(lamp.X), Y = Y(lamp.Y), Length = lamp.Length * scale, Thickness = Math.Max(3, TubeMetres * scale) })],
            Readings = [.. light.Readings.SelectMany(Points).Distinct().Where(point => Math.Abs(point.X) <= halfLength && Math.Abs(point.Y) <= halfWidth).Select(point => (X(point.X), Y(point.Y)))],
        };
    }

    /// <summary>The lamps of a luminaire side by side about its middle, in metres.</summary>
    private static IEnumerable<PlanLamp> LampsOf(Study study, LuminairePlace place, int index)
    {
        var line = study.Lines.FirstOrDefault(line => line.Id == place.Line);
        var setUp = line is null ? null : study.Catalogue.SetUps.FirstOrDefault(found => found.Id == line.SetUp);
        var lamp = line is null ? null : UsedProduct.LampOf(study, line);
        var count = Math.Clamp(setUp?.LampCount ?? 1, 1, 12);
        var (sine, cosine) = Math.SinCos(place.AxisDegrees * Math.PI / 180);
        for (var i = 0; i < count; i++)
        {
            var aside = (i - (count - 1) / 2.0) * place.LampSpacing.Metres;
            yield return new(place.Centre.X - sine * aside, place.Centre.Y + cosine * aside, lamp?.Length.Metres ?? LampMetres, place.AxisDegrees, index);
        }
    }

    private static double Reach(PlanLamp lamp, Func<double, double> part) => lamp.Length / 2 * Math.Abs(part(lamp.AxisDegrees * Math.PI / 180));

    private static IEnumerable<(double X, double Y)> Points(ReadingSet set) => set.Pattern == ReadingPattern.Outwards
        ? from direction in set.Rows from radius in set.Columns select (radius * Math.Cos(direction * Math.PI / 180), radius * Math.Sin(direction * Math.PI / 180))
        : from y in set.Rows from x in set.Columns select (x, y);
}

/// <summary>A rectangle of a drawing.</summary>
public readonly record struct PlanBox(double X, double Y, double Width, double Height);

/// <summary>A lamp of a drawing.</summary>
/// <param name="Place">Which luminaire of the layout it belongs to.</param>
public sealed record PlanLamp(double X, double Y, double Length, double AxisDegrees, int Place)
{
    public double Thickness { get; init; }
}
