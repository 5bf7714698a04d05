"""Dutch: what stands on the stern, how it moves, where it is, whether it goes."""

WORDS = {
    "O_LADDER": (
        "zwemtrap|trap|ladder|zwemladder|zwemtrapje|zwemtrappen|ladders|badtrap|klaptrap|trapje|telescooptrap|"
        "zwemtrapjes|laddertje|zwemladders|hektrap|badladder|badtrapje|inox ladder|rvs ladder|noodtrap|"
        "noodladder|telescoopladder|telescoopladders|klapladder|opstaptrap|spiegeltrap|touwladder|instapladder|"
        "zwemladdertje"
    ),
    "O_PLATFORM": (
        "zwemplateau|zwemplatform|platform|zwemplateaus|plateau|badplatform|zwemvlonder|zwemplatforms|zwemplank|"
        "zwemvlot|badplank|hekplatform|duikplatform|zwemdek|teakrooster|spiegelplatform|platforms|zwemplateautje"
    ),
    "O_DAVITS": (
        "davits|davit|bijbootdavits|davitten|hekdavits|davitarmen|hekkraan|bijbootkraan|davids|davit armen|"
        "bijbootlift|dinghydavits|davitset"
    ),
    "O_OUTBOARD": (
        "buitenboordmotor|buitenboordmotorsteun|buitenboordmotoren|motorsteun|bb motor|buitenboord motor|"
        "steun voor buitenboordmotor|bbm|buitenboordmotorbeugel|buitenboordmotortje|motorbeugel|motorstoel|"
        "buitenboordmotorhouder|motorhouder|elektrische buitenboordmotor|bb motorsteun|motorsteuntje|"
        "buitenboordmotorstoel|hulpmotorsteun"
    ),
    "O_EXHAUST": (
        "uitlaat|uitlaatpijp|motoruitlaat|uitlaten|uitlaatdoorvoer|uitlaatopening|uitlaatflens|motoruitlaten|"
        "uitlaatje|uitlaatgat|uitlaatslang|uitlaatstuk"
    ),
    "O_RAIL": (
        "reling|hekreling|zeereling|hekstoel|preekstoel achter|hekrail|preekstoel|hekpreekstoel|hekrailing|"
        "achterpreekstoel|hekwerk|hekstoelen|hekrelingen|achterreling|hekleuning|railing|zeerailing|hekstoeltje|"
        "achterrailing|gedeelde hekstoel|hekpreekstoelen|hekrailingen|achterhek"
    ),
    "O_STAY": (
        "achterstag|achterstagen|achterstaggen|dubbele achterstag|gesplitst achterstag|bakstagen|"
        "achterstagspanner|hanenpoot|achterstagputting|gesplitste achterstag|hanepoot|achterstagtalje|bakstag|"
        "dubbele achterstagen|gedeelde achterstag|achterstagplaat|achterstagspanners|achterstag puttingen|"
        "achterstagdraad|hekstag|hekstagen|gedeeld hekstag|gedeelde hekstag"
    ),
    "O_BOOM": (
        "bezaansgiek|giek|giekeinde|bezaan giek|papegaaienstok boom|grootzeilgiek|giekeind|einde van de giek|"
        "giek van de bezaan|grootgiek|bezaangiek"
    ),
    "O_ARCH": (
        "hekbeugel|radarbeugel|targabeugel|rvs beugel|hekboog|antennebeugel|zonnepanelenbeugel|hekframe|"
        "zonnepaneelbeugel|rvs hekbeugel|hekbeugels|achterbeugel|portaal|targaboog|solarbeugel|hekportaal|boog|"
        "rolbar|achterboog|hoge beugel|beugel achter|beugel met zonnepanelen|beugel met panelen|rvs boog|targa|"
        "beugels|radarboog|roestvrijstalen beugel|beugel met twee zonnepanelen|beugel met de zonnepanelen|"
        "beugel voor de zonnepanelen|beugel met drie zonnepanelen"
    ),
    "O_PANELS": (
        "zonnepanelen|zonnepaneel|zonnecellen|solar panelen|zonnepanelen op|panelen|zonnecel|solarpanelen|"
        "solarpaneel|pv panelen|zonnepaneeltjes|zonnecollectoren|beugel met twee zonnepanelen|"
        "beugel met zonnepanelen|beugel met de zonnepanelen|beugel voor de zonnepanelen|"
        "beugel met drie zonnepanelen"
    ),
    "O_MAST": (
        "radarmast|windgenerator|windmolen|windgeneratorpaal|radarpaal|antennemast|radarpaaltje|"
        "windgeneratormast|windgenerators|windmolentje|antennepaal|radarmastje|windturbine|gps paal|"
        "windmolenmast|mast met radar|gps antenne|antennestok|antennevoet|buis met antenne|marifoonantenne|"
        "ais antenne|gps paddenstoel|antennebuis"
    ),
    "O_STAFF": (
        "vlaggenstok|vlaggenmast|vlaggestok|vlagstok|vlaggestokhouder|vlaggenstokken|vlaggenstokhouder|"
        "vlaggenstokje|vlagmast"
    ),
    "O_PASSERELLE": (
        "loopplank|passerelle|gangway|loopplanken|passarelle|loopplankje|gangplank|instapplank|hekloopplank|"
        "landingsplank"
    ),
    "O_BOOMKIN": (
        "papegaaienstok|papagaaistok|papegaaistok|hekspriet|druilpapegaai|papegaaienstokje|achterboegspriet|"
        "hek boegspriet"
    ),
    "O_OTHER": "barbecue|bbq|gasbarbecue|hengelsteunen|hengelhouders|hekanker|hekankerrol",
    "O_LOCKER": (
        "gasbun|hekkist|reddingsvlot|bakskist achter|reddingsvlothouder|reddingsvlot op het hek|gaskist|hekbun|"
        "gasbunker|hekkastje|reddingsvlotten"
    ),
    "EMPTY": "leeg|onbeladen|lege boot|zonder belading|leeg schip",
    "LADEN": (
        "beladen|volgeladen|vaarklaar|met belading|geladen|dieper dan getekend|onder haar merken|"
        "onder de ontwerpwaterlijn|dieper dan op de tekening"
    ),
    "SINKS": (
        "dieper|zakt|lager|ligt dieper|zakt ze|dieper dan getekend|onder haar merken|"
        "onder de ontwerpwaterlijn|dieper dan op de tekening"
    ),
    "CAMBER": "bolling|welving|gebold|pijl|kromming|gewelfd|bol",
    "DROP": (
        "hoogteverschil|hoogte tussen|verticale afstand|verticaal gemeten|loodrecht gemeten|"
        "recht naar beneden gemeten|verticale hoogte|van rand tot rand|daartussen zit|hoogteverschil is|"
        "van boven tot onderkant|van bovenkant tot onderkant|tussen boven en onderkant|"
        "tussen bovenkant en onderkant"
    ),
    "FOLD": (
        "wegklapbaar|wegklapbare|omhoogklapbaar|opklappen|wegklappen|om op te klappen|klapt op|"
        "kan worden opgeklapt|neer te klappen|opklapbaar|opklapbare|klapbaar|inklapbaar|klapbare|inklapbare|"
        "neerklapbaar|klapt|kan omhoog|wordt opgeklapt|opgeklapt|opvouwbaar|scharnierend|kan opklappen|klap|"
        "opvouwbare|neerklapbare|klapt weg|klapt in|klapt omhoog|klapt neer|klappen|klapbaar type|"
        "opgeklapt worden|kan opgeklapt worden|kan weggeklapt worden|weggeklapt|ingeklapt|inklappen|omklapbaar|"
        "omklapbare|vouwbaar|vouwt op|scharniert|scharnierende|uitklapbaar|uitklapbare|opklap|kan ingeklapt|"
        "kan omhooggeklapt|op scharnieren|omhoog te klappen|in te klappen|weg te klappen|op te klappen|"
        "kantelbaar|kantelbare|neergeklapt|kan neergeklapt|opvouwen|omhoogklappen|optrekbaar|ophaalbaar|"
        "ophaalbare|omhooggeklapt|klapmodel"
    ),
    "FIXED": (
        "aangebout|opgeschroefd|aangeschroefd|"
        "vast|vaste|gelast|vastgebout|vastgezet|vaste montage|gebout|niet opklapbaar|aangelast|vastgelast|star|"
        "vastzittend|vastgeschroefd|niet klapbaar|niet inklapbaar|onbeweeglijk|starre|niet wegklapbaar|"
        "klapt niet|kan niet opgeklapt|kan niet omhoog|gelaste|vast gemonteerd|vast gelast|vast gebout|"
        "vaste uitvoering|niet te klappen|doorgebout|aangelaste|niet opvouwbaar"
    ),
    "REMOVE": (
        "die weg mogen|weg mogen|die weg mag|weg mag|weg kunnen|die weg kan|"
        "kunnen zonder|kan zonder|kunnen we missen|kan ik missen|kan eruit|kan er uit|kan er natuurlijk uit|"
        "mag eruit|kan verplaatst worden|kan ergens anders|worden gedemonteerd|wordt gedemonteerd|"
        "kunnen worden gedemonteerd|verwijderd worden|worden verwijderd|kunnen weg|gaat er zo nodig af|"
        "kan er eventueel af|mag er af|mag er eventueel af|kan er wel af|afneembaar|kan eraf|kan weg|demontabel|"
        "mag eraf|mag weg|mag verwijderd|kan verwijderd worden|kan worden verwijderd|kan verwijderd|"
        "mag worden verwijderd|demonteerbaar|verwijderbaar|kan er af|kunnen eraf|kan worden gedemonteerd|"
        "mogen weg|mogen eraf|er af|kan vervallen|kan eventueel weg|wegneembaar|overbodig|niet nodig|"
        "niet meer nodig|kan gemist worden|kunnen we wel missen|kan ik wel missen|te koop|verdwijnt|"
        "kan verdwijnen|mag verdwijnen|kunnen verdwijnen|mogen verdwijnen|gaat eraf|gaan eraf|gaat weg|gaan weg|"
        "afneembare|demontabele|demonteerbare|verwijderbare|afschroefbaar|losneembaar|losse|uitneembaar|"
        "verplaatsbaar|er zo af|is los|niet onmisbaar|optioneel|kan opgeofferd|kan in de bakskist|"
        "kun je eruit halen|kun je eraf halen|kan thuis blijven|kan aan land blijven|kan naar beneden|"
        "die eraf kan|die eraf mag|eraf kan|eraf mag|er af kan|er af mag|heb ik niet meer nodig"
    ),
    "KEEP": (
        "gehecht aan|erg aan gehecht|zijn we aan gehecht|willen we niet missen|niet graag kwijt|"
        "willen we niet kwijt|wil ik niet kwijt|dol op|blijven zitten|moet echt blijven|moet er echt op blijven|"
        "blijven gebruiken|bruikbaar blijven|te gebruiken blijven|niet verwijderen|moet blijven|blijft|behouden|"
        "moeten blijven|willen we houden|wil ik houden|willen behouden|moet blijven zitten|houden we|niet weg|"
        "kan niet weg|mag niet weg|willen wij behouden|moet erop blijven|moet aan blijven|"
        "kan niet verwijderd worden|onmisbaar|wil ik graag houden|moet wel blijven|kan er niet af|laten zitten|"
        "laten staan|laten we zitten|blijft zitten|blijft staan|blijven staan|behouden blijven|handhaven|"
        "gehandhaafd|niet te missen|kan ik niet missen|kunnen we niet missen|niet missen|niet onderhandelbaar|"
        "heilig|onmisbare|niet aankomen|afblijven|moet absoluut blijven|hou ik|houd ik|willen wij houden|"
        "staat niet ter discussie|gaat niet weg|gaat er niet af|mag er niet af|moet daar blijven|"
        "moet kunnen blijven|niet van scheiden|doen we niet weg|doe ik niet weg|geen afstand|is eraan gehecht|"
        "hecht eraan|wil hij houden|wil ze houden|wil zij houden|die hebben we nodig|die heb ik nodig|"
        "dat hebben we nodig|die gebruiken we|houden we graag|hou ik aan|die houden we|die hou ik"
    ),
    "PORT": (
        "bakboord|aan bakboord|bb|links|linkerkant|bakboordzijde|bakboordkant|aan bb|aan de bakboordkant|"
        "bakboordszijde|bakboordzij|bakboords|bakboordachter|aan de linkerkant|linkerzijde|op bakboord|"
        "naar bakboord|bakboordzijde van|links achter|bakboord achter|bakboordhoek|aan bakboordszijde"
    ),
    "STARBOARD": (
        "stuurboord|aan stuurboord|sb|rechts|rechterkant|stuurboordzijde|stuurboordkant|aan sb|"
        "aan de stuurboordkant|stuurboordszijde|stuurboordzij|stuurboords|stuurboordachter|aan de rechterkant|"
        "rechterzijde|op stuurboord|naar stuurboord|rechts achter|stuurboord achter|stuurboordhoek|"
        "aan stuurboordszijde|stb"
    ),
    "CENTRE": (
        "midden|uit het midden|hart|hartlijn|uit het hart|midscheeps|in het midden|centraal|vanuit het midden|"
        "van het midden|uit hart|hartlijn van de boot|buiten het midden|uit de hartlijn|van de hartlijn|"
        "vanaf de hartlijn|vanaf het midden|vanuit de hartlijn|vanuit hart|hart schip|midden van de spiegel|"
        "middenlijn|uit de middenlijn|precies in het midden|naast het midden|van hart|centrale|middenop|"
        "middenachter|midscheepse|op de hartlijn|scheepsmidden|hart van de boot|langsas"
    ),
    "EACH_SIDE": (
        "aan weerszijden|aan beide kanten|weerszijden|aan elke kant|beide zijden|aan elke zijde|aan beide zijden|"
        "aan weerskanten|weerskanten|bakboord en stuurboord|aan bakboord en stuurboord|links en rechts|"
        "één aan elke kant|aan elke kant een|stuurboord en bakboord|ieder aan een kant|aan beide boorden|"
        "beide kanten|bb en sb|naar weerszijden|naar beide kanten|aan elke kant van het midden"
    ),
    "PREFER": (
        "indien mogelijk|als het kan|zo mogelijk|liefst|bij voorkeur|liever|voorkeur|zou graag|bij voorkeur aan|"
        "graag aan|wens|wensen|prefereren|voorkeur voor|zouden graag|hebben liever|zou liever|zouden liever|"
        "geeft de voorkeur|geeft voorkeur|heeft liever|het liefste|zou het liefst|wil graag|wil hem graag|"
        "zag graag|ziet graag|het liefst|graag|wij willen|we willen|ik wil|zou ons het beste uitkomen|"
        "komt ons het best uit|past ons het best|zou het fijnst zijn|komt het beste uit|wil hem|wil het|"
        "willen hem|wil de windvaan|willen hem graag|wil de stuurinrichting|beter voor mij|beter voor ons|"
        "komt ons beter uit|als dat kan|zo mogelijk aan"
    ),
    "SLIDE": (
        "uitschuifbaar|uitschuifbare|telescopisch|inschuifbaar|telescopische|schuifbaar|schuift uit|schuift in|"
        "uitschuift|schuifladder|telescooptrap|telescoopladder|uitschuif|inschuifbare|schuivend|uittrekbaar|"
        "uittrekbare|schuift onder|als een lade|als een schuif"
    ),
    "SWING": (
        "draaibaar|zwenkbaar|zwenkbare|draaibare|wegzwenkbaar|zwenkt|uitzwenkbaar|wegdraaibaar|draait weg|"
        "zwenkt weg|zwenken|draaiende|zwaait|zwiept|zwaait over|slingert"
    ),
    "AVOID": "vermijden|liever niet|beslist niet|in geen geval|absoluut niet|zeker niet",
    "GONE": (
        "al weg|al verwijderd|al verkocht|al gedemonteerd|er al af|er al vanaf|is er al af|zijn er al af|"
        "reeds verwijderd|niet meer aan boord|al lang weg|allang weg|er niet meer|zit er niet meer op|"
        "zitten er niet meer op|is verkocht|is al weg|is verdwenen|in de bakskist|in een bakskist|opgeborgen|"
        "wordt opgeborgen|ligt in de|bewaren we in|blijft thuis|is eraf|hebben we verwijderd|heb ik verwijderd|"
        "is verwijderd|is weg|hebben we eraf gehaald|heb ik eraf gehaald|zit er niet meer|is er niet meer|"
        "niet meer|bestaat niet meer|niet meer aanwezig|hebben we niet meer|heb ik niet meer|zijn weg|zijn eraf|"
        "zijn verkocht|in de garage|in de schuur|in de berging|thuis|aan de wal|aan wal|in de vooronder|"
        "in het vooronder|onderdeks|ligt binnen|ligt beneden|bergen we op|berg ik op|weggestopt|verleden tijd|"
        "van de vorige eigenaar|overboord|hebben geen meer|naar een ander|gegeven aan|weggegeven aan|"
        "nog niet gemonteerd|in bestelling|nog in bestelling|staat gepland|afgegaan|eraf gegaan|er af gegaan|"
        "er afgegaan|er al afgegaan|eraf gevallen"
    ),
    "BESIDE": "naast de|naast het|bij de|bij het|vlak boven de|ter hoogte van de",
    "BEGIN": "begint|vanaf|start|begint op",
    "EXCEPT": "behalve|alleen|uitgezonderd|afgezien van",
    "OFF": (
        "verwijderen|demonteren|weghalen|wegnemen|afhalen|verplaatsen|verkopen|verkoop|losschroeven|afschroeven|"
        "afnemen|eraf halen|eruit halen|missen|opofferen|wegdoen|verwijder|demonteer|afbreken|loshalen|afbouwen|"
        "slopen|af halen|af te halen|eraf te halen|weg te halen|los te schroeven|af te schroeven|eruit te halen|"
        "er af halen|er af te halen|eraf te schroeven|zonder doen|afstand doen|kwijtraken|verliezen"
    ),
    "OFFED": (
        "verwijderd|gedemonteerd|weggehaald|weggenomen|afgehaald|verkocht|afgeschroefd|losgeschroefd|afgenomen|"
        "eraf gehaald|eruit gehaald|weggedaan|gesloopt|afgebroken|losgehaald|af gehaald|er af gehaald|"
        "weg gehaald|eraf geschroefd|ontmanteld|weggegeven|weggegooid|afgedankt|van boord gehaald|afgezaagd|"
        "weggezaagd|afgeslepen|doorgeroest|weggerot|verrot|van boord|afgestaan|weggebracht|achtergelaten|"
        "opgeruimd|eraf gezaagd|gedumpt|weg gedaan|losgekoppeld"
    ),
    "V_TAKE": "haal|halen|haalt|neem|nemen|neemt|schroef|schroeven|gaat|gaan|breek|doen|doe|zet|zetten",
    "V_TOOK": "haalde|haalden|gehaald|nam|namen|genomen|geschroefd|ging|gingen|gegaan|gedaan",
    "P_OFF": "af|weg|eraf|eruit|los|ervan af|van boord",
    "MAY": (
        "kan|kunnen|kon|mag|mogen|zal|zullen|zou|zouden|wil|willen|wordt|worden|moet|moeten|bereid|plan|gepland|"
        "van plan|eventueel|gemakkelijk|makkelijk|eenvoudig|desnoods|laten|gaan|gaat|ga"
    ),
    "EASILY": (
        "zonder probleem|zonder problemen|zonder moeite|geen probleem|zonder gereedschap|zonder meer|"
        "niet moeilijk|geen bezwaar|niet in de weg|zit niet in de weg"
    ),
    "SHIFTED": "verplaatst|verzet",
    "STAY": "blijven|houden|meedoen",
    "DOWNWARD": "naar beneden|omlaag|naar onderen|onder de bovenrand|onder de bovenkant|verder naar beneden",
    "EVEN": (
        "recht onder|precies onder|precies recht onder|loodrecht onder|gelijk met|in lijn met|in één lijn met|"
        "vlak onder de bovenrand|recht beneden|op één lijn met|exact onder|lijnt uit met|pal onder|"
        "loopt gelijk met|direct onder"
    ),
    "TAKE_THIS": (
        "houd dat maar aan|hou dat maar aan|houd dat aan|neem dat|neem die|ga daar vanuit|reken daarmee|"
        "neem die maar|die geldt|dat is de juiste|gebruik die|gebruik dat|ga daar maar vanuit"
    ),
    "AXIS": "as|hartas|de as|koning|stok",
    "LOATH": "ongaarne|zonde|met tegenzin|spijtig|liever niet|jammer om",
    "ZERO": "nul|nihil",
}
