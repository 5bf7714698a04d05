"""German."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary

VOCABULARY = Vocabulary(
    language="de",
    common="der die das und ist wir ich sie eine ein mit für von zu nicht auf dem den im an haben wie auch bei oder "
    "mein unser ihre was welche guten tag können möchten bitte liegt über einen einem einer sich als noch nur "
    "unter sind hat habe wird kann des vom zum zur aus nach uns ihnen eure",
    numbers=Numbers(
        ones="null ein/eine/einen/einem/einer/eins zwei/zwo drei vier fünf sechs sieben acht neun zehn elf zwölf "
        "dreizehn vierzehn fünfzehn sechzehn siebzehn achtzehn neunzehn",
        tens="zwanzig dreißig vierzig fünfzig sechzig siebzig achtzig neunzig",
        joint="{one}und{ten}",
        hundred="hundert",
        half="halb/halbe/halber/halben/halbes",
        and_="und",
        whole="anderthalb=1.5 anderthalbe=1.5 eineinhalb=1.5 {one}einhalb=+0.5 eine_dreiviertel=0.75 dreiviertel=0.75",
    ),
    concepts={
        "M_INCL": "neigungsmesser|inklinometer|winkelmesser|wasserwaage|digitale wasserwaage|gradmesser",
        "LENGTH": "lang",
        "DEPTH": "tiefe|tief",
        "TRANSOM": "kante des spiegels|rand des spiegels|"
        "spiegeloberkante|spiegelunterkante|spiegelneigung|spiegelwinkel|spiegelbreite|spiegeldicke|"
        "spiegelstärke|spiegel|spiegels|heckspiegel|heck|heckspiegels|heckplatte|spiegelheck|spiegel des bootes|"
        "spiegelplatte|hecks|spiegelkante|am heck|spiegelhöhe|oberkante spiegel|oberkante des spiegels|"
        "oberkante vom spiegel|spiegel oben|unterkante des spiegels|unterkante vom spiegel|spiegel unten|"
        "fuß des spiegels|neigung des spiegels|spiegel neigung|spiegelbreite oben|negativer spiegel|"
        "negatives heck|negativem spiegel|negativen spiegel|nach vorn gekipptes heck",
        "POST": "kopf des stevens|kopf des achterstevens|"
        "stevenoberkante|achtersteven|steven|achterstevens|stevens|stevenkopf|achterstevenkopf",
        "TOP": "kopf des stevens|stevenkopf|kopf des achterstevens|"
        "spiegelkante|kante des spiegels|rand des spiegels|"
        "bis zum deck|bis deck|bis an deck|"
        "reicht bis|geht bis|geht hoch bis|stevenoberkante|"
        "spiegeloberkante|oberkante|oben|obere kante|oberkante spiegel|oberer rand|oberen rand|oberkanten|"
        "obere ende|oberen kante|oberste kante|oberen ende|oberkante des spiegels|oberkante vom spiegel|"
        "deckskante|am kopf|oberrand|spiegel oben|obersten|breite oben|spiegelbreite oben|breit oben",
        "BOTTOM": "reicht hinunter bis|reicht herunter bis|geht hinunter bis|"
        "spiegelunterkante|unterkante|unten|untere kante|unterer rand|unteren rand|untere ende|unteren kante|"
        "unterste kante|unterkante des spiegels|unterkante vom spiegel|unterrand|spiegel unten|fuß des spiegels|"
        "unteren ende",
        "WATER": "wasserlinie|wasser|wasserspiegel|cwl|kwl|konstruktionswasserlinie|schwimmwasserlinie|wassers|"
        "wasseroberfläche|dem wasser|des wassers|wl|wasserlinie aus|freibord|freibordhöhe|unter wasser|"
        "unter der wasserlinie|unterhalb der wasserlinie|im wasser|unter cwl|unterm wasser|"
        "auf höhe der wasserlinie|genau auf der wasserlinie|in der wasserlinie|auf der wasserlinie|"
        "an der wasserlinie|berührt das wasser|in höhe der wasserlinie",
        "TOERAIL": "fußreling|fussreling|schanzkleid|fußleiste|lochreling|süll|scheuerleiste|schandeck|relingleiste|"
        "lochschiene|lochfußreling",
        "STEP": "badestufe|stufe|heckstufe|trittstufe|badestufen|eingeformte stufe|angeformte stufe",
        "HULL": "blech|planken|beplankung|plankenstärke|"
        "rumpf|laminat|rumpfdicke|rumpfes|außenhaut|rumpfstärke|schale|rumpfmaterial|bordwand|haut",
        "BOAT": "boot|yacht|schiff|bootstyp|segelyacht|segelboot|kutter|ketsch|slup|bootes|schiffes|kielboot|segelschiff|"
        "schiffstyp|yachttyp",
        "HEIGHT": "höhe|hoch|freibord|hohen|freibordhöhe",
        "WIDTH": "spiegelbreite|breite|breit|breiter|breite oben|spiegelbreite oben|breit oben",
        "THICK": "spiegeldicke|spiegelstärke|dick|dicke|stärke|materialstärke|wandstärke|wanddicke|laminatstärke|"
        "laminatdicke|plattendicke|plattenstärke|blechstärke|starkes|stark|dickes|dicken|dicker",
        "LOA": "lüa|länge über alles|rumpflänge|bootslänge|gesamtlänge|l ü a|länge ü a|länge",
        "LWL": "lwl|länge wasserlinie|wasserlinienlänge|l wl|länge in der wasserlinie|lwl länge",
        "BEAM": "größte breite|bootsbreite|büa|breite über alles|b ü a|max breite|maximale breite|breite ü a|bmax",
        "DRAFT": "tg|tiefg|tiefgang|tiefgang von|tiefgangs|geht",
        "DISPLACEMENT": "verdrängung|gewicht|wiegt|deplacement|verdrängt|wiegen|schwer|schweres|segelfertig|gesamtgewicht|"
        "bootsgewicht|eigengewicht|verdraengung|wasserverdrängung|kran|gewogen",
        "BALLAST": "ballast|motor|beiboot|kiel|ballastanteil|bleikiel|dingi|dinghy|maschine|beiboots|tanks|anker|crew",
        "RAKE": "spiegelneigung|spiegelwinkel|neigung|winkel|geneigt|neigungswinkel|neigung des spiegels|spiegel neigung|"
        "schräge|schräg|rake",
        "LEAN": "geneigt|neigt|neigt sich|fällt|neigen|lehnt|kippt|gekippt|schräg|schräge|hängt über|fallend|fällt nach|"
        "überhängt|geneigter|geneigten",
        "FORWARD": "nach vorn|nach vorne|vor der|vor dem|weiter vorn|weiter vorne|vorlich|nach vorn geneigt|vorne|vorn|"
        "weiter nach vorn|weiter nach vorne|bugwärts|richtung bug|vorderhalb|vor dem heck",
        "AFT": "nach achtern|nach hinten|achtern|weiter achtern|weiter hinten|hinter dem|hinter der|heckwärts|"
        "nach hinten geneigt|hinten|richtung heck|weiter nach hinten|weiter nach achtern|hinter|achterlich|"
        "achteraus|achterlicher|achterlicher als|weiter hinten als",
        "PLUMB": "ist gerade|"
        "senkrecht|lotrecht|senkrechter|senkrechtes|senkrechten|senkrechte|lotrechter|kerzengerade|vertikal|"
        "im lot",
        "REVERSE": "negativer spiegel|negativ|negatives heck|negativem spiegel|negativen spiegel|negativer|negativen|"
        "negatives|negativem|negative neigung|negativ geneigt|nach vorn gekipptes heck|retrousse|"
        "yachtheck negativ|invertiert",
        "COUNTER": "positives heck|überhängendes heck|yachtheck|positiv|positiver|positiven|positiver spiegel|überhang|"
        "positive neigung|klassischer überhang|überhängender",
        "SCOOP": "eingeformte* badeplattform|integrierte* badeplattform|angeformte* badeplattform|"
        "eingeformte* badestufe|integrierte* badestufe|eingelassene* badeplattform|"
        "badestufe im heck|heckstufe|badestufe|heckbadestufe|integrierte badestufe|eingeformte badestufe|"
        "angeformte badestufe|integrierter badeplattform|badetreppe",
        "OPEN": "offenes heck|offenem heck|offener spiegel|heck ist offen|offene heck|offenes cockpit|hinten offen|"
        "heckklappe|klappheck|offenen heck|abklappbarer spiegel|klappbarer spiegel|klappspiegel|spiegel offen|"
        "offene plicht",
        "DOUBLE": "spitzgatter|kanuheck|spitzgat|spitzgatt|spitzgattheck|spitzgattkutter|doppelender|doppelenders|"
        "rundgatter|spitzgatters|spitzgattrumpf",
        "RUDDER": "ruder|ruderblatt|hauptruder|angehängtes ruder|ruderblatts|ruderblattes|hauptruders|ruderanlage|"
        "doppelruder|ruders|beide ruder|zwei ruder|hinterkante ruder|hinterkante des ruders|"
        "hinterkante vom ruder|freistehendes ruder|ruder am spiegel|ruder am heck",
        "HUNG_OUT": "angehängtes ruder|am spiegel angehängt|ruder am spiegel|ruder am heck|hängt am spiegel|"
        "am heck angehängt|heckruder|angehängt|angehängtem|angehängten|hängt am heck|hängt am steven|"
        "am achtersteven angehängt|am heck aufgehängt|am spiegel aufgehängt|am spiegel befestigt|"
        "außen am spiegel|spiegelruder|am steven|außenliegend|am spiegel hängend|hängt hinten am spiegel|"
        "sitzt am spiegel",
        "HUNG_IN": "halbskeg*|skegruder*|spatenruder*|kielruder*|vollskeg*|"
        "spatenruder|freistehendes ruder|balanceruder|spatenruders|skegruder|halbskeg|teilbalanciert|"
        "skeg geführt|kielruder|untergebaut|freistehend|vorgebalanciert|am skeg|hinter dem kiel",
        "UNDER": "am kiel|am langkiel|"
        "hängt unter dem rumpf|skeg|unter dem rumpf|unter dem boot|am skeg|hinter skeg|unter dem heck|"
        "unterm rumpf|unterm schiff|unter der yacht|unterm boot|unter dem schiff",
        "TRAILING": "hinterkante|achterkante|abströmkante|hintere kante|hinterer rand|ruderhinterkante|hinterkante ruder|"
        "hinterkante des ruders|hinterkante vom ruder|ruderblatthinterkante|austrittskante|achtere kante|"
        "endkante|ablaufkante",
        "STOCK": "ruderschaft|ruderachse|ruderkoker|schaft|ruderschafts|schaftachse|ruderwelle|pinne achse|drehachse",
        "STICK_OUT": "ragt|steht über|ragt hinaus|steht|steht heraus|ragt heraus|steht hervor|überstand|übersteht|hinausragt|"
        "herausragt|heraussteht|reicht|hinaus|steht vor|absteht|steht ab|ragt nach",
        "TURN": "nach jeder seite|je seite|ruderausschlag|ausschlag|nach beiden seiten|zu jeder seite|pro seite|"
        "auf jede seite|ruderlage|maximaler ausschlag|anschlag|nach beiden",
        "GRP": "massives gfk|massiv gfk|massivem gfk|"
        "gfk|laminat|volllaminat|polyester|kunststoff|glasfaser|gfk rumpf|epoxy|handauflage",
        "SOLID": "kein sandwich|ohne sandwich|"
        "volllaminat|massiv|massives|voll laminat|vollgfk|massivlaminat|volllaminiert|massiver|ohne kern|"
        "vollaminat|einschalig|massive|massivem",
        "CORED": "sandwich|balsa|schaumkern|sandwichbauweise|sandwichlaminat|balsakern|balsasandwich|schaumsandwich|"
        "mit kern|schaum|sandwichkern",
        "WOOD": "holz epoxid|sperrholz epoxid|"
        "holz|holzboot|mahagoni|mahagonirumpf|holzrumpf|aus holz|eiche|lärche|karweel|sperrholz|formverleimt|"
        "leistenbau|lärche auf eiche|hölzern|holzyacht|klinker|teakholz",
        "ALU": "aluminium|alu|aluminiumrumpf|alurumpf|aus aluminium|aluminiumyacht|aluyacht|alubau",
        "STEEL": "stahl|stahlrumpf|stahlboot|stahlbau|stahlyacht|aus stahl|stahlkutter|stahlketsch|stahlschiff|"
        "schiffbaustahl",
        "O_LADDER": "badeleiter|leiter|heckleiter|leitern|badeleitern|klappleiter|steigleiter|einstiegsleiter|schwimmleiter",
        "O_PLATFORM": "badeplattform|plattform|badeplattformen|plattformen|heckplattform|teakplattform|badesteg",
        "O_DAVITS": "davits|davit|heckdavits|dingidavits|davitanlage|beibootdavits",
        "O_OUTBOARD": "außenborder|außenbordmotor|außenborderhalterung|außenborderhalter|motorhalterung|außenborders|"
        "ab halterung|flautenschieber|außenbord motor",
        "O_EXHAUST": "auspuff|abgasauslass|auspuffauslass|abgasaustritt|auspuffs|auspuffaustritt",
        "O_RAIL": "heckkorb|heckreling|heckkorbs|heckkörbe|relingkorb|geteilter heckkorb|pushpit",
        "O_STAY": "achterstag|achterstage|achterstagen|achterstags|hahnepot|doppeltes achterstag|geteiltes achterstag|"
        "backstagen|achterstagspanner",
        "O_BOOM": "besanbaum|großbaum|baumnock|besanbaums|baum",
        "O_ARCH": "geräteträger|heckbügel|targabügel|geräteträgers|targa|heckbogen|bügel|radarbügel|edelstahlbügel|"
        "geräteträger am heck|gerätebügel|heckträger",
        "O_PANELS": "solarpanel|solarpanele|solarpaneele|solarmodule|solarzellen|solar|solarpaneel|solarmodul|solaranlage|"
        "photovoltaik|pv module",
        "O_MAST": "radarmast|windgenerator|windrad|windgeneratormast|radarträger|antennenmast|gerätemast|windgenerators",
        "O_STAFF": "flaggenstock|flaggenmast|flaggstock",
        "O_PASSERELLE": "gangway|passerelle|gangways|laufplanke|stelling",
        "FOLD": "zum klappen|zum hochklappen|zum wegklappen|zum umklappen|zum einklappen|klappen wir|"
        "geklappt wird|wegklappbare|"
        "klappbar|klappbare|klappbaren|klappt|hochklappbar|abklappbar|klappbarer|klappbares|klappleiter|"
        "hochgeklappt|hochklappbare|wegklappbar|umklappbar|einklappbar|lässt sich klappen|lässt sich hochklappen|"
        "wird hochgeklappt|kann hochgeklappt werden|abklappbare|faltbar",
        "FIXED": "fest|feste|fest montiert|verschraubt|angeschweißt|geschweißt|festen|fester|festes|starr|starre|"
        "fest verschraubt|fest angebaut|angebolzt|nicht klappbar|fest eingebaut|festmontiert|verschweißt",
        "REMOVE": "darauf verzichten|kann ich verzichten|können wir verzichten|könnten wir verzichten|"
        "kann woanders hin|kann versetzt werden|kann verlegt werden|lässt sich versetzen|kann umziehen|"
        "lässt sich verlegen|"
        "wird demontiert|werden demontiert|wird abgebaut|werden abgebaut|bauen wir ab|baue ich ab|"
        "notfalls auch weg|könnte weg|abnehmbar|kann weg|demontierbar|entfernt werden|abgebaut werden|abbauen|"
        "abbaubar|abnehmen|kann ab|kann entfernt werden|könnte entfernt werden|könnte ab|kann abgenommen werden|"
        "lässt sich abnehmen|lässt sich entfernen|abschraubbar|kann demontiert werden|entfallen|kann entfallen|"
        "würde ich abbauen|kann weggenommen werden|dürfte weg|darf weg|könnte abgebaut werden|darf ab|können weg|"
        "können ab|können abgebaut werden|weg kann|ab kann|weg könnte|wegfallen kann|abgenommen werden kann|"
        "abgebaut werden kann|entfernt werden kann|demontiert werden kann",
        "KEEP": "soll dort bleiben|muss dort bleiben|dranbleiben|"
        "weiter benutzen|weiterhin benutzen|weiter nutzen|weiterhin nutzen|weiter benutzbar|"
        "weiter nutzbar|benutzbar bleiben|nutzbar bleiben|"
        "nicht abbauen|nicht entfernen|nicht hergeben|"
        "bleiben soll|bleiben muss|soll dranbleiben|muss bleiben|soll bleiben|bleibt|behalten|muss dranbleiben|"
        "müssen bleiben|bleiben müssen|sollen bleiben|muss erhalten bleiben|nicht demontierbar|kann nicht weg|"
        "darf nicht weg|wollen wir behalten|möchten wir behalten|möchte ich behalten|will ich behalten|"
        "unbedingt bleiben|bleibt dran|muss also bleiben|soll erhalten bleiben|nicht abnehmbar|"
        "lässt sich nicht entfernen|unverzichtbar",
        "YES": "ja",
        "NOT": "kein|keine|keinen|nicht|ohne|keiner|keines|weder|nein|nichts|nie|entfällt|fehlt|nicht vorhanden|"
        "keinerlei|gibt es nicht|haben wir nicht",
        "PORT": "backbord|backbords|an backbord|backbordseite|bb|links|linke seite|backbordseits|an bb|backbordhälfte",
        "STARBOARD": "steuerbord|steuerbords|an steuerbord|steuerbordseite|stb|rechts|rechte seite|steuerbordseits|an stb|"
        "steuerbordhälfte",
        "CENTRE": "mitte|mittig|mittschiffs|der mitte|mittellinie|mittschiffslinie|von der mitte|in der mitte|zentral|"
        "mittigen|schiffsmitte|mittlings|mittelachse",
        "EACH_SIDE": "beidseitig|je seite|auf beiden seiten|an beiden seiten|zu beiden seiten|beiderseits|je eine an",
        "PREFER": "idealerweise|wenn möglich|falls möglich|"
        "bevorzugen|am liebsten|lieber|wünschen wir uns|bevorzugt|lieber wäre|wunsch|wünschen|vorzugsweise|"
        "lieber hätten|hätten gern|hätte gern|am besten|möglichst|gerne an|gern an",
        "OTHER_BOAT": "seiner ist|seiner hat|seine ist|seine hat|seins ist|seins hat|ihrer ist|ihrer hat|"
        "nachbar*|stegnachbar*|"
        "nachbar|nachbars|freund|stegnachbar|voriges boot|früheres boot|freundes|bekannter|bekannten|kollege|"
        "stegnachbars|nachbarn|nachbarboot|vorgänger|altes boot|alten boot|voriges schiff|nachbarlieger|kumpel|"
        "vereinskamerad|bruder|bruders|schwager|freundin|liegeplatznachbar|anderes boot|vorbesitzer",
        "BELOW": "drunter|tiefer|"
        "unter wasser|unter der wasserlinie|unterhalb|unterhalb der wasserlinie|im wasser|unter cwl|"
        "unterm wasser|getaucht|taucht|darunter",
        "OURS": "bruder und ich|freund und ich|freundin und ich|schwager und ich|schwester und ich|"
        "unser|unsere|unseres|wir haben|meine|mein|bei uns|unserer|unserem|mein boot|unser boot|bei mir",
        "YEAR": "bjh|baujhr|"
        "baujahr|bj|gebaut|aus|von|baujahr von|gebaut in|vom baujahr|erbaut|erstwasserung|vom stapel|jahrgang|"
        "stapellauf|im jahr",
        "HULL_NUMBER": "kasko nr|kasko nummer|kaskonummer|"
        "baunummer|rumpfnummer|bau nr|bau nummer|baunr|rumpf nr|schiffsnummer|rumpfnr",
        "BUILDER": "werft|hersteller|erbauer|bootsbauer|gebaut von|bauwerft",
        "MODEL": "typ|modell|boot|bootstyp|yacht|bootsmodell|yachttyp|vom typ|schiffstyp|bootsmarke|schiff",
        "M_TAPE": "bandmaß|maßband|zollstock|meterstab|gliedermaßstab|rollmaß|metermaß|maßstab|messband",
        "M_PHONE": "handy|smartphone|handy app|wasserwaagen app|wasserwaage im handy|mit dem handy|smartphone app|telefon|"
        "handywasserwaage|app",
        "ASK": "anfrage|passt das|passt|welche halterung|welches|angebot|was kostet|benötigen|brauchen|empfehlen|"
        "möchten|interesse|welches modell|welche anlage|welche größe|was würden sie|was würdet ihr|suchen|suche|"
        "interessieren|kosten|preis|preise|anbieten|anzubieten|frage|fragen|wissen|passen|passende|empfehlt|"
        "raten|kaufen|bestellen möchte|brauche|benötige|gibt es|kommt in frage|bitte um|erbitten|geeignet|"
        "was brauche|angebots",
        "GEAR": "windsteueranlage|windsteuerung|windfahnensteuerung|windfahne|selbststeueranlage|"
        "windselbststeuerung|windsteuerungsanlage|windsteueranlagen|selbststeuerung|windruder|hilfsruder|"
        "selbststeuer|windfahnenruder|windselbststeueranlage|windfahnensteuer",
        "ORDER": "ersatzteil|ersatzteile|bestellung|bestellen|seriennummer|ersatzblatt|neue buchsen|buchsen|lagerbuchsen|"
        "bolzen bestellen|nachbestellen|defekt|gebrochen|verschlissen|liefern|ersatz|neues ruderblatt|"
        "neue windfahne|verschleißteile|versand",
        "THANKS": "vielen dank|danke|herzlichen dank|besten dank|danke schön|dankeschön|angekommen|zufrieden|begeistert|"
        "bedanken",
        "SIGN_OFF": "lieben gruß|herzlich|gruss|viele gruesse|ahoi und|mit sportlichem gruß|"
        "mit freundlichen grüßen|mit freundlichem gruß|freundliche grüße|viele grüße|grüße|gruß|mfg|"
        "herzliche grüße|mit besten grüßen|beste grüße|schöne grüße|danke|mit freundlichen|liebe grüße|lg|vg|"
        "es grüßt|hochachtungsvoll|freundlichst|mit besten|handbreit|mit seglergruß|mit herzlichen grüßen|"
        "mit seglerischen grüßen|danke im voraus|besten gruß|schönen gruß|servus|vielen dank im voraus",
        "CUSTOMER": "kunde|kunden|kundin|unser kunde|eigner|kundschaft|für unseren kunden|auftrag|im auftrag|einen kunden|"
        "eines kunden",
        "COMPANY": "yachtkontor|bootskontor|bootsladen|yachtagentur|marina|bootsausrüstung|yachtausstatter|"
        "yachtausrüstung|segelmacherei|marineservice|gmbh|yachtservice|bootswerft|yachten|bootsbau|wassersport|"
        "yachthandel|bootshandel|yachtzentrum|bootsservice|yachtausrüster|schiffsausrüster|schiffsausrüstung|ohg|"
        "e k|yachtwerft|bootsbaumeister|segelservice|rigg|takelage|yachttechnik|bootstechnik|yachting",
        "PHONE": "tel|telefon|mobil|handy|telefonnummer|mobiltelefon|tel nr|mobilnummer|fon|telefonisch|t",
        "FAX": "fax|hrb|ust",
        "M_LASER": "laser|lasermessgerät|entfernungsmesser",
        "M_DRAWING": "zeichnung|zeichnungen|linienriss|werftplan|bauplan|baupläne|riss|werftzeichnung|plänen|werftplänen",
        "M_BROCHURE": "prospekt|datenblatt|laut werft|werftangabe|herstellerangabe|laut hersteller|katalog|handbuch|"
        "werftangaben|bootsbrief|messbrief",
        "M_GUESS": "geschätzt|geschätzte|geschätzten|schätzungsweise|schätze|nach augenmaß|augenmaß|über den daumen|gepeilt|"
        "grob geschätzt|schätzung",
        "M_PHOTO": "foto|fotos|vom foto|aus dem foto|bild",
        "GIVE_TAKE": "plus minus|plus oder minus|toleranz|ungenauigkeit|mit einer unsicherheit von|genauigkeit",
        "WITHIN": "genau",
        "BOOTSTRIPE": "wasserpass|wasserpasses|wasserpassstreifen|zierstreifen",
        "COCKPIT": "cockpitboden|plicht|plichtboden|cockpitbodens|kante des cockpitbodens",
        "O_BOOMKIN": "heckausleger|bugspriet achtern|papageienstock|ausleger",
        "O_LOCKER": "gaskasten|heckbackskiste|rettungsinsel",
        "SWING": "schwingt|schwingen|schwenkbarer|schwenkbar|schwenkt|schwenkbare",
        "SLIDE": "ausziehbar|ausziehbare|einschiebbar|teleskopierbar|teleskopleiter|teleskop",
        "AVOID": "vermeiden|keinesfalls|auf keinen fall|ungern|nur nicht|bitte nicht|auf gar keinen fall",
        "WITHDRAW": "vergessen sie|vergesst|streichen|ungültig|falsch war|stimmt nicht|war falsch|waren falsch|"
        "gilt nicht mehr|ignorieren",
        "MEANT": "gemeint|meinte|richtig ist|korrektur|berichtigung|statt|muss heißen|zahlendreher|korrekt ist|"
        "sollte heißen|stattdessen|korrigiere|tippfehler|eigentlich",
        "JUST_TOUCH": "berührt gerade|bündig|taucht gerade ein|in höhe|auf wasserhöhe|schließt ab",
        "OWNED": "meine anlage|unsere anlage|bei ihnen gekauft|bei euch gekauft|anlage nr|seriennr|gekauft|geliefert",
        "SELL": "newsletter|abmelden|abbestellen|rabatt|messe|aussteller|suchmaschinen|webseite optimieren|sonderangebot|"
        "jetzt kaufen|gewinnspiel|klicken sie|kredit|eintrittskarten",
        "INSTEAD": "statt|anstatt|anstelle von|statt der",
        "PLUMB_LINE": "lot|senklot|senkblei|lotschnur|lotes|lots",
        "MEASURED": "gemessen|maße|messungen|messung|abmessungen|gemessene|messen|maß|ausgemessen",
        "AT_WATER": "auf höhe der wasserlinie|genau auf der wasserlinie|in der wasserlinie|auf der wasserlinie|"
        "an der wasserlinie|berührt das wasser|in höhe der wasserlinie",
        "OOPS": "nein|quatsch|falsch|pardon|moment|halt|sorry|verzeihung|entschuldigung|äh|besser gesagt|vielmehr|"
        "korrigiere|korrektur|ich meine|unsinn|stimmt nicht",
        "GONE": "verkauft|haben wir verkauft|ist verkauft|"
        "ist längst ab|ist längst weg|schon abgebaut|ist abgebaut|ist demontiert|wurde demontiert|"
        "in der backskiste|liegt in der|verstaut|wird verstaut|gestaut|fährt in der|steht im keller|"
        "liegt zu hause|unter deck|"
        "hab ich abgebaut|abmontiert|hab ich abmontiert|habe ich abmontiert|haben wir abmontiert|"
        "abgeschraubt|"
        "ist weg|sind weg|habe ich abgebaut|haben wir abgebaut|wurde entfernt|abgebaut worden|ist ab|"
        "habe ich entfernt|haben wir entfernt|wurde abgebaut",
        "ENDS": "endet|hört auf|enden",
        "BESIDE": "neben dem|neben der|beim|am|bei dem|durch den|in der nähe des|nahe beim|knapp über dem",
        "BEGIN": "beginnt|fängt an",
        "EXCEPT": "außer|bis auf|abgesehen von|nur",
    },
)
