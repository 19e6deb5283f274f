using System.Globalization;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Tariffs;

/// <summary>Fixed charges and the minimum bill, under their names of versions 3 to 6 and from version 7.</summary>
internal static class FixedFields
{
    /// <summary>Days of an average month. [d]</summary>
    private const double DaysOfMonth = 365.0 / 12;

    public static IReadOnlyList<FixedCharge> Read(RecordNode root)
    {
        if (Amount(root, "fixedchargefirstmeter") is { } amount)
        {
            if (root.Find("fixedmonthlycharge") is { } older)
                root.Log.NotUsed(older.Path, "\"fixedchargefirstmeter\" says the same and is used.");
            root.Log.Used("$.fixedchargefirstmeter", "Fixed charge.");
            return Unit(root, "fixedchargeunits") switch
            {
                "$/day" => Charge(amount, ChargedPer.Day),
                "$/year" => Charge(Twelfth(root, "$.fixedchargefirstmeter", amount), ChargedPer.Month),
                _ => Charge(amount, ChargedPer.Month),
            };
        }
        if (Amount(root, "fixedmonthlycharge") is not { } monthly)
            return [];
        root.Log.Used("$.fixedmonthlycharge", "Fixed charge.");
        return Charge(monthly, ChargedPer.Month);
    }

    public static Money? Minimum(RecordNode root)
    {
        if (Amount(root, "mincharge") is { } amount)
        {
            if (root.Find("minmonthlycharge") is { } older)
                root.Log.NotUsed(older.Path, "\"mincharge\" says the same and is used.");
            root.Log.Used("$.mincharge", "Minimum bill.");
            switch (Unit(root, "minchargeunits"))
            {
                case "$/day":
                    root.Log.Doubtful("$.mincharge", $"A minimum by day; {(amount * DaysOfMonth).ToString("0.00", CultureInfo.InvariantCulture)} is used for a month of 365/12 days.");
                    return Money.FromUnits(amount * DaysOfMonth);
                case "$/year":
                    root.Log.NotUsed("$.mincharge", "A minimum by year is not computed.");
                    return null;
                default:
                    return Money.FromUnits(amount);
            }
        }
        if (Amount(root, "minmonthlycharge") is not { } monthly)
            return null;
        root.Log.Used("$.minmonthlycharge", "Minimum bill.");
        return Money.FromUnits(monthly);
    }

    private static IReadOnlyList<FixedCharge> Charge(double amount, ChargedPer per) =>
        [new("Fixed charge", Money.FromUnits(amount), per)];

    private static double Twelfth(RecordNode root, string path, double yearly)
    {
        root.Log.Doubtful(path, "An amount by year; a twelfth is billed each month.");
        return yearly / 12;
    }

    /// <summary>An amount other than zero.</summary>
    private static double? Amount(RecordNode root, string name)
    {
        if (root.Find(name) is not { } node || node.Number() is not { } amount)
            return null;
        if (amount != 0)
            return amount;
        root.Log.Used(node.Path, "Nothing.");
        return null;
    }

    private static string Unit(RecordNode root, string name)
    {
        if (root.Find(name) is not { } node || node.Text() is not { } unit)
            return "$/month";
        if (unit is "$/month" or "$/day" or "$/year")
            root.Log.Used(node.Path);
        else
            root.Log.Wrong(node.Path, $"is \"{unit}\"; it must be $/month, $/day or $/year");
        return unit;
    }
}
