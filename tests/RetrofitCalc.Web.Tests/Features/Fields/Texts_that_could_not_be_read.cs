using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Tests.Features.Fields;

public class Texts_that_could_not_be_read
{
    private static readonly IReadOnlyList<CellDraft> Three =
    [
        new("Tariff.Energy[0]", "Price", "a", ""), new("Tariff.Energy[1]", "Price", "b", ""), new("Tariff.Energy[2].When.Windows[1]", "From", "c", ""),
    ];

    [Fact]
    public void of_a_deleted_item_go_and_those_of_later_items_move_up()
    {
        var left = Three.AfterDeleting("Tariff.Energy", 1);
        Assert.Equal(["Tariff.Energy[0]:a", "Tariff.Energy[1].When.Windows[1]:c"], left.Select(d => $"{d.Line}:{d.Text}"));
    }

    [Fact]
    public void are_counted_for_the_place_they_stand_in() =>
        Assert.Equal([3, 1, 0], new[] { "Tariff", "Tariff.Energy[2]", "Areas" }.Select(path => Three.CountUnder(path)));

    [Fact]
    public void replace_an_earlier_text_of_the_same_field() =>
        Assert.Equal(["b", "c", "z"], Three.With(new("Tariff.Energy[0]", "Price", "z", "")).Select(d => d.Text));
}
