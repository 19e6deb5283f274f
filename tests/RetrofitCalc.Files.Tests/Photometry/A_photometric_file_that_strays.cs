using System.Text;
using RetrofitCalc.Files.Photometry;
using static RetrofitCalc.Files.Tests.Photometry.PhotometricText;

namespace RetrofitCalc.Files.Tests.Photometry;

// Ways in which files in use stray from LM-63, each seen in public descriptions of such files.
public class A_photometric_file_that_strays
{
    [Theory]
    [InlineData("no version line", "IESNA:LM-63-2002\n", "", "There is no version line")]
    [InlineData("a maker's words in its place", "IESNA:LM-63-2002", "Invented lights, file 7", "There is no version line")]
    [InlineData("an unknown version", "IESNA:LM-63-2002", "IESNA:LM-63-2099", "\"IESNA:LM-63-2099\" names no known version")]
    [InlineData("text within the brackets", "[TEST] INV-1", "[TEST=INV-1]", "has its text within the brackets")]
    [InlineData("ten numbers on two lines", "1 -1 1 5 1 1", "1 -1 1 5\n1 1", "line 7: the ten numbers below TILT= do not stand on one line")]
    [InlineData("one number a line", "1 -1 1 5 1 1 2 0.1 1.2 0\n1 1 36", "1\n-1\n1\n5\n1\n1\n2\n0.1\n1.2\n0\n1\n1\n36", "do not stand on one line")]
    [InlineData("commas", "0 22.5 45 67.5 90", "0,22.5, 45 ,67.5;90", "set apart with commas")]
    [InlineData("a degree sign", "[TEST] INV-1", "[TEST] INV-1 at 25 °C", "beyond plain ASCII")]
    [InlineData("empty lines among the labels", "[TESTLAB]", "\n\n[TESTLAB]", "empty lines among the labels")]
    [InlineData("empty lines among the numbers", "\n0\n", "\n\n0\n\n", "empty lines among the numbers")]
    [InlineData("a keyword missing", "[TESTLAB] Invented laboratory\n", "", "requires are missing: TESTLAB.")]
    [InlineData("small letters", "TILT=NONE", "tilt=NONE", "\"tilt=NONE\" should be written TILT=")]
    [InlineData("spaces around the sign", "TILT=NONE", " TILT = NONE", "should be written TILT=")]
    [InlineData("another number below zero for absolute", "1 -1 1", "1 -2 1", "written −1")]
    [InlineData("no lamps", "\n1 -1 1", "\n0 -1 1", "no lamps")]
    [InlineData("no watts", "1 1 36", "1 1 0", "no input watts")]
    [InlineData("text at the end", "382.683 0", "382.683 0\nEND", "text below the last intensity")]
    [InlineData("metres called feet", "1 1 2 0.1 1.2 0", "1 1 1 0.1 1.2 0", "common length in metres")]
    [InlineData("feet called metres", "1 1 2 0.1 1.2 0", "1 1 2 0.5 4 0", "common length in feet")]
    [InlineData("a round part", "1 1 2 0.1 1.2 0", "1 1 2 -0.6 -0.6 0", "rounded luminous part")]
    [InlineData("a number of 2002 that is not 1", "1 1 36", "1 0.8 36", "was not multiplied with")]
    [InlineData("a single plane away from 0", "90\n0\n", "90\n45\n", "one plane was taken for all")]
    public void is_read_and_the_reader_told(string what, string text, string strays, string note)
    {
        var file = Whole(Diffuse.Replace(text, strays));
        Assert.True(file.Notes.Any(given => given.Contains(note)), $"{what}: {string.Join(" | ", file.Notes)}");
        Assert.Equal(DiffuseCandelas, file.Distribution.Candelas[0]);
    }

    [Theory, InlineData("\r"), InlineData("\r\n"), InlineData("\n")]
    public void in_its_line_ends_is_the_same(string end)
    {
        var file = Whole(Diffuse.Replace("\n", end));
        Assert.Equal(DiffuseCandelas, file.Distribution.Candelas[0]);
        Assert.Equal(end == "\r", file.Notes.Any(note => note.Contains("carriage return")));
    }

    // A degree sign in Latin-1 is the byte B0, which is no UTF-8.
    [Fact]
    public void in_its_letters_keeps_a_Latin_degree_sign() =>
        Assert.Equal("INV-1 25 °C", Read(Encoding.Latin1.GetBytes(Diffuse.Replace("INV-1", "INV-1 25 °C"))).Value!.Label("TEST"));

    [Fact]
    public void in_a_wrapped_or_endless_block_is_the_same()
    {
        const string numbers = "1000 923.88 707.107 382.683 0";
        Assert.Equal(DiffuseCandelas, Whole(Diffuse.Replace(numbers, numbers.Replace(" ", "\n"))).Distribution.Candelas[0]);
        var huge = Whole(Diffuse.Replace("1000 ", "1000" + new string(' ', 300)));
        Assert.Equal(DiffuseCandelas, huge.Distribution.Candelas[0]);
        Assert.Contains(huge.Notes, note => note.StartsWith("line 11: the line is longer than the 256 letters"));
    }

    // Sorted with their intensities: 0° has 1000 cd wherever it stands.
    [Fact]
    public void in_the_order_of_its_angles_is_sorted()
    {
        var file = Whole(Diffuse.Replace("0 22.5 45 67.5 90", "90 67.5 45 22.5 0").Replace("1000 923.88 707.107 382.683 0", "0 382.683 707.107 923.88 1000"));
        Assert.Equal(DiffuseCandelas, file.Distribution.Candelas[0]);
        Assert.Contains("line 9: the vertical angles do not rise; they were sorted, each with its intensities.", file.Notes);
    }

    [Fact]
    public void in_a_second_factor_of_zero_keeps_its_light()
    {
        var file = Whole(Diffuse.Replace("-2002", "-1995").Replace("1 1 36", "1 0 36"));
        Assert.Equal(DiffuseCandelas, file.Distribution.Candelas[0]);
        Assert.Contains(file.Notes, note => note.Contains("taken as 1"));
    }
}
