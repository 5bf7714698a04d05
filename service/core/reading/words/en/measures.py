"""English: what is measured, from where, which way and by what."""

WORDS = {
    "LENGTH": "overall|long overall|long|in length",
    "HEIGHT": (
        "height|high|freeboard|height above|tall|up from|heights|in height|elevation|transom height|"
        "height of the transom"
    ),
    "WIDTH": (
        "width|wide|across|breadth|breadth of|broad|in width|of width|width over|across the top|wide at the top|"
        "width up|breadthwise|athwartships|athwart|widths|side to side|from side to side|across the beam|"
        "transverse|breadths|from corner to corner|corner to corner|transom width|wideness|broadness|wide is|"
        "in wide"
    ),
    "THICK": (
        "thick of|thick|thickness|thickness of|skin thickness|laminate thickness|transom thickness|plating|"
        "plate thickness|plate|thicknesses|in thickness|thicker|gauge|plating thickness|lay-up thickness|"
        "wall thickness|shell thickness|hull thickness|transom plate"
    ),
    "DEPTH": (
        "depth|deep|fore and aft|front to back|from front to back|fore-and-aft|front to rear|lengthwise|fore to aft"
    ),
    "LOA": (
        "length all|all length|whole length|full length|length|loa|length overall|length over all|overall length|"
        "length of the boat|boat length|length is|l o a|length o a|hull length|length over deck|length of hull|"
        "total length|stem to stern|from stem to stern|bow to stern|in overall length|l.o.a|lod|length on deck|"
        "overall|whole lenght|all lenght|total lenght|full lenght|long of boat|for outside|outside to outside|"
        "out to out"
    ),
    "LWL": "lwl|length waterline|waterline length|length at the waterline|length on the waterline",
    "BEAM": (
        "beam|max beam|beam max|boat is wide|breadth overall|maximum beam|maximum breadth|beam overall|b max|boa|"
        "breadth max|max breadth|widest|widest point|at her widest|max. beam|boat's beam|beamy|beam of|wideness|"
        "broadest|boat wide|of mouth|mouth"
    ),
    "DRAFT": (
        "draft|draught|draws|drawing|draws about|depth of keel|drawing about|draughts|deep draught|draft of|"
        "draught of|keel depth|depth to keel"
    ),
    "DISPLACEMENT": (
        "displacement|displaces|displ|weighs|weigh|weight|all up weight|heavy|travel lift|displacing|"
        "displacement is|tonnage|weighing|all in weight|weight in cruising trim|weight loaded|"
        "the weight of the boat|weigh in|crane|hoist|scales|displacements|weighs in at|tips the scales|all-up|"
        "laden weight|sailing weight|lift weight|cruising weight|cruising trim|loaded displacement|"
        "light displacement|her weight|total weight|dry weight|gross weight|weighed"
    ),
    "BALLAST": (
        "ballast|keel weight|engine|dinghy|tender|crew|anchor|lead|keel weighs|outboard motor weighs|iron keel|"
        "ballast keel|water tanks"
    ),
    "RAKE": (
        "rake|raked|angle|transom angle|rakes|inclination|slope|rake of the transom|transom rake|raking|"
        "rake angle|slant|transom slope|tilt|inclination of transom|off vertical|off the vertical|off plumb|"
        "out of plumb|out of vertical|from the vertical|from vertical|to the vertical|angled at|raked at|cant|"
        "canted"
    ),
    "LEAN": (
        "leans|lean|leaning|rakes|raked|slopes|sloping|tilts|tilted|inclined|leant|leaning back|slants|slanting|"
        "slanted|tips|tipped|is inclined|leaned|lies back|falls|falls back|falls away|sloped|makes an angle|"
        "tumbles|slope|angled|leans over|falling|canted|slopes away|slopes off|falls off|leans out|leans in|"
        "pitched|kicks|tilts back|cants|set back|raking|flares|slanting back|slopes the usual way|"
        "rakes the usual way|slopes in the usual way|leans the usual way|sloping the usual way"
    ),
    "TURN": (
        "either way|each way|hard over|deflection|turns|max deflection|maximum deflection|to each side|"
        "each side of centre|stops at|lock to lock|rudder angle|swing of the rudder|either side of centre|turn|"
        "to either side|per side|hard-over|rudder stops|swings through|full lock|helm angle|maximum rudder angle|"
        "rudder travel|max rudder|of helm|turning angle|rudder throw|full deflection|from centre to"
    ),
    "FORWARD": (
        "to front|to the front|more to bow|more to the bow|to bow|to fore|more to fore|forward|further forward|"
        "ahead of|in front of|towards the bow|fwd|more in front|in front|toward the bow|to the bow|forwards|"
        "forrard|for'ard|more forward|ahead|before the|more to the front|inwards|toward the front|inboard of|"
        "bow ward|bowward|towards the bows|toward the bows|forward of|inboard from|nearer the bow|"
        "closer to the bow|in towards the cockpit|towards the cockpit|inward|farther forward|into the boat|"
        "short of|forward from|shy of|short of the|inside the|in from"
    ),
    "AFT": (
        "aft|further aft|farther aft|behind|astern|abaft|past|backwards|aft of|backward|more behind|"
        "toward the stern|to the rear|further back|farther back|more to the rear|aftwards|more aft|rearward|"
        "rearwards|outward|sternward|sternwards|outwards|proud of|beyond|clear of|to aft|past the|aft from|"
        "more astern|beyond the|back from|towards the stern|at the rear|to stern|further out|farther out|aftward|"
        "outboard of the transom|behind it|trailing behind|abaft the|backward of|further astern|to back|"
        "to the back|further to the back"
    ),
    "TOP": (
        "its head|"
        "head of the rudder|top of the rudder|rudder's head|rudder top|top of the sternpost|"
        "head of the sternpost|sternpost top|top of the post|at deck|at the deck|edge of the transom|"
        "lip of the transom|to the deck|up to the deck|up there|from the deck to the water|up edge|high edge|"
        "goes up to|rises to|comes up to|goes up|reaches up to|head|sternpost head|edge of the sole|"
        "edge of the cockpit sole|top|top edge|upper edge|deck edge|upper side|up side|high part|upper part|"
        "upper end|uppermost edge|upper edge of|the high|topmost edge|top of the transom|transom top|at the high|"
        "up at the top|deck level|the up side|top side|high side|up part|upper border|top border|width up|"
        "across the top|wide at the top|topmost|highest point|highest part|crown|rim|upper rim|upper lip|top lip|"
        "deck line|deck edge at the stern|uppermost|its top|very top|top rim|topside edge|sheer|sheerline|"
        "sheer line|at its highest|from the top|at the top|transom lip|stern post head|rudder post head|"
        "deck to water|deck to the water|water to deck|down from the deck|from deck"
    ),
    "BOTTOM": (
        "foot of the rudder|bottom of the rudder|heel of the rudder|rudder's foot|rudder heel|rudder bottom|"
        "tip of the rudder|goes down to|comes down to|reaches down to|low side|low edge|under edge|below side|"
        "bottom|bottom edge|lower edge|foot of the transom|bottom of the transom|lower side|down side|low part|"
        "lower part|lower end|underside|lowest part|lowest edge|lowest point|below edge|lower border|down part|"
        "lowest|its bottom|very bottom|bottom lip|foot|heel of the transom|bottom corner|lower lip|lower rim|"
        "tuck|knuckle|at its lowest|at the bottom|bottom side"
    ),
    "WATER": (
        "clear|under the water|water|waterline|water line|wl|dwl|lwl line|waterlines|load waterline|lwl mark|sea|"
        "sea level|water level|water's surface|surface of the water|floating line|float line|line of flotation|"
        "freeboard|under water|below the water|below water|beneath the water|under the waterline|"
        "below the waterline|below waterline|in the water|at the water|level with the water|at water level|"
        "at the waterline|on the waterline|right at the water|right on the water|flush with the water|"
        "touching the water|meets the water|in line with the water|the surface|wet line|float plane|"
        "water's level|sea surface|dead level of the water|lwl|design waterline|designed waterline|"
        "painted waterline|actual waterline|static waterline|waterplane|the wet|water's edge|afloat|"
        "water surface|below the surface|beneath the surface|under the surface|under surface|below surface|"
        "in under the water|immersed|submerged"
    ),
    "AT_WATER": (
        "at the water|level with the water|at water level|at the waterline|on the waterline|right at the water|"
        "right on the water|flush with the water|touching the water|meets the water|in line with the water"
    ),
    "JUST_TOUCH": "just touches|touches|just at|exactly at|just touching|just kisses|kisses|just in|level with|awash",
    "BELOW": (
        "under the water|in under the water|below|under|beneath|under water|below the water|below water|immersed|"
        "underwater|submerged|beneath the water|below the surface|under the waterline|below the waterline|"
        "below waterline|in the water|below it|beneath the surface|under the surface|under surface|below surface|"
        "dips|dipped|goes under by|sits below|is under by"
    ),
    "BOOTSTRIPE": (
        "bootstripe|boot stripe|boottop|boot top|boot top line|boottopping|boot topping|boot line|boot-top stripe"
    ),
    "TOERAIL": (
        "toe rail|toerail|cap rail|coaming|bulwark|bulwarks|gunwale|rubbing strake|rail cap|caprail|toe rails|"
        "capping|capping rail|teak capping|bulwark capping|wooden capping|covering board|rail capping|cap-rail|"
        "toe-rail|rail|the rail|toerail cap|toe rail cap|cap rail top"
    ),
    "KEEL": "keel|hull bottom",
    "COCKPIT": (
        "edge of the cockpit sole|edge of the sole|cockpit|cockpit sole|cockpit floor|floor of cockpit|sole edge|"
        "sole of the cockpit|cockpit sole's edge|sole|cockpit well|cockpit floor edge|aft edge of the sole|"
        "sole's edge"
    ),
    "STEP": (
        "swim platform moulded into the hull|swim platform moulded into|step moulded into the hull|"
        "step moulded into|steps moulded into|platform moulded into the hull|integral swim platform|"
        "moulded in swim platform|moulded swim platform|molded swim platform|built in swim platform|"
        "integrated swim platform|swim step|step|bathing step|sugar scoop step|moulded step|molded step|"
        "moulded in step|swim step height|step height|integral step"
    ),
    "ENDS": (
        "ends|stops|finishes|stops short|finish|ending|terminates|ends up|stops at|ends at|finishes at|pulls up|"
        "leaves off|gives out|runs to|runs out to|goes out to"
    ),
    "STICK_OUT": (
        "sticks out|stick out|protrudes|extends|projects|reaching|reaches|sticks|stands out|standing out|"
        "protruding|extending|projecting|sticking out|pokes out|overhangs|overhanging the stern|comes out|"
        "stands proud|out behind|juts out|hangs out|hanging out|stand out|stick past|sticks past|sticks aft|"
        "extends aft|extends past|pokes|projects aft|extends beyond|overhangs by|protrude|projecting aft|"
        "comes aft|projection|overhang of|goes out|goes back|goes out to back|goes behind|reaches back|"
        "comes out to back"
    ),
    "M_TAPE": (
        "tape|tape measure|measuring tape|end of the tape|folding rule|ruler|steel rule|tape measured|by tape|"
        "with a tape|a tape|measuring stick|yardstick|with the meter|tape-measured|with tape|steel tape|"
        "tailor's tape|carpenter's rule|folding ruler|measured with a tape|tape and plumb bob|two metre rule|"
        "tape and level"
    ),
    "M_PHONE": (
        "telephone|phone level|level on my telephone|level on my phone|phone app|level app|inclinometer app|"
        "level of my phone|level on the phone|on my phone|with my phone|spirit level app|smartphone|iphone|"
        "my phone's level|level on the iphone|mobile's level|level app on|phone's level|phone inclinometer|"
        "phone's inclinometer|app on the phone|using the phone|with the phone|clinometer app|angle app"
    ),
    "M_INCL": "inclinometer|clinometer|angle finder|protractor|digital level|angle gauge",
    "M_LASER": "laser|laser measure|laser meter",
    "M_DRAWING": (
        "drawing|drawings|lines plan|plans|yard plan|builder's plan|from the plan|drawing plan|off the drawing|"
        "sail plan|general arrangement|scaled off|blueprint|lines drawing|line drawing|line drawings|"
        "construction drawing|construction drawings|designer's drawing|designer's drawings|sailplan|hull lines|"
        "yard's plan|yard's drawing|yard drawing|builder's drawing|builder's drawings|profile drawing|"
        "from drawings|on the drawing|scaled from|ga drawing|arrangement drawing|drawn plan|builders plan|"
        "architect's plan|drawings of the boat|design drawing"
    ),
    "M_BROCHURE": (
        "brochure|by the book|data sheet|specification|leaflet|manual|owner's manual|brochures|specs|spec sheet|"
        "according to the yard|according to the builder|according to the book|published|sales brochure|"
        "sales leaflet|from the brochure|handbook|according to the brochure|data-sheet|datasheet|spec says|"
        "builder's spec|builder's figures|builder's figure|yard figure|yard figures|yard's figures|"
        "manufacturer's figure|measurement certificate|rating certificate|ship's papers|boat test|magazine test"
    ),
    "M_GUESS": (
        "guess|guessing|at a guess|guesstimate|estimate|by eye|eyeballed|eyeball|roughly guessed|guessed|"
        "guesstimated|i reckon|estimated|rough guess|estimating|by my eye|ballpark|ballpark figure|i'd guess|"
        "i would guess|my guess|guess work|guesswork|at a rough guess|educated guess|thumb in the air|"
        "finger in the air|by eye only|judged by eye|eye balled|more or less a guess|from memory|rough estimate"
    ),
    "M_PHOTO": "photo|photograph|from a photo|photos|off a photo|picture|a photograph",
    "MEASURED": "measured|measurements|measurement|measure|measuring|dimensions|taken|figures",
    "PLUMB_LINE": (
        "plumb line|plumb bob|plumbline|plumb-bob|plummet|bob|a bob|weighted line|weighted string|"
        "string with a weight|lead line|fishing weight|string|a weight on a string|weight on a string|"
        "nut on a string"
    ),
    "GIVE_TAKE": (
        "give or take|plus or minus|plus minus|plus or minus about|to within|accurate to|error of|margin of|"
        "plus/minus|to the nearest|tolerance of|+/-|margin of error|uncertainty of|with an error of|"
        "or thereabouts within"
    ),
}
