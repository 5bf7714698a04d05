"""Swedish: the stern, the rudder, what she is built of and who she is."""

WORDS = {
    "TRANSOM": (
        "kanten på spegeln|spegelkanten|akterspegelns kant|akterspegel|spegel|spegeln|akterspegeln|aktern|"
        "spegelns|akterspegel*|akterspegelns|akter|akterns|spegelns överkant|akterspegelns överkant|"
        "botten av spegeln|akterspegelns underkant|spegelns underkant|spegelns lutning|lutningen på spegeln|"
        "spegelns bredd|lodrät akterspegel|rak akterspegel|negativ akterspegel|negativ spegel|omvänd spegel|"
        "akterskepp|akterskeppet|akterkant båt|spegelplan|spegelytan|båtens akter|akterdel|aktergavel|"
        "spegelbrädan|spegelkant|akterspegelkanten|spegelöverkant|akterspegelöverkant|akterspegelunderkant|häck|"
        "häcken|rumpan"
    ),
    "POST": (
        "stävens topp|stävtoppen|akterstävens topp|akterstäv|akterstäven|akterstäv*|stäven|stävens|rorstäven|"
        "toppen av stäven"
    ),
    "HULL": "bordläggningen|plåten|plåt|skrov|skrovet|skrovets|bordläggning|laminat|skrovets laminat",
    "BOAT": "båt|båten|segelbåt|segelbåten|yacht|slup|ketch|båtar|båtmodell|kölbåt|båtens",
    "PLUMB": (
        "är rak|är lodrät|lodrät|lodrät akterspegel|vertikal|lodrätt|lodräta|rak akterspegel|vertikalt|lodräkt|"
        "upprätt|nästan lodrät"
    ),
    "REVERSE": (
        "negativ|negativ akterspegel|negativ spegel|negativt|negativ lutning|negativt lutande|omvänd|"
        "omvänd spegel|inåtlutande|negativa"
    ),
    "COUNTER": (
        "överhäng|klassisk akter|positiv|positivt|positiv lutning|överhängande|klassisk akterspegel|"
        "klassiskt överhäng|utåtlutande"
    ),
    "SCOOP": (
        "badtrappa i aktern|badtrappa|ingjutet badsteg|badsteg i aktern|inbyggd badplattform|"
        "integrerad badplattform|ingjuten badplattform|trappakter|ingjutna steg|badtrapp|akter med badsteg"
    ),
    "OPEN": (
        "öppen akter|öppen spegel|öppet akterskepp|öppen akterspegel|nedfällbar akterspegel|fällbar akterspegel|"
        "nerfällbar akterspegel|aktern är öppen|utan akterspegel|öppen sittbrunn|fällbar spegel"
    ),
    "DOUBLE": (
        "spetsgattad|spetsgattare|kanotakter|dubbelspetsad|spetsgatt|spetsgattaren|kanotstäv|spetsig akter|"
        "dubbeländare|koster|kosterbåt|kosterakter|spetsakter"
    ),
    "RUDDER": (
        "roder|rodret|roderblad|rodrets|roderbladet|huvudroder|dubbla roder|två roder|huvudrodret|"
        "rodrets bakkant|bakkanten på rodret|fribärande roder|påhängt roder|utanpåliggande roder|"
        "akterhängt roder|utombords roder|rodret hänger på"
    ),
    "HUNG_OUT": (
        "påhängt roder|akterhängt|påhängt|utombordsroder|utanpåliggande roder|akterhängt roder|"
        "hängt på akterspegeln|på akterspegeln hängt|hänger på akterspegeln|hänger på spegeln|hängt på spegeln|"
        "akterspegelhängt|utanpåhängt|hänger på akterstäven|hängt på akterstäven|utombords roder|utanpåliggande|"
        "aktermonterat|rodret hänger på|hänger utanpå"
    ),
    "HUNG_IN": (
        "spadrod*|skeggrod*|skegrod*|spadroder|balansroder|balanserat spadroder|fribärande roder|halvbalanserat|"
        "frihängande|skäddroder|på skeg|hänger bakom kölen|skäddhängt|på skädda|halvskädda"
    ),
    "UNDER": (
        "på kölen|i kölens bakkant|under båten|skädda|på skädda|under skrovet|skeg|under aktern|hänger under|"
        "inombords|fribärande|frihängande|skäddan|under skrovets"
    ),
    "TRAILING": (
        "bakkant|bakkanten|akterkant|rodrets bakkant|bakre kant|bakre kanten|bakkanten på rodret|"
        "roderbladets bakkant|aktre kant|akterkanten"
    ),
    "STOCK": "roderstock|roderstocken|hjärtstock|hjärtstocken|roderaxel|roderaxeln|hjärtstockens",
    "GRP": "massiv glasfiber|glasfiberplast|glasfiber|polyester|plast|gfk|grp|armerad plast|glasfiberarmerad|laminat",
    "SOLID": (
        "massiv|massiv glasfiberplast|enkellaminat|massivt|massivlaminat|enkellaminerad|solid|massiv plast|"
        "massivt laminat|helglas|homogen|homogent"
    ),
    "CORED": (
        "sandwich|balsa|distansmaterial|balsakärna|sandwichkonstruktion|skum|divinycell|kärna|distanslaminat|"
        "sandwichlaminat|skumkärna"
    ),
    "WOOD": "trä|mahogny|träbåt|av trä|i trä|ek|mahogny på ek|kravellbyggd|plywood|furu|lärk|klinkbyggd",
    "ALU": "aluminium|alu|aluminiumskrov|av aluminium",
    "STEEL": "stål|stålbåt|av stål|stålskrov|i stål",
    "YEAR": (
        "från|byggd|årsmodell|byggår|byggt|byggd år|tillverkad|sjösatt|sjösattes|från år|tillverkningsår|"
        "modellår|årgång|av år"
    ),
    "HULL_NUMBER": "skrovnummer|byggnummer|skrov nr|båtnummer|skrovnr|bygg nr|tillverkningsnummer|båt nr",
    "BUILDER": "varv|tillverkare|varvet|båtbyggare|byggare|byggd av|båtvarv",
    "MODEL": "modell|båt|typ|båttyp|båtmodell|båtmärke|märke och modell|modellen",
}
