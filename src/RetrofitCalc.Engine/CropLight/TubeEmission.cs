namespace RetrofitCalc.Engine.CropLight;

/// <summary>How a tube sends out its light.</summary>
public enum TubeEmission
{
    /// <summary>A flat diffuse strip that faces down, as a tube with a diffuser on one side.</summary>
    DownFacingStrip,

    /// <summary>A round diffuse tube without a reflector: the same all around its axis.</summary>
    BareTube,
}
