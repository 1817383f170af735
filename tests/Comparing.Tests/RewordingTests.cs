namespace Witnessmark.Comparing.Tests;

/// <summary>
/// An auditor who is warned of every honest rewording stops reading; one who is not warned of "not" reads for nothing. Sentences and what they are were
/// decided by hand before the words were chosen.
/// </summary>
public sealed class RewordingTests
{
    public static TheoryData<string, string> Honest => new()
    {
        { "Wash and dry every piece, out of the wind.", "Wash and dry each piece, sheltered." },
        { "Draw the witness mark across each head onto the joint face.", "Paint the witness mark across every head and the joint face." },
        { "Bring the backing ring with the crane.", "Move the backing ring by crane." },
        { "Snug the bolts until the heads touch.", "Snug the bolts till their heads touch." },
        { "Do not use force.", "Use no force." },
        { "Nobody can see them once the hub is on.", "No one can see them once the hub is on." },
        { "Write the reading in the box on the sheet.", "Put the reading into its box on this sheet." },
        { "If the wrench slips, stop and call the mechanic.", "When the wrench slips, stop and call the mechanic." },
        { "Count the piles on a clean paper.", "Count the piles on clean paper." },
        { "The dowel finds one place only.", "The dowel finds a single place only." },
        { "Medir la placa en tres puntos.", "Tomar la medida de la placa en tres puntos." },
        { "Lavar y secar todas las piezas en el banco.", "Lavar y secar cada pieza en el banco." },
        { "Si la llave resbala, llamar al mecánico.", "Cuando la llave resbala, llamar al mecánico." },
        { "No usar fuerza.", "Sin usar fuerza." },
        { "Contar los discos sobre un papel limpio.", "Contar los discos sobre papel limpio." },
    };

    public static TheoryData<string, string> Sly => new()
    {
        { "Oil, not grease.", "Oil, grease." },
        { "Do not oil the threads, wipe them.", "Oil the threads, do not wipe them." },
        { "Open the valve, then start the pump.", "Start the pump, then open the valve." },
        { "Wash and dry every piece.", "Dry and wash every piece." },
        { "Faced side in.", "Faced side out." },
        { "Take both studs out and fit the bolts.", "Take both studs and fit the bolts." },
        { "Leave 5 mm.", "Leave 5 cm." },
        { "Leave 0.5 mm.", "Leave 5 mm." },
        { "The helper must be clear.", "The helper should be clear." },
        { "The helper works it out alone.", "The helper works it out." },
        { "Lower it from the left.", "Lower it from the right." },
        { "Tighten clockwise.", "Tighten anticlockwise." },
        { "Wait until the gauge is at zero.", "Wait near the gauge." },
        { "Only the hands of the mechanic are in the bore.", "The hands of the mechanic are in the bore." },
        { "No apretar antes de la respuesta.", "Apretar antes de la respuesta." },
        { "Girar a la izquierda.", "Girar a la derecha." },
        { "Nadie bajo el gancho.", "Alguien bajo el gancho." },
        { "Soltar después de la respuesta.", "Soltar antes de la respuesta." },
        { "La cara mecanizada hacia dentro.", "La cara mecanizada hacia fuera." },
        { "Debe quedar seco.", "Puede quedar seco." },
    };

    [Theory]
    [MemberData(nameof(Honest))]
    public void An_honest_rewording_is_wording(string old, string made) => Assert.Null(TellingWords.In(old, made));

    [Theory]
    [MemberData(nameof(Sly))]
    public void A_sentence_that_is_turned_is_told_in_both_directions(string old, string made)
    {
        Assert.NotNull(TellingWords.In(old, made));
        Assert.NotNull(TellingWords.In(made, old));
    }
}
