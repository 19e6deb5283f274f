namespace RetrofitCalc.Engine.Spectra;

/// <summary>Tristimulus sums over one set of nodes: the lamp, its reference and the test colours are all summed alike.</summary>
internal sealed class ColourSums(SpectralNodes nodes, ColorimetricTables tables)
{
    private readonly double[] _x = nodes.Weighted(tables.X);
    private readonly double[] _y = nodes.Weighted(tables.Y);
    private readonly double[] _z = nodes.Weighted(tables.Z);

    public SpectralNodes Nodes { get; } = nodes;

    public Tristimulus Of(double[] power)
    {
        double x = 0, y = 0, z = 0;
        for (var i = 0; i < power.Length; i++)
        {
            x += power[i] * _x[i];
            y += power[i] * _y[i];
            z += power[i] * _z[i];
        }
        return new(x, y, z);
    }

    /// <summary>The light a surface throws back.</summary>
    public Tristimulus Of(double[] power, double[] reflectance)
    {
        var reflected = new double[power.Length];
        for (var i = 0; i < power.Length; i++)
            reflected[i] = power[i] * reflectance[i];
        return Of(reflected);
    }
}
