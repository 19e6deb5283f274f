using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty.Distributions;

namespace RetrofitCalc.Engine.Uncertainty.Simulation;

/// <summary>Draws of a study's uncertain inputs, by the ranges of its assumptions (E-100).</summary>
/// <remarks>
/// Each input is a factor from 1 − w over 1 to 1 + w, w how far the assumptions say it may be off. All prices of the tariff are one
/// factor, and so move as one; lives move together in part. Inputs without a range are not drawn, and since the numbers of an input
/// follow from its own number the others stay what they are. All options of a study meet the same draws.
/// </remarks>
internal sealed class InputDraws
{
    private readonly JointSample _sample;

    public InputDraws(Assumptions assumptions, SimulationSettings settings)
    {
        var lives = new InputGroup(0, settings.LivesTogether);
        Inputs = [.. UncertainInput.All.Where(input => input.Width(assumptions) > 0)];
        _sample = new([.. Inputs.Select(input => new SampledInput(
            input.Number, Distribution(settings.Shape, input.Width(assumptions)), input.IsLife ? lives : null))], assumptions.Seed);
    }

    /// <summary>Inputs that have a range, in the order of the values.</summary>
    public IReadOnlyList<UncertainInput> Inputs { get; }

    /// <summary>Factors of one draw, in the order of the inputs.</summary>
    public double[] Values(int draw) => _sample.Draw(draw);

    /// <summary>The model's inputs under some factors.</summary>
    public Perturbation Under(double[] values)
    {
        var all = Perturbation.None;
        for (var i = 0; i < values.Length; i++)
            all = Inputs[i].With(all, values[i]);
        return all;
    }

    private static InputDistribution Distribution(RangeShape shape, double width) => shape == RangeShape.Triangular
        ? new TriangularDistribution(1 - width, 1, 1 + width)
        : new PertDistribution(1 - width, 1, 1 + width);
}
