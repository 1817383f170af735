namespace Witnessmark.Rendering;

/// <summary>Words of the fender card.</summary>
public sealed partial record Words
{
    public string FenderCard => Say("fender card", "tarjeta");
    public string CardOnly => Say(
        "Numbers to see from the work. The sheet says what to do, and in which order.",
        "Números para leer desde el puesto de trabajo. La hoja dice qué hacer y en qué orden.");
    public string Torques => Say("Torque", "Torques");
    public string Counts => Say("Counts", "Recuentos");
    public string Limits => Say("Limits and stops", "Límites y paradas");
    public string SafeStops => Say("Safe to stop", "Parada segura");
    public string NoneOnThisSheet => Say("nowhere on this sheet", "en ningún punto de esta hoja");
    public string AfterStep => Say("after step", "después del paso");
    public string DevicesIn => Say("In the machine", "Puesto en la máquina");
}
