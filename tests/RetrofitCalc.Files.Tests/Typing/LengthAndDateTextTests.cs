using System.Globalization;
using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Tests.Typing;

public class A_typed_length
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-US");

    // 1 ft = 0.3048 m and 1 in = 0.0254 m exactly: International Yard and Pound Agreement 1959; NIST SP 811 (2008), appendix B.
    [Theory]
    [InlineData("1 ft 2 in", 0.3048 + 2 * 0.0254)]
    [InlineData("1'2\"", 0.3048 + 2 * 0.0254)]
    [InlineData("1′ 2″", 0.3048 + 2 * 0.0254)]
    [InlineData("14 ft", 14 * 0.3048)]
    [InlineData("14 Feet", 14 * 0.3048)]
    [InlineData("14'", 14 * 0.3048)]
    [InlineData("8.5", 8.5 * 0.3048)]
    [InlineData("18 in", 18 * 0.0254)]
    [InlineData("0.35 m", 0.35)]
    [InlineData("35 cm", 0.35)]
    [InlineData("35cm", 0.35)]
    [InlineData("350 mm", 0.35)]
    [InlineData("1,200 mm", 1.2)]
    [InlineData("0", 0)]
    public void is_read_in_its_unit_or_in_the_users_own(string text, double metres) =>
        Assert.Equal(metres, LengthText.Parse(text, English, LengthUnit.Feet).Value!.Value.Metres, 1e-12);

    [Theory]
    [InlineData("2 m 3 ft", "not a length")]
    [InlineData("1 ft 2", "no unit")]
    [InlineData("tall", "not a length")]
    [InlineData("3 furlongs", "no unit")]
    [InlineData("1,5 m", "could mean two things")]
    [InlineData("-1 m", "negative")]
    [InlineData("1 ft 2 in 3", "not a length")]
    public void that_makes_no_sense_is_refused(string text, string words)
    {
        var read = LengthText.Parse(text, English, LengthUnit.Feet);
        Assert.Null(read.Value);
        Assert.Contains(words, Assert.Single(read.Problems).Message);
    }

    [Fact]
    public void takes_the_decimal_mark_of_its_culture() =>
        Assert.Equal(0.35, LengthText.Parse("0,35", CultureInfo.GetCultureInfo("de-DE"), LengthUnit.Metres).Value!.Value.Metres);

    [Theory, InlineData(LengthUnit.Feet, "1.1667 ft"), InlineData(LengthUnit.Metres, "0.3556 m"), InlineData(LengthUnit.Inches, "14 in")]
    public void is_written_with_its_unit(LengthUnit unit, string expected) =>
        Assert.Equal(expected, LengthText.Write(Length.FromMetres(0.3556), English, unit));
}

public class A_typed_date
{
    [Theory]
    [InlineData("en-US", "2027-03-15")]
    [InlineData("de-DE", "2027-03-15")]
    [InlineData("en-US", "3/15/2027")]
    [InlineData("en-US", "03/15/2027")]
    [InlineData("en-GB", "15/03/2027")]
    [InlineData("de-DE", "15.03.2027")]
    [InlineData("de-DE", "15.3.2027")]
    [InlineData("nl-NL", "15-3-2027")]
    public void is_iso_or_the_short_form_of_its_culture(string culture, string text) =>
        Assert.Equal(new LocalDate(2027, 3, 15), DateText.Parse(text, CultureInfo.GetCultureInfo(culture)).Value);

    [Theory]
    [InlineData("3/15/27", "Type it like 2027-03-15 or 3/15/2027")]
    [InlineData("15/3/2027", "is not a date")]
    [InlineData("2027-02-30", "is not a date")]
    [InlineData("last spring", "is not a date")]
    [InlineData("0207-03-15", "1900 to 2199")]
    public void that_is_unclear_is_refused(string text, string words)
    {
        var read = DateText.Parse(text, CultureInfo.GetCultureInfo("en-US"));
        Assert.Null(read.Value);
        Assert.Contains(words, Assert.Single(read.Problems).Message);
    }

    [Fact]
    public void has_an_example_that_can_be_typed_in_every_culture()
    {
        foreach (var culture in CultureInfo.GetCultures(CultureTypes.SpecificCultures))
        {
            var message = Assert.Single(DateText.Parse("?", culture).Problems).Message;
            var example = message[(message.IndexOf(" or ", StringComparison.Ordinal) + 4)..^1];
            Assert.True(DateText.Parse(example, culture).Value == new LocalDate(2027, 3, 15), $"{culture.Name}: {message}");
        }
    }
}
