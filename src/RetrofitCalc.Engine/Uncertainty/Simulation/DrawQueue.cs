namespace RetrofitCalc.Engine.Uncertainty.Simulation;

/// <summary>Draws still to be made, handed out a handful at a time, and how many are made.</summary>
internal sealed class DrawQueue(int draws, int handful, SimulationControl control)
{
    private readonly Lock _telling = new();
    private int _next;
    private int _made;

    /// <summary>The next draws, the end left out; false when none are left.</summary>
    public bool TryTake(out (int From, int To) span)
    {
        var from = Interlocked.Add(ref _next, handful) - handful;
        span = (from, Math.Min(from + handful, draws));
        return from < draws;
    }

    public void Done((int From, int To) span)
    {
        lock (_telling)
        {
            _made += span.To - span.From;
            control.Progress?.Report(_made / (double)draws);
        }
    }
}
