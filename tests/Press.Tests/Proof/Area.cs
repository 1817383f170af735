namespace Witnessmark.Press.Tests.Proof;

/// <summary>A rectangle on the page, in points from its lower left corner.</summary>
internal readonly record struct Area(double Left, double Bottom, double Right, double Top)
{
    public const double Millimetre = 72 / 25.4;

    public double Height => Top - Bottom;

    public double Width => Right - Left;

    public bool Meets(Area other, double by) => Meets(other, by, by);

    public bool Meets(Area other, double across, double up) =>
        Math.Min(Right, other.Right) - Math.Max(Left, other.Left) > across && Math.Min(Top, other.Top) - Math.Max(Bottom, other.Bottom) > up;

    public bool Holds(Area other, double give) =>
        other.Left >= Left - give && other.Right <= Right + give && other.Bottom >= Bottom - give && other.Top <= Top + give;

    public Area With(Area other) => new(Math.Min(Left, other.Left), Math.Min(Bottom, other.Bottom), Math.Max(Right, other.Right), Math.Max(Top, other.Top));
}
