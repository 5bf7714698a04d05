"""Italian: the stern, the rudder, what she is built of and who she is."""

WORDS = {
    "TRANSOM": (
        "bordo dello specchio|filo dello specchio|specchio|specchio di poppa|poppa|dello specchio|poppiero|"
        "specchi|specchio poppiero|specchio poppa|bordo superiore dello specchio|piede dello specchio|"
        "inclinazione dello specchio|angolo dello specchio|larghezza dello specchio|spessore dello specchio|"
        "specchio rovesciato|specchio negativo|poppa rovescia|poppa inversa|specchietto|quadro di poppa|quadro|"
        "culo della barca|fondo della poppa|parete di poppa|coronamento|lato superiore dello specchio|"
        "lato inferiore dello specchio|bordo inferiore dello specchio|poppa a specchio|arcaccia|dritto poppa|"
        "alzata|contro gradino"
    ),
    "POST": "testa del dritto di poppa|dritto di poppa|ruota di poppa|dritto|testa del dritto",
    "HULL": "lamiera|tavolato|scafo|fasciame|carena|laminato|dello scafo|tavole",
    "BOAT": (
        "barca|yacht|imbarcazione|barca a vela|veliero|ketch|sloop|natante|cutter|barche|barca in alluminio|"
        "barca in acciaio|barca in legno|barca in vetroresina|barca di legno"
    ),
    "PLUMB": (
        "è dritto|è diritto|verticale|a piombo|verticali|quasi verticale|dritto a piombo|perpendicolare|diritto|"
        "perfettamente verticale|praticamente verticale|del tutto verticale|verticalissimo|senza inclinazione|"
        "nessuna inclinazione|dritto come|perfettamente dritto|quasi dritto|a squadra|quasi a piombo|zero gradi"
    ),
    "REVERSE": (
        "rovesciato|negativo|invertito|specchio rovesciato|rovescia|rovescio|negativa|inversa|specchio negativo|"
        "poppa rovescia|invertita|poppa inversa|inverso|rovesciata|inclinazione negativa|specchio inverso|"
        "a contropendenza|contropendenza|inclinato in avanti|inclinato verso prua|negativi|specchio rovescio|"
        "poppa rovesciata|poppa negativa|invertite|inclinazione inversa|poppa retroussé|al contrario|"
        "specchio a rovescio|rovesci"
    ),
    "COUNTER": (
        "poppa a sbalzo|poppa slanciata|positivo|positiva|classico|classica|poppa tradizionale|a sbalzo|"
        "slanciata|slancio di poppa|poppa classica|specchio classico|specchio tradizionale|specchio positivo|"
        "poppa normale|inclinato all'indietro|inclinato verso poppa|volta di poppa|specchio normale|"
        "inclinato a poppa|a volta|lungo slancio|con slancio"
    ),
    "SCOOP": (
        "stampata nello scafo|stampato nello scafo|ricavata nello scafo|ricavato nello scafo|"
        "integrata nello scafo|integrato nello scafo|plancetta integrata|poppa con gradini|gradini stampati|"
        "spiaggetta ricavata|gradino ricavato|poppa a gradini|spiaggetta integrata|gradino nello scafo|"
        "gradino stampato|scalette ricavate|poppa a spiaggetta|spiaggetta a scafo|gradini integrati|"
        "gradini nello specchio|gradini a poppa|spiaggetta stampata|plancetta stampata|plancetta ricavata|"
        "poppa con spiaggetta|scalini nello specchio|scalini di poppa|scalini ricavati|poppa scalinata|"
        "piattaforma integrata|plancetta ricavata nello scafo|gradini ricavati"
    ),
    "OPEN": (
        "poppa aperta|poppa è aperta|specchio aperto|aperta|aperto|specchio abbattibile|poppa abbattibile|"
        "senza specchio|poppa completamente aperta|specchio ribaltabile|pannello ribaltabile|portellone|"
        "aperta a poppa|pozzetto aperto|pozzetto aperto a poppa|aperto a poppa|specchio che si abbassa|"
        "specchio apribile|poppa apribile|spiaggetta abbattibile|portellone di poppa|portellone abbattibile|"
        "tutta aperta|non ha specchio|poppa ribaltabile|specchio che si apre|specchio che si ribalta|"
        "garage di poppa"
    ),
    "DOUBLE": (
        "doppia prua|poppa a canoa|poppa norvegese|doppia punta|poppa appuntita|a canoa|poppa tonda|due prue|"
        "poppa a punta|poppa stellata|doppia prora|poppa a canoa norvegese|poppa a V|poppa acuta|bipuntita|"
        "poppa stretta a punta|colin archer|appuntita a poppa|poppa da canoa|poppa puntuta|a doppia prua|"
        "poppa lanceolata|doppio ender|a due punte|simmetrica prua e poppa"
    ),
    "RUDDER": (
        "piede del timone|fondo del timone|tallone del timone|punta del timone|testa del timone|cima del timone|"
        "testa della pala|sommità del timone|timone esterno|timone appeso|timone|pala del timone|pala|timoni|"
        "pale del timone|due timoni|doppio timone|doppia pala|del timone|timone principale|pala timone|"
        "timone della barca|timone di rispetto|lama del timone|timoniera|timone allo specchio|timone fuoribordo|"
        "timone appeso allo specchio|timone esterno appeso|timone a poppa|timone incernierato|pala esterna|"
        "timone sullo specchio|timone poppiero|timone a spada|timone sospeso|a pala sospesa|a pala|pala sospesa|"
        "timone compensato|timone a pala|timone interno"
    ),
    "HUNG_OUT": (
        "appeso al dritto di poppa|timone appeso|appeso allo specchio|appeso|timone esterno|appeso alla poppa|"
        "sullo specchio|timone allo specchio|montato sullo specchio|appeso al dritto|esterno|"
        "fissato allo specchio|infulcrato sullo specchio|incernierato allo specchio|timone fuoribordo|"
        "sul dritto di poppa|appeso allo specchio di poppa|timone appeso allo specchio|timone esterno appeso|"
        "timone a poppa|appeso fuori|incernierato alla poppa|incernierato sullo specchio|agugliotti|femminelle|"
        "agugliotti e femminelle|su agugliotti|esterno allo specchio|fissato sullo specchio|montato a poppa|"
        "appeso a poppa|timone incernierato|pala esterna|fuori dallo specchio|montato allo specchio|"
        "attaccato allo specchio|imperniato allo specchio|timone sullo specchio|appesa allo specchio|"
        "incernierata allo specchio|montata sullo specchio|poggia sullo specchio|timone poppiero|"
        "pende dallo specchio|appeso all'esterno|appesa all'esterno"
    ),
    "HUNG_IN": (
        "attaccato alla chiglia|sulla chiglia|appeso allo skeg|incernierato allo skeg|a spada|timone a spada|"
        "timone sospeso|semicompensato|compensato|con skeg|sotto lo scafo|appeso sotto lo scafo|a pala sospesa|"
        "dietro lo skeg|dietro la chiglia|sotto la carena|a pala|pala sospesa|appeso alla chiglia|"
        "dietro al bulbo|dietro alla chiglia|su mezzo skeg|mezzo skeg|con mezzo skeg|su calcagnolo|calcagnolo|"
        "sospesi|semi compensato|semi-compensato|timone compensato|timone a pala|compensata|semicompensata|"
        "appeso dietro la chiglia|in fondo alla chiglia|timone interno|sotto scafo|incernierato alla chiglia|"
        "collegato alla chiglia|con skeg parziale|skeg completo|dietro uno skeg|con calcagnolo|"
        "dietro la chiglia lunga|dietro una chiglia lunga"
    ),
    "UNDER": (
        "sulla chiglia|sul bulbo|sotto lo scafo|sospeso|con skeg|skeg|sotto la barca|sotto la poppa|su skeg|"
        "sotto scafo|nascosto sotto|sotto lo specchio|sotto il pozzetto|è sotto|sta sotto|sono sotto|è di sotto"
    ),
    "TRAILING": (
        "parte posteriore della pala|bordo posteriore della pala|bordo poppiero della pala|bordo d'uscita|"
        "bordo di uscita|bordo di poppa|filo d'uscita|bordo poppiero|bordo d'uscita del timone|spigolo poppiero|"
        "bordo posteriore|bordo di fuga|bordo d'uscita della pala|bordo di uscita del timone|filo di uscita|"
        "lato poppiero|lato posteriore|estremità poppiera|estremità posteriore|punto più a poppa|bordo uscita|"
        "margine posteriore|spigolo posteriore|parte posteriore del timone|bordo di uscita della pala|"
        "filo posteriore|bordi d'uscita"
    ),
    "STOCK": (
        "asse del timone|asse timone|asta del timone|losca|asse della pala|asta timone|asse di rotazione|"
        "asse di rotazione del timone|asse dell'asta|mozzo del timone|assi del timone|astuccio del timone|"
        "perno del timone|asse del perno"
    ),
    "GRP": (
        "vetroresina|poliestere|vtr|fibra|plastica|resina|vetro|vetro resina|poliestere rinforzato|prfv|"
        "fibra di vetro|fiberglass|vinilestere|frp|epossidica"
    ),
    "SOLID": (
        "niente sandwich|senza sandwich|pieno|laminato pieno|massiccio|piena|massiccia|laminato massiccio|"
        "monolitico|vetroresina piena|laminato singolo|vetroresina massiccia|solido|monolitica|"
        "vetroresina monolitica|laminato monolitico|in laminato pieno|senza anima|non in sandwich|vtr piena|"
        "vetroresina massiva|pieno laminato|singola pelle|laminato a mano|tutto pieno|senza balsa|non è sandwich|"
        "non sandwich|vtr monolitica|pelle singola"
    ),
    "CORED": (
        "sandwich|balsa|balsa sandwich|schiuma|anima|con anima|in sandwich|espanso|termanto|airex|divinycell|"
        "pvc espanso|anima di balsa|anima in balsa|costruzione sandwich|in balsa|nido d'ape|anima in schiuma|"
        "anima di espanso|sandwich di pvc|sandwich pvc|klegecell|sandwich espanso|sandwich con"
    ),
    "WOOD": (
        "compensato marino|legno|in legno|mogano|compensato|lamellare|rovere|iroko|di legno|scafo in legno|"
        "fasciame in legno|legno lamellare|lamellare di mogano|mogano su rovere|legno massello|larice|cedro|"
        "legno epossidica|legno e resina|barca in legno|strip planking|in mogano|in teak|di mogano|in compensato|"
        "legno lamellato|clinker|in larice|in rovere|legno/epossidica|barca di legno"
    ),
    "ALU": (
        "alluminio|in alluminio|scafo in alluminio|lega leggera|di alluminio|barca in alluminio|"
        "alluminio saldato|costruzione in alluminio|lamiera d'alluminio|lega di alluminio|tutto alluminio|"
        "in lega leggera"
    ),
    "STEEL": (
        "acciaio|in acciaio|ferro|di acciaio|scafo in acciaio|barca in acciaio|acciaio navale|lamiera d'acciaio|"
        "acciaio saldato|acciaio corten|costruzione in acciaio|tutto acciaio|veliero in acciaio|ketch in acciaio"
    ),
    "YEAR": (
        "del|anno|costruita nel|di|costruito nel|costruito|costruita|del anno|varata nel|varato nel|"
        "anno di costruzione|dell'anno|anno di varo|costruita a|costruito a|dell"
    ),
    "HULL_NUMBER": "numero di scafo|scafo numero|n di scafo|numero scafo|scafo n|matricola scafo|nr scafo",
    "BUILDER": "cantiere|costruttore|costruttori|costruita da|costruito da|cantieri",
    "MODEL": "modello|barca|tipo|tipo di barca|modello di barca|marca e modello",
}
