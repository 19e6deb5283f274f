using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Cases;

/// <summary>The meter with the present lighting on it under one set of inputs; all cases of a study share it.</summary>
internal sealed class PresentMeter
{
    private readonly StudyContext _context;
    private readonly Dictionary<double, IReadOnlyList<MonthlyBill>> _restBills = [];

    public PresentMeter(StudyContext context, SlotLoads present, Perturbation perturbation)
    {
        _context = context;
        Lighting = new(context, present, perturbation);
        Rest = new(context, Lighting);
        Metered = MeteredYear.Of(context.Load, Rest, Lighting);
    }

    /// <summary>The present lighting.</summary>
    public CaseLoad Lighting { get; }

    /// <summary>The meter without it.</summary>
    public RestOfMeter Rest { get; }

    /// <summary>What the meter shows now: a ratchet remembers these months in the first year after a change.</summary>
    public MeteredYear Metered { get; }

    /// <summary>Bills of the rest of the meter alone.</summary>
    /// <param name="terms">Terms of a steady year.</param>
    public IReadOnlyList<MonthlyBill> RestBills(BillTerms terms)
    {
        if (!_restBills.TryGetValue(terms.PriceFactor, out var bills))
            _restBills[terms.PriceFactor] = bills = BillCalculation.Year(_context.Study.Tariff, MeteredYear.Of(_context.Load, Rest, null).Months, terms);
        return bills;
    }
}
