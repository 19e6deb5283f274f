using MathNet.Numerics.RootFinding;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Economics;

/// <summary>When a level payment falls due.</summary>
public enum PaymentDue
{
    /// <summary>At the end of each period.</summary>
    End,
    /// <summary>At the beginning of each period.</summary>
    Beginning,
}

/// <summary>Loans and savings with one payment each period: present value, payment and future value balance to zero.</summary>
/// <remarks>
/// PV·(1+r)^n + PMT·(1+r·w)·((1+r)^n − 1)/r + FV = 0, with w = 1 for payments at the beginning. Money received is positive, paid
/// is negative. OASIS OpenFormula as cited in the numpy-financial source; its text was not read.
/// </remarks>
public static class LevelPayments
{
    /// <summary>Payment of each period.</summary>
    /// <param name="rate">Rate of one period. [unitless, above −1]</param>
    /// <param name="periods">Periods. [count]</param>
    /// <param name="present">Amount at the start.</param>
    /// <param name="future">Amount left at the end.</param>
    /// <param name="due">When payments fall due.</param>
    public static Money Payment(double rate, double periods, Money present, Money future = default, PaymentDue due = PaymentDue.End) =>
        -(present * Growth(rate, periods) + future) / Annuity(rate, periods, due);

    /// <summary>Amount at the end.</summary>
    /// <param name="rate">Rate of one period. [unitless, above −1]</param>
    /// <param name="periods">Periods. [count]</param>
    /// <param name="payment">Payment of each period.</param>
    /// <param name="present">Amount at the start.</param>
    /// <param name="due">When payments fall due.</param>
    public static Money Future(double rate, double periods, Money payment, Money present, PaymentDue due = PaymentDue.End) =>
        -(present * Growth(rate, periods) + payment * Annuity(rate, periods, due));

    /// <summary>Amount at the start.</summary>
    /// <param name="rate">Rate of one period. [unitless, above −1]</param>
    /// <param name="periods">Periods. [count]</param>
    /// <param name="payment">Payment of each period.</param>
    /// <param name="future">Amount left at the end.</param>
    /// <param name="due">When payments fall due.</param>
    public static Money Present(double rate, double periods, Money payment, Money future = default, PaymentDue due = PaymentDue.End) =>
        -(future + payment * Annuity(rate, periods, due)) / Growth(rate, periods);

    /// <summary>Periods until the balance reaches <paramref name="future"/>; negative when amounts of one sign look back in time.</summary>
    /// <param name="rate">Rate of one period. [unitless, above −1]</param>
    /// <param name="payment">Payment of each period.</param>
    /// <param name="present">Amount at the start.</param>
    /// <param name="future">Amount left at the end.</param>
    /// <returns>Periods; not a number when the balance never gets there.</returns>
    public static double Periods(double rate, Money payment, Money present, Money future = default) => rate == 0
        ? -((present + future) / payment)
        : Math.Log((payment - future * rate) / (payment + present * rate)) / Math.Log(1 + rate);

    /// <summary>Rate of one period that balances the amounts; null when none lies between −99.9 % and 1000 %.</summary>
    /// <param name="periods">Periods. [count]</param>
    /// <param name="payment">Payment of each period.</param>
    /// <param name="present">Amount at the start.</param>
    /// <param name="future">Amount at the end.</param>
    public static double? Rate(double periods, Money payment, Money present, Money future) =>
        Brent.TryFindRoot(rate => (Future(rate, periods, payment, present) - future).Units, -0.999, 10, 1e-12, 200, out var root) ? root : null;

    /// <summary>Interest within one payment.</summary>
    /// <param name="rate">Rate of one period. [unitless, above −1]</param>
    /// <param name="period">Which payment. [count from 1]</param>
    /// <param name="periods">Periods. [count]</param>
    /// <param name="loan">Amounts of the loan.</param>
    public static Money InterestPart(double rate, int period, int periods, Loan loan)
    {
        if (loan.Due == PaymentDue.Beginning && period == 1) return Money.Zero;
        var payment = Payment(rate, periods, loan.Present, loan.Future, loan.Due);
        var balance = Future(rate, period - 1, payment, loan.Present, loan.Due);
        return balance * (loan.Due == PaymentDue.Beginning ? rate / (1 + rate) : rate);
    }

    /// <summary>Repayment within one payment.</summary>
    /// <param name="rate">Rate of one period. [unitless, above −1]</param>
    /// <param name="period">Which payment. [count from 1]</param>
    /// <param name="periods">Periods. [count]</param>
    /// <param name="loan">Amounts of the loan.</param>
    public static Money PrincipalPart(double rate, int period, int periods, Loan loan) =>
        Payment(rate, periods, loan.Present, loan.Future, loan.Due) - InterestPart(rate, period, periods, loan);

    private static double Growth(double rate, double periods) => Math.Pow(1 + rate, periods);

    private static double Annuity(double rate, double periods, PaymentDue due) => rate == 0
        ? periods
        : (due == PaymentDue.Beginning ? 1 + rate : 1) * (Growth(rate, periods) - 1) / rate;
}

/// <summary>Amounts of a loan.</summary>
/// <param name="Present">Amount received at the start.</param>
/// <param name="Future">Amount left at the end.</param>
/// <param name="Due">When payments fall due.</param>
public sealed record Loan(Money Present, Money Future = default, PaymentDue Due = PaymentDue.End);
