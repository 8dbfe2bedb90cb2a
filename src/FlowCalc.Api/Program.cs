using FlowCalc.Api.Catalogue;
using FlowCalc.Api.Discharge;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Flow;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Startup;

var builder = WebApplication.CreateBuilder(args);
builder.AddLimits();
builder.AddServer();
builder.AddFaults();
builder.AddContract();
builder.AddDemo();

var app = builder.Build();
app.UseSafeHeaders();
app.UseFaults();
app.UseRouting();
app.UseRateLimiter();
app.MapFlow();
app.MapDischarge();
app.MapAgents();
app.MapStock();
app.MapExamples();
app.MapContract();
app.MapHealth();
app.Run();
