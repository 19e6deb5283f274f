using System.Diagnostics;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;
using RetrofitCalc.Files.Examples;
using RetrofitCalc.Files.Safety;

namespace RetrofitCalc.Benchmarks;

/// <summary>
/// Processor time of a whole evaluation, collector included: comparable on a machine that does other work at the same time,
/// where the clock on the wall is not.
/// </summary>
internal static class ProcessorTime
{
    private static readonly int[] Sizes = [12, 200, 2_000, 20_000];

    public static void Print()
    {
        var rules = SafetyRuleFile.Load();
        // The compiler improves hot code in the background on the same processor: let it finish first.
        var warm = WorkedExample.Load();
        for (var run = 0; run < 300; run++)
            StudyEvaluation.Run(warm, rules);
        Console.WriteLine("lines  processor ms  allocated MB");
        foreach (var study in (Study[])[warm, .. Sizes.Select(SyntheticStudy.Sized)])
        {
            var lines = study.Lines.Count;
            void evaluate() => StudyEvaluation.Run(study, rules);
            // The system counts in hundredths of a second: enough runs for each to weigh little.
            var runs = lines < 20_000 ? 40 : 8;
            Measure(evaluate, runs);
            Console.WriteLine($"{lines,6} {Measure(evaluate, runs).TotalMilliseconds,12:0.0} {Allocated(evaluate) / 1e6,13:0.0}  {study.Name}");
        }
    }

    /// <summary>Bills of a year of readings now and after each option, the year laid out included; no ranges, no safety rules.</summary>
    public static void PrintBeforeAndAfter()
    {
        var study = SyntheticStudy.Metered(12, options: 4);
        for (var run = 0; run < 300; run++)
            BeforeAndAfter(study);
        Measure(() => BeforeAndAfter(study), 200);
        Console.WriteLine($"one site, now and 4 options: {Measure(() => BeforeAndAfter(study), 200).TotalMilliseconds:0.00} ms");
        var sites = Enumerable.Range(0, 100).Select(_ => SyntheticStudy.Metered(12, options: 5)).ToList();
        Console.WriteLine($"100 sites, now and 5 options each: {Measure(() => sites.ForEach(site => BeforeAndAfter(site)), 3).TotalMilliseconds:0} ms");
    }

    private static Money BeforeAndAfter(Study study)
    {
        var present = new PresentCases(new StudyContext(study));
        return study.Options.Aggregate(present.Likely().Site.Cost, (sum, option) =>
            sum + CaseEvaluation.Evaluate(present.Context, option.Name, option.Measures.ToDictionary(m => m.Line, m => m.Measure), option.Costs, Perturbation.None).Site.Cost);
    }

    private static TimeSpan Measure(Action work, int runs)
    {
        using var process = Process.GetCurrentProcess();
        var before = process.TotalProcessorTime;
        for (var run = 0; run < runs; run++)
            work();
        process.Refresh();
        return (process.TotalProcessorTime - before) / runs;
    }

    private static long Allocated(Action work)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        work();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
