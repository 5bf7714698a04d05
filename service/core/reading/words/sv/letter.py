"""Swedish: whose boat, what is put right, what is asked, and leave taken."""

WORDS = {
    "YES": "ja",
    "NOT": "ingen|inga|inte|utan|inget|nej|finns inte|saknas|aldrig|varken|icke|inga alls|finns ej|ej",
    "OTHER_BOAT": (
        "tidigare hade vi|innan hade vi|förut hade vi|tidigare hade jag|båtplatsen är|"
        "hans är|hennes är|hans båt|hennes båt|grann*|granne|grannen|grannens|vän|förra båt|grannens båt|"
        "grannbåt|en vän|kompis|kompisens|vännens|förra båten|bryggranne|bryggrannen|bekant|kollega|annan båt|"
        "tidigare båt|bror|svåger|min bror|en bekant|gamla båt*|grannbåten|båten bredvid|båten intill|båtgranne|"
        "båtgrannen|hamngranne|kusin|farbror|morbror|svärfar|klubbkamrat|klubbkompis|seglarkompis|seglarvän|"
        "systerbåt|systerbåten|en annan ägare|vår förra|min förra|vår gamla|min gamla|vår tidigare|min tidigare|"
        "den andra båten|en kompis|väninna|hos grannen|hos en vän|hos en kompis|annan ägare|en vän till|"
        "kompis båt|förra segelbåten|hans spegel|den förra|vännen|hos honom|min kompis|min vän|seglarkamrat|"
        "inte vår|inte vårt|inte min|är inte vår"
    ),
    "WITHDRAW": (
        "räkna inte med|bortse ifrån|ta inte med|strunta i|glöm|bortse från|felaktig|gäller inte|stämmer inte|"
        "var fel|fel"
    ),
    "MEANT": (
        "kastat om siffrorna|förväxlat siffrorna|menade|jag menade|ska vara|skall vara|rättelse|i stället för|"
        "istället för|korrigering|rätt är|egentligen|skrivfel|rätt värde|korrekt är|det ska stå"
    ),
    "OURS": (
        "bror och jag|vän och jag|kompis och jag|vår|vi har|vårt|min|våran|hos oss|min båt|vår båt|vi har en|"
        "på vår|på min|jag har en"
    ),
    "ASK": (
        "funderar på att köpa|vilket fäste|behövs|pris|offert|passar|vilken|intresserad|undrar|vad rekommenderar|"
        "rekommenderar|rekommendera|vad kostar|kostar|kostnad|söker|letar|passa|kan ni|fråga|frågor|hur mycket|"
        "priset|vill ha|vill veta|önskar offert|lämpligt|lämplig|behöver|prisuppgift|förslag|vilket|tacksam|"
        "intresserade|fungerar|offertförfrågan"
    ),
    "GEAR": (
        "vindroder|vindrodret|självstyrning|vindrodren|vindflöjel|vindflöjeln|självstyrningen|vindstyrning|"
        "vindstyre|vindstyrt|vindpilot|hjälproder|vindrorder|vindsjälvstyrning|vindflöjelroder"
    ),
    "ORDER": (
        "reservdel|reservdelar|beställa|beställning|serienummer|reservdelar till|bussningar|bussning|"
        "ny vindflöjel|nytt blad|serienr|trasig|trasigt|utslitna|frakt|slitna|nytt roderblad|knäckt"
    ),
    "OWNED": "vårt vindroder|mitt vindroder|köpt av er|köpte|köptes|sedan vi köpte|levererat",
    "THANKS": (
        "tacka|vill tacka|tacksamma|framme|väl framme|mycket nöjda|"
        "tack så mycket|tusen tack|stort tack|tackar|nöjda|nöjd|kommit fram|framkommit"
    ),
    "SIGN_OFF": (
        "vänliga hälsningar|hälsningar|med vänlig hälsning|mvh|hälsning|tack på förhand|vänligen|"
        "hjärtliga hälsningar|bästa hälsningar|med vänliga hälsningar|m v h|hälsar|soliga hälsningar|"
        "tacksam för svar|många hälsningar|allt gott|hälsn|med seglarhälsning|seglarhälsningar|vänlig hälsning|"
        "tack|hej då|ha det bra|med hälsning|varma hälsningar|glada hälsningar|tusen tack|stort tack|"
        "tack så mycket|många tack|tack och hej"
    ),
    "CUSTOMER": "kund|kunden|en kund|kunder|till en kund|ägare|ägaren|för en kunds|vår kund",
    "COMPANY": (
        "marin|båtvarv|ab|båtservice|segelmakeri|marinservice|båttillbehör|yachts|rigg|riggverkstad|sjösport|"
        "båtaffär|marinteknik|båtmäklare"
    ),
    "PHONE": "tel|mobil|telefon|mob|tfn|telnr|mobilnr|mobiltelefon|t",
    "FAX": "fax|org",
    "SELL": "nyhetsbrev|avregistrera|rabatt|mässa|utställare|klicka|erbjudande|sökmotor|kampanj|tävling|rea",
    "INSTEAD": "i stället för|istället för",
    "OOPS": "nej|fel av mig|förlåt|jag menar|ursäkta|fel|rättelse|eller snarare|snarare|sorry|vänta",
}
