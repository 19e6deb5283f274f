using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

internal static class AssumptionsCheck
{
    public static void Run(Study study, Problems problems)
    {
        var a = study.Assumptions;
        problems.InRange("Assumptions.Start", "Year of the start", a.Start.Year, 1990, 2100);
        problems.InRange("Assumptions.StudyYears", "Length of the comparison (years)", a.StudyYears, 1, 40);
        problems.InRange("Assumptions.DiscountRate", "Discount rate", a.DiscountRate, -0.5, 1);
        problems.InRange("Assumptions.EnergyEscalation", "Rise of energy prices", a.EnergyEscalation, -0.5, 1);
        problems.InRange("Assumptions.CostEscalation", "Rise of parts and labour", a.CostEscalation, -0.5, 1);
        problems.InRange("Assumptions.GroupRelampShare", "Share of rated life for group relamping", a.GroupRelampShare, 0.3, 1);
        problems.InRange("Assumptions.LightRelampShare", "Share of the light when new for relamping by light", a.LightRelampShare, 0.5, 0.98);
        problems.NotNegative("Assumptions.MaintenanceRate", "Maintenance rate", a.MaintenanceRate.Units);
        problems.NotNegative("Assumptions.ElectricianRate", "Electrician's rate", a.ElectricianRate.Units);
        problems.NotNegative("Assumptions.SpotLampTime", "Time to change one lamp (hours)", a.SpotLampTime.Hours);
        problems.NotNegative("Assumptions.GroupLampTime", "Time to change one lamp of a group (hours)", a.GroupLampTime.Hours);
        problems.NotNegative("Assumptions.BallastTime", "Time to change one ballast (hours)", a.BallastTime.Hours);
        problems.InRange("Assumptions.WattsUncertainty", "Uncertainty of watts", a.WattsUncertainty, 0, 0.5);
        problems.InRange("Assumptions.PriceUncertainty", "Uncertainty of the electricity price", a.PriceUncertainty, 0, 0.9);
        problems.InRange("Assumptions.HoursUncertainty", "Uncertainty of hours", a.HoursUncertainty, 0, 0.9);
        problems.InRange("Assumptions.FirstCostUncertainty", "Uncertainty of first cost", a.FirstCostUncertainty, 0, 0.9);
        problems.InRange("Assumptions.LifeUncertainty", "Uncertainty of lives", a.LifeUncertainty, 0, 0.9);
    }
}
