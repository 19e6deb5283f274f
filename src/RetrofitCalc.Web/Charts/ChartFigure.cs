namespace RetrofitCalc.Web.Charts;

/// <summary>A drawing with all that makes it readable without it.</summary>
/// <param name="Finding">Title: what the drawing shows, as a sentence with its number.</param>
/// <param name="Drawn">What is drawn, in which unit, over which time.</param>
/// <param name="Spoken">One sentence for those who cannot see it.</param>
public sealed record ChartFigure(string Finding, string Drawn, string Spoken, ChartSpec Spec, ChartTable Twin)
{
    public IReadOnlyList<ChartKey> Legend { get; init; } = [];
}

/// <summary>One entry of a legend.</summary>
public sealed record ChartKey(Ink Ink, string Name);

/// <summary>The same figures as a table; all formatted.</summary>
/// <param name="Head">Heads of the columns, the rows' head first.</param>
/// <param name="Rows">As many cells as heads, the row's head first.</param>
public sealed record ChartTable(IReadOnlyList<string> Head, IReadOnlyList<IReadOnlyList<string>> Rows);
