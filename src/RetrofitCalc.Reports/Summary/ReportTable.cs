namespace RetrofitCalc.Reports;

/// <summary>A finished table: every cell is text.</summary>
/// <param name="Caption">What it shows.</param>
/// <param name="Columns">Its columns; the first holds row heads.</param>
/// <param name="Rows">Its rows.</param>
public sealed record ReportTable(string Caption, IReadOnlyList<ReportColumn> Columns, IReadOnlyList<ReportRow> Rows);

/// <param name="Head">Head, unit included.</param>
/// <param name="Weight">Share of the width, relative to the other columns.</param>
/// <param name="Numeric">Set right-aligned.</param>
/// <param name="Chosen">Marked as the option asked for.</param>
public sealed record ReportColumn(string Head, double Weight = 1, bool Numeric = false, bool Chosen = false);

/// <param name="Cells">One text for each column.</param>
/// <param name="Strong">A total or a heading within the table.</param>
/// <param name="Greyed">Does not apply here; the reason is in the row.</param>
public sealed record ReportRow(IReadOnlyList<string> Cells, bool Strong = false, bool Greyed = false);

/// <summary>One of the few large figures.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Value">The likely value.</param>
/// <param name="Note">Its range.</param>
public sealed record KeyFigure(string Label, string Value, string Note);

/// <summary>A titled run of sentences and tables.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Sentences">What is said first.</param>
/// <param name="Tables">Tables below.</param>
public sealed record ReportSection(string Title, IReadOnlyList<string> Sentences, IReadOnlyList<ReportTable> Tables);
