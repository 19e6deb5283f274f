using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Uncertainty.Simulation;

/// <summary>An option under many draws of its uncertain inputs, the whole model each time: bills, replacements and first cost (E-101).</summary>
/// <remarks>
/// Draw i follows from the study's seed and i alone and is kept at place i; what is summed up afterwards is summed in that order. So
/// one seed gives the same result, bit for bit, on any number of threads. A study's context serves one thread: each thread lays out one
/// of its own and then takes draws a handful at a time until none are left.
/// </remarks>
public static class OptionSimulation
{
    /// <summary>Draws a thread takes at once: few enough that threads end together and a cancelled run stops soon.</summary>
    private const int Handful = 50;

    /// <summary>Runs the draws.</summary>
    /// <param name="study">A study without problems; its assumptions say how far inputs may be off, and hold the seed.</param>
    /// <param name="option">An option of the study.</param>
    /// <param name="settings">What is drawn.</param>
    /// <param name="control">Threads, progress and cancellation.</param>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public static SimulationResult Run(Study study, RetrofitOption option, SimulationSettings settings, SimulationControl control)
    {
        var inputs = new InputDraws(study.Assumptions, settings);
        var drawn = new DrawnFigures(settings.Draws, inputs.Inputs.Count, study.Assumptions.StudyYears);
        var first = new OptionModel(new PresentCases(new StudyContext(study)), option);
        var queue = new DrawQueue(settings.Draws, Handful, control);
        var threads = new ParallelOptions { MaxDegreeOfParallelism = control.Workers, CancellationToken = control.Cancellation };
        Parallel.For(0, control.Workers, threads, worker =>
        {
            var model = worker == 0 ? first : null;
            while (queue.TryTake(out var draws))
            {
                model ??= new(new PresentCases(new StudyContext(study)), option);
                Make(draws, model, inputs, drawn, control.Cancellation);
                queue.Done(draws);
            }
        });
        return SimulationResult.Of(study.Assumptions, inputs, drawn, first);
    }

    private static void Make((int From, int To) draws, OptionModel model, InputDraws inputs, DrawnFigures drawn, CancellationToken cancellation)
    {
        for (var draw = draws.From; draw < draws.To; draw++)
        {
            cancellation.ThrowIfCancellationRequested();
            var values = inputs.Values(draw);
            drawn.Keep(draw, values, model.Under(inputs.Under(values)));
        }
    }
}
