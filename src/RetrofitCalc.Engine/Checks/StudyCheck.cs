using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Everything that makes a study impossible to evaluate.</summary>
internal static class StudyCheck
{
    public static IReadOnlyList<StudyProblem> Run(Study study)
    {
        var problems = new Problems();
        SiteCheck.Run(study, problems);
        PlantCheck.Run(study, problems);
        AreaCheck.Run(study, problems);
        LineCheck.Run(study, problems);
        LightCheck.Run(study, problems);
        ProductLightCheck.Run(study, problems);
        TariffCheck.Run(study, problems);
        MeterCheck.Run(study, problems);
        OptionCheck.Run(study, problems);
        AssumptionsCheck.Run(study, problems);
        CatalogueCheck.Run(study, problems);
        return problems.Found;
    }
}
