"""Dutch."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary

VOCABULARY = Vocabulary(
    language="nl",
    common="de het een en van is voor met op aan wij ik uw onze mijn naar niet dat die graag ook goedemorgen boven "
    "onder in te zijn heeft hebben dan bij wat welke klant kunt wordt als er mij jullie zou kan moet uit om tot "
    "deze",
    numbers=Numbers(
        ones="nul een/één twee drie vier vijf zes zeven acht negen tien elf twaalf dertien veertien vijftien zestien "
        "zeventien achttien negentien",
        tens="twintig dertig veertig vijftig zestig zeventig tachtig negentig",
        joint="{one}en{ten}|{one}ën{ten}",
        hundred="honderd",
        half="half/halve",
        and_="en",
        whole="anderhalve=1.5 anderhalf=1.5 tweeënhalve=2.5 tweeënhalf=2.5 drieënhalf=3.5 drieënhalve=3.5 "
        "{one}eneenhalf=+0.5 {one}eneenhalve=+0.5 {one}ënhalf=+0.5 driekwart=0.75",
    ),
    concepts={
        "LENGTH": "lang over alles|lang",
        "M_TAPE": "meetlint|rolmaat|centimeter|duimstok|met de rolmaat|meetband|lintmeter",
        "DEPTH": "diepte|diep|diepe",
        "TRANSOM": "rand van de spiegel|spiegelrand|"
        "spiegelhoek|spiegelbreedte|spiegeldikte|spiegel|hek|achterspiegel|hekspiegel|spiegels|hekplaat|"
        "hekspiegels|spiegelplaat|achterkant van de boot|hek van de boot|bovenkant spiegel|"
        "bovenkant van de spiegel|spiegel bovenkant|spiegel boven|breedte spiegel boven|"
        "breedte van de spiegel boven|onderkant spiegel|onderkant van de spiegel|spiegel onderkant|"
        "voet van de spiegel|helling van de spiegel|hoek van de spiegel|spiegel helling|breedte spiegel|"
        "spiegel breedte|spiegel boven breed|dikte spiegel|rechte spiegel|negatieve spiegel|omgekeerde spiegel",
        "POST": "kop van de steven|kop van de achtersteven|achtersteven|achterstevens|roersteven|steven|stevenkop",
        "TOP": "kop van de steven|stevenkop|kop van de achtersteven|"
        "bovenin|"
        "rand van de spiegel|spiegelrand|"
        "tot het dek|tot aan dek|tot dek|"
        "komt tot|loopt door tot|reikt tot|"
        "bovenkant|bovenrand|bovenaan|bovenzijde|bovenste rand|bovenkant spiegel|bovenkant van de spiegel|"
        "spiegel bovenkant|dekrand|bovenste kant|spiegel boven|bovenzij|breedte spiegel boven|breedte boven|"
        "breed boven|breedte van de spiegel boven",
        "BOTTOM": "loopt door tot|loopt af tot|"
        "onderkant|onderrand|onderzijde|onderaan|onderste rand|onderkant spiegel|onderkant van de spiegel|"
        "spiegel onderkant|onderste kant|voet van de spiegel|onderzij",
        "WATER": "waterlijn|water|de waterlijn|het water|wateroppervlak|waterspiegel|constructiewaterlijn|cwl|kwl|"
        "vrijboord|onder water|onder de waterlijn|beneden de waterlijn|onder waterlijn|in het water|"
        "op de waterlijn|net aan het water|precies op de waterlijn|net in het water",
        "TOERAIL": "voetrail|voetreling|voetlijst|potdeksel|verschansing|berghout|boeisel|gatenrail|teenlijst",
        "STEP": "zwemtrede|trede|traptrede|zwemtreden|ingebouwde trede|ingevormde trede|treden",
        "HULL": "beplanking|plaat|romp|huid|rompdikte|scheepshuid|de romp|huidplaat",
        "BOAT": "boot|jacht|schip|zeiljacht|zeilboot|zeilschip|kits|sloep|kotter|de boot|schepen|platbodem|type boot|"
        "boottype",
        "HEIGHT": "hoogte|hoog|hoge|vrijboord",
        "WIDTH": "spiegelbreedte|breedte|breed|brede|in de breedte|breedte boven|breedte spiegel|breed boven|"
        "spiegel breedte|breedte spiegel boven|spiegel boven breed|breedte van de spiegel boven",
        "THICK": "spiegeldikte|dikte|dik|plaatdikte|dikke|wanddikte|huiddikte|laminaatdikte|dikte spiegel|materiaaldikte",
        "LOA": "lengte|lengte o a|lengte over alles|loa|lengte over alles|l o a|totale lengte|romplengte|scheepslengte",
        "LWL": "lengte waterlijn|lwl|lengte op de waterlijn|lengte wl",
        "BEAM": "grootste breedte|breedte over alles|breedte boot|max breedte|maximale breedte|breedte o a|b o a",
        "DRAFT": "diepg|diepgang|steekt|steekt diep|diepgang van|diepte kiel",
        "DISPLACEMENT": "waterverplaatsing|gewicht|weegt|deplacement|verplaatst|wegen|zwaar|gewogen|waterverplaatsing van|"
        "totaalgewicht|kraan|weegbrug|tonnage",
        "BALLAST": "ballast|motor|bijboot|kiel|bijbootje|rubberboot|ankers|bemanning|dinghy|kielgewicht",
        "RAKE": "spiegelhoek|helling|hoek|hellingshoek|helling van de spiegel|schuinte|hoek van de spiegel|hellend|"
        "spiegel helling|schuin",
        "LEAN": "achterover|voorover|"
        "helt|hellend|leunt|valt|hellende|schuin|staat schuin|achterover hellend|loopt schuin|leunend|overhelt|"
        "helt over|hangt over|valt naar",
        "FORWARD": "vóór de|voor de|naar voren|verder naar voren|vóór|voorover|naar voor|verder voren|vooruit|"
        "verder vooruit|meer naar voren|richting boeg|vooraan|voor het|verder voor",
        "AFT": "achterover|naar achteren|verder naar achteren|achter de|verder naar achteren dan|naar achter|"
        "meer naar achteren|achteruit|verder naar achter|achter het|richting achter|achterlijker|uit de spiegel",
        "PLUMB": "is recht|staat recht|recht op en neer|"
        "loodrecht|rechtop|verticaal|loodrechte|verticale|kaarsrecht|rechte spiegel|bijna loodrecht",
        "REVERSE": "negatieve spiegel|negatief|omgekeerde spiegel|negatieve|omgekeerd|negatieve helling|omgekeerde|"
        "negatief hellend|invers",
        "COUNTER": "overhangend hek|klassieke spiegel|positief|positieve|overhang|overhangende|klassieke|positieve spiegel",
        "SCOOP": "geïntegreerde zwemtrede|"
        "zwemplateau in de spiegel|zwemtrede|ingebouwd zwemplateau|geïntegreerd zwemplateau|"
        "zwemtreden in de spiegel|sugarscoop|suikerschep|ingevormde zwemtrede|trapspiegel|ingebouwde zwemtrede|"
        "zwemplateau in de romp",
        "OPEN": "open spiegel|open hek|open kuip|open achterkant|open achterschip|neerklapbare spiegel|klapspiegel|"
        "geen spiegel|open achter|opklapbare spiegel|spiegel is open|spiegel die neerklapt",
        "DOUBLE": "spitsgatter|kano hek|dubbelender|spitsgat|spitsgatkotter|kanohek|spits achterschip|spitsgatters|"
        "achterschip spits",
        "RUDDER": "roer|roerblad|hoofdroer|roeren|het roer|roerbladen|dubbel roer|twee roeren|roers|achterkant roerblad|"
        "achterkant roer|achterkant van het roer|achterrand van het roer|achterrand roer|vrijhangend roer|"
        "balans roer|doorgestoken roer|scheg roer|aangehangen roer|roer aan de spiegel|buitenboord roer|"
        "buitenhangend roer|buitenliggend roer",
        "HUNG_OUT": "aangehangen roer|aangehangen|roer aan de spiegel|hangt aan de spiegel|buitenboord roer|buitenboordroer|"
        "aan de spiegel|hangt achter de spiegel|aan de achtersteven|op de spiegel|spiegelroer|"
        "hangt aan de achtersteven|aan de steven|buitenhangend roer|buitenliggend roer|aan de spiegel gehangen|"
        "hangroer",
        "HUNG_IN": "balansroer*|spaderoer*|schegroer*|"
        "balansroer|achter scheg|spaderoer|vrijhangend roer|balans roer|hangend onder|half balansroer|"
        "doorgestoken roer|aan een scheg|aan de scheg|achter de kiel|scheg roer",
        "UNDER": "aan de kiel|"
        "vrijhangend|onder de boot|onder de romp|scheg|skeg|onder het schip|onder het hek|scheggen|onder de kont|"
        "onder het achterschip",
        "TRAILING": "achterkant roerblad|achterkant|achterkant roer|achterrand|achterkant van het roer|"
        "achterrand van het roer|uittredende kant|achterkant ervan|achterste rand|achterzijde|roerachterkant|"
        "achterrand roer",
        "STOCK": "roerkoning|roeras|roerschacht|hart roerkoning",
        "STICK_OUT": "steekt achter|"
        "steekt uit|uitsteekt|steekt|uitstekend|uitsteken|steken uit|steekt naar achteren|buiten de spiegel|"
        "uitstekende",
        "TURN": "naar elke kant|roeruitslag|uitslag|aan elke kant|elke kant op|per kant|maximale uitslag|"
        "naar beide kanten|naar weerszijden",
        "GRP": "polyester|glasvezel|gvk|glasvezelpolyester|kunststof|glas|laminaat",
        "SOLID": "geen sandwich|"
        "massief|massief polyester|massieve|vol laminaat|vollaminaat|enkel laminaat|massief laminaat|zonder kern|"
        "massief glas",
        "CORED": "sandwich|balsa|sandwichconstructie|balsakern|schuimkern|kern|schuim|balsa sandwich",
        "WOOD": "hout|houten|mahonie|eiken|multiplex|houtbouw|van hout|watervast verlijmd|hechthout",
        "ALU": "aluminium|alu|aluminium romp|van aluminium",
        "STEEL": "staal|stalen|staalbouw|van staal|stalen romp|scheepsbouwstaal",
        "O_LADDER": "zwemtrap|trap|ladder|zwemladder|zwemtrapje|zwemtrappen|ladders|badtrap|klaptrap|trapje|telescooptrap",
        "O_PLATFORM": "zwemplateau|zwemplatform|platform|zwemplateaus|plateau|badplatform|zwemvlonder",
        "O_DAVITS": "davits|davit|bijbootdavits|davitten|hekdavits",
        "O_OUTBOARD": "buitenboordmotor|buitenboordmotorsteun|buitenboordmotoren|motorsteun|bb motor|buitenboord motor|"
        "steun voor buitenboordmotor|bbm|buitenboordmotorbeugel",
        "O_EXHAUST": "uitlaat|uitlaatpijp|motoruitlaat|uitlaten",
        "O_RAIL": "reling|hekreling|zeereling|"
        "hekstoel|preekstoel achter|hekrail|preekstoel|hekpreekstoel|hekrailing|achterpreekstoel|hekwerk|"
        "hekstoelen",
        "O_STAY": "achterstag|achterstagen|achterstaggen|dubbele achterstag|gesplitst achterstag|bakstagen|"
        "achterstagspanner|hanenpoot",
        "O_BOOM": "bezaansgiek|giek|giekeinde|bezaan giek|papegaaienstok boom",
        "O_ARCH": "hekbeugel|radarbeugel|beugel|targabeugel|rvs beugel|hekboog|antennebeugel|zonnepanelenbeugel|hekframe",
        "O_PANELS": "zonnepanelen|zonnepaneel|zonnecellen|solar panelen|zonnepanelen op|panelen",
        "O_MAST": "radarmast|windgenerator|windmolen|windgeneratorpaal|radarpaal|antennemast|radarpaaltje",
        "O_STAFF": "vlaggenstok|vlaggenmast|vlaggestok",
        "O_PASSERELLE": "loopplank|passerelle|gangway|loopplanken|passarelle",
        "FOLD": "wegklapbaar|wegklapbare|omhoogklapbaar|opklappen|wegklappen|om op te klappen|klapt op|"
        "kan worden opgeklapt|neer te klappen|"
        "opklapbaar|opklapbare|klapbaar|inklapbaar|klapbare|inklapbare|neerklapbaar|klapt|kan omhoog|"
        "wordt opgeklapt|opgeklapt|opvouwbaar|scharnierend|kan opklappen|klap|opvouwbare|neerklapbare",
        "FIXED": "vast|vaste|gelast|vastgebout|vastgezet|vaste montage|gebout|niet opklapbaar|aangelast|vastgelast|star",
        "REMOVE": "kunnen zonder|kan zonder|kunnen we missen|kan ik missen|"
        "kan eruit|kan er uit|kan er natuurlijk uit|mag eruit|kan verplaatst worden|kan ergens anders|"
        "gedemonteerd|worden gedemonteerd|wordt gedemonteerd|kunnen worden gedemonteerd|"
        "verwijderd worden|worden verwijderd|kunnen weg|gaat er zo nodig af|"
        "kan er eventueel af|mag er af|mag er eventueel af|kan er wel af|"
        "afneembaar|kan eraf|kan weg|demontabel|mag eraf|mag weg|mag verwijderd|kan verwijderd worden|"
        "kan worden verwijderd|kan verwijderd|mag worden verwijderd|demonteerbaar|verwijderbaar|kan er af|"
        "kunnen eraf|kan worden gedemonteerd|mogen weg|mogen eraf|er af|wegnemen|weghalen|verwijderen|"
        "kan vervallen|kan eventueel weg|afhalen|wegneembaar|demonteren",
        "KEEP": "blijven zitten|moet echt blijven|moet er echt op blijven|"
        "blijven gebruiken|bruikbaar blijven|te gebruiken blijven|"
        "willen we niet kwijt|wil ik niet kwijt|niet verwijderen|"
        "moet blijven|blijft|behouden|moeten blijven|willen we houden|wil ik houden|willen behouden|"
        "moet blijven zitten|houden we|niet weg|kan niet weg|mag niet weg|willen wij behouden|moet erop blijven|"
        "moet aan blijven|kan niet verwijderd worden|onmisbaar|wil ik graag houden|moet wel blijven|"
        "kan er niet af",
        "YES": "ja",
        "NOT": "geen|niet|zonder|nee|niets|noch|nergens|geen enkele|ontbreekt|niet aanwezig|nvt|n v t",
        "PORT": "bakboord|aan bakboord|bb|links|linkerkant|bakboordzijde|bakboordkant|aan bb",
        "STARBOARD": "stuurboord|aan stuurboord|sb|rechts|rechterkant|stuurboordzijde|stuurboordkant|aan sb",
        "CENTRE": "midden|het midden|uit het midden|hart|het hart|hartlijn|uit het hart|midscheeps|in het midden|centraal|"
        "vanuit het midden|van het midden|uit hart",
        "EACH_SIDE": "aan weerszijden|aan beide kanten|weerszijden|aan elke kant|beide zijden|aan elke zijde|aan beide zijden",
        "PREFER": "indien mogelijk|als het kan|zo mogelijk|"
        "liefst|bij voorkeur|liever|voorkeur|het liefst|zou graag|bij voorkeur aan|graag aan|wens|wensen|"
        "prefereren|voorkeur voor|zouden graag|hebben liever",
        "OTHER_BOAT": "de zijne|het zijne|die van hem|zijn boot|"
        "buurman*|"
        "buurman|vriend|vorige boot|buren|buurmans|vriend van|een vriend|kennis|vorig schip|oude boot|collega|"
        "steigerbuurman|andere boot|broer|zwager|ligplaatsbuurman|zusje|maat van|vrienden",
        "BELOW": "onder water|onder de waterlijn|beneden de waterlijn|onder waterlijn|in het water|onder wl|onder de wl|"
        "onderwater|eronder",
        "OURS": "broer en ik|vriend en ik|zwager en ik|"
        "onze|wij hebben|de onze|mijn|bij ons|mijn boot|onze boot|de mijne|wij hebben een",
        "YEAR": "bwj|bwjr|bouwjr|"
        "bouwjaar|uit|van|gebouwd in|bj|gebouwd|te water gelaten in|uit het jaar|van bouwjaar|bouw|uit bouwjaar|"
        "stamt uit",
        "HULL_NUMBER": "casconr|casconummer|casco nr|bouwnr|scheepsnummer|"
        "bouwnummer|rompnummer|romp nr|bouw nr|rompnr|casco nummer|romp nummer",
        "BUILDER": "werf|bouwer|scheepswerf|bouwwerf|gebouwd door|jachtwerf",
        "MODEL": "type|boot|model|jacht|boottype|merk en type|type boot|boot type|scheepstype",
        "ASK": "offerteaanvraag|voorstel|offerte|prijs|graag|welke|nodig|passen|past|levertijd|zoeken|zoek|kost|kosten|"
        "vraag|vragen|raden|adviseren|advies|aanraden|weten|geschikt|informatie|kunnen jullie|kunt u|"
        "heb ik nodig|hebben we nodig|interesse|willen graag|wat is er nodig|mogelijk|passende|prijsopgave|"
        "prijzen",
        "GEAR": "windvaan|windvaanstuurinrichting|windstuurinrichting|zelfstuurinrichting|windvanen|windvaanbesturing|"
        "stuurautomaat op wind|windbesturing|windstuurautomaat|hulproer|zelfbesturing|"
        "windvaan stuurinrichting",
        "ORDER": "onderdeel|onderdelen|bestelling|bestellen|serienummer|reserveonderdelen|reserveonderdeel|lagers|bussen|"
        "nieuw blad|nieuwe vaan|nabestellen|serie nummer|vervangen|versleten|kapot|gebroken|verzendkosten",
        "THANKS": "hartelijk dank|bedankt|heel erg bedankt|veel dank|hartelijk bedankt|tevreden|aangekomen|dank",
        "SIGN_OFF": "met vriendelijke groet|met vriendelijke groeten|groet|groeten|mvg|vriendelijke groet|alvast bedankt|"
        "groetjes|hartelijke groet|hartelijke groeten|vriendelijke groeten|met groet|m vr gr|vr gr|"
        "bij voorbaat dank|dank alvast|groeten uit|met hartelijke groet|hoogachtend|gr|met zeilersgroet|"
        "behouden vaart|vr groet|met zonnige groet",
        "CUSTOMER": "klant|voor een klant|klanten|eigenaar|opdrachtgever|een klant|namens",
        "COMPANY": "scheepsuitrusting|nautiek|techniek|watersport|jachtservice|b v|bv|jachtwerf|scheepswerf|"
        "watersportbedrijf|zeilmakerij|scheepsbouw|jachtbouw|jachthaven|tuigerij|nautisch|scheepstechniek|"
        "jachtmakelaar|watersportwinkel|marine|scheepsuitrusters|vof|zeilen",
        "PHONE": "tel|telefoon|mobiel|mob|mobiele nummer|gsm|t|m|telefoonnummer",
        "FAX": "fax|kvk|btw",
        "M_PHONE": "telefoon|app|waterpas app|telefoonwaterpas|mobieltje|smartphone",
        "M_INCL": "hoekmeter|inclinometer|gradenboog|waterpas|hellingmeter",
        "M_LASER": "laser|lasermeter|afstandsmeter",
        "M_DRAWING": "tekening|tekeningen|lijnenplan|werftekening|bouwtekening|bouwtekeningen",
        "M_BROCHURE": "brochure|folder|volgens de werf|opgave werf|specificaties|specificatie|catalogus|werfopgave|handleiding|"
        "meetbrief",
        "M_GUESS": "op het oog|geschat|schatting|naar schatting|schat|ruwe schatting|gegokt|gok|geschatte|natte vinger",
        "M_PHOTO": "foto|van een foto",
        "GIVE_TAKE": "plus minus|plus of min|met een marge van|marge|nauwkeurigheid",
        "WITHIN": "nauwkeurig",
        "BOOTSTRIPE": "waterlijnbies|bies|waterpas|boottop|boeg bies|sierbies",
        "COCKPIT": "kuipvloer|kuip|vloer van de kuip|kuipbodem|rand van de kuipvloer",
        "O_BOOMKIN": "papegaaienstok|papagaaistok",
        "O_LOCKER": "gasbun|hekkist|reddingsvlot|bakskist achter",
        "SLIDE": "uitschuifbaar|uitschuifbare|telescopisch|inschuifbaar|telescopische",
        "SWING": "draaibaar|zwenkbaar",
        "AVOID": "vermijden|liever niet|beslist niet|in geen geval|absoluut niet|zeker niet",
        "WITHDRAW": "vergeet|negeer|klopt niet|was fout|was verkeerd|niet juist|fout",
        "MEANT": "bedoelde|ik bedoel|bedoeld|in plaats van|moet zijn|moet het zijn|correctie|rectificatie|juiste|"
        "vergissing|typefout|eigenlijk",
        "JUST_TOUCH": "raakt net|raakt|precies op|gelijk met|net op|ter hoogte van|op waterhoogte|ligt op",
        "OWNED": "mijn windvaan|onze windvaan|bij jullie gekocht|gekocht in|geleverd in",
        "SELL": "nieuwsbrief|afmelden|uitschrijven|korting|beurs|exposanten|klik hier|aanbieding|vindbaarheid|actieprijs|"
        "winactie",
        "INSTEAD": "in plaats van",
        "PLUMB_LINE": "schietlood|paslood|loodlijn",
        "MEASURED": "gemeten|maten|afmetingen|meting|metingen|opgemeten|nagemeten|maat",
        "AT_WATER": "op de waterlijn|net aan het water|precies op de waterlijn|net in het water",
        "OOPS": "nee|of nee|sorry|pardon|fout|ik bedoel|excuus|beter gezegd|correctie|wacht|herstel|nee wacht",
        "GONE": "verkocht|is verkocht|"
        "is al weg|is verdwenen|al verwijderd|al gedemonteerd|"
        "in de bakskist|in een bakskist|opgeborgen|wordt opgeborgen|ligt in de|bewaren we in|"
        "blijft thuis|"
        "is eraf|hebben we verwijderd|heb ik verwijderd|is verwijderd|is weg|hebben we eraf gehaald|"
        "heb ik eraf gehaald|zit er niet meer|is er niet meer",
        "ENDS": "eindigt|houdt op|stopt",
        "BESIDE": "naast de|naast het|bij de|bij het|vlak boven de|ter hoogte van de",
        "BEGIN": "begint|vanaf",
        "EXCEPT": "behalve|alleen|uitgezonderd|afgezien van",
    },
)
