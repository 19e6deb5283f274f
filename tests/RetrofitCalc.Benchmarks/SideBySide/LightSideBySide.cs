using System.Diagnostics;
using System.Globalization;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Benchmarks.SideBySide;

/// <summary>
/// Light of tubes over 200 × 100 points by the engine and by a NumPy script of the same formulas, in one run on one machine, in processor
/// time: only the ratios are meant. Both must come to the same sum.
/// </summary>
internal static class LightSideBySide
{
    private static readonly Length RoomLength = Length.FromMetres(12), RoomWidth = Length.FromMetres(6);
    private static readonly ReflectingCavity Box = new(RoomLength, RoomWidth, Length.FromMetres(1), new(0.3, 0.6, 0.7));

    public static void Print()
    {
        var points = Points(200, 100);
        foreach (var tubes in (int[])[40, 1_000])
            Compare(Tubes(tubes), points, tubes == 40 ? 30 : 3);
        Growth(points);
        Console.WriteLine(FormattableString.Invariant($"fit of 75 readings at 3 heights under 40 tubes                        {Each(() => LightModel.Fit(Readings(null), null)) * 1e3,9:0.00} ms"));
        var surroundings = new Surroundings(Box.Height, Box.Reflectance);
        Console.WriteLine(FormattableString.Invariant($"the same with surfaces that reflect                                   {Each(() => LightModel.Fit(Readings(surroundings), surroundings)) * 1e3,9:0.00} ms"));
    }

    private static void Compare(PlacedTube[] tubes, PlanePoint[] points, int runs)
    {
        var direct = Each(() => LightField.Over(tubes, points));
        var scalar = Each(() => points.Select(point => LightField.At(tubes, point)).ToArray());
        var boxed = Each(() => ShelfLight.Over(tubes, Box, points));
        var script = Script(tubes, points, runs);
        var (sum, boxedSum) = (Sum(LightField.Over(tubes, points)), Sum(ShelfLight.Over(tubes, Box, points)));
        Console.WriteLine($"{tubes.Length} tubes, {points.Length} points");
        Tell("engine, direct light", direct, direct, sum);
        Tell("engine, the readable formula point by point", scalar, direct, sum);
        Tell("NumPy, the formula as it stands", script[0].Seconds, direct, script[0].Sum);
        Tell("NumPy, one arc for both ends", script[1].Seconds, direct, script[1].Sum);
        Tell("engine, with reflections", boxed, boxed, boxedSum);
        Tell("NumPy, with reflections", script[2].Seconds, boxed, script[2].Sum);
    }

    /// <summary>Time for a tube and a point should not grow with their number.</summary>
    private static void Growth(PlanePoint[] points)
    {
        foreach (var (tubes, some) in (IEnumerable<(int, PlanePoint[])>)[(10, points), (100, points), (1_000, points), (1_000, Points(40, 25)), (1_000, Points(400, 200))])
        {
            var placed = Tubes(tubes);
            var seconds = Each(() => LightField.Over(placed, some));
            Console.WriteLine(FormattableString.Invariant($"{tubes,6} tubes × {some.Length,6} points: {seconds * 1e3,9:0.00} ms, {seconds / tubes / some.Length * 1e9:0.00} ns for a tube and a point"));
        }
    }

    private static PlacedTube[] Tubes(int count)
    {
        var across = count <= 40 ? 4 : 25;
        return [.. Enumerable.Range(0, count).Select(at => new PlacedTube(
            at % 3 == 0 ? TubeEmission.BareTube : TubeEmission.DownFacingStrip, Length.FromMetres(1.15), PhotonFlux.FromMicromolesPerSecond(40 + at % 7), Length.FromMetres(0.8))
            { Centre = new(Place(at / across, count / across, RoomLength), Place(at % across, across, RoomWidth)), AxisDegrees = at % 2 * 90 })];
    }

    private static PlanePoint[] Points(int along, int across) =>
        [.. Enumerable.Range(0, along * across).Select(at => new PlanePoint(Place(at % along, along, RoomLength), Place(at / along, across, RoomWidth)))];

    private static double Place(int at, int of, Length side) => side.Metres * ((at + 0.5) / of - 0.5);

