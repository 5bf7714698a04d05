"""German: the stern, the rudder, what she is built of and who she is."""

WORDS = {
    "TRANSOM": (
        "heckhöhe|"
        "ok spiegel|ok heck|ok heckspiegel|vor ok spiegel|hinter ok spiegel|uk spiegel|uk heck|uk heckspiegel|"
        "kante des spiegels|rand des spiegels|spiegeloberkante|spiegelunterkante|spiegelneigung|spiegelwinkel|"
        "spiegelbreite|spiegeldicke|spiegelstärke|spiegel|spiegels|heckspiegel|heck|heckspiegels|heckplatte|"
        "spiegelheck|spiegel des bootes|spiegelplatte|hecks|spiegelkante|am heck|spiegelhöhe|oberkante spiegel|"
        "oberkante des spiegels|oberkante vom spiegel|spiegel oben|unterkante des spiegels|"
        "unterkante vom spiegel|spiegel unten|fuß des spiegels|neigung des spiegels|spiegel neigung|"
        "spiegelbreite oben|negativer spiegel|negatives heck|negativem spiegel|negativen spiegel|"
        "nach vorn gekipptes heck|spiegelfläche|heckfläche|heckabschluss|heckspiegelkante|hinterteil|bootsheck|"
        "schiffsheck|yachtspiegel|heckschott|achterspiegel|spiegelrand|spiegelkopf|heckkante|heckoberkante|"
        "heckunterkante|oberkante heck|unterkante heck|oberkante des hecks|unterkante des hecks|"
        "heckspiegeloberkante|heckspiegelunterkante|heckwand|spiegelwand|spiegelheckkante|arsch vom boot|"
        "setzstufe|stirnseite"
    ),
    "POST": (
        "kopf des stevens|kopf des achterstevens|stevenoberkante|achtersteven|steven|achterstevens|stevens|"
        "stevenkopf|achterstevenkopf"
    ),
    "HULL": (
        "das blech|außenhautblech|blech|planken|beplankung|plankenstärke|rumpf|laminat|rumpfdicke|rumpfes|"
        "außenhaut|rumpfstärke|schale|rumpfmaterial|bordwand|haut|planke|plankenstärken"
    ),
    "BOAT": (
        "aluminiumboot|aluboot|stahlboot|holzboot|stahlyacht|aluyacht|holzyacht|stahlschiff|holzschiff|boot|"
        "yacht|schiff|bootstyp|segelyacht|segelboot|kutter|ketsch|slup|bootes|schiffes|kielboot|segelschiff|"
        "schiffstyp|yachttyp"
    ),
    "PLUMB": (
        "ist gerade|senkrecht|lotrecht|senkrechter|senkrechtes|senkrechten|senkrechte|lotrechter|kerzengerade|"
        "vertikal|im lot|fast senkrecht|nahezu senkrecht|annähernd senkrecht|steht senkrecht|ziemlich senkrecht|"
        "praktisch senkrecht|ohne neigung|keine neigung|völlig senkrecht|schnurgerade|rechtwinklig zum wasser|"
        "stockgerade|lotrechtes|lotrechten|lotrechte|senkrechtem|null grad|gerade wie eine wand|steht gerade|"
        "kerzengrade"
    ),
    "REVERSE": (
        "umgekehrt wie ein yachtheck|umgekehrt wie bei einem yachtheck|negativer spiegel|negativ|negatives heck|"
        "negativem spiegel|negativen spiegel|negativer|negativen|negatives|negativem|negative neigung|"
        "negativ geneigt|nach vorn gekipptes heck|retrousse|yachtheck negativ|invertiert|nach vorne geneigt|"
        "negativ geneigter|negativ geneigtes|negativer neigung|negativem heck|nach vorn fallend|"
        "nach vorn geneigter|nach vorne geneigter|nach vorn gekippt|nach vorne gekippt|umgekehrt geneigt|"
        "umgekehrtes heck|ior heck|negativheck|negativspiegel|nach vorne fallend|negatives yachtheck|"
        "nach innen geneigt|spiegel negativ"
    ),
    "COUNTER": (
        "positives heck|überhängendes heck|yachtheck|positiv|positiver|positiven|positiver spiegel|überhang|"
        "positive neigung|klassischer überhang|überhängender|klassisches heck|klassisches yachtheck|"
        "normales heck|traditionelles heck|nach achtern geneigt|nach achtern geneigter|nach achtern fallend|"
        "nach hinten fallend|nach hinten geneigter|nach hinten gekippt|positiv geneigt|überhängend|"
        "langer überhang|heck mit überhang|klassischer spiegel|überhänge|überhangheck|nach achtern gekippt|"
        "gillung|gilling|konventionelles heck|normaler spiegel"
    ),
    "SCOOP": (
        "in den rumpf eingeformt*|in den rumpf integriert*|mit dem rumpf aus einem stück|"
        "in den rumpf einlaminiert*|in den rumpf eingelassen*|in den rumpf eingebaut*|eingeformte* badeplattform|"
        "integrierte* badeplattform|angeformte* badeplattform|eingeformte* badestufe|integrierte* badestufe|"
        "eingelassene* badeplattform|badestufe im heck|heckstufe|badestufe|heckbadestufe|integrierte badestufe|"
        "eingeformte badestufe|angeformte badestufe|integrierter badeplattform|badetreppe|heckstufen|"
        "eingeformte stufen|integrierte badeplattform|badeplattform integriert|badeplattform eingeformt|"
        "integrierte stufen|stufenheck|treppenheck|heck mit stufe|heck mit badestufe|begehbares heck|"
        "stufen im heck|stufe im heck|angeformte badeplattform|eingelassene badeplattform|badeplattform im rumpf|"
        "badestufen im heck|angeformter badeplattform|scoop heck|heck mit stufen|eingebaute badeplattform"
    ),
    "OPEN": (
        "offenes heck|offenem heck|offener spiegel|heck ist offen|offene heck|offenes cockpit|hinten offen|"
        "heckklappe|klappheck|offenen heck|abklappbarer spiegel|klappbarer spiegel|klappspiegel|spiegel offen|"
        "offene plicht|offene rückseite|spiegel klappt|heck klappt|klappbares heck|herunterklappbares heck|"
        "heckklappbar|abklappbares heck|abklappbare heckklappe|spiegel lässt sich abklappen|ganz offen|"
        "hinten ganz offen|offene plicht nach achtern|nach achtern offen|achtern offen|offenen spiegel|"
        "ohne spiegel|kein spiegel|spiegel fehlt|klappbarer heckspiegel|heck offen|offener heckspiegel|"
        "offenes spiegelheck"
    ),
    "DOUBLE": (
        "spitzgatter|kanuheck|spitzgat|spitzgatt|spitzgattheck|spitzgattkutter|doppelender|doppelenders|"
        "rundgatter|spitzgatters|spitzgattrumpf|spitzes heck|spitz zulaufendes heck|spitzem heck|kanuheckyacht|"
        "heck läuft spitz|hinten spitz|colin archer|colin archer typ|spitzgatthecks|achtern spitz|"
        "spitz zulaufend|kreuzerheck|kanuhecks|spitzgattyacht|spitzgattet|beidseitig spitz"
    ),
    "RUDDER": (
        "ruder hängt hinten am kiel|ruder hängt am kiel|ruder hängt hinten am skeg|ruderunterkante|"
        "unterkante ruder|fuß des ruders|ruderfuß|ruderkopf|kopf des ruders|kopf vom ruder|ruderoberkante|"
        "oberkante ruder|ruder|ruderblatt|hauptruder|angehängtes ruder|ruderblatts|ruderblattes|hauptruders|"
        "ruderanlage|doppelruder|ruders|beide ruder|zwei ruder|hinterkante ruder|hinterkante des ruders|"
        "hinterkante vom ruder|freistehendes ruder|ruder am spiegel|ruder am heck|steuerruder|ruderblätter|"
        "bootsruder|ruderfläche|eigenes ruder|eigene ruder|schiffsruder|ruderende|ruderkante|"
        "ruderblatthinterkante|heckruder|des blatts|des blattes|blatt|ruder hängt hinten|ruder hinter dem kiel|"
        "balance ruder"
    ),
    "HUNG_OUT": (
        "angehängtes ruder|am spiegel angehängt|ruder am spiegel|ruder am heck|hängt am spiegel|"
        "am heck angehängt|heckruder|angehängt|angehängtem|angehängten|hängt am heck|hängt am steven|"
        "am achtersteven angehängt|am heck aufgehängt|am spiegel aufgehängt|am spiegel befestigt|"
        "außen am spiegel|spiegelruder|am steven|außenliegend|am spiegel hängend|hängt hinten am spiegel|"
        "sitzt am spiegel|außenruder|anhängeruder|angehängtes|hängt außen|am spiegel montiert|"
        "am spiegel angebracht|am heck angebracht|am heck befestigt|am heck montiert|außen angehängt|"
        "hängt hinten dran|ruder hängt hinten|in fingerlingen|fingerlinge|fingerlingen|ruderbeschläge am spiegel|"
        "außen aufgehängt|außen am heck|am heckspiegel|hinten angehängt|am spiegel gelagert|am steven angehängt|"
        "hängt am heckspiegel|am heckspiegel angehängt|klappruder|spiegelruderanlage|hängt achtern|"
        "am heckspiegel aufgehängt|aufgehängt am spiegel|aufgehängt am heck|hängt dahinter|hängt draußen|"
        "hängt hinterm heck"
    ),
    "HUNG_IN": (
        "ruder hängt hinten am kiel|ruder hängt am kiel|ruder hängt hinten am skeg|hinten am kiel|"
        "am kiel aufgehängt|an der kielhinterkante|hinter dem langkiel|am langkiel|hinten am langkiel|"
        "am kielende|hängt hinten am kiel|hängt am skeg|am skeg aufgehängt|halbskeg*|skegruder*|spatenruder*|"
        "kielruder*|vollskeg*|spatenruder|freistehendes ruder|balanceruder|spatenruders|skegruder|halbskeg|"
        "teilbalanciert|skeg geführt|kielruder|untergebaut|freistehend|vorgebalanciert|am skeg|hinter dem kiel|"
        "freihängend|freihängendes|frei hängend|unterhängend|untergehängt|unterm schiff hängend|"
        "hinter einem skeg|mit skeg|am ende des kiels|hinterm kiel|am kiel angehängt|angehängt am kiel|"
        "vorbalanciert|halbbalanciert|halbbalance|balanciertes|ruder hinter dem kiel|hängt am kiel|kielgeführt|"
        "skegruders|am teilskeg|teilskeg|spatenrudern|freistehendes|freistehenden|spaten|kielangehängt|"
        "skeg gelagert|spatenblatt|balance ruder|hinterm skeg|am skeg gelagert|am halbskeg|skeggeführt|"
        "am ende des langkiels|hinterm langkiel|hinter dem kiel angehängt"
    ),
    "UNDER": (
        "am kiel|am langkiel|hängt unter dem rumpf|skeg|unter dem rumpf|unter dem boot|am skeg|hinter skeg|"
        "unter dem heck|unterm rumpf|unterm schiff|unter der yacht|unterm boot|unter dem schiff|ganz unter|"
        "unter dem heck versteckt|unterm heck|unter dem spiegel|unterm spiegel|ist darunter|ist unten drunter|"
        "ist unterm|sitzt darunter"
    ),
    "TRAILING": (
        "hinterkante|achterkante|abströmkante|hintere kante|hinterer rand|ruderhinterkante|hinterkante ruder|"
        "hinterkante des ruders|hinterkante vom ruder|ruderblatthinterkante|austrittskante|achtere kante|"
        "endkante|ablaufkante|hintere ruderkante|hinteren ruderkante|ruderende|hinterste kante|hinterster punkt|"
        "achterste kante|hintere kante des ruders|achterende|ruderblatt hinterkante|hinterkante des ruderblatts|"
        "hinterkante ruderblatt|hinterkanten|hinterste punkt|hinteres ende|ende des ruders|hinterkant|"
        "achterkante ruder|achterkante des ruders|ruderachterkante|endleiste|achterlichste kante"
    ),
    "STOCK": (
        "ruderschaft|ruderachse|ruderkoker|schaft|ruderschafts|schaftachse|ruderwelle|pinne achse|drehachse|"
        "ruderschaftes|schaftmitte|ruderschaftmitte|mitte ruderschaft|mitte schaft|achse des ruders|"
        "ruderdrehachse|schaft des ruders|drehpunkt des ruders|ruderachse mitte|ruderstock|schaftes"
    ),
    "GRP": (
        "massives gfk|massiv gfk|massivem gfk|gfk|laminat|volllaminat|polyester|kunststoff|glasfaser|gfk rumpf|"
        "epoxy|handauflage|glasfaserverstärkt|glasfaserkunststoff|gfk boot|kunststoffboot|glasfaserkunststoffs|"
        "epoxid|vinylester|glasgewebe|glasmatte|kunststoffrumpf|aus gfk|plastikboot|plaste|frp"
    ),
    "SOLID": (
        "kein sandwich|ohne sandwich|volllaminat|massiv|massives|voll laminat|vollgfk|massivlaminat|"
        "volllaminiert|massiver|ohne kern|vollaminat|einschalig|massive|massivem|massives laminat|vollgelegt|"
        "volles laminat|durchgehend laminat|handlaminat|einfachlaminat|reines laminat|vollpolyester|"
        "massivbauweise|ohne schaumkern|kein kern|nicht sandwich|vollkunststoff|massiv laminiert|"
        "massivem laminat|massives polyester|gfk massiv|massiv polyester|handaufgelegt|ohne balsa|volllaminats|"
        "kein schaum|monolithisch"
    ),
    "CORED": (
        "sandwich|balsa|schaumkern|sandwichbauweise|sandwichlaminat|balsakern|balsasandwich|schaumsandwich|"
        "mit kern|schaum|sandwichkern|airex|divinycell|schaumstoffkern|pvc schaum|hartschaum|balsaholz|"
        "balsaholzkern|gfk sandwich|gfk schaum|sandwichrumpf|sandwich bauweise|kernmaterial|wabenkern|coremat|"
        "sandwichaufbau|balsaholzsandwich|sandwichspiegel|schaum sandwich|balsa kern|schaum kern|korkkern|"
        "sandwichplatte|hartschaumkern|in sandwich"
    ),
    "WOOD": (
        "mahagoniboot|holz epoxid|sperrholz epoxid|holz|holzboot|mahagoni|mahagonirumpf|holzrumpf|aus holz|eiche|"
        "lärche|karweel|sperrholz|formverleimt|leistenbau|lärche auf eiche|hölzern|holzyacht|klinker|teakholz|"
        "holzbau|mahagoni auf eiche|kiefer auf eiche|teak auf eiche|formverleimtes holz|holzrumpfes|"
        "karweelbeplankung|leistengeplankt|holzbauweise|sperrholzrumpf|bootssperrholz|formverleimtes|holz epoxy|"
        "holzbauweise epoxy|aus mahagoni|aus lärche|in holz|holzboote|karweel gebaut|karweelgeplankt|klinkerbau|"
        "hölzerne|hölzerner|hölzernes|iroko|sapeli|eichenholz|massivholz|aus eiche|holzschiff"
    ),
    "ALU": (
        "aluminium|alu|aluminiumrumpf|alurumpf|aus aluminium|aluminiumyacht|aluyacht|alubau|aluschiff|aluboot|"
        "aluminiumboot|alu rumpf|aus alu|aluminiumbau|seewasserbeständiges aluminium|aluminium rumpf|alubauweise|"
        "leichtmetall|aluminiumschiff|in alu|aluminiumblech|in aluminium|aluminium gebaut"
    ),
    "STEEL": (
        "stahl|stahlrumpf|stahlboot|stahlbau|stahlyacht|aus stahl|stahlkutter|stahlketsch|stahlschiff|"
        "schiffbaustahl|stahlslup|stahlrumpfs|stahlblech|schiffsstahl|aus stahl gebaut|stahlbauweise|stahl rumpf|"
        "geschweißter stahl|stahlyachten|in stahl|cortenstahl|corten|stahlschiffes|knickspantstahl|stahlkasko|"
        "stahl knickspant|rundspant stahl|stahl gebaut|stählern|stählerne|stählerner"
    ),
    "YEAR": (
        "bjh|baujhr|baujahr|bj|gebaut|aus|von|baujahr von|gebaut in|vom baujahr|erbaut|erstwasserung|vom stapel|"
        "jahrgang|stapellauf|im jahr|gebaut bei|gebaut auf"
    ),
    "HULL_NUMBER": (
        "kasko nr|kasko nummer|kaskonummer|baunummer|rumpfnummer|bau nr|bau nummer|baunr|rumpf nr|schiffsnummer|rumpfnr"
    ),
    "BUILDER": "werft|hersteller|erbauer|bootsbauer|gebaut von|bauwerft",
    "MODEL": "typ|modell|boot|bootstyp|yacht|bootsmodell|yachttyp|vom typ|schiffstyp|bootsmarke|schiff",
}
