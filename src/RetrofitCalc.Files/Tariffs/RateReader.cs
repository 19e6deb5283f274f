using System.Text.Json;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Tariffs;

/// <summary>Turns one rate record into a tariff and tells what became of its fields.</summary>
internal static class RateReader
{
    public static RateReading Read(RateRecord record)
    {
        var log = new FieldLog(record);
        using var document = JsonDocument.Parse(record.File[record.Bytes]);
        var root = new RecordNode(document.RootElement, "$", log);
        var tariff = Read(root);
        OtherFields.Tell(root);
        var problems = log.Problems();
        return new(problems.Count > 0 ? new(null, problems) : new(tariff, Check(tariff)), log.Fields());
    }

    private static Tariff Read(RecordNode root)
    {
        var demand = DemandFields.Read(root);
        var energy = EnergyFields.Read(root, demand);
        return IdentityFields.Read(root) with
        {
            Fixed = FixedFields.Read(root),
            MinimumBill = FixedFields.Minimum(root),
            Energy = energy,
            Adjustments = EnergyFields.Adjustments(root),
            Demand = EnergyFields.NeedsDemand(energy) && demand.Count == 0 ? [DemandFields.Unpriced(root)] : demand,
            PowerFactor = PowerFactorFields.Read(root, demand),
        };
    }

    /// <summary>What the engine finds wrong has no place of its own in the record.</summary>
    private static IReadOnlyList<FileProblem> Check(Tariff tariff) =>
        [.. StudyEvaluation.Check(tariff).Select(problem => new FileProblem(null, null, "", problem.Message))];
}
