using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>Figures at equal light in words: which growing areas they leave out.</summary>
public static class EqualLightWords
{
    /// <summary>A figure with the areas it leaves out; "not known" where it leaves out all that change.</summary>
    /// <param name="equal">The option at equal light.</param>
    /// <param name="figure">The figure in words.</param>
    public static string Figure(EqualLight equal, Func<EqualLight, string> figure) => equal.Known ? figure(equal) + Left(equal, ", ", "") : QuantityText.NotKnown;

    /// <summary>Between commas within a sentence; empty where nothing is left out.</summary>
    /// <param name="equal">The option at equal light.</param>
    public static string Without(EqualLight equal) => Left(equal, ", ", ",");

    private static string Left(EqualLight equal, string before, string after) =>
        equal.Without.Count == 0 ? "" : $"{before}without {string.Join(", ", equal.Without)}{after}";
}
