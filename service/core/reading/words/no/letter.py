"""Norwegian: whose boat, what is put right, what is asked, and leave taken."""

WORDS = {
    "YES": "ja",
    "NOT": "ingen|ikke|uten|intet|nei|ingenting|verken|mangler|finnes ikke|aldri|ingen av|hverken|har ikke",
    "OTHER_BOAT": (
        "tidligere hadde vi|før hadde vi|før det hadde vi|tidligere hadde jag|båtplassen er|"
        "hans er|hennes er|hans båt|hennes båt|nabo*|båtnabo*|nabo|naboen|venn|forrige båt|naboens|nabobåten|"
        "naboens båt|en venn|venns|kompis|kamerat|bekjent|gamle båt|gammel båt|annen båt|tidligere båt|bror|"
        "svoger|kollega|vennen min|bryggenabo|bryggenaboen|søskenbarn|båten ved siden av|båten attmed|havnenabo|"
        "båtnaboen|fetter|onkel|svigerfar|klubbkamerat|seilerkamerat|seilervenn|søsterbåt|søsterbåten|søsterskip|"
        "søsterskipet|vår forrige|min forrige|den forrige|vår gamle|min gamle|gamlebåten|den andre båten|"
        "en kamerat|venninne|hos naboen|hos en venn|hos en kamerat|en bekjent|annen eier|en venn av|broren min|"
        "kompisen|kompisens|vår tidligere|min tidligere|kameraten|hos kompisen|sidemannen|min kompis|vennens|"
        "min venn|broren|svogeren|båtkamerat|"
        "ikke vår|ikke vårt|er ikke vår|ikke min"
    ),
    "WITHDRAW": "ikke regn med|se vekk fra|stryk|glem|se bort fra|feil|stemmer ikke|gjelder ikke|var feil|galt",
    "MEANT": (
        "byttet om på tallene|byttet om tallene|mente|jeg mente|skal være|rettelse|i stedet for|istedenfor|"
        "korrigering|riktig er|egentlig|skrivefeil|korreksjon|det skal stå|riktig verdi|korrekt er"
    ),
    "OURS": (
        "bror og jeg|venn og jeg|kamerat og jeg|vår|vi har|vårt|min|hos oss|min båt|vår båt|vi har en|jeg har en|"
        "på vår|på min"
    ),
    "ASK": (
        "hva slags feste|trenger jeg|pris|tilbud|passer|hvilken|interessert|lurer på|hva koster|koster|anbefaler|"
        "anbefale|hva anbefaler|passe|egner|kan dere|spørsmål|lurer|vil vite|pristilbud|ønsker tilbud|trenger|"
        "forslag|hva trenger|prisen|hvilket|hvor mye|ser etter|leter etter|vil gjerne vite|interesserte|"
        "bestille sammen|levere"
    ),
    "GEAR": (
        "vindror|vindroret|selvstyring|selvstyringen|vindrorene|vindfløy|vindfløyen|selvstyrer|vindstyring|"
        "hjelperor|vindpilot|vindselvstyring|vindstyresystem|vindselvstyrer"
    ),
    "ORDER": (
        "reservedel|reservedeler|bestille|bestilling|serienummer|bøssinger|foringer|ny vindfløy|nytt blad|"
        "serienr|ødelagt|slitt|frakt|knekt|nytt rorblad|deler til"
    ),
    "OWNED": "vindroret vårt|vindroret mitt|kjøpt av dere|kjøpte|levert av dere",
    "THANKS": (
        "takke|vil takke|takknemlig|vel fremme|framme|trygt fremme|strålende fornøyd|"
        "tusen takk|mange takk|takker|fornøyd|fornøyde|kommet fram|hjertelig takk|takk for"
    ),
    "SIGN_OFF": (
        "hilsen|vennlig hilsen|med vennlig hilsen|mvh|hilsener|på forhånd takk|beste hilsen|hilsen fra|vennligst|"
        "mange hilsener|ha det bra|takk på forhånd|beste hilsener|vennlige hilsener|med hilsen|hjertelig hilsen|"
        "hils|med seilerhilsen|takk|m v h|alt godt|seilerhilsen|varm hilsen|godt nyttår|ha en fin dag|tusen takk|"
        "mange takk|takk skal dere ha|takk så mye|på forhånd tusen takk"
    ),
    "CUSTOMER": "kunde|en kunde|kunden|kunder|eier|eieren|for en kunde|vår kunde",
    "COMPANY": (
        "marin|båtbyggeri|båtservice|seilmaker|seilmakeri|verft|marineservice|båtutstyr|rigg|yachts|slipp|"
        "båtsenter|maritim|båtmegler"
    ),
    "PHONE": "tlf|mob|mobil|telefon|mobilnr|tel|telefonnr|t",
    "FAX": "fax|org",
    "SELL": "nyhetsbrev|avmelde|rabatt|messe|utstillere|klikk|spesialtilbud|søkemotor|kampanje|konkurranse|salg",
    "INSTEAD": "i stedet for|istedenfor",
    "OOPS": "nei|feil|unnskyld|beklager|jeg mener|eller rettere|rettelse|sorry|vent|rettere sagt|feil av meg",
}
