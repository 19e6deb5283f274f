using Bunit;
using Microsoft.AspNetCore.Components.Forms;
using RetrofitCalc.Files.Meters;
using RetrofitCalc.Web.Features.Meter;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Meter;

public class A_meter_file_on_its_way
{
    [Fact]
    public async Task shows_how_far_it_is_and_can_be_cancelled_without_a_trace()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = open.Page<MeterPage>();
        var reading = ChooseAsync(page, new HalfAFile(1000));
        page.WaitForAssertion(() => Assert.Equal("0.50", page.Find("progress").GetAttribute("value")));
        Assert.Contains("Reading half.csv", page.Find(".import [role=status]").TextContent, StringComparison.Ordinal);
        await page.FindAll(".import button").First(button => button.TextContent == "Cancel").ClickAsync(new());
        await reading;
        page.WaitForAssertion(() => Assert.Empty(page.FindAll("progress")));
        Assert.Empty(page.FindAll(".import .cell-message"));
        Assert.Null(open.Study.Meter);
        Assert.Null(open.Session.CanUndo);
    }

    [Fact]
    public async Task beyond_the_limit_is_not_begun()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = open.Page<MeterPage>();
        await ChooseAsync(page, new HalfAFile((MeterLimits.FileMegabytes + 1) * 1024L * 1024));
        page.WaitForAssertion(() => Assert.Contains($"larger than {MeterLimits.FileMegabytes} MB", page.Find(".import [role=alert]").TextContent, StringComparison.Ordinal));
        Assert.Empty(page.FindAll("progress"));
    }

    private static Task ChooseAsync(IRenderedComponent<MeterPage> page, IBrowserFile file) =>
        page.InvokeAsync(() => page.FindComponent<InputFile>().Instance.OnChange.InvokeAsync(new InputFileChangeEventArgs([file])));

    /// <summary>Half of it comes at once, the rest never.</summary>
    private sealed class HalfAFile(long size) : IBrowserFile
    {
        public string Name => "half.csv";

        public DateTimeOffset LastModified => default;

        public long Size => size;

        public string ContentType => "text/csv";

        public Stream OpenReadStream(long maxAllowedSize = 512_000, CancellationToken cancellationToken = default) => new HalfAStream(size / 2);
    }

    private sealed class HalfAStream(long left) : MemoryStream
    {
        private long _left = left;

        public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
        {
            if (_left == 0) await Task.Delay(Timeout.Infinite, cancellationToken);
            var read = (int)Math.Min(_left, buffer.Length);
            _left -= read;
            return read;
        }
    }
}
