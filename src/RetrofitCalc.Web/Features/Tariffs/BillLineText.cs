using System.Globalization;
using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Files.Typing;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Tariffs;

/// <summary>What stands on a line of a bill, in the unit of its kind: a tax is a percentage of an amount.</summary>
public static class BillLineText
{
    public static string UnitPrice(BillLine line, QuantityText text) =>
        line.Kind == BillLineKind.Tax ? text.Percent(line.UnitPrice, 2) : text.UnitPrice(line.UnitPrice, line.Unit);

    public static string Quantity(BillLine line, QuantityText text) => (line.Kind, line.Unit) switch
    {
        (BillLineKind.Tax, _) => text.Cents(Money.FromUnits(line.Quantity)),
        (_, "kVA" or "kvar") => $"{text.Number(line.Quantity, 1)}\u00A0{line.Unit}",
        _ => text.Quantity(line.Quantity, line.Unit),
    };

    /// <summary>"January", or with its days when the meter is not read at the turn of the month.</summary>
    public static string Month(MonthlyBill bill) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(bill.Month.Month) + (IsCalendarMonth(bill) ? "" : $", {Span(bill)}");

    /// <summary>The days billed, when they are not a calendar month.</summary>
    public static string Days(MonthlyBill bill) => IsCalendarMonth(bill) ? "" : $", {Span(bill)}";

    private static string Span(MonthlyBill bill) => $"{DateText.Write(bill.First)} to {DateText.Write(bill.Last)}";

    private static bool IsCalendarMonth(MonthlyBill bill) => bill.First == bill.Month.OnDayOfMonth(1) && bill.Last == bill.Month.ToDateInterval().End;
}
