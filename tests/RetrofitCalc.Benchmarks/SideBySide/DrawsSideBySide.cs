using System.Diagnostics;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty.Simulation;
using RetrofitCalc.Files.Examples;

namespace RetrofitCalc.Benchmarks.SideBySide;

/// <summary>
/// Ten thousand draws of each option of the worked example on one thread and on two, by turns in one run. Processor time tells what
/// two threads cost above one whatever else the machine does; the clock tells how long one waits only on an idle machine.
/// </summary>
internal static class DrawsSideBySide
{
    private const int Runs = 6;

    public static void Print()
    {
        var study = WorkedExample.Load();
        Console.WriteLine("                                threads   clock s   processor s     of it after draws s   MB for each draw");
        foreach (var option in study.Options)
        {
            Measure(study, option, 1);
            Taken[] one = new Taken[Runs], two = new Taken[Runs];
            for (var run = 0; run < Runs; run++)
                (one[run], two[run]) = (Measure(study, option, 1), Measure(study, option, 2));
            if (one.Concat(two).Any(taken => taken.Mean != one[0].Mean))
                throw new InvalidOperationException("One thread and two do not agree.");
            Tell(option.Name, 1, one);
            Tell(option.Name, 2, two);
            var (alone, shared) = (one.Min(taken => taken.Processor), two.Min(taken => taken.Processor));
            var outside = two.Min(taken => taken.Outside);
            Console.WriteLine(FormattableString.Invariant(
                $"  efficiency of two: {one.Min(taken => taken.Clock) / two.Min(taken => taken.Clock) / 2:P0} by the clock, {alone / (2 * (outside + (shared - outside) / 2)):P0} by processor time"));
        }
    }

    private static Taken Measure(Study study, RetrofitOption option, int workers)
    {
        GC.Collect();
        var (before, drawn) = (Processor(), 0.0);
        var allocated = GC.GetTotalAllocatedBytes(precise: true);
        var clock = Stopwatch.StartNew();
        var last = new Told(() => drawn = Processor());
        var result = OptionSimulation.Run(study, option, new(), new() { Workers = workers, Progress = last });
        var (seconds, after) = (clock.Elapsed.TotalSeconds, Processor());
        return new(seconds, after - before, after - drawn, (GC.GetTotalAllocatedBytes(precise: true) - allocated) / 1e6 / result.Draws, result.NetPresentValue.Mean);
    }

    private static double Processor()
    {
        using var process = Process.GetCurrentProcess();
        return process.TotalProcessorTime.TotalSeconds;
    }

    private static void Tell(string option, int workers, Taken[] runs) => Console.WriteLine(FormattableString.Invariant(
        $"{option,-32}{workers,6} {runs.Min(taken => taken.Clock),11:0.00} {runs.Min(taken => taken.Processor),11:0.00} {runs.Min(taken => taken.Outside),20:0.00} {runs.Min(taken => taken.Megabytes),24:0.00}"));

    /// <summary>Seconds by the clock, of the processor, of it after the last draw; memory asked for by a draw; mean worth.</summary>
    private sealed record Taken(double Clock, double Processor, double Outside, double Megabytes, double Mean);

    private sealed class Told(Action whenDone) : IProgress<double>
    {
        public void Report(double value)
        {
            if (value == 1)
                whenDone();
        }
    }
}
