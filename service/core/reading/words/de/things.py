"""German: what stands on the stern, how it moves, where it is, whether it goes."""

WORDS = {
    "O_LADDER": (
        "badeleiter|leiter|heckleiter|leitern|badeleitern|klappleiter|steigleiter|einstiegsleiter|schwimmleiter|"
        "taucherleiter|klappleitern|strickleiter|teleskopleiter|teleskopbadeleiter|edelstahlleiter|notleiter|"
        "rettungsleiter|bordleiter|einhängeleiter|steckleiter|leiterchen|badeleiterchen"
    ),
    "O_PLATFORM": (
        "badeplattform|plattform|badeplattformen|plattformen|heckplattform|teakplattform|badesteg|badebrett|"
        "heckplattformen|schwimmplattform|badebretter|teakrost|anbauplattform|badedeck|heckterrasse|badegräting|"
        "gräting|teakgräting|tauchplattform|badeplattform am heck|klappplattform|einstiegsplattform|"
        "plattformen am heck"
    ),
    "O_DAVITS": (
        "davits|davit|heckdavits|dingidavits|davitanlage|beibootdavits|bootsdavits|dinghydavits|heckkran|"
        "beibootkran|dingikran|beibootkräne|davitarme|dingiheber|bootskran|bootskräne|davitpaar"
    ),
    "O_OUTBOARD": (
        "außenborder|außenbordmotor|außenborderhalterung|außenborderhalter|motorhalterung|außenborders|"
        "ab halterung|flautenschieber|außenbord motor|hilfsmotorhalterung|e außenborder|elektroaußenborder|quirl|"
        "außenbordmotoren|motorhalter|motorbock|motorbrett|ab motor|außenbordermotor|außenborderbock|"
        "motorkonsole|außenborderkonsole|elektromotor am heck|außenbordmotorhalterung"
    ),
    "O_EXHAUST": (
        "auspuff|abgasauslass|auspuffauslass|abgasaustritt|auspuffs|auspuffaustritt|abgasrohr|abgasaustritte|"
        "auspuffrohr|auspuffstutzen|abgasstutzen|auspufföffnung|motorauspuff|auspuffdurchführung|abgasdurchlass|"
        "auspuffloch|heckauspuff|abgas"
    ),
    "O_RAIL": (
        "heckkorb|heckreling|heckkorbs|heckkörbe|relingkorb|geteilter heckkorb|pushpit|heckkorbreling|pushpits|"
        "korb achtern|heckgeländer|seereling|reling achtern|relingszug|achterreling|heckkanzel|korb am heck|"
        "heckkorbhälften|relingkörbe|heckrelingskorb|reling am heck|geteilte heckkörbe|geteilte heckreling"
    ),
    "O_STAY": (
        "achterstag|achterstage|achterstagen|achterstags|hahnepot|doppeltes achterstag|geteiltes achterstag|"
        "backstagen|achterstagspanner|hahnepotstag|geteiltes stag|backstag|zwei achterstage|doppelachterstag|"
        "achterstagpütting|achterstagtalje|y stag|achterstagplatte|achterstagbeschlag|achterstagpüttings|"
        "stag achtern"
    ),
    "O_BOOM": (
        "besanbaum|großbaum|baumnock|besanbaums|baum|besanbaumnock|großbaumnock|baumende|besanbaumes|großbaums|"
        "großbaumende"
    ),
    "O_ARCH": (
        "geräteträger|heckbügel|targabügel|geräteträgers|targa|heckbogen|bügel|radarbügel|edelstahlbügel|"
        "geräteträger am heck|gerätebügel|heckträger|solarbügel|edelstahlträger|geräteträger aus edelstahl|"
        "überrollbügel|targabügels|solarträger|geräteportal|heckbügels|portal|antennenbügel|heckgalgen|galgen|"
        "solarpaneelträger|radarbügels|heckgerüst|bügel am heck|targarahmen"
    ),
    "O_PANELS": (
        "solarpanel|solarpanele|solarpaneele|solarmodule|solarzellen|solar|solarpaneel|solarmodul|solaranlage|"
        "photovoltaik|pv module|solarplatten|solarpanels|solarpaneelen|pv paneele|pv anlage|solarflächen|"
        "sonnenkollektoren|solarmodulen|paneele|panele|panels|solarpaneele am heck|photovoltaikmodule"
    ),
    "O_MAST": (
        "radarmast|windgenerator|windrad|windgeneratormast|radarträger|antennenmast|gerätemast|windgenerators|"
        "windgeneratoren|windladegerät|radarstange|radarpfosten|antennenträger|windrades|windturbine|"
        "geräteträgermast|radargalgen|radarmasten|stange mit radar|antennenstange|wind generator|gps antenne|"
        "antennenstab|stabantenne|gps pilz|antennenrohr|antenne am heck|ukw antenne|ais antenne|antennenpfahl|"
        "rohr mit antenne"
    ),
    "O_STAFF": (
        "flaggenstock|flaggenmast|flaggstock|flaggenstöcke|flaggenstockhalter|flaggstöcke|flaggenhalter|"
        "flaggenstocks|flaggenstange|flagge am heck|heckflagge"
    ),
    "O_PASSERELLE": (
        "gangway|passerelle|gangways|laufplanke|stelling|gangplanke|heckgangway|passerella|einstiegssteg|"
        "landgang|landgangsteg|laufsteg|gangwayhalterung|einsteigplanke"
    ),
    "O_BOOMKIN": (
        "heckausleger|bugspriet achtern|papageienstock|ausleger|besanausleger|heckbugspriet|treiberbaum|"
        "heckspriet|ausleger achtern|papageistock"
    ),
    "O_OTHER": "grill|bordgrill|gasgrill|angelrutenhalter|rutenhalter|fahrradträger|heckanker|heckankerrolle",
    "O_LOCKER": (
        "gaskasten|heckbackskiste|rettungsinsel|rettungsinselhalterung|gasflaschenkasten|gasflasche am heck|"
        "rettungsinseln|gasbackskiste|heckkasten|inselhalterung|heckkiste|heckschapp"
    ),
    "EMPTY": "leer|unbeladen|leeres boot|ohne zuladung|entladen|ungeladen",
    "LADEN": (
        "beladen|voll beladen|mit zuladung|reisefertig|fahrtenklar|vollgeladen|ausgerüstet|"
        "unter ihrer konstruktionswasserlinie|tiefer als gezeichnet|unter der konstruktionswasserlinie|"
        "tiefer als auf dem plan"
    ),
    "SINKS": (
        "tiefer|sinkt|taucht ein|sackt|liegt tiefer|tiefer im wasser|unter ihrer konstruktionswasserlinie|"
        "tiefer als gezeichnet|unter der konstruktionswasserlinie|tiefer als auf dem plan"
    ),
    "CAMBER": "wölbung|stich|gewölbt|krümmung|bombierung|bauchig|spiegelwölbung|gewölbter",
    "DROP": (
        "höhenunterschied|höhendifferenz|höhe zwischen|senkrechter abstand|senkrecht gemessen|lotrecht gemessen|"
        "vertikal gemessen|in der senkrechten gemessen|senkrechte höhe|höhe dazwischen|dazwischen liegen|"
        "von kante zu kante|im lot gemessen|von ober bis unterkante|zwischen ober und unterkante|"
        "von oberkante bis unterkante|von oberkante zu unterkante|zwischen oberkante und unterkante"
    ),
    "AXIS": "achse|ihre achse|drehachse|welle|stock|achse vom ruder",
    "FOLD": (
        "zum klappen|zum hochklappen|zum wegklappen|zum umklappen|zum einklappen|klappen wir|geklappt wird|"
        "wegklappbare|klappbar|klappbare|klappbaren|klappt|hochklappbar|abklappbar|klappbarer|klappbares|"
        "klappleiter|hochgeklappt|hochklappbare|wegklappbar|umklappbar|einklappbar|lässt sich klappen|"
        "lässt sich hochklappen|wird hochgeklappt|kann hochgeklappt werden|abklappbare|faltbar|"
        "hochgeklappt werden|klappt hoch|klappt weg|klappt ein|klappt runter|klappt herunter|klappt um|"
        "lässt sich wegklappen|lässt sich einklappen|lässt sich umklappen|lässt sich abklappen|"
        "lässt sich zusammenklappen|zusammenklappbar|zusammenklappbare|ausklappbar|ausklappbare|herunterklappbar|"
        "runterklappbar|klappen|hochklappen|wegklappen|umklappen|einklappen|abklappen|aufklappbar|hochzuklappen|"
        "wegzuklappen|umlegbar|umgelegt werden|klappmechanismus|mit scharnier|mit scharnieren|abklappbares|"
        "hochklappbares|klappbarem|einklappbare|einklappbarer|faltbare|faltbarer|anklappbar|beiklappbar|klappar|"
        "geklappt|weggeklappt|umgeklappt|eingeklappt|hochziehbar|aufholbar"
    ),
    "FIXED": (
        "angeschraubt|angeschraubte|"
        "fest|feste|fest montiert|verschraubt|angeschweißt|geschweißt|festen|fester|festes|starr|starre|"
        "fest verschraubt|fest angebaut|angebolzt|nicht klappbar|fest eingebaut|festmontiert|verschweißt|"
        "fest angebracht|fest angeschweißt|fest verbaut|festgeschraubt|festgeschweißt|nicht hochklappbar|"
        "nicht umklappbar|unbeweglich|fest angeschraubt|fest verbunden|fest installiert|fest verklebt|"
        "starr montiert|nicht zu klappen|lässt sich nicht klappen|lässt sich nicht hochklappen|festes teil|"
        "fix montiert|starrer|starres|durchgebolzt|fest stehend|feststehend|feststehende|feststehender|"
        "klappt nicht|fest eingebaute|angeschweißte|aufgeschweißt|fest montierte|fest montierter|fest montiertes|"
        "fest verschraubte"
    ),
    "REMOVE": (
        "kann ich verzichten|können wir verzichten|könnten wir verzichten|kann woanders hin|kann versetzt werden|"
        "kann verlegt werden|lässt sich versetzen|kann umziehen|lässt sich verlegen|wird demontiert|"
        "werden demontiert|wird abgebaut|werden abgebaut|bauen wir ab|baue ich ab|notfalls auch weg|könnte weg|"
        "abnehmbar|kann weg|demontierbar|entfernt werden|abgebaut werden|abbaubar|kann ab|kann entfernt werden|"
        "könnte entfernt werden|könnte ab|kann abgenommen werden|lässt sich abnehmen|lässt sich entfernen|"
        "abschraubbar|kann demontiert werden|kann entfallen|würde ich abbauen|kann weggenommen werden|dürfte weg|"
        "darf weg|könnte abgebaut werden|darf ab|können weg|können ab|können abgebaut werden|weg kann|ab kann|"
        "weg könnte|wegfallen kann|abgenommen werden kann|abgebaut werden kann|entfernt werden kann|"
        "demontiert werden kann|entbehrlich|verzichtbar|nicht nötig|nicht mehr nötig|wird nicht gebraucht|"
        "brauchen wir nicht|brauche ich nicht|nicht mehr gebraucht|überflüssig|kommt weg|kommen weg|kommt ab|"
        "kommen ab|kommt runter|muss weg|müssen weg|soll weg|sollen weg|fliegt raus|fliegt runter|würde weichen|"
        "kann weichen|können weichen|könnte weichen|darf weichen|steckbar|aushängbar|einhängbar|einhängeleiter|"
        "nur gesteckt|nur eingehängt|abnehmbare|abnehmbaren|abnehmbarer|abnehmbares|demontierbare|demontierbaren|"
        "demontierbares|lösbar|abschraubbare|zur disposition|wegdenken|hängen wir nicht dran|verlegbar|"
        "versetzbar|verschiebbar|mobil|kann aber in die backskiste|kann in die backskiste|kann man rausziehen|"
        "rausziehen|kann man herausziehen|herausziehbar|lässt sich herausziehen|kann man abziehen|"
        "ist nur gesteckt|kann in den keller|kann an land bleiben|kann zu hause bleiben|kann unter deck|"
        "brauchen wir nicht mehr|brauche ich nicht mehr"
    ),
    "KEEP": (
        "wollen wir uns nicht trennen|möchten wir uns nicht trennen|"
        "hängen wir dran|hängen wir sehr dran|hängen wir sehr|daran hängen wir|ans herz gewachsen|"
        "liegt uns am herzen|möchten wir nicht missen|wollen wir nicht missen|geben wir nicht her|"
        "wollen wir nicht hergeben|möchten wir nicht hergeben|mögen wir sehr|soll dort bleiben|muss dort bleiben|"
        "dranbleiben|weiter benutzen|weiterhin benutzen|weiter nutzen|weiterhin nutzen|weiter benutzbar|"
        "weiter nutzbar|benutzbar bleiben|nutzbar bleiben|nicht abbauen|nicht entfernen|nicht hergeben|"
        "bleiben soll|bleiben muss|soll dranbleiben|muss bleiben|soll bleiben|bleibt|behalten|muss dranbleiben|"
        "müssen bleiben|bleiben müssen|sollen bleiben|muss erhalten bleiben|nicht demontierbar|kann nicht weg|"
        "darf nicht weg|wollen wir behalten|möchten wir behalten|möchte ich behalten|will ich behalten|"
        "unbedingt bleiben|bleibt dran|muss also bleiben|soll erhalten bleiben|nicht abnehmbar|"
        "lässt sich nicht entfernen|unverzichtbar|drauf bleiben|draufbleiben|stehen bleiben|stehenbleiben|"
        "erhalten bleiben|belassen|beibehalten|beizubehalten|beibehalten werden|unentbehrlich|unabdingbar|"
        "nicht verhandelbar|nicht zur disposition|nicht antasten|unantastbar|heilig|wird gebraucht|"
        "werden gebraucht|verbleibt|bleibt wo|soll da bleiben|muss da bleiben|geb ich nicht her|"
        "gebe ich nicht her|nicht wegdenken|darauf nicht verzichten|nicht verzichten|ungern hergeben|"
        "ungern verzichten|festhalten|lassen wir dran|lasse ich dran|muss dableiben|soll dableiben|"
        "weiterverwendet|weiter gebraucht|sitzen bleiben|nicht trennen|trennen wir uns nicht|"
        "trenne ich mich nicht|nicht missen|nicht hergegeben|hängt daran|hängt sehr daran|hängen daran|"
        "möchte sie behalten|möchte ihn behalten|will sie behalten|will ihn behalten|ist ihm wichtig|"
        "ist ihr wichtig|die brauchen wir|den brauchen wir|das brauchen wir|die brauche ich|den brauche ich|"
        "sie brauchen wir|die benötigen wir|den benötigen wir|behalte ich|behalten wir|wird behalten|behalte|"
        "bleibt drauf"
    ),
    "PORT": (
        "backbord|backbords|an backbord|backbordseite|bb|links|linke seite|backbordseits|an bb|backbordhälfte|"
        "backbordseitig|linken seite|an der backbordseite|auf backbord|backbordecke|bb seite|backbordachtern|"
        "linkerhand|auf der linken seite|nach backbord|backbordquarter|bb-seite|linksseitig|backbord achtern|"
        "backbordheck"
    ),
    "STARBOARD": (
        "steuerbord|steuerbords|an steuerbord|steuerbordseite|stb|rechts|rechte seite|steuerbordseits|an stb|"
        "steuerbordhälfte|steuerbordseitig|rechten seite|an der steuerbordseite|auf steuerbord|steuerbordecke|"
        "stb seite|rechterhand|auf der rechten seite|nach steuerbord|stb-seite|rechtsseitig|steuerbord achtern|"
        "steuerbordheck|steuerbordachtern|stbd|steuerbordquarter"
    ),
    "CENTRE": (
        "mitte|mittig|mittschiffs|mittellinie|mittschiffslinie|von der mitte|in der mitte|zentral|mittigen|"
        "schiffsmitte|mittlings|mittelachse|aus der mitte|von mittschiffs|ab mitte|von der mittellinie|"
        "schiffsmittellinie|aus mitte|neben der mitte|außermittig|außer mitte|außerhalb der mitte|genau mittig|"
        "mittige|mittiger|mittiges|bootsmitte|mittschiffsebene|spiegelmitte|heckmitte|mittschiffs gelegen|"
        "aus der mittellinie|längsachse|bis mitte|von mitte|längsmittellinie|mittschiff"
    ),
    "EACH_SIDE": (
        "beidseitig|je seite|auf beiden seiten|an beiden seiten|zu beiden seiten|beiderseits|je eine an|"
        "beidseits|je einer an|einer an jeder seite|an jeder seite|links und rechts|rechts und links|"
        "backbord und steuerbord|bb und stb|beiden seiten|auf jeder seite|steuerbord und backbord|je eins|"
        "zu jeder seite|beidseitige|links wie rechts|nach jeder seite|zu jeder seite der mitte|nach beiden seiten"
    ),
    "PREFER": (
        "idealerweise|wenn möglich|falls möglich|bevorzugen|am liebsten|lieber|wünschen wir uns|bevorzugt|"
        "lieber wäre|wunsch|wünschen|vorzugsweise|lieber hätten|hätten gern|hätte gern|am besten|möglichst|"
        "gerne an|gern an|würde bevorzugen|würden bevorzugen|hätte gerne|hätten gerne|hätte sie gern|"
        "hätte er gern|bevorzugen würde|wäre lieber|wäre uns lieber|ist uns lieber|wünscht|wünscht sich|"
        "wir möchten|ich möchte|wir wollen|ich will sie|wünschten wir|wünsche ich mir|wäre uns am liebsten|"
        "wäre mir am liebsten|passt uns am besten|passt mir am besten|ist uns am liebsten|käme uns entgegen|"
        "möchte es|möchte sie|möchte ihn|möchte die anlage|hätte ihn gern|hätte es gern|will es|will sie|"
        "will ihn|möchten sie|möchten es|möchten die anlage|will die anlage|besser für uns|besser für mich|"
        "passt uns besser|wäre mir lieber|wenn's geht|wenn es geht|nach möglichkeit"
    ),
    "SWING": (
        "schwingt|schwingen|schwenkbarer|schwenkbar|schwenkt|schwenkbare|schwenkbares|schwenkbaren|ausschwenkbar|"
        "ausschwenkbare|wegschwenkbar|einschwenkbar|drehbar|drehbare|schwenken|zur seite schwenken|"
        "zur seite schwenkbar|ausgeschwenkt|weggeschwenkt|einschwenken|schwenkbarem|fegt|überstreicht|"
        "schwingt natürlich|pendelt"
    ),
    "SLIDE": (
        "ausziehbar|ausziehbare|einschiebbar|teleskopierbar|teleskopleiter|teleskop|ausziehleiter|ausgezogen|"
        "herausziehbar|herausziehbare|einschieben|schiebbar|ausfahrbar|ausfahrbare|einziehbar|einziehbare|"
        "teleskopische|teleskopierbare|teleskopartig|verschiebbare|ausziehen|zum ausziehen|wird ausgezogen|"
        "schiebt sich|herausgezogen|zum herausziehen|ausziehbarer|teleskopbadeleiter|ausziehbares|einschiebbare|"
        "wie eine schublade|schubladenartig"
    ),
    "AVOID": "vermeiden|keinesfalls|auf keinen fall|ungern|nur nicht|bitte nicht|auf gar keinen fall",
    "GONE": (
        "schon weg|bereits weg|längst weg|inzwischen weg|mittlerweile weg|jetzt weg|nun weg|schon ab|bereits ab|"
        "längst ab|schon runter|bereits runter|schon verkauft|bereits verkauft|schon demontiert|"
        "bereits demontiert|bereits abgebaut|längst abgebaut|schon abmontiert|nicht mehr dran|nicht mehr da|"
        "nicht mehr an bord|nicht mehr vorhanden|haben wir verkauft|ist verkauft|ist längst ab|ist längst weg|"
        "schon abgebaut|ist abgebaut|ist demontiert|wurde demontiert|in der backskiste|liegt in der|verstaut|"
        "wird verstaut|gestaut|fährt in der|steht im keller|liegt zu hause|unter deck|hab ich abgebaut|"
        "hab ich abmontiert|habe ich abmontiert|haben wir abmontiert|ist weg|sind weg|habe ich abgebaut|"
        "haben wir abgebaut|wurde entfernt|abgebaut worden|ist ab|habe ich entfernt|haben wir entfernt|"
        "wurde abgebaut|gibt es nicht mehr|gibts nicht mehr|haben wir nicht mehr|früher mal|gab es früher|"
        "hatte früher|vom vorbesitzer|längst verkauft|geschichte|über bord|im keller|in der garage|zu hause|"
        "zuhause|an land|im schuppen|auf dem vorschiff|im vorschiff|in der vorpiek|in der achterpiek|"
        "im cockpitkasten|in einer backskiste|gehört der vergangenheit|ist gestaut|liegt gestaut|weggestaut|"
        "staut in|stauen wir|staue ich|haben wir keine mehr|keine mehr|keinen mehr|ging an|gingen an|"
        "ist jetzt bei|sind jetzt bei|weitergegeben|noch nicht montiert|bestellt|noch nicht dran|erst geplant"
    ),
    "BESIDE": "neben dem|neben der|beim|am|bei dem|durch den|in der nähe des|nahe beim|knapp über dem",
    "BEGIN": "beginnt|fängt an|beginnen|startet|setzt an",
    "EXCEPT": "außer|bis auf|abgesehen von|nur",
    "OFF": (
        "abbauen|abzubauen|abnehmen|abzunehmen|abmontieren|abzumontieren|abschrauben|abzuschrauben|demontieren|"
        "demontiere|entfernen|entferne|wegnehmen|wegzunehmen|runternehmen|herunternehmen|loswerden|loszuwerden|"
        "wegbauen|abbau|ausbauen|auszubauen|verkaufen|verkaufe|versetzen|umsetzen|verlegen|aushängen|wegmachen|"
        "abmachen|abzumachen|weglassen|wegzulassen|abtrennen|absägen|opfern|hergeben|rückbauen|ausbaubar|"
        "wegfallen|entbehren|verzichten|darauf verzichten|missen|verlieren"
    ),
    "OFFED": (
        "abgebaut|abgenommen|abmontiert|abgeschraubt|demontiert|entfernt|weggenommen|runtergenommen|"
        "heruntergenommen|losgeworden|ausgebaut|verkauft|abgemacht|weggelassen|abgetrennt|abgesägt|rückgebaut|"
        "weggebaut|weggefallen|verschenkt|verschrottet|weggeworfen|entsorgt|an land gebracht|an land gegeben|"
        "ausrangiert|weggegeben|abgegeben|abgeflext|abgebrochen|abgerostet|weggerostet|abgerissen|verfault|"
        "über bord gegangen|weggekommen|losgeschraubt|zurückgelassen|verloren gegangen|rausgeworfen|rausgeflogen|"
        "weggefault|durchgefault"
    ),
    "V_TAKE": (
        "nehme|nehmen|nimmt|baue|bauen|baut|montiere|montieren|montiert|schraube|schrauben|schraubt|mache|machen|"
        "macht|schaffe|lasse|lassen|hänge|hängen|kommt|kommen|fliegt|fliegen|geht|gehen|trenne|trennen|säge|sägen"
    ),
    "V_TOOK": "nahm|nahmen|genommen|baute|bauten|gebaut|geschraubt|gemacht|kam|kamen|gekommen|geflogen|flog",
    "P_OFF": "ab|weg|runter|herunter|raus|heraus|von bord",
    "MAY": (
        "kann|können|könnte|könnten|könnt|soll|sollen|sollte|sollten|wird|werden|würde|würden|darf|dürfen|dürfte|"
        "dürften|lässt|lassen|ließe|will|wollen|möchte|möchten|muss|müssen|müsste|müssten|bereit|plane|planen|"
        "geplant|vorhaben|leicht|kannst|könntet|gerne|gern|notfalls|zur not|demnächst"
    ),
    "EASILY": (
        "ohne weiteres|ohne problem|ohne probleme|ohne schwierigkeiten|ohne großen aufwand|ohne aufwand|"
        "ohne mühe|kein problem|keine schwierigkeit|ohne werkzeug|kein großer verlust|problemlos|nicht schwer|"
        "ohne großes|nicht im weg|stört nicht|stören nicht"
    ),
    "SHIFTED": "versetzt|umgesetzt|verlegt|verschoben",
    "STAY": "bleiben|verbleiben|dableiben|stehen lassen|dranlassen|drauflassen|da bleiben|dort bleiben",
    "DOWNWARD": (
        "nach unten|weiter unten|hinunter|herunter gemessen|abwärts|runter gemessen|unterhalb der oberkante|"
        "unter der oberkante"
    ),
    "EVEN": (
        "bündig mit|genau unter|direkt unter|senkrecht unter|genau unterhalb|direkt unterhalb|lotrecht unter|"
        "exakt unter|in einer linie mit|in einer flucht mit|fluchtet mit|schließt bündig|genau lotrecht unter|"
        "fluchtend mit|auf einer linie mit|in flucht mit|senkrecht unterhalb|gerade unter"
    ),
    "TAKE_THIS": (
        "nehmen sie den|nehmt den|nehmen sie das|nehmt das|der gilt|dieser wert gilt|damit rechnen|nehmt diesen|"
        "nehmen sie diesen|das nehmen|den wert nehmen|bitte diesen|verwenden sie diesen|letzteres gilt"
    ),
    "LOATH": "ungern|nur ungern|schweren herzens|nicht so gern|schade um|wäre schade",
    "ZERO": "null",
}
