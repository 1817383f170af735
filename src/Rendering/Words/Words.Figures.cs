namespace Witnessmark.Rendering;

/// <summary>Words of the drawings.</summary>
public sealed partial record Words
{
    public string NotToScale => Say("not to scale", "sin escala");

    // bolt circle
    public string PitchCircle => Say("pitch circle", "círculo de pernos");
    public string HeadsNotToScale => Say("heads not to scale", "cabezas sin escala");
    public string InkEachPass => Say("Ink a number outside the bolt in each pass.", "Marque en cada pasada un número fuera del perno.");

    // sling
    public string SlingOf(string load) => Say($"Sling for the load: {load}", $"Eslinga para la carga: {load}");
    public string InEachLeg => Say("in each leg", "en cada ramal");
    public string InTheLeg => Say("in the leg, which hangs straight", "en el ramal, que cuelga recto");
    public string OneLeg => Say("1 leg", "1 ramal");
    public string Legs => Say("legs", "ramales");
    public string Rated => Say("rated", "carga máx.");
    public string ToTheHorizontal => Say("to the horizontal", "con la horizontal");
    public string ToTheVertical => Say("to the vertical", "con la vertical");
    public string CountAsTwo => Say("count as 2: two may carry nearly all", "cuentan como 2: dos pueden llevar casi todo");
    public string NotWeighed => Say("not weighed", "sin pesar");
}
