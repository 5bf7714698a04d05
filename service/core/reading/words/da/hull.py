"""Danish: the stern, the rudder, what she is built of and who she is."""

WORDS = {
    "TRANSOM": (
        "kanten af spejlet|kanten af agterspejlet|spejlkanten|agterspejl|spejlet|spejl|agterspejlet|hækken|hæk|"
        "hækkens|spejlets|agterspejl*|agterenden|agterende|agterspejlets|hækkens overkant|bunden af spejlet|"
        "hækkens underkant|spejlets hældning|hækkens hældning|spejlets bredde|lodret spejl|lodret hæk|"
        "negativt agterspejl|negativt spejl|negativ hæk|omvendt spejl|hækspejl|hækspejlet|spejlflade|spejlfladen|"
        "agterskib|agterskibet|hækparti|hækpartiet|agterspejlskant|spejlkant|bagenden|agterspejlkant|"
        "hækkens overside|spejlets overkant|agterspejlets overkant|agterspejlets underkant|spejlets underkant|"
        "røven af båden|hækfladen|stødtrin|opstigning"
    ),
    "POST": (
        "stævnens top|stævntoppen|agterstævn|agterstævnen|stævnen|agterstævn*|stævnens|toppen af stævnen|"
        "rorstævnen|stævn"
    ),
    "HULL": "plade|pladen|klædning|skrog|skroget|skrogets|laminat|hud|planke|planker|bordgang|skrogplade",
    "BOAT": (
        "båd|båden|sejlbåd|sejlbåden|yacht|ketch|slup|skib|kutter|både|glasfiberbåd|bådmodel|sejlskib|"
        "aluminiumsbåd|stålbåd|træbåd"
    ),
    "PLUMB": (
        "er ret lodret|er lodret|lodret|lodret spejl|lodrette|lodret hæk|lige op og ned|vertikal|næsten lodret|"
        "helt lodret|helt lodrette|i lod|næsten lodrette|ret op og ned|uden hældning|ingen hældning|vertikalt|"
        "så godt som lodret|praktisk talt lodret|ret lodret|tilnærmelsesvis lodret|lodretstående|helt ret|"
        "nul grader|står ret"
    ),
    "REVERSE": (
        "negativt agterspejl|negativt|negativt spejl|negativ|negative|negativ hældning|omvendt|negativ hæk|"
        "inverteret|omvendt spejl|indadhældende|fremadhældende|foroverhældende|hælder forover|hælder fremad|"
        "inverst|negativ vinkel|omvendt hæk|omvendt hældning|omvendt agterspejl|fremad hældende|invers|"
        "hælder indad|negativ spejl"
    ),
    "COUNTER": (
        "overheng|klassisk hekk|positiv|positivt|klassisk hæk|overhæng|overhængende|positiv hældning|"
        "klassisk agterspejl|agteroverhældende|hælder agterover|hælder bagud|positivt agterspejl|positivt spejl|"
        "traditionelt agterspejl|normalt agterspejl|langt overhæng|bagudhældende|traditionel hæk|normal hæk|"
        "positiv hæk|almindelig hæk|agterover hældende|klassisk agterende"
    ),
    "SCOOP": (
        "støbt sammen med skroget|indstøbt i skroget|integreret i skroget|bygget ind i skroget|"
        "støbt i ét med skroget|støbt i skroget|støbt ind i skroget|badeplatform støbt|badetrinn i hekken|"
        "indstøbt badetrin|indstøbt badeplatform|badetrin i hækken|integreret badeplatform|"
        "indbygget badeplatform|badetrappe i hækken|støbt badetrin|badetrappe|badetrin i agterspejlet|"
        "indbygget badetrappe|trin i hækken|trin i agterspejlet|hæk med trin|støbt badeplatform|indstøbte trin|"
        "integrerede trin|trappehæk|indbyggede trin|badeplatform indbygget|scoop|indstøbt badetrappe|støbte trin|"
        "indbygget badetrin|integreret badetrin"
    ),
    "OPEN": (
        "åben hæk|åbent agterspejl|åbent spejl|nedfældeligt agterspejl|hækken er åben|uden agterspejl|"
        "åben agterende|hæk der kan klappes ned|nedklappelig hæk|åbent cockpit|åben agter|åben bagtil|"
        "helt åben hæk|hækken klappes ned|agterspejlet klappes ned|åben bagende|åbent agter|klapspejl|hækklap|"
        "nedfældelig hæk|intet agterspejl|åbent agterskib|hæklem|hækport|spejlet klappes ned|uden hæk|"
        "nedklappeligt agterspejl|klapbart agterspejl"
    ),
    "DOUBLE": (
        "spidsgatter|spidsgattet|kanohæk|spidsgattere|spidsgatteren|spidsgatted|kanostævn|spids agter|spids hæk|"
        "dobbeltender|spidsgat|spids i begge ender|spids bagende|spidsgattede|colin archer|kanoformet hæk|"
        "dobbeltspids|spids bagtil|kanoagter|spidsgatta|spids agterende|krydserhæk|spidsgatterens|spidsgatterhæk"
    ),
    "RUDDER": (
        "roret hænger på kølen|roret hænger bag på kølen|rorets underkant|bunden af roret|underkanten af roret|"
        "rorets top|rorhoved|rorhovedet|toppen af roret|rortop|rortoppen|ror|roret|rorblad|spaderor|rorets|"
        "rorbladet|hovedror|dobbelt ror|to ror|hovedroret|rorets bagkant|bagkanten af roret|bagkant ror|"
        "bagkant af ror|balanceret spaderor|balanceret ror|skæg ror|fritbærende ror|påhængt ror|udenbords ror|"
        "udvendigt ror|agterhængt ror|rorbladets|bådens ror|rorenes|rorene|rorblade|hovedrorets|rorbladene|"
        "bladet|bladets|hækhængt ror|halvbalanceret ror|fritbærende spaderor"
    ),
    "HUNG_OUT": (
        "ophængt på spejlet|ophængt på agterspejlet|ophængt på hækken|ophængt|påhængt ror|påhængt|udenbords ror|"
        "hængt på agterspejlet|hænger på hækken|hænger på agterspejlet|hængt på hækken|hænger på spejlet|"
        "hængt på spejlet|hængt på agterstævnen|hænger på agterstævnen|udvendigt ror|udenpåhængt|agterhængt|"
        "agterhængt ror|hækhængt|hæk hængt|udenbords|monteret på hækken|udvendigt|spejlhængt|påhængsror|"
        "hænger agter|hængt agterud|fastgjort på agterspejlet|fastgjort til spejlet|monteret på agterspejlet|"
        "monteret på spejlet|sidder på agterspejlet|sidder på spejlet|sidder på hækken|fingerlinger|"
        "i fingerlinger|udenpå spejlet|udenpå agterspejlet|udenpåliggende|hækmonteret|hænger bag|"
        "hængslet på spejlet|hængt på spejl|agterhængte|rorbeslag på spejlet|hænger udenbords|hængt udenpå|"
        "hækhængt ror|ophængt i spejlet|hænger udenpå|ophængt agter"
    ),
    "HUNG_IN": (
        "roret hænger på kølen|roret hænger bag på kølen|bag på kølen|på kølen|på bagkanten af kølen|"
        "i bagkanten af kølen|spaderor*|balanceror*|skegror*|spaderor|balanceret spaderor|balanceror|fritbærende|"
        "balanceret ror|halvbalanceret|bag kølen|på skæg|skæg ror|på skeg|skegror|fritbærende ror|finneror|"
        "spaderoret|balancerede|halvbalanceret ror|fritstående|frithængende|fritbærende spaderor|på finne|"
        "bag en skeg|bag skeg|bag skæg|bag skægget|halvskæg|halvskeg|kølhængt|hængt på kølen|hænger på kølen|"
        "hængt bag kølen|hænger bag kølen|underhængt|underhængende|kølror|kølroret|på halvt skæg|med skæg|"
        "ophængt på kølen|fastgjort til kølen|på et skæg|på en skeg|monteret på kølen|spaderors|"
        "bag den lange køl|bag langkølen"
    ),
    "UNDER": (
        "på kølen|fritbærende|skæg|under båden|under skroget|skeg|under hækken|ophængt under|indenbords|"
        "under agterenden|under bunden|inde under|helt under|under cockpittet|under spejlet|sidder under|"
        "er under|sidder nedenunder"
    ),
    "TRAILING": (
        "bagkant|bagkanten|agterkant|rorets bagkant|bageste kant|bagkanten af roret|bagkant ror|bagerste kant|"
        "bagkant af ror|agterkanten|agterste kant|bagerste punkt|agterste punkt|rorbladets bagkant|"
        "bagkanten på roret|rorets agterkant|bagende|agtre kant|afløbskant|afløbskanten|agterende af roret|"
        "bageste punkt|agterkant ror|rorkanten|bagkant på roret|bageste del|agterligste punkt|bagkanter"
    ),
    "STOCK": (
        "rorstamme|rorstammen|rorstammens|rorakse|roraksen|rorstok|rorstokken|roraksel|rorakslen|"
        "rorstammens midte|rorets akse|drejeakse|drejeaksen|rorstævn|centrum af rorstammen|midten af rorstammen|"
        "hjertestok"
    ),
    "GRP": (
        "massiv glasfiber|glasfiber|polyester|plast|grp|glasfiberarmeret|laminat|glasfiberbåd|glasfiberplast|"
        "plastbåd|gfk|glasfiberskrog|glasfiberlaminat|glasfiberarmeret polyester|frp|plastikbåd|glasfiberen"
    ),
    "SOLID": (
        "massiv|massivt|massivt laminat|massiv laminat|massiv glasfiber|enkeltlaminat|solid|uden kerne|"
        "massivlaminat|massiv plast|enkeltskrog|ikke sandwich|håndoplagt|massiv polyester|massivt glasfiber|"
        "uden sandwich|ingen sandwich|enkelt laminat|kompakt laminat|massivt polyester|massiv gfk|massive|"
        "solidt laminat|solid glasfiber|enkeltskallet|håndlamineret|helstøbt|uden balsa|uden skum"
    ),
    "CORED": (
        "sandwich|balsa|sandwichkonstruktion|balsakerne|skum|divinycell|kerne|skumkerne|i sandwich|airex|"
        "pvc skum|kernemateriale|sandwichlaminat|bikage|coremat|sandwich med|skumsandwich|balsasandwich|"
        "distancemateriale|sandwichbygget|sandwichskrog|sandwichopbygning|kernen|med kerne|kerne af balsa|"
        "kerne af skum|divinycellkerne|sandwichopbygget"
    ),
    "WOOD": (
        "træbåden|egetræsbåd|træ|mahogni|træbåd|i træ|af træ|eg|lærk|mahogni på eg|kravelbygget|klinkbygget|"
        "krydsfiner|fyr|træskrog|i mahogni|af mahogni|lærk på eg|eg på eg|mahognibåd|marinefiner|bygget i træ|"
        "bygget af træ|trækonstruktion|træ epoxy|træ/epoxy|limtræ|oregon pine|fyr på eg|af eg|formlimet|"
        "krydsfinér|træskib|trækutter|skrog i træ|skrog af træ|lærketræ|egetræ|mahogniskrog"
    ),
    "ALU": (
        "aluminiumsbåden|aluminiumbåd|aluminium|alu|aluminiumsskrog|i aluminium|af aluminium|aluminiumsbåd|"
        "aluskrog|alubåd|letmetal|aluminiumsplade|bygget i aluminium|svejset aluminium|aluminiumskrog|"
        "bygget af aluminium|skrog af aluminium|skrog i aluminium|aluminiumsplader"
    ),
    "STEEL": (
        "stål|stålbåd|i stål|stålskrog|af stål|stålbåden|stålskib|stålplade|bygget i stål|svejset stål|skibsstål|"
        "stålketch|stålkutter|bygget af stål|skrog af stål|skrog i stål|stålkonstruktion|cortenstål|stålplader|"
        "stålskroget|stålskonnert"
    ),
    "YEAR": (
        "fra|bygget|årgang|byggeår|bygget i|søsat|fra år|produceret|bygget år|søsat i|modelår|bygget på|produceret i"
    ),
    "HULL_NUMBER": "skrognummer|byggenummer|skrog nr|byggenr|skrognr|bygge nr|bådnummer",
    "BUILDER": "værft|byggeri|producent|værftet|bådbygger|bygget af|bygger",
    "MODEL": "model|båd|type|bådtype|bådmodel|bådmærke|mærke og model|type båd",
}
