using NodaTime;
using RetrofitCalc.Web.Features.Summary;
using RetrofitCalc.Web.Tests.Features.Results;

namespace RetrofitCalc.Web.Tests.Features.Summary;

/// <summary>Names of files come from the study, the day and the revision, in characters every system takes.</summary>
public class Editions_to_hand_out
{
    private static readonly LocalDate Day = new(2026, 11, 25);

    [Theory]
    [InlineData("Trial house", "trial-house-2026-11-25-draft")]
    [InlineData("Käte's  house / north: 1", "kate-s-house-north-1-2026-11-25-draft")]
    [InlineData("../../etc", "etc-2026-11-25-draft")]
    [InlineData("育苗", "study-2026-11-25-draft")]
    public void are_named_in_safe_characters(string name, string file) =>
        Assert.Equal(file, new Edition(SampleResult.Study with { Name = name }, false, 3, Day).FileName);

    [Fact]
    public void name_the_revision_once_issued() =>
        Assert.Equal("trial-house-2026-11-25-revision-3", new Edition(SampleResult.Study, true, 3, Day).FileName);

    [Fact]
    public void keep_long_names_short() =>
        Assert.Equal(60 + "-2026-11-25-draft".Length, new Edition(SampleResult.Study with { Name = new string('a', 300) }, false, 1, Day).FileName.Length);
}
