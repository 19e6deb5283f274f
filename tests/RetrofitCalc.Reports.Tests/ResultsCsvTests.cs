using System.Globalization;

namespace RetrofitCalc.Reports.Tests;

public class Results_as_a_long_table
{
    [Fact]
    public void hold_every_option_beside_now_unrounded()
    {
        var result = Samples.Quillmere;
        var lines = Csv(result).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.StartsWith("figure,unit,Now,", lines[0]);
        var cost = lines.Single(line => line.StartsWith("site: cost,", StringComparison.Ordinal)).Split(',');
        Assert.Equal(result.Now.Site.Cost.Units, double.Parse(cost[2], CultureInfo.InvariantCulture));
        Assert.Equal(result.Options.Select(o => o.After.Site.Cost.Units), cost.Skip(3).Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void hold_the_bill_charge_by_charge_and_its_sum()
    {
        var result = Samples.Quillmere;
        var lines = Csv(result).Split("\r\n").Select(line => line.Split(',')).ToList();
        var charges = lines.Where(line => line[0].StartsWith("bill: ", StringComparison.Ordinal)).ToList();
        Assert.Equal(result.Now.Bills.Sum(bill => bill.Total.Units), charges.Sum(line => Number(line[2])), 0.001);
        foreach (var (option, i) in result.Options.Select((option, i) => (option, i)))
            Assert.Equal(option.Bill.Total.Units, charges.Sum(line => Number(line[2]) - Number(line[3 + i])), 0.001);
        Assert.Equal(result.Options.Select(o => o.Bill.Demand.Units), lines.Single(line => line[0] == "bill saved on demand in a steady year").Skip(3).Select(Number));
    }

    [Theory, InlineData("=1+1"), InlineData("+x"), InlineData("-x"), InlineData("@x"), InlineData(" =1+1"), InlineData("\t=1")]
    public void keep_names_that_look_like_formulas_harmless(string name)
    {
        var csv = Csv(Samples.WithFirstOptionNamed(name));
        Assert.Contains("'" + name, csv.Split("\r\n")[0]);
    }

    [Fact]
    public void quote_names_with_commas_and_quotes()
    {
        Assert.Contains("\"Tubes, \"\"cheap\"\"\"", Csv(Samples.WithFirstOptionNamed("Tubes, \"cheap\"")));
    }

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);

    private static string Csv(Engine.Results.StudyResult result)
    {
        using var text = new StringWriter();
        ResultsCsv.Write(result, text);
        return text.ToString();
    }
}
