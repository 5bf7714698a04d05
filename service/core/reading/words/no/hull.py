"""Norwegian: the stern, the rudder, what she is built of and who she is."""

WORDS = {
    "TRANSOM": (
        "kanten av speilet|kanten av akterspeilet|speilkanten|akterspeil|speilet|speil|akterspeilet|hekken|"
        "speilets|akterspeil*|hekk|hekkens|bunnen av speilet|speilets helning|speilets bredde|"
        "negativt akterspeil|negativt speil|omvendt speil|negativ hekk|akterspeilets|akterende|akterenden|"
        "speilkant|speilflate|hekkspeil|hekkspeilet|akterskip|akterskipet|speilhøyde|akterspeilhøyde|rumpa|"
        "baken av båten"
    ),
    "POST": (
        "stevnens topp|stevntoppen|akterstevn|akterstevnen|stevnen|akterstevn*|stevnens|toppen av stevnen|rorstevnen"
    ),
    "HULL": "platen|bordganger|hudplank|plate|skrog|skroget|skrogets|laminat|hud",
    "BOAT": "båt|båten|seilbåt|seilbåten|yacht|slupp|ketsj|seilskute|båter|skuta|kutter|båtmodell",
    "PLUMB": "er rett|er loddrett|loddrett|vertikal|vertikalt|loddrette|rett opp og ned|vertikale|nesten loddrett",
    "REVERSE": (
        "negativt akterspeil|negativt|negativt speil|negativ|negative|negativ helning|omvendt|omvendt speil|"
        "negativ hekk|invertert|innoverhellende"
    ),
    "COUNTER": (
        "overheng|klassisk hekk|positiv|positivt|klassisk akterspeil|overhengende|positiv helning|"
        "klassisk overheng|positivt speil"
    ),
    "SCOOP": (
        "badetrinn i hekken|innstøpt badetrinn|innstøpt badeplattform|integrert badeplattform|badetrapp i hekken|"
        "støpt badetrinn|innebygd badeplattform|badetrapp"
    ),
    "OPEN": (
        "åpen hekk|åpent akterspeil|åpen akterende|åpent speil|nedfellbart akterspeil|nedfellbar hekk|"
        "hekken er åpen|uten akterspeil|åpen cockpit|åpent akter|speil som felles ned"
    ),
    "DOUBLE": (
        "spissgatter|spissgattet|kanohekk|spissgatt|spissgatteren|kanustevn|spiss akter|dobbeltender|spiss hekk|"
        "colin archer|redningsskøyte|spissgattskrog"
    ),
    "RUDDER": (
        "ror|roret|rorblad|spaderor|rorets|rorbladet|hovedror|dobbelt ror|to ror|hovedroret|rorets bakkant|"
        "bakkanten av roret|bakkant ror|bakkant av ror|roret bakkant|balansert spaderor|frittbærende spaderor|"
        "frittbærende ror|påhengt ror|utenbords ror|akterhengt ror|utvendig ror"
    ),
    "HUNG_OUT": (
        "påhengt ror|påhengt|utenbords ror|akterhengt ror|akterhengt|henger på speilet|henger på akterspeilet|"
        "hengt på akterspeilet|hengt på speilet|utenpåhengt|utvendig ror|utvendig|påhengt på speilet|"
        "henger på akterstevnen|hengt på akterstevnen|utenbords|montert på speilet|henger utenpå|speilhengt|"
        "opphengt på speilet"
    ),
    "HUNG_IN": (
        "spaderor*|balanseror*|skegror*|spaderor|balansert spaderor|balanseror|frittbærende spaderor|"
        "halvbalansert|skeghengt|bak kjølen|på skjegg|frittbærende ror|skjeggror|delvis balansert|på skeg"
    ),
    "UNDER": (
        "på kjølen|frittbærende|skjegg|under båten|under skroget|skeg|under hekken|opphengt under|innenbords|"
        "skjegget|under akterenden"
    ),
    "TRAILING": (
        "bakkant|bakkanten|akterkant|rorets bakkant|bakre kant|bakkanten av roret|bakkant ror|aktre kant|"
        "bakkant av ror|roret bakkant|akterkanten"
    ),
    "STOCK": "rorstamme|rorstammen|rorakse|roraksen|rorstammens|hjertestokk",
    "GRP": "massiv glassfiber|glassfiber|polyester|plast|grp|glassfiberarmert|laminat",
    "SOLID": (
        "massiv|massivt|massiv glassfiber|massivt laminat|massivlaminat|enkeltlaminat|solid|heltlaminat|"
        "uten kjerne|massiv plast|homogen"
    ),
    "CORED": "sandwich|balsa|sandwichkonstruksjon|balsakjerne|skum|divinycell|kjerne|skumkjerne",
    "WOOD": "tre|mahogni|trebåt|av tre|i tre|eik|furu|kravellbygd|klinkbygd|lerk|finer|kryssfiner",
    "ALU": "aluminium|alu|aluminiumsskrog|i aluminium",
    "STEEL": "stål|stålbåt|i stål|stålskrog|av stål",
    "YEAR": (
        "fra|bygd|bygget|årsmodell|byggeår|bygd i|bygget i|bygg|sjøsatt|fra år|produsert|årgang|sjøsatt i|"
        "modellår|byggår"
    ),
    "HULL_NUMBER": "skrognummer|byggenummer|skrog nr|byggenr|skrognr|bygge nr|båtnummer",
    "BUILDER": "verft|byggeri|produsent|verftet|båtbygger|bygger|bygget av|bygd av",
    "MODEL": "modell|båt|type|båttype|båtmodell|båtmerke|merke og modell|type båt|båt type",
}
