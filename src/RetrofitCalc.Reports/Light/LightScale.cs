namespace RetrofitCalc.Reports;

/// <summary>The tints of two maps side by side: the same light has the same tint on both.</summary>
/// <param name="Steps">Even round steps from the lowest to the highest light.</param>
/// <param name="Target">Least light wanted, drawn as a double line. [µmol m⁻² s⁻¹]; null without one.</param>
public sealed record LightScale(EvenSteps Steps, double? Target)
{
    private const int Tints = 7;
    private const int DarkTints = 2;

    /// <summary>Tint of a step, 1 the darkest to 7 the brightest; few steps are spread over all of them.</summary>
    public int Tint(int step) => Steps.Count == 1 ? Tints - 1 : 1 + (int)Math.Round(step * (Tints - 1.0) / (Steps.Count - 1));

    public int TintOf(double light) => Tint(Steps.IndexOf(light));

    public static bool IsDark(int tint) => tint <= DarkTints;
}
