using System.Text;
using CsCheck;
using FlowCalc.Layouts;
using FlowCalc.Tests.Layouts;

namespace FlowCalc.Tests.Properties.Layouts;

/// <summary>Laws of reading, for documents made up at random.</summary>
public class GeneratedLayoutsTests
{
    [Fact]
    public void A_sound_document_is_read_as_the_tree_that_it_is() =>
        GeneratedLayout.Any.Sample(
            generated =>
            {
                var layout = generated.Read();

                var feeds = layout.Runs.CountBy(run => run.To).ToDictionary();
                return layout.Points.Length == generated.Points
                    && layout.Runs.Length == generated.Points - 1
                    && layout.Points.Select((point, index) => feeds.GetValueOrDefault(index) == (point is SupplyPoint ? 0 : 1)).All(isFed => isFed)
                    && layout.Runs.All(run => (run.Route is not null) == generated.IsPlaced)
                    && layout.Runs.Select(run => run.Id).Distinct().Count() == layout.Runs.Length;
            },
            iter: 2_000);

    [Fact]
    public void Developed_length_is_straights_and_arcs_and_spans_the_distance_between_the_ends() =>
        GeneratedLayout.Any.Where(generated => generated.IsPlaced).Sample(
            generated =>
            {
                var layout = generated.Read();
                foreach (var run in layout.Runs)
                {
                    var (from, to) = (layout.Points[run.From].At!.Value, layout.Points[run.To].At!.Value);
                    var distance = new Direction((to.X - from.X).Meters, (to.Y - from.Y).Meters, (to.Z - from.Z).Meters).Length;
                    var sum = run.Route!.Straights.Sum(straight => straight.Meters) + run.Bends.Sum(bend => bend.Angle.Radians * bend.Radius.Meters);
                    if (Math.Abs(sum - run.Length.Meters) > 1e-12 * sum || run.Length.Meters < distance * (1 - 1e-12)) return false;
                    if (Math.Abs(run.Rise.Meters - (to.Z - from.Z).Meters) > 1e-12) return false;
                }
                return true;
            },
            iter: 1_000);

    [Fact]
    public void Text_cut_or_changed_in_one_byte_never_fails_otherwise_than_by_faults_or_as_no_json() =>
        Gen.Select(GeneratedLayout.Of(12), Gen.Int[0, 100_000], Gen.Byte, Gen.Bool).Sample(
            (generated, place, octet, isCut) =>
            {
                var text = Encoding.UTF8.GetBytes(generated.Json);
                place %= text.Length;
                if (isCut) text = text[..place];
                else text[place] = octet;
                try
                {
                    var reading = LayoutReader.Read(text);
                    return (reading.Layout is null) == (reading.Faults.Length > 0) && reading.Faults.All(fault => fault.Message.Length > 0);
                }
                catch (System.Text.Json.JsonException)
                {
                    return true; // The text is no JSON any more, which is what this exception is for.
                }
            },
            iter: GeneratedLayout.Count);
}
