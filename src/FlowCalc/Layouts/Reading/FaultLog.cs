using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace FlowCalc.Layouts.Reading;

/// <summary>Collects faults by their place in the text; pointers are worked out at the end, and only if there are faults.</summary>
sealed class FaultLog(ReadOnlyMemory<byte> utf8, int maximum)
{
    readonly List<PlacedFault> faults = [];
    int unlisted;

    public bool IsEmpty => faults.Count == 0;

    /// <summary>Whether further faults are only counted.</summary>
    public bool IsFull => faults.Count >= maximum;

    /// <summary>Faults so far, listed or not: two readings of it tell whether something in between was wrong.</summary>
    public int Count => faults.Count + unlisted;

    /// <summary>Adds a fault of a value.</summary>
    public void Add(JsonValue at, [InterpolatedStringHandlerArgument("")] ref FaultMessage message) => Record(at, "", message.ToText());

    /// <summary>Adds a fault of a value.</summary>
    public void Add(JsonValue at, string message) => Record(at, "", message);

    /// <summary>Adds a fault of a member of an object, which need not be there.</summary>
    public void Add(JsonValue owner, string member, [InterpolatedStringHandlerArgument("")] ref FaultMessage message) => Record(owner, Below(member), message.ToText());

    /// <summary>Adds a fault of a member of an object, which need not be there.</summary>
    public void Add(JsonValue owner, string member, string message) => Record(owner, Below(member), message);

    /// <summary>Adds faults of a text that stands within this one.</summary>
    /// <param name="at">Where it stands.</param>
    /// <param name="within">Its faults, with pointers from its own outermost value.</param>
    public void Add(JsonValue at, ImmutableArray<LayoutFault> within)
    {
        foreach (var fault in within) Record(at, fault.Pointer, fault.Message);
    }

    /// <summary>Every fault in the document's order, and one that counts those beyond the maximum.</summary>
    public ImmutableArray<LayoutFault> ToFaults()
    {
        var ordered = faults.OrderBy(fault => fault.Offset).ToArray();
        var pointers = PointerRenderer.Render(utf8.Span, [.. ordered.Select(fault => fault.Offset)]);
        var all = ImmutableArray.CreateBuilder<LayoutFault>(ordered.Length + 1);
        for (var i = 0; i < ordered.Length; i++)
            all.Add(new LayoutFault(pointers[i] + ordered[i].Below, ordered[i].Message));
        if (unlisted > 0) all.Add(new LayoutFault("", $"{unlisted} more faults are not listed; the first {maximum} found are"));
        return all.ToImmutable();
    }

    static string Below(string member) => "/" + JsonPointer.Escape(member);

    void Record(JsonValue at, string below, string message)
    {
        if (IsFull)
        {
            unlisted++;
            return;
        }
        faults.Add(new PlacedFault(at.Start, below, message));
    }

    readonly record struct PlacedFault(int Offset, string Below, string Message);
}
