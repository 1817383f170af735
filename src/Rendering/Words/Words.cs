using Witnessmark.Language.Model;

namespace Witnessmark.Rendering;

/// <summary>
/// The fixed words of the paper: one line a word, English and Spanish side by side. What authors wrote is never translated.
/// </summary>
public sealed partial record Words
{
    public static readonly Words English = new(SheetLanguages.English);
    public static readonly Words Spanish = new(SheetLanguages.Spanish);

    private Words(string language) => Language = language;

    /// <summary>en or es: the <c>lang</c> attribute.</summary>
    public string Language { get; }

    /// <summary>By the procedure's <c>language</c>: es, es-CL … is Spanish, everything else English.</summary>
    public static Words Of(string? language) =>
        SheetLanguages.Of(language) == SheetLanguages.Spanish ? Spanish : English;

    // page
    public string Sheet => Say("sheet", "hoja");
    public string OutOf => Say("of", "de");
    public string Unit => Say("unit", "unidad");
    public string Serial => Say("serial", "serie");
    public string Copy => Say("copy", "copia");
    public string Specimen => Say("SPECIMEN", "MUESTRA");
    public string Trial => Say("TRIAL: NOT FOR WORK", "PRUEBA: NO ES PARA TRABAJAR");
    public string NotIssued => Say("not issued", "no emitida");
    public string Help => Say("Help", "Ayuda");
    public string StandingNotice => Say(
        "Maker's data, site rules, local law and licensed practice come first.",
        "Primero: datos del fabricante, reglas del sitio, ley local y profesional autorizado.");
    public string SheetsDisagree => Say("Sheets disagree? Stop.", "¿Las hojas no coinciden? Pare.");
    public string NoFoot => Say(
        "No identity and page number at the foot? This browser cannot print the sheet. Use Chromium.",
        "¿Falta al pie la identidad y el número de hoja? Este navegador no puede imprimir la hoja. Use Chromium.");
    public string OneSide => Say("Print on one side of the paper, at full size.", "Imprima por una sola cara y a tamaño real.");
    public string Printed => Say("printed", "impreso");
    public string Forms => Say("forms", "formatos");
    public string Wording => Say("words", "texto");

    // head
    public string For => Say("For", "Para");
    public string This => Say("This one", "Esta");
    public string FromSerial => Say("serial from", "serie desde");
    public string To => Say("to", "a");
    public string Crew => Say("Crew", "Cuadrilla");
    public string Tools => Say("Tools", "Herramientas");
    public string Date => Say("date", "fecha");
    public string MachineHours => Say("machine hours", "horómetro");
    public string Place => Say("place", "lugar");
    public string Before => Say("Must be so before step", "Debe cumplirse antes del paso");
    public string HowToFill => Say(
        "Ring a step's number at its start, slash it at its end. Write values in empty boxes.",
        "Encierre el número del paso al empezar y táchelo al terminar. Escriba los valores en las casillas vacías.");
    public string SeeAndStrike => Say("See it, then strike the printed cell.", "Véalo y tache la casilla impresa.");

    // step
    public string By => Say("by", "por");
    public string Time => Say("time", "hora");
    public string Tool => Say("tool", "herram.");
    public string Done => Say("DONE", "HECHO");
    public string NotSo => Say("NOT SO", "NO ES ASÍ");
    public string OnlyIf => Say("Only if", "Solo si");
    public string StopIf => Say("Stop if", "Pare si");
    public string MustBeSo => Say("Must be so", "Debe cumplirse");
    public string Outside => Say("Outside", "Fuera de límite");
    public string Stop => Say("stop", "pare");
    public string OrMore => Say("or more", "o más");
    public string MustBe => Say("must be", "debe ser");
    public string Wait => Say("Wait", "Espere");
    public string Until => Say("until", "hasta que");
    public string Load => Say("Load", "Carga");
    public string AtAngle => Say("at", "a");
    public string Radius => Say("radius", "radio");
    public string Drains => Say("Drains", "Drena");
    public string Takes => Say("Takes", "Lleva");
    public string Into => Say("into", "en");
    public string FullWhen => Say("full when", "lleno cuando");
    public string Test => Say("Test", "Prueba");
    public string NeverAbove => Say("never above", "nunca más de");
    public string Settle => Say("settle", "asentar");
    public string HoldFor => Say("hold", "mantener");
    public string Passes => Say("passes", "pasa");
    public string PassesWhen => Say("passes when", "pasa si");
    public string LookAgain => Say("look again after", "mirar otra vez a los");
    public string Otherwise => Say("otherwise", "en otro caso");
    public string PartEnds => Say("This part ends", "Termina esta parte");
    public string GoOnWith => Say("go on with step", "siga en el paso");
    public string EndsHere => Say("Ends here", "Termina aquí");
    public string LookFor => Say("Look for", "Busque");
    public string Again => Say("Again from", "Repita desde");
    public string AtMost => Say("at most", "como máximo");
    public string Times => Say("times, then", "veces, luego");
    public string HandOver => Say("Hand over", "Entregue");
    public string ForEach => Say("For each", "Para cada");
    public string TightenTo => Say("Torque", "Apretar a");

    // second person
    public string Hold => Say("HOLD", "ALTO");
    public string SecondPerson => Say("SECOND PERSON", "SEGUNDA PERSONA");
    public string Alone => Say("alone, after the work", "aparte, al terminar");
    public string WhileDone => Say("while it is done", "mientras se hace");
    public string OwnResult => Say("own result", "resultado propio");
    public string MustAgree => Say("both must agree", "deben coincidir");
    public string Call => Say("CALL", "LLAME");
    public string Answer => Say("ANSWER", "RESPUESTA");
    public string Calls => Say("Calls", "Llama");
    public string Hears => Say("Hears", "Oye");
    public string Strikes => Say("Strikes", "Tacha");
    public string TheWholeCell => Say("the whole cell.", "toda la casilla.");

    private string Say(string english, string spanish) => Language == SheetLanguages.Spanish ? spanish : english;
}
