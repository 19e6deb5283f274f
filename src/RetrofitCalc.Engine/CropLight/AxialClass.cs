namespace RetrofitCalc.Engine.CropLight;

/// <summary>How the intensity of a line of light falls off towards its ends, by α, the angle from the plane across the line.</summary>
public enum AxialClass
{
    /// <summary>cos α: a diffuse line.</summary>
    A,

    /// <summary>½ (cos α + cos² α).</summary>
    B,

    /// <summary>cos² α.</summary>
    C,

    /// <summary>cos³ α.</summary>
    D,

    /// <summary>cos⁴ α.</summary>
    E,
}
