namespace RetrofitCalc.Engine.Spectra;

/// <summary>The wavelengths at which sums over a spectrum are taken, and the width each stands for (E-40).</summary>
/// <param name="Nm">Where. [nm]</param>
/// <param name="WidthsNm">For how much. [nm]</param>
internal sealed record SpectralNodes(double[] Nm, double[] WidthsNm)
{
    private const double StepOfCieNm = 5;

    /// <summary>
    /// Trapezoids over every sample, every whole nanometre and both ends of the band, so that a sample at an edge is split
    /// between the bands that meet there, and lines of finely measured spectra are not stepped over.
    /// </summary>
    public static SpectralNodes Of(SpectralCurve curve, SpectralBand band)
    {
        var (low, high) = (band.From.Nanometres, band.To.Nanometres);
        var nodes = new SortedSet<double> { low, high };
        for (var whole = Math.Ceiling(low); whole < high; whole++)
            nodes.Add(whole);
        foreach (var nm in curve.Nanometres)
            if (nm > low && nm < high)
                nodes.Add(nm);
        double[] at = [.. nodes];
        var widths = new double[at.Length];
        for (var i = 1; i < at.Length; i++)
        {
            var half = (at[i] - at[i - 1]) / 2;
            widths[i - 1] += half;
            widths[i] += half;
        }
        return new(at, widths);
    }

    /// <summary>
    /// For colours: plain sums every 5 nm from 380 to 780 nm, as CIE 13.3 and the CIE tables have it, where the samples lie 5 nm
    /// apart or wider; trapezoids where they lie closer, since sums every 5 nm would step over lines.
    /// </summary>
    public static SpectralNodes ForColour(SpectralCurve curve)
    {
        var visible = PlantBands.Visible;
        if (curve.NarrowestStep(visible) < StepOfCieNm - 1e-6)
            return Of(curve, visible);
        var count = (int)(visible.WidthNanometres / StepOfCieNm) + 1;
        return new(
            [.. Enumerable.Range(0, count).Select(i => visible.From.Nanometres + i * StepOfCieNm)],
            [.. Enumerable.Repeat(StepOfCieNm, count)]);
    }

    /// <summary>A curve at the nodes, each value times the width it stands for.</summary>
    public double[] Weighted(SpectralCurve curve) => [.. Nm.Zip(WidthsNm, (nm, width) => curve.At(nm) * width)];

    /// <summary>A curve at the nodes.</summary>
    public double[] Of(SpectralCurve curve) => [.. Nm.Select(curve.At)];
}
