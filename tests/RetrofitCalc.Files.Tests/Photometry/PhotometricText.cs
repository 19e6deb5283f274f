using System.Text;
using RetrofitCalc.Files.Photometry;

namespace RetrofitCalc.Files.Tests.Photometry;

/// <summary>Files written for these tests: invented luminaires.</summary>
internal static class PhotometricText
{
    /// <summary>A diffuse luminaire in five steps of 22.5°: 1000 cd · cos γ. Line 7 and following hold the numbers.</summary>
    public const string Diffuse = """
        IESNA:LM-63-2002
        [TEST] INV-1
        [TESTLAB] Invented laboratory
        [ISSUEDATE] 2026-01-01
        [MANUFAC] Invented
        TILT=NONE
        1 -1 1 5 1 1 2 0.1 1.2 0
        1 1 36
        0 22.5 45 67.5 90
        0
        1000 923.88 707.107 382.683 0
        """;

    /// <summary>The same with a table of tilt.</summary>
    public static readonly string Tilted = Diffuse.Replace("TILT=NONE", "TILT=INCLUDE\n1\n2\n0 90\n1 0.9");

    /// <summary>Type B with two planes, in the form of 1991.</summary>
    public const string Floodlight = "IESNA91\nTILT=NONE\n1 1000 1 2 2 2 2 0 0 0\n1 1 40\n-90 90\n0 90\n10 20\n30 40";

    public static readonly double[] DiffuseCandelas = [1000, 923.88, 707.107, 382.683, 0];

    public static Parsed<PhotometricFile> Read(string text) => Read(Encoding.UTF8.GetBytes(text));

    public static Parsed<PhotometricFile> Read(byte[] bytes) => Lm63File.Read(new MemoryStream(bytes));

    public static PhotometricFile Whole(string text)
    {
        var read = Read(text);
        Assert.Empty(read.Problems);
        return read.Value!;
    }
}
