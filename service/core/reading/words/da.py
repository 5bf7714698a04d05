"""Danish."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary

VOCABULARY = Vocabulary(
    language="da",
    common="og er det en et på av for med vi jeg har som til fra at ikke den om kan hej vores jeres hvad hvor også "
    "båden over under skal hvilken altså længere end slags af mit var vil skulle kunne blev eller mod efter uden "
    "der noget meget får ligger jer",
    numbers=Numbers(
        ones="nul en/et/én to tre fire fem seks syv otte ni ti elleve tolv tretten fjorten femten seksten sytten "
        "atten nitten",
        tens="tyve tredive fyrre halvtreds tres halvfjerds firs halvfems",
        joint="{one}og{ten}",
        hundred="hundrede",
        half="halv/halve/halvt",
        and_="og",
        whole="halvanden=1.5 halvandet=1.5 {one}_og_en_halv=+0.5 trekvart=0.75",
    ),
    concepts={
        "M_TAPE": "målebånd|målebåndet|tommestok|tommestokken|metermål",
        "TRANSOM": "kanten af spejlet|kanten af agterspejlet|spejlkanten|"
        "agterspejl|spejlet|spejl|agterspejlet|hækken|hæk|hækkens|spejlets|agterspejl*|agterenden|agterende|"
        "agterspejlets|hækkens overkant|bunden af spejlet|hækkens underkant|spejlets hældning|hækkens hældning|"
        "spejlets bredde|lodret spejl|lodret hæk|negativt agterspejl|negativt spejl|negativ hæk|omvendt spejl",
        "POST": "stævnens top|stævntoppen|"
        "agterstævn|agterstævnen|stævnen|agterstævn*|stævnens|toppen af stævnen|rorstævnen|stævn",
        "TOP": "stævnens top|stævntoppen|"
        "kanten af spejlet|kanten af agterspejlet|spejlkanten|"
        "til dæk|til dækket|op til dækket|"
        "går op til|når op til|"
        "overkant|overkanten|øverst|øverste kant|øvre kant|foroven|oppe|toppen|overkanten af|øverste|top|"
        "dækskanten|i toppen|hækkens overkant|toppen af stævnen|toppen af agterstævnen|bredde foroven|"
        "bredde øverst",
        "BOTTOM": "går ned til|"
        "underkant|underkanten|nederkant|nederste kant|nedre kant|forneden|nederst|nede|bunden af spejlet|"
        "underside|hækkens underkant",
        "WATER": "vandlinjen|vandlinien|vandet|vand|vandoverfladen|vandspejlet|vl|kvl|vandlinje|vandets overflade|"
        "vandlinie|havet|fribord|under vandet|under vandlinjen|under vandoverfladen|under vl|under vand|i vandet|"
        "under vandlinien|lige i vandlinjen|i vandlinjen|ved vandlinjen|i vandoverfladen|rører vandet|"
        "lige ved vandet|på vandlinjen",
        "TOERAIL": "fotlist|fotlisten|fodliste|fodlisten|lønning|lønningen|skandæk|essing|fenderliste",
        "STEP": "badetrinn|trinn|badetrin|badetrinet|trin|trinet|indstøbt trin|badetrappe",
        "HULL": "plade|pladen|klædning|skrog|skroget|skrogets|laminat|hud",
        "BOAT": "båd|båden|sejlbåd|sejlbåden|yacht|ketch|slup|skib|kutter|både|glasfiberbåd|bådmodel|sejlskib",
        "HEIGHT": "højde|højden|høj|fribord|højt|højde over",
        "WIDTH": "bredde|bredden|bred|bredt|brede|i bredden|bredde foroven|bredde øverst|spejlets bredde",
        "THICK": "tykkelse|tyk|tykkelsen|tykt|tykke|godstykkelse|skrogtykkelse|laminattykkelse|pladetykkelse",
        "LOA": "længde|længden|længde over alt|loa|bådens længde|længde o a|l o a|total længde|skroglængde",
        "LWL": "lvl|vandlinjelængde|længde i vandlinjen|lwl|længde vl",
        "BEAM": "største bredde|bådens bredde|bredde max|max bredde|maks bredde",
        "DRAFT": "stikker|dybgang|dybdegang|dybgående|stikker dybt",
        "DISPLACEMENT": "deplacement|deplacementet|vægt|vejer|vægten|deplacerer|bådens vægt|totalvægt|vejet|lastet vægt|kran|tung",
        "BALLAST": "ballast|kjøl|motor|jolle|kølen|køl|motoren|jollen|anker|besætning|ballastkøl|gummibåd",
        "RAKE": "hældning|vinkel|hældningen|hældningsvinkel|vinklen|spejlets hældning|skråning|hældning på|"
        "hækkens hældning",
        "LEAN": "hælder|hældende|skråner|skrå|falder|hældning|hælde|vinklet|skråt",
        "FORWARD": "forover|længere fremme|foran|fremad|længere fremad|længere forude|længere frem|længere forud|forud|"
        "fremover|mod stævnen|foran hækken|foran spejlet|for hækken|mod boven",
        "AFT": "agterover|længere agter|længere agterud|bagud|agten for|bag|længere tilbage|længere bagud|agterud|"
        "mod hækken|agtenfor|bagved|agter|ud bag|bag hækken|bag spejlet|agter for|længere bagude",
        "PLUMB": "er ret lodret|er lodret|"
        "lodret|lodret spejl|lodrette|lodret hæk|lige op og ned|vertikal|næsten lodret",
        "REVERSE": "negativt agterspejl|negativt|negativt spejl|negativ|negative|negativ hældning|omvendt|negativ hæk|"
        "inverteret|omvendt spejl|indadhældende",
        "COUNTER": "overheng|klassisk hekk|positiv|positivt|klassisk hæk|overhæng|overhængende|positiv hældning|"
        "klassisk agterspejl",
        "SCOOP": "støbt i skroget|støbt ind i skroget|badeplatform støbt|"
        "badetrinn i hekken|indstøbt badetrin|indstøbt badeplatform|badetrin i hækken|integreret badeplatform|"
        "indbygget badeplatform|badetrappe i hækken|støbt badetrin|badetrappe",
        "OPEN": "åben hæk|åbent agterspejl|åbent spejl|nedfældeligt agterspejl|hækken er åben|uden agterspejl|"
        "åben agterende|hæk der kan klappes ned|nedklappelig hæk|åbent cockpit|åben agter",
        "DOUBLE": "spidsgatter|spidsgattet|kanohæk|spidsgattere|spidsgatteren|spidsgatted|kanostævn|spids agter|spids hæk|"
        "dobbeltender|spidsgat",
        "RUDDER": "ror|roret|rorblad|spaderor|rorets|rorbladet|hovedror|dobbelt ror|to ror|hovedroret|rorets bagkant|"
        "bagkanten af roret|bagkant ror|bagkant af ror|balanceret spaderor|balanceret ror|skæg ror|"
        "fritbærende ror|påhængt ror|udenbords ror|udvendigt ror|agterhængt ror",
        "HUNG_OUT": "ophængt på spejlet|ophængt på agterspejlet|ophængt på hækken|ophængt|"
        "påhængt ror|påhængt|udenbords ror|hængt på agterspejlet|hænger på hækken|hænger på agterspejlet|"
        "hængt på hækken|hænger på spejlet|hængt på spejlet|hængt på agterstævnen|hænger på agterstævnen|"
        "udvendigt ror|udenpåhængt|agterhængt|agterhængt ror|hækhængt|hæk hængt|udenbords|monteret på hækken|"
        "udvendigt|spejlhængt",
        "HUNG_IN": "spaderor*|balanceror*|skegror*|"
        "spaderor|balanceret spaderor|balanceror|fritbærende|balanceret ror|halvbalanceret|bag kølen|på skæg|"
        "skæg ror|på skeg|skegror|fritbærende ror|finneror",
        "UNDER": "på kølen|"
        "fritbærende|skæg|under båden|under skroget|skeg|under hækken|ophængt under|indenbords|under agterenden|"
        "under bunden",
        "TRAILING": "bagkant|bagkanten|agterkant|rorets bagkant|bageste kant|bagkanten af roret|bagkant ror|bagerste kant|"
        "bagkant af ror|agterkanten",
        "STOCK": "rorstamme|rorstammen|rorstammens|rorakse|roraksen",
        "STICK_OUT": "stikker ut|stikker|stikker ud|rager ud|rager|stikker bagud|udstik|går ud",
        "TURN": "til hver side|rorutslag|til hver sin side|hver vej|til begge sider|max udslag|udslag|rorudslag|"
        "til hver af siderne|per side",
        "GRP": "massiv glasfiber|glasfiber|polyester|plast|grp|glasfiberarmeret|laminat|glasfiberbåd",
        "SOLID": "massiv|massivt|massivt laminat|massiv laminat|massiv glasfiber|enkeltlaminat|solid|uden kerne|"
        "massivlaminat|massiv plast",
        "CORED": "sandwich|balsa|sandwichkonstruktion|balsakerne|skum|divinycell|kerne|skumkerne|i sandwich",
        "WOOD": "træ|mahogni|træbåd|i træ|af træ|eg|lærk|mahogni på eg|kravelbygget|klinkbygget|krydsfiner|fyr",
        "ALU": "aluminium|alu|aluminiumsskrog|i aluminium",
        "STEEL": "stål|stålbåd|i stål|stålskrog|af stål",
        "O_LADDER": "hækstige|"
        "badestige|stige|stigen|badelejder|lejder|badestigen|stiger|badetrin stige|badelejderen|badetrinsstige|"
        "teleskopstige",
        "O_PLATFORM": "badeplatform|platform|platformen|badeplatformen|platforme|badebro|hækplatform",
        "O_DAVITS": "davider|davit|daviderne|davids|jolledavider",
        "O_OUTBOARD": "påhængsmotor|påhængsmotorbeslag|påhængsmotoren|påhænger|påhængeren|motorbeslag|udenbordsmotor|"
        "påhængsmotor på beslag|motorbeslaget|påhængsmotorens beslag",
        "O_EXHAUST": "udstødning|udstødningen|udstødningsrør|udstødningsudløb",
        "O_RAIL": "hækstol|hækstolen|"
        "hækpulpit|agterpulpit|pushpit|hækpulpiten|pulpit|hækgelænder|rækværk|søgelænder|hækrækværk|agterrækværk",
        "O_STAY": "hækstag|agterstag|agterstaget|hækstaget|agterstagene|delt agterstag|dobbelt agterstag|hækstagene|bagstag",
        "O_BOOM": "mesanbom|mesanbommen|storbom|bommen|bomnok|storbommen|bom",
        "O_ARCH": "targabøyle|bøyle|targabøjle|targabøjlen|targa|bøjle|bøjlen|hækbøjle|radarbøjle|portal",
        "O_PANELS": "solcellepanel|solcellepaneler|solpanel|solceller|solpaneler|solcelle*|paneler",
        "O_MAST": "radarmast|vindgenerator|vindmølle|radarmasten|antennemast|vindgeneratoren|radarstolpe",
        "O_STAFF": "flaggstang|flagstang|flagspil|flagstangen|flagspillet",
        "O_PASSERELLE": "landgang|landgangen|gangbro|passerelle",
        "FOLD": "klappes op|foldbar|kan klappes|sammenklappelig|slås op|klappe op|kan klappes op|klappes ned|vippes op|"
        "kan vippes|nedklappelig|opklappelig|til at klappe op|som klappes op|kan foldes|klapbar|foldes op|"
        "fældbar|der klappes op|klappe ned|vipbar|sammenklapelig",
        "FIXED": "fast|fastmontert|svejset|faste|fastboltet|boltet|fastskruet|stiv|fastmonteret|fastsvejset|påboltet|"
        "skruet",
        "REMOVE": "kan undværes|kan undvære|klare os uden|"
        "kan sættes et andet sted|"
        "tages af ved behov|bliver afmonteret|"
        "demonterbar|kan tages af|kan fjernes|tages af|fjernes|afmonteres|kan afmonteres|aftagelig|"
        "kan demonteres|demonteres|kan flyttes|kan skrues af|tage af|kan tages væk|fjerne|kan godt fjernes|"
        "kan tages ned|må gerne fjernes|tages væk",
        "KEEP": "skal sidde der|"
        "fortsætte med at bruge|stadig bruge|stadig kunne bruge|"
        "vil vi ikke fjerne|vil vi ikke af med|"
        "skal vi beholde|beholde|skal blive|skal blive siddende|skal beholdes|vil beholde|vil vi beholde|"
        "skal være der|kan ikke fjernes|skal forblive|ønsker at beholde|vil gerne beholde|blive siddende|"
        "må ikke fjernes|skal bevares|bevares|bliver siddende|kan ikke tages af|kan ikke afmonteres",
        "YES": "ja",
        "NOT": "ingen|ikke|uden|intet|nej|ingenting|hverken|mangler|findes ikke|aldrig|har ikke|ikke nogen",
        "PORT": "bagbord|om bagbord|bagbords|bagbord side|bb|venstre|i bagbord side|bagbords side|venstre side",
        "STARBOARD": "styrbord|om styrbord|styrbords|styrbord side|sb|højre|i styrbord side|styrbords side|højre side",
        "CENTRE": "midten|midt|centrum|centerlinjen|midtskibs|midterlinjen|fra midten|midt på|centerlinje|fra centrum|"
        "midtlinjen|i midten|fra midterlinjen|centralt|fra centerlinjen",
        "EACH_SIDE": "på hver side|på begge sider|i begge sider|en på hver side|et på hver side|i hver side|begge sider",
        "PREFER": "om muligt|hvis det er muligt|"
        "helst|foretrækker|vil helst|ønsker|ønske|helst i|gerne i|foretrækkes|foretrukket|hellere|"
        "vil gerne have den|helst på",
        "OTHER_BOAT": "hans er|hendes er|hans båd|hendes båd|"
        "nabo*|bådnabo*|"
        "nabo|naboen|ven|forrige båd|naboens|nabobåd|naboens båd|en ven|vens|kammerat|bekendt|gamle båd|"
        "gammel båd|anden båd|tidligere båd|bror|svoger|kollega|min ven|bådnabo|min bror",
        "BELOW": "under vandet|under vandlinjen|under vandoverfladen|under vl|nedsænket|under vand|i vandet|neddykket|"
        "under vandlinien|derunder|herunder",
        "OURS": "bror og jeg|ven og jeg|svoger og jeg|"
        "vores|vi har|min|hos os|min båd|vores båd|vi har en|jeg har en|på vores|på min",
        "YEAR": "fra|bygget|årgang|byggeår|bygget i|søsat|fra år|produceret|bygget år|søsat i|modelår",
        "HULL_NUMBER": "skrognummer|byggenummer|skrog nr|byggenr|skrognr|bygge nr|bådnummer",
        "BUILDER": "værft|byggeri|producent|værftet|bådbygger|bygget af|bygger",
        "MODEL": "model|båd|type|bådtype|bådmodel|bådmærke|mærke og model|type båd",
        "ASK": "hvilket beslag|har jeg brug for|pris|tilbud|passer|hvilken|interesseret|har brug for|hvad koster|koster|"
        "anbefaler|anbefale|passe|egner|spørgsmål|vil gerne vide|pristilbud|ønsker tilbud|behøver|forslag|prisen|"
        "hvilket|hvor meget|leder efter|søger|vil gerne høre|vil gerne have et tilbud|interesserede|overvejer|"
        "jeres vindror",
        "GEAR": "vindror|vindroret|selvstyring|selvstyringen|vindfane|vindrorene|vindfanen|selvstyrer|vindstyring|"
        "hjælperor|vindpilot|vindselvstyring|selvstyr",
        "ORDER": "reservedel|reservedele|bestille|bestilling|serienummer|bøsninger|bøsning|foringer|ny vindfane|nyt blad|"
        "serienr|ødelagt|slidt|slidte|fragt|knækket|nyt rorblad|dele til",
        "THANKS": "mange tak|tusind tak|takker|tilfreds|tilfredse|kommet frem|mange tak for|tak for",
        "SIGN_OFF": "hilsen|venlig hilsen|med venlig hilsen|mvh|hilsner|på forhånd tak|mange hilsner|hilsen fra|"
        "bedste hilsner|kærlig hilsen|med sejlerhilsen|tak på forhånd|venlige hilsner|med hilsen|bedste hilsen|"
        "hilsener|m v h|de bedste hilsner|tak|alt godt|vh",
        "CUSTOMER": "kunde|en kunde|kunden|kunder|ejer|ejeren|for en kunde|vores kunde",
        "COMPANY": "marine|bådbyggeri|bådservice|aps|sejlmager|sejlmageri|værft|marineservice|bådudstyr|yachts|bådcenter|"
        "maritim|bådmægler|bådeværft",
        "PHONE": "tlf|mob|mobil|telefon|mobilnr|tel|telefonnr|t|mobiltlf",
        "FAX": "fax|org",
        "M_PHONE": "telefonen|mobilen|vaterpas på mobilen|app|mobiltelefonen",
        "M_INCL": "vinkelmåler|hældningsmåler|inklinometer|vaterpas|digitalt vaterpas",
        "M_LASER": "laser|lasermåler|afstandsmåler",
        "M_DRAWING": "tegning|tegningen|tegninger|tegningerne|linjetegning|fra tegningen",
        "M_BROCHURE": "brochure|brochuren|datablad|ifølge værftet|ifølge producenten|katalog|specifikation|målebrev|"
        "iflg værftet|manualen",
        "M_GUESS": "på øjemål|øjemål|anslået|anslag|skønnet|skønsmæssigt|gætter|gæt|skønner|et skøn|på slump|anslår",
        "M_PHOTO": "foto|billede|billedet|fra foto",
        "GIVE_TAKE": "plus minus|plus eller minus",
        "WITHIN": "nøjagtigt",
        "BOOTSTRIPE": "vandlinjestribe|vandlinjestriben|boot top|vandliniestribe|bådtop",
        "COCKPIT": "cockpitdørk|cockpitdørken|cockpit|cockpittets dørk|cockpitbund|cockpitgulv|dørken",
        "DEPTH": "dyb|dybden|dybde|dybt",
        "LENGTH": "lang over alt|lang",
        "O_BOOMKIN": "papegøjestok|driverbom",
        "O_LOCKER": "gaskasse|redningsflåde|gasboks",
        "SLIDE": "teleskopisk|udtrækkelig|udtræk|teleskop|skydes",
        "SWING": "drejelig|svingbar",
        "AVOID": "undgå|helst ikke|absolut ikke|slippe for",
        "WITHDRAW": "glem|se bort fra|forkert|passer ikke|gælder ikke|var forkert",
        "MEANT": "mente|jeg mente|skal være|rettelse|i stedet for|istedet for|korrektion|rigtigt er|egentlig|skrivefejl|"
        "tastefejl|der skal stå|det rigtige er|korrekt er",
        "JUST_TOUCH": "flugter|tangerer|i vandskorpen|når lige|på højde med",
        "OWNED": "vores vindror|mit vindror|købt af jer|købt hos jer|købte|leveret af jer",
        "SELL": "nyhedsbrev|afmelde|rabat|messe|udstillere|klik|særtilbud|søgemaskine|kampagne|konkurrence|udsalg",
        "INSTEAD": "i stedet for|istedet for",
        "PLUMB_LINE": "lodsnor|lodsnoren|lodline|med lod|lod",
        "MEASURED": "målt|mål|målene|måling|målte|opmålt",
        "AT_WATER": "lige i vandlinjen|i vandlinjen|ved vandlinjen|i vandoverfladen|rører vandet|lige ved vandet|"
        "på vandlinjen",
        "OOPS": "nej|fejl|undskyld|jeg mener|beklager|rettelse|eller rettere|sorry|vent|rettere sagt|forkert",
        "GONE": "solgt|har vi solgt|har jeg solgt|"
        "allerede fjernet|"
        "i kistebænken|i stuverummet|i en stuverum|stuvet|stuves|opbevares|ligger i en|står hjemme|"
        "ligger hjemme|"
        "er fjernet|er væk|er taget af|har vi taget af|har vi fjernet|har jeg fjernet|tog vi af|"
        "er afmonteret|er der ikke mere",
        "ENDS": "slutter|ender",
        "BESIDE": "ved siden af|nær|tæt på|lige ved|ved",
        "BEGIN": "begynder|starter",
        "EXCEPT": "undtagen|bortset fra|udover|kun",
    },
)
