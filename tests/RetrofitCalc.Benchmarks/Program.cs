using RetrofitCalc.Benchmarks;

if (args is ["processor-time"])
    ProcessorTime.Print();
else
    BenchmarkDotNet.Running.BenchmarkSwitcher.FromAssembly(typeof(Study_evaluation).Assembly).Run(args);
