namespace RetrofitCalc.Engine.CropLight;

/// <summary>How the angles of a distribution lie around the luminaire (CIE 121, IES LM-63).</summary>
public enum PhotometricType
{
    /// <summary>Planes turn about the upright axis: vertical angle 0 straight down, 180 straight up. Indoor luminaires.</summary>
    C,

    /// <summary>Planes turn about a level axis along the luminaire; the horizontal angle is counted within a plane. Floodlights.</summary>
    B,

    /// <summary>Planes turn about the axis upright when the lamp is aimed level; the vertical angle is counted within a plane. Headlamps and signals.</summary>
    A,
}
