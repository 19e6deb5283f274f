using System.Text;
using System.Text.Json;
using RetrofitCalc.Engine;
using RetrofitCalc.Files.Examples;
using RetrofitCalc.Files.Safety;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Files.Tests.Examples;

public class The_worked_example
{
    [Fact]
    public void is_labelled_as_invented_and_can_be_evaluated()
    {
        var study = WorkedExample.Load();
        Assert.True(study.Invented);
        Assert.Empty(StudyEvaluation.Check(study));
        Assert.True(study.Areas.Count > 1 && study.Options.Count > 1);
    }

    [Fact]
    public void gives_the_identical_result_after_export_and_import()
    {
        var study = WorkedExample.Load();
        var again = StudyFile.Read(StudyFile.Write(study)).Value!;
        Assert.Equal(Result(study), Result(again));
    }

    [Fact]
    public void is_accepted_by_the_published_schema()
    {
        var schema = Json.Schema.JsonSchema.FromText(File.ReadAllText(Repository.PathOf("docs/study-file.schema.json")));
        Assert.True(schema.Evaluate(JsonDocument.Parse(Encoding.UTF8.GetString(StudyFile.Write(WorkedExample.Load()))).RootElement).IsValid);
    }

    private static string Result(RetrofitCalc.Engine.Studies.Study study) =>
        JsonSerializer.Serialize(StudyEvaluation.Run(study, SafetyRuleFile.Load()), RetrofitJson.Options);
}
