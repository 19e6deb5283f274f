using System.Globalization;
using System.Text;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Light.Maps;

/// <summary>One map with every position decided: bands of tints, the target line, values at places. Rows run down the page as one stands before the bench.</summary>
public sealed class MapDrawing
{
    private const double Left = 34, Top = 10, Right = 8, Bottom = 24;
    private const double LabelWidth = 40, LabelHeight = 22;

    private readonly LightMap _map;
    private readonly MapFrame _frame;

    public MapDrawing(BenchMap bench, double width)
    {
        _frame = new(bench.Length, bench.Width, width - Left - Right);
        _map = bench.Map.IsFine() ? bench.Map.ToEdges(bench.Length, bench.Width) : bench.Map.Smooth();
        Width = width;
        Bands = [.. Enumerable.Range(1, bench.Scale.Steps.Count - 1).Select(step => new Band(bench.Scale.Tint(step), Outline(bench.Scale.Steps.Low + step * bench.Scale.Steps.Step)))];
        Ground = bench.Scale.Tint(0);
        Target = bench.Scale.Target is { } target ? Path(ContourLines.Of(_map.X, _map.Y, _map.Light, target), close: false) : "";
        Marks = [.. MarksOf(bench)];
    }

    /// <summary>All that has a light or more, in its tint.</summary>
    public sealed record Band(int Tint, string Path);

    /// <summary>A place with its value, or a dot where a value would not fit.</summary>
    public sealed record Mark(double X, double Y, string? Text, int Tint);

    public double Width { get; }

    public double Height => PlotTop + PlotHeight + Bottom;

    public static double PlotLeft => Left;

    public static double PlotTop => Top;

    public double PlotWidth => _frame.Across;

    public double PlotHeight => _frame.Down;

    /// <summary>Part of the bench that is known: readings in cell middles stop short of its edges.</summary>
    public (double X, double Y, double Width, double Height) Known =>
        (X(_map.X[0]), Y(_map.Y[0]), X(_map.X[^1]) - X(_map.X[0]), Y(_map.Y[^1]) - Y(_map.Y[0]));

    public int Ground { get; }

    public IReadOnlyList<Band> Bands { get; }

    public string Target { get; }

    public IReadOnlyList<Mark> Marks { get; }

    public double X(double metres) => Left + _frame.X(metres);

    public double Y(double metres) => Top + _frame.Y(metres);

    private string Outline(double level) => Path(ContourLines.AtOrAbove(_map.X, _map.Y, _map.Light, level), close: true);

    private string Path(IReadOnlyList<IReadOnlyList<PlanePoint>> lines, bool close)
    {
        var path = new StringBuilder();
        foreach (var line in lines)
        {
            for (var i = 0; i < line.Count; i++)
                path.Append(CultureInfo.InvariantCulture, $"{(i == 0 ? 'M' : 'L')}{X(line[i].X):0.#} {Y(line[i].Y):0.#}");
            if (close) path.Append('Z');
        }
        return path.ToString();
    }

    /// <summary>Values so far apart that they can be read; between them dots.</summary>
    private IEnumerable<Mark> MarksOf(BenchMap bench)
    {
        var (columns, rows) = (Spaced(bench.Points.X, LabelWidth / PlotWidth * bench.Length), Spaced(bench.Points.Y, LabelHeight / PlotHeight * bench.Width));
        foreach (var (row, y) in bench.Points.Y.Index())
        {
            foreach (var (column, x) in bench.Points.X.Index())
            {
                var value = bench.Value(row, column);
                if (double.IsNaN(value)) continue;
                var text = columns.Contains(column) && rows.Contains(row) ? bench.Text.Number(value) : null;
                yield return text is null
                    ? new(X(x), Y(y), null, bench.Scale.TintOf(value))
                    : new(Math.Clamp(X(x), Left + 17, Left + PlotWidth - 17), Math.Clamp(Y(y) + 5, Top + 16, Top + PlotHeight - 7), text, bench.Scale.TintOf(value));
            }
        }
    }

    /// <summary>The first, the last, and between them as many evenly counted places as keep a distance.</summary>
    private static HashSet<int> Spaced(IReadOnlyList<double> places, double apart)
    {
        if (places.Count < 2) return [0];
        var stride = Enumerable.Range(1, places.Count - 1).FirstOrDefault(s => (places.Count - 1) % s == 0 && (places[^1] - places[0]) * s / (places.Count - 1) >= apart, places.Count - 1);
        return [.. Enumerable.Range(0, places.Count).Where(i => i % stride == 0)];
    }
}
