"""Danish: whose boat, what is put right, what is asked, and leave taken."""

WORDS = {
    "YES": "ja",
    "NOT": "ingen|ikke|uden|intet|nej|ingenting|hverken|mangler|findes ikke|aldrig|har ikke|ikke nogen",
    "OTHER_BOAT": (
        "tidligere havde vi|før havde vi|før det havde vi|tidligere havde jeg|bådpladsen er|"
        "hans er|hendes er|hans båd|hendes båd|nabo*|bådnabo*|nabo|naboen|ven|forrige båd|naboens|nabobåd|"
        "naboens båd|en ven|vens|kammerat|bekendt|gamle båd|gammel båd|anden båd|tidligere båd|bror|svoger|"
        "kollega|min ven|bådnabo|min bror|nabobåden|båden ved siden af|bådnaboen|havnenabo|fætter|onkel|"
        "svigerfar|klubkammerat|sejlerkammerat|sejlerven|søsterbåd|søsterskib|søsterskibet|vores forrige|"
        "min forrige|den forrige|vores gamle|min gamle|den gamle båd|den anden båd|en kammerat|veninde|"
        "hos naboen|hos en ven|hos en kammerat|en bekendt|anden ejer|en ven af|vores tidligere|min tidligere|"
        "kammeraten|kammeratens|sidemanden|bådkammerat|vennens|brors|svogers|vores første|min første båd|"
        "den tidligere båd|makker|"
        "ikke vores|er ikke vores|ikke min|ikke vor"
    ),
    "WITHDRAW": "regn ikke med|stryg|tag ikke med|glem|se bort fra|forkert|passer ikke|gælder ikke|var forkert",
    "MEANT": (
        "byttet om på tallene|byttet om på cifrene|mente|jeg mente|skal være|rettelse|i stedet for|istedet for|"
        "korrektion|rigtigt er|egentlig|skrivefejl|tastefejl|der skal stå|det rigtige er|korrekt er"
    ),
    "OURS": (
        "bror og jeg|ven og jeg|svoger og jeg|vores|vi har|min|hos os|min båd|vores båd|vi har en|jeg har en|"
        "på vores|på min"
    ),
    "ASK": (
        "hvilket beslag|har jeg brug for|pris|tilbud|passer|hvilken|interesseret|har brug for|hvad koster|koster|"
        "anbefaler|anbefale|passe|egner|spørgsmål|vil gerne vide|pristilbud|ønsker tilbud|behøver|forslag|prisen|"
        "hvilket|hvor meget|leder efter|søger|vil gerne høre|vil gerne have et tilbud|interesserede|overvejer|"
        "jeres vindror"
    ),
    "GEAR": (
        "vindror|vindroret|selvstyring|selvstyringen|vindfane|vindrorene|vindfanen|selvstyrer|vindstyring|"
        "hjælperor|vindpilot|vindselvstyring|selvstyr|vindselvstyrer"
    ),
    "ORDER": (
        "reservedel|reservedele|bestille|bestilling|serienummer|bøsninger|bøsning|foringer|ny vindfane|nyt blad|"
        "serienr|ødelagt|slidt|slidte|fragt|knækket|nyt rorblad|dele til"
    ),
    "OWNED": "vores vindror|mit vindror|købt af jer|købt hos jer|købte|leveret af jer",
    "THANKS": (
        "takke|vil takke|taknemmelig|vel fremme|fremme i|meget tilfreds|"
        "mange tak|tusind tak|takker|tilfreds|tilfredse|kommet frem|mange tak for|tak for"
    ),
    "SIGN_OFF": (
        "hilsen|venlig hilsen|med venlig hilsen|mvh|hilsner|på forhånd tak|mange hilsner|hilsen fra|"
        "bedste hilsner|kærlig hilsen|med sejlerhilsen|tak på forhånd|venlige hilsner|med hilsen|bedste hilsen|"
        "hilsener|m v h|de bedste hilsner|tak|alt godt|vh|kh|sejlerhilsen|venligst|hav en god dag|dbh|tusind tak|"
        "mange tak|tak skal I have|tak for hjælpen|på forhånd mange tak"
    ),
    "CUSTOMER": "kunde|en kunde|kunden|kunder|ejer|ejeren|for en kunde|vores kunde",
    "COMPANY": (
        "marine|bådbyggeri|bådservice|aps|sejlmager|sejlmageri|værft|marineservice|bådudstyr|yachts|bådcenter|"
        "maritim|bådmægler|bådeværft"
    ),
    "PHONE": "tlf|mob|mobil|telefon|mobilnr|tel|telefonnr|t|mobiltlf",
    "FAX": "fax|org",
    "SELL": "nyhedsbrev|afmelde|rabat|messe|udstillere|klik|særtilbud|søgemaskine|kampagne|konkurrence|udsalg",
    "INSTEAD": "i stedet for|istedet for",
    "OOPS": "nej|fejl|undskyld|jeg mener|beklager|rettelse|eller rettere|sorry|vent|rettere sagt|forkert",
}
