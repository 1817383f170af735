using System.Globalization;
using System.Text;
using QRCoder;

namespace Witnessmark.Rendering.Figures;

/// <summary>A square code that a phone reads: level H, so that a third of it may be under oil.</summary>
public static class Qr
{
    /// <param name="text">Capitals, digits and <c>$%*+-./:</c> make the smallest code.</param>
    /// <param name="size">Edge in mm, the quiet zone of four modules included.</param>
    public static string Draw(string id, string text, double size)
    {
        var modules = Modules(text);
        var module = size / modules.Length;
        var svg = new Svg(id, size, size, text, text).Rect(0, 0, size, size, "#fff");
        return svg.Path(Runs(modules, module), "#000").Write();
    }

    /// <summary>Rows of modules, true is black, with the quiet zone.</summary>
    public static bool[][] Modules(string text)
    {
        using var maker = new QRCodeGenerator();
        using var code = maker.CreateQrCode(text, QRCodeGenerator.ECCLevel.H);
        return [.. code.ModuleMatrix.Select(row => row.Cast<bool>().ToArray())];
    }

    // one stroke a run of black modules, a hair taller so that no light line shows between rows
    private static string Runs(bool[][] modules, double module)
    {
        var path = new StringBuilder();
        for (var y = 0; y < modules.Length; y++)
            for (var x = 0; x < modules[y].Length; x++)
            {
                if (!modules[y][x])
                    continue;
                var start = x;
                while (x + 1 < modules[y].Length && modules[y][x + 1])
                    x++;
                path.Append(CultureInfo.InvariantCulture, $"M{Svg.N(start * module)} {Svg.N(y * module)}h{Svg.N((x - start + 1) * module)}v{Svg.N(module + 0.01)}h-{Svg.N((x - start + 1) * module)}z");
            }
        return path.ToString();
    }
}
