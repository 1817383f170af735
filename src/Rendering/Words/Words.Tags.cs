namespace Witnessmark.Rendering;

/// <summary>Words of tags, labels and cards: few, large, and plain enough for somebody who came by.</summary>
public sealed partial record Words
{
    // the leaf they are cut from
    public string TagsFor => Say("Tags for", "Etiquetas para");
    public string Leaf => Say("leaf", "lámina");
    public string CutTearPunch => Say("Print on card. Cut on the frames, tear on the dots, punch the rings.", "Imprima en cartulina. Corte por los marcos, rasgue por los puntos, perfore los aros.");

    // key
    public string StartForbidden => Say("DO NOT START", "NO ARRANCAR");
    public string MoveForbidden => Say("DO NOT MOVE", "NO MOVER");
    public string CloseForbidden => Say("DO NOT CLOSE", "NO CERRAR");
    public string OnTheKey => Say("Hang it on the key.", "Cuélguela en la llave.");
    public string InTheMachine => Say("In the machine", "En la máquina");
    public string TakeOffKey => Say(
        "It comes off when the stub of each is on its place, by the hand that hung it.",
        "Se quita cuando el talón de cada uno está en su lugar, por la mano que la colgó.");
    public string HungBy => Say("hung by", "colgada por");

    // devices
    public string GoesIn => Say("in:", "entra:");
    public string ComesOut => Say("out:", "sale:");
    public string BeforeStepOne => Say("before this sheet", "antes de esta hoja");
    public string AtStepNumber => Say("step", "paso");
    public string StaysIn => Say("stays in after this sheet", "sigue puesto tras esta hoja");
    public string Stubs => Say("STUBS", "TALONES");
    public string ClipStubs => Say(
        "Device out: tear its stub off and clip it over its place. What you can read here is still in the machine.",
        "Dispositivo fuera: rasgue su talón y sujételo sobre su lugar. Lo que aquí se lee sigue en la máquina.");

    // used oil
    public string UsedOil => Say("USED OIL", "ACEITE USADO");
    public string HoldsWhenFull => Say("the space holds", "capacidad");
    public string PouredIn => Say("drained", "drenado");
    public string OilBurns => Say("Burns: no flame, no smoking.", "Arde: sin llama, sin fumar.");
    public string OilScalds => Say("May be hot. Keep it off skin and eyes: gloves.", "Puede estar caliente. Lejos de piel y ojos: guantes.");
    public string OilStays => Say("Never into ground, drain or water. Never back into a machine. Do not mix.", "Nunca al suelo, desagüe o agua. Nunca de vuelta a una máquina. No mezclar.");

    // bags, piles, what is owed
    public string BoltBag => Say("BOLTS", "PERNOS");
    public string PartBag => Say("BAG", "BOLSA");
    public string InTheBag => Say("in the bag", "en la bolsa");
    public string Pieces => Say("pieces", "piezas");
    public string DoNotFitAgain => Say("DO NOT FIT AGAIN", "NO MONTAR DE NUEVO");
    public string Keep => Say("KEEP", "GUARDAR");
    public string Scrap => Say("SCRAP", "DESECHO");
    public string StillOwed => Say("STILL OWED", "PENDIENTE");
    public string OnTheWheel => Say("Hang it on the steering wheel.", "Cuélguela en el volante.");
    public string HoursNow => Say("machine hours now", "horómetro ahora");
    public string AfterHours => Say("after", "tras");
    public string DueAt => Say("due at", "toca a las");

    /// <summary>What a device in the machine forbids, by the word of the data sheet.</summary>
    public string Forbids(string blocked) => blocked switch
    {
        "engine-start" => StartForbidden,
        "travel" => MoveForbidden,
        "closing" => CloseForbidden,
        _ => "",
    };
}
