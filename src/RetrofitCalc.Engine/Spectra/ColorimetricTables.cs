namespace RetrofitCalc.Engine.Spectra;

/// <summary>Published tables that formulas of light and colour need. The engine reads no files: whoever calls brings them.</summary>
public sealed record ColorimetricTables
{
    /// <summary>Luminous efficacy at 555 nm (CIE 15; the SI of 2019 gives 683.002 at that wavelength in air, 3 parts in a million more). [lm/W]</summary>
    public const double LumensPerWatt = 683;

    /// <summary>Test colours of CIE 13.3: R1 to R14.</summary>
    public const int TestColourCount = 14;

    private readonly IReadOnlyList<SpectralCurve> _testColours = [];

    /// <summary>V(λ), CIE 1924. [unitless, 0–1]</summary>
    public required SpectralCurve EyeSensitivity { get; init; }

    /// <summary>x̄ of the CIE 1931 observer. [unitless]</summary>
    public required SpectralCurve X { get; init; }

    /// <summary>ȳ of the CIE 1931 observer. [unitless]</summary>
    public required SpectralCurve Y { get; init; }

    /// <summary>z̄ of the CIE 1931 observer. [unitless]</summary>
    public required SpectralCurve Z { get; init; }

    /// <summary>Mean daylight S0 and its two components S1 and S2 (CIE 15). [relative]</summary>
    public required DaylightComponents Daylight { get; init; }

    /// <summary>Spectral radiance factors of the fourteen test colours of CIE 13.3. [unitless, 0–1]</summary>
    /// <exception cref="ArgumentException">Not fourteen.</exception>
    public required IReadOnlyList<SpectralCurve> TestColours
    {
        get => _testColours;
        init => _testColours = value.Count == TestColourCount
            ? value
            : throw new ArgumentException($"CIE 13.3 has {TestColourCount} test colours, not {value.Count}.", nameof(value));
    }
}

/// <summary>Mean daylight and its components (CIE 15).</summary>
/// <param name="Mean">S0. [relative]</param>
/// <param name="First">S1: blue to yellow. [relative]</param>
/// <param name="Second">S2: green to pink. [relative]</param>
public sealed record DaylightComponents(SpectralCurve Mean, SpectralCurve First, SpectralCurve Second);
