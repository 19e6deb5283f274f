using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>A line over the bench, now and after.</summary>
/// <param name="Now">As it is.</param>
/// <param name="After">As it will be.</param>
/// <param name="Measure">What is done; null for nothing.</param>
internal sealed record BenchLine(FittedLine Now, FittedLine After, LineMeasure? Measure)
{
    /// <summary>Whether something new is fitted.</summary>
    public bool Changed => After.Fitting is not BallastedFitting { Renewed: false };

    /// <summary>Whether its light is touched: something new is fitted, or it hangs in another way.</summary>
    public bool IsTouched => Changed || Moved;

    /// <summary>Whether the old body goes.</summary>
    public bool NewBody => After.Fitting is LuminaireFitting;

    /// <summary>What gives light now.</summary>
    public CatalogueEntry OldProduct => ProductOf(Now.Fitting);

    /// <summary>What gives light after.</summary>
    public CatalogueEntry NewProduct => ProductOf(After.Fitting);

    /// <summary>Whether something else gives light than now.</summary>
    public bool OtherProduct => Changed && NewProduct.Id != OldProduct.Id;

    /// <summary>Whether another line has the same set-up at the same height as far as known, and the same is done to it: its light changes alike.</summary>
    /// <param name="other">The other line.</param>
    public bool IsLike(BenchLine other) =>
        Now.Line.SetUp == other.Now.Line.SetUp
        && (Now.Line.MountingHeight is not { } height || (other.Now.Line.MountingHeight ?? height) == height)
        && Measure?.Height == other.Measure?.Height && Measure?.RowSpread == other.Measure?.RowSpread
        && (After.Fitting, other.After.Fitting) switch
        {
            (BallastedFitting lamps, BallastedFitting others) => lamps.Renewed == others.Renewed,
            var (fitting, another) => fitting == another,
        }
        && Math.Abs((After.Luminaires * other.Now.Luminaires) - (other.After.Luminaires * Now.Luminaires)) <= 1e-9 * After.Luminaires * other.Now.Luminaires;

    /// <summary>Height of its lamps over the crop after.</summary>
    /// <param name="read">The readings, whose height stands for one nobody has surveyed.</param>
    public Length HeightAfter(MeasuredLight read) => Measure?.Height ?? PresentBench.HeightOf(Now, read);

    /// <summary>How it hangs after.</summary>
    /// <param name="read">The readings.</param>
    public Hanging HangingAfter(MeasuredLight read) => new(HeightAfter(read), Measure?.RowSpread ?? 1);

    /// <summary>Whether it hangs in another way than now.</summary>
    public bool Moved => Measure is { Height: not null } or { RowSpread: not null };

    /// <summary>Factor of a stage's dimming on its light.</summary>
    /// <param name="bench">Knows its set-up.</param>
    /// <param name="fitting">What is fitted.</param>
    /// <param name="dimming">Level of the stage. [unitless]</param>
    public static double Level(PresentBench bench, FittedLine fitting, double dimming) => fitting.Fitting switch
    {
        TubeFitting tubes => tubes.Tube.Dims == true,
        LuminaireFitting luminaire => luminaire.Luminaire.Dims == true,
        _ => fitting.Line.SetUp is { } id && bench.Context.SetUps.TryGetValue(id, out var model) && model.Dims,
    } ? dimming : 1;

    /// <summary>What gives light in a fitting.</summary>
    /// <param name="fitting">The fitting.</param>
    public static CatalogueEntry ProductOf(Fitting fitting) => fitting switch
    {
        BallastedFitting lamps => lamps.Lamp,
        TubeFitting tubes => tubes.Tube,
        LuminaireFitting luminaire => luminaire.Luminaire,
        _ => throw new ArgumentOutOfRangeException(nameof(fitting), fitting.GetType().Name, "Unknown kind of fitting."),
    };
}
