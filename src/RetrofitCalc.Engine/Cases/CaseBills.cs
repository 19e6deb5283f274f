using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Cases;

/// <summary>Bills of the whole meter in one case.</summary>
internal sealed class CaseBills
{
    /// <summary>Bills a case.</summary>
    /// <param name="context">The study's context.</param>
    /// <param name="lighting">Lighting and plant of the case.</param>
    /// <param name="perturbation">Factors on uncertain inputs.</param>
    public CaseBills(StudyContext context, CaseLoad lighting, Perturbation perturbation)
    {
        var (tariff, present) = (context.Study.Tariff, context.PresentUnder(perturbation));
        var terms = new BillTerms(perturbation.ElectricityPrice, context.Study.Site.PowerFactor);
        FuelSaved = lighting.FuelSaved;
        var unchanged = ReferenceEquals(lighting, present.Lighting);
        Metered = unchanged ? present.Metered : MeteredYear.Of(context.Load, present.Rest, lighting);
        Steady = BillCalculation.Year(tariff, Metered.Months, terms);
        Rest = present.RestBills(terms);
        FirstYear = !unchanged && tariff.Demand.Any(charge => charge.Ratchet is not null)
            ? FirstYearOf(context, Metered.Months, terms with { Before = present.Metered.Months })
            : Steady;
    }

    /// <summary>What the meter shows.</summary>
    public MeteredYear Metered { get; }

    /// <summary>Fuel that the lights' heat makes unnecessary in a year.</summary>
    public Money FuelSaved { get; }

    /// <summary>A steady year's bills less the fuel saved: what two cases differ by.</summary>
    public Money YearlyCost => Total(Steady) - FuelSaved;

    /// <summary>Bills of a steady year.</summary>
    public IReadOnlyList<MonthlyBill> Steady { get; }

    /// <summary>Bills of the first year after the present lighting.</summary>
    public IReadOnlyList<MonthlyBill> FirstYear { get; }

    /// <summary>Bills of a steady year without lighting and plant.</summary>
    public IReadOnlyList<MonthlyBill> Rest { get; }

    /// <summary>What a year of bills comes to.</summary>
    /// <param name="bills">The bills.</param>
    public static Money Total(IReadOnlyList<MonthlyBill> bills) => bills.Aggregate(Money.Zero, (sum, month) => sum + month.Total);

    /// <summary>The first year begins with the billing month that holds the start; its bills come back in the order of the year looked at.</summary>
    private static IReadOnlyList<MonthlyBill> FirstYearOf(StudyContext context, IReadOnlyList<MeteredMonth> months, BillTerms terms)
    {
        var first = context.Year.MonthOf(new(context.Study.Assumptions.Start.Month, context.Study.Assumptions.Start.Day));
        var bills = BillCalculation.Year(context.Study.Tariff, From(months, first), terms with { Before = From(terms.Before!, first) });
        return From(bills, months.Count - first);
    }

    private static T[] From<T>(IReadOnlyList<T> months, int first) => [.. months.Skip(first), .. months.Take(first)];
}
