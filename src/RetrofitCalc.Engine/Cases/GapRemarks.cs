using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Cases;

/// <summary>What the figures leave out, or count whole, because the study or the catalogue does not say.</summary>
internal static class GapRemarks
{
    /// <summary>The remarks of a study; none when nothing is missing.</summary>
    /// <param name="context">The study's context.</param>
    public static IEnumerable<string> Of(StudyContext context) => [.. OfSteps(context), .. OfStages(context), .. OfParts(context)];

    private static IEnumerable<string> OfSteps(StudyContext context) =>
        from kind in context.Lines.Select(line => (line.Model, line.Area)).Distinct()
        let setUp = kind.Model.Fitting.SetUp
        from step in context.LitAreas[kind.Area].Modes.Select(mode => mode.Step).OfType<string>().Distinct()
        where setUp.Steps.All(known => known.Name != step)
        group setUp.Name by (Area: context.LitAreas[kind.Area].Area.Name, Step: step) into missing
        select $"The schedule of {missing.Key.Area} asks for the step \"{missing.Key.Step}\", which {Names(missing)} does not have: counted with all lamps lit.";

    private static IEnumerable<string> OfStages(StudyContext context) =>
        from area in context.Study.Areas
        where area.GrowsCrop
        from day in context.Year.Days
        let at = SeasonCalendar.At(area.Seasons, day)
        where at is { Season: not null, Stage: null }
        group day by (Area: area.Name, Season: at.Season!.Name) into dark
        select $"No stage is planned on {dark.Count()} days of {dark.Key.Season} in {dark.Key.Area}: they count as dark.";

    private static IEnumerable<string> OfParts(StudyContext context)
    {
        if (context.Study.Options.Count == 0)
            yield break;
        var parts = PresentParts(context).Concat(NewParts(context)).Distinct().ToList();
        var ageless = parts.Where(part => !part.LifeKnown).Select(part => part.Name).ToList();
        if (ageless.Count > 0)
            yield return $"No life is known for {Names(ageless)}: their replacements are not counted, which makes them look cheaper than they are.";
        var unpriced = parts.Where(part => part is { LifeKnown: true, PriceKnown: false }).Select(part => part.Name).ToList();
        if (unpriced.Count > 0)
            yield return $"No price is known for {Names(unpriced)}: their replacements count labour and recycling alone.";
    }

    private static IEnumerable<Part> PresentParts(StudyContext context)
    {
        foreach (var fitting in context.Lines.Select(line => line.Model).Distinct().Select(model => model.Fitting))
        {
            yield return new(fitting.Lamp.Name, fitting.Lamp.Lives.Count > 0, fitting.Lamp.Price is not null);
            yield return new($"the ballasts of {fitting.SetUp.Name}",
                fitting.Ballasts.Any(ballast => ballast?.RatedLife is not null), FirstCosts.BallastsPrice(fitting) is not null);
        }
    }

    private static IEnumerable<Part> NewParts(StudyContext context) =>
        from measure in context.Study.Options.SelectMany(option => option.Measures).Select(line => line.Measure).Distinct()
        let product = measure switch
        {
            DirectWire wire => context.Tubes.GetValueOrDefault(wire.Tube),
            ReplaceLuminaire replace => context.Luminaires.GetValueOrDefault(replace.Luminaire),
            _ => (Replacement?)null,
        }
        where product is not null
        select new Part(product.Name, product.RatedLife is not null, product.Price is not null);

    private static string Names(IEnumerable<string> names) => string.Join(", ", names.Distinct());

    private readonly record struct Part(string Name, bool LifeKnown, bool PriceKnown);
}
