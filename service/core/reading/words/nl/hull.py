"""Dutch: the stern, the rudder, what she is built of and who she is."""

WORDS = {
    "TRANSOM": (
        "rand van de spiegel|spiegelrand|spiegelhoek|spiegelbreedte|spiegeldikte|spiegel|hek|achterspiegel|"
        "hekspiegel|spiegels|hekplaat|hekspiegels|spiegelplaat|achterkant van de boot|hek van de boot|"
        "bovenkant spiegel|bovenkant van de spiegel|spiegel bovenkant|spiegel boven|breedte spiegel boven|"
        "breedte van de spiegel boven|onderkant spiegel|onderkant van de spiegel|spiegel onderkant|"
        "voet van de spiegel|helling van de spiegel|hoek van de spiegel|spiegel helling|breedte spiegel|"
        "spiegel breedte|spiegel boven breed|dikte spiegel|rechte spiegel|negatieve spiegel|omgekeerde spiegel|"
        "achterkant van het schip|hekje|spiegelvlak|achterspiegels|achtersteven spiegel|spiegelrand boven|"
        "hek van het schip|achterschip|kont|hekspiegelrand|spiegelbord|spiegelboord|achterkant schip|"
        "bovenrand van de spiegel|onderrand van de spiegel|spiegelbovenkant|spiegelonderkant|hekspiegelbovenkant"
    ),
    "POST": "kop van de steven|kop van de achtersteven|achtersteven|achterstevens|roersteven|steven|stevenkop",
    "HULL": "beplanking|plaat|romp|huid|rompdikte|scheepshuid|de romp|huidplaat",
    "BOAT": (
        "boot|jacht|schip|zeiljacht|zeilboot|zeilschip|kits|sloep|kotter|de boot|schepen|platbodem|type boot|boottype"
    ),
    "PLUMB": (
        "is recht|staat recht|recht op en neer|loodrecht|rechtop|verticaal|loodrechte|verticale|kaarsrecht|"
        "rechte spiegel|bijna loodrecht"
    ),
    "REVERSE": (
        "negatieve spiegel|negatief|omgekeerde spiegel|negatieve|omgekeerd|negatieve helling|omgekeerde|"
        "negatief hellend|invers"
    ),
    "COUNTER": (
        "overhangend hek|klassieke spiegel|positief|positieve|overhang|overhangende|klassieke|positieve spiegel"
    ),
    "SCOOP": (
        "geïntegreerde zwemtrede|zwemplateau in de spiegel|zwemtrede|ingebouwd zwemplateau|"
        "geïntegreerd zwemplateau|zwemtreden in de spiegel|sugarscoop|suikerschep|ingevormde zwemtrede|"
        "trapspiegel|ingebouwde zwemtrede|zwemplateau in de romp"
    ),
    "OPEN": (
        "open spiegel|open hek|open kuip|open achterkant|open achterschip|neerklapbare spiegel|klapspiegel|"
        "geen spiegel|open achter|opklapbare spiegel|spiegel is open|spiegel die neerklapt"
    ),
    "DOUBLE": (
        "spitsgatter|kano hek|dubbelender|spitsgat|spitsgatkotter|kanohek|spits achterschip|spitsgatters|"
        "achterschip spits"
    ),
    "RUDDER": (
        "roer|roerblad|hoofdroer|roeren|het roer|roerbladen|dubbel roer|twee roeren|roers|achterkant roerblad|"
        "achterkant roer|achterkant van het roer|achterrand van het roer|achterrand roer|vrijhangend roer|"
        "balans roer|doorgestoken roer|scheg roer|aangehangen roer|roer aan de spiegel|buitenboord roer|"
        "buitenhangend roer|buitenliggend roer"
    ),
    "HUNG_OUT": (
        "aangehangen roer|aangehangen|roer aan de spiegel|hangt aan de spiegel|buitenboord roer|buitenboordroer|"
        "aan de spiegel|hangt achter de spiegel|aan de achtersteven|op de spiegel|spiegelroer|"
        "hangt aan de achtersteven|aan de steven|buitenhangend roer|buitenliggend roer|aan de spiegel gehangen|"
        "hangroer"
    ),
    "HUNG_IN": (
        "balansroer*|spaderoer*|schegroer*|balansroer|achter scheg|spaderoer|vrijhangend roer|balans roer|"
        "hangend onder|half balansroer|doorgestoken roer|aan een scheg|aan de scheg|achter de kiel|scheg roer"
    ),
    "UNDER": (
        "aan de kiel|vrijhangend|onder de boot|onder de romp|scheg|skeg|onder het schip|onder het hek|scheggen|"
        "onder de kont|onder het achterschip"
    ),
    "TRAILING": (
        "achterkant roerblad|achterkant|achterkant roer|achterrand|achterkant van het roer|"
        "achterrand van het roer|uittredende kant|achterkant ervan|achterste rand|achterzijde|roerachterkant|"
        "achterrand roer"
    ),
    "STOCK": "roerkoning|roeras|roerschacht|hart roerkoning",
    "GRP": "polyester|glasvezel|gvk|glasvezelpolyester|kunststof|glas|laminaat",
    "SOLID": (
        "geen sandwich|massief|massief polyester|massieve|vol laminaat|vollaminaat|enkel laminaat|"
        "massief laminaat|zonder kern|massief glas"
    ),
    "CORED": "sandwich|balsa|sandwichconstructie|balsakern|schuimkern|kern|schuim|balsa sandwich",
    "WOOD": "hout|houten|mahonie|eiken|multiplex|houtbouw|van hout|watervast verlijmd|hechthout",
    "ALU": "aluminium|alu|aluminium romp|van aluminium",
    "STEEL": "staal|stalen|staalbouw|van staal|stalen romp|scheepsbouwstaal",
    "YEAR": (
        "bwj|bwjr|bouwjr|bouwjaar|uit|van|gebouwd in|bj|gebouwd|te water gelaten in|uit het jaar|van bouwjaar|"
        "bouw|uit bouwjaar|stamt uit"
    ),
    "HULL_NUMBER": (
        "casconr|casconummer|casco nr|bouwnr|scheepsnummer|bouwnummer|rompnummer|romp nr|bouw nr|rompnr|"
        "casco nummer|romp nummer"
    ),
    "BUILDER": "werf|bouwer|scheepswerf|bouwwerf|gebouwd door|jachtwerf",
    "MODEL": "type|boot|model|jacht|boottype|merk en type|type boot|boot type|scheepstype",
}
