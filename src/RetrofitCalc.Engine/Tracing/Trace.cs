namespace RetrofitCalc.Engine.Tracing;

/// <summary>Records how a figure comes about. The functions that compute it run with one and tell it each step; without one they record nothing.</summary>
public sealed class Trace
{
    private readonly List<TraceStep> _steps = [];

    /// <summary>Steps so far, in the order they were computed.</summary>
    public IReadOnlyList<TraceStep> Steps => _steps;

    /// <summary>Records a step.</summary>
    /// <param name="name">What is found.</param>
    /// <param name="formula">The formula, with its number in docs/equations.md.</param>
    /// <param name="inputs">What goes in.</param>
    /// <param name="result">What comes out.</param>
    /// <param name="source">Where the inputs come from; empty when they are steps before.</param>
    public void Add(string name, string formula, IReadOnlyList<TraceValue> inputs, TraceValue result, string source = "") =>
        Add(new(name, formula, inputs, result, source));

    /// <summary>Records a step.</summary>
    /// <param name="step">The step.</param>
    public void Add(TraceStep step) => _steps.Add(step);
}

/// <summary>One step of an explanation.</summary>
/// <param name="Name">What is found.</param>
/// <param name="Formula">The formula, with its number in docs/equations.md.</param>
/// <param name="Inputs">What goes in.</param>
/// <param name="Result">What comes out.</param>
/// <param name="Source">Where the inputs come from; empty when they are steps before.</param>
public sealed record TraceStep(string Name, string Formula, IReadOnlyList<TraceValue> Inputs, TraceValue Result, string Source);

/// <summary>A named number.</summary>
/// <param name="Name">Symbol or name.</param>
/// <param name="Value">The number. [as <paramref name="Unit"/> says]</param>
/// <param name="Unit">Its unit; empty for a plain number.</param>
public readonly record struct TraceValue(string Name, double Value, string Unit);
