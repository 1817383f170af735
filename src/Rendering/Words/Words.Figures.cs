namespace Witnessmark.Rendering;

/// <summary>Words of the drawings.</summary>
public sealed partial record Words
{
    public string NotToScale => Say("not to scale", "sin escala");

    // bolt circle
    public string PitchCircle => Say("pitch circle", "círculo de pernos");
    public string HeadsNotToScale => Say("heads not to scale", "cabezas sin escala");
    public string InkEachPass => Say("Ink a number outside the bolt in each pass.", "Marque en cada pasada un número fuera del perno.");

    // stack, shims
    public string Clearance => Say("clearance", "holgura");
    public string ShimPack => Say("Shims of one pack", "Lainas de un paquete");
    public string PackAsBuilt => Say("Pack as built, from the sizes in stock", "Paquete de fábrica, con los espesores en existencia");

    // wrench
    public string OffTheScale => Say("off the scale", "fuera de la escala");

    // decision
    public string Decision => Say("Decision", "Decisión");
    public string GoOnWithStep => Say("go on with step", "siga con el paso");
    public string WithinLimits => Say("inside", "dentro de límite");
    public string Step => Say("step", "paso");

    // crew and machine over the steps
    public string WhoWorksWhen => Say("Who works when", "Quién trabaja cuándo");
    public string OneAlone => Say("alone", "solo");
    public string Together => Say("together", "juntos");
    public string Checking => Say("checks", "verifica");
    public string LongestTimes => Say(
        "Longest times written. A thick line has no time written.",
        "Tiempos más largos. Una línea gruesa no tiene tiempo escrito.");
    public string WhatIsInWhen => Say("What is in the machine when", "Qué hay en la máquina y cuándo");
    public string MustComeOut => Say("in the machine, must come out", "en la máquina, debe salir");
    public string OnTheHook => Say("on the hook", "en el gancho");
    public string ItsState => Say("state", "estado");

    // job
    public string JobInOrder => Say("The job in order", "El trabajo en orden");
    public string HoursOfJob => Say("h: hours since the first step, longest times of all that may be asked for", "h: horas desde el primer paso, tiempos más largos de todo lo que se pueda pedir");
    public string MayBeLeft => Say("may be left", "se puede dejar");
    public string MayBeLeftAfter => Say("the machine may be left after it", "después de él se puede dejar la máquina");

    // wear
    public string WearOf => Say("Readings over hours:", "Lecturas por horas:");
    public string Limit => Say("limit", "límite");
    public string HoursOfMachine => Say("machine hours, h", "horómetro, h");
    public string ForetellsNothing => Say(
        "Readings only. The line ends at the last one and foretells nothing.",
        "Solo lecturas. La línea termina en la última y no predice nada.");

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
