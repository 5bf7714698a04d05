"""German: what is measured, from where, which way and by what."""

WORDS = {
    "LENGTH": "lang",
    "HEIGHT": (
        "spiegelhöhe|heckhöhe|"
        "höhe|hoch|freibord|hohen|freibordhöhe|höher|hohes|hoher|höhen|höhenmaß|in der höhe|höhe über|hochgezogen"
    ),
    "WIDTH": (
        "spiegelbreite|breite|breit|breiter|breite oben|spiegelbreite oben|breit oben|breiten|breites|querab|"
        "von seite zu seite|breite des spiegels|heckbreite|in der breite|breitenmaß|quer gemessen|"
        "von ecke zu ecke|querschiffs"
    ),
    "THICK": (
        "spiegeldicke|spiegelstärke|dick|dicke|stärke|materialstärke|wandstärke|wanddicke|laminatstärke|"
        "laminatdicke|plattendicke|plattenstärke|blechstärke|starkes|stark|dickes|dicken|dicker|starker|starke|"
        "wandstärken|spiegelwandstärke|rumpfdicke|materialdicke|heckstärke|bordwandstärke|blechdicke|"
        "schalenstärke|stärken|dickem"
    ),
    "DEPTH": (
        "von vorn nach achtern|längs gemessen|in längsrichtung|von vorn bis hinten|längsschiffs|"
        "von vorne nach hinten|von vorn nach hinten|von vorne bis hinten|tiefe|tief"
    ),
    "LOA": (
        "lüa|länge über alles|rumpflänge|bootslänge|gesamtlänge|l ü a|länge ü a|länge|gesamte länge|ü.a|"
        "länge über alles von|schiffslänge|über alles|l.ü.a|länge des bootes|länge gesamt|yachtlänge|decklänge|"
        "loa|bootslänge über alles"
    ),
    "LWL": "lwl|länge wasserlinie|wasserlinienlänge|l wl|länge in der wasserlinie|lwl länge",
    "BEAM": (
        "größte breite|bootsbreite|büa|breite über alles|b ü a|max breite|maximale breite|breite ü a|bmax|"
        "größter breite|rumpfbreite|schiffsbreite|b.ü.a|breiteste stelle|breitester|breite max|gesamtbreite|"
        "an der breitesten stelle|größten breite|bootsbreite von|breite ü.a"
    ),
    "DRAFT": (
        "tg|tiefg|tiefgang|tiefgang von|tiefgangs|geht|tiefgänge|tiefgang max|kieltiefe|geht tief|hat tiefgang|"
        "tiefgang mit"
    ),
    "DISPLACEMENT": (
        "verdrängung|gewicht|wiegt|deplacement|verdrängt|wiegen|schwer|schweres|segelfertig|gesamtgewicht|"
        "bootsgewicht|eigengewicht|verdraengung|wasserverdrängung|kran|gewogen|bringt es auf|leergewicht|"
        "kranwaage|segelgewicht|verdrängt rund|fahrtengewicht|reisegewicht|einsatzgewicht|bootsgewicht von|"
        "gesamtgewichts|auf der waage|kranzettel|segelklar|deplacements|kranwaage zeigte|tonnage|rennfertig|wog"
    ),
    "BALLAST": "ballast|motor|beiboot|kiel|ballastanteil|bleikiel|dingi|dinghy|maschine|beiboots|tanks|anker|crew",
    "RAKE": (
        "spiegelneigung|spiegelwinkel|neigung|winkel|geneigt|neigungswinkel|neigung des spiegels|spiegel neigung|"
        "schräge|schräg|rake|aus der senkrechten|gegen die senkrechte|zur senkrechten|von der senkrechten|"
        "aus dem lot|gegenüber der senkrechten|neigungen|neigungsgrad|heckneigung|heckspiegelneigung|"
        "schrägstellung|schrägung|anstellwinkel|schräger|winkel zur senkrechten"
    ),
    "LEAN": (
        "geneigt|neigt|neigt sich|fällt|neigen|lehnt|kippt|gekippt|schräg|schräge|hängt über|fallend|überhängt|"
        "geneigter|geneigten|neigend|fällt zurück|lehnt sich|steht schräg|geneigte|geneigtes|gekippte|gekippter|"
        "fallende|fallender|schräggestellt|ist gekippt|abgeschrägt|schräger|schräges"
    ),
    "TURN": (
        "nach jeder seite|je seite|ruderausschlag|ausschlag|nach beiden seiten|zu jeder seite|pro seite|"
        "auf jede seite|ruderlage|maximaler ausschlag|anschlag|nach beiden|maximaler ruderausschlag|"
        "max. ausschlag|ruderwinkel|ruderanschlag|ruderanschläge|schlägt aus|hartlage|volle ruderlage|ausschläge|"
        "zu beiden seiten|ausschlagen|maximalausschlag|einschlag|maximaler ruderwinkel|je richtung|"
        "auf beide seiten|jeweils nach beiden|beidseits"
    ),
    "FORWARD": (
        "vor ok spiegel|vor ok|vor oberkante|vor spiegel|vor spiegeloberkante|ok vorn|nach vorn|nach vorne|"
        "vor der|vor dem|weiter vorn|weiter vorne|vorlich|nach vorn geneigt|vorne|vorn|weiter nach vorn|"
        "weiter nach vorne|bugwärts|richtung bug|vorderhalb|vor dem heck|nach vorn zu|vorwärts|zum bug|"
        "zum bug hin|bugseitig|weiter vorne als|weiter vorn als|davor|nach innen|ins schiff|richtung cockpit|"
        "vor dem spiegel|vor der spiegeloberkante|vorlicher|vorne liegend|cockpitwärts|vor der oberkante|"
        "vor spiegelkante|vor heck|vor heckspiegel|vor der spiegelkante|vor achtersteven|vor steven|vorm spiegel|"
        "vorm heck|vor op|vor dem steven|vor dem achtersteven|vor der hinterkante|kurz vor|innerhalb des"
    ),
    "AFT": (
        "hinter ok spiegel|hinter ok|hinter oberkante|hinter spiegel|hinter spiegeloberkante|ok achtern|"
        "nach achtern|nach hinten|achtern|weiter achtern|weiter hinten|hinter dem|hinter der|heckwärts|"
        "nach hinten geneigt|hinten|richtung heck|weiter nach hinten|weiter nach achtern|hinter|achterlich|"
        "achteraus|achterlicher|achterlicher als|weiter hinten als|heckseitig|weiter achterlich|hinter ihm|"
        "dahinter|nach außen|weiter achtern als|achter dem|achterwärts|rückwärts|hinterm|über den spiegel hinaus|"
        "hinter den spiegel|nach achteraus|achteraus vom|hinter der oberkante|hinter heck|achter spiegel|"
        "hinter heckspiegel|hinter steven|hinterm spiegel|hinterm heck"
    ),
    "TOP": (
        "oberen ecke|obere ecke|oberer ecke|ecke oben|ok spiegel|ok heck|ok heckspiegel|ok transom|"
        "vor ok spiegel|hinter ok spiegel|ok achtern|ok vorn|ruderkopf|kopf des ruders|kopf vom ruder|"
        "ruderoberkante|oberkante ruder|kopf des stevens|stevenkopf|kopf des achterstevens|spiegelkante|"
        "kante des spiegels|rand des spiegels|bis zum deck|bis deck|bis an deck|reicht bis|geht bis|"
        "geht hoch bis|stevenoberkante|spiegeloberkante|oberkante|oben|obere kante|oberkante spiegel|oberer rand|"
        "oberen rand|oberkanten|obere ende|oberen kante|oberste kante|oberen ende|oberkante des spiegels|"
        "oberkante vom spiegel|deckskante|am kopf|oberrand|spiegel oben|obersten|breite oben|spiegelbreite oben|"
        "breit oben|oberste stelle|höchster punkt|höchste stelle|obere abschluss|oberer abschluss|oberes ende|"
        "am oberen rand|ganz oben|spiegelkopf|deckskante achtern|deckshöhe|obersten punkt|obere spiegelkante|"
        "oberen spiegelkante|oberer|obere|oberem rand|oberseite|heckoberkante|heckspiegeloberkante|"
        "oberkante heck|oberkante des hecks|deck achtern|deckshaus|spiegelrand|oberster rand|höchsten punkt|"
        "am höchsten punkt|heckspiegelkante|achterstevenkopf|vom deck|deck|ab deck|vom deck bis"
    ),
    "BOTTOM": (
        "uk spiegel|uk heck|uk heckspiegel|ruderunterkante|unterkante ruder|fuß des ruders|ruderfuß|"
        "reicht hinunter bis|reicht herunter bis|geht hinunter bis|spiegelunterkante|unterkante|unten|"
        "untere kante|unterer rand|unteren rand|untere ende|unteren kante|unterste kante|unterkante des spiegels|"
        "unterkante vom spiegel|unterrand|spiegel unten|fuß des spiegels|unteren ende|unterste stelle|"
        "tiefster punkt|tiefste stelle|unteres ende|am fuß|spiegelfuß|untere spiegelkante|unteren spiegelkante|"
        "unterseite|unterer|untere|unterste|ganz unten|unterster punkt|tiefsten punkt|heckunterkante|"
        "heckspiegelunterkante|unterkante heck|unterkante des hecks|unterster rand"
    ),
    "WATER": (
        "wasserlinie|wasser|wasserspiegel|cwl|kwl|konstruktionswasserlinie|schwimmwasserlinie|wassers|"
        "wasseroberfläche|dem wasser|des wassers|wl|wasserlinie aus|freibord|freibordhöhe|unter wasser|"
        "unter der wasserlinie|unterhalb der wasserlinie|im wasser|unter cwl|unterm wasser|"
        "auf höhe der wasserlinie|genau auf der wasserlinie|in der wasserlinie|auf der wasserlinie|"
        "an der wasserlinie|berührt das wasser|in höhe der wasserlinie|schwimmlinie|wasserniveau|"
        "konstruktionslinie|wasserhöhe|seespiegel|meeresspiegel|wasserstand|schwimmebene|über wl|überm wasser|"
        "wasserlinien|wasserkante|dwl|schwimmlage|ruhewasserlinie|am wasser|wassernähe|ab wasser|vom wasser|"
        "bis zum wasser|freibord achtern|unter der oberfläche|unter der wasseroberfläche|"
        "unterhalb der wasseroberfläche|unter wl|unter der wl|eingetaucht|taucht ein|eintaucht"
    ),
    "AT_WATER": (
        "auf höhe der wasserlinie|genau auf der wasserlinie|in der wasserlinie|auf der wasserlinie|"
        "an der wasserlinie|berührt das wasser|in höhe der wasserlinie"
    ),
    "JUST_TOUCH": "berührt gerade|bündig|taucht gerade ein|in höhe|auf wasserhöhe|schließt ab",
    "BELOW": (
        "drunter|tiefer|unter wasser|unter der wasserlinie|unterhalb|unterhalb der wasserlinie|im wasser|"
        "unter cwl|unterm wasser|getaucht|taucht|darunter|unter der oberfläche|unter der wasseroberfläche|"
        "unterhalb der wasseroberfläche|unter wl|unter der wl|eingetaucht|taucht ein|eintaucht"
    ),
    "BOOTSTRIPE": "wasserpass|wasserpasses|wasserpassstreifen|zierstreifen",
    "TOERAIL": (
        "fußreling|schanzkleid|fußleiste|lochreling|süll|scheuerleiste|schandeck|relingleiste|lochschiene|"
        "lochfußreling|reling­leiste|deckleiste|teakleiste|schandeckel|schandeckels|holzleiste|handlauf|"
        "fußrelings|fußreelings"
    ),
    "COCKPIT": (
        "cockpitboden|plicht|plichtboden|cockpitbodens|kante des cockpitbodens|cockpitsohle|bodenkante|"
        "cockpitbodenkante"
    ),
    "STEP": (
        "badestufe|stufe|heckstufe|trittstufe|badestufen|eingeformte stufe|angeformte stufe|"
        "integrierte* badeplattform|eingeformte* badeplattform|angeformte* badeplattform|eingeformte badestufe|"
        "integrierte badestufe"
    ),
    "ENDS": "endet|hört auf|enden|endend|abschließt|ist zu ende|aufhört|schließt ab|endete|hört",
    "STICK_OUT": (
        "ragt|steht über|ragt hinaus|steht|steht heraus|ragt heraus|steht hervor|überstand|übersteht|hinausragt|"
        "herausragt|heraussteht|reicht|hinaus|steht vor|absteht|steht ab|ragt nach|ragt aus|ragend|steht raus|"
        "steht hinaus|ragt raus|ragt vor|ragen|stehen über|hinausragend|überstehend|hinausstehend|überragt|"
        "springt vor|schaut heraus|schaut raus|guckt raus|guckt heraus|kommt heraus|überstehen|auskragt|"
        "kragt aus|hinterragt|ausladung|steht nach|geht nach hinten|reicht nach hinten|reicht hinter"
    ),
    "M_TAPE": (
        "bandmaß|maßband|zollstock|meterstab|gliedermaßstab|rollmaß|metermaß|maßstab|messband|mit dem maßband|"
        "mit dem zollstock|zollstocks|mit bandmaß|mit dem metermaß|mit dem rollmeter|rollbandmaß|rollmeter|"
        "schneidermaßband|maßbandes|maßstock|meterstock|gliedermaß|mit dem meter"
    ),
    "M_PHONE": (
        "handy|smartphone|handy app|wasserwaagen app|wasserwaage im handy|mit dem handy|smartphone app|telefon|"
        "handywasserwaage|app|handys|iphone|wasserwaage des handys|wasserwaagenapp|neigungsapp|neigungs app|"
        "winkel app|winkelapp|mit dem smartphone|per handy|mit handy|telefon app|telefonwasserwaage|"
        "handy wasserwaage|smartphone wasserwaage|wasserwaage vom handy|mobiltelefon app|handy neigungsmesser"
    ),
    "M_INCL": "neigungsmesser|inklinometer|winkelmesser|wasserwaage|digitale wasserwaage|gradmesser",
    "M_LASER": "laser|lasermessgerät|entfernungsmesser",
    "M_DRAWING": (
        "laut plan|laut dem plan|laut den plänen|auf dem plan|auf den plänen|laut bauplan|nach dem plan|"
        "zeichnung|zeichnungen|linienriss|werftplan|bauplan|baupläne|riss|werftzeichnung|plänen|werftplänen|"
        "bauzeichnung|konstruktionszeichnung|konstruktionsplan|konstruktionspläne|linienplan|linienrisse|"
        "zeichnung der werft|werftpläne|rissen|bauplänen|segelplan|segelriss|generalplan|plan der werft|"
        "seitenriss|aus der zeichnung|aus dem plan|aus dem riss|zeichnungsmaß|werftrisse|bauplans|aus den plänen|"
        "einrichtungsplan"
    ),
    "M_BROCHURE": (
        "prospekt|datenblatt|laut werft|werftangabe|herstellerangabe|laut hersteller|katalog|handbuch|"
        "werftangaben|bootsbrief|messbrief|prospektes|laut prospekt|im prospekt|aus dem prospekt|bootspapiere|"
        "laut papieren|nach papieren|herstellerangaben|werksangabe|werksangaben|angabe der werft|"
        "angaben der werft|nach werftangabe|lt werft|lt prospekt|laut datenblatt|laut handbuch|"
        "bedienungsanleitung|bordbuch|bordhandbuch|verkaufsprospekt|broschüre|laut messbrief|messbriefs|"
        "testbericht|im testbericht|steht im handbuch|lt hersteller|schiffspapiere|laut schiffspapieren|"
        "schiffsmessbrief"
    ),
    "M_GUESS": (
        "geschätzt|geschätzte|geschätzten|schätzungsweise|schätze|nach augenmaß|augenmaß|über den daumen|gepeilt|"
        "grob geschätzt|schätzung|pi mal daumen|grob über den daumen|frei schnauze|aus dem gedächtnis|geschaetzt|"
        "nur geschätzt|mit dem auge|nach gefühl|schätzwert|schaetze|schätzungen|übern daumen|über'n daumen|"
        "nach augenschein|mit bloßem auge|dem auge nach|per augenmaß|würde schätzen|aus der erinnerung|vom gefühl"
    ),
    "M_PHOTO": "foto|fotos|vom foto|aus dem foto|bild",
    "MEASURED": "gemessen|maße|messungen|messung|abmessungen|gemessene|messen|maß|ausgemessen",
    "PLUMB_LINE": (
        "lot|senklot|senkblei|lotschnur|lotes|lots|schnur mit gewicht|lotfaden|maurerlot|bleilot|senkschnur|"
        "gelotet|schnur|gewicht an einer schnur|faden mit|faden"
    ),
    "GIVE_TAKE": (
        "plus minus|plus oder minus|toleranz|ungenauigkeit|mit einer unsicherheit von|genauigkeit|"
        "mit einer genauigkeit von|genauigkeit von|fehler von|mit einer toleranz von|toleranz von|"
        "unsicherheit von|mehr oder weniger auf|hin oder her um|plusminus|+/-|messfehler von|messgenauigkeit|"
        "mit einem fehler von"
    ),
    "WITHIN": "genau",
}
