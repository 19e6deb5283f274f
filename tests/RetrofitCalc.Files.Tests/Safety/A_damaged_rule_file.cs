using RetrofitCalc.Files.Safety;

namespace RetrofitCalc.Files.Tests.Safety;

public class A_damaged_rule_file
{
    [Theory]
    [InlineData("\"op\": \"gt_field\"", "\"op\": \"is_more\"", "$.rules[", "'is_more' is not one of")]
    [InlineData("\"field\": \"supply_volts\"", "\"field\": \"supply_vlots\"", "$.rules[", "'supply_vlots' is not among the fields")]
    [InlineData("\"severity\": \"warn\"", "\"severity\": \"alarm\"", ".severity", "'alarm' is not one of stop, warn, note")]
    [InlineData("\"always\": true", "\"always\": \"yes\"", "$.checklist[", "expected true or false")]
    [InlineData("\"disclaimer\":", "\"claim\":", "$.meta", "'disclaimer' is missing")]
    public void is_refused_with_the_path(string good, string bad, string path, string message)
    {
        var text = SafetyRuleFile.ShippedText();
        var at = text.IndexOf(good, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{good} no longer stands in the file");
        var problem = Assert.Throws<FormatException>(() => SafetyRuleFile.Read(string.Concat(text.AsSpan(0, at), bad, text.AsSpan(at + good.Length))));
        Assert.Contains(path, problem.Message);
        Assert.Contains(message, problem.Message);
    }

    [Fact]
    public void that_is_cut_off_is_refused_with_the_line()
    {
        var problem = Assert.Throws<FormatException>(() => SafetyRuleFile.Read("{\n \"meta\": {"));
        Assert.StartsWith("Line 2:", problem.Message);
    }
}
