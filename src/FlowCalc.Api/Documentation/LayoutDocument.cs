namespace FlowCalc.Api.Documentation;

/// <summary>Stands for the layout document where the contract is written: its schema there is the served JSON Schema itself.</summary>
public sealed class LayoutDocument;
