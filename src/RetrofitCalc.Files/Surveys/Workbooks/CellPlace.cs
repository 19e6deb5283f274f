namespace RetrofitCalc.Files.Surveys.Workbooks;

/// <summary>Names of cells: B3 is the second column of the third row.</summary>
internal static class CellPlace
{
    private const int Letters = 26;
    private const int LastColumn = 16_384;

    /// <summary>Column from 0; null when the name cannot be read.</summary>
    public static int? ColumnOf(string? name)
    {
        var column = 0;
        foreach (var letter in name ?? "")
        {
            if (!char.IsAsciiLetter(letter) || column > LastColumn) break;
            column = column * Letters + (char.ToUpperInvariant(letter) - 'A' + 1);
        }
        return column is > 0 and <= LastColumn ? column - 1 : null;
    }

    public static string Name(int column, int row)
    {
        var letters = "";
        for (var rest = column + 1; rest > 0; rest = (rest - 1) / Letters) letters = (char)('A' + (rest - 1) % Letters) + letters;
        return $"{letters}{row}";
    }
}
