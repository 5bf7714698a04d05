"""English: the stern, the rudder, what she is built of and who she is."""

WORDS = {
    "TRANSOM": (
        "edge of the transom|lip of the transom|transom|transom's|stern|back end|taffrail|riser|transom skin|"
        "transom board|mirror|transoms|stern board|top of the transom|transom top|foot of the transom|"
        "bottom of the transom|transom angle|rake of the transom|transom rake|transom slope|"
        "inclination of transom|transom thickness|reverse transom|sugar scoop stern|negative transom|"
        "reverse sheer stern|inverted transom|stern face|aft face|transom edge|transom height|"
        "height of the transom|transom width|transom lip|stern panel|back of the boat|tail of the boat|"
        "rear of the boat|transom plate|flat of the stern|face of the transom|arse end|her backside"
    ),
    "POST": (
        "top of the sternpost|head of the sternpost|sternpost top|top of the post|sternpost head|sternpost|"
        "stern post|post|stern post head|rudder post head"
    ),
    "HULL": "scantlings|planking|planks|plating|hull|laminate|skin|lay up|layup",
    "BOAT": "ship|boat|yacht|sloop|ketch|vessel|boat type|my boat",
    "PLUMB": (
        "is straight|dead straight|strait up|strait up and down|strait up n down|straight up n down|"
        "straight up & down|vertcal|verticle|dead vertical|plumb|bolt upright|dead upright|upright|vertical|"
        "perpendicular|dead plumb|near vertical|nearly plumb|straight up and down|straight up|plumb vertical"
    ),
    "REVERSE": (
        "reverse|reversed|reverse transom|retrousse|negative rake|sugar scoop stern|reverse raked|"
        "reverse sloping|negative|negative transom|reverse sheer stern|negatively raked|inverted transom|inverted"
    ),
    "COUNTER": (
        "counter|counter stern|conventional rake|traditional rake|raked aft|rakes aft|leans aft|overhanging|"
        "positive rake|normal rake|rakes backwards|classic counter|conventional transom|traditional transom|"
        "positive"
    ),
    "SCOOP": (
        "sugar scoop stern|sugar scoop transom|scoop transom|integral swim platform|moulded in swim platform|"
        "molded swim platform|moulded swim platform|built in swim platform|integrated swim platform|"
        "molded in swim platform|sugar scoop|scoop|swim step|scoop stern|scooped|sugarscoop|moulded in swim step|"
        "moulded swim step|moulded bathing step|step moulded into|steps moulded into|walk down steps|"
        "integral swim step|moulded in steps|stepped transom"
    ),
    "OPEN": (
        "open at the stern|stern open|transom open|open transom|open stern|stern is open|transom is open|"
        "drop down transom|walk through transom|open transomed|open aft|drop transom|drops down to form|"
        "fold down transom|folding transom|drop down stern|no transom|panel that drops|no transom at all|"
        "open at the back|wide open stern|hinged transom|transom that drops|transom door"
    ),
    "DOUBLE": (
        "double ender|double ended|canoe stern|canoe sterned|norwegian stern|pointed stern|canoe sterns|"
        "pointed at both ends|colin type stern|sharp stern|canoe back end|sterned like a canoe"
    ),
    "RUDDER": (
        "rudder|rudders|outboard rudder|main rudder|rudder is|rudder blade|the rudder|twin rudders|two rudders|"
        "main rudders|back edge of the rudder|rudder stock|rudder post|rudder shaft|rudder axis|rudder tube|"
        "axis of the rudder|spade rudder|inboard rudder|balanced rudder|skeg hung rudder|semi balanced rudder|"
        "keel hung rudder|skeg rudder|rudder hung on the stern|rudder on the transom|outboard hung rudder|"
        "transom hung rudder"
    ),
    "HUNG_OUT": (
        "fixed in the stern|fixed on the stern|fixed to the transom|fixed on the transom|fixed to the stern|"
        "hanging in stern|hanging on stern|hanging on the stern|hanging on the transom|hanging from the transom|"
        "hanging at the stern|outboard rudder|transom hung|stern hung|hung on the transom|hung outboard|"
        "on pintles|pintles|hung on the sternpost|rudder hung on the stern|outboard hung|rudder on the transom|"
        "hangs on the transom|hung off the transom|hangs off the transom|hung from the transom|"
        "attached to the transom|on the stern post|hung on the stern|transom mounted|outboard hung rudder|"
        "transom hung rudder|hung on the back|hangs on the sternpost|hangs from the sternpost|"
        "hung from the sternpost|hung over the stern|hangs behind the transom|mounted on the transom"
    ),
    "HUNG_IN": (
        "spade|spade rudder|skeg hung|inboard rudder|keel hung|balanced rudder|skeg hung rudder|semi balanced|"
        "semi balanced rudder|spade type|keel hung rudder|skeg rudder|half skeg|skeg mounted|full skeg|"
        "partial skeg|behind the keel"
    ),
    "UNDER": (
        "beneath the counter|below the counter|on the keel|on its keel|hung on the keel|well under|"
        "beneath the boat|underneath the hull|inboard|skeg|under the boat|under the hull|underneath the boat|"
        "below the hull|under the water|beneath the hull|under the counter|under the cockpit|under the stern|"
        "on a skeg|under her"
    ),
    "TRAILING": (
        "trailing edge|back edge|after edge|aft edge|aftmost edge|aftermost edge|back edge of the rudder|"
        "rear edge|back border|after end|aft end|aft border|aftermost part|aftmost part|aftmost point|"
        "aftermost point|furthest aft point"
    ),
    "STOCK": (
        "stock|rudder stock|rudderstock|rudder post|rudder shaft|rudder axis|rudder tube|centre of the stock|"
        "stock centre|axis of the rudder"
    ),
    "GRP": (
        "glass|glassfibre|glass fibre|fiberglass|fibreglass|grp|frp|laminate|polyester|fiber glass|gelcoat|"
        "chopped strand|hand laid|plastic|fibre"
    ),
    "SOLID": (
        "no sandwich|without sandwich|not sandwich|no foam|without core|solid|single skin|solid laminate|"
        "solid glass|solid fibreglass|solid fiberglass|solid grp|monolithic|no core|solid glassfibre|"
        "solid lay up|solid layup"
    ),
    "CORED": (
        "cored|balsa|foam core|sandwich|foam sandwich|balsa core|balsa cored|foam cored|sandwich construction|"
        "divinycell|in sandwich|foam|plywood core|ply core"
    ),
    "WOOD": (
        "from wood|in wood|of timber|wooden|timber|mahogany planked|strip planked|cold moulded|wood|carvel|larch|"
        "oak|teak hull|iroko|clinker|cedar|strip plank|mahogany on oak|planked|plywood hull|plywood|epoxy wood|"
        "wooden hull|wooden boat|of wood|built in wood|pitch pine|mahogany|carvel planked|she is wooden|"
        "she's wooden|she is wood"
    ),
    "ALU": (
        "from aluminium|of aluminium|in aluminium|from aluminum|of aluminum|aluminium|aluminum|alloy hull|alloy|"
        "alu|aluminium hull|aluminum hull|she is aluminium|she's aluminium|she is alloy"
    ),
    "STEEL": (
        "from steel|of steel|steel ship|in steel|steel hull|steel boat|steel|steel construction|mild steel|"
        "steel plate|built of steel|built in steel|made of steel|steel ketch|steel cutter|steel sloop|"
        "she is steel|she's steel|hull steel"
    ),
    "YEAR": (
        "made in|finished in|built|built in|launched in|from the year|year|year built|from|from year|model year|"
        "launched|vintage|of the year|constructed in|construction year|year of build|year of construction|"
        "dating from|from about|built about|laid down in|splashed in|built around|my year|of year"
    ),
    "HULL_NUMBER": "hull number|hull no|hull nr|build number|yard number|sail and hull number|hull number is|hin",
    "BUILDER": "builder|built by|yard|boatyard|manufacturer|make|boat builder|shipyard|built at|builders",
    "MODEL": (
        "model|boat|type|design|class|boat type|boat model|yacht|model of boat|boat make and model|vessel type|"
        "sailing boat type|yacht type|boat is|vessel"
    ),
}
