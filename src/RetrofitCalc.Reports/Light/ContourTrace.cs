using RetrofitCalc.Engine.CropLight;

namespace RetrofitCalc.Reports;

/// <summary>Walks the cells of a grid at one level: finds where the level crosses the sides of cells, and joins the crossings.</summary>
internal sealed class ContourTrace(IReadOnlyList<double> x, IReadOnlyList<double> y, double[,] values, double level)
{
    /// <summary>The side of a cell that begins at a grid point and runs along its row or up its column.</summary>
    private readonly record struct Side(int Row, int Column, bool Along);

    private readonly Dictionary<Side, List<Side>> _joined = [];

    public IReadOnlyList<IReadOnlyList<PlanePoint>> Lines()
    {
        for (var row = 0; row + 1 < y.Count; row++)
            for (var column = 0; column + 1 < x.Count; column++)
                Cell(row, column);
        var lines = new List<IReadOnlyList<PlanePoint>>();
        // Open lines first, from their ends; what is left closes.
        foreach (var end in _joined.Where(side => side.Value.Count == 1).Select(side => side.Key).ToList()) Take(end, lines);
        foreach (var side in _joined.Keys.ToList()) Take(side, lines);
        return lines;
    }

    private bool Above(int row, int column) => values[row, column] >= level;

    private void Cell(int row, int column)
    {
        var (bottom, top) = (new Side(row, column, true), new Side(row + 1, column, true));
        var (left, right) = (new Side(row, column, false), new Side(row, column + 1, false));
        var (a, b, c, d) = (Above(row, column), Above(row, column + 1), Above(row + 1, column + 1), Above(row + 1, column));
        if (a == c && b == d && a != b)
        {
            var middle = (values[row, column] + values[row, column + 1] + values[row + 1, column + 1] + values[row + 1, column]) / 4 >= level;
            if (middle == a) { Join(bottom, right); Join(left, top); }
            else { Join(bottom, left); Join(right, top); }
            return;
        }
        Side[] crossed = [.. new[] { (bottom, a != b), (right, b != c), (top, c != d), (left, d != a) }.Where(s => s.Item2).Select(s => s.Item1)];
        if (crossed.Length == 2) Join(crossed[0], crossed[1]);
    }

    private void Join(Side one, Side other)
    {
        Neighbours(one).Add(other);
        Neighbours(other).Add(one);
    }

    private List<Side> Neighbours(Side side) => _joined.TryGetValue(side, out var list) ? list : _joined[side] = [];

    private void Take(Side start, List<IReadOnlyList<PlanePoint>> lines)
    {
        if (!_joined.TryGetValue(start, out var ways) || ways.Count == 0) return;
        var line = new List<PlanePoint> { Crossing(start) };
        for (var at = start; _joined[at].Count > 0;)
        {
            var next = _joined[at][0];
            _joined[at].RemoveAt(0);
            _joined[next].Remove(at);
            at = next;
            if (Crossing(at) is var point && point != line[^1]) line.Add(point);
        }
        if (line.Count > 1) lines.Add(line);
    }

    private PlanePoint Crossing(Side side)
    {
        var (row, column) = side.Along ? (side.Row, side.Column + 1) : (side.Row + 1, side.Column);
        var (from, to) = (values[side.Row, side.Column], values[row, column]);
        var share = (level - from) / (to - from);
        return new(x[side.Column] + share * (x[column] - x[side.Column]), y[side.Row] + share * (y[row] - y[side.Row]));
    }
}
