using System.Globalization;
using CsCheck;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Tests.Typing;

public class A_typed_number
{
    // Marks and groups of each culture: Unicode CLDR, as .NET carries it.
    [Theory]
    [InlineData("en-US", "1.5", 1.5)]
    [InlineData("en-US", "1,234", 1234)]
    [InlineData("en-US", "1,234,567.25", 1234567.25)]
    [InlineData("en-US", "1.234", 1.234)]
    [InlineData("en-US", " 12 ", 12)]
    [InlineData("en-US", ".5", 0.5)]
    [InlineData("en-US", "5.", 5)]
    [InlineData("en-US", "-3", -3)]
    [InlineData("en-US", "1e3", 1000)]
    [InlineData("de-DE", "1,5", 1.5)]
    [InlineData("de-DE", "1.234", 1234)]
    [InlineData("de-DE", "1.234,5", 1234.5)]
    [InlineData("fr-FR", "1 234,5", 1234.5)]
    [InlineData("fr-FR", "1\u202F234,5", 1234.5)]
    [InlineData("de-CH", "1'234.5", 1234.5)]
    [InlineData("en-IN", "12,34,567", 1234567)]
    public void is_read_with_the_marks_of_its_culture(string culture, string text, double expected) =>
        Assert.Equal(expected, NumberText.Parse(text, CultureInfo.GetCultureInfo(culture)).Value);

    [Theory]
    [InlineData("en-US", "1,5", "\"1,5\" could mean two things. Type 1.5 for one and a half, 1500 or 1,500 for fifteen hundred.")]
    [InlineData("en-US", "1,23", "could mean two things")]
    [InlineData("en-US", "1234,567", "could mean two things")]
    [InlineData("en-US", "1.234,5", "not a number as written here")]
    [InlineData("en-US", "1.2.3", "not a number as written here")]
    [InlineData("en-US", "1 234", "not a number as written here")]
    [InlineData("de-DE", "1.5", "Type 1,5 for one and a half, 1500 or 1.500 for fifteen hundred.")]
    [InlineData("de-DE", "1,234.5", "not a number as written here")]
    [InlineData("fr-FR", "1.5", "could mean two things")]
    [InlineData("en-US", "twelve", "\"twelve\" is not a number.")]
    [InlineData("en-US", "12 pcs", "is not a number")]
    [InlineData("en-US", "=1+1", "is not a number")]
    [InlineData("en-US", "-", "not a number")]
    [InlineData("en-US", ".", "not a number")]
    [InlineData("en-US", "NaN", "is not a number")]
    [InlineData("en-US", "1e999", "too large")]
    public void that_could_mean_two_things_or_nothing_is_refused(string culture, string text, string words)
    {
        var read = NumberText.Parse(text, CultureInfo.GetCultureInfo(culture));
        Assert.Null(read.Value);
        Assert.Contains(words, Assert.Single(read.Problems).Message);
    }

    [Theory, InlineData(null), InlineData(""), InlineData("  ")]
    public void left_blank_is_no_number_and_no_mistake(string? text)
    {
        var read = NumberText.Parse(text, CultureInfo.InvariantCulture);
        Assert.True(read.Ok);
        Assert.Null(read.Value);
    }

    [Theory]
    [InlineData("-2", "negative")]
    [InlineData("2.5", "not a whole number")]
    [InlineData("99999999999", "too large")]
    public void of_things_must_be_whole_and_not_negative(string text, string words)
    {
        var read = NumberText.ParseCount(text, CultureInfo.GetCultureInfo("en-US"));
        Assert.Null(read.Value);
        Assert.Contains(words, Assert.Single(read.Problems).Message);
    }

    [Theory, InlineData("en-US"), InlineData("de-DE"), InlineData("fr-FR"), InlineData("de-CH"), InlineData("en-IN"), InlineData("pl-PL"), InlineData("")]
    public void that_was_written_reads_back_the_same(string culture)
    {
        var its = CultureInfo.GetCultureInfo(culture);
        Gen.OneOf(Gen.Double[-1e9, 1e9], Gen.Double[0, 1e-6], Gen.Int[-5000, 5000].Select(i => i / 8.0))
            .Sample(value => NumberText.Parse(NumberText.Write(value, its), its).Value == value, iter: 1000);
    }

    [Fact]
    public void that_is_far_too_large_is_not_repeated_digit_by_digit() =>
        Assert.True(NumberText.ParseCount(new string('9', 300), System.Globalization.CultureInfo.InvariantCulture).Problems[0].Message.Length < 100);

    [Fact]
    public void of_any_letters_in_any_culture_never_throws() =>
        Gen.Select(Gen.String[Gen.Char["0123456789.,'’ \u00A0\u202F-+eE٣½²"], 0, 12], Gen.Int[0, Cultures.Length - 1])
            .Sample((text, at) => NumberText.Parse(text, Cultures[at]) is var read && (read.Ok || read.Value is null), iter: 2000);

    private static readonly CultureInfo[] Cultures = CultureInfo.GetCultures(CultureTypes.SpecificCultures);
}
