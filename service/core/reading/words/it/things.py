"""Italian: what stands on the stern, how it moves, where it is, whether it goes."""

WORDS = {
    "O_LADDER": (
        "scaletta|scala|scalette|scaletta bagno|scaletta da bagno|scala da bagno|scaletta di risalita|"
        "scalette da bagno|scaletta di poppa|scala di poppa|scaletta inox|biscaglina|scaletta bagno inox|"
        "scaletta di emergenza|scalettina|scaletta a mare"
    ),
    "O_PLATFORM": (
        "plancetta|piattaforma|plancetta di poppa|spiaggetta|plancette|piattaforma bagno|piattaforma di poppa|"
        "piattaforma da bagno|plancia di poppa|plancetta poppiera|spiaggetta di poppa|pedana|pedana di poppa|"
        "pagliolo di poppa|plancetta bagno|plancia bagno|piattaforme"
    ),
    "O_DAVITS": (
        "gruette|gru|gru per il tender|gruetta|davits|gru di poppa|gruette di poppa|grue|gruette per tender|"
        "gru del tender|bracci per il tender|paranchi del tender|gru per gommone|gruette del tender"
    ),
    "O_OUTBOARD": (
        "fuoribordo|motore fuoribordo|fuoribordi|supporto fuoribordo|supporto per fuoribordo|supporto motore|"
        "motore ausiliario fuoribordo|fuori bordo|staffa per il fuoribordo|staffa motore|porta motore|"
        "portamotore|supporto del motore|supporto del fuoribordo|fuoribordo elettrico|fuoribordo di rispetto|"
        "motorino fuoribordo|staffa fuoribordo|staffa del fuoribordo"
    ),
    "O_EXHAUST": (
        "scarico|marmitta|scarico motore|scarico del motore|scarichi|scarico di poppa|scarico umido|"
        "tubo di scarico|uscita dello scarico|uscita di scarico|scarico fumi|foro di scarico|bocca di scarico|"
        "marmitta motore|scappamento"
    ),
    "O_RAIL": (
        "pulpito di poppa|pulpito|pulpiti|battagliola|draglie di poppa|balcone di poppa|pulpiti di poppa|"
        "pulpito di poppa aperto|pulpito posteriore|ringhiera di poppa|battagliole|battagliola di poppa|"
        "balconcino|balconcino di poppa|pulpito sdoppiato"
    ),
    "O_STAY": (
        "paterazzo|paterazzi|patarazzo|patarazzi|strallo di poppa|paterazzo sdoppiato|doppio paterazzo|"
        "sartie volanti|volanti|patarasso|patarassi|paterazzo doppio|strallo poppiero|patarazzo sdoppiato|"
        "sartiola|landa del paterazzo|lande del paterazzo|tendipaterazzo|zampa d'oca|paterazzo a zampa d'oca|"
        "stralli di poppa|arridatoio del paterazzo"
    ),
    "O_BOOM": (
        "boma di mezzana|boma|boma della mezzana|varea|estremità del boma|boma della randa|boma randa|varea del boma"
    ),
    "O_ARCH": (
        "rollbar|roll bar|arco|arco di poppa|rollbar in acciaio|portale|traliccio|arco in acciaio|rollbar inox|"
        "archetto|roll-bar|arco inox|arco radar|portapannelli|arco portapannelli|arco posteriore|"
        "rollbar di poppa|traliccio di poppa|struttura in acciaio a poppa|targa bar|arco solare"
    ),
    "O_PANELS": (
        "pannelli solari|pannello solare|pannelli|fotovoltaici|pannelli fotovoltaici|pannello fotovoltaico|"
        "fotovoltaico|pannello"
    ),
    "O_MAST": (
        "palo radar|generatore eolico|generatore a vento|palo del radar|eolico|palo del generatore|albero radar|"
        "palo eolico|palo dell'eolico|turbina eolica|palo antenna|alberetto|palo dell'antenna|aerogeneratore|"
        "palo per radar|antenna gps|antenna del gps|tubo con antenna|tubo dell'antenna|antenna vhf|antenna ais|"
        "stilo vhf|funghetto gps|candeliere con antenna"
    ),
    "O_PASSERELLE": "passerella|passerelle|passerella di poppa|pasarella|passerella idraulica",
    "O_BOOMKIN": "buttafuori|bompresso di poppa|buttafuori di poppa|asta di poppa|pennaccino di poppa|buttafuoco",
    "O_STAFF": (
        "asta della bandiera|asta bandiera|asta portabandiera|portabandiera|asta per la bandiera|pennone della bandiera"
    ),
    "O_OTHER": "barbecue|bbq|griglia|portacanne|ancora di poppa|musone di poppa",
    "O_LOCKER": (
        "gavone di poppa|zattera|autogonfiabile|gavone del gas|zattera di salvataggio|zatterino|"
        "gavone di poppa esterno|cassone di poppa|cassetta del gas|porta zattera"
    ),
    "EMPTY": "vuota|a vuoto|scarica|vuoto|scarico|senza carico",
    "LADEN": (
        "carica|a pieno carico|carico|in assetto di crociera|sotto le sue linee|più immersa che sul piano|"
        "sotto la linea di progetto|più bassa che sul piano"
    ),
    "SINKS": (
        "affonda|affonda di|più bassa|scende|scende di|si abbassa|più immersa|più in basso|sotto le sue linee|"
        "più immersa che sul piano|sotto la linea di progetto|più bassa che sul piano"
    ),
    "CAMBER": "bombatura|freccia|curvatura|bombato|bolzone",
    "DROP": (
        "differenza di altezza|dislivello|altezza tra|altezza fra|distanza verticale|misurato in verticale|"
        "misurati in verticale|in verticale|misurata in verticale|altezza verticale|verticalmente|"
        "da bordo a bordo|tra bordo superiore e inferiore|tra il bordo superiore e quello inferiore|"
        "fra i due bordi|tra i due bordi"
    ),
    "AXIS": "asse|l'asse|suo asse|il suo asse",
    "FOLD": (
        "che si ribalta|che si alza|abbattibile|pieghevole|ribaltabile|pieghevoli|abbattibili|ripiegabile|"
        "si ripiega|si ribalta|si abbatte|richiudibile|reclinabile|a scomparsa|si alza|che si piega|basculante|"
        "si piega|ribaltabili|si ribaltano|si piegano|pieghevole inox|ripiegabili|ripieghevole|che si ripiega|"
        "che si piega in due|si alzano|si solleva|sollevabile|che si solleva|alzabile|incernierata|incernierato|"
        "a cerniera|con cerniere|che si abbatte|ripiegata|ripiegato|ribaltata|ribaltato|si richiude|richiudibili|"
        "si può piegare|si può alzare|si può ribaltare|si può ripiegare|può essere ribaltata|può essere alzata|"
        "piegare|ribaltare|ripiegare|basculanti|a ribalta|abbattuta|si tira su|a compasso|snodata|reclinabili"
    ),
    "FIXED": (
        "fissa|fisso|saldato|fissi|fisse|imbullonata|imbullonato|saldata|rigida|avvitata|bullonata|rigido|"
        "non ribaltabile|non pieghevole|non si ripiega|non si ribalta|non si piega|non si alza|inamovibile|"
        "saldati|saldate|imbullonati|avvitato|avvitati|rigidi|rigide|imperniato|non abbattibile|fisso saldato|"
        "non richiudibile|bullonato|bullonati"
    ),
    "REMOVE": (
        "possiamo toglierla|possiamo toglierlo|posso toglierla|posso toglierlo|si può spostare|"
        "può essere spostato|può essere spostata|si possono spostare|verrà smontato|verrà smontata|"
        "verranno smontati|sarà smontato|saranno smontati|smontabile|si può togliere|rimovibile|"
        "si possono togliere|può essere tolta|può essere tolto|smontabili|si può smontare|si può eliminare|"
        "può essere rimossa|può essere rimosso|rimovibili|posso togliere|possiamo togliere|asportabile|"
        "si può rimuovere|può andare via|si possono smontare|superfluo|superflua|non indispensabile|non serve|"
        "non servono|non ci serve|amovibile|amovibili|staccabile|sganciabile|si toglie|si tolgono|si smonta|"
        "si smontano|in vendita|se ne va|può sparire|possono sparire|possono andare via|spostabile|spostabili|"
        "si stacca|sacrificabile|asportabili|toglibile|estraibile dalla|facoltativo|facoltativa|svitabile|"
        "di troppo|si sfila|si può sfilare|sfilabile|che si sfila|si sfilano|si può mettere nel gavone|"
        "non mi serve più|non ci serve più|non serve più"
    ),
    "KEEP": (
        "ci teniamo|ci tengo|siamo affezionati|sono affezionato|sono affezionata|ci siamo affezionati|"
        "non vogliamo privarcene|non ce ne vogliamo privare|continuare a usare|continuare ad usare|"
        "continuare a utilizzare|non vogliamo togliere|non voglio togliere|non si tolgono|deve restare|resta|"
        "vorrei tenerla|da tenere|deve rimanere|devono restare|devono rimanere|vorrei tenere|vogliamo tenere|"
        "voglio tenere|tenerla|tenerlo|mantenere|da mantenere|vorremmo tenere|non si tocca|non si può togliere|"
        "indispensabile|non si può smontare|vogliamo mantenere|deve stare|conservare|rimane|rimangono|restano|"
        "resterà|rimarrà|resteranno|rimarranno|lasciarla|lasciarlo|lasciamo|teniamo|tengo|tenuta|tenuto|"
        "conservata|conservato|mantenuto|mantenuta|mantenerla|mantenerlo|intoccabile|irrinunciabile|"
        "non negoziabile|non se ne parla|guai a chi|non possiamo farne a meno|non posso farne a meno|"
        "deve assolutamente restare|deve essere mantenuto|deve essere mantenuta|non si muove|non si sposta|sacra|"
        "sacro|insostituibile|non si toccano|non ci separiamo|non me ne separo|non mi separo|ci tiene|"
        "lo lascia lì|la lascia lì|li lascia lì|lo lasciamo lì|la lasciamo lì|non ne vuole sapere di toglierlo|"
        "ci serve|mi serve|ne abbiamo bisogno|ne ho bisogno|ci servono|la tengo per forza|lo tengo per forza|"
        "la tengo|lo tengo|le tengo|li tengo|la teniamo|lo teniamo"
    ),
    "PORT": (
        "sinistra|a sinistra|sinistro|lato sinistro|a sx|sx|lato di sinistra|sul lato sinistro|mancina|"
        "a sinistra dello specchio|sulla sinistra|lato sx|giardinetto di sinistra|mascone di sinistra|"
        "parte sinistra|dal lato sinistro|sul giardinetto sinistro|giardinetto sinistro|alla sinistra|"
        "lato mancino|angolo sinistro"
    ),
    "STARBOARD": (
        "dritta|a dritta|destra|a destra|destro|lato destro|dx|a dx|lato di dritta|sul lato destro|lato dritto|"
        "sulla destra|sulla dritta|lato dx|giardinetto di dritta|mascone di dritta|parte destra|dal lato destro|"
        "giardinetto destro|alla destra|angolo destro|lato di destra|sul lato di dritta|giardinetto di destra|"
        "sulla parte destra"
    ),
    "CENTRE": (
        "centro|al centro|mezzeria|al mezzo|linea di mezzeria|in mezzo|centrale|dal centro|nel mezzo|"
        "dalla mezzeria|asse centrale|asse della barca|centrali|in centro|centro barca|dall'asse|"
        "dalla mezzeria della barca|fuori centro|fuori mezzeria|dalla linea di mezzeria|asse longitudinale|"
        "dal mezzo|al centro dello specchio|proprio al centro|asse di simmetria|piano di simmetria|"
        "dalla linea centrale|linea centrale|centrata|centrato|mezzeria della barca|in mezzeria|sulla mezzeria|"
        "dal centro barca|dal centro dello specchio|decentrato|decentrata|spostata dal centro|nel centro"
    ),
    "EACH_SIDE": (
        "per parte|su ogni lato|su entrambi i lati|da ogni parte|per lato|ai due lati|da entrambe le parti|"
        "uno per lato|da ambo i lati|su ambo i lati|uno per parte|a destra e a sinistra|a dritta e a sinistra|"
        "sui due lati|da entrambi i lati|per ciascun lato|su ciascun lato|destra e sinistra|dritta e sinistra|"
        "uno per banda|da una parte e dall'altra|da ogni lato|a ogni lato|per parte dalla mezzeria|"
        "da ciascun lato"
    ),
    "PREFER": (
        "ci farebbe piacere|mi farebbe piacere|ci piacerebbe|vorremmo montarlo|vorrei montarlo|preferirei|"
        "preferiamo|preferisco|preferenza|preferibilmente|meglio|preferirei averlo|mi piacerebbe|se possibile|"
        "gradirei|vorrei averlo|preferiremmo|preferirebbe|preferirebbero|vorrebbe averlo|gradirebbe|gradirebbero|"
        "vorrebbero|vorremmo|vorrei|vogliamo|voglio|desideriamo|desidero|ci andrebbe meglio|mi andrebbe meglio|"
        "andrebbe meglio|ci va meglio|sarebbe meglio|tiene al montaggio|lo vuole|lo vorrebbe|lo vorrei|"
        "lo vogliamo|lo vorremmo|lo voglio|lo vogliono|mi va meglio|meglio per noi|meglio per me|se si può|"
        "potendo|possibilmente"
    ),
    "SLIDE": (
        "telescopica|scorrevole|estraibile|retrattile|telescopico|a scorrimento|scorrevoli|telescopiche|"
        "estraibili|si estrae|allungabile|retrattili|che scorre|a scomparsa nel|estensibile|a cannocchiale|"
        "rientrabile|che si estrae|tipo cassetto|come un cassetto|a cassetto|esce tipo"
    ),
    "SWING": (
        "girevole|orientabile|girevoli|orientabili|ruotabile|che ruota|brandeggiabile|brandeggiabili|si gira|"
        "rotante|rotanti|pivottante|spazza|brandeggia|oscilla"
    ),
    "AVOID": "evitare|in nessun caso|assolutamente no|evitando",
    "GONE": (
        "non ci sono più|non c'è più|già smontato|già smontati|già smontata|già smontate|già tolto|già tolti|"
        "già tolta|già tolte|già venduto|già venduti|già vendute|già venduta|già sbarcate|già sbarcati|"
        "non l'abbiamo più|non le abbiamo più|nel gavone|in un gavone|riposto|riposta|stivato|stivata|"
        "teniamo nel|resta a terra|l'ho tolta|l'ho tolto|l'abbiamo tolta|l'abbiamo tolto|è stata tolta|"
        "è stato tolto|è stata smontata|l'ho smontata|non esiste più|non abbiamo più|non ho più|sparito|sparita|"
        "spariti|scomparso|scomparsa|in garage|in cantina|a casa|a terra|sottocoperta|in cabina|nel calavele|"
        "stivati|riposti|riponiamo|del vecchio proprietario|acqua passata|finito in mare|non ce l'abbiamo più|"
        "non ci sono piu|dati a|regalati a|dato a|non ancora montato|ordinato|in progetto"
    ),
    "BESIDE": "accanto allo|accanto al|accanto alla|vicino allo|vicino al|vicino alla|presso lo",
    "BEGIN": "comincia|inizia|a partire da|parte da|parte a|inizia a",
    "EXCEPT": "tranne|a parte|eccetto|salvo|solo|soltanto",
    "OFF": (
        "togliere|toglierla|toglierlo|toglierle|toglierli|smontare|smontarla|smontarlo|smontarle|smontarli|"
        "rimuovere|rimuoverla|rimuoverlo|eliminare|eliminarla|staccare|svitare|sbullonare|spostare|spostarla|"
        "spostarlo|vendere|venderla|venderlo|sacrificare|toglierò|toglieremo|smonterò|smonteremo|rimuoveremo|"
        "tolgo|togliamo|smontiamo|smonto|sbarcare|rinunciare|rinunciarci|farne a meno|fare a meno|fare senza|"
        "venderemo|venderò|smonterei|toglierei|toglieremmo|perdere|perderla|perderlo"
    ),
    "OFFED": (
        "tolto|tolta|tolti|tolte|smontato|smontata|smontati|smontate|rimosso|rimossa|rimossi|rimosse|eliminato|"
        "eliminata|eliminati|staccato|staccata|svitato|venduto|venduta|venduti|vendute|sbarcato|sbarcata|"
        "asportato|asportata|vendettero|sbarcati|sbarcate|regalato|regalata|regalati|regalate|buttato|buttata|"
        "buttati|buttate|rottamato|dato via|data via|dati via|tagliato|tagliata|tagliati|segato|segata|marcito|"
        "marcita|ceduto|ceduti|rivenduto|gettato|strappato|venduti via|lasciato a terra|lasciati a terra"
    ),
    "MAY": (
        "può|possono|potrebbe|potrebbero|potremmo|potrei|possiamo|posso|sarà|saranno|sarebbe|verrà|verranno|"
        "viene|vengono|vorrei|voglio|vogliamo|vorremmo|disposto|disposti|previsto|possibile|facile|facilmente|si|"
        "dovrà|va|vanno|intendo|pensiamo|penso"
    ),
    "EASILY": (
        "senza problemi|senza problema|senza difficoltà|nessun problema|senza attrezzi|senza fatica|"
        "non è un problema|non dà fastidio|non disturba|non è d'intralcio"
    ),
    "SHIFTED": "spostato|spostata|spostati|spostate",
    "STAY": "restare|rimanere|lasciare|tenere",
    "DOWNWARD": (
        "scendendo|verso il basso|più in basso|più sotto|scendendo di|sotto il bordo superiore|in discesa|a scendere"
    ),
    "EVEN": (
        "a piombo con|a piombo sotto|esattamente sotto|proprio sotto|sulla verticale del|sulla verticale dello|"
        "allineato con|allineata con|a filo con|a filo dello|in linea con|perfettamente sotto|giusto sotto|"
        "a perpendicolo sotto|sulla stessa verticale"
    ),
    "TAKE_THIS": (
        "prendete quello|prendete questa|prenda quello|usate quello|tenete quello|vale quello|vale quella|"
        "fa fede|tenga quello|considerate quello|prendete quella|usi quello"
    ),
    "LOATH": "malvolentieri|dispiacerebbe|spiacerebbe|dispiace|peccato|controvoglia|seccherebbe",
    "ZERO": "nulla|nullo|zero",
}
