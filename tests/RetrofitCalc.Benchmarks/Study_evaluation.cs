using BenchmarkDotNet.Attributes;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Benchmarks;

/// <summary>A whole study: check, now, three options with their ranges. 12 lines in 6 areas is the size of the worked example.</summary>
[MemoryDiagnoser]
public class Study_evaluation
{
    private Study _study = null!;

    [Params(12, 200, 2_000, 20_000)]
    public int Lines { get; set; }

    [GlobalSetup]
    public void Build() => _study = SyntheticStudy.Sized(Lines);

    [Benchmark]
    public StudyResult Evaluate() => StudyEvaluation.Run(_study, new SafetyRuleBook());
}
