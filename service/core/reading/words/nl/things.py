"""Dutch: what stands on the stern, how it moves, where it is, whether it goes."""

WORDS = {
    "O_LADDER": (
        "zwemtrap|trap|ladder|zwemladder|zwemtrapje|zwemtrappen|ladders|badtrap|klaptrap|trapje|telescooptrap"
    ),
    "O_PLATFORM": "zwemplateau|zwemplatform|platform|zwemplateaus|plateau|badplatform|zwemvlonder",
    "O_DAVITS": "davits|davit|bijbootdavits|davitten|hekdavits",
    "O_OUTBOARD": (
        "buitenboordmotor|buitenboordmotorsteun|buitenboordmotoren|motorsteun|bb motor|buitenboord motor|"
        "steun voor buitenboordmotor|bbm|buitenboordmotorbeugel"
    ),
    "O_EXHAUST": "uitlaat|uitlaatpijp|motoruitlaat|uitlaten",
    "O_RAIL": (
        "reling|hekreling|zeereling|hekstoel|preekstoel achter|hekrail|preekstoel|hekpreekstoel|hekrailing|"
        "achterpreekstoel|hekwerk|hekstoelen"
    ),
    "O_STAY": (
        "achterstag|achterstagen|achterstaggen|dubbele achterstag|gesplitst achterstag|bakstagen|"
        "achterstagspanner|hanenpoot"
    ),
    "O_BOOM": "bezaansgiek|giek|giekeinde|bezaan giek|papegaaienstok boom",
    "O_ARCH": "hekbeugel|radarbeugel|beugel|targabeugel|rvs beugel|hekboog|antennebeugel|zonnepanelenbeugel|hekframe",
    "O_PANELS": "zonnepanelen|zonnepaneel|zonnecellen|solar panelen|zonnepanelen op|panelen",
    "O_MAST": "radarmast|windgenerator|windmolen|windgeneratorpaal|radarpaal|antennemast|radarpaaltje",
    "O_STAFF": "vlaggenstok|vlaggenmast|vlaggestok",
    "O_PASSERELLE": "loopplank|passerelle|gangway|loopplanken|passarelle",
    "O_BOOMKIN": "papegaaienstok|papagaaistok",
    "O_LOCKER": "gasbun|hekkist|reddingsvlot|bakskist achter",
    "FOLD": (
        "wegklapbaar|wegklapbare|omhoogklapbaar|opklappen|wegklappen|om op te klappen|klapt op|"
        "kan worden opgeklapt|neer te klappen|opklapbaar|opklapbare|klapbaar|inklapbaar|klapbare|inklapbare|"
        "neerklapbaar|klapt|kan omhoog|wordt opgeklapt|opgeklapt|opvouwbaar|scharnierend|kan opklappen|klap|"
        "opvouwbare|neerklapbare"
    ),
    "FIXED": "vast|vaste|gelast|vastgebout|vastgezet|vaste montage|gebout|niet opklapbaar|aangelast|vastgelast|star",
    "REMOVE": (
        "kunnen zonder|kan zonder|kunnen we missen|kan ik missen|kan eruit|kan er uit|kan er natuurlijk uit|"
        "mag eruit|kan verplaatst worden|kan ergens anders|gedemonteerd|worden gedemonteerd|wordt gedemonteerd|"
        "kunnen worden gedemonteerd|verwijderd worden|worden verwijderd|kunnen weg|gaat er zo nodig af|"
        "kan er eventueel af|mag er af|mag er eventueel af|kan er wel af|afneembaar|kan eraf|kan weg|demontabel|"
        "mag eraf|mag weg|mag verwijderd|kan verwijderd worden|kan worden verwijderd|kan verwijderd|"
        "mag worden verwijderd|demonteerbaar|verwijderbaar|kan er af|kunnen eraf|kan worden gedemonteerd|"
        "mogen weg|mogen eraf|er af|wegnemen|weghalen|verwijderen|kan vervallen|kan eventueel weg|afhalen|"
        "wegneembaar|demonteren"
    ),
    "KEEP": (
        "blijven zitten|moet echt blijven|moet er echt op blijven|blijven gebruiken|bruikbaar blijven|"
        "te gebruiken blijven|willen we niet kwijt|wil ik niet kwijt|niet verwijderen|moet blijven|blijft|"
        "behouden|moeten blijven|willen we houden|wil ik houden|willen behouden|moet blijven zitten|houden we|"
        "niet weg|kan niet weg|mag niet weg|willen wij behouden|moet erop blijven|moet aan blijven|"
        "kan niet verwijderd worden|onmisbaar|wil ik graag houden|moet wel blijven|kan er niet af"
    ),
    "PORT": "bakboord|aan bakboord|bb|links|linkerkant|bakboordzijde|bakboordkant|aan bb",
    "STARBOARD": "stuurboord|aan stuurboord|sb|rechts|rechterkant|stuurboordzijde|stuurboordkant|aan sb",
    "CENTRE": (
        "midden|het midden|uit het midden|hart|het hart|hartlijn|uit het hart|midscheeps|in het midden|centraal|"
        "vanuit het midden|van het midden|uit hart"
    ),
    "EACH_SIDE": (
        "aan weerszijden|aan beide kanten|weerszijden|aan elke kant|beide zijden|aan elke zijde|aan beide zijden"
    ),
    "PREFER": (
        "indien mogelijk|als het kan|zo mogelijk|liefst|bij voorkeur|liever|voorkeur|het liefst|zou graag|"
        "bij voorkeur aan|graag aan|wens|wensen|prefereren|voorkeur voor|zouden graag|hebben liever"
    ),
    "SLIDE": "uitschuifbaar|uitschuifbare|telescopisch|inschuifbaar|telescopische",
    "SWING": "draaibaar|zwenkbaar",
    "AVOID": "vermijden|liever niet|beslist niet|in geen geval|absoluut niet|zeker niet",
    "GONE": (
        "verkocht|is verkocht|is al weg|is verdwenen|al verwijderd|al gedemonteerd|in de bakskist|"
        "in een bakskist|opgeborgen|wordt opgeborgen|ligt in de|bewaren we in|blijft thuis|is eraf|"
        "hebben we verwijderd|heb ik verwijderd|is verwijderd|is weg|hebben we eraf gehaald|heb ik eraf gehaald|"
        "zit er niet meer|is er niet meer"
    ),
    "BESIDE": "naast de|naast het|bij de|bij het|vlak boven de|ter hoogte van de",
    "BEGIN": "begint|vanaf",
    "EXCEPT": "behalve|alleen|uitgezonderd|afgezien van",
}
