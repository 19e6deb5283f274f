using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Tariffs.Demands;

/// <summary>Changes of one demand charge: pure functions of the study.</summary>
public static class DemandEdits
{
    public const int UsualRatchetMonths = 11;

    public static string Path(int charge) => $"Tariff.Demand[{charge}]";

    public static Study Block(Study study, int charge, int block, Func<DemandBlock, DemandBlock> change) =>
        TariffEdits.Demand(study, charge, c => c with { Blocks = c.Blocks.At(block, change) });

    /// <summary>One more block below the price of the rest, at that price until another is typed.</summary>
    public static DemandCharge AddBlock(DemandCharge charge)
    {
        var below = charge.Blocks.Count == 0 ? 0 : charge.Blocks[^1].UpTo.Kilowatts;
        return charge with { Blocks = [.. charge.Blocks, new(Power.FromKilowatts(below + 50), charge.Price)] };
    }

    public static EditState RemoveBlock(EditState state, int charge, int block) => new(
        TariffEdits.Demand(state.Study, charge, c => c with { Blocks = c.Blocks.WithoutAt(block) }),
        state.Drafts.AfterDeleting($"{Path(charge)}.Blocks", block));

    /// <summary>A blank share takes the ratchet away; a first one starts with the eleven months before.</summary>
    public static DemandCharge WithRatchet(DemandCharge charge, double? share) =>
        charge with { Ratchet = share is { } s ? (charge.Ratchet ?? new Ratchet(s, UsualRatchetMonths)) with { Share = s } : null };

    public static DemandCharge WithRounding(DemandCharge charge, double? kilowatts) => charge with
    {
        Rounding = kilowatts is { } step ? (charge.Rounding ?? new DemandRounding(Power.Zero)) with { Step = Power.FromKilowatts(step) } : null,
    };

    /// <summary>Whether it holds anything that stands in the fold.</summary>
    public static bool HasDetails(DemandCharge charge) =>
        charge.Blocks.Count > 0 || charge.Minimum is not null || charge.Rounding is not null || charge.Ratchet is { } r && HasDetails(r);

    private static bool HasDetails(Ratchet ratchet) => ratchet.Months != UsualRatchetMonths || ratchet.PeakMonths.Count > 0 || ratchet.AcrossCharges;
}
