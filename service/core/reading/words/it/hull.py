"""Italian: the stern, the rudder, what she is built of and who she is."""

WORDS = {
    "TRANSOM": (
        "bordo dello specchio|filo dello specchio|specchio|specchio di poppa|poppa|dello specchio|lo specchio|"
        "poppiero|specchi|specchio poppiero|specchio poppa|bordo superiore dello specchio|piede dello specchio|"
        "inclinazione dello specchio|angolo dello specchio|larghezza dello specchio|spessore dello specchio|"
        "specchio rovesciato|specchio negativo|poppa rovescia|poppa inversa|specchietto|quadro di poppa|quadro|"
        "culo della barca|fondo della poppa|parete di poppa|coronamento|lato superiore dello specchio|"
        "lato inferiore dello specchio|bordo inferiore dello specchio|poppa a specchio|arcaccia|dritto poppa"
    ),
    "POST": "testa del dritto di poppa|dritto di poppa|ruota di poppa|dritto|testa del dritto",
    "HULL": "lamiera|tavolato|scafo|fasciame|carena|laminato|dello scafo",
    "BOAT": "barca|yacht|imbarcazione|barca a vela|veliero|ketch|sloop|natante|cutter|barche",
    "PLUMB": "è dritto|è diritto|verticale|a piombo|verticali|quasi verticale|dritto a piombo|perpendicolare|diritto",
    "REVERSE": (
        "rovesciato|negativo|invertito|specchio rovesciato|rovescia|rovescio|negativa|inversa|specchio negativo|"
        "poppa rovescia|invertita|poppa inversa|inverso|rovesciata|inclinazione negativa"
    ),
    "COUNTER": (
        "poppa a sbalzo|poppa slanciata|positivo|positiva|classico|classica|poppa tradizionale|a sbalzo|"
        "slanciata|slancio di poppa|poppa classica"
    ),
    "SCOOP": (
        "plancetta integrata|poppa con gradini|gradini stampati|spiaggetta ricavata|gradino ricavato|"
        "poppa a gradini|spiaggetta integrata|gradino nello scafo|gradino stampato|scalette ricavate"
    ),
    "OPEN": (
        "poppa aperta|poppa è aperta|specchio aperto|aperta|aperto|specchio abbattibile|poppa abbattibile|"
        "senza specchio|poppa completamente aperta|specchio ribaltabile|pannello ribaltabile|portellone"
    ),
    "DOUBLE": (
        "doppia prua|poppa a canoa|poppa norvegese|doppia punta|poppa appuntita|a canoa|poppa tonda|due prue|"
        "poppa a punta|poppa stellata|doppia prora"
    ),
    "RUDDER": (
        "timone esterno|timone appeso|timone|pala del timone|pala|timoni|pale del timone|due timoni|"
        "doppio timone|doppia pala|del timone"
    ),
    "HUNG_OUT": (
        "appeso al dritto di poppa|timone appeso|appeso allo specchio|appeso|timone esterno|appeso alla poppa|"
        "sullo specchio|timone allo specchio|montato sullo specchio|appeso al dritto|esterno|"
        "fissato allo specchio|infulcrato sullo specchio|incernierato allo specchio|timone fuoribordo|"
        "sul dritto di poppa|appeso allo specchio di poppa|timone appeso allo specchio"
    ),
    "HUNG_IN": (
        "a spada|timone a spada|timone sospeso|semicompensato|compensato|con skeg|sotto lo scafo|"
        "appeso sotto lo scafo|a pala sospesa|dietro lo skeg|dietro la chiglia|sotto la carena"
    ),
    "UNDER": (
        "sulla chiglia|sul bulbo|sotto lo scafo|sospeso|con skeg|skeg|sotto la barca|sotto la poppa|su skeg|sotto scafo"
    ),
    "TRAILING": (
        "bordo d'uscita|bordo di uscita|bordo di poppa|filo d'uscita|bordo poppiero|bordo d'uscita del timone|"
        "spigolo poppiero|bordo posteriore"
    ),
    "STOCK": "asse del timone|asse timone|asta del timone|losca|asse della pala",
    "GRP": "vetroresina|poliestere|vtr|fibra|plastica|resina|vetro",
    "SOLID": (
        "niente sandwich|senza sandwich|pieno|laminato pieno|massiccio|piena|massiccia|laminato massiccio|"
        "monolitico|vetroresina piena|laminato singolo|vetroresina massiccia|solido|monolitica"
    ),
    "CORED": "sandwich|balsa|balsa sandwich|schiuma|anima|con anima|in sandwich|espanso|termanto",
    "WOOD": "compensato marino|legno|in legno|mogano|compensato|lamellare|rovere|iroko|di legno",
    "ALU": "alluminio|in alluminio",
    "STEEL": "acciaio|in acciaio|ferro|lamiera|di acciaio",
    "YEAR": (
        "del|anno|costruita nel|di|costruito nel|costruito|costruita|del anno|varata nel|varato nel|"
        "anno di costruzione|dell'anno|anno di varo"
    ),
    "HULL_NUMBER": "numero di scafo|scafo numero|n di scafo|numero scafo|scafo n|matricola scafo|nr scafo",
    "BUILDER": "cantiere|costruttore|costruttori|costruita da|costruito da|cantieri",
    "MODEL": "modello|barca|tipo|tipo di barca|modello di barca|marca e modello",
}
