using System.Text;
using RetrofitCalc.Files.Photometry;
using static RetrofitCalc.Files.Tests.Photometry.PhotometricText;

namespace RetrofitCalc.Files.Tests.Photometry;

public class A_photometric_file_that_is_broken
{
    [Theory]
    [InlineData("TILT=NONE", "", "line 11: No line with TILT= was found. This is not an IES LM-63 file, or it is cut off.")]
    [InlineData(" 382.683 0", "", "line 11: The file ends before plane 1 of 1, intensity 4 of 5.")]
    [InlineData("22.5", "22.5x", "line 9, column 3: \"22.5x\" is not a number; vertical angle 2 of 5 should stand here.")]
    [InlineData("1 1 36", "1 1 NaN", "line 8, column 5: \"NaN\" is not a number; The input watts should stand here.")]
    [InlineData("1000 ", "1e10 ", "line 11, column 1: \"1e10\" is too large for plane 1 of 1, intensity 1 of 5.")]
    [InlineData("1000 ", "1e999 ", "line 11, column 1: \"1e999\" is not a number; plane 1 of 1, intensity 1 of 5 should stand here.")]
    [InlineData("923.88", "-1", "line 11, column 6: The intensity -1 is below zero.")]
    [InlineData("1 -1 1 5 1 1 2", "1 -1 1 5 1 4 2", "line 7, column 12: The photometric type is 4; it must be a whole number, 1 to 3.")]
    [InlineData("1 -1 1 5 1 1 2", "1 -1 1 5.5 1 1 2", "line 7, column 8: The number of vertical angles is 5.5; it must be a whole number, 2 to 1000.")]
    [InlineData("1 -1 1 5 1 1 2", "1 -1 1 2000000000 1 1 2", "line 7, column 8: \"2000000000\" is too large for The number of vertical angles.")]
    [InlineData("1 -1 1 5 1 1 2", "1 -1 0 5 1 1 2", "line 7, column 6: The candela multiplier is 0; it must be 1E-06 to 1000000.")]
    [InlineData("1 -1 1 5 1 1 2", "1 -1 1 1000 1000 1 2", "line 8: The file announces more than 300000 intensities.")]
    [InlineData("1 -1 1 5 1 1 2", "1 -1 1 5 1 2 2", "line 8: Types A and B need two horizontal angles at least.")]
    [InlineData("22.5", "45", "line 9, column 6: The vertical angle 45 stands here for the second time.")]
    [InlineData("67.5 90", "67.5 190", "line 9, column 16: The vertical angle 190 must lie between 0 and 180 degrees for type C.")]
    [InlineData("TILT=NONE", "TILT=INCLUDE", "line 7, column 3: The number of tilt angles is -1; it must be a whole number, 1 to 1000.")]
    public void says_what_is_wrong_and_where(string text, string broken, string problem)
    {
        var read = Read(Diffuse.Replace(text, broken));
        Assert.Null(read.Value);
        Assert.Equal(problem, Assert.Single(read.Problems).ToString());
    }

    [Fact]
    public void by_being_cut_off_anywhere_is_a_problem_and_never_an_exception()
    {
        // Up to the first figure of the last number; from there on the file is whole.
        for (var length = 0; length < Diffuse.Length - 1; length++)
            Assert.Single(Read(Diffuse[..length]).Problems);
    }

    [Fact]
    public void by_its_size_is_refused()
    {
        Assert.Contains("larger than 4 MB", Assert.Single(Read(new byte[PhotometricLimits.FileBytes + 1]).Problems).Message);
        Assert.Contains("lines stand above", Assert.Single(Read(string.Concat(Enumerable.Repeat("x\n", 1001)) + Diffuse).Problems).Message);
        Assert.Contains("empty", Assert.Single(Read("").Problems).Message);
        Assert.Contains("not a text file", Assert.Single(Read([0, 1, 2, 0, 0, 0, 7]).Problems).Message);
    }
}
