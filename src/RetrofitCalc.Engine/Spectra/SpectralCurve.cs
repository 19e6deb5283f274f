using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Spectra;

/// <summary>Any quantity over wavelength: a spectrum, an observer function, a reflectance.</summary>
/// <remarks>Between samples the curve is a straight line (E-40); before the first and after the last it is zero. Steps may be uneven.</remarks>
public sealed class SpectralCurve
{
    /// <summary>A sample stands for half a step on either side of it, but never for more than this. [nm]</summary>
    private const double FarthestReachNm = 2.5;

    private readonly double[] _nm;
    private readonly double[] _values;

    /// <summary>Makes a curve.</summary>
    /// <param name="samples">At least two points, wavelengths rising.</param>
    /// <exception cref="ArgumentException">Fewer than two points, wavelengths that do not rise, or a value that is no finite number.</exception>
    public SpectralCurve(IEnumerable<SpectralSample> samples)
    {
        Samples = [.. samples];
        _nm = [.. Samples.Select(sample => sample.At.Nanometres)];
        _values = [.. Samples.Select(sample => sample.Value)];
        if (_nm.Length < 2)
            throw new ArgumentException($"A curve needs at least two samples, not {_nm.Length}.", nameof(samples));
        for (var i = 1; i < _nm.Length; i++)
            if (_nm[i] <= _nm[i - 1])
                throw new ArgumentException($"Wavelengths must rise: {_nm[i]} nm follows {_nm[i - 1]} nm.", nameof(samples));
        foreach (var value in _values)
            Require.Finite(value, nameof(samples));
    }

    /// <summary>The points.</summary>
    public IReadOnlyList<SpectralSample> Samples { get; }

    /// <summary>From the first to the last sample.</summary>
    public SpectralBand Range => new(Samples[0].At, Samples[^1].At);

    /// <summary>The value at a wavelength: a straight line between the neighbours, zero outside the samples.</summary>
    /// <param name="at">Where. [nm]</param>
    public double At(Wavelength at) => At(at.Nanometres);

    /// <summary>Whether samples reach over the whole band, each standing for half a step around it, at most 2.5 nm.</summary>
    /// <param name="band">The band asked for. [nm]</param>
    public bool Covers(SpectralBand band) =>
        _nm[0] - Math.Min((_nm[1] - _nm[0]) / 2, FarthestReachNm) <= band.From.Nanometres
        && _nm[^1] + Math.Min((_nm[^1] - _nm[^2]) / 2, FarthestReachNm) >= band.To.Nanometres;

    /// <summary>Widest step between samples that touch the band; zero where none do. [nm]</summary>
    /// <param name="band">The band asked for. [nm]</param>
    public double WidestStep(SpectralBand band) => Steps(band).DefaultIfEmpty(0).Max();

    /// <summary>Narrowest step between samples that touch the band; zero where none do. [nm]</summary>
    /// <param name="band">The band asked for. [nm]</param>
    public double NarrowestStep(SpectralBand band) => Steps(band).DefaultIfEmpty(0).Min();

    internal ReadOnlySpan<double> Nanometres => _nm;

    internal double At(double nm)
    {
        var found = Array.BinarySearch(_nm, nm);
        if (found >= 0)
            return _values[found];
        var next = ~found;
        if (next == 0 || next == _nm.Length)
            return 0;
        var share = (nm - _nm[next - 1]) / (_nm[next] - _nm[next - 1]);
        return _values[next - 1] + share * (_values[next] - _values[next - 1]);
    }

    private IEnumerable<double> Steps(SpectralBand band) =>
        from i in Enumerable.Range(1, _nm.Length - 1)
        where _nm[i] > band.From.Nanometres && _nm[i - 1] < band.To.Nanometres
        select _nm[i] - _nm[i - 1];
}
