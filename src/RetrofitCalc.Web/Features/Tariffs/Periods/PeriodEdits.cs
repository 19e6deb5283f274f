using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Tariffs.Periods;

/// <summary>Changes of a period of energy prices, in all charges that make it up: pure functions of the study.</summary>
public static class PeriodEdits
{
    /// <summary>Where the price of a period stands: in its first charge.</summary>
    public static string Path(EnergyPeriod period) => $"Tariff.Energy[{period.Charges[0]}]";

    public static Study Change(Study study, EnergyPeriod period, Func<EnergyCharge, EnergyCharge> change) =>
        period.Charges.Aggregate(study, (s, charge) => TariffEdits.Energy(s, charge, change));

    public static Study Block(Study study, EnergyPeriod period, int block, Func<EnergyBlock, EnergyBlock> change) =>
        Change(study, period, c => c with { Blocks = c.Blocks.At(block, change) });

    public static Study Rename(Study study, EnergyPeriod period, string name) =>
        TariffEdits.With(Change(study, period, c => c with { Name = name }), t => ChargeNames.Renamed(t, period.Price.Name, name));

    /// <summary>What lay above the last block is split; both parts keep its price until another is typed.</summary>
    public static EnergyCharge AddBlock(EnergyCharge charge)
    {
        var last = charge.Blocks[^1];
        var end = charge.Blocks.Count > 1 ? charge.Blocks[^2].UpTo!.Value.KilowattHours * 2 : FirstEnd(charge.BlockUnit);
        return charge with { Blocks = [.. charge.Blocks.SkipLast(1), last with { UpTo = Energy.FromKilowattHours(end) }, last] };
    }

    public static EditState RemoveBlock(EditState state, EnergyPeriod period, int block) => new(
        Change(state.Study, period, c => c with { Blocks = Open(c.Blocks.WithoutAt(block)) }),
        state.Drafts.AfterDeleting(Path(period) + ".Blocks", block));

    /// <summary>The price of a block changes places with the one above it; the ends of the blocks stay where they are.</summary>
    public static EditState PriceUp(EditState state, EnergyPeriod period, int block)
    {
        var (here, above) = ($"{Path(period)}.Blocks[{block}]", $"{Path(period)}.Blocks[{block - 1}]");
        var study = Change(state.Study, period, c => c with
        {
            Blocks = c.Blocks.At(block, b => b with { Price = c.Blocks[block - 1].Price }).At(block - 1, b => b with { Price = c.Blocks[block].Price }),
        });
        return new(study, [.. state.Drafts.Select(d => (d.Field, d.Line) switch
        {
            ("Price", var line) when line == here => d with { Line = above },
            ("Price", var line) when line == above => d with { Line = here },
            _ => d,
        })]);
    }

    /// <summary>Takes a period out; its hours are then without a price.</summary>
    public static EditState Remove(EditState state, EnergyPeriod period) =>
        period.Charges.OrderDescending().Aggregate(state, (s, charge) => TariffEdits.Remove(s, "Energy", charge, t => t with { Energy = t.Energy.WithoutAt(charge) }));

    private static double FirstEnd(BlockUnit unit) => unit switch { BlockUnit.PerKilowatt => 200, BlockUnit.PerDay => 30, _ => 1000 };

    private static IReadOnlyList<EnergyBlock> Open(IReadOnlyList<EnergyBlock> blocks) => blocks.At(blocks.Count - 1, b => b with { UpTo = null });
}
