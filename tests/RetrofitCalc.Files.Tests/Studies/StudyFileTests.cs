using System.Text;
using CsCheck;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Files.Tests.Studies;

public class A_study_file
{
    [Fact]
    public void gives_back_any_study_unchanged() => StudyGen.Studies.Sample(study =>
    {
        var written = StudyFile.Write(study);
        var read = StudyFile.Read(written);
        return read.Value is { } again && Encoding.UTF8.GetString(StudyFile.Write(again)) == Encoding.UTF8.GetString(written);
    }, iter: 200, print: s => Encoding.UTF8.GetString(StudyFile.Write(s)) + string.Join("\n", StudyFile.Read(StudyFile.Write(s)).Problems));

    [Fact]
    public void may_begin_with_a_byte_order_mark()
    {
        var read = StudyFile.Read((byte[])[0xEF, 0xBB, 0xBF, .. StudyFile.Write(SmallStudy.Make())]);
        Assert.Equal("Two racks", read.Value?.Name);
    }

    [Fact]
    public void may_name_the_kind_of_a_measure_last()
    {
        var text = SmallStudy.Text().Replace("\"kind\": \"directWire\",", "").Replace("\"tube\": \"tube-4ft\"", "\"tube\": \"tube-4ft\", \"kind\": \"directWire\"");
        Assert.NotNull(StudyFile.Read(Encoding.UTF8.GetBytes(text)).Value);
    }

    [Fact]
    public void with_an_unknown_culture_opens_but_says_so()
    {
        var read = StudyFile.Read(Encoding.UTF8.GetBytes(SmallStudy.Text().Replace("\"en-US\"", "\"plain English\"")));
        Assert.NotNull(read.Value);
        Assert.Contains(read.Problems, p => p is { Path: "$.study.site.culture", Line: > 0 } && p.Message.Contains("not a culture"));
    }

    [Fact]
    public void is_refused_whole_when_over_64_MB()
    {
        var read = StudyFile.Read(new byte[64 * 1024 * 1024 + 1]);
        Assert.Null(read.Value);
        Assert.Contains("64 MB", Assert.Single(read.Problems).Message);
        Assert.Contains("64 MB", Assert.Single(StudyFile.Read(new EndlessStream()).Problems).Message);
    }

    private sealed class EndlessStream : MemoryStream
    {
        public override int Read(byte[] buffer, int offset, int count) => count;
    }
}
