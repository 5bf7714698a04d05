"""German: whose boat, what is put right, what is asked, and leave taken."""

WORDS = {
    "YES": "ja",
    "NOT": (
        "kein|keine|keinen|nicht|ohne|keiner|keines|weder|nein|nichts|nie|entfällt|fehlt|nicht vorhanden|"
        "keinerlei|gibt es nicht|haben wir nicht"
    ),
    "OTHER_BOAT": (
        "vorher hatten wir|davor hatten wir|früher hatten wir|zuvor hatten wir|vorher hatte ich|"
        "davor hatte ich|früher hatte ich|liegeplatz ist|liegeplatz hat|box ist|box hat|"
        "seiner ist|seiner hat|seine ist|seine hat|seins ist|seins hat|ihrer ist|ihrer hat|nachbar*|stegnachbar*|"
        "nachbar|nachbars|freund|stegnachbar|voriges boot|früheres boot|freundes|bekannter|bekannten|kollege|"
        "stegnachbars|nachbarn|nachbarboot|vorgänger|altes boot|alten boot|voriges schiff|nachbarlieger|kumpel|"
        "vereinskamerad|bruder|bruders|schwager|freundin|liegeplatznachbar|anderes boot|vorbesitzer|nachbarin|"
        "liegenachbar|bootsnachbar|nebenlieger|nebenan|onkel|vetter|cousin|schwiegervater|vereinskollege|"
        "clubkamerad|clubkollege|segelkamerad|segelfreund|segelfreundes|stegkollege|schwesterschiff|"
        "schwesterschiffs|ein bekannter|eines bekannten|eines freundes|meines freundes|mein freund|unser voriges|"
        "unser altes|unser früheres|mein voriges|mein altes|mein früheres|vorgängerboot|ehemaliges boot|"
        "unsere vorige|unsere frühere|die vorige yacht|das andere boot|anderen boot|stegnachbarin|"
        "das boot daneben|vom nachbarn|beim nachbarn|nachbarschiff|stegnachbarn|deren boot|dessen boot|"
        "ihres bruders|sein boot|"
        "nicht unsere|nicht unseres|nicht unsers|nicht meine|nicht meins|ist nicht unseres"
    ),
    "WITHDRAW": (
        "vergessen sie bitte|vergiss|bitte vergessen|nicht berücksichtigen|lassen sie weg|streichen sie|"
        "ignorieren sie|vergessen sie die|vergessen sie|vergesst|streichen|ungültig|falsch war|stimmt nicht|"
        "war falsch|waren falsch|gilt nicht mehr|ignorieren"
    ),
    "MEANT": (
        "zahlendreher|ziffern vertauscht|zahlen vertauscht|gemeint|meinte|richtig ist|korrektur|berichtigung|"
        "statt|muss heißen|korrekt ist|sollte heißen|stattdessen|korrigiere|tippfehler|eigentlich"
    ),
    "OURS": (
        "bruder und ich|freund und ich|freundin und ich|schwager und ich|schwester und ich|unser|unsere|unseres|"
        "wir haben|meine|mein|bei uns|unserer|unserem|mein boot|unser boot|bei mir"
    ),
    "ASK": (
        "anfrage|passt das|passt|welche halterung|welches|angebot|was kostet|benötigen|brauchen|empfehlen|"
        "möchten|interesse|welches modell|welche anlage|welche größe|was würden sie|was würdet ihr|suchen|suche|"
        "interessieren|kosten|preis|preise|anbieten|anzubieten|frage|fragen|wissen|passen|passende|empfehlt|"
        "raten|kaufen|bestellen möchte|brauche|benötige|gibt es|kommt in frage|bitte um|erbitten|geeignet|"
        "was brauche|angebots"
    ),
    "GEAR": (
        "windsteueranlage|windsteuerung|windfahnensteuerung|windfahne|selbststeueranlage|windselbststeuerung|"
        "windsteuerungsanlage|windsteueranlagen|selbststeuerung|windruder|hilfsruder|selbststeuer|"
        "windfahnenruder|windselbststeueranlage|windfahnensteuer|windselbststeuer|windfahnenanlage|die anlage"
    ),
    "ORDER": (
        "ersatzteil|ersatzteile|bestellung|bestellen|seriennummer|ersatzblatt|neue buchsen|buchsen|lagerbuchsen|"
        "bolzen bestellen|nachbestellen|defekt|gebrochen|verschlissen|liefern|ersatz|neues ruderblatt|"
        "neue windfahne|verschleißteile|versand"
    ),
    "OWNED": "meine anlage|unsere anlage|bei ihnen gekauft|bei euch gekauft|anlage nr|seriennr|gekauft|geliefert",
    "THANKS": (
        "bedanke|bedanken wir|dankbar|danken|bedankt|gut angekommen|gesund angekommen|dank an euch|dank an sie|"
        "vielen dank|danke|herzlichen dank|besten dank|danke schön|dankeschön|angekommen|zufrieden|begeistert|bedanken"
    ),
    "SIGN_OFF": (
        "lieben gruß|herzlich|gruss|viele gruesse|ahoi und|mit sportlichem gruß|mit freundlichen grüßen|"
        "mit freundlichem gruß|freundliche grüße|viele grüße|grüße|mfg|herzliche grüße|mit besten grüßen|"
        "beste grüße|schöne grüße|danke|mit freundlichen|liebe grüße|lg|vg|es grüßt|hochachtungsvoll|"
        "freundlichst|mit besten|handbreit|mit seglergruß|mit herzlichen grüßen|mit seglerischen grüßen|"
        "danke im voraus|besten gruß|schönen gruß|servus|vielen dank im voraus|bis dann|bis bald|"
        "schöne seglergrüße|herzlichst|sonnige grüße|grüße aus|gruß aus|tschüss|mit maritimem gruß|"
        "maritime grüße|mast und schotbruch|es grüßen|allzeit gute fahrt|tausend dank|herzlichen dank|"
        "besten dank|dank im voraus|danke schon mal|vielen dank schon mal|danke und gruß"
    ),
    "CUSTOMER": (
        "kunde|kunden|kundin|unser kunde|eigner|kundschaft|für unseren kunden|auftrag|im auftrag|einen kunden|"
        "eines kunden"
    ),
    "COMPANY": (
        "yachtkontor|bootskontor|bootsladen|yachtagentur|marina|bootsausrüstung|yachtausstatter|yachtausrüstung|"
        "segelmacherei|marineservice|gmbh|yachtservice|bootswerft|yachten|bootsbau|wassersport|yachthandel|"
        "bootshandel|yachtzentrum|bootsservice|yachtausrüster|schiffsausrüster|schiffsausrüstung|ohg|e k|"
        "yachtwerft|bootsbaumeister|segelservice|rigg|takelage|yachttechnik|bootstechnik|yachting"
    ),
    "PHONE": "tel|telefon|mobil|handy|telefonnummer|mobiltelefon|tel nr|mobilnummer|fon|telefonisch|t",
    "FAX": "fax|hrb|ust",
    "SELL": (
        "newsletter|abmelden|abbestellen|rabatt|messe|aussteller|suchmaschinen|webseite optimieren|sonderangebot|"
        "jetzt kaufen|gewinnspiel|klicken sie|kredit|eintrittskarten"
    ),
    "INSTEAD": "statt|anstatt|anstelle von|statt der",
    "OOPS": (
        "nein|quatsch|falsch|pardon|moment|halt|sorry|verzeihung|entschuldigung|äh|besser gesagt|vielmehr|"
        "korrigiere|korrektur|ich meine|unsinn|stimmt nicht"
    ),
}
