using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Witnessmark.Rendering.Messages;

/// <summary>One JSON object as text: indented, line feeds, letters of every language as they are.</summary>
internal static class JsonText
{
    private static readonly JsonWriterOptions Form = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Of(Action<Utf8JsonWriter> inside)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Form))
        {
            json.WriteStartObject();
            inside(json);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }
}
