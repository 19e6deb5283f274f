using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

internal static class OptionCheck
{
    public static void Run(Study study, Problems problems)
    {
        problems.Unique("Options", "Option", study.Options.Select(option => option.Id));
        if (study.ChosenOption is { } chosen && study.Options.All(option => option.Id != chosen))
            problems.Add("ChosenOption", $"The option asked for, \"{chosen}\", is not among the study's options.");
        var lines = study.Lines.Select(line => line.Id).ToHashSet();
        foreach (var (index, option) in study.Options.Index())
        {
            CheckCosts(option.Costs, $"Options[{index}].Costs", problems);
            var named = new HashSet<string>();
            foreach (var (number, measure) in option.Measures.Index())
            {
                var path = $"Options[{index}].Measures[{number}]";
                if (!lines.Contains(measure.Line))
                    problems.Add($"{path}.Line", $"Option \"{option.Name}\" changes line \"{measure.Line}\", which the survey does not have.");
                else if (!named.Add(measure.Line))
                    problems.Add($"{path}.Line", $"Option \"{option.Name}\" changes line \"{measure.Line}\" twice; name it once.");
                CheckMeasure(measure, path, problems);
            }
            StageChangeCheck.Run(study, option, $"Options[{index}].Stages", problems);
        }
    }

    private static void CheckMeasure(LineMeasure measure, string path, Problems problems)
    {
        if (measure.Measure is DirectWire wire)
            problems.InRange($"{path}.Measure.TubesPerLuminaire", "Tubes in one luminaire", wire.TubesPerLuminaire, 1, 100);
        if (measure.Measure is ReplaceLuminaire replace)
            problems.InRange($"{path}.Measure.PerExisting", "New luminaires for each old one", replace.PerExisting, 0.001, 100);
        problems.InRange($"{path}.RowSpread", "Distance between rows after the change, by that of now", measure.RowSpread, 0.2, 5);
        problems.InRange($"{path}.Height", "Height of the lamps over the crop after the change (metres)", measure.Height?.Metres, 0.02, LightCheck.HighestMetres);
        problems.NotNegative($"{path}.PartsPerLuminaire", "Price of parts", measure.PartsPerLuminaire?.Units);
        problems.NotNegative($"{path}.LabourPerLuminaire", "Labour (hours)", measure.LabourPerLuminaire?.Hours);
        problems.NotNegative($"{path}.IncentivePerLuminaire", "Incentive", measure.IncentivePerLuminaire.Units);
    }

    private static void CheckCosts(OptionCosts costs, string path, Problems problems)
    {
        problems.NotNegative($"{path}.ElectricianRate", "Electrician's rate", costs.ElectricianRate.Units);
        problems.NotNegative($"{path}.FixedSum", "Fixed sum", costs.FixedSum.Units);
        problems.NotNegative($"{path}.DisposalPerLamp", "Recycling of one lamp", costs.DisposalPerLamp.Units);
        problems.NotNegative($"{path}.DisposalPerBallast", "Recycling of one ballast", costs.DisposalPerBallast.Units);
        problems.NotNegative($"{path}.IncentivePerKilowattHour", "Incentive for a kWh saved", costs.IncentivePerKilowattHour.PerKilowattHour);
        problems.InRange($"{path}.Contingency", "Contingency", costs.Contingency, 0, 1);
        problems.InRange($"{path}.IncentiveCap", "Cap of the incentive", costs.IncentiveCap, 0, 1);
    }
}
