"""Norwegian: what stands on the stern, how it moves, where it is, whether it goes."""

WORDS = {
    "O_LADDER": (
        "badeleiter|hekkleider|badestige|stige|stigen|badeleider|leider|badestigen|stiger|badeleideren|"
        "teleskopstige|badetrapp stige|badestiger|leideren|hekkstige|akterstige|teleskopstigen|taustige|nødstige|"
        "redningsstige|svømmestige|stigens|teleskopleider"
    ),
    "O_PLATFORM": (
        "badeplattform|plattform|plattformen|badeplattformen|plattformer|badebrygge|hekkplattform|badebryggen|"
        "badebrett|svømmeplattform|dykkeplattform|akterplattform|badeplattformer|teakrist|badedekk"
    ),
    "O_DAVITS": (
        "daviter|davit|davitene|davitter|davit*|jolledaviter|davits|jollekran|davitarmer|akterdaviter|"
        "hekkdaviter|jollelift"
    ),
    "O_OUTBOARD": (
        "påhengsmotor|påhengsmotorfeste|påhengsmotoren|påhenger|påhengeren|motorbrakett|utenbordsmotor|"
        "påhengsmotor på brakett|motorfeste|utenbordsmotoren|motorfestet|motorbraketten|elektrisk påhengsmotor|"
        "påhengsmotorbrakett|utenbordsmotorfeste|hengemotor|påhengsfeste"
    ),
    "O_EXHAUST": (
        "eksos|eksosen|eksosrør|eksosutløp|eksosutslipp|eksosrøret|eksosutløpet|eksosuttak|eksosåpning|"
        "eksosgjennomføring|eksosanlegg|eksosrøra"
    ),
    "O_RAIL": (
        "hekkestol|hekkestolen|hekkstol|hekkstolen|hekkgelender|hekkstøtte|hekkstøtten|hekkstøtter|akterpulpit|"
        "hekkpulpit|pushpit|akterpulpiten|rekkverk|hekkrekke|hekkpulpiten|akterrekke|rekkverket|pulpit|pulpiten|"
        "akterrekkverk|rekke|rekka|akterstol|hekkrekkverk|delt pushpit|pushpiten|akterpulpiter"
    ),
    "O_STAY": (
        "hekkstag|akterstag|hekkstaget|akterstaget|delt hekkstag|doble hekkstag|hekkstagene|bakstag|"
        "delt akterstag|akterstagene|bakstaget|dobbelt akterstag|akterstagstrammer|akterstagsfeste|barduner|"
        "todelt akterstag|doble akterstag|hanefot"
    ),
    "O_BOOM": "mesanbom|mesanbommen|storbom|bommen|bomnokk|storbommen|bom|bomende|bomenden|storseilbom",
    "O_ARCH": (
        "targabøyle|bøyle|targabøylen|targa|bøylen|hekkbøyle|radarbøyle|portal|targabue|targabuen|bue|buen|"
        "akterbøyle|radarbue|solcellebøyle|portalen|rustfri bøyle|galge|antennebøyle|akterbue|aktergalge|"
        "hekkportal|akterportal"
    ),
    "O_PANELS": (
        "solcellepanel|solcellepaneler|solpanel|solceller|solpaneler|solcellepanelene|solcelle*|paneler|"
        "solcellepanelet|solpanelet|solpanelene|solcellene"
    ),
    "O_MAST": (
        "radarmast|vindgenerator|vindmølle|radarstolpe|antennemast|radarmasten|vindgeneratoren|vindmølla|"
        "vindturbin|antennemasten|radarstang|vindgeneratormast|vindgen|radarmasta|gps antenne|antennestang|"
        "antennerør|vhf antenne|ais antenne|gps sopp|antennefeste|antennestolpe"
    ),
    "O_STAFF": (
        "flaggstang|flaggstangen|flaggspill|flaggstanga|flaggspillet|flaggfeste|flaggstangholder|flaggstenger|"
        "flaggstangfeste"
    ),
    "O_PASSERELLE": (
        "landgang|landgangen|passerelle|gangvei|gangveien|landgangsplanke|gangway|landgangsbru|"
        "leider og landgang|landgangs"
    ),
    "O_BOOMKIN": (
        "klyverbom akter|papegøyestokk|driverbom|akterspryd|hekkspryd|baugspryd akter|mesanspryd|akterbom|akterpeke"
    ),
    "O_OTHER": "grill|grillen|gassgrill|stangholdere|stangholder|hekkanker|hekkankeret|akteranker",
    "O_LOCKER": (
        "gasskasse|redningsflåte|hekkbenk|redningsflåten|gasskap|gasskapet|gasskuff|flåtefeste|gassbeholder|"
        "gasskassen|gassboks"
    ),
    "EMPTY": "tom båt|tom|ulastet|uten last",
    "LADEN": "lastet|fullastet|med last|nedlastet|dypere enn tegningen|under merkene|dypere enn på tegningen",
    "SINKS": "dypere|synker|lavere|dypere enn tegningen|under merkene|dypere enn på tegningen",
    "CAMBER": "krumning|pilhøyde|bue|buet|hvelving|krum",
    "DROP": (
        "høydeforskjell|høydeforskjellen|høyde mellom|høyden mellom|loddrett avstand|målt loddrett|loddrett målt|"
        "målt vertikalt|loddrett høyde|fra kant til kant|rett ned|vertikal avstand|fra over til underkant|"
        "mellom over og underkant|fra overkant til underkant|mellom overkant og underkant"
    ),
    "AXIS": "aksel|akslingen|akse|aksen|akselen|stamme|stammen|stokk|stokken",
    "FOLD": (
        "slås opp|nedfellbar|foldbar|felles opp|sammenleggbar|foldes opp|kan foldes|felles ned|kan felles|"
        "klappes opp|slås ned|sammenleggbart|kan vippes|oppfellbar|som felles|kan legges opp|vippes opp|vippbar|"
        "legges ned|nedfellbart|kan slås opp|klappbar|klappbare|klappbart|felle|felles|felles inn|felles bort|"
        "felles sammen|felles vekk|fellbar|fellbare|fellbart|oppfellbare|oppfellbart|nedfellbare|innfellbar|"
        "innfellbart|sammenfoldbar|sammenfellbar|hengslet|på hengsler|kan klappes|kan felles opp|kan felles ned|"
        "kan felles inn|kan felles bort|kan foldes opp|kan svinges opp|svinges opp|legges inn|kan legges inn|"
        "kan legges ned|slås inn|slå opp|slå ned|klappe opp|klappe ned|felle opp|felle ned|vippe opp|vippes|"
        "brettes opp|brettes|kan brettes|bretter|brettbar|sammenbrettbar|foldbart|foldbare|legge opp|oppklappbar|"
        "opptrekkbar"
    ),
    "FIXED": (
        "fast|fastmontert|sveiset|faste|fastboltet|boltet|fastskrudd|stiv|fastsveiset|ikke fellbar|skrudd|sveist|"
        "stive|ikke fellbart|ikke klappbar|kan ikke felles|kan ikke klappes|felles ikke|gjennomboltet|"
        "fastmonterte|påsveist|ubevegelig|sveisede|sveiste|fast montert|kan ikke slås opp|fastsatt|boltet fast|"
        "skrudd fast"
    ),
    "REMOVE": (
        "kan unnværes|kan settes et annet sted|går an å flytte|demonteres ved behov|tas av ved behov|"
        "blir demontert|demonterbar|kan tas av|kan fjernes|kan demonteres|kan flyttes|avtakbar|kan tas bort|"
        "kan skrus av|kan tas vekk|avtagbar|kan godt fjernes|kan tas ned|unnværlig|overflødig|trengs ikke|"
        "trenger vi ikke|trenger jeg ikke|til salgs|kan ryke|kan ofres|løs|løstagbar|avtakbart|avtakbare|"
        "demonterbart|demonterbare|flyttbar|flyttbart|kan forsvinne|forsvinner|skal bort|skal vekk|skal av|ryker|"
        "kan løftes av|hektes av|løftes av|kan vike|må vike|kan gå|valgfri|kan godt vike|kan ligge i kistebenken|"
        "kan legges i kistebenken|kan trekkes ut|kan være hjemme|kan stå hjemme|trenger ikke lenger|"
        "trenger vi ikke lenger"
    ),
    "KEEP": (
        "glade i|glad i|vil ikke være uten|vil vi ikke være uten|vil ikke miste|vil ikke bli kvitt|skal sitte på|"
        "må sitte på|fortsette å bruke|fortsatt bruke|fortsatt kunne bruke|vil vi ikke fjerne|"
        "vil jeg ikke fjerne|skal ikke fjernes|må vi beholde|beholde|må bli|må være der|må bli stående|"
        "skal være der|vil beholde|vil vi beholde|skal beholdes|må beholdes|må stå|kan ikke fjernes|"
        "kan ikke tas av|må bli værende|vil ha den|ønsker å beholde|skal bli|må bli sittende|kan ikke demonteres|"
        "skal bli værende|bli stående|blir værende|blir stående|blir sittende|forblir|uunnværlig|uunnværlige|"
        "ikke forhandlingsbar|hellig|brukes daglig|bevare|bevares|la stå|la den stå|la den sitte|la være|"
        "ikke røre|røres ikke|vil nødig|nødig av med|ikke kvitte|beholdes|beholder|beholder vi|må beholde|"
        "skal stå|må forbli|skal forbli|må stå der|skal være igjen|bli igjen|bli der|må få bli|ikke skilles|"
        "vil ikke skille oss|må få stå|må få sitte|må få være|den trenger vi|dem trenger vi|den trenger jeg|"
        "det trenger vi|den bruker vi|beholder jeg|den beholder"
    ),
    "PORT": (
        "babord|på babord|babord side|bb|venstre|babordsida|venstre side|om babord|til babord|på babord side|"
        "babord låring|babord akter|babordssiden|babord kvarter|på venstre side|til venstre|venstre hjørne|"
        "bb side|mot babord|på bb|ved babord|babordside|babords|babord halvdel|venstresiden|babordsiden"
    ),
    "STARBOARD": (
        "styrbord|på styrbord|styrbord side|sb|høyre|styrbordsida|høyre side|om styrbord|til styrbord|"
        "på styrbord side|styrbord låring|styrbord akter|styrbordssiden|styrbord kvarter|på høyre side|til høyre|"
        "høyre hjørne|sb side|mot styrbord|på sb|ved styrbord|styrbordside|styrbords|styrbord halvdel|høyresiden|"
        "styrbordsiden|stb"
    ),
    "CENTRE": (
        "midten|midt|senter|senterlinjen|midtskips|midtlinjen|fra midten|midt på|sentrum|senterlinje|fra senter|"
        "midtlinje|i midten|fra midtlinjen|sentralt|senterlinja|fra senterlinja|fra senterlinjen|fra midtlinja|"
        "midtlinja|fra midtskips|ut fra midten|ut fra senter|til side for midten|båtens midtlinje|sentrert|"
        "midtstilt|fra midten av|utenfor midten|utenfor senter|midtskipslinja|båtens senter|speilets midte|"
        "midt i|ved siden av midten|midt bak|fra midtlinje"
    ),
    "EACH_SIDE": (
        "på hver side|på begge sider|ett på hver side|en på hver side|begge sider|hver sin side|én på hver side|"
        "på hver sin side|babord og styrbord|styrbord og babord|på begge sidene|på hver av sidene|begge sidene|"
        "til hver side|til begge sider|ut til hver side"
    ),
    "PREFER": (
        "om mulig|hvis mulig|aller helst|helst|foretrekker|vil helst|ønsker|ønske|helst på|gjerne på|foretrekkes|"
        "foretrukket|heller|vil gjerne ha den|vil gjerne ha|foretrekker å|ser helst|helst ha|ville foretrekke|"
        "ville helst|skulle gjerne|vil ha den|gjerne ha|gjerne|vi vil|jeg vil|vi ønsker|aller helst på|"
        "passer oss best|passer meg best|ville passe best|ville passe oss best|hadde vært best|vil ha det|"
        "vil ha vindroret|vil gjerne ha det|passer best|best for oss|bedre for oss|om det går|om vi får velge"
    ),
    "SLIDE": (
        "teleskopisk|uttrekkbar|uttrekkbart|teleskop|skyves|teleskopstige|uttrekkbare|kan trekkes ut|trekkes ut|"
        "skyves inn|skyves ut|kan skyves|inntrekkbar|uttrekksstige|teleskopbar|skyvbar|teleskopiske|dras ut|"
        "som en skuff|teleskopstigen|teleskopleider"
    ),
    "SWING": (
        "svingbar|dreibar|svingbare|svingbart|dreibart|dreibare|kan svinges|svinges ut|svinges inn|svinges|"
        "kan dreies|vridbar|svinger ut|svingbar arm|sveiper|feier|svinger over|pendler"
    ),
    "AVOID": "unngå|helst ikke|absolutt ikke|slippe",
    "GONE": (
        "allerede borte|er borte|er allerede borte|allerede fjernet|allerede solgt|allerede demontert|"
        "allerede tatt av|finnes ikke lenger|er ikke der lenger|ikke lenger om bord|er solgt|har vi solgt|"
        "har jeg solgt|i kistebenken|i stuerommet|i stuverommet|stuet|stues|oppbevares|ligger i en|står hjemme|"
        "ligger hjemme|er fjernet|er tatt av|har vi tatt av|har vi fjernet|har jeg fjernet|tok vi av|"
        "er demontert|ikke lenger der|er der ikke|har vi ikke lenger|har jeg ikke lenger|forsvant|har forsvunnet|"
        "hjemme|i garasjen|i boden|på land|under dekk|i forpiggen|i kahytten|i cockpitbenken|ligger i|lagret|"
        "lagres|historie|et minne|gikk over bord|forrige eier tok|stuet bort|stuer vi|har ikke lenger|"
        "ikke lenger|gitt til|gitt videre|ikke montert ennå|bestilt|i bestilling|"
        "montert ned|tatt ned|plukket av|plukket bort|har vi tatt ned"
    ),
    "BESIDE": "ved siden av|nær|inntil|like ved|ved",
    "BEGIN": "begynner|starter|starter på|begynner på",
    "EXCEPT": "unntatt|bortsett fra|utenom|bare|kun",
    "OFF": (
        "demontere|demonterer|fjerne|fjerner|fjernes|selge|selger|selges|flytte|flytter|flyttes|unnvære|unnværes|"
        "ofre|skru løs|skrus løs|demonteres|avmontere|avmonteres|løsne|kvitte oss med|kvitte meg med|"
        "være foruten|klare oss uten|avstå|avmonterer|miste"
    ),
    "OFFED": (
        "demontert|demonterte|fjernet|fjerna|solgt|solgte|avmontert|avtatt|borttatt|tatt ned|tatt i land|"
        "gitt bort|kastet|kasta|skrotet|vraket|kappet|kappet av|kuttet av|råtnet|råtnet bort|rustet bort|"
        "satt i land|tatt på land|hivd|kassert|kasserte|ble solgt|sagd av|saget av|råtnet opp|gav bort|etterlatt"
    ),
    "V_TAKE": "ta|tar|tas|skru|skrur|skrus|monterer|montere|monteres|løfte|løftes|plukke|plukkes|kutte|kuttes",
    "V_TOOK": "tok|tatt|tatte|skrudde|skrudd|løftet|plukket|kuttet|ble tatt",
    "P_OFF": "bort|av|vekk|løs|ned|i land|unna",
    "MAY": (
        "kan|kunne|får|skal|skulle|vil|ville|må|tenker|tenkt|planlegger|kommer|lett|enkelt|bli|blir|mulig|går|"
        "villig|villige|gjerne|bør|greit"
    ),
    "EASILY": (
        "uten problem|uten problemer|uten videre|ikke noe problem|uten vanskeligheter|uten verktøy|"
        "ikke vanskelig|uten bryderi|ikke i veien"
    ),
    "SHIFTED": "flyttet|flytta",
    "STAY": "forbli|få stå|stå igjen|være igjen|være der|sitte der|stå der",
    "DOWNWARD": "nedover|lenger ned|lenger nede|under overkanten|ned fra overkanten|ned fra toppen",
    "EVEN": (
        "rett under|loddrett under|akkurat under|nøyaktig under|i flukt med|på linje med|i linje med|jevnt med|"
        "flukter med|i lodd med|eksakt under|presis under|direkte under"
    ),
    "TAKE_THIS": (
        "bruk det|bruk den|regn med det|gå ut fra det|den gjelder|bruk heller|stol på den|legg det til grunn"
    ),
    "LOATH": "nødig|ugjerne|motvillig|synd å|helst ikke|lei for å",
    "ZERO": "null",
}
