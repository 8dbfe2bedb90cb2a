using CsCheck;
using FlowCalc.Workbench.Sheets;

namespace FlowCalc.Workbench.Tests.Sheets;

public sealed class HistoryTests
{
    [Fact]
    public void Undone_and_done_again_is_where_it_was_at_any_step() => Changes.Sample(changes =>
    {
        var history = After(changes);
        var (text, file, back) = (history.Text, history.File, 0);
        for (; history.CanUndo; back++) history = history.Undone();
        Assert.Equal(0, history.At);
        for (; back > 0; back--) history = history.Redone();
        Assert.False(history.CanRedo);
        Assert.Equal((text, file), (history.Text, history.File));
    }, iter: 300);

    [Fact]
    public void Typing_into_one_field_is_one_step_and_undoing_it_gives_what_was_there_before()
    {
        var history = History.Of("0", "a.json").With("1", "changed", "/x").With("12", "changed", "/x").With("123", "changed", "/x").With("1234", "changed", "/y");

        Assert.Equal(["0", "123", "1234"], history.Steps.Select(step => step.Text));
        Assert.Equal("0", history.Undone().Undone().Text);
    }

    [Fact]
    public void Field_typed_into_again_after_another_change_is_a_new_step() =>
        Assert.Equal(4, History.Of("0", "a.json").With("1", "changed", "/x").With("2", "added", null).With("3", "changed", "/x").Steps.Count);

    [Fact]
    public void Change_after_undoing_drops_what_was_undone()
    {
        var history = History.Of("0", "a.json").With("1", "one").With("2", "two").Undone().With("3", "three");

        Assert.Equal(["0", "1", "3"], history.Steps.Select(step => step.Text));
        Assert.False(history.CanRedo);
    }

    [Fact]
    public void No_more_than_a_hundred_steps_are_kept_and_the_oldest_go_first()
    {
        var history = History.Of("0", "a.json");
        for (var number = 1; number <= 250; number++) history = history.With($"{number}", "changed");

        Assert.Equal(100, History.MostSteps);
        Assert.Equal(Enumerable.Range(151, 100).Select(number => $"{number}"), history.Steps.Select(step => step.Text));
        Assert.Equal("250", history.Text);
    }

    [Fact]
    public void Same_text_is_no_step_but_another_file_is()
    {
        var history = History.Of("0", "a.json");

        Assert.Same(history, history.With("0", "changed"));
        Assert.Equal("b.json", history.With("0", "opened", null, "b.json").File);
        Assert.Equal("a.json", history.With("0", "opened", null, "b.json").Undone().File);
        Assert.Equal("b.json", history.With("0", "opened", null, "b.json").With("1", "changed").File);
    }

    [Fact]
    public void There_is_no_step_before_the_first_or_behind_the_last()
    {
        Assert.Throws<InvalidOperationException>(() => History.Of("0", "a.json").Undone());
        Assert.Throws<InvalidOperationException>(() => History.Of("0", "a.json").Redone());
        Assert.Throws<ArgumentOutOfRangeException>(() => History.From([], 0));
    }

    static Gen<(string Text, int Field)[]> Changes => Gen.Select(Gen.String[0, 3], Gen.Int[0, 3]).Array[0, 150];

    static History After((string Text, int Field)[] changes)
    {
        var history = History.Of("", "a.json");
        foreach (var (text, field) in changes) history = history.With(text, "changed", field == 0 ? null : $"/{field}");
        return history;
    }
}
