using System.Text;
using FlowCalc.Examples;

namespace FlowCalc.Workbench.Pages;

/// <summary>The layout that a newcomer sees.</summary>
static class Demo
{
    const string Name = "raid-pickup";

    /// <summary>Name of its file.</summary>
    public const string FileName = Name + ".json";

    /// <summary>Its document.</summary>
    public static string Text => TextOf(Name) ?? throw new InvalidOperationException("The demo is missing from the library.");

    /// <summary>The document of an example; null where there is none of that name.</summary>
    public static string? TextOf(string name) => ExampleCatalogue.Find(name) is { } utf8 ? Encoding.UTF8.GetString(utf8.Span) : null;
}
