"""Danish: what stands on the stern, how it moves, where it is, whether it goes."""

WORDS = {
    "O_LADDER": (
        "teleskoplejder|hækstige|badestige|stige|stigen|badelejder|lejder|badestigen|stiger|badetrin stige|"
        "badelejderen|badetrinsstige|teleskopstige|badestiger|lejderen|lejdere|badelejdere|badelejderne|"
        "hækstigen|teleskopstigen|rebstige|nødstige|redningsstige|stigens|badestigens|agterstige|badestigerne"
    ),
    "O_PLATFORM": (
        "badeplatform|platform|platformen|badeplatformen|platforme|badebro|hækplatform|badeplatforme|badebroen|"
        "badebrædt|svømmeplatform|dykkerplatform|hækplatformen|teakrist|badedæk|agterplatform|platformens|"
        "badeflåde"
    ),
    "O_DAVITS": (
        "davider|davit|daviderne|davids|jolledavider|davitter|davitten|jollekran|hækdavider|agterdavider|"
        "davidarme|davits|davidder|jollelift"
    ),
    "O_OUTBOARD": (
        "påhængsmotor|påhængsmotorbeslag|påhængsmotoren|påhænger|påhængeren|motorbeslag|udenbordsmotor|"
        "påhængsmotor på beslag|motorbeslaget|påhængsmotorens beslag|påhængsmotorbeslaget|motorkonsol|"
        "påhængsmotorer|påhængsmotorholder|motorholder|motorbuk|udenbordsmotoren|hækmotor"
    ),
    "O_EXHAUST": (
        "udstødning|udstødningen|udstødningsrør|udstødningsudløb|udstødningsrøret|udstødningshul|"
        "udstødningsgennemføring|udstødningsudløbet|udstødningens|udblæsning|udstødningsåbning|udstødninger"
    ),
    "O_RAIL": (
        "hækstol|hækstolen|hækpulpit|agterpulpit|pushpit|hækpulpiten|pulpit|hækgelænder|rækværk|søgelænder|"
        "hækrækværk|agterrækværk|agterpulpiten|hækstole|agterstol|agterrækværket|hækrækværket|søgelænderet|"
        "gelænder|gelænderet|pulpiten|hækgelænderet|delt hækstol|delt pushpit|agterrælingen|ræling|rælingen|"
        "hækpulpitter|pushpitten"
    ),
    "O_STAY": (
        "hækstag|agterstag|agterstaget|hækstaget|agterstagene|delt agterstag|dobbelt agterstag|hækstagene|"
        "bagstag|hækstagstrammer|hækstagsstrammer|delt hækstag|dobbelt hækstag|to hækstag|barduner|bagstaget|"
        "hanefod|agterstagsbeslag|hækstagsbeslag|hækstagets|todelt hækstag|hækstagsrøstjern"
    ),
    "O_BOOM": (
        "mesanbom|mesanbommen|storbom|bommen|bomnok|storbommen|bom|bomende|bomenden|bomnokken|storsejlsbom|"
        "mesanbommens|bommens"
    ),
    "O_ARCH": (
        "targabøyle|bøyle|targabøjle|targabøjlen|targa|bøjle|bøjlen|hækbøjle|radarbøjle|portal|targabue|"
        "targabuen|bue|buen|hækbue|hækbuen|radarbue|solcellebøjle|galge|hækgalge|hækportal|portalen|"
        "rustfri bøjle|bøjler|targabøjlens|agterbøjle|antennebøjle|rustfri bue|agterportal"
    ),
    "O_PANELS": (
        "solcellepanel|solcellepaneler|solpanel|solceller|solpaneler|solcelle*|paneler|solcellepanelet|"
        "solpanelerne|solpanelet|solcellerne|solcellepanelerne|solcelleanlæg|solcelle"
    ),
    "O_MAST": (
        "radarmast|vindgenerator|vindmølle|radarmasten|antennemast|vindgeneratoren|radarstolpe|vindmøllen|"
        "vindgeneratormast|radarstolpen|vindturbine|antennestang|radarstang|vindmøller|antennemasten|"
        "vindgeneratorens|gps antenne|antennerør|vhf antenne|ais antenne|antennestolpe|antennefod|gps svamp"
    ),
    "O_STAFF": (
        "flaggstang|flagstang|flagspil|flagstangen|flagspillet|flagstænger|flagspilsholder|flagstangsholder|"
        "flagstok|flagstangens|flagspillets|agterflag"
    ),
    "O_PASSERELLE": (
        "landgang|landgangen|gangbro|passerelle|landgangsbro|landgange|gangbroen|landgangsplanke|gangway|"
        "landgangens|passarelle|gangplanke"
    ),
    "O_BOOMKIN": "papegøjestok|driverbom|agterspryd|hækspryd|bovspryd agter|mesanspryd|agterbom",
    "O_OTHER": "grill|grillen|gasgrill|stangholdere|stangholder|agteranker|hækanker|hækankeret",
    "O_LOCKER": "gaskasse|redningsflåde|gasboks|redningsflåden|gaskassen|gasskab|redningsflådeholder",
    "EMPTY": "tom båd|tom|ulastet|uden last|uden grej",
    "LADEN": "lastet|fuldt lastet|med last|nedlastet|dybere end tegningen|under mærkerne|dybere end på tegningen",
    "SINKS": "dybere|synker|lavere|dybere end tegningen|under mærkerne|dybere end på tegningen",
    "CAMBER": "krumning|pilhøjde|bue|buet|hvælving|krum",
    "DROP": (
        "højdeforskel|højdeforskellen|højde mellem|højden mellem|lodret afstand|målt lodret|lodret målt|"
        "målt vertikalt|lodret højde|fra kant til kant|lige ned|lodret ned|vertikal afstand|"
        "fra over til underkant|mellem over og underkant|fra overkant til underkant|mellem overkant og underkant"
    ),
    "AXIS": "aksel|akslen|akse|aksen|stamme|stammen|stok|stokken",
    "FOLD": (
        "klappes op|foldbar|kan klappes|sammenklappelig|slås op|klappe op|kan klappes op|klappes ned|vippes op|"
        "kan vippes|nedklappelig|opklappelig|til at klappe op|som klappes op|kan foldes|klapbar|foldes op|"
        "fældbar|der klappes op|klappe ned|vipbar|sammenklapelig|klappes|klappes ind|klappes væk|klappes sammen|"
        "klappe ind|klap op|klappet op|klapper|foldes|foldes ned|foldes ind|foldes sammen|fældes|fældes op|"
        "fældes ned|fældes ind|kan fældes|kan klappes ned|kan klappes ind|kan klappes væk|kan klappes sammen|"
        "kan foldes op|kan vippes op|hængslet|på hængsler|sammenfoldelig|indklappelig|foldbare|foldbart|klapbare|"
        "klapbart|opklappeligt|nedklappeligt|svinges op|kan svinges op|slås ned|slås ind|slå op|slå ned|"
        "lægges op|kan lægges op|lægges ind|vippes|vippe op|vipbart|oplukkelig|klapstige|sammenklappeligt|"
        "opklappelige|hejses op|vippe"
    ),
    "FIXED": (
        "fast|fastmontert|svejset|faste|fastboltet|boltet|fastskruet|stiv|fastmonteret|fastsvejset|påboltet|"
        "skruet|fastmonterede|fastsiddende|ikke klapbar|ikke foldbar|kan ikke klappes|kan ikke foldes|"
        "klappes ikke|gennemboltet|svejste|svejst|påsvejst|stive|stift|ubevægelig|fast monteret|fast svejset|"
        "boltede|skruet fast|boltet fast|ikke vipbar|fast montering|kan ikke vippes|fastsvejst|fast monterede|"
        "fastmontering|ikke klapbart"
    ),
    "REMOVE": (
        "kan undværes|kan undvære|kan sættes et andet sted|tages af ved behov|bliver afmonteret|demonterbar|"
        "kan tages af|kan fjernes|kan afmonteres|aftagelig|kan demonteres|kan flyttes|kan skrues af|"
        "kan tages væk|kan godt fjernes|kan tages ned|må gerne fjernes|undværlig|overflødig|behøves ikke|"
        "behøver vi ikke|har vi ikke brug for|har jeg ikke brug for|til salg|kan ryge|kan ofres|løs|løstagelig|"
        "aftagelige|aftageligt|demonterbart|demonterbare|flytbar|flytbart|kan forsvinde|forsvinder|skal væk|"
        "skal af|ryger|kan løftes af|hægtes af|løftes af|kan vige|må vige|kan godt ryge|valgfri|må gerne ryge|"
        "kan ligge i kistebænken|kan lægges i kistebænken|kan trækkes op|kan blive hjemme|kan blive i land|"
        "ikke brug for mere|ikke brug for længere"
    ),
    "KEEP": (
        "glade for den|glad for den|glade for det|holder meget af|vil ikke undvære|vil vi ikke undvære|"
        "vil nødig undvære|vil nødig af med|skal sidde der|fortsætte med at bruge|stadig bruge|"
        "stadig kunne bruge|vil vi ikke fjerne|vil vi ikke af med|skal vi beholde|beholde|skal blive|"
        "skal blive siddende|skal beholdes|vil beholde|vil vi beholde|skal være der|kan ikke fjernes|"
        "skal forblive|ønsker at beholde|vil gerne beholde|blive siddende|må ikke fjernes|skal bevares|bevares|"
        "bliver siddende|kan ikke tages af|kan ikke afmonteres|bliver stående|forbliver|uundværlig|uundværligt|"
        "ikke til forhandling|hellig|bruges dagligt|bevare|lade sidde|lader sidde|lade stå|ikke røres|"
        "må ikke røres|vil nødig|nødig undvære|nødig af med|ikke undvære|kan ikke undvære|kan ikke undværes|"
        "beholdes|beholder vi|skal stå|skal sidde|skal blive der|blive der|blive på plads|skal bibeholdes|"
        "bibeholdes|bibeholde|må blive|ikke skilles|vil ikke skille os|må blive siddende|skal have lov at blive|"
        "den har vi brug for|dem har vi brug for|den har jeg brug for|den bruger vi|beholder jeg|den beholder vi"
    ),
    "PORT": (
        "bagbord|om bagbord|bagbords|bagbord side|bb|venstre|i bagbord side|bagbords side|venstre side|"
        "på bagbord|til bagbord|i bagbord|bagbords halvdel|agter i bagbord|bagbordssiden|i bagbords side|"
        "på bagbord side|bagbord agter|bagbords låring|til venstre|på venstre side|venstre hjørne|i venstre side|"
        "mod bagbord|bb side|i bb|bagbordside|bagbord halvdel|venstresiden|babord"
    ),
    "STARBOARD": (
        "styrbord|om styrbord|styrbords|styrbord side|sb|højre|i styrbord side|styrbords side|højre side|"
        "på styrbord|til styrbord|i styrbord|styrbords halvdel|agter i styrbord|styrbordssiden|i styrbords side|"
        "på styrbord side|styrbord agter|styrbords låring|til højre|på højre side|højre hjørne|i højre side|"
        "mod styrbord|sb side|i sb|styrbordside|styrbord halvdel|højresiden"
    ),
    "CENTRE": (
        "midten|midt|centrum|centerlinjen|midtskibs|midterlinjen|fra midten|midt på|centerlinje|fra centrum|"
        "midtlinjen|i midten|fra midterlinjen|centralt|fra centerlinjen|midterlinje|fra midten af|ud fra midten|"
        "fra midtskibs|midtskibslinjen|diametralplan|diametralplanet|centreret|midterstillet|midt i|"
        "centrallinjen|bådens midte|spejlets midte|fra midterlinie|midterlinie|ved siden af midten|"
        "uden for midten|i centrum|lige i midten|langskibs midte|fra midte|fra midtlinjen|midtlinje"
    ),
    "EACH_SIDE": (
        "på hver side|på begge sider|i begge sider|en på hver side|et på hver side|i hver side|begge sider|"
        "en i hver side|én i hver side|bagbord og styrbord|styrbord og bagbord|på hver sin side|hver sin side|"
        "i hver sin side|på begge siderne|til hver side|til begge sider|ud til hver side"
    ),
    "PREFER": (
        "om muligt|hvis det er muligt|helst|foretrækker|vil helst|ønsker|ønske|helst i|gerne i|foretrækkes|"
        "foretrukket|hellere|vil gerne have den|helst på|vil gerne have|ser helst|ville foretrække|ville helst|"
        "gerne have|foretrække|ønsker den|vil have den|gerne|vi vil|jeg vil|vi ønsker|passe mig bedst|"
        "passer mig bedst|passer os bedst|ville passe bedst|ville passe os bedst|ville være bedst|vil have det|"
        "vil have vindroret|vil gerne have det|passer bedst|bedst for os|bedre for os|hvis det kan lade sig gøre|"
        "hvis vi må vælge"
    ),
    "SLIDE": (
        "teleskopstigen|teleskoplejder|teleskopisk|udtrækkelig|udtræk|teleskop|skydes|udtrækkeligt|trækkes ud|"
        "kan trækkes ud|skydes ind|skydes ud|teleskopstige|skubbes ind|skubbes ud|udtræksstige|udtrækkelige|"
        "kan skydes ind|teleskopiske|som en skuffe"
    ),
    "SWING": (
        "drejelig|svingbar|svingbare|svingbart|drejelige|kan svinges|svinges ud|svinges ind|kan drejes|drejbar|"
        "drejbare|svinges|drejeligt|svinger ud|fejer|svinger|svinger over|pendler"
    ),
    "AVOID": "undgå|helst ikke|absolut ikke|slippe for",
    "GONE": (
        "allerede væk|er væk|er allerede væk|allerede fjernet|allerede solgt|allerede afmonteret|"
        "allerede taget af|findes ikke længere|er der ikke længere|ikke længere om bord|er solgt|"
        "er der ikke mere|har vi solgt|har jeg solgt|i kistebænken|i stuverummet|i en stuverum|stuvet|stuves|"
        "opbevares|ligger i en|står hjemme|ligger hjemme|er fjernet|er taget af|har vi taget af|har vi fjernet|"
        "har jeg fjernet|tog vi af|er afmonteret|ikke længere der|ikke mere|har vi ikke længere|"
        "har jeg ikke længere|har vi ikke mere|forsvandt|er forsvundet|hjemme|i garagen|i skuret|på land|"
        "under dæk|i forpiggen|i kahytten|i cockpitkassen|i en kistebænk|ligger i|opbevarer vi|stuvet væk|fortid|"
        "historie|gik over bord|den tidligere ejer tog|har ikke længere|ikke længere|givet til|givet videre|"
        "ikke monteret endnu|bestilt|i bestilling|"
        "taget ned|pillet af|har vi taget ned|demonteret"
    ),
    "BESIDE": "ved siden af|nær|tæt på|lige ved|ved",
    "BEGIN": "begynder|starter|begynder ved",
    "EXCEPT": "undtagen|bortset fra|udover|kun",
    "OFF": (
        "demontere|demonterer|afmontere|afmonterer|fjerne|fjerner|fjernes|sælge|sælger|sælges|flytte|flytter|"
        "flyttes|undvære|undværes|ofre|skrue løs|demonteres|afmonteres|skille os af med|skille mig af med|"
        "nedtage|aftage|være foruden|klare os uden|opgive|miste"
    ),
    "OFFED": (
        "demonteret|demonterede|afmonteret|afmonterede|fjernet|fjernede|solgt|solgte|aftaget|taget ned|"
        "taget i land|foræret væk|foræret bort|smidt ud|smidt væk|kasseret|skrottet|skåret af|savet af|rådnet|"
        "rådnet væk|rustet væk|sat i land|givet væk|givet bort|blev solgt|efterladt|nedlagt|skilt af med|"
        "hugget op|skåret væk"
    ),
    "V_TAKE": "tage|tager|tages|skrue|skruer|skrues|monterer|montere|monteres|løfte|løftes|pille|pilles|skære|skæres",
    "V_TOOK": "tog|taget|skruede|skruet|løftede|løftet|pillet|skåret",
    "P_OFF": "af|væk|løs|ned|i land|bort",
    "MAY": (
        "kan|kunne|må|skal|skulle|vil|ville|tænker|tænkt|planlægger|kommer|let|nemt|blive|bliver|muligt|går|"
        "villig|villige|gerne|bør|sagtens"
    ),
    "EASILY": (
        "uden problem|uden problemer|uden videre|ikke noget problem|uden besvær|uden værktøj|ikke svært|"
        "intet problem|ikke i vejen"
    ),
    "SHIFTED": "flyttet",
    "STAY": "forblive|blive|få lov at blive|beholder|være der|sidde der|stå der",
    "DOWNWARD": "nedad|længere nede|længere ned|under overkanten|ned fra overkanten|ned fra toppen",
    "EVEN": (
        "lige under|lodret under|præcis under|nøjagtig under|flugter med|i flugt med|på linje med|i linje med|"
        "eksakt under|direkte under|i lod med"
    ),
    "TAKE_THIS": "brug det|brug den|regn med det|gå ud fra det|den gælder|brug hellere|stol på det|regn med den",
    "LOATH": "nødig|ugerne|modvilligt|synd at|helst ikke|kede af",
    "ZERO": "nul",
}
