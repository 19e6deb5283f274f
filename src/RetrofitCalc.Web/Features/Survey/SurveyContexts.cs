using System.Globalization;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Typing;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Survey;

/// <summary>How the cells of a study's survey are read and written.</summary>
public static class SurveyContexts
{
    /// <summary>Set-ups the study holds go before the catalogue's of the same id: a later catalogue edit does not change the study.</summary>
    public static SurveyContext Of(Study study, CatalogueExtract catalogue) => new(
        CultureInfo.GetCultureInfo(study.Site.Culture),
        UnitSystems.Usual(study.Site) == UnitSystem.UsCustomary ? LengthUnit.Feet : LengthUnit.Metres,
        study.Areas,
        new CatalogueExtract { SetUps = [.. study.Catalogue.SetUps.Concat(catalogue.SetUps).DistinctBy(s => s.Id)] });

    /// <summary>Whether two contexts read and write every cell alike.</summary>
    public static bool Same(SurveyContext one, SurveyContext other) =>
        one.Culture.Equals(other.Culture) && one.Unit == other.Unit
        && one.Areas.Select(a => (a.Id, a.Name)).SequenceEqual(other.Areas.Select(a => (a.Id, a.Name)))
        && one.Catalogue.SetUps.SequenceEqual(other.Catalogue.SetUps);

    /// <summary>The cell as the grid shows it: a height in feet and inches where that is exact enough, else as it is typed.</summary>
    public static string Shown(SurveyLine line, SurveyField field, SurveyContext context, QuantityText text)
    {
        if (field != SurveyField.MountingHeight || line.MountingHeight is not { } height) return SurveyCellText.Of(line, field, context);
        var plain = text.Length(height).Replace('\u00A0', ' ');
        var read = LengthText.Parse(plain, context.Culture, context.Unit).Value;
        return read is { } same && Math.Abs(same.Metres - height.Metres) < 0.001 ? plain : SurveyCellText.Of(line, field, context);
    }
}
