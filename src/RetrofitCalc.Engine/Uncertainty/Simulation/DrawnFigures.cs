using RetrofitCalc.Engine.Economics;

namespace RetrofitCalc.Engine.Uncertainty.Simulation;

/// <summary>What is kept of each draw, by its number: neither the order in which draws are made nor who makes them leaves a trace.</summary>
internal sealed class DrawnFigures
{
    public DrawnFigures(int draws, int inputs, int studyYears)
    {
        (Payback, NetPresentValue) = (new double[draws], new double[draws]);
        (FirstCost, AnnualSaving) = (new double[draws], new double[draws]);
        Inputs = [.. Enumerable.Range(0, inputs).Select(_ => new double[draws])];
        Cumulative = [.. Enumerable.Range(0, studyYears + 1).Select(_ => new double[draws])];
    }

    /// <summary>Simple payback; infinite where it is never reached within the study. [years]</summary>
    public double[] Payback { get; }

    /// <summary>Net present value. [currency]</summary>
    public double[] NetPresentValue { get; }

    /// <summary>First cost after the incentive. [currency]</summary>
    public double[] FirstCost { get; }

    /// <summary>Bill and fuel saved in a steady year. [currency]</summary>
    public double[] AnnualSaving { get; }

    /// <summary>Factor on each input. [unitless]</summary>
    public double[][] Inputs { get; }

    /// <summary>Sum of net flows by year, year 0 first. [currency]</summary>
    public double[][] Cumulative { get; }

    public void Keep(int draw, double[] values, OptionOutcome outcome)
    {
        Payback[draw] = outcome.SimplePayback.Years ?? double.PositiveInfinity;
        NetPresentValue[draw] = outcome.NetPresentValue.Units;
        FirstCost[draw] = outcome.FirstCost.Total.Units;
        AnnualSaving[draw] = outcome.Saving.Steady.Units;
        for (var input = 0; input < values.Length; input++)
            Inputs[input][draw] = values[input];
        for (var year = 0; year < Cumulative.Length; year++)
            Cumulative[year][draw] = outcome.Flows[year].Cumulative.Units;
    }
}
