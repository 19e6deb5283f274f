using RetrofitCalc.Benchmarks;
using RetrofitCalc.Benchmarks.SideBySide;

if (args is ["processor-time"])
    ProcessorTime.Print();
else if (args is ["before-and-after"])
    ProcessorTime.PrintBeforeAndAfter();
else if (args is ["meter-files"])
    MeterFiles.Print();
else if (args is ["side-by-side"])
    BillsSideBySide.Print();
else if (args is ["light-side-by-side"])
    LightSideBySide.Print();
else if (args is ["draws"])
    DrawsSideBySide.Print();
else
    BenchmarkDotNet.Running.BenchmarkSwitcher.FromAssembly(typeof(Study_evaluation).Assembly).Run(args);
