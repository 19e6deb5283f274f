namespace RetrofitCalc.Engine.Spectra;

/// <summary>Light a lamp is compared with.</summary>
public enum ReferenceLight
{
    /// <summary>A glowing black body, below 5,000 K.</summary>
    BlackBody,
    /// <summary>A phase of daylight, from 5,000 K.</summary>
    Daylight,
}

/// <summary>How true colours look, by the test-colour method of CIE 13.3-1995 (E-46). For people, not for plants.</summary>
public sealed record ColourRendering
{
    /// <summary>Farthest a lamp may lie from its reference for the method to hold (CIE 13.3). [unitless, CIE 1960]</summary>
    public const double Tolerance = 5.4e-3;

    /// <summary>Ra, the mean of R1 to R8. [at most 100; may be negative]</summary>
    public required double General { get; init; }

    /// <summary>R1 to R14. [each at most 100; may be negative]</summary>
    public required IReadOnlyList<double> Special { get; init; }

    /// <summary>What the lamp was compared with, at the lamp's own colour temperature.</summary>
    public required ReferenceLight Reference { get; init; }

    /// <summary>Distance of lamp and reference in the CIE 1960 diagram. [unitless]</summary>
    public required double ChromaticityDifference { get; init; }

    /// <summary>False: lamp and reference differ so much in colour that the indices are to be read with caution.</summary>
    public bool WithinTolerance => ChromaticityDifference <= Tolerance;
}
