using Microsoft.OpenApi;

namespace FlowCalc.Api.Documentation;

/// <summary>What the contract says of the key that a call needs.</summary>
internal static class KeyDescription
{
    const string Bearer = "key", Basic = "password";

    /// <summary>Adds both ways to send a key, which the gate takes from the header <c>Authorization</c>.</summary>
    public static void AddKeys(this OpenApiDocument document)
    {
        document.AddComponent(Bearer, new OpenApiSecurityScheme
        {
            Type = SecuritySchemeType.Http,
            Scheme = "bearer",
            Description = "The key as a bearer token (RFC 6750): `Authorization: Bearer` and the key. Callers on the machine of the service itself need none unless its settings ask them too, and the settings may waive it for all.",
        });
        document.AddComponent(Basic, new OpenApiSecurityScheme
        {
            Type = SecuritySchemeType.Http,
            Scheme = "basic",
            Description = "The same key as the password of any name (RFC 7617), which browsers ask for by themselves.",
        });
    }

    /// <summary>Says that a call takes a key either way, or none where the service asks for none.</summary>
    public static void AskKey(this OpenApiOperation operation, OpenApiDocument? document) => operation.Security =
    [
        new() { [new OpenApiSecuritySchemeReference(Bearer, document)] = [] },
        new() { [new OpenApiSecuritySchemeReference(Basic, document)] = [] },
        [],
    ];
}
