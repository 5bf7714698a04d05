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
    "HULL": "scantlings|planking|planks|plating|hull|laminate|skin|lay up|layup|plank|plate",
    "BOAT": "ship|boat|yacht|sloop|ketch|vessel|boat type|my boat",
    "PLUMB": (
        "is straight|dead straight|strait up|strait up and down|strait up n down|straight up n down|"
        "straight up & down|vertcal|verticle|dead vertical|plumb|bolt upright|dead upright|upright|vertical|"
        "perpendicular|dead plumb|near vertical|nearly plumb|straight up and down|straight up|plumb vertical|"
        "dead straight up|perfectly vertical|almost vertical|bolt-upright|perfectly plumb|practically vertical|"
        "stands vertical|virtually vertical|near enough vertical|plumb as a wall|straight as a wall|no rake|"
        "without rake|zero rake|pretty much vertical|more or less vertical|standing straight|stands straight|"
        "straight as wall|straight like a wall|straight as wall of house|absolutely straight|completely straight|"
        "stand straight|zero degrees"
    ),
    "REVERSE": (
        "other way round to a counter|other way round from a counter|opposite of a counter|"
        "the opposite of a counter|other way from a counter|opposite way to a counter|reverse|reversed|"
        "reverse transom|retrousse|negative rake|sugar scoop stern|reverse raked|reverse sloping|negative|"
        "negative transom|reverse sheer stern|negatively raked|inverted transom|inverted|reverse rake|"
        "raked forward|rakes forward|raked forwards|leans forward|slopes forward|reverse angle|reverse slope|"
        "reversed transom|reverse raked transom|tumblehome stern|negative angle|forward rake|forward sloping|"
        "forward raked|forward leaning|leaning forward|sloping forward|retroussé"
    ),
    "COUNTER": (
        "top hangs out aft|top hangs aft|hangs out aft at the top|top hangs out over the water|"
        "slopes the usual way|rakes the usual way|slopes in the usual way|leans the usual way|the usual slope|"
        "sloping the usual way|raked the usual way|deck overhangs the waterline|deck overhangs the water|counter|"
        "counter stern|conventional rake|traditional rake|raked aft|rakes aft|leans aft|overhanging|"
        "positive rake|normal rake|rakes backwards|classic counter|conventional transom|traditional transom|"
        "positive|counter sterned|long counter|overhang aft|overhangs aft|aft raked|aft sloping|aft leaning|"
        "traditional stern|classic stern|classic transom|normal transom|normal stern|long overhang|leaning aft|"
        "raking aft|sloping aft|conventional stern|yacht counter|short counter|raked aftwards|slopes in under|"
        "slopes away under|tucks in under|goes in under|cuts in under|falls away under|undercut"
    ),
    "SCOOP": (
        "swim platform moulded into the hull|step moulded into the hull|steps moulded into the hull|"
        "moulded into the hull|molded into the hull|moulded in one with the hull|moulded as part of the hull|"
        "built into the hull|part of the hull moulding|part of the hull mould|swim platform moulded into|"
        "platform moulded into the hull|sugar scoop stern|sugar scoop transom|scoop transom|"
        "integral swim platform|moulded in swim platform|molded swim platform|moulded swim platform|"
        "built in swim platform|integrated swim platform|molded in swim platform|sugar scoop|scoop|swim step|"
        "scoop stern|scooped|sugarscoop|moulded in swim step|moulded swim step|moulded bathing step|"
        "step moulded into|steps moulded into|walk down steps|integral swim step|moulded in steps|"
        "stepped transom|sugar-scoop|scooped stern|scoop sterned|steps in the transom|steps moulded in|"
        "steps in the stern|stepped stern|walk-down stern|integral steps|stern steps moulded|moulded steps|"
        "molded steps|molded in steps|sugarscoop stern|swim step molded|moulded platform|built in steps|"
        "integral bathing platform|integrated bathing platform|moulded in bathing platform|moulded-in platform|"
        "swim platform moulded in|steps built into the transom"
    ),
    "OPEN": (
        "open at the stern|stern open|transom open|open transom|open stern|stern is open|transom is open|"
        "drop down transom|walk through transom|open transomed|open aft|drop transom|drops down to form|"
        "fold down transom|folding transom|drop down stern|no transom|panel that drops|no transom at all|"
        "open at the back|wide open stern|hinged transom|transom that drops|transom door|no transom to speak of|"
        "transomless|open sterned|open cockpit aft|drop-down|stern folds down|transom folds down|"
        "transom hinges down|drop down bathing platform|tailgate|fully open|wide open|walk-through|"
        "walkthrough transom|open ended cockpit|fold down stern|fold out transom|transom opens|opening transom|"
        "transom drops|transom lowers|stern drops down|garage door"
    ),
    "DOUBLE": (
        "double ender|double ended|canoe stern|canoe sterned|norwegian stern|pointed stern|canoe sterns|"
        "pointed at both ends|colin type stern|sharp stern|canoe back end|sterned like a canoe|double-ender|"
        "double-ended|double ender hull|double enders|pointed both ends|sharp at both ends|stern is pointed|"
        "pointy stern|pointy at both ends|cruiser stern|lifeboat stern|whaleback stern|ends in a point|"
        "pinched stern|pointed aft|sharp sterned|stern comes to a point|no transom but a sternpost"
    ),
    "RUDDER": (
        "its head|"
        "rudder|rudders|outboard rudder|main rudder|rudder is|rudder blade|twin rudders|two rudders|main rudders|"
        "back edge of the rudder|rudder stock|rudder post|rudder shaft|rudder axis|rudder tube|"
        "axis of the rudder|spade rudder|inboard rudder|balanced rudder|skeg hung rudder|semi balanced rudder|"
        "keel hung rudder|skeg rudder|rudder hung on the stern|rudder on the transom|outboard hung rudder|"
        "transom hung rudder|helm blade|rudder's|rudders'|steering rudder|rudder foil|blade of the rudder|"
        "rudder assembly|main rudder's|boat's rudder|boat's own rudder|ship's rudder|the blade|its blade|"
        "blade of rudder|barn door rudder|rudder is outboard|external rudder|lift up rudder on the transom|"
        "kick up rudder|rudder hangs outside|spade rudders|rudder post goes through|foot of the rudder|"
        "bottom of the rudder|heel of the rudder|rudder's foot|rudder heel|rudder bottom|tip of the rudder|"
        "head of the rudder|top of the rudder|rudder's head|rudder top|suspended rudder|"
        "axe of the rudder|rudder axe|axe of rudder|the axe of the rudder"
    ),
    "HUNG_OUT": (
        "fixed in the stern|fixed on the stern|fixed to the transom|fixed on the transom|fixed to the stern|"
        "hanging in stern|hanging on stern|hanging on the stern|hanging on the transom|hanging from the transom|"
        "hanging at the stern|outboard rudder|transom hung|stern hung|hung on the transom|hung outboard|"
        "on pintles|pintles|hung on the sternpost|rudder hung on the stern|outboard hung|rudder on the transom|"
        "hangs on the transom|hung off the transom|hangs off the transom|hung from the transom|"
        "attached to the transom|on the stern post|hung on the stern|transom mounted|outboard hung rudder|"
        "transom hung rudder|hung on the back|hangs on the sternpost|hangs from the sternpost|"
        "hung from the sternpost|hung over the stern|hangs behind the transom|mounted on the transom|barn door|"
        "barn door rudder|rudder is outboard|hangs off the stern|hangs on the back|hangs off the back|"
        "hung off the stern|hung off the back|hung aft|hangs on the stern|hangs from the transom|"
        "hangs from the stern|stern-hung|transom-hung|on the outside of the transom|bolted to the transom|"
        "on gudgeons|gudgeons|pintles and gudgeons|gudgeons and pintles|hinged on the transom|"
        "hinged to the transom|pinned to the transom|lives on the transom|external rudder|hung at the stern|"
        "on the back of the boat|lift up rudder on the transom|attached to the stern|hung outside|"
        "slung on the transom|hangs outboard|hangs outside|mounted on the stern|kick up rudder|"
        "rudder hangs outside|hanging behind|hangs behind on|is hanging behind|hanging behind on the mirror|"
        "hangs on the mirror|on three hinges|on hinges on the stern|hanging on the mirror|hanging outside|"
        "hangs on hinges|on its hinges"
    ),
    "HUNG_IN": (
        "hung on the back of the keel|hung off the keel|hung from the keel|hung on the skeg|hung off the skeg|"
        "hangs on the keel|hangs on the skeg|hinged on the keel|hinged to the keel|"
        "hung on the trailing edge of the keel|hangs off the back of the keel|hangs off the keel|"
        "hung on the aft end of the keel|spade|spade rudder|skeg hung|inboard rudder|keel hung|balanced rudder|"
        "skeg hung rudder|semi balanced|semi balanced rudder|spade type|keel hung rudder|skeg rudder|half skeg|"
        "skeg mounted|full skeg|partial skeg|behind the keel|spade rudders|under-hung|underhung|skeg-hung|"
        "skegged|semi-skeg|semi skeg|semi skeg hung|keel-hung|attached to the keel|hung on the keel|"
        "hung behind the keel|hangs behind the keel|on the trailing edge of the keel|"
        "on the after end of the keel|hangs under|free-hanging|free hanging|balanced spade|semi-balanced|"
        "behind a skeg|with a skeg|deep spade|freestanding|on the back of the keel|aft end of the keel|"
        "hung on a skeg|hangs on a skeg|supported by a skeg|protected by a skeg|rudder post goes through|"
        "stock through the hull|suspended|suspended rudder|hanging below|below suspended|suspended below|"
        "behind the long keel|aft of the long keel|behind a long keel|on the after edge of the keel"
    ),
    "UNDER": (
        "beneath the counter|below the counter|on the keel|on its keel|hung on the keel|well under|"
        "beneath the boat|underneath the hull|inboard|skeg|under the boat|under the hull|underneath the boat|"
        "below the hull|under the water|beneath the hull|under the counter|under the cockpit|under the stern|"
        "on a skeg|under her|tucked under|tucked up under|tucked away under|underneath|under the bum|"
        "under her bum|well inboard|up under the stern|both under|is underneath|is below|are underneath|"
        "is down below"
    ),
    "TRAILING": (
        "their trailing edges|their trailing edge|their back edges|their aft edges|their after edges|"
        "their tips|"
        "back side of the blade|back side of the rudder|back part of the blade|rear side of the blade|"
        "backside of the blade|the back of the blade|back of the blade|back edge of the blade|"
        "aft edge of the blade|after edge of the blade|aft end of the blade|rear of the blade|trailing edge|"
        "back edge|after edge|aft edge|aftmost edge|aftermost edge|back edge of the rudder|rear edge|back border|"
        "after end|aft end|aft border|aftermost part|aftmost part|aftmost point|aftermost point|"
        "furthest aft point|back of the rudder|rear of the rudder|aft end of the rudder|after edge of the rudder|"
        "after side|rearmost edge|rearmost part|back end of the rudder|aft side of the rudder|tail of the rudder|"
        "rudder's back edge|aft face of the rudder|rudder trailing edge|blade's trailing edge"
    ),
    "STOCK": (
        "stock|rudder stock|rudderstock|rudder post|rudder shaft|rudder axis|rudder tube|centre of the stock|"
        "stock centre|axis of the rudder|rudder axle|stock centreline|centre of the rudder stock|stock axis|"
        "rudder bearing|pivot axis|rudder pivot|turning axis|stock's centre|rudderhead|rudder shaft centre|"
        "centre of the rudder shaft|pivot line|"
        "axe of the rudder|rudder axe|axe of rudder|the axe of the rudder"
    ),
    "GRP": (
        "glass|glassfibre|glass fibre|fiberglass|fibreglass|grp|frp|laminate|polyester|fiber glass|gelcoat|"
        "chopped strand|hand laid|plastic|fibre|glass reinforced|fiberglass reinforced|fibre glass|glass-fibre|"
        "plastic boat|glass reinforced plastic|fibreglass boat|fiberglass boat|gfk|vinylester|glass epoxy"
    ),
    "SOLID": (
        "no sandwich|without sandwich|not sandwich|no foam|without core|solid|single skin|solid laminate|"
        "solid glass|solid fibreglass|solid fiberglass|solid grp|monolithic|no core|solid glassfibre|"
        "solid lay up|solid layup|solid fibreglass laminate|solid glass laminate|single-skin|uncored|not cored|"
        "no coring|un-cored|solid laminated|solid throughout|solid hand layup|solid hand laid|hand laid solid|"
        "all glass|not a sandwich|isn't cored|no balsa|single laminate|solid polyester|solid frp|solid plastic|"
        "massive|fiber is massive|massive fiber|massive fibre|massive laminate|massive polyester"
    ),
    "CORED": (
        "cored|balsa|foam core|sandwich|foam sandwich|balsa core|balsa cored|foam cored|sandwich construction|"
        "divinycell|in sandwich|foam|plywood core|ply core|core of balsa|foam sandwich construction|airex|"
        "cored hull|coremat|end grain balsa|end-grain balsa|sandwich hull|corecell|core cell|pvc foam|honeycomb|"
        "sandwich laminate|sandwich-built|cored with|with a core|balsa sandwich|balsa-cored|foam-cored|"
        "sandwiched|klegecell"
    ),
    "WOOD": (
        "from wood|in wood|of timber|wooden|timber|mahogany planked|strip planked|cold moulded|wood|carvel|larch|"
        "oak|teak hull|iroko|clinker|cedar|strip plank|mahogany on oak|planked|plywood hull|plywood|epoxy wood|"
        "wooden hull|wooden boat|of wood|built in wood|pitch pine|mahogany|carvel planked|she is wooden|"
        "she's wooden|she is wood|wooden construction|cold-moulded|cold molded|strip-planked|timber hull|"
        "built of wood|built of timber|double diagonal|mahogany hull|teak planked|larch planked|oak frames|"
        "red cedar|marine ply|kauri|wood epoxy|wood/epoxy|spruce|douglas fir|carvel built|clinker built|"
        "lapstrake|larch on oak|pine on oak|teak on oak|all wood|wood hull|timber construction|sapele|"
        "marine plywood|cedar strip"
    ),
    "ALU": (
        "from aluminium|of aluminium|in aluminium|from aluminum|of aluminum|aluminium|aluminum|alloy hull|alloy|"
        "alu|aluminium hull|aluminum hull|she is aluminium|she's aluminium|she is alloy|aluminium-built|"
        "aluminum-built|aluminium boat|aluminum boat|alloy boat|built in aluminium|built in alloy|of alloy|"
        "made of aluminium|made of aluminum|aluminium construction|aluminium plate|aluminium alloy|"
        "built of aluminium|built of aluminum|alloy yacht"
    ),
    "STEEL": (
        "from steel|of steel|steel ship|in steel|steel hull|steel boat|steel|steel construction|mild steel|"
        "steel plate|built of steel|built in steel|made of steel|steel ketch|steel cutter|steel sloop|"
        "she is steel|she's steel|hull steel|steel-built|all steel|welded steel|steel plated|steel plating|"
        "she is a steel|corten|cor-ten|steel construction hull|steel yacht|multichine steel|round bilge steel|"
        "steel vessel|built from steel|steelie"
    ),
    "YEAR": (
        "made in|finished in|built|built in|launched in|from the year|year|year built|from|from year|model year|"
        "launched|vintage|of the year|constructed in|construction year|year of build|year of construction|"
        "dating from|from about|built about|laid down in|splashed in|built around|my year|of year|built at|"
        "built by"
    ),
    "HULL_NUMBER": "hull number|hull no|hull nr|build number|yard number|sail and hull number|hull number is|hin",
    "BUILDER": "builder|built by|yard|boatyard|manufacturer|make|boat builder|shipyard|built at|builders",
    "MODEL": (
        "model|boat|type|design|class|boat type|boat model|yacht|model of boat|boat make and model|vessel type|"
        "sailing boat type|yacht type|boat is|vessel"
    ),
}
