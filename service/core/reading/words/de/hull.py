"""German: the stern, the rudder, what she is built of and who she is."""

WORDS = {
    "TRANSOM": (
        "kante des spiegels|rand des spiegels|spiegeloberkante|spiegelunterkante|spiegelneigung|spiegelwinkel|"
        "spiegelbreite|spiegeldicke|spiegelstärke|spiegel|spiegels|heckspiegel|heck|heckspiegels|heckplatte|"
        "spiegelheck|spiegel des bootes|spiegelplatte|hecks|spiegelkante|am heck|spiegelhöhe|oberkante spiegel|"
        "oberkante des spiegels|oberkante vom spiegel|spiegel oben|unterkante des spiegels|"
        "unterkante vom spiegel|spiegel unten|fuß des spiegels|neigung des spiegels|spiegel neigung|"
        "spiegelbreite oben|negativer spiegel|negatives heck|negativem spiegel|negativen spiegel|"
        "nach vorn gekipptes heck|spiegelfläche|heckfläche|heckabschluss|heckspiegelkante|hinterteil|bootsheck|"
        "schiffsheck|yachtspiegel|heckschott|achterspiegel|spiegelrand|spiegelkopf|heckkante|heckoberkante|"
        "heckunterkante|oberkante heck|unterkante heck|oberkante des hecks|unterkante des hecks|"
        "heckspiegeloberkante|heckspiegelunterkante|heckwand|spiegelwand|spiegelheckkante|arsch vom boot"
    ),
    "POST": (
        "kopf des stevens|kopf des achterstevens|stevenoberkante|achtersteven|steven|achterstevens|stevens|"
        "stevenkopf|achterstevenkopf"
    ),
    "HULL": (
        "blech|planken|beplankung|plankenstärke|rumpf|laminat|rumpfdicke|rumpfes|außenhaut|rumpfstärke|schale|"
        "rumpfmaterial|bordwand|haut"
    ),
    "BOAT": (
        "boot|yacht|schiff|bootstyp|segelyacht|segelboot|kutter|ketsch|slup|bootes|schiffes|kielboot|segelschiff|"
        "schiffstyp|yachttyp"
    ),
    "PLUMB": (
        "ist gerade|senkrecht|lotrecht|senkrechter|senkrechtes|senkrechten|senkrechte|lotrechter|kerzengerade|"
        "vertikal|im lot"
    ),
    "REVERSE": (
        "negativer spiegel|negativ|negatives heck|negativem spiegel|negativen spiegel|negativer|negativen|"
        "negatives|negativem|negative neigung|negativ geneigt|nach vorn gekipptes heck|retrousse|"
        "yachtheck negativ|invertiert"
    ),
    "COUNTER": (
        "positives heck|überhängendes heck|yachtheck|positiv|positiver|positiven|positiver spiegel|überhang|"
        "positive neigung|klassischer überhang|überhängender"
    ),
    "SCOOP": (
        "eingeformte* badeplattform|integrierte* badeplattform|angeformte* badeplattform|eingeformte* badestufe|"
        "integrierte* badestufe|eingelassene* badeplattform|badestufe im heck|heckstufe|badestufe|heckbadestufe|"
        "integrierte badestufe|eingeformte badestufe|angeformte badestufe|integrierter badeplattform|badetreppe"
    ),
    "OPEN": (
        "offenes heck|offenem heck|offener spiegel|heck ist offen|offene heck|offenes cockpit|hinten offen|"
        "heckklappe|klappheck|offenen heck|abklappbarer spiegel|klappbarer spiegel|klappspiegel|spiegel offen|"
        "offene plicht"
    ),
    "DOUBLE": (
        "spitzgatter|kanuheck|spitzgat|spitzgatt|spitzgattheck|spitzgattkutter|doppelender|doppelenders|"
        "rundgatter|spitzgatters|spitzgattrumpf"
    ),
    "RUDDER": (
        "ruder|ruderblatt|hauptruder|angehängtes ruder|ruderblatts|ruderblattes|hauptruders|ruderanlage|"
        "doppelruder|ruders|beide ruder|zwei ruder|hinterkante ruder|hinterkante des ruders|"
        "hinterkante vom ruder|freistehendes ruder|ruder am spiegel|ruder am heck"
    ),
    "HUNG_OUT": (
        "angehängtes ruder|am spiegel angehängt|ruder am spiegel|ruder am heck|hängt am spiegel|"
        "am heck angehängt|heckruder|angehängt|angehängtem|angehängten|hängt am heck|hängt am steven|"
        "am achtersteven angehängt|am heck aufgehängt|am spiegel aufgehängt|am spiegel befestigt|"
        "außen am spiegel|spiegelruder|am steven|außenliegend|am spiegel hängend|hängt hinten am spiegel|"
        "sitzt am spiegel"
    ),
    "HUNG_IN": (
        "halbskeg*|skegruder*|spatenruder*|kielruder*|vollskeg*|spatenruder|freistehendes ruder|balanceruder|"
        "spatenruders|skegruder|halbskeg|teilbalanciert|skeg geführt|kielruder|untergebaut|freistehend|"
        "vorgebalanciert|am skeg|hinter dem kiel"
    ),
    "UNDER": (
        "am kiel|am langkiel|hängt unter dem rumpf|skeg|unter dem rumpf|unter dem boot|am skeg|hinter skeg|"
        "unter dem heck|unterm rumpf|unterm schiff|unter der yacht|unterm boot|unter dem schiff"
    ),
    "TRAILING": (
        "hinterkante|achterkante|abströmkante|hintere kante|hinterer rand|ruderhinterkante|hinterkante ruder|"
        "hinterkante des ruders|hinterkante vom ruder|ruderblatthinterkante|austrittskante|achtere kante|"
        "endkante|ablaufkante"
    ),
    "STOCK": "ruderschaft|ruderachse|ruderkoker|schaft|ruderschafts|schaftachse|ruderwelle|pinne achse|drehachse",
    "GRP": (
        "massives gfk|massiv gfk|massivem gfk|gfk|laminat|volllaminat|polyester|kunststoff|glasfaser|gfk rumpf|"
        "epoxy|handauflage"
    ),
    "SOLID": (
        "kein sandwich|ohne sandwich|volllaminat|massiv|massives|voll laminat|vollgfk|massivlaminat|"
        "volllaminiert|massiver|ohne kern|vollaminat|einschalig|massive|massivem"
    ),
    "CORED": (
        "sandwich|balsa|schaumkern|sandwichbauweise|sandwichlaminat|balsakern|balsasandwich|schaumsandwich|"
        "mit kern|schaum|sandwichkern"
    ),
    "WOOD": (
        "holz epoxid|sperrholz epoxid|holz|holzboot|mahagoni|mahagonirumpf|holzrumpf|aus holz|eiche|lärche|"
        "karweel|sperrholz|formverleimt|leistenbau|lärche auf eiche|hölzern|holzyacht|klinker|teakholz"
    ),
    "ALU": "aluminium|alu|aluminiumrumpf|alurumpf|aus aluminium|aluminiumyacht|aluyacht|alubau",
    "STEEL": (
        "stahl|stahlrumpf|stahlboot|stahlbau|stahlyacht|aus stahl|stahlkutter|stahlketsch|stahlschiff|schiffbaustahl"
    ),
    "YEAR": (
        "bjh|baujhr|baujahr|bj|gebaut|aus|von|baujahr von|gebaut in|vom baujahr|erbaut|erstwasserung|vom stapel|"
        "jahrgang|stapellauf|im jahr"
    ),
    "HULL_NUMBER": (
        "kasko nr|kasko nummer|kaskonummer|baunummer|rumpfnummer|bau nr|bau nummer|baunr|rumpf nr|schiffsnummer|rumpfnr"
    ),
    "BUILDER": "werft|hersteller|erbauer|bootsbauer|gebaut von|bauwerft",
    "MODEL": "typ|modell|boot|bootstyp|yacht|bootsmodell|yachttyp|vom typ|schiffstyp|bootsmarke|schiff",
}
