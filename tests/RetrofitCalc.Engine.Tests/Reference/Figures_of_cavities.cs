using System.Text.Json;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Figures_of_cavities
{
    [CanopyAnswer("cavity", "cavity_ratio")]
    private static Answers Ratio(JsonElement i) => Box(i.Number("L"), i.Number("W"), i.Number("h"), default).Ratio;

    [CanopyAnswer("cavity", "effective_reflectance")]
    private static Answers Effective(JsonElement i) =>
        100 * Square(i.Number("cavity_ratio"), new(i.Number("base_pct") / 100, i.Number("wall_pct") / 100, 0)).EffectiveReflectance;

    [CanopyAnswer("cavity", "floor_ceiling_factor")]
    private static Answers Opposite(JsonElement i) => Square(i.Number("RCR"), default).TopToBase;

    [CanopyAnswer("cavity", "cu_three_surface")]
    private static Answers Utilisation(JsonElement i)
    {
        var box = Square(i.Number("RCR"), new(i.Number("rho_f"), i.Number("rho_w"), i.Number("rho_c")));
        double down = i.Number("phi_down"), direct = i.Number("direct_ratio");
        return box.Spread(new(down * direct, down * (1 - direct), i.Number("phi_up"))).Base;
    }

    [CanopyAnswer("cavity", "lumen_method")]
    private static Answers Installed(JsonElement i) => (LuminousFlux.FromLumens(i.Number("lumens")) * i.Number("lamps_each") * i.Number("luminaires")).Lumens;

    [CanopyAnswer("cavity", "avg_ppfd_lumen_method")]
    private static Answers Mean(JsonElement i) => LumenMethod.Mean(
        PhotonFlux.FromMicromolesPerSecond(i.Number("ppf_total")), i.Number("cu"), i.Number("llf"), i.Number("area")).MicromolesPerSquareMetre;

    /// <summary>CR = 10 h/L where length and width are alike.</summary>
    private static ReflectingCavity Square(double ratio, CavityShare reflectance) => Box(10, 10, ratio, reflectance);

    private static ReflectingCavity Box(double length, double width, double height, CavityShare reflectance) =>
        new(Length.FromMetres(length), Length.FromMetres(width), Length.FromMetres(height), reflectance);
}
