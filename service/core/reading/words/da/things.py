"""Danish: what stands on the stern, how it moves, where it is, whether it goes."""

WORDS = {
    "O_LADDER": (
        "hækstige|badestige|stige|stigen|badelejder|lejder|badestigen|stiger|badetrin stige|badelejderen|"
        "badetrinsstige|teleskopstige"
    ),
    "O_PLATFORM": "badeplatform|platform|platformen|badeplatformen|platforme|badebro|hækplatform",
    "O_DAVITS": "davider|davit|daviderne|davids|jolledavider",
    "O_OUTBOARD": (
        "påhængsmotor|påhængsmotorbeslag|påhængsmotoren|påhænger|påhængeren|motorbeslag|udenbordsmotor|"
        "påhængsmotor på beslag|motorbeslaget|påhængsmotorens beslag"
    ),
    "O_EXHAUST": "udstødning|udstødningen|udstødningsrør|udstødningsudløb",
    "O_RAIL": (
        "hækstol|hækstolen|hækpulpit|agterpulpit|pushpit|hækpulpiten|pulpit|hækgelænder|rækværk|søgelænder|"
        "hækrækværk|agterrækværk"
    ),
    "O_STAY": (
        "hækstag|agterstag|agterstaget|hækstaget|agterstagene|delt agterstag|dobbelt agterstag|hækstagene|bagstag"
    ),
    "O_BOOM": "mesanbom|mesanbommen|storbom|bommen|bomnok|storbommen|bom",
    "O_ARCH": "targabøyle|bøyle|targabøjle|targabøjlen|targa|bøjle|bøjlen|hækbøjle|radarbøjle|portal",
    "O_PANELS": "solcellepanel|solcellepaneler|solpanel|solceller|solpaneler|solcelle*|paneler",
    "O_MAST": "radarmast|vindgenerator|vindmølle|radarmasten|antennemast|vindgeneratoren|radarstolpe",
    "O_STAFF": "flaggstang|flagstang|flagspil|flagstangen|flagspillet",
    "O_PASSERELLE": "landgang|landgangen|gangbro|passerelle",
    "O_BOOMKIN": "papegøjestok|driverbom",
    "O_LOCKER": "gaskasse|redningsflåde|gasboks",
    "FOLD": (
        "klappes op|foldbar|kan klappes|sammenklappelig|slås op|klappe op|kan klappes op|klappes ned|vippes op|"
        "kan vippes|nedklappelig|opklappelig|til at klappe op|som klappes op|kan foldes|klapbar|foldes op|"
        "fældbar|der klappes op|klappe ned|vipbar|sammenklapelig"
    ),
    "FIXED": (
        "fast|fastmontert|svejset|faste|fastboltet|boltet|fastskruet|stiv|fastmonteret|fastsvejset|påboltet|skruet"
    ),
    "REMOVE": (
        "kan undværes|kan undvære|klare os uden|kan sættes et andet sted|tages af ved behov|bliver afmonteret|"
        "demonterbar|kan tages af|kan fjernes|tages af|fjernes|afmonteres|kan afmonteres|aftagelig|"
        "kan demonteres|demonteres|kan flyttes|kan skrues af|tage af|kan tages væk|fjerne|kan godt fjernes|"
        "kan tages ned|må gerne fjernes|tages væk"
    ),
    "KEEP": (
        "skal sidde der|fortsætte med at bruge|stadig bruge|stadig kunne bruge|vil vi ikke fjerne|"
        "vil vi ikke af med|skal vi beholde|beholde|skal blive|skal blive siddende|skal beholdes|vil beholde|"
        "vil vi beholde|skal være der|kan ikke fjernes|skal forblive|ønsker at beholde|vil gerne beholde|"
        "blive siddende|må ikke fjernes|skal bevares|bevares|bliver siddende|kan ikke tages af|"
        "kan ikke afmonteres"
    ),
    "PORT": "bagbord|om bagbord|bagbords|bagbord side|bb|venstre|i bagbord side|bagbords side|venstre side",
    "STARBOARD": "styrbord|om styrbord|styrbords|styrbord side|sb|højre|i styrbord side|styrbords side|højre side",
    "CENTRE": (
        "midten|midt|centrum|centerlinjen|midtskibs|midterlinjen|fra midten|midt på|centerlinje|fra centrum|"
        "midtlinjen|i midten|fra midterlinjen|centralt|fra centerlinjen"
    ),
    "EACH_SIDE": "på hver side|på begge sider|i begge sider|en på hver side|et på hver side|i hver side|begge sider",
    "PREFER": (
        "om muligt|hvis det er muligt|helst|foretrækker|vil helst|ønsker|ønske|helst i|gerne i|foretrækkes|"
        "foretrukket|hellere|vil gerne have den|helst på"
    ),
    "SLIDE": "teleskopisk|udtrækkelig|udtræk|teleskop|skydes",
    "SWING": "drejelig|svingbar",
    "AVOID": "undgå|helst ikke|absolut ikke|slippe for",
    "GONE": (
        "solgt|har vi solgt|har jeg solgt|allerede fjernet|i kistebænken|i stuverummet|i en stuverum|stuvet|"
        "stuves|opbevares|ligger i en|står hjemme|ligger hjemme|er fjernet|er væk|er taget af|har vi taget af|"
        "har vi fjernet|har jeg fjernet|tog vi af|er afmonteret|er der ikke mere"
    ),
    "BESIDE": "ved siden af|nær|tæt på|lige ved|ved",
    "BEGIN": "begynder|starter",
    "EXCEPT": "undtagen|bortset fra|udover|kun",
}
