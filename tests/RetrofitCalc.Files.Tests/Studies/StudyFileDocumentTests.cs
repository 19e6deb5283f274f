using System.Text;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Files.Tests.Studies;

public class The_page_on_the_study_file
{
    [Fact]
    public void shows_a_file_that_reads()
    {
        var page = File.ReadAllText(Repository.PathOf("docs/study-file.md"));
        var sample = page.Split("```json")[1].Split("```")[0];
        Assert.Equal("Quillmere", StudyFile.Read(Encoding.UTF8.GetBytes(sample)).Value?.Site.Name);
    }
}
