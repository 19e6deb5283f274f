using System.Globalization;
using System.Text;

namespace RetrofitCalc.Cli;

/// <summary>Lines up columns: the first to the left, figures to the right.</summary>
internal sealed class TextTable
{
    private readonly List<string[]> _rows = [];

    public void Add(string name, IEnumerable<string> figures) => _rows.Add([name, .. figures]);

    public void AddRule() => _rows.Add([]);

    public override string ToString()
    {
        var columns = _rows.Max(r => r.Length);
        var widths = Enumerable.Range(0, columns).Select(c => _rows.Where(r => r.Length > c).Max(r => Width(r[c]))).ToArray();
        var text = new StringBuilder();
        foreach (var row in _rows)
            text.AppendLine(row.Length == 0 ? new string('-', widths.Sum() + 2 * (columns - 1)) : Line(row, widths));
        return text.ToString();
    }

    private static string Line(string[] row, int[] widths) =>
        string.Join("  ", row.Select((cell, c) => c == 0 ? cell + Space(widths[c], cell) : Space(widths[c], cell) + cell)).TrimEnd();

    private static string Space(int width, string cell) => new(' ', Math.Max(0, width - Width(cell)));

    private static int Width(string text) => new StringInfo(text).LengthInTextElements;
}
