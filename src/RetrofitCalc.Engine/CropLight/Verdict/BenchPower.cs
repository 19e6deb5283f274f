using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>What the lines of an area draw under an option, laid out or not, all luminaires of each line counted.</summary>
internal static class BenchPower
{
    /// <summary>Input with all switched on.</summary>
    /// <param name="change">The bench and the option.</param>
    public static Power Connected(BenchChange change) => Lines(change).Aggregate(Power.Zero, (sum, line) => sum + Load(change, line).Connected);

    /// <summary>Input in a step and level.</summary>
    /// <param name="change">The bench and the option.</param>
    /// <param name="mode">The step and level.</param>
    public static Power In(BenchChange change, LitMode mode) => Lines(change).Aggregate(Power.Zero, (sum, line) =>
        sum + Load(change, line).Connected * Share(change, line, mode));

    /// <summary>Lighting energy of a year. [kWh]</summary>
    /// <param name="change">The bench and the option.</param>
    public static double KilowattHours(BenchChange change) => Lines(change).Sum(line => Load(change, line).Connected.Kilowatts
        * change.Lit.Modes.Zip(change.Lit.ModeHours, (mode, hours) => hours * Share(change, line, mode)).Sum());

    private static IEnumerable<BenchLine> Lines(BenchChange change) => change.Lines.Concat(change.Elsewhere);

    private static double Share(BenchChange change, BenchLine line, LitMode mode)
    {
        var model = change.Bench.Context.SetUps[line.Now.Line.SetUp!];
        return LineLoad.Share(mode, model, FittingKind.Of(line.After.Fitting, model));
    }

    private static LineLoad Load(BenchChange change, BenchLine line)
    {
        var context = change.Bench.Context;
        return CaseLines.Load(context, context.Lines.First(counted => counted.Fitted.Line.Id == line.Now.Line.Id), line.After);
    }
}
