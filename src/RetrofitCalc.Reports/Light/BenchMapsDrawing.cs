using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>Light over a bench now and, where known, after the change, on one scale.</summary>
/// <param name="Title">The finding.</param>
/// <param name="Alt">The same for a reader who cannot see it.</param>
/// <param name="Now">Light now, up to the edges of the bench.</param>
/// <param name="After">Light after the change when new; null where nothing is asked for, or nobody can say.</param>
/// <param name="Scale">Tints of both maps, and the least light wanted.</param>
public sealed record BenchMapsDrawing(string Title, string Alt, DrawnMap Now, DrawnMap? After, LightScale Scale)
{
    /// <summary>Under the drawing: unit, size, what the lines are.</summary>
    public required string Caption { get; init; }

    /// <summary>Ends of the scale's steps, lowest first.</summary>
    public required IReadOnlyList<string> ScaleMarks { get; init; }

    /// <summary>Length and width of the bench, to mark its corners.</summary>
    public required (string Length, string Width) Size { get; init; }

    internal static BenchMapsDrawing Of(StageLight stage, StageMaps maps, SummaryContext context)
    {
        var (text, light) = (context.Text, context.Study.Areas.First(each => each.Id == stage.Area).Light);
        var (length, width) = (light?.BenchLength?.Metres ?? 2 * maps.Now.X[^1], light?.BenchWidth?.Metres ?? 2 * maps.Now.Y[^1]);
        var wanted = Wanted(stage.Target, stage);
        var scale = new LightScale(EvenSteps.Over(maps.Scale.Low.MicromolesPerSquareMetre, maps.Scale.High.MicromolesPerSquareMetre), wanted);
        var title = $"Now {Mean(stage.Now, text)} on average{(maps.After is null ? "" : $", after the change {Mean(stage.After, text)}")}";
        return new(title, $"Two maps of light over a bench of {context.AreaName(stage.Area)}, seen from above. {title}.", DrawnMap.Of(maps.Now, length, width, text), maps.After is { } after ? DrawnMap.Of(after, length, width, text) : null, scale)
        {
            Caption = $"PPFD in {LightText.LightUnit} over one bench, seen from above; {stage.Season}, {stage.Stage}. Both maps on one scale; lines divide its steps, values stand at places."
                + (wanted is { } least ? $" Double line: {text.Number(least)}, the least wanted." : "") + $" {maps.RestsOn}",
            ScaleMarks = [.. Enumerable.Range(0, scale.Steps.Count + 1).Select(step => text.Number(scale.Steps.Low + step * scale.Steps.Step, scale.Steps.Step < 1 ? 1 : 0))],
            Size = ($"{text.Place(length)} {text.PlaceUnit()}", $"{text.Place(width)} {text.PlaceUnit()}"),
        };
    }

    /// <summary>Light while lit that the target asks for, in the lit hours of the stage.</summary>
    private static double? Wanted(LightTarget? target, StageLight stage) => target switch
    {
        { LeastDaily: { } daily } when stage.Photoperiod.Hours > 0 => daily.LightOver(stage.Photoperiod).MicromolesPerSquareMetre,
        { LeastLight: { } light } => light.MicromolesPerSquareMetre,
        _ => null,
    };

    private static string Mean(LightFigures? light, QuantityText text) => light is null ? QuantityText.NotKnown : text.Number(light.Mean.MicromolesPerSquareMetre);
}

/// <summary>A map ready to be drawn.</summary>
/// <param name="Map">Values up to where they are known. [µmol m⁻² s⁻¹]</param>
/// <param name="Length">Of the bench. [m]</param>
/// <param name="Width">Of the bench. [m]</param>
/// <param name="Marks">Values at places, with their text.</param>
public sealed record DrawnMap(LightMap Map, double Length, double Width, IReadOnlyList<(PlanePoint At, double Light, string Text)> Marks)
{
    internal static DrawnMap Of(LightMap map, double length, double width, QuantityText text)
    {
        var places = MapPoints.Of(map, null);
        return new(map.IsFine() ? map.ToEdges(length, width) : map.Smooth(), length, width,
            [.. places.Y.SelectMany(y => places.X.Select(x => new PlanePoint(x, y))).Select(at => (at, map.At(at), text.Number(map.At(at))))]);
    }
}
