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
        "bovenrand van de spiegel|onderrand van de spiegel|spiegelbovenkant|spiegelonderkant|hekspiegelbovenkant|"
        "stootbord"
    ),
    "POST": "kop van de steven|kop van de achtersteven|achtersteven|achterstevens|roersteven|steven|stevenkop",
    "HULL": "beplanking|plaat|romp|huid|rompdikte|scheepshuid|huidplaat|planken|de plaat|plaatwerk",
    "BOAT": (
        "boot|jacht|schip|zeiljacht|zeilboot|zeilschip|kits|sloep|kotter|schepen|platbodem|type boot|boottype|"
        "aluminium schip|aluminium boot|stalen schip|stalen boot|stalen jacht|houten schip|houten boot|"
        "aluminium jacht"
    ),
    "PLUMB": (
        "is recht|staat recht|recht op en neer|loodrecht|rechtop|verticaal|loodrechte|verticale|kaarsrecht|"
        "rechte spiegel|bijna loodrecht|kaarsrechte|nagenoeg loodrecht|vrijwel verticaal|bijna verticaal|"
        "recht op|rechtstandig|rechte achterkant|zonder helling|geen helling|helemaal recht|vrijwel loodrecht|"
        "lijnrecht|zo goed als loodrecht|staat loodrecht|vertikaal|vertikale|loodrecht op het water|zo recht als|"
        "nul graden|recht als een muur"
    ),
    "REVERSE": (
        "negatieve spiegel|negatief|omgekeerde spiegel|negatieve|omgekeerd|negatieve helling|omgekeerde|"
        "negatief hellend|invers|voorover hellend|voorover hellende|negatief spiegel|naar voren hellend|"
        "naar voren hellende|negatief hek|inverse spiegel|inverse|omgekeerd hek|omgekeerde helling|"
        "voorover leunend|vooroverhellend|vooroverhellende|negatieve hekspiegel|negatieve achterspiegel|"
        "naar binnen hellend"
    ),
    "COUNTER": (
        "overhangend hek|klassieke spiegel|positief|positieve|overhang|overhangende|klassieke|positieve spiegel|"
        "klassiek hek|overhangende spiegel|normale spiegel|traditionele spiegel|achterover hellend|"
        "achteroverhellend|achteroverhellende|achterover hellende|positief hellend|klassieke kont|"
        "overhangend achterschip|gewone spiegel|lange overhang|traditioneel hek|wulf|wulfhek|"
        "naar achteren hellende|naar achteren hellend"
    ),
    "SCOOP": (
        "in de romp gegoten|in de romp gevormd|in de romp ingebouwd|in de romp meegevormd|"
        "in de romp geïntegreerd|in de romp meegegoten|geïntegreerde zwemtrede|zwemplateau in de spiegel|"
        "zwemtrede|ingebouwd zwemplateau|geïntegreerd zwemplateau|zwemtreden in de spiegel|sugarscoop|"
        "suikerschep|ingevormde zwemtrede|trapspiegel|ingebouwde zwemtrede|zwemplateau in de romp|zwemtreden|"
        "ingebouwde zwemtreden|geïntegreerde treden|treden in de spiegel|spiegel met treden|"
        "ingevormd zwemplateau|trappetje in de spiegel|traphek|zwemtreetje|zwemtrede in de spiegel|"
        "zwemtrede in de romp|geïntegreerd platform|meegevormd zwemplateau|meegevormde treden|"
        "open spiegel met treden|achterschip met treden|treden in het achterschip"
    ),
    "OPEN": (
        "open spiegel|open hek|open kuip|open achterkant|open achterschip|neerklapbare spiegel|klapspiegel|"
        "geen spiegel|open achter|opklapbare spiegel|spiegel is open|spiegel die neerklapt|open achterzijde|"
        "achter open|van achteren open|spiegel klapt|neerklapbare achterkant|open spiegels|spiegel klapt neer|"
        "hek klapt|uitklapbare spiegel|open cockpit achter|hekdeur|spiegelklep|neerklapbaar hek|klapbare spiegel|"
        "zonder spiegel|geheel open|spiegel kan neer|klap in de spiegel|klapplateau in de spiegel"
    ),
    "DOUBLE": (
        "spitsgatter|kano hek|dubbelender|spitsgat|spitsgatkotter|kanohek|spits achterschip|spitsgatters|"
        "achterschip spits|spitse kont|spitse achterkant|puntig achterschip|puntige achterkant|dubbel ender|"
        "canoestern|spits hek|van achteren spits|colin archer|kano achterschip|spitsgatjacht|"
        "spits aan beide kanten|kruiserhek|puntig hek|tweemaal spits|spitse achtersteven"
    ),
    "RUDDER": (
        "roer hangt achter aan de kiel|roer hangt aan de kiel|roer zit achter aan de kiel|roer|roerblad|"
        "hoofdroer|roeren|roerbladen|dubbel roer|twee roeren|roers|achterkant roerblad|achterkant roer|"
        "achterkant van het roer|achterrand van het roer|achterrand roer|vrijhangend roer|balans roer|"
        "doorgestoken roer|scheg roer|aangehangen roer|roer aan de spiegel|buitenboord roer|buitenhangend roer|"
        "buitenliggend roer|scheepsroer|hoofdroeren|roerblads|eigen roer|roertje|roerbladachterkant|roer zelf|"
        "stuurroer|blad|hangend roer aan de spiegel|ophaalbaar roer|opklapbaar roer|gebalanceerd roer|spade roer|"
        "onderkant roer|onderkant van het roer|voet van het roer|kop van het roer|roerkop|bovenkant roer|"
        "bovenkant van het roer"
    ),
    "HUNG_OUT": (
        "aangehangen roer|aangehangen|roer aan de spiegel|hangt aan de spiegel|buitenboord roer|buitenboordroer|"
        "aan de spiegel|hangt achter de spiegel|aan de achtersteven|op de spiegel|spiegelroer|"
        "hangt aan de achtersteven|aan de steven|buitenhangend roer|buitenliggend roer|aan de spiegel gehangen|"
        "hangroer|buitenroer|hangt buitenboord|achter de spiegel gehangen|hangt achter de boot|hangt achterop|"
        "achterop gehangen|aan de hekspiegel|hangt aan het hek|hangt aan de hekspiegel|aan het hek|vingerlingen|"
        "in vingerlingen|roerhaken|buitenom gehangen|op de spiegel gemonteerd|op de spiegel bevestigd|"
        "aan de spiegel bevestigd|aangehangen achter de spiegel|buitenboord gehangen|hangend roer aan de spiegel|"
        "hangt achter het schip|ophaalbaar roer|opklapbaar roer|klaproer|spiegelhangend|achteraan gehangen|"
        "aan de spiegel opgehangen|achter de spiegel hangt|hangend aan de spiegel|hangt erachter|hangt buiten"
    ),
    "HUNG_IN": (
        "roer hangt achter aan de kiel|roer hangt aan de kiel|roer zit achter aan de kiel|achteraan de kiel|"
        "aan de kiel|aan de achterkant van de kiel|aan het eind van de kiel|balansroer*|spaderoer*|schegroer*|"
        "balansroer|achter scheg|spaderoer|vrijhangend roer|balans roer|hangend onder|half balansroer|"
        "doorgestoken roer|aan een scheg|aan de scheg|achter de kiel|scheg roer|vrijhangende|"
        "vrijhangend spaderoer|achter een scheg|achter de scheg|met scheg|halve scheg|hele scheg|"
        "aan de kiel gehangen|aangehangen aan de kiel|achter kiel|gebalanceerd|half gebalanceerd|"
        "gebalanceerd roer|kielroer|spade roer|onderhangend|ondergehangen|onder het schip gehangen|"
        "achter aan de kiel|aan kiel|hangt onder de boot|hangt onder het schip|halfbalansroer|"
        "hangt achter de kiel|hangt aan de kiel|hangt achter een scheg|spaderoeren|aan een halve scheg|schegroer|"
        "achter de lange kiel|achter een lange kiel|in een hak|in de hak|achter de kiel hangt"
    ),
    "UNDER": (
        "aan de kiel|vrijhangend|onder de boot|onder de romp|scheg|skeg|onder het schip|onder het hek|scheggen|"
        "onder de kont|onder het achterschip|weggestopt onder|onder de spiegel|onder de kuip|helemaal onder|"
        "zit eronder|hangt eronder|zit onder"
    ),
    "TRAILING": (
        "achterkant roerblad|achterkant|achterkant roer|achterrand|achterkant van het roer|"
        "achterrand van het roer|uittredende kant|achterkant ervan|achterste rand|achterzijde|roerachterkant|"
        "achterrand roer|achterlijk van het roer|achterkanten|roerbladachterkant|achterste punt|achterste kant|"
        "achterkant roerbladen|achterrand van het roerblad|achterkant van het roerblad|uittredekant|"
        "achterste deel|achterkantje|achterlijkste punt|roerachterrand|achterkant van de roeren|uitloopkant"
    ),
    "STOCK": (
        "roerkoning|roeras|roerschacht|hart roerkoning|roerkoningen|roerkoker|hart van de roerkoning|hart roeras|"
        "as van het roer|roerstok|hennegatskoker|draaias|draaiingsas|draaiingsas roer|roerasje|"
        "hartlijn roerkoning"
    ),
    "GRP": (
        "polyester|glasvezel|gvk|glasvezelpolyester|kunststof|glas|laminaat|glasvezelversterkt|plastic|"
        "polyesterboot|glasvezel versterkt|kunststofboot|glasmat|vinylester|epoxy|frp|polyester boot"
    ),
    "SOLID": (
        "geen sandwich|massief|massief polyester|massieve|vol laminaat|vollaminaat|enkel laminaat|"
        "massief laminaat|zonder kern|massief glas|volpolyester|massief gvk|vol polyester|enkelwandig|"
        "enkele huid|zonder sandwich|niet sandwich|massief glasvezel|handlaminaat|gewoon polyester|geen kern|"
        "massief gelamineerd|enkelvoudig laminaat|massief kunststof|zonder schuim|zonder balsa|volglas"
    ),
    "CORED": (
        "sandwich|balsa|sandwichconstructie|balsakern|schuimkern|kern|schuim|balsa sandwich|airex|divinycell|"
        "pvc schuim|kernmateriaal|balsa kern|balsahout|sandwich met balsa|sandwich met schuim|sandwichbouw|"
        "in sandwich|schuim kern|honingraat|coremat|schuimsandwich|balsahouten kern|sandwichlaminaat|"
        "sandwichromp|sandwich constructie|met kern|balsasandwich"
    ),
    "WOOD": (
        "houten jacht|hout|houten|mahonie|eiken|multiplex|houtbouw|van hout|watervast verlijmd|hechthout|"
        "mahonie op eiken|houten romp|houten schip|hechthouten|mahoniehout|mahoniehouten|eikenhout|"
        "gelamineerd hout|kouddruk|overnaads|lariks|teakhouten|teakhout|watervast multiplex|houtepoxy|hout epoxy|"
        "hout/epoxy|in hout|iroko|vurenhout|houten boot|eikenhouten|larikshout|hout gebouwd|strip planking"
    ),
    "ALU": (
        "aluminiumboot|aluboot|aluminium|alu|aluminium romp|van aluminium|aluminium boot|aluminium schip|"
        "alu romp|van alu|gelast aluminium|aluminium bouw|in aluminium|aluminium jacht|aluminium gebouwd|"
        "aluminiumbouw|aluminium plaat"
    ),
    "STEEL": (
        "staalboot|staal|stalen|staalbouw|van staal|stalen romp|scheepsbouwstaal|staalschip|stalen schip|"
        "stalen boot|stalen jacht|scheepsstaal|stalen casco|in staal|multiknikspant|knikspant staal|"
        "rondspant staal|stalen knikspant|staal gebouwd|staalplaat|stalen plaat|gelast staal|stalen kits|"
        "stalen kotter|stalen rondspant|cortenstaal"
    ),
    "YEAR": (
        "bwj|bwjr|bouwjr|bouwjaar|uit|van|gebouwd in|bj|gebouwd|te water gelaten in|uit het jaar|van bouwjaar|"
        "bouw|uit bouwjaar|stamt uit|gebouwd te|gebouwd bij"
    ),
    "HULL_NUMBER": (
        "casconr|casconummer|casco nr|bouwnr|scheepsnummer|bouwnummer|rompnummer|romp nr|bouw nr|rompnr|"
        "casco nummer|romp nummer"
    ),
    "BUILDER": "werf|bouwer|scheepswerf|bouwwerf|gebouwd door|jachtwerf",
    "MODEL": "type|boot|model|jacht|boottype|merk en type|type boot|boot type|scheepstype",
}
