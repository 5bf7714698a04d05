"""Italian: whose boat, what is put right, what is asked, and leave taken."""

WORDS = {
    "YES": "sì|si",
    "NOT": (
        "non|nessun|nessuna|senza|niente|né|nulla|nessuno|manca|assente|non c'è|non ci sono|mai|no|neanche|"
        "non abbiamo|non ho"
    ),
    "OTHER_BOAT": (
        "prima avevamo|prima avevo|in precedenza avevamo|il posto barca è|"
        "il suo è|la sua è|il suo ha|la sua ha|vicino|amico|barca precedente|un amico|amici|vicini|"
        "vicino di posto|vicino di banchina|altra barca|mio fratello|cognato|barca di prima|vecchia barca|"
        "mio amico|del vicino|collega|vicino di ormeggio|barca vicina|barca accanto|la barca a fianco|cugino|zio|"
        "mio padre|suocero|compagno di club|compagno di pontile|vicino di pontile|barca gemella|nave gemella|"
        "un conoscente|conoscente|la mia vecchia|la nostra vecchia|nostra precedente barca|mia precedente barca|"
        "precedente barca|l'altra barca|di un amico|amica|un'amica|del mio amico|da un amico|quella di un amico|"
        "quella del vicino|quella precedente|altro armatore|la barca di mio|la barca del mio|un socio del club|"
        "non è la nostra|non è il nostro|non la nostra|non è la mia|non è il mio"
    ),
    "WITHDRAW": (
        "non tenete conto|non tenga conto|lasciate perdere|ignori|scordatevi|dimenticate|dimentichi|ignorate|"
        "sbagliato|errato|errata|non vale|sbagliata|era sbagliata"
    ),
    "MEANT": (
        "invertito le cifre|scambiato le cifre|invertite le cifre|intendevo|volevo dire|al posto di|invece di|"
        "correzione|rettifica|è corretto|errore|mi sono sbagliato|mi sono sbagliata|anziché|in realtà|leggasi|"
        "giusto è"
    ),
    "OURS": (
        "fratello e io|amico e io|cognato e io|la nostra|la mia|abbiamo|il nostro|il mio|nella mia|"
        "la nostra barca|da noi|la mia barca|mia barca"
    ),
    "ASK": (
        "preventivo|vorrei|quale|quanto costa|prezzo|serve|consigliare|richiesta|mi consigliate|consigliate|"
        "consiglia|cosa|informazioni|sapere|domanda|costa|costo|costano|servirebbe|adatto|adatta|sto cercando|"
        "cerco|cerchiamo|interessato|interessati|offerta|prezzi|potete|potreste|chiedere|quanto|quali|va bene|"
        "occorre|bisogno"
    ),
    "GEAR": (
        "timone a vento|timoni a vento|pilota a vento|timone automatico a vento|autopilota a vento|"
        "pala ausiliaria|timone ausiliario|girante|timoneria a vento|servotimone"
    ),
    "ORDER": (
        "ricambio|ricambi|ordine|numero di serie|boccole|boccola|pezzi|pezzo|ordinare|matricola|rotta|rotto|"
        "spedizione|spedire|pezzi di ricambio|sostituire|usurate|usurata|pala nuova"
    ),
    "OWNED": "acquistato|comprato|montato dal|montato sul mio|installato dal|mio timone a vento",
    "THANKS": (
        "ringraziarvi|ringraziarla|ringraziare|vi ringrazio|mille grazie a|siamo arrivati|contento|felici|grazie di tutto|grazie infinite|"
        "grazie mille|ringrazio|ringraziamo|soddisfatto|soddisfatti|arrivato|arrivati|contenti"
    ),
    "SIGN_OFF": (
        "cordiali saluti|saluti|distinti saluti|un saluto|grazie|cordialmente|buon vento|porgo distinti saluti|"
        "cordialità|un cordiale saluto|in attesa|grazie in anticipo|ringraziando|buona giornata|a presto|"
        "grazie e saluti|con i migliori saluti|migliori saluti|saluti cordiali|un abbraccio|resto in attesa|"
        "grazie mille|cari saluti|un caro saluto|tanti saluti|la ringrazio|mille grazie|grazie infinite|"
        "molte grazie|grazie e a presto|grazie e buon lavoro"
    ),
    "CUSTOMER": "cliente|un cliente|clienti|armatore|un nostro cliente|per conto di|nostro cliente",
    "COMPANY": (
        "nautica|s r l|srl|cantiere nautico|cantiere|cantieri|veleria|rigging|nautico|attrezzature nautiche|"
        "s n c|snc|s a s|yachting|yacht service|forniture nautiche|rimessaggio|shipchandler"
    ),
    "PHONE": "tel|cell|cellulare|telefono|tel cell|mobile|recapito|whatsapp|t|telef",
    "FAX": "fax|p iva|c f",
    "SELL": (
        "newsletter|disiscriversi|cancellarsi|sconto|sconti|fiera|espositori|clicca|offerta speciale|"
        "posizionamento|promozione|saldi"
    ),
    "INSTEAD": "invece di|al posto di|anziché|invece dei",
    "OOPS": "no|anzi|scusi|scusate|pardon|volevo dire|cioè|mi correggo|correggo|o meglio|errore|sbagliato",
}
