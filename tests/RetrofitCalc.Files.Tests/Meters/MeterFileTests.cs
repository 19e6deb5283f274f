using System.Text;
using RetrofitCalc.Files.Meters;

namespace RetrofitCalc.Files.Tests.Meters;

public class A_meter_file
{
    [Theory, InlineData("<feed/>", true), InlineData(" \n<?xml version=\"1.0\"?>", true), InlineData("\uFEFF<feed/>", true), InlineData("Start,kW", false), InlineData("PK\u0003\u0004", false), InlineData("", false)]
    public void is_told_apart_by_its_first_bytes(string text, bool xml)
    {
        Assert.Equal(xml, MeterFile.IsXml(Encoding.UTF8.GetBytes(text)));
        Assert.Equal(xml, MeterFile.IsXml((byte[])[0xFF, 0xFE, .. Encoding.Unicode.GetBytes(text)]));
    }
}
