using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Luminaires;

/// <summary>Chooses the best evidence for input power: reading, tested combination, computed from parts, nameplate.</summary>
public static class InputEvidence
{
    /// <summary>Best evidence for an existing line: a reading at the line, else the catalogue's; null when there is none.</summary>
    /// <param name="line">The survey line.</param>
    /// <param name="model">Its set-up.</param>
    public static InputPower? Of(SurveyLine line, SetUpModel model) =>
        line.Reading is { } reading
            ? new(reading.Power, model.Loss(reading.Power), EvidenceKind.Measured, new(EvidenceKind.Measured, $"Read at the luminaire, {reading.Date.Year}-{reading.Date.Month:00}-{reading.Date.Day:00}"))
            : model.Full;

    /// <summary>Best evidence in the catalogue; null when there is none.</summary>
    /// <param name="model">The set-up.</param>
    public static InputPower? Best(SetUpModel model)
    {
        var setUp = model.Fitting.SetUp;
        if (setUp.TestedPower is { } tested)
            return new(tested, model.Loss(tested), EvidenceKind.Tested, setUp.SourceOf(nameof(setUp.TestedPower)));
        if (model.Computed is { } computed)
            return new(computed, model.Loss(computed), EvidenceKind.Computed, SourceOfParts(model.Fitting));
        return setUp.NameplatePower is { } nameplate
            ? new(nameplate, model.Loss(nameplate), EvidenceKind.Nameplate, setUp.SourceOf(nameof(setUp.NameplatePower)))
            : null;
    }

    /// <summary>Rated line power of what replaces lamps; its driver is inside, so nothing is lost in a ballast.</summary>
    /// <param name="product">The tube or luminaire.</param>
    /// <param name="perLuminaire">How many of it make one luminaire. [count]</param>
    public static InputPower OfReplacement(Replacement product, int perLuminaire)
    {
        var source = product.SourceOf(nameof(product.LinePower));
        return new(product.LinePower * perLuminaire, Power.Zero, source.Kind, source);
    }

    private static Provenance SourceOfParts(BallastedFitting fitting)
    {
        Provenance[] parts =
        [
            fitting.Lamp.SourceOf(nameof(Lamp.ArcPower)),
            .. fitting.Ballasts.SelectMany(b => new[] { b!.SourceOf(nameof(Ballast.BallastFactor)), b.SourceOf(nameof(Ballast.LuminousEfficiency)) }),
        ];
        return new(EvidenceKind.Computed,
            "Computed from arc power, ballast factor and ballast efficiency: " + string.Join("; ", parts.Select(p => p.Source).Where(s => s.Length > 0).Distinct()),
            parts.Any(p => p.FromMemory));
    }
}
