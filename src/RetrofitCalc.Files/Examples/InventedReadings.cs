using NodaTime;
using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Examples;

/// <summary>Made-up readings of light over the example's benches, the same on every machine.</summary>
/// <remarks>
/// Each luminaire of the layout is taken to send 0.70 of what its lamps give downwards as a strip and 0.10 all round as a bare tube; shelf
/// and sides add evenly what 0.05 of it is over the bench. The lamps give their rated photons times the ballast factor, less what wear,
/// dirt halfway between two cleanings and air at the lamps take by the day of reading. A meter reads that within 3 % either way, as the random numbers of
/// <see cref="InventedNumbers"/> say. One reading was taken in the shade of a hand. All of it is invented.
/// </remarks>
internal sealed class InventedReadings
{
    private const ulong QuillmereSeed = 20_261_005;
    private const double DownShare = 0.70;
    private const double RoundShare = 0.10;
    private const double ReflectedShare = 0.05;
    private const double MeterSpread = 0.03;
    private static readonly LocalDate Day = new(2026, 10, 5);

    private readonly StudyContext _context;
    private readonly InventedNumbers _numbers = new(QuillmereSeed);

    private InventedReadings(StudyContext context) => _context = context;

    /// <summary>The example with its readings: by the quarter, at the middles of cells at two heights, and at crossings in lux.</summary>
    public static Study Quillmere(Study study)
    {
        var readings = new InventedReadings(new StudyContext(study));
        return study with { Areas = [.. study.Areas.Select(area => ReadingPlan.Of(area) is { Count: > 0 } plan ? readings.Read(area, plan) : area)] };
    }

    private Area Read(Area area, IReadOnlyList<ReadingSet> plan) =>
        area with { Light = area.Light! with { Readings = [.. plan.Select(set => Read(area.Light!, set))] } };

    private ReadingSet Read(AreaLight light, ReadingSet set)
    {
        var tubes = Tubes(light, set.Height).ToList();
        double lit = tubes.Sum(tube => tube.Output.MicromolesPerSecond) / (DownShare + RoundShare);
        var reflected = PhotonFluxDensity.FromMicromolesPerSquareMetre(ReflectedShare * lit / (light.BenchLength!.Value.Metres * light.BenchWidth!.Value.Metres));
        return set with
        {
            Date = Day, RoomDark = true, SensorLevel = true,
            Note = $"Invented readings, generated from seed {QuillmereSeed}.",
            Values = [.. set.Rows.Select((row, r) => (IReadOnlyList<double?>)[.. set.Columns.Select((column, c) =>
                ReadingPlan.IsBlank(set, r, c) ? null : OnMeter(set, (LightField.At(tubes, new PlanePoint(column, row)) + reflected) * ReadingPlan.Shade(set, r, c)))])],
        };
    }

    private double? OnMeter(ReadingSet set, PhotonFluxDensity light)
    {
        var read = light.MicromolesPerSquareMetre * (1 + MeterSpread * (2 * _numbers.Even() - 1));
        return set.Unit == LightUnit.Micromoles ? Math.Round(read, 1) : Math.Round(read * set.Conversion!.LuxPerMicromole / 10) * 10;
    }

    private IEnumerable<PlacedTube> Tubes(AreaLight light, Length height)
    {
        foreach (var place in light.Layout)
        {
            var line = _context.Lines.First(counted => counted.Fitted.Line.Id == place.Line).Fitted;
            var output = FittedOutput.Of(line);
            var each = output.PerLamp!.Value * LightLoss.Of(line, Burned(line), light.CleaningMonths / 24.0).Factor;
            for (var lamp = 0; lamp < output.Lamps; lamp++)
            {
                var (sine, cosine) = Math.SinCos(place.AxisDegrees * Math.PI / 180);
                var aside = (lamp - (output.Lamps - 1) / 2) * place.LampSpacing.Metres;
                PlacedTube Tube(TubeEmission emission, double share) => new(emission, LengthOf(line), each * share, height)
                {
                    Centre = new(place.Centre.X - sine * aside, place.Centre.Y + cosine * aside), AxisDegrees = place.AxisDegrees,
                };
                yield return Tube(TubeEmission.DownFacingStrip, DownShare);
                yield return Tube(TubeEmission.BareTube, RoundShare);
            }
        }
    }

    private OperatingTime Burned(FittedLine line) =>
        OperatingTime.FromHours(_context.Operations[line.Area.Id].Hours.Hours * Period.DaysBetween(line.Line.LampsInstalled!.Value, Day) / 365.25);

    private static Length LengthOf(FittedLine line) => ((BallastedFitting)line.Fitting).Lamp.Length;
}
