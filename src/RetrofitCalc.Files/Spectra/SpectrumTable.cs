namespace RetrofitCalc.Files.Spectra;

/// <summary>A table of numbers over wavelength, before anyone says what its columns mean.</summary>
/// <param name="Headings">Heading of each column; "Column 1" and so on where the file has none.</param>
/// <param name="Rows">Its numbers.</param>
/// <param name="Notes">What a careful person wants to know of how it was read.</param>
public sealed record SpectrumTable(IReadOnlyList<string> Headings, IReadOnlyList<SpectrumRow> Rows, IReadOnlyList<string> Notes);

/// <summary>One row.</summary>
/// <param name="Line">Its line in the file, from 1.</param>
/// <param name="Cells">Its numbers; null where a cell is blank.</param>
public sealed record SpectrumRow(int Line, IReadOnlyList<double?> Cells);
