using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Options;

/// <summary>First drafts of an option: one kind of measure on every line it can be done on.</summary>
public static class OptionTemplates
{
    public static IReadOnlyList<(string Name, MeasureKind Kind)> All { get; } =
    [
        ("Direct-wire everywhere", MeasureKind.DirectWire), ("Renew like for like", MeasureKind.Renew),
        ("New luminaires", MeasureKind.NewLuminaire), ("Keep", MeasureKind.Keep),
    ];

    public static RetrofitOption Make(Study study, ProductFit fit, string name, MeasureKind kind) => new()
    {
        Id = OptionEdits.FreeId(study),
        Name = OptionEdits.FreeName(study, name),
        Measures = [.. study.Lines.Select(line => new LineMeasure(line.Id, For(study, fit, line, kind)))],
    };

    /// <summary>The measure with the product nearest in light to what hangs there now; kept where nothing in the catalogue fits.</summary>
    public static Measure For(Study study, ProductFit fit, SurveyLine line, MeasureKind kind) => kind switch
    {
        MeasureKind.Renew => new RenewLikeForLike(),
        MeasureKind.DirectWire when Nearest(fit.TubesFor(line.Id), LampFlux(study, line)) is { } tube => new DirectWire(tube.Id),
        MeasureKind.NewLuminaire when Nearest(OfSameLength(study, fit, line), LampFlux(study, line) * LampCount(study, line)) is { } luminaire => new ReplaceLuminaire(luminaire.Id),
        _ => new KeepAsIs(),
    };

    /// <summary>Nearest in lumens; where lumens are not known, the one that draws most, which loses least light.</summary>
    private static T? Nearest<T>(IReadOnlyList<T> products, double? lumens) where T : Replacement => products
        .OrderBy(p => lumens is { } wanted && p.Flux is { } flux ? Math.Abs(flux.Lumens - wanted) : double.MaxValue)
        .ThenByDescending(p => p.LinePower).FirstOrDefault();

    private static IReadOnlyList<ReadyWiredLuminaire> OfSameLength(Study study, ProductFit fit, SurveyLine line)
    {
        var length = LampOf(study, line)?.Length;
        return [.. fit.LuminairesFor(line.Id).Where(l => length is not { } lamp || Math.Abs(l.Length.Metres - lamp.Metres) < 0.1)];
    }

    private static double? LampFlux(Study study, SurveyLine line) => LampOf(study, line)?.InitialFlux?.Lumens;

    private static int? LampCount(Study study, SurveyLine line) => SetUpOf(study, line)?.LampCount;

    private static SetUp? SetUpOf(Study study, SurveyLine line) => study.Catalogue.SetUps.FirstOrDefault(s => s.Id == line.SetUp);

    private static Lamp? LampOf(Study study, SurveyLine line) =>
        SetUpOf(study, line) is { } setUp ? study.Catalogue.Lamps.FirstOrDefault(l => l.Id == setUp.Lamp) : null;
}
