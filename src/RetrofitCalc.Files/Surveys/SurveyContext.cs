using System.Globalization;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Surveys;

/// <summary>What a survey cell is read against: how its writer types, and what areas and set-ups there are.</summary>
public sealed record SurveyContext(CultureInfo Culture, LengthUnit Unit, IReadOnlyList<Area> Areas, CatalogueExtract Catalogue)
{
    public IReadOnlyList<Area> Areas
    {
        get;
        init => (field, AreaNames) = (value, NamesOf(value));
    } = Areas;

    public CatalogueExtract Catalogue
    {
        get;
        init => (field, SetUpNames) = (value, NamesOf(value));
    } = Catalogue;

    internal NameIndex AreaNames { get; private init; } = NamesOf(Areas);

    internal NameIndex SetUpNames { get; private init; } = NamesOf(Catalogue);

    /// <summary>The unit most people of a culture measure heights in.</summary>
    public static LengthUnit UsualUnit(CultureInfo culture) =>
        culture.Name.EndsWith("-US", StringComparison.Ordinal) ? LengthUnit.Feet : LengthUnit.Metres;

    private static NameIndex NamesOf(IReadOnlyList<Area> areas) => new(areas.Select(a => (a.Id, a.Name)));

    private static NameIndex NamesOf(CatalogueExtract catalogue) =>
        new(catalogue.SetUps.OrderBy(s => s.Retired).Select(s => (s.Id, s.Name)));
}
