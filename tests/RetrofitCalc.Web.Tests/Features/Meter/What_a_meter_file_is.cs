using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Components.Forms;
using RetrofitCalc.Files.Meters.Tables;
using RetrofitCalc.Web.Features.Meter;

namespace RetrofitCalc.Web.Tests.Features.Meter;

/// <summary>The content tells what a file is, not its name.</summary>
public class What_a_meter_file_is
{
    private const string Table = "Start,kWh\n2027-01-01 00:00,1\n2027-01-01 01:00,2\n2027-01-01 02:00,3\n";

    [Fact]
    public async Task a_table_is_guessed_and_read_again_when_its_columns_change()
    {
        var file = await OpenAsync("named.xml", Encoding.UTF8.GetBytes(Table));
        Assert.Equal((MeterUnit.KilowattHours, StampMeaning.Start), (file.Layout!.Unit, file.Layout.Stamps));
        Assert.Equal([1000, 2000, 3000], file.Sources[0].Readings.Select(reading => reading.Watts));
        file.UseLayout(file.Layout with { Unit = MeterUnit.Watts });
        Assert.Equal([1, 2, 3], file.Sources[0].Readings.Select(reading => reading.Watts));
    }

    [Theory, InlineData("utf-8", false), InlineData("utf-8", true), InlineData("utf-16", true)]
    public async Task xml_is_known_by_its_bracket_in_any_encoding(string encoding, bool mark)
    {
        var text = Encoding.GetEncoding(encoding);
        byte[] bytes = [.. mark ? text.GetPreamble() : [], .. text.GetBytes($"<?xml version=\"1.0\" encoding=\"{encoding}\"?>\n<feed/>")];
        var file = await OpenAsync("named.csv", bytes);
        Assert.Null(file.Sample);
        Assert.Contains("not an ESPI file", Assert.Single(file.Problems), StringComparison.Ordinal);
    }

    [Fact]
    public async Task nothing_is_told_as_such()
    {
        var file = await OpenAsync("empty.csv", []);
        Assert.Empty(file.Sources);
        Assert.NotEmpty(file.Problems);
    }

    private static async Task<MeterFile> OpenAsync(string name, byte[] content)
    {
        var upload = await UploadedFile.CopyAsync(new InMemoryFile(name, content), _ => { }, TestContext.Current.CancellationToken);
        var file = new MeterFile(upload, CultureInfo.GetCultureInfo("en-US"), MeterSamples.Zone);
        file.Open();
        return file;
    }

    private sealed class InMemoryFile(string name, byte[] content) : IBrowserFile
    {
        public string Name => name;

        public DateTimeOffset LastModified => default;

        public long Size => content.Length;

        public string ContentType => "";

        public Stream OpenReadStream(long maxAllowedSize = 512_000, CancellationToken cancellationToken = default) => new MemoryStream(content);
    }
}
