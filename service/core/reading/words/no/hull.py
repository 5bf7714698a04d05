"""Norwegian: the stern, the rudder, what she is built of and who she is."""

WORDS = {
    "TRANSOM": (
        "kanten av speilet|kanten av akterspeilet|speilkanten|akterspeil|speilet|speil|akterspeilet|hekken|"
        "speilets|akterspeil*|hekk|hekkens|bunnen av speilet|speilets helning|speilets bredde|"
        "negativt akterspeil|negativt speil|omvendt speil|negativ hekk|akterspeilets|akterende|akterenden|"
        "speilkant|speilflate|hekkspeil|hekkspeilet|akterskip|akterskipet|speilhøyde|akterspeilhøyde|rumpa|"
        "baken av båten|stusstrinn|opptrinn"
    ),
    "POST": (
        "stevnens topp|stevntoppen|akterstevn|akterstevnen|stevnen|akterstevn*|stevnens|toppen av stevnen|rorstevnen"
    ),
    "HULL": (
        "platen|bordganger|hudplank|plate|skrog|skroget|skrogets|laminat|hud|plank|planker|bordgang|hudplanker|"
        "huden|hudplate"
    ),
    "BOAT": (
        "båt|båten|seilbåt|seilbåten|yacht|slupp|ketsj|seilskute|båter|skuta|kutter|båtmodell|aluminiumsbåt|"
        "aluminiumbåt|stålbåt|trebåt|plastbåt"
    ),
    "PLUMB": (
        "er rett|er loddrett|loddrett|vertikal|vertikalt|loddrette|rett opp og ned|vertikale|nesten loddrett|"
        "nesten vertikal|helt loddrett|helt vertikal|i lodd|uten helning|ingen helning|rett akterspeil|"
        "loddrett akterspeil|tilnærmet loddrett|så godt som loddrett|loddrett speil|rett speil|null grader|"
        "rett som en vegg|står rett"
    ),
    "REVERSE": (
        "negativt akterspeil|negativt|negativt speil|negativ|negative|negativ helning|omvendt|omvendt speil|"
        "negativ hekk|invertert|innoverhellende|foroverhellende|heller forover|forover hellende|invers|inverst|"
        "framoverhellende|omvendt akterspeil|negativ vinkel|skrår forover"
    ),
    "COUNTER": (
        "overheng|klassisk hekk|positiv|positivt|klassisk akterspeil|overhengende|positiv helning|"
        "klassisk overheng|positivt speil|tradisjonelt speil|akteroverhellende|heller akterover|"
        "akterover hellende|langt overheng|klassisk akterende|normalt speil|vanlig akterspeil|"
        "positivt akterspeil|bakoverhellende|heller bakover"
    ),
    "SCOOP": (
        "støpt inn i skroget|støpt i skroget|innstøpt i skroget|bygd inn i skroget|innebygd i skroget|"
        "integrert i skroget|støpt i ett med skroget|badetrinn i hekken|innstøpt badetrinn|"
        "innstøpt badeplattform|integrert badeplattform|badetrapp i hekken|støpt badetrinn|"
        "innebygd badeplattform|badetrapp|badetrappen|trinn i hekken|badetrinn i akterspeilet|trapp i hekken|"
        "innstøpte trinn|trappehekk|badetrinn|innstøpt trinn|støpt trinn|hekk med trinn|trinn i akterspeilet|"
        "scoop|innebygde trinn|akterspeil med trinn"
    ),
    "OPEN": (
        "åpen hekk|åpent akterspeil|åpen akterende|åpent speil|nedfellbart akterspeil|nedfellbar hekk|"
        "hekken er åpen|uten akterspeil|åpen cockpit|åpent akter|speil som felles ned|"
        "felles ned til badeplattform|åpen bak|åpen akter|nedfellbart speil|hekken kan felles|"
        "akterspeilet felles ned|helt åpen hekk|åpent cockpit|akterspeilet kan slås ned|speilet felles ned|"
        "åpning i akterspeilet|ikke noe akterspeil"
    ),
    "DOUBLE": (
        "spissgatter|spissgattet|kanohekk|spissgatt|spissgatteren|kanustevn|spiss akter|dobbeltender|spiss hekk|"
        "colin archer|redningsskøyte|spissgattskrog|spiss akterende|spissgatta|spiss i begge ender|"
        "colin archer type|rs skøyte|kanostevn|spissgattere|spiss bak|kanoformet hekk|losskøyte|spisshekk"
    ),
    "RUDDER": (
        "roret henger på kjølen|roret henger bak på kjølen|rorets underkant|bunnen av roret|underkanten av roret|"
        "toppen av roret|rortopp|rortoppen|rorhode|rorhodet|rorets topp|ror|roret|rorblad|spaderor|rorets|"
        "rorbladet|hovedror|dobbelt ror|to ror|hovedroret|rorets bakkant|bakkanten av roret|bakkant ror|"
        "bakkant av ror|roret bakkant|balansert spaderor|frittbærende spaderor|frittbærende ror|påhengt ror|"
        "utenbords ror|akterhengt ror|utvendig ror|rorbladets|båtens ror|doble ror|rora|styreror|rorbladene|"
        "bladet|bladets|hekkhengt ror|speilhengt ror|balansert ror|halvbalansert ror"
    ),
    "HUNG_OUT": (
        "påhengt ror|påhengt|utenbords ror|akterhengt ror|akterhengt|henger på speilet|henger på akterspeilet|"
        "hengt på akterspeilet|hengt på speilet|utenpåhengt|utvendig ror|utvendig|påhengt på speilet|"
        "henger på akterstevnen|hengt på akterstevnen|utenbords|montert på speilet|henger utenpå|speilhengt|"
        "opphengt på speilet|påhengsror|hekkmontert|hengt på hekken|henger på hekken|henger akter|hengt akterut|"
        "festet i akterspeilet|festet på akterspeilet|festet på speilet|montert på akterspeilet|"
        "sitter på akterspeilet|sitter på speilet|utenpåliggende|på fingerlinger|fingerlinger|utenpå speilet|"
        "utenpå akterspeilet|hekkhengt|akterspeilhengt|henger bak|henger i akterspeilet|rorbeslag på speilet|"
        "opphengt på akterspeilet|hengslet på speilet|hengslet til akterspeilet|opphengt i akterspeilet|"
        "hekkhengt ror|speilhengt ror|hengt utenpå|opphengt akter"
    ),
    "HUNG_IN": (
        "roret henger på kjølen|roret henger bak på kjølen|bak på kjølen|på kjølen|i bakkant av kjølen|"
        "på bakkanten av kjølen|spaderor*|balanseror*|skegror*|spaderor|balansert spaderor|balanseror|"
        "frittbærende spaderor|halvbalansert|skeghengt|bak kjølen|på skjegg|frittbærende ror|skjeggror|"
        "delvis balansert|på skeg|spaderoret|balansert ror|balansert|frittbærende|fritthengende|skegror|skjegget|"
        "halvskegg|halvskeg|kjølhengt|henger på kjølen|hengt på kjølen|på finne|finneror|bak skegg|bak skeg|"
        "underhengt|med skeg|halvbalansert ror|henger under|frittstående|balanseroret|bak en skeg|på en skeg|"
        "henger bak kjølen|festet til kjølen|opphengt på kjølen|skegget|på halvskeg|bak langkjølen|"
        "bak den lange kjølen"
    ),
    "UNDER": (
        "på kjølen|frittbærende|skjegg|under båten|under skroget|skeg|under hekken|opphengt under|innenbords|"
        "skjegget|under akterenden|innunder|inn under|helt under|under cockpiten|under speilet|sitter under|"
        "er under|henger under"
    ),
    "TRAILING": (
        "bakkant|bakkanten|akterkant|rorets bakkant|bakre kant|bakkanten av roret|bakkant ror|aktre kant|"
        "bakkant av ror|roret bakkant|akterkanten|bakerste kant|bakkant av roret|akterste kant|bakerste punkt|"
        "akterste punkt|bakende|rorbladets bakkant|bakkant rorblad|avløpskant|avløpskanten|rorets akterkant|"
        "bakerste del|akterste del|aktre ende"
    ),
    "STOCK": (
        "rorstamme|rorstammen|rorakse|roraksen|rorstammens|hjertestokk|rorstokk|rorstokken|roraksel|rorakselen|"
        "senter rorstamme|rorets akse|dreieakse|dreieaksen|hjertestokken|rorlager"
    ),
    "GRP": (
        "massiv glassfiber|glassfiber|polyester|plast|grp|glassfiberarmert|laminat|plastbåt|gfk|glassfiberbåt|"
        "glassfiberskrog|glassfiberlaminat|glassfiberarmert polyester|frp|vinylester"
    ),
    "SOLID": (
        "massiv|massivt|massiv glassfiber|massivt laminat|massivlaminat|enkeltlaminat|solid|heltlaminat|"
        "uten kjerne|massiv plast|homogen|massiv laminat|enkeltskall|ikke sandwich|håndopplagt|massiv gfk|"
        "kompakt laminat|ensjikts|massiv polyester|uten sandwich|ingen sandwich|håndlagt|massivt glassfiber|"
        "helglass|solid laminat|massive"
    ),
    "CORED": (
        "sandwich|balsa|sandwichkonstruksjon|balsakjerne|skum|divinycell|kjerne|skumkjerne|airex|pvc skum|"
        "kjernemateriale|distansemateriale|sandwichlaminat|bikake|coremat|sandwich med|skumsandwich|"
        "balsasandwich|sandwichbygd|sandwichskrog|kjernen|med kjerne"
    ),
    "WOOD": (
        "tre|mahogni|trebåt|av tre|i tre|eik|furu|kravellbygd|klinkbygd|lerk|finer|kryssfiner|treskrog|mahogny|"
        "mahogni på eik|furu på eik|lerk på eik|heltre|bygd i tre|treverk|tre epoksy|tre/epoksy|limtre|kaldstøpt|"
        "oregon pine|tresnekke|bygd av tre|trekonstruksjon|treskuta|tre og epoksy|skrog av tre|skrog i tre|"
        "marinekryssfiner|skrog i mahogni|sederlister|trebåten|mahognibåt|eikebåt"
    ),
    "ALU": (
        "aluminium|alu|aluminiumsskrog|i aluminium|av aluminium|aluminiumsbåt|alubåt|aluskrog|lettmetall|"
        "bygd i aluminium|aluminiumskrog|sveist aluminium|aluminiumsplate|bygd av aluminium|skrog av aluminium|"
        "skrog i aluminium|sjøaluminium|aluminiumsplater|aluminiumsbåten|aluminiumbåt"
    ),
    "STEEL": (
        "stål|stålbåt|i stål|stålskrog|av stål|stålbåten|bygd i stål|stålplate|stålplater|sveist stål|skipsstål|"
        "stålketch|stålskute|bygd av stål|skrog av stål|skrog i stål|stålkonstruksjon|cortenstål|stålskroget"
    ),
    "YEAR": (
        "fra|bygd|bygget|årsmodell|byggeår|bygd i|bygget i|bygg|sjøsatt|fra år|produsert|årgang|sjøsatt i|"
        "modellår|byggår|produsert i|bygd på"
    ),
    "HULL_NUMBER": "skrognummer|byggenummer|skrog nr|byggenr|skrognr|bygge nr|båtnummer",
    "BUILDER": "verft|byggeri|produsent|verftet|båtbygger|bygger|bygget av|bygd av",
    "MODEL": "modell|båt|type|båttype|båtmodell|båtmerke|merke og modell|type båt|båt type",
}
