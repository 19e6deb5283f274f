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
internal readonly record struct FittingKind(StepKind Steps, bool Dims);
