using System.Collections.Frozen;

namespace Witnessmark.Checking.Wording;

/// <summary>The closed word lists that rules read with. A word is added here, with a case file that shows why.</summary>
internal static class Words
{
    /// <summary>A name that begins so forbids.</summary>
    public static readonly WordList Forbidding = new("not never don't no avoid", "no nunca jamás evite evitar");

    /// <summary>A name that begins so does not begin with what to do.</summary>
    public static readonly WordList NotAnOrder = new(
        "the a an this that these those it its they we you i he she there your our their",
        "el la los las un una unos unas este esta estos estas ese esa eso lo su sus se usted ustedes");

    /// <summary>Work that is done and signed, so a step and never a line of a message.</summary>
    public static readonly WordList Work = new(
        """
        fit refit remove tighten loosen torque snug measure drain fill refill lift install replace assemble disassemble
        dismantle unscrew unbolt bolt connect disconnect adjust shim press drill weld grind jack pump bleed grease oil
        """,
        """
        monte montar desmonte desmontar apriete apretar afloje aflojar mida medir vacíe vaciar drene drenar llene llenar
        levante levantar ice izar instale instalar sustituya sustituir reemplace reemplazar cambie cambiar arme armar
        desarme desarmar conecte conectar desconecte desconectar ajuste ajustar purgue purgar engrase engrasar aceite aceitar
        """);

    /// <summary>Behind a verb of work they say how, and how is what a message is for: lift with two people.</summary>
    public static readonly WordList How = new(
        "with without by only from slowly gently when as never no less more",
        "con sin por solo sólo desde despacio lentamente cuando nunca menos más");

    /// <summary>What people take off or away to be safe.</summary>
    public static readonly WordList OfPeople = new(
        "your hands hand fingers feet watch watches jewellery jewelry clothing",
        "las sus manos dedos pies reloj relojes anillos joyas ropa");

    /// <summary>Words that can be said without looking.</summary>
    public static readonly WordList Empty = new(
        "ok okay yes done good fine checked ready right roger all is it",
        "ok vale sí si listo lista bien hecho hecha correcto correcta todo está es");

    /// <summary>Beginnings of words that say what happens to people or to the machine, or to what part of somebody.</summary>
    public static readonly WordList Harm = new(
        """
        crush burn kill death die dead fatal injur hurt harm wound cut sever pinch trap nip
        break broke crack tear torn ruin damag destroy wreck seize score leak scald blind eye
        poison choke suffocat drown electrocut shock strike struck hit explod explos burst fire ignit
        amputat hands finger foot feet skin legs lose loss lost bruis strip bend bent shear overheat fail pierc inject spoil jam
        """,
        """
        aplast quem mat muert mor fatal lesi herid her dañ cort amput atrap pellizc romp rot
        rasg destru arruin griet fug escald cieg ojo envenen asfix ahog electrocut golpe explo
        manos dedo pies piel brazo pierna revent incend fuego perd pérdida dobl ciz sobrecal fall inyec atasc agarrot
        """);

    /// <summary>Words that say of a part that it was never fitted before.</summary>
    public static readonly WordList New = new("new unused fresh", "nuevo nueva nuevos nuevas");

    /// <summary>Together they say that dust or dirt is blown away: what is done, with what, and to what end.</summary>
    public static readonly WordList Blowing = new("blow blowing", "sople soplar soplando");

    public static readonly WordList Air = new("air", "aire");

    public static readonly WordList AirTools = new("compressed shop gun nozzle lance hose line jet blast", "comprimido pistola boquilla manguera chorro");

    public static readonly WordList Cleaning = new("clean off out away through dust dry dirt grit swarf spin", "limpie limpiar limpio polvo seque secar seco suciedad virutas gire");

    /// <summary>In such a sentence something is kept from being done.</summary>
    public static readonly WordList Denying = new("nothing nobody without instead neither nor", "nada nadie sin ni");

    /// <summary>Words that turn a step into another one and look much the same on oily paper, each with the mark of its set.</summary>
    public static readonly FrozenDictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> OppositesEnglish = Sets(
        "left right", "front rear back", "in out", "on off", "up down", "before after", "first second third last next", "clockwise anticlockwise counterclockwise",
        "upper lower", "top bottom", "inner outer", "inside outside", "open close", "tighten loosen", "with without", "lock unlock",
        "connect disconnect", "raise lower", "fit remove", "install remove", "high low", "full empty", "hot cold");

    public static readonly FrozenDictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> OppositesSpanish = Sets(
        "izquierda derecha", "izquierdo derecho", "delantera trasera", "delantero trasero", "antes después", "primero segundo último", "primera segunda última",
        "superior inferior", "arriba abajo", "interior exterior", "dentro fuera", "abra cierre", "abrir cerrar", "apriete afloje", "apretar aflojar",
        "con sin", "conecte desconecte", "conectar desconectar", "horario antihorario", "monte desmonte", "suba baje", "alto bajo", "alta baja");

    private static FrozenDictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> Sets(params string[] sets) => sets
        .SelectMany((set, number) => set.Split(' ').Select(word => (word, mark: $"<{number}>")))
        .DistinctBy(w => w.word)
        .ToFrozenDictionary(w => w.word, w => w.mark, StringComparer.OrdinalIgnoreCase)
        .GetAlternateLookup<ReadOnlySpan<char>>();
}
