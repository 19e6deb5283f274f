using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Cases;

/// <summary>
/// What if the lights of one crop area came on an hour or two earlier or later (E-31)? The whole bill is worked out anew for each shift:
/// peaks that meet no more, hours that fall under other prices, cooling and heating in other air.
/// </summary>
public static class Staggering
{
    private const double LeastWorthSaying = 1;

    /// <summary>Shifts that are tried. [min]</summary>
    public static IReadOnlyList<int> Shifts { get; } = [60, -60, 120, -120];

    /// <summary>The best shift of each area that saves something, the largest saving first.</summary>
    /// <param name="study">A study without problems.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static IReadOnlyList<StaggerOffer> Offers(Study study, CancellationToken stop = default)
    {
        var context = new StudyContext(study);
        var present = Bills.Of(context);
        var offers = new List<StaggerOffer>();
        foreach (var (index, area) in study.Areas.Index().Where(area => context.LitAreas.Any(lit => lit.Area.Id == area.Item.Id)))
            foreach (var minutes in Shifts.Where(minutes => StaggeredStudy.CanMove(area, minutes) && StaggeredStudy.CanMove(StageChanges.Applied(area, Chosen(study)?.Stages ?? []), minutes)))
            {
                stop.ThrowIfCancellationRequested();
                offers.Add(Offer(area.Id, minutes, present, Bills.Of(StaggeredStudy.Of(context, index, minutes))));
            }
        return [.. offers.Where(offer => offer.Saving.Units >= LeastWorthSaying).GroupBy(offer => offer.Area)
            .Select(area => area.MaxBy(offer => offer.Saving)!).OrderByDescending(offer => offer.Saving)];
    }

    /// <summary>The area with every lit day moved, its length kept.</summary>
    /// <param name="area">The area.</param>
    /// <param name="minutes">Later, or earlier when negative. [min]</param>
    public static Area Moved(Area area, int minutes) => StaggeredStudy.Moved(area, minutes);

    private static RetrofitOption? Chosen(Study study) =>
        study.Options.FirstOrDefault(option => option.Id == study.ChosenOption) ?? (study.Options.Count > 0 ? study.Options[0] : null);

    private static StaggerOffer Offer(string area, int minutes, Bills present, Bills moved) =>
        new(area, minutes, present.Now.YearlyCost - moved.Now.YearlyCost, LargestDrop(present.Now, moved.Now))
        {
            Demand = DemandOf(present.Now) - DemandOf(moved.Now),
            SavingAfter = present.After is { } after ? after.YearlyCost - moved.After!.YearlyCost : null,
        };

    private static Money DemandOf(CaseBills bills) => bills.Steady.SelectMany(bill => bill.Lines)
        .Where(line => line.Kind is BillLineKind.Demand or BillLineKind.Reactive).Aggregate(Money.Zero, (sum, line) => sum + line.Amount);

    private static PeakDrop? LargestDrop(CaseBills present, CaseBills moved)
    {
        var later = moved.Metered.Peaks.ToDictionary(peak => (peak.Month, peak.Charge), peak => peak.Total);
        return present.Metered.Peaks.Select(peak => new PeakDrop(peak.Total - later[(peak.Month, peak.Charge)], peak.Month, peak.Charge)).MaxBy(drop => drop.Power);
    }

    /// <summary>Bills with the present lighting, and with the chosen option in place.</summary>
    private sealed record Bills(CaseBills Now, CaseBills? After)
    {
        public static Bills Of(StudyContext context)
        {
            var now = new CasePlan(context, CaseEvaluation.Now, new Dictionary<string, Measure>(), null);
            return new(Case(now), Chosen(context.Study) is { } chosen ? Case(CasePlan.After(context, chosen)) : null);
        }

        private static CaseBills Case(CasePlan plan) => plan.Sums(Perturbation.None).Bills;
    }
}