    private static (MeasuredLight, IReadOnlyList<LightSource>)[] Readings(Surroundings? surroundings)
    {
        double[] x = [.. Enumerable.Range(0, 5).Select(at => Place(at, 5, RoomLength))], y = [.. Enumerable.Range(0, 5).Select(at => Place(at, 5, RoomWidth))];
        PlanePoint[] points = [.. y.SelectMany(row => x.Select(column => new PlanePoint(column, row)))];
        var bench = new AreaLight { BenchLength = RoomLength, BenchWidth = RoomWidth, Surroundings = surroundings };
        return [.. new[] { 0.4, 0.6, 0.8 }.Select(height =>
        {
            LightSource[] lamps = [.. Tubes(40).Select(tube => new LightSource(new(tube.Emission, tube.Length, tube.Output, Length.FromMetres(height)) { Centre = tube.Centre, AxisDegrees = tube.AxisDegrees }))];
            var light = LightField.Over(lamps, points);
            var set = new ReadingSet { Id = "r", Height = Length.FromMetres(height), Columns = x, Rows = y, Values = [.. y.Select((_, row) => (IReadOnlyList<double?>)[.. x.Select((_, column) => (double?)light[row * 5 + column].MicromolesPerSquareMetre)])] };
            return (MeasuredLight.Of(set, bench)!, (IReadOnlyList<LightSource>)lamps);
        })];
    }

    private static (double Seconds, string Sum)[] Script(PlacedTube[] tubes, PlanePoint[] points, int runs)
    {
        var folder = Directory.CreateTempSubdirectory("retrofit-light-").FullName;
        try
        {
            static string row(params IEnumerable<double> cells) => string.Join(",", cells.Select(cell => cell.ToString("R", CultureInfo.InvariantCulture)));
            File.WriteAllLines(Path.Combine(folder, "tubes.csv"), tubes.Select(tube => row(
                tube.Emission == TubeEmission.BareTube ? 1 : 0, tube.Length.Metres, tube.Output.MicromolesPerSecond, tube.Height.Metres, tube.Centre.X, tube.Centre.Y, tube.AxisDegrees)));
            File.WriteAllLines(Path.Combine(folder, "points.csv"), points.Select(point => row(point.X, point.Y)));
            File.WriteAllText(Path.Combine(folder, "box.csv"), row(Box.Length.Metres, Box.Width.Metres, Box.Height.Metres, Box.Reflectance.Base, Box.Reflectance.Sides, Box.Reflectance.Top));
            var start = new ProcessStartInfo("/usr/bin/python3") { RedirectStandardOutput = true };
            start.Environment["OPENBLAS_NUM_THREADS"] = "1";
            foreach (var argument in (string[])[Path.Combine(AppContext.BaseDirectory, "SideBySide", "light.py"), folder, runs.ToString(CultureInfo.InvariantCulture)])
                start.ArgumentList.Add(argument);
            using var process = Process.Start(start)!;
            return [.. process.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(' '))
                .Select(parts => (double.Parse(parts[0], CultureInfo.InvariantCulture), parts[1]))];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Processor time of one run: other work on the machine counts less in it than in the time on the clock.</summary>
    private static double Each(Action work)
    {
        // The compiler improves hot code in the background: give it the time to.
        for (var warming = Stopwatch.StartNew(); warming.ElapsedMilliseconds < 1000;)
            work();
        using var process = Process.GetCurrentProcess();
        var (before, runs) = (process.TotalProcessorTime, 0);
        for (var clock = Stopwatch.StartNew(); clock.ElapsedMilliseconds < 1500 || runs < 3; runs++)
            work();
        process.Refresh();
        return (process.TotalProcessorTime - before).TotalSeconds / runs;
    }

    private static string Sum(IReadOnlyList<PhotonFluxDensity> light) => light.Sum(at => at.MicromolesPerSquareMetre).ToString("G9", CultureInfo.InvariantCulture);

    private static void Tell(string what, double seconds, double engine, string sum) =>
        Console.WriteLine(FormattableString.Invariant($"  {what,-45} {seconds * 1e3,10:0.00} ms {seconds / engine,7:0.0}    sum {sum}"));
}
