using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Figures;
using Witnessmark.Rendering.Tests.Checklist;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace Witnessmark.Rendering.Tests.Figures;

public class QrTests
{
    private const int Pixels = 6;

    [Fact]
    public void A_reader_gets_back_what_the_print_is()
    {
        Assert.Equal("WB-40 2.1.0 3F9AC21B77DE K7M", Demo.Issued.CodeText);
        Assert.Equal(Demo.Issued.CodeText, Read(Qr.Modules(Demo.Issued.CodeText)));
    }

    [Fact]
    public void It_is_still_read_under_a_blot()
    {
        var modules = Qr.Modules(Demo.Issued.CodeText);
        var middle = modules.Length / 2;
        for (var y = middle - 3; y <= middle + 3; y++)
            for (var x = middle - 3; x <= middle + 3; x++)
                modules[y][x] = true;
        Assert.Equal(Demo.Issued.CodeText, Read(modules));
    }

    [Fact]
    public void Modules_of_the_printed_size_are_wide_enough_to_photocopy()
    {
        // 22 mm edge; a photocopy keeps 0.5 mm (common practice)
        Assert.True(22.0 / Qr.Modules(Demo.Issued.CodeText).Length >= 0.5);
        Assert.Contains("width=\"22mm\"", Qr.Draw("code", Demo.Issued.CodeText, 22), StringComparison.Ordinal);
    }

    /// <summary>The longest id that is read, a version that grows, a copy, page 99 of 99.</summary>
    [Theory]
    [InlineData("WB-40", "2.1.0")]
    [InlineData("ARTICULATED-HAULER-WHEEL-END-BRAKE-00040", "12.10.10")]
    public void Modules_of_a_page_are_wide_enough_whatever_the_procedure_is_called(string id, string version)
    {
        var code = SheetPage.ForPress(Demo.Plan(), Demo.Issued with { Procedure = id, Version = version }, Paper.A4, Words.English).Code!;

        Assert.EndsWith(" K7M 99/99", code.SaysOn(99, 99), StringComparison.Ordinal);
        Assert.True(code.Size / code.ModulesOn(99, 99).Length >= 0.5, $"{code.Size} mm for {code.ModulesOn(99, 99).Length} modules");
    }

    private static string? Read(bool[][] modules)
    {
        var edge = modules.Length * Pixels;
        var grey = new byte[edge * edge];
        for (var y = 0; y < edge; y++)
            for (var x = 0; x < edge; x++)
                grey[(y * edge) + x] = modules[y / Pixels][x / Pixels] ? (byte)0 : (byte)255;
        var source = new RGBLuminanceSource(grey, edge, edge, RGBLuminanceSource.BitmapFormat.Gray8);
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)))?.Text;
    }
}
