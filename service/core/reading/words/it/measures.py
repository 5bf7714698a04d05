"""Italian: what is measured, from where, which way and by what."""

WORDS = {
    "LENGTH": "fuori tutto|lunga|di lunghezza|lungo",
    "HEIGHT": "altezza|alto|alta|di altezza|bordo libero|altezze|in altezza|elevazione|quota|altezza sopra",
    "WIDTH": (
        "larghezza|largo|larga|di larghezza|larghezza dello specchio|larghi|larghezze|larghe|da lato a lato|"
        "da un lato all'altro|da parte a parte|per traverso|trasversalmente|di traverso|in larghezza"
    ),
    "THICK": (
        "spessore|spesso|di spessore|spessa|spessori|spessore dello specchio|spessore dello scafo|"
        "spessore totale|spessore della lamiera|spessi|spesse|di grossezza|grossezza|spess|"
        "spessore della vetroresina|spessore del fasciame"
    ),
    "DEPTH": (
        "da prua a poppa|in senso longitudinale|da avanti a dietro|in senso prua poppa|nel senso della lunghezza|"
        "profondità|profondo|profonda|di profondità"
    ),
    "LOA": (
        "lunghezza|lunghezza f t|lunghezza fuori tutto|lft|lunghezza totale|l f t|lunghezza fuoritutto|"
        "fuori tutto|loa|lunghezza scafo|lunghezza massima|l.f.t|lunghezza della barca|lunghezza complessiva|"
        "lungh|fuoritutto|l.o.a"
    ),
    "LWL": "lunghezza al galleggiamento|lwl|lunghezza galleggiamento|lunghezza alla linea di galleggiamento",
    "BEAM": (
        "baglio|baglio massimo|larghezza massima|larghezza max|baglio max|baglio max.|larghezza fuori tutto|"
        "larghezza della barca|b. max|larghezza totale|bmax|larghezza barca|larghezza scafo|baglio di"
    ),
    "DRAFT": (
        "pescaggio|pesca|immersione|pescaggi|pesca circa|pescaggio massimo|pescante|pescaggio di|pescato|"
        "immersione massima"
    ),
    "DISPLACEMENT": (
        "dislocamento|peso|pesa|disloca|dislocante|pesa circa|peso a pieno carico|pesare|pesata|gru di pesatura|"
        "dislocamenti|pesava|peso a vuoto|peso della barca|travel lift|a pieno carico|peso leggero|pesato|"
        "in ordine di marcia|dislocamento leggero|disl|tonnellaggio|alla gru"
    ),
    "BALLAST": "zavorra|motore|tender|bulbo|chiglia|gommone|ancora|equipaggio|motori",
    "RAKE": (
        "inclinazione|angolo|inclinato|inclinazione dello specchio|pendenza|angolo dello specchio|slancio|"
        "gradi di inclinazione|rispetto alla verticale|dalla verticale|con la verticale|fuori piombo|"
        "angolo di inclinazione|inclinazioni|sulla verticale|pendenza dello specchio|inclinazione rispetto|"
        "fuori verticale"
    ),
    "LEAN": (
        "inclinato|inclinata|pende|inclina|si inclina|pendente|cade|inclinati|obliquo|si appoggia|"
        "ha un'inclinazione|inclinate|s'inclina|pendono|cadente|si piega|piegato|sbandato|obliqua|obliqui|"
        "va inclinato"
    ),
    "TURN": (
        "per lato|angolo massimo|per parte|angolo di barra|a ogni lato|da ogni lato|da ciascun lato|corsa|"
        "angolo massimo di barra|massima escursione|escursione|per ogni lato|rotazione massima|fine corsa|"
        "per ciascun lato|per banda|angolo di timone|barra tutta|angolo di rotazione|da una parte e dall'altra|"
        "da ambo i lati|rotazione|battute"
    ),
    "FORWARD": (
        "davanti a esso|davanti ad esso|prima dello stesso|davanti allo stesso|più avanti|in avanti|verso prua|"
        "a proravia|più a prua|a prua|avanti|davanti|verso la prua|più avanzato|a proravia dello|in avanti di|"
        "anteriormente|davanti allo|verso avanti|verso l'interno|davanti a|più avanti di|prima dello|"
        "in avanti rispetto|più a proravia|avanzata|più avanzata|rientrante|a prora|verso prora|più a prora|"
        "anteriore|prima del"
    ),
    "AFT": (
        "all'indietro|verso poppa|più indietro|a poppavia|dietro|più a poppa|a poppa|indietro|verso la poppa|"
        "più arretrato|arretrato|dietro lo|dietro allo|oltre lo specchio|verso dietro|all'esterno|"
        "verso l'esterno|dietro a|più indietro di|dopo lo|più a poppavia|a poppavia dello|all'indietro rispetto|"
        "più arretrata|arretrata|più a poppa di|a tergo|al di là|al di là dello|oltre lo"
    ),
    "TOP": (
        "testa del timone|cima del timone|testa della pala|sommità del timone|testa del dritto|"
        "testa del dritto di poppa|bordo dello specchio|filo dello specchio|fino alla coperta|alla coperta|"
        "al piano di coperta|arriva fino a|sale fino a|arriva a|bordo superiore|parte superiore|parte alta|"
        "in alto|sommità|bordo alto|parte di sopra|lato superiore|spigolo superiore|il bordo superiore|"
        "bordo superiore dello specchio|la parte alta|lato alto|superiore|quello superiore|punto più alto|"
        "sommità dello specchio|cima|bordo di sopra|ciglio|ciglio superiore|filo superiore|estremità superiore|"
        "estremità alta|spigolo alto|in cima|sopra in alto|cima dello specchio|lato superiore dello specchio|"
        "bordo più alto|parte più alta|orlo superiore|orlo|quota più alta|coronamento|bordo della coperta|"
        "bordo di coperta|bordo del ponte|filo di coperta|bordo coperta|filo della coperta|dalla coperta|coperta|"
        "la coperta"
    ),
    "BOTTOM": (
        "piede del timone|fondo del timone|tallone del timone|punta del timone|scende a|scende fino a|"
        "bordo inferiore|parte inferiore|parte bassa|lato inferiore|spigolo inferiore|bordo basso|in basso|"
        "parte di sotto|lato basso|il bordo inferiore|piede dello specchio|la parte bassa|inferiore|"
        "quello inferiore|punto più basso|bordo di sotto|ciglio inferiore|filo inferiore|estremità inferiore|"
        "estremità bassa|spigolo basso|in fondo|base|base dello specchio|piede|lato inferiore dello specchio|"
        "bordo inferiore dello specchio|parte più bassa|orlo inferiore|quota più bassa"
    ),
    "WATER": (
        "acqua|all'acqua|sull'acqua|galleggiamento|linea di galleggiamento|dall'acqua|l'acqua|pelo dell'acqua|"
        "superficie|livello dell'acqua|superficie dell'acqua|pelo d'acqua|linea d'acqua|sul galleggiamento|"
        "bordo libero|sotto il galleggiamento|sotto la linea di galleggiamento|sotto acqua|sotto l'acqua|"
        "sott acqua|in acqua|a pelo d'acqua|al pelo dell'acqua|a filo d'acqua|sfiora l'acqua|tocca l'acqua|"
        "a filo dell'acqua|al galleggiamento|a livello dell'acqua|al livello dell'acqua|sul pelo dell'acqua|aqua|"
        "l'aqua|dall'aqua|all'aqua|superfice|livello del mare|piano di galleggiamento|specchio d'acqua|"
        "filo d'acqua|linea di galleggiamento di progetto|filo dell'acqua|mare|dwl|lg|galleggiamenti|"
        "linea di galleg|sotto la superficie|sotto il pelo dell'acqua|sotto il livello dell'acqua|"
        "sotto la linea d'acqua|sott'acqua|immerso|immersa|sommerso|sommersa|dall acqua|all acqua|sull acqua|"
        "dell acqua|a fior d'acqua|al filo dell'acqua|è sott'acqua di"
    ),
    "AT_WATER": (
        "a pelo d'acqua|al pelo dell'acqua|a filo d'acqua|sfiora l'acqua|tocca l'acqua|sul galleggiamento|"
        "a filo dell'acqua|al galleggiamento|a livello dell'acqua|al livello dell'acqua|sul pelo dell'acqua|"
        "a fior d'acqua|al filo dell'acqua"
    ),
    "JUST_TOUCH": "sfiora",
    "BELOW": (
        "sott'acqua|sotto il galleggiamento|immerso|immersa|sommerso|sotto la linea di galleggiamento|"
        "sotto acqua|sotto l'acqua|sott acqua|in acqua|al di sotto|sotto la superficie|sotto il pelo dell'acqua|"
        "sotto il livello dell'acqua|sotto la linea d'acqua|va sotto di|è sott'acqua di|resta sotto"
    ),
    "BOOTSTRIPE": "bagnasciuga|riga di galleggiamento|boot top|striscia del galleggiamento",
    "TOERAIL": (
        "falchetta|falchette|capodibanda|trincarino|battagliola bassa|bottazzo|impavesata|capo di banda|"
        "bordo in teak|listello|listello in teak|cappellotto"
    ),
    "COCKPIT": (
        "pozzetto|fondo del pozzetto|pagliolo del pozzetto|piano del pozzetto|calpestio del pozzetto|pagliolo|"
        "bordo del pozzetto"
    ),
    "STEP": (
        "gradino|gradini|scalino|gradino stampato|scalini|spiaggetta integrata|spiaggetta stampata|"
        "spiaggetta ricavata|plancetta integrata|plancetta stampata|plancetta ricavata|spiaggetta"
    ),
    "ENDS": "finisce|termina|si ferma|finiscono|terminano|si interrompe|si arresta|finendo|finisca",
    "STICK_OUT": (
        "sporge|sporgono|sporgente|esce|fuoriesce|aggetta|sporgenza|si protende|sporgere|si estende|esce fuori|"
        "sbuca|sporgendo|sopravanza|aggettante|va oltre|sbalzo|esce di|spunta|aggetto|sporgono di|fuoriescono|"
        "va indietro|arriva dietro"
    ),
    "M_TAPE": (
        "metro a nastro|metro|con il metro|rotella metrica|nastro|flessometro|fettuccia|metro da falegname|"
        "cordella|metro rigido|con un metro|col metro|metro da sarta|doppio metro|metro a stecche|nastro metrico|"
        "con la rotella|bindella|flessometro alla mano|metro pieghevole|con il nastro"
    ),
    "M_PHONE": (
        "telefono|telefonino|app|livella del telefono|con il telefono|livella del cellulare|smartphone|iphone|"
        "livella dell'iphone|app livella|app del telefono|con il cellulare|con il telefonino|"
        "inclinometro del telefono|livella dello smartphone|con lo smartphone|con l'app|una app|con una app|"
        "livella del telefonino|applicazione livella"
    ),
    "M_INCL": "inclinometro|goniometro|livella|clinometro|livella digitale",
    "M_LASER": "laser|metro laser|distanziometro",
    "M_DRAWING": (
        "sul piano|sui piani|secondo il piano|"
        "disegno|disegni|piani di costruzione|progetto|dai disegni|piano velico|piani|piano di costruzione|"
        "piani del cantiere|disegno del cantiere|disegni del cantiere|disegno costruttivo|disegni costruttivi|"
        "linee d'acqua del progetto|dal disegno|dal progetto|da progetto|dai piani|piano generale|sul disegno|"
        "dal piano|disegno originale|disegni originali|piano di forme|dai piani di costruzione|piano delle forme"
    ),
    "M_BROCHURE": (
        "depliant|brochure|scheda tecnica|catalogo|secondo il cantiere|dati del cantiere|manuale|libretto|"
        "dépliant|libretto della barca|secondo la brochure|dalla brochure|dal depliant|dati del costruttore|"
        "secondo il costruttore|secondo il manuale|dati cantiere|da scheda|da catalogo|secondo il catalogo|"
        "secondo la scheda|dal catalogo|dal manuale|opuscolo|certificato di stazza|da libretto|"
        "documenti della barca|sui documenti|licenza di navigazione|dichiarato dal cantiere|dati di targa|"
        "sul depliant|sulla brochure"
    ),
    "M_GUESS": (
        "a occhio|ad occhio|stimato|stimata|stima|a spanne|ad occhio e croce|a naso|stimo|occhio e croce|"
        "stimato a occhio|a memoria|così a occhio|più o meno a occhio|all'incirca a occhio|stimata a occhio|"
        "a colpo d'occhio|stimando|valuto|stime|a intuito|a lume di naso|a sentimento|stimiamo|"
        "calcolato a occhio|a vista"
    ),
    "M_PHOTO": "foto|fotografia|dalla foto",
    "MEASURED": "misurato|misure|misurata|misurazioni|misura|rilevato|misurati|quote",
    "PLUMB_LINE": "filo a piombo|il filo a piombo|piombino|col filo a piombo|cordino|spago|filo con un peso",
    "GIVE_TAKE": (
        "più o meno|con un errore di|con un margine di|più meno|tolleranza|con una tolleranza di|tolleranza di|"
        "con un'incertezza di|incertezza di|precisione di|con un errore|con un margine|più/meno|"
        "con precisione di|margine d'errore di"
    ),
    "WITHIN": "circa di errore",
}
