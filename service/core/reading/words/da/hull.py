"""Danish: the stern, the rudder, what she is built of and who she is."""

WORDS = {
    "TRANSOM": (
        "kanten af spejlet|kanten af agterspejlet|spejlkanten|agterspejl|spejlet|spejl|agterspejlet|hækken|hæk|"
        "hækkens|spejlets|agterspejl*|agterenden|agterende|agterspejlets|hækkens overkant|bunden af spejlet|"
        "hækkens underkant|spejlets hældning|hækkens hældning|spejlets bredde|lodret spejl|lodret hæk|"
        "negativt agterspejl|negativt spejl|negativ hæk|omvendt spejl|hækspejl|hækspejlet|spejlflade|spejlfladen|"
        "agterskib|agterskibet|hækparti|hækpartiet|agterspejlskant|spejlkant|bagenden|agterspejlkant|"
        "hækkens overside|spejlets overkant|agterspejlets overkant|agterspejlets underkant|spejlets underkant|"
        "røven af båden|hækfladen"
    ),
    "POST": (
        "stævnens top|stævntoppen|agterstævn|agterstævnen|stævnen|agterstævn*|stævnens|toppen af stævnen|"
        "rorstævnen|stævn"
    ),
    "HULL": "plade|pladen|klædning|skrog|skroget|skrogets|laminat|hud",
    "BOAT": "båd|båden|sejlbåd|sejlbåden|yacht|ketch|slup|skib|kutter|både|glasfiberbåd|bådmodel|sejlskib",
    "PLUMB": "er ret lodret|er lodret|lodret|lodret spejl|lodrette|lodret hæk|lige op og ned|vertikal|næsten lodret",
    "REVERSE": (
        "negativt agterspejl|negativt|negativt spejl|negativ|negative|negativ hældning|omvendt|negativ hæk|"
        "inverteret|omvendt spejl|indadhældende"
    ),
    "COUNTER": (
        "overheng|klassisk hekk|positiv|positivt|klassisk hæk|overhæng|overhængende|positiv hældning|"
        "klassisk agterspejl"
    ),
    "SCOOP": (
        "støbt i skroget|støbt ind i skroget|badeplatform støbt|badetrinn i hekken|indstøbt badetrin|"
        "indstøbt badeplatform|badetrin i hækken|integreret badeplatform|indbygget badeplatform|"
        "badetrappe i hækken|støbt badetrin|badetrappe"
    ),
    "OPEN": (
        "åben hæk|åbent agterspejl|åbent spejl|nedfældeligt agterspejl|hækken er åben|uden agterspejl|"
        "åben agterende|hæk der kan klappes ned|nedklappelig hæk|åbent cockpit|åben agter"
    ),
    "DOUBLE": (
        "spidsgatter|spidsgattet|kanohæk|spidsgattere|spidsgatteren|spidsgatted|kanostævn|spids agter|spids hæk|"
        "dobbeltender|spidsgat"
    ),
    "RUDDER": (
        "ror|roret|rorblad|spaderor|rorets|rorbladet|hovedror|dobbelt ror|to ror|hovedroret|rorets bagkant|"
        "bagkanten af roret|bagkant ror|bagkant af ror|balanceret spaderor|balanceret ror|skæg ror|"
        "fritbærende ror|påhængt ror|udenbords ror|udvendigt ror|agterhængt ror"
    ),
    "HUNG_OUT": (
        "ophængt på spejlet|ophængt på agterspejlet|ophængt på hækken|ophængt|påhængt ror|påhængt|udenbords ror|"
        "hængt på agterspejlet|hænger på hækken|hænger på agterspejlet|hængt på hækken|hænger på spejlet|"
        "hængt på spejlet|hængt på agterstævnen|hænger på agterstævnen|udvendigt ror|udenpåhængt|agterhængt|"
        "agterhængt ror|hækhængt|hæk hængt|udenbords|monteret på hækken|udvendigt|spejlhængt"
    ),
    "HUNG_IN": (
        "spaderor*|balanceror*|skegror*|spaderor|balanceret spaderor|balanceror|fritbærende|balanceret ror|"
        "halvbalanceret|bag kølen|på skæg|skæg ror|på skeg|skegror|fritbærende ror|finneror"
    ),
    "UNDER": (
        "på kølen|fritbærende|skæg|under båden|under skroget|skeg|under hækken|ophængt under|indenbords|"
        "under agterenden|under bunden"
    ),
    "TRAILING": (
        "bagkant|bagkanten|agterkant|rorets bagkant|bageste kant|bagkanten af roret|bagkant ror|bagerste kant|"
        "bagkant af ror|agterkanten"
    ),
    "STOCK": "rorstamme|rorstammen|rorstammens|rorakse|roraksen",
    "GRP": "massiv glasfiber|glasfiber|polyester|plast|grp|glasfiberarmeret|laminat|glasfiberbåd",
    "SOLID": (
        "massiv|massivt|massivt laminat|massiv laminat|massiv glasfiber|enkeltlaminat|solid|uden kerne|"
        "massivlaminat|massiv plast"
    ),
    "CORED": "sandwich|balsa|sandwichkonstruktion|balsakerne|skum|divinycell|kerne|skumkerne|i sandwich",
    "WOOD": "træ|mahogni|træbåd|i træ|af træ|eg|lærk|mahogni på eg|kravelbygget|klinkbygget|krydsfiner|fyr",
    "ALU": "aluminium|alu|aluminiumsskrog|i aluminium",
    "STEEL": "stål|stålbåd|i stål|stålskrog|af stål",
    "YEAR": "fra|bygget|årgang|byggeår|bygget i|søsat|fra år|produceret|bygget år|søsat i|modelår",
    "HULL_NUMBER": "skrognummer|byggenummer|skrog nr|byggenr|skrognr|bygge nr|bådnummer",
    "BUILDER": "værft|byggeri|producent|værftet|bådbygger|bygget af|bygger",
    "MODEL": "model|båd|type|bådtype|bådmodel|bådmærke|mærke og model|type båd",
}
