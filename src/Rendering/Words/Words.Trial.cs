using System.Collections.Immutable;
using Witnessmark.Rendering.Trial;

namespace Witnessmark.Rendering;

/// <summary>Words around a sheet on trial: how to run it, the form of the one who scores, the key.</summary>
public sealed partial record Words
{
    // how to run it
    public string TrialRun => Say("How to run it", "Cómo se hace");
    public string TrialHere => Say("Here", "Aquí");
    public string TrialSheetOn => Say("the sheet on", "la hoja en");
    public string HowManyPlanted => Say("Planted", "Puestos");
    public string TrialInOther => Say("En español", "In English");

    // the form
    public string TrialForm => Say("Scoring form", "Hoja de puntuación");
    public string OneFormEach => Say("One form a person. Write no name.", "Una hoja por persona. No escriba nombres.");
    public string PersonNumber => Say("person no.", "persona n.º");
    public string YearsInTrade => Say("years in the trade", "años en el oficio");
    public string StartsAt => Say("starts at", "empieza a las");
    public string EndsAt => Say("ends at", "termina a las");
    public string Glasses => Say("glasses?", "¿anteojos?");
    public string Find => Say("find", "hallazgo");
    public string StepOrSheet => Say("step or sheet no.", "paso u hoja n.º");
    public string WhatIsWrong => Say("what is wrong", "qué está mal");
    public string Minute => Say("minute", "minuto");
    public string WasPlanted => Say("planted?", "¿puesto?");
    public string FoundOfPlanted => Say("found of those planted", "hallados de los puestos");
    public string CalledWrong => Say("called wrong and were right", "señalados y estaban bien");
    public string HardToRead => Say(
        "What was hard to read, hold or write on, in the words of the one who tried it:",
        "Qué costó leer, sujetar o escribir, en palabras de quien la probó:");

    public ImmutableArray<string> TrialConditions =>
    [
        Say("bare hands", "manos sin guantes"), Say("work gloves", "guantes de trabajo"), Say("oily gloves", "guantes con aceite"),
        Say("shade", "sombra"), Say("sun on the sheet", "sol en la hoja"), Say("head lamp", "linterna de cabeza"),
    ];

    // the key
    public string TrialKey => Say("Key: for the one who scores", "Clave: para quien puntúa");
    public string KeepKeyAway => Say("Keep this page away from those who try the sheet.", "Esta página no debe verla quien prueba la hoja.");
    public string Ordinal => Say("no.", "n.º");
    public string ErrorsPlanted => Say("planted", "puesto");
    public string TrueSheet => Say("true sheet", "hoja verdadera");
    public string OnTrialSheet => Say("trial sheet", "hoja de prueba");
    public string NothingThere => Say("(nothing)", "(nada)");

    public string Planted(ErrorKind kind) => kind switch
    {
        ErrorKind.FacingTurned => Say("facing turned", "forro al revés"),
        ErrorKind.WrongUnit => Say("wrong unit", "unidad equivocada"),
        ErrorKind.ChangedLimit => Say("changed limit", "límite cambiado"),
        ErrorKind.WrongDeviceTag => Say("wrong device tag", "etiqueta de otro dispositivo"),
        ErrorKind.WrongCount => Say("wrong count", "cantidad equivocada"),
        ErrorKind.StepsSwapped => Say("steps swapped", "pasos intercambiados"),
        ErrorKind.BoxMissing => Say("box missing", "falta una casilla"),
        ErrorKind.WrongTorque => Say("wrong torque", "par equivocado"),
        ErrorKind.MessageMissing => Say("message missing", "falta un mensaje"),
        _ => Say("page of another copy", "hojas de otra copia"),
    };
}
