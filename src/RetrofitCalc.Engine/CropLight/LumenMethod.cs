using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Mean light of an area from what its lamps send out.</summary>
public static class LumenMethod
{
    /// <summary>E = Φ · CU · LLF / A. [µmol m⁻² s⁻¹]</summary>
    /// <param name="output">All lamps new. [µmol/s]</param>
    /// <param name="utilisation">Share that reaches the area, reflections included. [unitless, 0–2]</param>
    /// <param name="lightLoss">Share left after wear and dirt. [unitless, 0–1]</param>
    /// <param name="squareMetres">The area. [m², above 0]</param>
    /// <exception cref="ArgumentOutOfRangeException">A share or area outside.</exception>
    public static PhotonFluxDensity Mean(PhotonFlux output, double utilisation, double lightLoss, double squareMetres) =>
        PhotonFluxDensity.FromMicromolesPerSquareMetre(output.MicromolesPerSecond * Require.InRange(utilisation, 0, 2) * Require.InRange(lightLoss, 0, 1)
            / Require.InRange(squareMetres, double.Epsilon, double.MaxValue));
}
