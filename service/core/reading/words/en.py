"""English."""

from __future__ import annotations

from service.core.reading.lexis import Vocabulary

VOCABULARY = Vocabulary(
    language="en",
    common="the and is of to in it that we you for with my our have has are was would what which from this on at be "
    "not "
    "your please thanks she her they will can could me do does hello hi dear here but if or an there how one",
    concepts={
        "M_INCL": "inclinometer|clinometer",
        "LENGTH": "long|in length",
        # where
        "TRANSOM": "transom|transom's|stern|back end|taffrail|riser",
        "POST": "sternpost head|sternpost|stern post|post",
        "TOP": "head|sternpost head|edge of the sole|edge of the cockpit sole|top|top edge|upper edge|deck edge",
        "BOTTOM": "bottom|bottom edge|lower edge|foot of the transom",
        "WATER": "water|waterline|water line|wl|dwl|lwl line",
        "BOOTSTRIPE": "bootstripe|boot stripe|boottop|boot top",
        "TOERAIL": "toe rail|toerail|cap rail|coaming|bulwark",
        "STEP": "swim step|step|bathing step|sugar scoop step",
        "COCKPIT": "edge of the cockpit sole|edge of the sole|cockpit|cockpit sole|cockpit floor|floor of cockpit",
        "KEEL": "keel|hull bottom",
        "HULL": "hull|laminate|skin|lay up|layup",
        "BOAT": "boat|yacht|sloop|ketch|vessel|boat type|my boat",
        # what is measured
        "HEIGHT": "height|high|freeboard",
        "WIDTH": "width|wide|across|breadth",
        "THICK": "thick|thickness",
        "DEPTH": "depth|deep",
        "LOA": "loa|length overall|length over all|overall length|length of the boat|boat length|length is",
        "LWL": "lwl|length waterline|waterline length",
        "BEAM": "beam|max beam|beam max|boat is wide",
        "DRAFT": "draft|draught|draws|drawing",
        "DISPLACEMENT": "displacement|displaces|displ|weighs|weigh|weight|all up weight|heavy|travel lift",
        "BALLAST": "ballast|keel weight|engine|dinghy|tender|crew|anchor",
        "RAKE": "rake|raked|angle|transom angle|rakes|inclination|slope",
        "LEAN": "leans|lean|leaning|rakes|raked|slopes|sloping|tilts|tilted|inclined|leant",
        "FORWARD": "forward|further forward|ahead of|in front of|towards the bow|fwd",
        "AFT": "aft|further aft|farther aft|behind|astern|abaft|past|backwards|aft of",
        # sorts of stern
        "PLUMB": "plumb|bolt upright|dead upright|upright|vertical",
        "REVERSE": "reverse|reversed|reverse transom|retrousse|negative rake|sugar scoop stern",
        "COUNTER": "counter|counter stern|conventional rake|traditional rake|raked aft|rakes aft|leans aft|overhanging",
        "SCOOP": "sugar scoop|scoop|swim step|scoop stern",
        "OPEN": "open transom|open stern|stern is open|transom is open|drop down transom|walk through transom",
        "DOUBLE": "double ender|double ended|canoe stern|canoe sterned|norwegian stern|pointed stern",
        # main rudder
        "RUDDER": "rudder|rudders|outboard rudder|main rudder|rudder is",
        "HUNG_OUT": "outboard rudder|transom hung|stern hung|hung on the transom|hung outboard|on pintles|pintles|"
        "hung on the sternpost|rudder hung on the stern|outboard hung",
        "HUNG_IN": "spade|spade rudder|skeg hung|inboard rudder|keel hung|balanced rudder",
        "UNDER": "inboard|skeg|under the boat|under the hull",
        "TRAILING": "trailing edge|back edge|after edge|aft edge|aftmost edge|aftermost edge",
        "STOCK": "stock|rudder stock|rudderstock|rudder post|rudder shaft",
        "STICK_OUT": "sticks out|stick out|protrudes|extends|projects|reaching|reaches|sticks",
        "TURN": "either way|each way|hard over|deflection|turns|max deflection|maximum deflection",
        # what it is made of
        "GRP": "glass|glassfibre|glass fibre|fiberglass|fibreglass|grp|frp|laminate|polyester",
        "SOLID": "solid|single skin|solid laminate",
        "CORED": "cored|balsa|foam core|sandwich|foam sandwich|balsa core",
        "WOOD": "wooden|timber|mahogany planked|strip planked|cold moulded|wood",
        "ALU": "aluminium|aluminum|alloy hull",
        "STEEL": "steel hull|steel boat|steel|steel construction",
        # what stands in the way
        "O_LADDER": "ladder|boarding ladder|swim ladder|bathing ladder|stern ladder|swimming ladder",
        "O_PLATFORM": "platform|bathing platform|swim platform|swimming platform|platform for bath",
        "O_DAVITS": "davits|davit",
        "O_OUTBOARD": "outboard|outboard bracket|outboard motor|outboard engine",
        "O_EXHAUST": "exhaust|exhaust outlet",
        "O_RAIL": "pushpit|pushpits|stern rail|stern pulpit|aft rail",
        "O_STAY": "backstay|backstays|split backstay|twin backstays",
        "O_BOOM": "mizzen boom|boom end|main boom",
        "O_BOOMKIN": "boomkin|bumpkin",
        "O_ARCH": "arch|gantry|radar arch|targa",
        "O_PANELS": "solar panels|solar panel|solar|panels",
        "O_MAST": "radar pole|radar mast|wind generator|antenna mast|aerial pole|radar post",
        "O_STAFF": "ensign staff|flagstaff|flag pole|flagpole",
        "O_PASSERELLE": "passerelle|gangway|boarding plank",
        "O_LOCKER": "stern locker|lazarette box|gas locker",
        "FOLD": "folding|folds|foldable|folds up|hinged|hinges|fold|fold down|going down on hinges|drops down",
        "FIXED": "fixed|bolted|welded|rigid|permanent",
        "SWING": "swings|swinging|swing",
        "SLIDE": "slides|sliding|telescopic",
        "REMOVE": "come off|removable|can be removed|could go|can go|removed|can come off|remove it|take it off",
        "KEEP": "keep them|has to stay|have to stay|stays|must stay|keep|keep it|keep that|has to stay|must remain|"
        "needs to stay|not for moving",
        "YES": "yes|yep|correct",
        "NOT": "no|not|n a|none|without|doesn't|doesn't exist|never|isn't|nothing|nor|haven't|don't have|neither",
        "PORT": "port|port side|port half|to port|port hand|left side",
        "STARBOARD": "starboard|starboard side|stbd|starboard half|to starboard|to stbd|starboard hand|right side",
        "CENTRE": "centre|center|middle|centred|centered|centreline|centerline|off centre|off center|midships",
        "EACH_SIDE": "each side|either side|both sides",
        "PREFER": "prefer|would like it on|rather have it|would rather|i'd like it|preferably|preference",
        # about the telling
        "OTHER_BOAT": "neighbour|neighbor|next mooring|friend|friends|his boat|her boat|sister ship of mine|"
        "previous boat|"
        "old boat|last boat|brother|next berth|on his|berthed next",
        "WITHDRAW": "forget|ignore|disregard|scrap",
        "MEANT": "meant|i mean|should be|should read|should have been|correction",
        "JUST_TOUCH": "just touches|touches|at the water|just at|level with the water|at water level|exactly at",
        "BELOW": "below|under|beneath|under water|below the water|below water|immersed",
        "OURS": "ours|mine|our boat|our own|we have|i have|we now have|my own",
        "YEAR": "built|built in|launched in|from the year|year|year built|from|from year|model year|launched|vintage",
        "HULL_NUMBER": "hull number|hull no|hull nr|build number|yard number|sail and hull number",
        "BUILDER": "builder|built by|yard|boatyard|manufacturer|make",
        "MODEL": "model|boat|type|design|class|boat type|boat model|yacht",
        "M_TAPE": "tape|tape measure|measuring tape|end of the tape",
        "M_PHONE": "telephone|phone level|level on my telephone|level on my phone|phone app|level app|inclinometer app",
        "M_LASER": "laser",
        "M_DRAWING": "drawing|drawings|lines plan|plans",
        "M_BROCHURE": "brochure|by the book|data sheet|specification",
        "M_GUESS": "guess|guessing|at a guess|guesstimate|estimate",
        "M_PHOTO": "photo|photograph|from a photo",
        # what the writer wants
        "ASK": "what would i need|what do i need|would i need|what does it cost|what he needs|suggest|please quote|"
        "quote|"
        "quote request|please advise|advise|which bracket|which of your|which gear|would like to know|does it fit|"
        "will it fit|"
        "would it fit|can your gear|what fits|your gear|interested|how much|price|recommend|fits|fit|request|requests|"
        "what do you|what can you|need|looking for|offer|question of|is possible|answers below|i meant|"
        "everything else stands|"
        "measurements|suitable|which size|suit|could you",
        "GEAR": "windvane|wind vane|self steering|selfsteering|vane gear|steering gear|vane",
        "ORDER": "parts please|parts|bushes|pins|send me|please send me|spare|spares|spare part|spare parts|order|"
        "replacement|ship to|bushing|bushings|"
        "bolt kit|"
        "serial|serial number|send me a new|reorder",
        "OWNED": "one of your gears|had one of your|had your gear|never let me down|bought from you|works very well|"
        "we have your gear|fitted since|your gear has|my gear|our gear|"
        "installed in|"
        "for my self steering gear|serial",
        "THANKS": "thank you|thanks|many thanks|arrived safely|just wanted to say|very happy|great service|"
        "works a treat",
        "SIGN_OFF": "regards|kind regards|best regards|best|best wishes|cheers|yours|yours faithfully|"
        "yours sincerely|thanks|"
        "thanks in advance|many thanks|thank you|with respect|ta|sincerely|fair winds|all the best|with kind regards|"
        "greetings",
        "CUSTOMER": "customer|customers|client|clients|one of our customers|for a customer|another one for you",
        "COMPANY": "marine|chandlery|yachts|boatyard|supply|supplies|sales|ltd|llc|inc|boat works|yacht services|"
        "rigging|"
        "riggers|sailmakers|marine services|shipyard",
        "PHONE": "tel|phone|mobile|mob|cell|call|t|m|ph",
        "FAX": "fax|f|co|company|reg|vat|no",
    },
)
