using System.Text.Json.Serialization;
using FlowCalc.Api.Calibration;
using FlowCalc.Api.Catalogue;
using FlowCalc.Api.Checks;
using FlowCalc.Api.Circuits;
using FlowCalc.Api.Compare;
using FlowCalc.Api.Coverage;
using FlowCalc.Api.CutLists;
using FlowCalc.Api.Discharge;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Flow;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Mounts;
using FlowCalc.Api.Size;
using FlowCalc.Api.Tolerance;
using FlowCalc.Api.Upkeep;

namespace FlowCalc.Api.Answers;

/// <summary>Serialization of every answer, generated at build so that writing neither reflects nor allocates much.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, GenerationMode = JsonSourceGenerationMode.Serialization)]
[JsonSerializable(typeof(Problem))]
[JsonSerializable(typeof(FlowAnswer))]
[JsonSerializable(typeof(DischargeAnswer))]
[JsonSerializable(typeof(CompareAnswer))]
[JsonSerializable(typeof(ToleranceAnswer))]
[JsonSerializable(typeof(SizeAnswer))]
[JsonSerializable(typeof(CutListAnswer))]
[JsonSerializable(typeof(MountAnswer))]
[JsonSerializable(typeof(CircuitAnswer))]
[JsonSerializable(typeof(UpkeepAnswer))]
[JsonSerializable(typeof(CheckAnswer))]
[JsonSerializable(typeof(CoverageAnswer))]
[JsonSerializable(typeof(CalibrationAnswer))]
[JsonSerializable(typeof(AgentsAnswer))]
[JsonSerializable(typeof(AgentDetailAnswer))]
[JsonSerializable(typeof(TubesAnswer))]
[JsonSerializable(typeof(FittingsAnswer))]
[JsonSerializable(typeof(ApplicationsAnswer))]
[JsonSerializable(typeof(ExamplesAnswer))]
[JsonSerializable(typeof(HealthAnswer))]
internal sealed partial class AnswerJson : JsonSerializerContext;
