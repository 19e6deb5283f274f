using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Light for the eye that the lines of an area send to the plane people work on.</summary>
/// <param name="Context">The study's context.</param>
/// <param name="Light">The area's light.</param>
/// <param name="Room">The room; null where its size is not known, and then all light counts alike.</param>
internal sealed record AreaLumens(StudyContext Context, AreaLight Light, RoomUtilisation? Room)
{
    /// <summary>What has to be known of the lamps of lines; null when all is.</summary>
    public string? Missing(IEnumerable<FittedLine> lines) => lines.Select(Missing).FirstOrDefault(missing => missing is not null);

    /// <summary>Where the lamp's lumens are known, what is missing lies in the ballast.</summary>
    private string? Missing(FittedLine line) => FittedOutput.Of(line, null, Context) switch
    {
        { Lumens: not null } => null,
        { Missing: { } missing } when line.Fitting is BallastedFitting { Lamp.InitialFlux: not null } => missing,
        _ => $"the lumens of {Name(line.Fitting)}",
    };

    /// <summary>Lumens of a line that reach the plane. [lm]</summary>
    /// <param name="now">The line as surveyed: luminaires placed over the area are counted by it.</param>
    /// <param name="line">The line in the state asked about.</param>
    /// <param name="step">Lit step; null for all lamps.</param>
    /// <param name="read">Readings whose day counts; null for lamps worn as when they are due.</param>
    public double Reaching(FittedLine now, FittedLine line, string? step, ReadLight? read)
    {
        var each = FittedOutput.Of(line, step, Context).Lumens!.Value.Lumens;
        var left = (read is { } on ? LampWear.On(Context, line, on.Day) : LampWear.WhenDue(Context, line)).Factor;
        return each * Luminaires(now, line) * left * (Room?.Share(Emission(line.Fitting)) ?? 1);
    }

    /// <summary>Where luminaires are placed, those over one bench; else all of the line.</summary>
    private double Luminaires(FittedLine now, FittedLine line) =>
        Light.Layout.Count == 0 ? line.Luminaires : Light.Layout.Count(place => place.Line == now.Line.Id) * line.Luminaires / now.Luminaires;

    private TubeEmission Emission(Fitting fitting) =>
        Context.Study.Products.FirstOrDefault(light => light.Product == Product(fitting).Id)?.Emission
        ?? (fitting is BallastedFitting ? TubeEmission.BareTube : TubeEmission.DownFacingStrip);

    private static Catalogue.CatalogueEntry Product(Fitting fitting) => fitting switch
    {
        BallastedFitting lamps => lamps.Lamp,
        TubeFitting tubes => tubes.Tube,
        LuminaireFitting luminaire => luminaire.Luminaire,
        _ => throw new ArgumentOutOfRangeException(nameof(fitting), fitting.GetType().Name, "Unknown kind of fitting."),
    };

    private static string Name(Fitting fitting) => fitting is BallastedFitting lamps ? lamps.SetUp.Name : Product(fitting).Name;
}
