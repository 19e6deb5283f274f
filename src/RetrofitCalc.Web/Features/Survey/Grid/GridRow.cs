using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Survey.Grid;

/// <summary>One row of the grid: areas, lines, what opens below them and messages, in one flat list that can be scrolled by thousands.</summary>
public abstract record GridRow(string Key);

public sealed record AreaRow(Area Area, int Index, int Lines) : GridRow("area-" + Area.Id);

/// <summary>What can be changed about an area.</summary>
public sealed record AreaDetailRow(Area Area, int Index, int Lines, int Areas) : GridRow("area-detail-" + Area.Id);

/// <param name="Line">The line.</param>
/// <param name="Number">Its number on the page, from 1.</param>
/// <param name="Figures">What it draws; null while it does not count.</param>
/// <param name="Drafts">Texts that could not be read.</param>
/// <param name="Open">The row with its other facts is open.</param>
/// <param name="Notice">Safety notice about one of its cells.</param>
public sealed record LineRow(SurveyLine Line, int Number, LineFigures? Figures, IReadOnlyList<CellDraft> Drafts, bool Open, SafetyNotice? Notice)
    : GridRow("line-" + Line.Id)
{
    public string Name => Line.Name.Length > 0 ? Line.Name : $"Line {Number}";

    public bool HasMessage => Drafts.Count > 0 || Notice is not null;
}

public sealed record MessageRow(LineRow Of) : GridRow("message-" + Of.Line.Id);

public sealed record DetailRow(LineRow Of) : GridRow("detail-" + Of.Line.Id);
