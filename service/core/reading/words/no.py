"""Norwegian."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary

VOCABULARY = Vocabulary(
    language="no",
    common="og er det en et på av for med vi jeg har som til fra at ikke den om kan hei vår deres hva hvor trenger også "
    "båten over under må hvilken altså lenger enn slags var vil skal kunne ble eller mot etter uten der noe mye "
    "får ligger dere",
    numbers=Numbers(
        ones="null en/ett/én to tre fire fem seks sju/syv åtte ni ti elleve tolv tretten fjorten femten seksten "
        "sytten atten nitten",
        tens="tjue tretti førti femti seksti sytti åtti nitti",
        joint="{ten}{one}|{one}og{ten}",
        hundred="hundre",
        half="halv/halve/halvt",
        and_="og",
        whole="halvannen=1.5 halvannet=1.5 {one}_og_en_halv=+0.5 trekvart=0.75",
    ),
    concepts={
        "M_TAPE": "målebånd|meterstokk|målebåndet|tommestokk|meterstokken|målband",
        "TRANSOM": "kanten av speilet|kanten av akterspeilet|speilkanten|"
        "akterspeil|speilet|speil|akterspeilet|hekken|speilets|akterspeil*|hekk|hekkens|bunnen av speilet|"
        "speilets helning|speilets bredde|negativt akterspeil|negativt speil|omvendt speil|negativ hekk",
        "POST": "stevnens topp|stevntoppen|"
        "akterstevn|akterstevnen|stevnen|akterstevn*|stevnens|toppen av stevnen|rorstevnen",
        "TOP": "stevnens topp|stevntoppen|"
        "kanten av speilet|kanten av akterspeilet|speilkanten|"
        "til dekk|opp til dekk|til dekket|"
        "går opp til|når opp til|"
        "overkant|overkanten|øverst|øvre kant|øvre kanten|oppe|overkanten av|toppen|øverste kant|topp|"
        "dekkskanten|overside|på toppen|toppen av stevnen|toppen av akterstevnen|bredde oppe",
        "BOTTOM": "går ned til|"
        "underkant|underkanten|nederkant|nedre kant|nedre kanten|nede|nederst|nederste kant|bunnen av speilet|"
        "underside|nederkanten|nedkant",
        "WATER": "vannlinja|vannlinjen|vannet|vann|vannflaten|vannoverflaten|vl|kvl|vannlinje|vannlinjens|vannstanden|"
        "vannspeilet|fribord|under vannet|under vannlinja|under vannlinjen|under vl|under vannflaten|under vann|"
        "i vannet|akkurat i vannlinjen|i vannlinjen|ved vannlinjen|like i vannlinja|i vannflaten|berører vannet|"
        "i vannlinja|akkurat ved vannflaten|på vannlinjen",
        "TOERAIL": "fotlist|fotlisten|skvettlist|rekkelist|esing|esingen|skandekk|fenderlist|tålist|fotrekke",
        "STEP": "badetrinn|trinn|badetrinnet|trinnet|innstøpt trinn|badetrapp",
        "HULL": "platen|bordganger|hudplank|plate|skrog|skroget|skrogets|laminat|hud",
        "BOAT": "båt|båten|seilbåt|seilbåten|yacht|slupp|ketsj|seilskute|båter|skuta|kutter|båtmodell",
        "HEIGHT": "høyde|høyden|høy|fribord|høydene|høyt|høyde over",
        "WIDTH": "bredde|bredden|bred|bredt|brede|i bredden|bredde oppe|speilbredde|speilets bredde",
        "THICK": "tykkelse|tykk|tykkelsen|tykt|godstykkelse|skrogtykkelse|laminattykkelse|platetykkelse|tykke",
        "LOA": "lengde|lengden|lengde over alt|loa|båtens lengde|lengde o a|l o a|total lengde|skroglengde",
        "LWL": "lvl|vannlinjelengde|lengde i vannlinjen|lwl|lengde vl",
        "BEAM": "største bredde|båtens bredde|bredde maks|maks bredde|største bredden",
        "DRAFT": "dypgående|dyptgående|dypgang|stikker dypt",
        "DISPLACEMENT": "deplasement|deplasementet|vekt|veier|vekten|vekta|deplaserer|vekt ca|båtens vekt|totalvekt|veid|"
        "lastet vekt|kran",
        "BALLAST": "ballast|kjøl|motor|jolle|kjølen|motoren|jolla|ballastvekt|anker|mannskap",
        "RAKE": "helning|vinkel|hellingen|helningsvinkel|vinkelen|speilets helning|skråning|hellning|hellingsvinkel",
        "LEAN": "heller|hellende|skråner|skrå|faller|hellet|lener|vinklet",
        "FORWARD": "forover|lenger framme|lenger fremme|foran|framover|lenger fram|lenger forut|lengre fram|lengre framme|"
        "forut|fremover|mot baugen|for speilet|foran speilet|lengre fremme|forenom",
        "AFT": "akterover|lenger akter|bakover|aktenfor|bak|lenger bak|lengre bak|akterut|mot hekken|lenger akterut|"
        "lengre akterut|aktenom|bakenfor|lengre akter|akter|ut bak|bak speilet|aktover",
        "PLUMB": "er rett|er loddrett|loddrett|vertikal|vertikalt|loddrette|rett opp og ned|vertikale|nesten loddrett",
        "REVERSE": "negativt akterspeil|negativt|negativt speil|negativ|negative|negativ helning|omvendt|omvendt speil|"
        "negativ hekk|invertert|innoverhellende",
        "COUNTER": "overheng|klassisk hekk|positiv|positivt|klassisk akterspeil|overhengende|positiv helning|"
        "klassisk overheng|positivt speil",
        "SCOOP": "badetrinn i hekken|innstøpt badetrinn|innstøpt badeplattform|integrert badeplattform|badetrapp i hekken|"
        "støpt badetrinn|innebygd badeplattform|badetrapp",
        "OPEN": "åpen hekk|åpent akterspeil|åpen akterende|åpent speil|nedfellbart akterspeil|nedfellbar hekk|"
        "hekken er åpen|uten akterspeil|åpen cockpit|åpent akter|speil som felles ned",
        "DOUBLE": "spissgatter|spissgattet|kanohekk|spissgatt|spissgatteren|kanustevn|spiss akter|dobbeltender|spiss hekk|"
        "colin archer|redningsskøyte|spissgattskrog",
        "RUDDER": "ror|roret|rorblad|spaderor|rorets|rorbladet|hovedror|dobbelt ror|to ror|hovedroret|rorets bakkant|"
        "bakkanten av roret|bakkant ror|bakkant av ror|roret bakkant|balansert spaderor|frittbærende spaderor|"
        "frittbærende ror|påhengt ror|utenbords ror|akterhengt ror|utvendig ror",
        "HUNG_OUT": "påhengt ror|påhengt|utenbords ror|akterhengt ror|akterhengt|henger på speilet|henger på akterspeilet|"
        "hengt på akterspeilet|hengt på speilet|utenpåhengt|utvendig ror|utvendig|påhengt på speilet|"
        "henger på akterstevnen|hengt på akterstevnen|utenbords|montert på speilet|henger utenpå|speilhengt|"
        "opphengt på speilet",
        "HUNG_IN": "spaderor*|balanseror*|skegror*|"
        "spaderor|balansert spaderor|balanseror|frittbærende spaderor|halvbalansert|skeghengt|bak kjølen|"
        "på skjegg|frittbærende ror|skjeggror|delvis balansert|på skeg",
        "UNDER": "på kjølen|"
        "frittbærende|skjegg|under båten|under skroget|skeg|under hekken|opphengt under|innenbords|skjegget|"
        "under akterenden",
        "TRAILING": "bakkant|bakkanten|akterkant|rorets bakkant|bakre kant|bakkanten av roret|bakkant ror|aktre kant|"
        "bakkant av ror|roret bakkant|akterkanten",
        "STOCK": "rorstamme|rorstammen|rorakse|roraksen|rorstammens|hjertestokk",
        "STICK_OUT": "stikker ut|stikker|rager ut|rager|stikker bakover|utstikk|går ut",
        "TURN": "til hver side|rorutslag|til hver sin side|hver vei|til begge sider|maks utslag|utslag|hver side|pr side",
        "GRP": "massiv glassfiber|glassfiber|polyester|plast|grp|glassfiberarmert|laminat",
        "SOLID": "massiv|massivt|massiv glassfiber|massivt laminat|massivlaminat|enkeltlaminat|solid|heltlaminat|"
        "uten kjerne|massiv plast|homogen",
        "CORED": "sandwich|balsa|sandwichkonstruksjon|balsakjerne|skum|divinycell|kjerne|skumkjerne",
        "WOOD": "tre|mahogni|trebåt|av tre|i tre|eik|furu|kravellbygd|klinkbygd|lerk|finer|kryssfiner",
        "ALU": "aluminium|alu|aluminiumsskrog|i aluminium",
        "STEEL": "stål|stålbåt|i stål|stålskrog|av stål",
        "O_LADDER": "badeleiter|hekkleider|"
        "badestige|stige|stigen|badeleider|leider|badestigen|stiger|badeleideren|teleskopstige|badetrapp stige",
        "O_PLATFORM": "badeplattform|plattform|plattformen|badeplattformen|plattformer|badebrygge|hekkplattform",
        "O_DAVITS": "daviter|davit|davitene|davitter|davit*|jolledaviter",
        "O_OUTBOARD": "påhengsmotor|påhengsmotorfeste|påhengsmotoren|påhenger|påhengeren|motorbrakett|utenbordsmotor|"
        "påhengsmotor på brakett|motorfeste|utenbordsmotoren",
        "O_EXHAUST": "eksos|eksosen|eksosrør|eksosutløp|eksosutslipp",
        "O_RAIL": "hekkestol|hekkestolen|hekkstol|hekkstolen|hekkgelender|"
        "hekkstøtte|hekkstøtten|hekkstøtter|"
        "akterpulpit|hekkpulpit|pushpit|akterpulpiten|rekkverk|hekkrekke|hekkpulpiten|akterrekke|rekkverket",
        "O_STAY": "hekkstag|akterstag|hekkstaget|akterstaget|delt hekkstag|doble hekkstag|hekkstagene|bakstag|"
        "delt akterstag",
        "O_BOOM": "mesanbom|mesanbommen|storbom|bommen|bomnokk|storbommen",
        "O_ARCH": "targabøyle|bøyle|targabøylen|targa|bøylen|hekkbøyle|radarbøyle|portal",
        "O_PANELS": "solcellepanel|solcellepaneler|solpanel|solceller|solpaneler|solcellepanelene|solcelle*|paneler",
        "O_MAST": "radarmast|vindgenerator|vindmølle|radarstolpe|antennemast|radarmasten|vindgeneratoren",
        "O_STAFF": "flaggstang|flaggstangen|flaggspill",
        "O_PASSERELLE": "landgang|landgangen|passerelle|gangvei",
        "FOLD": "slås opp|nedfellbar|foldbar|felles opp|sammenleggbar|foldes opp|kan foldes|felles ned|kan felles|"
        "klappes opp|slås ned|sammenleggbart|kan vippes|oppfellbar|som felles|kan legges opp|vippes opp|vippbar|"
        "legges ned|nedfellbart|kan slås opp",
        "FIXED": "fast|fastmontert|sveiset|faste|fastboltet|boltet|fastskrudd|stiv|fastsveiset|ikke fellbar|skrudd",
        "REMOVE": "klare oss uten|klarer oss uten|kan unnværes|"
        "kan settes et annet sted|går an å flytte|"
        "demonteres ved behov|tas av ved behov|blir demontert|"
        "demonterbar|kan tas av|kan fjernes|tas av|fjernes|kan demonteres|demonteres|kan flyttes|avtakbar|"
        "kan tas bort|kan skrus av|ta av|kan tas vekk|tas bort|fjerne|avtagbar|kan godt fjernes|kan tas ned",
        "KEEP": "skal sitte på|må sitte på|"
        "fortsette å bruke|fortsatt bruke|fortsatt kunne bruke|"
        "vil vi ikke fjerne|vil jeg ikke fjerne|skal ikke fjernes|"
        "må vi beholde|beholde|må bli|må være der|må bli stående|skal være der|vil beholde|vil vi beholde|"
        "skal beholdes|må beholdes|må stå|kan ikke fjernes|kan ikke tas av|må bli værende|vil ha den|"
        "ønsker å beholde|skal bli|må bli sittende|kan ikke demonteres|skal bli værende|bli stående",
        "YES": "ja",
        "NOT": "ingen|ikke|uten|intet|nei|ingenting|verken|mangler|finnes ikke|aldri|ingen av|hverken|har ikke",
        "PORT": "babord|på babord|babord side|bb|venstre|babordsida|venstre side|om babord",
        "STARBOARD": "styrbord|på styrbord|styrbord side|sb|høyre|styrbordsida|høyre side|om styrbord",
        "CENTRE": "midten|midt|senter|senterlinjen|midtskips|midtlinjen|fra midten|midt på|sentrum|senterlinje|fra senter|"
        "midtlinje|i midten|fra midtlinjen|sentralt",
        "EACH_SIDE": "på hver side|på begge sider|ett på hver side|en på hver side|begge sider|hver sin side",
        "PREFER": "om mulig|hvis mulig|aller helst|"
        "helst|foretrekker|vil helst|ønsker|ønske|helst på|gjerne på|foretrekkes|foretrukket|heller|"
        "vil gjerne ha den",
        "OTHER_BOAT": "hans er|hennes er|hans båt|hennes båt|"
        "nabo*|båtnabo*|"
        "nabo|naboen|venn|forrige båt|naboens|nabobåten|naboens båt|en venn|venns|kompis|kamerat|bekjent|"
        "gamle båt|gammel båt|annen båt|tidligere båt|bror|svoger|kollega|vennen min|bryggenabo|bryggenaboen|"
        "søskenbarn",
        "BELOW": "under vannet|under vannlinja|under vannlinjen|under vl|nedsenket|under vannflaten|under vann|i vannet|"
        "neddykket|derunder|under den",
        "OURS": "bror og jeg|venn og jeg|kamerat og jeg|"
        "vår|vi har|vårt|min|hos oss|min båt|vår båt|vi har en|jeg har en|på vår|på min",
        "YEAR": "fra|bygd|bygget|årsmodell|byggeår|bygd i|bygget i|bygg|sjøsatt|fra år|produsert|årgang|sjøsatt i|"
        "modellår|byggår",
        "HULL_NUMBER": "skrognummer|byggenummer|skrog nr|byggenr|skrognr|bygge nr|båtnummer",
        "BUILDER": "verft|byggeri|produsent|verftet|båtbygger|bygger|bygget av|bygd av",
        "MODEL": "modell|båt|type|båttype|båtmodell|båtmerke|merke og modell|type båt|båt type",
        "ASK": "hva slags feste|trenger jeg|pris|tilbud|passer|hvilken|interessert|lurer på|hva koster|koster|anbefaler|"
        "anbefale|hva anbefaler|passe|egner|kan dere|spørsmål|lurer|vil vite|pristilbud|ønsker tilbud|trenger|"
        "forslag|hva trenger|prisen|hvilket|hvor mye|ser etter|leter etter|vil gjerne vite|interesserte|"
        "bestille sammen|levere",
        "GEAR": "vindror|vindroret|selvstyring|selvstyringen|vindrorene|vindfløy|vindfløyen|selvstyrer|vindstyring|"
        "hjelperor|vindpilot|vindselvstyring|vindstyresystem",
        "ORDER": "reservedel|reservedeler|bestille|bestilling|serienummer|bøssinger|foringer|ny vindfløy|nytt blad|"
        "serienr|ødelagt|slitt|frakt|knekt|nytt rorblad|deler til",
        "THANKS": "tusen takk|mange takk|takker|fornøyd|fornøyde|kommet fram|hjertelig takk|takk for",
        "SIGN_OFF": "hilsen|vennlig hilsen|med vennlig hilsen|mvh|hilsener|på forhånd takk|beste hilsen|hilsen fra|vennligst|"
        "mange hilsener|ha det bra|takk på forhånd|beste hilsener|vennlige hilsener|med hilsen|hjertelig hilsen|"
        "hils|med seilerhilsen|takk|m v h|alt godt",
        "CUSTOMER": "kunde|en kunde|kunden|kunder|eier|eieren|for en kunde|vår kunde",
        "COMPANY": "marin|båtbyggeri|båtservice|seilmaker|seilmakeri|verft|marineservice|båtutstyr|rigg|yachts|slipp|"
        "båtsenter|maritim|båtmegler",
        "PHONE": "tlf|mob|mobil|telefon|mobilnr|tel|telefonnr|t",
        "FAX": "fax|org",
        "M_PHONE": "vater app|vaterapp|mobilen|telefonen|vater på mobilen|mobilvater|mobil app|app",
        "M_INCL": "vinkelmåler|helningsmåler|inklinometer|gradskive|vater|digitalt vater|vaterpass",
        "M_LASER": "laser|lasermåler|avstandsmåler",
        "M_DRAWING": "tegning|tegningen|tegninger|tegningene|linjetegning|fra tegningen",
        "M_BROCHURE": "brosjyre|brosjyren|datablad|ifølge verftet|ifølge produsenten|katalog|spesifikasjon|målebrev|"
        "iflg verftet|manualen",
        "M_GUESS": "på øyemål|øyemål|anslått|anslag|anslagsvis|gjetter|gjetning|tipper|skjønn|på slump|sånn på øyemål|anslår",
        "M_PHOTO": "foto|bilde|bildet|fra foto",
        "GIVE_TAKE": "pluss minus|pluss eller minus|feilmargin",
        "WITHIN": "nøyaktig",
        "BOOTSTRIPE": "vannlinjestripe|vannlinjestripen|vaterlinjestripe|boot top|vannlinjestripa",
        "COCKPIT": "cockpitdørk|cockpitdørken|cockpit|cockpitgulv|dørken|cockpitbunnen",
        "DEPTH": "dybde|dypt",
        "LENGTH": "lang over alt|lang",
        "O_BOOMKIN": "klyverbom akter|papegøyestokk|driverbom",
        "O_LOCKER": "gasskasse|redningsflåte|hekkbenk",
        "SLIDE": "teleskopisk|uttrekkbar|uttrekkbart|teleskop|skyves",
        "SWING": "svingbar|dreibar",
        "AVOID": "unngå|helst ikke|absolutt ikke|slippe",
        "WITHDRAW": "glem|se bort fra|feil|stemmer ikke|gjelder ikke|var feil|galt",
        "MEANT": "mente|jeg mente|skal være|rettelse|i stedet for|istedenfor|korrigering|riktig er|egentlig|skrivefeil|"
        "korreksjon|det skal stå|riktig verdi|korrekt er",
        "JUST_TOUCH": "tangerer|flukter|når akkurat|i flukt med",
        "OWNED": "vindroret vårt|vindroret mitt|kjøpt av dere|kjøpte|levert av dere",
        "SELL": "nyhetsbrev|avmelde|rabatt|messe|utstillere|klikk|spesialtilbud|søkemotor|kampanje|konkurranse|salg",
        "INSTEAD": "i stedet for|istedenfor",
        "PLUMB_LINE": "loddsnor|loddsnoren|lodd snor|loddline|med lodd|lodd",
        "MEASURED": "målt|mål|målene|måling|målte|oppmålt",
        "AT_WATER": "akkurat i vannlinjen|i vannlinjen|ved vannlinjen|like i vannlinja|i vannflaten|berører vannet|"
        "i vannlinja|akkurat ved vannflaten|på vannlinjen",
        "OOPS": "nei|feil|unnskyld|beklager|jeg mener|eller rettere|rettelse|sorry|vent|rettere sagt|feil av meg",
        "GONE": "solgt|har vi solgt|har jeg solgt|"
        "allerede fjernet|"
        "i kistebenken|i stuerommet|i stuverommet|stuet|stues|oppbevares|ligger i en|står hjemme|"
        "ligger hjemme|"
        "er fjernet|er borte|er tatt av|har vi tatt av|har vi fjernet|har jeg fjernet|tok vi av|"
        "er demontert|er ikke der lenger",
        "ENDS": "slutter|ender",
        "BESIDE": "ved siden av|nær|inntil|like ved|ved",
        "BEGIN": "begynner|starter",
        "EXCEPT": "unntatt|bortsett fra|utenom|bare|kun",
    },
)
