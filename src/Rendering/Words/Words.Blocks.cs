using Witnessmark.Language.Model;

namespace Witnessmark.Rendering;

/// <summary>Words of the larger blocks: ladder, passes, ends, conditions and ranges.</summary>
public sealed partial record Words
{
    // ladder
    public string SteelColumn => Say("STEEL · teeth out", "ACERO · dientes fuera");
    public string FrictionColumn => Say("FRICTION · teeth in", "DISCO · dientes dentro");
    public string FacingTo => Say("facing to", "forro hacia");
    public string Shows => Say("shows", "muestra");
    public string Facing => Say("FACING", "FORRO");
    public string Steel => Say("STEEL", "ACERO");
    public string LeftNow => Say("Left now", "Quedan");
    public string NotAgreed => Say("Not agreed?", "¿No coincide?");
    public string LiftOut => Say("Lift out to the last line both agree on.", "Desarme hasta la última línea en que ambos coincidan.");
    public string In => Say("in", "van");
    public string Left => Say("left", "sobran");
    public string Piston => Say("PISTON", "PISTÓN");
    public string Ring => Say("RING", "ANILLO");
    public string SectionOfStack => Say("Section of the stack", "Corte del paquete");

    // passes
    public string Pass => Say("pass", "pasada");
    public string Across => Say("across", "en cruz");
    public string RoundTheCircle => Say("round the circle", "en círculo");
    public string BoltGets => Say("bolt gets", "el perno recibe");
    public string Adapter => Say("with adapter", "con adaptador");
    public string Dial => Say("Dial", "Ajuste");
    public string InkEach => Say("Read left to right. Ink each bolt as the wrench clicks.", "Lea de izquierda a derecha. Marque al oír el clic.");
    public string BoltCircle => Say("Bolts clockwise, 1 at twelve o'clock", "Sentido horario, el 1 a las doce");
    public string PropertyClass => Say("class", "clase");

    public string Grade => Say("grade", "grado");

    // ends
    public string StillIn => Say("STILL IN", "SIGUE PUESTO");
    public string DoNotStart => Say("Do not start.", "No arrancar.");
    public string DoNotMove => Say("Do not move.", "No mover.");
    public string Signed => Say("signed", "firmado");
    public string GoOn => Say("Go on.", "Siga.");
    public string SectionDone => Say("Section done", "Sección hecha");
    public string BrokeOff => Say("Broke off", "Se paró");
    public string AtStep => Say("at step", "en el paso");
    public string Restart => Say("Restart: three steps back, or the last value written.", "Para retomar: tres pasos atrás, o el último valor escrito.");
    public string SafeAfter => Say("Safe to stop after step", "Parada segura después del paso");
    public string NotSafeHere => Say("Not safe to stop here", "Aquí no hay parada segura");
    public string NextSafe => Say("Next: after step", "La próxima: después del paso");
    public string NoSafeStopAhead => Say("No safe stop before the end of this sheet", "Ninguna parada segura antes del final de esta hoja");
    public string Closing => Say("Close the sheet", "Cierre de la hoja");
    public string Stops => Say("Stops", "Interrupciones");
    public string Deviations => Say("Deviations", "Desviaciones");
    public string Owed => Say("Still owed", "Queda pendiente");
    public string NoneOrWhich => Say("none, or which", "ninguna, o cuáles");
    public string Released => Say("Released", "Liberado");

    // conditions and ranges
    public string Or => Say("or", "o");
    public string And => Say("and", "y");
    public string Not => Say("not", "no");
    public string All => Say("all", "todos");
    public string At => Say("at", "en");
    public string PeopleIn => Say("people in", "personas en");
    public string EveryDevice => Say("every device", "todo dispositivo");
    public string AnyDevice => Say("any device", "algún dispositivo");
    public string ThatBlocks => Say("that blocks", "que bloquea");
    public string SafeStop => Say("safe stop", "parada segura");
    public string EndOfStep => Say("end of step", "fin del paso");
    public string UpTo => Say("up to", "máx.");
    public string Below => Say("below", "menos de");
    public string From => Say("from", "mín.");
    public string Above => Say("above", "más de");
    public string Nobody => Say("nobody", "nadie");

    /// <summary>The same words that a translation is read with.</summary>
    public string Signal(SignalWord word) => SheetLanguages.Signal(word, Language);

    /// <summary>Before a name in a formula; the five words of the language of formulas.</summary>
    public string Gathered(string word) => word switch
    {
        "sum" => Say("sum of", "suma de"),
        "mean" => Say("mean of", "promedio de"),
        "least" => Say("least of", "el menor de"),
        "most" => Say("most of", "el mayor de"),
        _ => Say("spread of", "diferencia de"),
    };

    /// <summary>The two results of every test; null for the outcome of a decision, which its author names.</summary>
    public string? TestResult(string outcome) => outcome switch
    {
        "passed" => Say("passed", "pasa"),
        "failed" => Say("failed", "no pasa"),
        _ => null,
    };

    /// <summary>What an ending means for whoever stands there.</summary>
    public string Ending(EndingKind kind) => kind switch
    {
        EndingKind.Done => Say("work done", "trabajo terminado"),
        EndingKind.StoppedSafe => Say("left safe, work not done", "queda seguro, trabajo sin terminar"),
        _ => Say("hand it up, do not go on", "avise a su superior, no siga"),
    };

    /// <summary>What of several points is judged: each, least, most, mean, spread, sum.</summary>
    public string Judge(string? judge) => judge switch
    {
        "least" => Say("least", "el menor"),
        "most" => Say("most", "el mayor"),
        "mean" => Say("mean", "promedio"),
        "spread" => Say("spread", "diferencia"),
        "sum" => Say("sum", "suma"),
        _ => Say("each", "cada uno"),
    };

    /// <summary>The end of a stack: piston and ring have words of the house, others stay as written.</summary>
    public string StackEnd(Tongue tongue, PartStack stack, string? name) => name switch
    {
        "piston" => Piston,
        "ring" => Ring,
        null => "",
        _ => tongue.Value(name, stack.Id.Value).ToUpperInvariant(),
    };
}
