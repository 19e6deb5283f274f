using PdfSharp.Drawing;

namespace RetrofitCalc.Reports.Pdf;

/// <summary>Breaks text into lines that fit a width: at spaces and, where one word is too wide, within it.</summary>
internal sealed class LineBreaking(XGraphics graphics)
{
    public IReadOnlyList<string> Break(string text, XFont font, double width)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.ReplaceLineEndings(" ").Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Fit(word, font, width)))
        {
            var longer = line.Length == 0 ? word : line + " " + word;
            if (line.Length > 0 && Width(longer, font) > width)
            {
                lines.Add(line);
                line = word;
            }
            else line = longer;
        }
        if (line.Length > 0 || lines.Count == 0) lines.Add(line);
        return lines;
    }

    public double Width(string text, XFont font) => text.Length == 0 ? 0 : graphics.MeasureString(text, font).Width;

    private IEnumerable<string> Fit(string word, XFont font, double width)
    {
        while (word.Length > 1 && Width(word, font) > width)
        {
            var length = word.Length - 1;
            while (length > 1 && Width(word[..length], font) > width) length--;
            yield return word[..length];
            word = word[length..];
        }
        yield return word;
    }
}
