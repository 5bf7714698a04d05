"""Norwegian: what stands on the stern, how it moves, where it is, whether it goes."""

WORDS = {
    "O_LADDER": (
        "badeleiter|hekkleider|badestige|stige|stigen|badeleider|leider|badestigen|stiger|badeleideren|"
        "teleskopstige|badetrapp stige"
    ),
    "O_PLATFORM": "badeplattform|plattform|plattformen|badeplattformen|plattformer|badebrygge|hekkplattform",
    "O_DAVITS": "daviter|davit|davitene|davitter|davit*|jolledaviter",
    "O_OUTBOARD": (
        "påhengsmotor|påhengsmotorfeste|påhengsmotoren|påhenger|påhengeren|motorbrakett|utenbordsmotor|"
        "påhengsmotor på brakett|motorfeste|utenbordsmotoren"
    ),
    "O_EXHAUST": "eksos|eksosen|eksosrør|eksosutløp|eksosutslipp",
    "O_RAIL": (
        "hekkestol|hekkestolen|hekkstol|hekkstolen|hekkgelender|hekkstøtte|hekkstøtten|hekkstøtter|akterpulpit|"
        "hekkpulpit|pushpit|akterpulpiten|rekkverk|hekkrekke|hekkpulpiten|akterrekke|rekkverket"
    ),
    "O_STAY": (
        "hekkstag|akterstag|hekkstaget|akterstaget|delt hekkstag|doble hekkstag|hekkstagene|bakstag|delt akterstag"
    ),
    "O_BOOM": "mesanbom|mesanbommen|storbom|bommen|bomnokk|storbommen",
    "O_ARCH": "targabøyle|bøyle|targabøylen|targa|bøylen|hekkbøyle|radarbøyle|portal",
    "O_PANELS": "solcellepanel|solcellepaneler|solpanel|solceller|solpaneler|solcellepanelene|solcelle*|paneler",
    "O_MAST": "radarmast|vindgenerator|vindmølle|radarstolpe|antennemast|radarmasten|vindgeneratoren",
    "O_STAFF": "flaggstang|flaggstangen|flaggspill",
    "O_PASSERELLE": "landgang|landgangen|passerelle|gangvei",
    "O_BOOMKIN": "klyverbom akter|papegøyestokk|driverbom",
    "O_LOCKER": "gasskasse|redningsflåte|hekkbenk",
    "FOLD": (
        "slås opp|nedfellbar|foldbar|felles opp|sammenleggbar|foldes opp|kan foldes|felles ned|kan felles|"
        "klappes opp|slås ned|sammenleggbart|kan vippes|oppfellbar|som felles|kan legges opp|vippes opp|vippbar|"
        "legges ned|nedfellbart|kan slås opp"
    ),
    "FIXED": "fast|fastmontert|sveiset|faste|fastboltet|boltet|fastskrudd|stiv|fastsveiset|ikke fellbar|skrudd",
    "REMOVE": (
        "klare oss uten|klarer oss uten|kan unnværes|kan settes et annet sted|går an å flytte|"
        "demonteres ved behov|tas av ved behov|blir demontert|demonterbar|kan tas av|kan fjernes|tas av|fjernes|"
        "kan demonteres|demonteres|kan flyttes|avtakbar|kan tas bort|kan skrus av|ta av|kan tas vekk|tas bort|"
        "fjerne|avtagbar|kan godt fjernes|kan tas ned"
    ),
    "KEEP": (
        "skal sitte på|må sitte på|fortsette å bruke|fortsatt bruke|fortsatt kunne bruke|vil vi ikke fjerne|"
        "vil jeg ikke fjerne|skal ikke fjernes|må vi beholde|beholde|må bli|må være der|må bli stående|"
        "skal være der|vil beholde|vil vi beholde|skal beholdes|må beholdes|må stå|kan ikke fjernes|"
        "kan ikke tas av|må bli værende|vil ha den|ønsker å beholde|skal bli|må bli sittende|kan ikke demonteres|"
        "skal bli værende|bli stående"
    ),
    "PORT": "babord|på babord|babord side|bb|venstre|babordsida|venstre side|om babord",
    "STARBOARD": "styrbord|på styrbord|styrbord side|sb|høyre|styrbordsida|høyre side|om styrbord",
    "CENTRE": (
        "midten|midt|senter|senterlinjen|midtskips|midtlinjen|fra midten|midt på|sentrum|senterlinje|fra senter|"
        "midtlinje|i midten|fra midtlinjen|sentralt"
    ),
    "EACH_SIDE": "på hver side|på begge sider|ett på hver side|en på hver side|begge sider|hver sin side",
    "PREFER": (
        "om mulig|hvis mulig|aller helst|helst|foretrekker|vil helst|ønsker|ønske|helst på|gjerne på|foretrekkes|"
        "foretrukket|heller|vil gjerne ha den"
    ),
    "SLIDE": "teleskopisk|uttrekkbar|uttrekkbart|teleskop|skyves",
    "SWING": "svingbar|dreibar",
    "AVOID": "unngå|helst ikke|absolutt ikke|slippe",
    "GONE": (
        "solgt|har vi solgt|har jeg solgt|allerede fjernet|i kistebenken|i stuerommet|i stuverommet|stuet|stues|"
        "oppbevares|ligger i en|står hjemme|ligger hjemme|er fjernet|er borte|er tatt av|har vi tatt av|"
        "har vi fjernet|har jeg fjernet|tok vi av|er demontert|er ikke der lenger"
    ),
    "BESIDE": "ved siden av|nær|inntil|like ved|ved",
    "BEGIN": "begynner|starter",
    "EXCEPT": "unntatt|bortsett fra|utenom|bare|kun",
}
