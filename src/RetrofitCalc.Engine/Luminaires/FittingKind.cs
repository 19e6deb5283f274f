namespace RetrofitCalc.Engine.Luminaires;

/// <summary>What a lit step means for what is fitted.</summary>
internal enum StepKind
{
    /// <summary>Ballasts are energised or not.</summary>
    Ballasts,
    /// <summary>The same share of tubes as of lamps.</summary>
    Lamps,
    /// <summary>There are no steps.</summary>
    None,
}

/// <summary>How what is fitted answers to steps and dimming.</summary>
/// <param name="Steps">What a lit step means.</param>
/// <param name="Dims">Whether it dims.</param>
internal readonly record struct FittingKind(StepKind Steps, bool Dims)
{
    /// <summary>How a fitting answers; tubes keep the switching of the lamps they replace, a new luminaire has no steps.</summary>
    public static FittingKind Of(Fitting fitting, SetUpModel model) => fitting switch
    {
        BallastedFitting => new(StepKind.Ballasts, model.Dims),
        TubeFitting tubes => new(StepKind.Lamps, tubes.Tube.Dims == true),
        LuminaireFitting luminaire => new(StepKind.None, luminaire.Luminaire.Dims == true),
        _ => throw new ArgumentOutOfRangeException(nameof(fitting), fitting.GetType().Name, "Unknown kind of fitting."),
    };
}
