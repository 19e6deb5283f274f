using System.Globalization;
using Microsoft.AspNetCore.Components;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Surveys;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>One value of the study that can be changed: its label, what was typed if that could not be read, and what is wrong with it.</summary>
/// <typeparam name="T">Kind of value.</typeparam>
public abstract class StudyField<T> : ComponentBase
{
    [Inject] protected StudySession Session { get; set; } = default!;

    [Parameter, EditorRequired] public string Label { get; set; } = "";

    /// <summary>Where the value stands, as the engine names places: Tariff.Energy[1]. Kept texts and problems are found by it.</summary>
    [Parameter, EditorRequired] public string Path { get; set; } = "";

    /// <summary>Property name within <see cref="Path"/>.</summary>
    [Parameter, EditorRequired] public string Name { get; set; } = "";

    [Parameter] public T? Value { get; set; }

    /// <summary>Puts a value that could be read into the study.</summary>
    [Parameter, EditorRequired] public Func<Study, T, Study> Set { get; set; } = (study, _) => study;

    /// <summary>The edit as the undo button names it; the label when not given.</summary>
    [Parameter] public string? What { get; set; }

    /// <summary>True in a table row: the label is for screen readers, and a <see cref="RowMessages"/> below shows what is wrong.</summary>
    [Parameter] public bool InRow { get; set; }

    [Parameter] public string? Unit { get; set; }

    [Parameter] public string? Hint { get; set; }

    protected CultureInfo Culture => CultureInfo.GetCultureInfo(Session.Study.Site.Culture);

    protected string FieldId => FieldNames.Id(Path, Name);

    protected CellDraft? Draft => Session.State.Drafts.Of(Path, Name);

    protected string? Message => Draft?.Message ?? Problem?.Message;

    private StudyProblem? Problem => Session.Problems.FirstOrDefault(p => p.Path == FieldNames.Full(Path, Name));

    protected string? DescribedBy => (Message, InRow, Hint) switch
    {
        (not null, true, _) => FieldNames.Id(Path, "messages"),
        (not null, false, _) => FieldId + "-message",
        (null, false, not null) => FieldId + "-hint",
        _ => null,
    };

    protected Task KeepAsync(string typed, Parsed<T> read) => Session.EditAsync(What ?? Label, state => read.Ok
        ? new EditState(Set(state.Study, read.Value!), state.Drafts.Without(Path, Name))
        : state with { Drafts = state.Drafts.With(new CellDraft(Path, Name, typed, read.Problems[0].Message)) });
}
