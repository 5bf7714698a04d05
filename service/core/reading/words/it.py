"""Italian."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary

VOCABULARY = Vocabulary(
    language="it",
    common="il la lo i gli le di del della dello e è un una per con che non in al alla mio mia vostro nostro ho abbiamo "
    "vorrei buongiorno si sul sulla sono quale più da anche grazie uno nel nella dal dalla questo questa ha "
    "hanno vi ci mi come cosa suo",
    numbers=Numbers(
        ones="zero un/uno/una due tre quattro cinque sei sette otto nove dieci undici dodici tredici quattordici "
        "quindici sedici diciassette diciotto diciannove",
        tens="venti trenta quaranta cinquanta sessanta settanta ottanta novanta",
        joint="{ten}{one}",
        hundred="cento",
        half="mezzo/mezza",
        and_="e",
        whole="ventuno=21 ventotto=28 trentuno=31 trentotto=38 quarantuno=41 quarantotto=48 tre_quarti_di=0.75",
    ),
    concepts={
        "LENGTH": "fuori tutto|lunga|di lunghezza|lungo",
        "M_TAPE": "metro a nastro|metro|con il metro|rotella metrica|nastro|flessometro|fettuccia|metro da falegname|"
        "cordella",
        "DEPTH": "profondità|profondo|profonda|di profondità",
        "TRANSOM": "bordo dello specchio|filo dello specchio|"
        "specchio|specchio di poppa|poppa|dello specchio|lo specchio|poppiero|specchi|specchio poppiero|"
        "specchio poppa|bordo superiore dello specchio|piede dello specchio|inclinazione dello specchio|"
        "angolo dello specchio|larghezza dello specchio|spessore dello specchio|specchio rovesciato|"
        "specchio negativo|poppa rovescia|poppa inversa",
        "POST": "testa del dritto di poppa|dritto di poppa|ruota di poppa|dritto|testa del dritto",
        "TOP": "testa del dritto|testa del dritto di poppa|"
        "bordo dello specchio|filo dello specchio|"
        "fino alla coperta|alla coperta|al piano di coperta|"
        "arriva fino a|sale fino a|arriva a|"
        "bordo superiore|parte superiore|parte alta|in alto|sommità|bordo alto|parte di sopra|lato superiore|"
        "spigolo superiore|il bordo superiore|bordo superiore dello specchio|la parte alta|lato alto|superiore|"
        "quello superiore",
        "BOTTOM": "scende a|scende fino a|"
        "bordo inferiore|parte inferiore|parte bassa|lato inferiore|spigolo inferiore|bordo basso|in basso|"
        "parte di sotto|lato basso|il bordo inferiore|piede dello specchio|la parte bassa|inferiore|"
        "quello inferiore",
        "WATER": "acqua|all'acqua|sull'acqua|galleggiamento|linea di galleggiamento|dall'acqua|l'acqua|il galleggiamento|"
        "pelo dell'acqua|superficie|livello dell'acqua|superficie dell'acqua|pelo d'acqua|linea d'acqua|"
        "sul galleggiamento|bordo libero|sotto il galleggiamento|sotto la linea di galleggiamento|sotto acqua|"
        "sotto l'acqua|sott acqua|in acqua|a pelo d'acqua|al pelo dell'acqua|a filo d'acqua|sfiora l'acqua|"
        "tocca l'acqua|a filo dell'acqua|al galleggiamento|a livello dell'acqua|al livello dell'acqua|"
        "sul pelo dell'acqua",
        "TOERAIL": "falchetta|falchette|capodibanda|trincarino|battagliola bassa|bottazzo|impavesata",
        "STEP": "gradino|gradini|scalino|gradino stampato|scalini",
        "HULL": "lamiera|tavolato|scafo|fasciame|carena|laminato|dello scafo",
        "BOAT": "barca|yacht|imbarcazione|barca a vela|veliero|ketch|sloop|natante|cutter|barche",
        "HEIGHT": "altezza|alto|alta|di altezza|bordo libero",
        "WIDTH": "larghezza|largo|larga|di larghezza|larghezza dello specchio|larghi",
        "THICK": "spessore|spesso|di spessore|spessa|spessori|spessore dello specchio|spessore dello scafo",
        "LOA": "lunghezza|"
        "lunghezza f t|lunghezza fuori tutto|lft|lunghezza totale|l f t|lunghezza fuoritutto|fuori tutto|loa",
        "LWL": "lunghezza al galleggiamento|lwl|lunghezza galleggiamento|lunghezza alla linea di galleggiamento",
        "BEAM": "baglio|baglio massimo|larghezza massima|larghezza max|baglio max",
        "DRAFT": "pescaggio|pesca|immersione|pescaggi|pesca circa",
        "DISPLACEMENT": "dislocamento|peso|pesa|disloca|dislocante|pesa circa|peso a pieno carico|pesare|pesata|gru di pesatura",
        "BALLAST": "zavorra|motore|tender|bulbo|chiglia|gommone|ancora|equipaggio|motori",
        "RAKE": "inclinazione|angolo|inclinato|inclinazione dello specchio|pendenza|angolo dello specchio|slancio|"
        "gradi di inclinazione",
        "LEAN": "inclinato|inclinata|pende|inclina|si inclina|pendente|cade|inclinati|obliquo|inclinazione verso|"
        "si appoggia|ha un'inclinazione",
        "FORWARD": "in avanti|verso prua|più avanti|a proravia|più a prua|a prua|avanti|davanti|verso la prua|più avanzato|"
        "a proravia dello|in avanti di|anteriormente|davanti allo|verso avanti",
        "AFT": "all'indietro|verso poppa|più indietro|a poppavia|dietro|più a poppa|a poppa|indietro|verso la poppa|"
        "più arretrato|arretrato|dietro lo|dietro allo|oltre lo specchio|verso dietro|all'esterno",
        "PLUMB": "è dritto|è diritto|"
        "verticale|a piombo|verticali|quasi verticale|dritto a piombo|perpendicolare|diritto",
        "REVERSE": "rovesciato|negativo|invertito|specchio rovesciato|rovescia|rovescio|negativa|inversa|specchio negativo|"
        "poppa rovescia|invertita|poppa inversa|inverso|rovesciata|inclinazione negativa",
        "COUNTER": "poppa a sbalzo|poppa slanciata|positivo|positiva|classico|classica|poppa tradizionale|a sbalzo|"
        "slanciata|slancio di poppa|poppa classica",
        "SCOOP": "plancetta integrata|"
        "poppa con gradini|gradini stampati|spiaggetta ricavata|gradino ricavato|poppa a gradini|"
        "spiaggetta integrata|gradino nello scafo|gradino stampato|scalette ricavate",
        "OPEN": "poppa aperta|poppa è aperta|specchio aperto|aperta|aperto|specchio abbattibile|poppa abbattibile|"
        "senza specchio|poppa completamente aperta|specchio ribaltabile|pannello ribaltabile|portellone",
        "DOUBLE": "doppia prua|poppa a canoa|poppa norvegese|doppia punta|poppa appuntita|a canoa|poppa tonda|due prue|"
        "poppa a punta|poppa stellata|doppia prora",
        "RUDDER": "timone esterno|timone appeso|"
        "timone|pala del timone|pala|timoni|pale del timone|due timoni|doppio timone|doppia pala|del timone",
        "HUNG_OUT": "appeso al dritto di poppa|"
        "timone appeso|appeso allo specchio|appeso|timone esterno|appeso alla poppa|sullo specchio|"
        "timone allo specchio|montato sullo specchio|appeso al dritto|esterno|fissato allo specchio|"
        "infulcrato sullo specchio|incernierato allo specchio|timone fuoribordo|sul dritto di poppa|"
        "appeso allo specchio di poppa|timone appeso allo specchio",
        "HUNG_IN": "a spada|timone a spada|timone sospeso|semicompensato|compensato|con skeg|sotto lo scafo|"
        "appeso sotto lo scafo|a pala sospesa|dietro lo skeg|dietro la chiglia|sotto la carena",
        "UNDER": "sulla chiglia|sul bulbo|"
        "sotto lo scafo|sospeso|con skeg|skeg|sotto la barca|sotto la poppa|su skeg|sotto scafo",
        "TRAILING": "bordo d'uscita|bordo di uscita|bordo di poppa|filo d'uscita|bordo poppiero|bordo d'uscita del timone|"
        "spigolo poppiero|bordo posteriore",
        "STOCK": "asse del timone|asse timone|asta del timone|losca|asse della pala",
        "STICK_OUT": "sporge|sporgono|sporgente|esce|fuoriesce|aggetta|sporgenza|si protende",
        "TURN": "per lato|angolo massimo|per parte|angolo di barra|a ogni lato|da ogni lato|da ciascun lato|corsa",
        "GRP": "vetroresina|poliestere|vtr|fibra|plastica|resina|vetro",
        "SOLID": "niente sandwich|senza sandwich|"
        "pieno|laminato pieno|massiccio|piena|massiccia|laminato massiccio|monolitico|vetroresina piena|"
        "laminato singolo|vetroresina massiccia|solido|monolitica",
        "CORED": "sandwich|balsa|balsa sandwich|schiuma|anima|con anima|in sandwich|espanso|termanto",
        "WOOD": "compensato marino|legno|in legno|mogano|compensato|lamellare|rovere|iroko|di legno",
        "ALU": "alluminio|in alluminio",
        "STEEL": "acciaio|in acciaio|ferro|lamiera|di acciaio",
        "O_LADDER": "scaletta|scala|scalette|scaletta bagno|scaletta da bagno|scala da bagno|scaletta di risalita",
        "O_PLATFORM": "plancetta|piattaforma|plancetta di poppa|spiaggetta|plancette|piattaforma bagno",
        "O_DAVITS": "gruette|gru|gru per il tender|gruetta|davits",
        "O_OUTBOARD": "fuoribordo|motore fuoribordo|fuoribordi|supporto fuoribordo|supporto per fuoribordo|supporto motore|"
        "motore ausiliario fuoribordo|fuori bordo|staffa per il fuoribordo",
        "O_EXHAUST": "scarico|marmitta|scarico motore|scarico del motore|scarichi",
        "O_RAIL": "pulpito di poppa|pulpito|pulpiti|battagliola|draglie di poppa|balcone di poppa|pulpiti di poppa",
        "O_STAY": "paterazzo|paterazzi|patarazzo|patarazzi|strallo di poppa|paterazzo sdoppiato|doppio paterazzo|"
        "sartie volanti|volanti",
        "O_BOOM": "boma di mezzana|boma|boma della mezzana|varea",
        "O_ARCH": "rollbar|roll bar|arco|arco di poppa|rollbar in acciaio|portale|traliccio|arco in acciaio|rollbar inox",
        "O_PANELS": "pannelli solari|pannello solare|pannelli|fotovoltaici|pannelli fotovoltaici",
        "O_MAST": "palo radar|generatore eolico|generatore a vento|palo del radar|eolico|palo del generatore|albero radar",
        "O_PASSERELLE": "passerella|passerelle|la passerella",
        "FOLD": "che si ribalta|che si alza|"
        "abbattibile|pieghevole|ribaltabile|pieghevoli|abbattibili|ripiegabile|si ripiega|si ribalta|si abbatte|"
        "richiudibile|reclinabile|a scomparsa|si alza|che si piega|basculante|si piega",
        "FIXED": "fissa|fisso|saldato|fissi|fisse|imbullonata|imbullonato|saldata|rigida|avvitata|bullonata|rigido",
        "REMOVE": "farne a meno|possiamo toglierla|possiamo toglierlo|posso toglierla|posso toglierlo|"
        "si può spostare|può essere spostato|può essere spostata|si possono spostare|"
        "verrà smontato|verrà smontata|verranno smontati|sarà smontato|saranno smontati|"
        "smontabile|si può togliere|rimovibile|togliere|si possono togliere|può essere tolta|può essere tolto|"
        "smontabili|si può smontare|eliminare|si può eliminare|può essere rimossa|può essere rimosso|rimovibili|"
        "posso togliere|possiamo togliere|asportabile|smontare|si può rimuovere|rimuovere|toglierla|toglierlo|"
        "può andare via|si possono smontare",
        "KEEP": "continuare a usare|continuare ad usare|continuare a utilizzare|"
        "non vogliamo togliere|non voglio togliere|non si tolgono|"
        "deve restare|resta|vorrei tenerla|da tenere|deve rimanere|devono restare|devono rimanere|vorrei tenere|"
        "vogliamo tenere|voglio tenere|tenerla|tenerlo|mantenere|da mantenere|vorremmo tenere|non si tocca|"
        "non si può togliere|indispensabile|non si può smontare|vogliamo mantenere|deve stare|conservare",
        "YES": "sì|si",
        "NOT": "non|nessun|nessuna|senza|niente|né|nulla|nessuno|manca|assente|non c'è|non ci sono|mai|no|neanche|"
        "non abbiamo|non ho",
        "PORT": "sinistra|a sinistra|sinistro|lato sinistro|a sx|sx|lato di sinistra|sul lato sinistro|mancina",
        "STARBOARD": "dritta|a dritta|destra|a destra|destro|lato destro|dx|a dx|lato di dritta|sul lato destro|lato dritto",
        "CENTRE": "centro|al centro|mezzeria|al mezzo|linea di mezzeria|in mezzo|centrale|dal centro|nel mezzo|"
        "dalla mezzeria|asse centrale|asse della barca|centrali|in centro|centro barca",
        "EACH_SIDE": "per parte|su ogni lato|su entrambi i lati|da ogni parte|per lato|ai due lati|da entrambe le parti|"
        "uno per lato",
        "PREFER": "ci farebbe piacere|mi farebbe piacere|ci piacerebbe|vorremmo montarlo|vorrei montarlo|"
        "preferirei|preferiamo|preferisco|preferenza|preferibilmente|meglio|preferirei averlo|mi piacerebbe|"
        "se possibile|gradirei|vorrei averlo|preferiremmo",
        "OTHER_BOAT": "il suo è|la sua è|il suo ha|la sua ha|"
        "vicino|amico|barca precedente|un amico|amici|vicini|vicino di posto|vicino di banchina|altra barca|"
        "mio fratello|cognato|barca di prima|vecchia barca|mio amico|del vicino|collega|vicino di ormeggio",
        "BELOW": "sott'acqua|sotto il galleggiamento|immerso|immersa|sommerso|sotto la linea di galleggiamento|"
        "sotto acqua|sotto l'acqua|sott acqua|in acqua|al di sotto",
        "OURS": "fratello e io|amico e io|cognato e io|"
        "la nostra|la mia|abbiamo|il nostro|il mio|nella mia|la nostra barca|da noi|la mia barca|mia barca",
        "YEAR": "del|anno|costruita nel|di|costruito nel|costruito|costruita|del anno|varata nel|varato nel|"
        "anno di costruzione|dell'anno|anno di varo",
        "HULL_NUMBER": "numero di scafo|scafo numero|n di scafo|numero scafo|scafo n|matricola scafo|nr scafo",
        "BUILDER": "cantiere|costruttore|costruttori|costruita da|costruito da|cantieri",
        "MODEL": "modello|barca|tipo|tipo di barca|modello di barca|marca e modello",
        "ASK": "preventivo|vorrei|quale|quanto costa|prezzo|serve|consigliare|richiesta|mi consigliate|consigliate|"
        "consiglia|cosa|informazioni|sapere|domanda|costa|costo|costano|servirebbe|adatto|adatta|sto cercando|"
        "cerco|cerchiamo|interessato|interessati|offerta|prezzi|potete|potreste|chiedere|quanto|quali|va bene|"
        "occorre|bisogno",
        "GEAR": "timone a vento|timoni a vento|pilota a vento|timone automatico a vento|autopilota a vento|"
        "pala ausiliaria|timone ausiliario|girante",
        "ORDER": "ricambio|ricambi|ordine|numero di serie|boccole|boccola|pezzi|pezzo|ordinare|matricola|rotta|rotto|"
        "spedizione|spedire|pezzi di ricambio|sostituire|usurate|usurata|pala nuova",
        "THANKS": "grazie mille|ringrazio|ringraziamo|soddisfatto|soddisfatti|arrivato|arrivati|contenti",
        "SIGN_OFF": "cordiali saluti|saluti|distinti saluti|un saluto|grazie|cordialmente|buon vento|porgo distinti saluti|"
        "cordialità|un cordiale saluto|in attesa|grazie in anticipo|ringraziando|buona giornata|a presto|"
        "grazie e saluti|con i migliori saluti|migliori saluti|saluti cordiali|un abbraccio|resto in attesa|"
        "grazie mille|cari saluti",
        "CUSTOMER": "cliente|un cliente|clienti|armatore|un nostro cliente|per conto di|nostro cliente",
        "COMPANY": "nautica|s r l|srl|cantiere nautico|cantiere|cantieri|veleria|rigging|nautico|attrezzature nautiche|"
        "s n c|snc|s a s|yachting|yacht service|forniture nautiche|rimessaggio|shipchandler",
        "PHONE": "tel|cell|cellulare|telefono|tel cell|mobile|recapito|whatsapp|t|telef",
        "FAX": "fax|p iva|c f",
        "M_PHONE": "telefono|telefonino|app|livella del telefono|con il telefono|livella del cellulare|smartphone",
        "M_INCL": "inclinometro|goniometro|livella|clinometro|livella digitale",
        "M_LASER": "laser|metro laser|distanziometro",
        "M_DRAWING": "disegno|disegni|piani di costruzione|progetto|dai disegni|piano velico|piani|piano di costruzione",
        "M_BROCHURE": "depliant|brochure|scheda tecnica|catalogo|secondo il cantiere|dati del cantiere|manuale|libretto",
        "M_GUESS": "a occhio|ad occhio|stimato|stimata|stima|a spanne|ad occhio e croce|a naso|stimo|occhio e croce",
        "M_PHOTO": "foto|fotografia|dalla foto",
        "GIVE_TAKE": "più o meno|con un errore di|con un margine di|più meno|tolleranza",
        "WITHIN": "circa di errore",
        "BOOTSTRIPE": "bagnasciuga|riga di galleggiamento|boot top|striscia del galleggiamento",
        "COCKPIT": "pozzetto|fondo del pozzetto|pagliolo del pozzetto|piano del pozzetto|calpestio del pozzetto",
        "O_BOOMKIN": "buttafuori|bompresso di poppa",
        "O_STAFF": "asta della bandiera|asta bandiera",
        "O_LOCKER": "gavone di poppa|zattera|autogonfiabile|gavone del gas",
        "SLIDE": "telescopica|scorrevole|estraibile|retrattile|telescopico",
        "SWING": "girevole|orientabile",
        "AVOID": "evitare|in nessun caso|assolutamente no|evitando",
        "WITHDRAW": "dimenticate|dimentichi|ignorate|sbagliato|errato|errata|non vale|sbagliata|era sbagliata",
        "MEANT": "intendevo|volevo dire|al posto di|invece di|correzione|rettifica|è corretto|errore|mi sono sbagliato|"
        "mi sono sbagliata|anziché|in realtà|leggasi|giusto è",
        "JUST_TOUCH": "sfiora",
        "OWNED": "acquistato|comprato|montato dal|montato sul mio|installato dal|mio timone a vento",
        "SELL": "newsletter|disiscriversi|cancellarsi|sconto|sconti|fiera|espositori|clicca|offerta speciale|"
        "posizionamento|promozione|saldi",
        "INSTEAD": "invece di|al posto di|anziché|invece dei",
        "PLUMB_LINE": "filo a piombo|il filo a piombo",
        "MEASURED": "misurato|misure|misurata|misurazioni|misura|rilevato|misurati|quote",
        "AT_WATER": "a pelo d'acqua|al pelo dell'acqua|a filo d'acqua|sfiora l'acqua|tocca l'acqua|sul galleggiamento|"
        "a filo dell'acqua|al galleggiamento|a livello dell'acqua|al livello dell'acqua|sul pelo dell'acqua",
        "OOPS": "no|anzi|scusi|scusate|pardon|volevo dire|cioè|mi correggo|correggo|o meglio|errore|sbagliato",
        "GONE": "venduto|venduta|"
        "già smontato|già smontata|"
        "nel gavone|in un gavone|riposto|riposta|stivato|stivata|teniamo nel|resta a terra|"
        "l'ho tolta|l'ho tolto|l'abbiamo tolta|l'abbiamo tolto|è stata tolta|è stato tolto|non c'è più|"
        "è stata smontata|l'ho smontata",
        "ENDS": "finisce|termina|si ferma",
        "BESIDE": "accanto allo|accanto al|accanto alla|vicino allo|vicino al|vicino alla|presso lo",
        "BEGIN": "comincia|inizia|a partire da",
        "EXCEPT": "tranne|a parte|eccetto|salvo|solo|soltanto",
    },
)
