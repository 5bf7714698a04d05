"""Italian: what stands on the stern, how it moves, where it is, whether it goes."""

WORDS = {
    "O_LADDER": "scaletta|scala|scalette|scaletta bagno|scaletta da bagno|scala da bagno|scaletta di risalita",
    "O_PLATFORM": "plancetta|piattaforma|plancetta di poppa|spiaggetta|plancette|piattaforma bagno",
    "O_DAVITS": "gruette|gru|gru per il tender|gruetta|davits",
    "O_OUTBOARD": (
        "fuoribordo|motore fuoribordo|fuoribordi|supporto fuoribordo|supporto per fuoribordo|supporto motore|"
        "motore ausiliario fuoribordo|fuori bordo|staffa per il fuoribordo"
    ),
    "O_EXHAUST": "scarico|marmitta|scarico motore|scarico del motore|scarichi",
    "O_RAIL": "pulpito di poppa|pulpito|pulpiti|battagliola|draglie di poppa|balcone di poppa|pulpiti di poppa",
    "O_STAY": (
        "paterazzo|paterazzi|patarazzo|patarazzi|strallo di poppa|paterazzo sdoppiato|doppio paterazzo|"
        "sartie volanti|volanti"
    ),
    "O_BOOM": "boma di mezzana|boma|boma della mezzana|varea",
    "O_ARCH": "rollbar|roll bar|arco|arco di poppa|rollbar in acciaio|portale|traliccio|arco in acciaio|rollbar inox",
    "O_PANELS": "pannelli solari|pannello solare|pannelli|fotovoltaici|pannelli fotovoltaici",
    "O_MAST": (
        "palo radar|generatore eolico|generatore a vento|palo del radar|eolico|palo del generatore|albero radar"
    ),
    "O_PASSERELLE": "passerella|passerelle|la passerella",
    "O_BOOMKIN": "buttafuori|bompresso di poppa",
    "O_STAFF": "asta della bandiera|asta bandiera",
    "O_LOCKER": "gavone di poppa|zattera|autogonfiabile|gavone del gas",
    "FOLD": (
        "che si ribalta|che si alza|abbattibile|pieghevole|ribaltabile|pieghevoli|abbattibili|ripiegabile|"
        "si ripiega|si ribalta|si abbatte|richiudibile|reclinabile|a scomparsa|si alza|che si piega|basculante|"
        "si piega"
    ),
    "FIXED": "fissa|fisso|saldato|fissi|fisse|imbullonata|imbullonato|saldata|rigida|avvitata|bullonata|rigido",
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
        "di troppo"
    ),
    "KEEP": (
        "continuare a usare|continuare ad usare|continuare a utilizzare|non vogliamo togliere|"
        "non voglio togliere|non si tolgono|deve restare|resta|vorrei tenerla|da tenere|deve rimanere|"
        "devono restare|devono rimanere|vorrei tenere|vogliamo tenere|voglio tenere|tenerla|tenerlo|mantenere|"
        "da mantenere|vorremmo tenere|non si tocca|non si può togliere|indispensabile|non si può smontare|"
        "vogliamo mantenere|deve stare|conservare|rimane|rimangono|restano|resterà|rimarrà|resteranno|rimarranno|"
        "lasciarla|lasciarlo|lasciamo|teniamo|tengo|tenuta|tenuto|conservata|conservato|mantenuto|mantenuta|"
        "mantenerla|mantenerlo|intoccabile|irrinunciabile|non negoziabile|non se ne parla|guai a chi|"
        "non possiamo farne a meno|non posso farne a meno|ci teniamo|ci tengo|deve assolutamente restare|"
        "deve essere mantenuto|deve essere mantenuta|non si muove|non si sposta|sacra|sacro|insostituibile"
    ),
    "PORT": "sinistra|a sinistra|sinistro|lato sinistro|a sx|sx|lato di sinistra|sul lato sinistro|mancina",
    "STARBOARD": (
        "dritta|a dritta|destra|a destra|destro|lato destro|dx|a dx|lato di dritta|sul lato destro|lato dritto"
    ),
    "CENTRE": (
        "centro|al centro|mezzeria|al mezzo|linea di mezzeria|in mezzo|centrale|dal centro|nel mezzo|"
        "dalla mezzeria|asse centrale|asse della barca|centrali|in centro|centro barca"
    ),
    "EACH_SIDE": (
        "per parte|su ogni lato|su entrambi i lati|da ogni parte|per lato|ai due lati|da entrambe le parti|uno per lato"
    ),
    "PREFER": (
        "ci farebbe piacere|mi farebbe piacere|ci piacerebbe|vorremmo montarlo|vorrei montarlo|preferirei|"
        "preferiamo|preferisco|preferenza|preferibilmente|meglio|preferirei averlo|mi piacerebbe|se possibile|"
        "gradirei|vorrei averlo|preferiremmo"
    ),
    "SLIDE": "telescopica|scorrevole|estraibile|retrattile|telescopico",
    "SWING": "girevole|orientabile",
    "AVOID": "evitare|in nessun caso|assolutamente no|evitando",
    "GONE": (
        "già smontato|già smontata|nel gavone|in un gavone|riposto|riposta|stivato|stivata|teniamo nel|"
        "resta a terra|l'ho tolta|l'ho tolto|l'abbiamo tolta|l'abbiamo tolto|è stata tolta|è stato tolto|"
        "non c'è più|è stata smontata|l'ho smontata|non ci sono più|non esiste più|non abbiamo più|non ho più|"
        "sparito|sparita|spariti|scomparso|scomparsa|in garage|in cantina|a casa|a terra|sottocoperta|in cabina|"
        "nel calavele|stivati|riposti|riponiamo|lo riponiamo|la riponiamo|del vecchio proprietario|acqua passata|"
        "finito in mare|non ce l'abbiamo più|non ci sono piu"
    ),
    "BESIDE": "accanto allo|accanto al|accanto alla|vicino allo|vicino al|vicino alla|presso lo",
    "BEGIN": "comincia|inizia|a partire da",
    "EXCEPT": "tranne|a parte|eccetto|salvo|solo|soltanto",
    "OFF": (
        "togliere|toglierla|toglierlo|toglierle|toglierli|smontare|smontarla|smontarlo|smontarle|smontarli|"
        "rimuovere|rimuoverla|rimuoverlo|eliminare|eliminarla|staccare|svitare|sbullonare|spostare|spostarla|"
        "spostarlo|vendere|venderla|venderlo|sacrificare|toglierò|toglieremo|smonterò|smonteremo|rimuoveremo|"
        "tolgo|togliamo|smontiamo|smonto|sbarcare|rinunciare|rinunciarci|farne a meno|fare a meno|fare senza|"
        "venderemo|venderò|smonterei|toglierei|toglieremmo"
    ),
    "OFFED": (
        "tolto|tolta|tolti|tolte|smontato|smontata|smontati|smontate|rimosso|rimossa|rimossi|rimosse|eliminato|"
        "eliminata|eliminati|staccato|staccata|svitato|venduto|venduta|venduti|vendute|sbarcato|sbarcata|"
        "asportato|asportata|vendettero"
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
}
