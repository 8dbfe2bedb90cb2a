using FlowCalc.Layouts;
namespace FlowCalc.Bottles;
/// <summary>Placeholder.</summary>
internal sealed class LiquidLevel(double radius, double length, Direction up)
{
    readonly Direction u = up;
    public double HeightOf(double volume) => volume / (Math.PI * radius * radius) * u.Z;
    public double SurfaceArea(double height) => Math.PI * radius * radius;
    public double WallAreaAbove(double height) => 2 * Math.PI * radius * (length - height) + Math.PI * radius * radius;
}
