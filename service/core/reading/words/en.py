"""English."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary

VOCABULARY = Vocabulary(
    language="en",
    common="the and is of to in it that we you for with my our have has are was would what which from this on at be not "
    "your please thanks she her they will can could me do does hello hi dear here but if or an there how one am "
    "i these those been as by its into want",
    numbers=Numbers(
        ones="zero one/a/an two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen "
        "sixteen seventeen eighteen nineteen",
        tens="twenty thirty forty fifty sixty seventy eighty ninety",
        joint="{ten} {one}",
        hundred="hundred",
        half="half",
        and_="and",
        whole="three_quarters_of_an=0.75 three_quarters_of_a=0.75 half_an=0.5 half_a=0.5 quarter_of_an=0.25 "
        "a_quarter_of_an=0.25 three_quarter=0.75 one_and_a_half=1.5 {one}_and_a_half=+0.5 a_couple_of=2 "
        "couple_of=2",
    ),
    concepts={
        "M_INCL": "inclinometer|clinometer|angle finder|protractor|digital level|angle gauge",
        "LENGTH": "overall|long overall|long|in length",
        "TRANSOM": "edge of the transom|lip of the transom|"
        "transom|transom's|stern|back end|taffrail|riser|transom skin|transom board|mirror|transoms|stern board|"
        "top of the transom|transom top|foot of the transom|bottom of the transom|transom angle|"
        "rake of the transom|transom rake|transom slope|inclination of transom|transom thickness|reverse transom|"
        "sugar scoop stern|negative transom|reverse sheer stern|inverted transom",
        "POST": "top of the sternpost|head of the sternpost|sternpost top|top of the post|"
        "sternpost head|sternpost|stern post|post|stern post head|rudder post head",
        "TOP": "top of the sternpost|head of the sternpost|sternpost top|top of the post|"
        "at deck|at the deck|"
        "edge of the transom|lip of the transom|"
        "to the deck|up to the deck|up there|from the deck to the water|"
        "up edge|high edge|goes up to|rises to|comes up to|goes up|reaches up to|"
        "head|sternpost head|edge of the sole|edge of the cockpit sole|top|top edge|upper edge|deck edge|"
        "upper side|up side|high part|upper part|upper end|uppermost edge|upper edge of|the high|topmost edge|"
        "top of the transom|transom top|at the high|up at the top|deck level|the up side|top side|high side|"
        "up part|upper border|top border|width up|across the top|wide at the top",
        "BOTTOM": "goes down to|comes down to|reaches down to|"
        "low side|low edge|under edge|below side|"
        "bottom|bottom edge|lower edge|foot of the transom|bottom of the transom|lower side|down side|low part|"
        "lower part|lower end|underside|lowest part|lowest edge|lowest point|below edge|lower border|down part",
        "WATER": "clear|"
        "under the water|"
        "water|waterline|water line|wl|dwl|lwl line|waterlines|load waterline|lwl mark|sea|sea level|the sea|"
        "water level|water's surface|surface of the water|floating line|float line|line of flotation|freeboard|"
        "under water|below the water|below water|beneath the water|under the waterline|below the waterline|"
        "below waterline|in the water|at the water|level with the water|at water level|at the waterline|"
        "on the waterline|right at the water|right on the water|flush with the water|touching the water|"
        "meets the water|in line with the water",
        "BOOTSTRIPE": "bootstripe|boot stripe|boottop|boot top|boot top line|boottopping|boot topping|boot line|boot-top stripe",
        "TOERAIL": "toe rail|toerail|cap rail|coaming|bulwark|bulwarks|gunwale|rubbing strake|rail cap|caprail|toe rails",
        "STEP": "swim step|step|bathing step|sugar scoop step|moulded step|molded step|moulded in step|swim step height|"
        "step height|integral step",
        "COCKPIT": "edge of the cockpit sole|edge of the sole|cockpit|cockpit sole|cockpit floor|floor of cockpit|sole edge|"
        "sole of the cockpit|cockpit sole's edge",
        "KEEL": "keel|hull bottom",
        "HULL": "scantlings|planking|planks|plating|hull|laminate|skin|lay up|layup",
        "BOAT": "ship|boat|yacht|sloop|ketch|vessel|boat type|my boat",
        "HEIGHT": "height|high|freeboard|height above|tall|up from",
        "WIDTH": "width|wide|across|breadth|breadth of|broad|in width|of width|width over|across the top|wide at the top|"
        "width up",
        "THICK": "thick of|"
        "thick|thickness|thickness of|skin thickness|laminate thickness|transom thickness|plating|"
        "plate thickness|plate",
        "DEPTH": "depth|deep|fore and aft|front to back",
        "LOA": "length all|all length|whole length|full length|length|"
        "loa|length overall|length over all|overall length|length of the boat|boat length|length is|l o a|"
        "length o a|hull length|length over deck|length of hull|total length",
        "LWL": "lwl|length waterline|waterline length|length at the waterline|length on the waterline",
        "BEAM": "beam|max beam|beam max|boat is wide|breadth overall|maximum beam|maximum breadth|beam overall|b max|boa",
        "DRAFT": "draft|draught|draws|drawing|draws about|depth of keel|drawing about",
        "DISPLACEMENT": "displacement|displaces|displ|weighs|weigh|weight|all up weight|heavy|travel lift|displacing|"
        "displacement is|tonnage|weighing|all in weight|weight in cruising trim|weight loaded|"
        "the weight of the boat|weigh in|crane|hoist|scales",
        "BALLAST": "ballast|keel weight|engine|dinghy|tender|crew|anchor|lead|keel weighs|outboard motor weighs|iron keel|"
        "ballast keel|water tanks",
        "RAKE": "rake|raked|angle|transom angle|rakes|inclination|slope|rake of the transom|transom rake|raking|"
        "rake angle|slant|transom slope|tilt|inclination of transom",
        "LEAN": "leans|lean|leaning|rakes|raked|slopes|sloping|tilts|tilted|inclined|leant|leaning back|slants|slanting|"
        "slanted|tips|tipped|is inclined|leaned|lies back|falls|falls back|falls away|sloped|makes an angle|"
        "tumbles|slope|angled",
        "FORWARD": "to front|to the front|more to bow|more to the bow|to bow|to fore|more to fore|"
        "forward|further forward|ahead of|in front of|towards the bow|fwd|more in front|in front|toward the bow|"
        "to the bow|forwards|forrard|for'ard|more forward|ahead|before the|more to the front|inwards|"
        "toward the front|inboard of",
        "AFT": "aft|further aft|farther aft|behind|astern|abaft|past|backwards|aft of|backward|more behind|"
        "toward the stern|to the rear|further back|farther back|more to the rear|aftwards|more aft|rearward|"
        "rearwards|outward|sternward|sternwards|outwards|proud of|beyond|clear of",
        "PLUMB": "is straight|dead straight|"
        "strait up|strait up and down|strait up n down|straight up n down|straight up & down|vertcal|"
        "verticle|dead vertical|"
        "plumb|bolt upright|dead upright|upright|vertical|perpendicular|dead plumb|near vertical|nearly plumb|"
        "straight up and down|straight up|plumb vertical",
        "REVERSE": "reverse|reversed|reverse transom|retrousse|negative rake|sugar scoop stern|reverse raked|"
        "reverse sloping|negative|negative transom|reverse sheer stern|negatively raked|inverted transom|inverted",
        "COUNTER": "counter|counter stern|conventional rake|traditional rake|raked aft|rakes aft|leans aft|overhanging|"
        "positive rake|normal rake|rakes backwards|classic counter|conventional transom|traditional transom|"
        "positive",
        "SCOOP": "sugar scoop stern|sugar scoop transom|scoop transom|"
        "integral swim platform|moulded in swim platform|molded swim platform|moulded swim platform|"
        "built in swim platform|integrated swim platform|molded in swim platform|"
        "sugar scoop|scoop|swim step|scoop stern|scooped|sugarscoop|moulded in swim step|moulded swim step|"
        "moulded bathing step|step moulded into|steps moulded into|walk down steps|integral swim step|"
        "moulded in steps|stepped transom",
        "OPEN": "open at the stern|stern open|transom open|"
        "open transom|open stern|stern is open|transom is open|drop down transom|walk through transom|"
        "open transomed|open aft|drop transom|drops down to form|fold down transom|folding transom|"
        "drop down stern|no transom|panel that drops|no transom at all|open at the back|wide open stern|"
        "hinged transom|transom that drops|transom door",
        "DOUBLE": "double ender|double ended|canoe stern|canoe sterned|norwegian stern|pointed stern|canoe sterns|"
        "pointed at both ends|colin type stern|sharp stern|canoe back end|sterned like a canoe",
        "RUDDER": "rudder|rudders|outboard rudder|main rudder|rudder is|rudder blade|the rudder|twin rudders|two rudders|"
        "main rudders|back edge of the rudder|rudder stock|rudder post|rudder shaft|rudder axis|rudder tube|"
        "axis of the rudder|spade rudder|inboard rudder|balanced rudder|skeg hung rudder|semi balanced rudder|"
        "keel hung rudder|skeg rudder|rudder hung on the stern|rudder on the transom|outboard hung rudder|"
        "transom hung rudder",
        "HUNG_OUT": "fixed in the stern|fixed on the stern|fixed to the transom|fixed on the transom|fixed to the stern|"
        "hanging in stern|hanging on stern|hanging on the stern|hanging on the transom|"
        "hanging from the transom|hanging at the stern|"
        "outboard rudder|transom hung|stern hung|hung on the transom|hung outboard|on pintles|pintles|"
        "hung on the sternpost|rudder hung on the stern|outboard hung|rudder on the transom|hangs on the transom|"
        "hung off the transom|hangs off the transom|hung from the transom|attached to the transom|"
        "on the stern post|hung on the stern|transom mounted|outboard hung rudder|transom hung rudder|"
        "hung on the back|hangs on the sternpost|hangs from the sternpost|hung from the sternpost|"
        "hung over the stern|hangs behind the transom|mounted on the transom",
        "HUNG_IN": "spade|spade rudder|skeg hung|inboard rudder|keel hung|balanced rudder|skeg hung rudder|semi balanced|"
        "semi balanced rudder|spade type|keel hung rudder|skeg rudder|half skeg|skeg mounted|full skeg|"
        "partial skeg|behind the keel",
        "UNDER": "beneath the counter|below the counter|on the keel|on its keel|hung on the keel|well under|"
        "beneath the boat|underneath the hull|"
        "inboard|skeg|under the boat|under the hull|underneath the boat|below the hull|under the water|"
        "beneath the hull|under the counter|under the cockpit|under the stern|on a skeg|under her",
        "TRAILING": "trailing edge|back edge|after edge|aft edge|aftmost edge|aftermost edge|back edge of the rudder|"
        "rear edge|back border|after end|aft end|aft border|aftermost part|aftmost part|aftmost point|"
        "aftermost point|furthest aft point",
        "STOCK": "stock|rudder stock|rudderstock|rudder post|rudder shaft|rudder axis|rudder tube|centre of the stock|"
        "stock centre|axis of the rudder",
        "STICK_OUT": "sticks out|stick out|protrudes|extends|projects|reaching|reaches|sticks|stands out|standing out|"
        "protruding|extending|projecting|sticking out|pokes out|overhangs|overhanging the stern|comes out|"
        "stands proud|out behind",
        "TURN": "either way|each way|hard over|deflection|turns|max deflection|maximum deflection|to each side|"
        "each side of centre|stops at|lock to lock|rudder angle|swing of the rudder|either side of centre|turn",
        "GRP": "glass|glassfibre|glass fibre|fiberglass|fibreglass|grp|frp|laminate|polyester|fiber glass|gelcoat|"
        "chopped strand|hand laid|plastic|fibre",
        "SOLID": "no sandwich|without sandwich|not sandwich|no foam|without core|"
        "solid|single skin|solid laminate|solid glass|solid fibreglass|solid fiberglass|solid grp|monolithic|"
        "no core|solid glassfibre|solid lay up|solid layup",
        "CORED": "cored|balsa|foam core|sandwich|foam sandwich|balsa core|balsa cored|foam cored|sandwich construction|"
        "divinycell|in sandwich|foam|plywood core|ply core",
        "WOOD": "from wood|in wood|of timber|"
        "wooden|timber|mahogany planked|strip planked|cold moulded|wood|carvel|larch|oak|teak hull|iroko|clinker|"
        "cedar|strip plank|mahogany on oak|planked|plywood hull|plywood|epoxy wood|wooden hull|wooden boat|"
        "of wood|built in wood|pitch pine|mahogany|carvel planked|she is wooden|she's wooden|she is wood",
        "ALU": "from aluminium|of aluminium|in aluminium|from aluminum|of aluminum|"
        "aluminium|aluminum|alloy hull|alloy|alu|aluminium hull|aluminum hull|she is aluminium|she's aluminium|"
        "she is alloy",
        "STEEL": "from steel|of steel|steel ship|in steel|"
        "steel hull|steel boat|steel|steel construction|mild steel|steel plate|built of steel|built in steel|"
        "made of steel|steel ketch|steel cutter|steel sloop|she is steel|she's steel|hull steel",
        "O_LADDER": "ladder|boarding ladder|swim ladder|bathing ladder|stern ladder|swimming ladder|ladders|"
        "stern boarding ladder|transom ladder|telescopic ladder|bathing steps ladder|ladder for swimming|"
        "steps to the water",
        "O_PLATFORM": "duckboard|duck board|duckboards|bathing board|swim grid|swimgrid|"
        "platform|bathing platform|swim platform|swimming platform|platform for bath|platforms|swimming deck|"
        "bathing deck|teak platform|swimplatform|diving platform",
        "O_DAVITS": "davits|davit|dinghy davits|dingy davits|dinghy crane|pair of davits",
        "O_OUTBOARD": "support for the motor|motor support|support of motor|engine bracket|motor mount|"
        "support for the outboard|"
        "outboard|outboard bracket|outboard motor|outboard engine|outboard on a bracket|outboard well|"
        "outboard motor bracket|outboard mount|outboards|auxiliary outboard|hp outboard|motor bracket",
        "O_EXHAUST": "exhaust|exhaust outlet|exhaust pipe|exhaust skin fitting|wet exhaust|exhausts|engine exhaust",
        "O_RAIL": "taffrails|"
        "pushpit|pushpits|stern rail|stern pulpit|aft rail|pushpit rail|stern rails|taff rail|pulpit aft|"
        "aft pulpit|stern pulpits|stern railing",
        "O_STAY": "backstay|backstays|split backstay|twin backstays|back stay|back stays|running backstays|twin backstay|"
        "split back stay|backstay chainplate",
        "O_BOOM": "mizzen boom|boom end|main boom|boom|mainsail boom|end of the boom|boom overhang",
        "O_BOOMKIN": "boomkin|bumpkin|boomkins|bumkin",
        "O_ARCH": "arch|gantry|radar arch|targa|stern arch|stainless arch|goal post|goalpost|solar arch|davit arch|arches|"
        "stern gantry|portico|portico for solar panels",
        "O_PANELS": "solar panels|solar panel|solar|panels|solar array|pv panels|pv panel",
        "O_MAST": "radar pole|radar mast|wind generator|antenna mast|aerial pole|radar post|wind turbine|wind genny|"
        "aerogen|windgen|radar on a pole|aerial mast|antenna pole",
        "O_STAFF": "ensign staff|flagstaff|flag pole|flagpole|flag staff|ensign pole",
        "O_PASSERELLE": "passerella|passerelle|gangway|boarding plank|gangplank|pasarelle|passarelle|passerelles",
        "O_LOCKER": "stern locker|lazarette box|gas locker|gas bottle locker|liferaft locker|stern lockers|liferaft cradle|"
        "life raft on the stern",
        "FOLD": "folding|folds|foldable|folds up|hinged|hinges|fold|fold down|going down on hinges|drops down|"
        "which folds|fold away|folds away|folds down|collapsible|flip up|flips up|flip down|folding up|lifts up|"
        "lift up|hinging|tilting|tilts up|can be folded|swings up|pivots up|going up and down|drop down|it folds",
        "FIXED": "fixed|bolted|welded|rigid|permanent|not folding|non folding|bolted on|bolted through|bolted to|fastened|"
        "screwed on|fixed type|permanently mounted|permanently fixed",
        "SWING": "swings|swinging|swing|swinging out|pivots|swivels",
        "SLIDE": "slides|sliding|telescopic|slide out|slides out|slides under|telescoping|retractable|extends from under|"
        "pulls out|telescopic ladder",
        "REMOVE": "can move|could move|movable|can shift|could manage without|can manage without|could do without|"
        "can do without|can live without|could live without|"
        "will remove|to be removed|will be removed|plan to remove|planning to remove|going to remove|"
        "will take them off|will take it off|would remove|"
        "can go elsewhere|can be relocated|could be relocated|could go elsewhere|can live elsewhere|"
        "can take out|can take it out|"
        "can move it|can be moved away|can move it away|can put it away|can take it away|"
        "come off|removable|can be removed|could go|can go|removed|can come off|remove it|take it off|"
        "we could take off|could take off|could come off|may come off|can be taken off|could be removed|"
        "can be unbolted|could be unbolted|demountable|detachable|it can go|they can go|can be cut|"
        "could be moved|can be moved|may go|we can remove|i can remove|can easily come off|happy to lose|"
        "happy to remove|can take it off|can be dismounted|easily removed|would be removed|will come off|"
        "is coming off|can be shifted|could be shifted|may be removed|unbolts|lifts off|lift off|"
        "can be demounted|could be taken off|willing to remove|could lose",
        "KEEP": "must be left|left where it is|has to be left|should be left|want it left|"
        "must to stay|it should stay|want to go on using|still use it|keep using|be able to use|"
        "dont want to lose|wouldn't want to lose|would hate to lose|"
        "do not want to remove|don't want to remove|don't want to lose|do not want to lose|"
        "not want to take off|"
        "those stay|these stay|they stay|those must stay|they must stay|"
        "keep them|has to stay|have to stay|stays|must stay|keep|keep it|keep that|has to stay|must remain|"
        "needs to stay|not for moving|must be kept|must keep|want to keep|has got to stay|staying put|is staying|"
        "we keep it|has to remain|cannot go|can't go|cannot be moved|can't be moved|cannot be removed|"
        "can't be removed|will stay|would like to keep|is to stay|are to stay|we need it|not negotiable|"
        "not moving|needs to remain|have to keep|need to keep|we want to keep|no way to remove|shall stay|"
        "to be kept|wish to keep|must not go|must not be moved|not to be moved|hang on to|like to keep",
        "YES": "yes|yep|correct",
        "NOT": "no|not|n a|none|without|doesn't|doesn't exist|never|isn't|nothing|nor|haven't|don't have|neither|"
        "neither nor|isn't any|don't|hasn't|has no|have no|have not|has not|there is no|aren't|wasn't|can't|"
        "cannot|not any|free of",
        "PORT": "port|port side|port half|to port|port hand|left side|left hand side|on the left|port quarter|on port|"
        "the left side|portside|port of|to the left",
        "STARBOARD": "starboard|starboard side|stbd|starboard half|to starboard|to stbd|starboard hand|right side|"
        "right hand side|on the right|starboard quarter|on starboard|the right side|stb|sb side|starboardside|"
        "to the right|stb side",
        "CENTRE": "centre|center|middle|centred|centered|centreline|centerline|off centre|off center|midships|center line|"
        "centre line|in the middle|amidships|dead centre|dead center|central|centrally|middle line|centreline of|"
        "on the centreline|in the centre|in the center",
        "EACH_SIDE": "each side|either side|both sides|both quarters|each quarter|on each quarter|port and starboard|"
        "on both sides|on each side|one each side",
        "PREFER": "ideally|if at all possible|"
        "want it|want it off|i'd want it|we'd want it|"
        "prefer|would like it on|rather have it|would rather|i'd like it|preferably|preference|would like|favour|"
        "preferred|i would like it|would love it|best on|want it on|rather|my wish|wish it|i want it|we want it|"
        "if possible on",
        "OTHER_BOAT": "his is|hers is|his has|his was|theirs|theirs is|"
        "neighbor*|neighbour*|dock mate|marina friend|"
        "neighbour|neighbor|next mooring|friend|friends|his boat|her boat|sister ship of mine|previous boat|"
        "old boat|last boat|brother|next berth|on his|berthed next|my mate|mate's|another boat|other boat|"
        "sister's|his one|previous yacht|last yacht|my last one|the one before|club member|brother in law|"
        "fellow member|his own boat|my father's|same anchorage|sister boat|friend of me|friend's boat|a friend's|"
        "in the next berth|on the next berth|on the next pontoon|my pal|pal's|marina neighbour|someone else's|"
        "colleague|on theirs",
        "WITHDRAW": "forget|ignore|disregard|scrap|never mind the|take back|not valid|was wrong|is wrong|were wrong|"
        "was a mistake|nonsense|no longer valid|strike the",
        "MEANT": "meant|i mean|should be|should read|should have been|correction|meant to write|should say|i meant to say|"
        "instead of|corrected|correct is|the right figure is|actually|make that|typo|sorry",
        "JUST_TOUCH": "just touches|touches|just at|exactly at|just touching|just kisses|kisses|just in|level with|awash",
        "BELOW": "under the water|in under the water|"
        "below|under|beneath|under water|below the water|below water|immersed|underwater|submerged|"
        "beneath the water|below the surface|under the waterline|below the waterline|below waterline|"
        "in the water|below it",
        "OURS": "sister and i|brother and i|friend and i|my mate and i|colleague and i|brother in law and i|"
        "ours|mine|our boat|our own|we have|i have|we now have|my own|our one|on mine|on ours|my boat|"
        "our own boat|on our boat",
        "YEAR": "made in|finished in|"
        "built|built in|launched in|from the year|year|year built|from|from year|model year|launched|vintage|"
        "of the year|constructed in|construction year|year of build|year of construction|dating from|from about|"
        "built about|laid down in|splashed in|built around|my year|of year",
        "HULL_NUMBER": "hull number|hull no|hull nr|build number|yard number|sail and hull number|hull number is|hin",
        "BUILDER": "builder|built by|yard|boatyard|manufacturer|make|boat builder|shipyard|built at|builders",
        "MODEL": "model|boat|type|design|class|boat type|boat model|yacht|model of boat|boat make and model|vessel type|"
        "sailing boat type|yacht type|boat is|vessel",
        "M_TAPE": "tape|tape measure|measuring tape|end of the tape|folding rule|ruler|steel rule|tape measured|by tape|"
        "with a tape|a tape|measuring stick|yardstick|with the meter",
        "M_PHONE": "telephone|phone level|level on my telephone|level on my phone|phone app|level app|inclinometer app|"
        "level of my phone|level on the phone|on my phone|with my phone|spirit level app|smartphone",
        "M_LASER": "laser|laser measure|laser meter",
        "M_DRAWING": "drawing|drawings|lines plan|plans|yard plan|builder's plan|from the plan|drawing plan|off the drawing|"
        "sail plan|general arrangement|scaled off|blueprint",
        "M_BROCHURE": "brochure|by the book|data sheet|specification|leaflet|manual|owner's manual|brochures|specs|spec sheet|"
        "according to the yard|according to the builder|according to the book|published",
        "M_GUESS": "guess|guessing|at a guess|guesstimate|estimate|by eye|eyeballed|eyeball|roughly guessed|guessed|"
        "guesstimated|i reckon|estimated|rough guess|estimating|by my eye",
        "M_PHOTO": "photo|photograph|from a photo|photos|off a photo|picture|a photograph",
        "ASK": "what would i need|what do i need|would i need|what does it cost|what he needs|suggest|please quote|"
        "quote|quote request|please advise|advise|which bracket|which of your|which gear|would like to know|"
        "does it fit|will it fit|would it fit|can your gear|what fits|your gear|interested|how much|price|"
        "recommend|fits|fit|request|requests|what do you|what can you|need|looking for|offer|question of|"
        "is possible|answers below|i meant|everything else stands|measurements|suitable|which size|suit|"
        "could you|which model|what size|what model|would suit|will suit|what would you suggest|"
        "what would you recommend|what will fit|will it work|would it work|can you tell me|could you tell me|"
        "wonder|wondering|interesting for|i'm after|want a vane|want to know|information|please send|ask|asking|"
        "question|questions|get a price|prices|costs|enquiry|inquiry|enquire|inquire|estimate for|quotation|"
        "quotes|quoting|tell me|cost|do you have something",
        "GEAR": "windvane|wind vane|self steering|selfsteering|vane gear|steering gear|vane|self steerer|"
        "vane steering|wind steering|wind self steering|auxiliary rudder|windvanes|wind vanes|"
        "vane gears|steering system",
        "ORDER": "parts please|parts|bushes|pins|send me|please send me|spare|spares|spare part|spare parts|order|"
        "replacement|ship to|bushing|bushings|bolt kit|serial|serial number|send me a new|reorder|part number|"
        "new vane|new blade|new bushes|spares kit|service kit|a set of|sets of|sent out|postage|spare vane|"
        "spare blade|replace|worn|bent",
        "OWNED": "one of your gears|had one of your|had your gear|never let me down|bought from you|works very well|"
        "we have your gear|fitted since|your gear has|my gear|our gear|installed in|for my self steering gear|"
        "serial|my windvane|bought in|purchased|supplied in|serial no|gear no|fitted in|your gear on|"
        "our windvane|one of yours|since i fitted",
        "THANKS": "thank you|thanks|many thanks|arrived safely|just wanted to say|very happy|great service|works a treat|"
        "thank you so much|thanks again|big thank you|grateful|delighted|arrived|received|"
        "all the best to the team",
        "SIGN_OFF": "thx|thnx|tnx|ta muchly|all best|cheerio|thanks a lot|thanks so much|"
        "regards|kind regards|best regards|best|best wishes|cheers|yours|yours faithfully|yours sincerely|thanks|"
        "thanks in advance|many thanks|thank you|with respect|ta|sincerely|fair winds|all the best|"
        "with kind regards|greetings|with best regards|with kindest regards|warm regards|warmest regards|"
        "best wishes from|yours truly|respectfully|kindest regards|many thanks in advance|thanks and regards|"
        "thank you in advance|looking forward|i wait your answer|rgds|br|cordially|with friendly greetings|"
        "friendly greetings|with thanks|ta very much",
        "CUSTOMER": "customer|customers|client|clients|one of our customers|for a customer|another one for you|owner|"
        "end user|for the owner|on behalf of|behalf of|a client of ours|a customer of ours",
        "COMPANY": "marine|chandlery|yachts|boatyard|supply|supplies|sales|ltd|llc|inc|boat works|yacht services|rigging|"
        "riggers|sailmakers|marine services|shipyard|chandlers|chandler|yacht agency|boatbuilders|boat builders|"
        "yacht brokers|rigging ltd|boat sales|yacht sales|marine electronics|boat services|brokerage|yachting|"
        "sailing ltd|& sons|and sons|marine supply|gmbh",
        "PHONE": "tel|phone|mobile|mob|cell|call|t|m|ph|telephone|mobile number|whatsapp|ring me|call me|tel no|"
        "phone number",
        "FAX": "fax|f|co|company|reg|vat|no",
        "GIVE_TAKE": "give or take|plus or minus|plus minus|plus or minus about|to within|accurate to|error of|margin of",
        "AVOID": "avoid|avoiding|don't want it|do not want it|not want|anywhere but|under no circumstances|on no account",
        "SELL": "website|seo|ranking|traffic|marketing|newsletter|unsubscribe|webinar|backlinks|a month|our services|"
        "exhibitors|invoice attached|crypto|leads|rank higher|page 1|loan|investors|click here|special offer|"
        "limited offer|outsourcing|followers|lottery|inheritance",
        "INSTEAD": "instead of|rather than",
        "PLUMB_LINE": "plumb line|plumb bob|plumbline|plumb-bob|plummet",
        "MEASURED": "measured|measurements|measurement|measure|measuring|dimensions|taken|figures",
        "AT_WATER": "at the water|level with the water|at water level|at the waterline|on the waterline|right at the water|"
        "right on the water|flush with the water|touching the water|meets the water|in line with the water",
        "OOPS": "no|no wait|wait|sorry|rather|or rather|i mean|pardon|correction|scratch that|scrap that|make that|"
        "make it|oops|excuse me|nonsense|my mistake|that is wrong",
        "GONE": "we sold|was sold|has been sold|is sold|have sold|"
        "came off|was taken off|has been taken off|long gone|went years ago|have taken off|"
        "lives in|lives below|stowed|is stowed|kept in|kept below|is kept|stored in|in a locker|"
        "in the locker|in the lazarette|in the cockpit locker|stays at home|stays ashore|kept ashore|"
        "has gone|have gone|is gone|are gone|took it off|took them off|taken off|was removed|were removed|"
        "have removed|has been removed|removed it|sold it|we removed|i removed|no longer there|"
        "not there any more",
        "ENDS": "ends|stops|finishes|stops short",
        "BESIDE": "next to|beside|near|near to|close to|at|by|through|just above|just below|hole for|where",
        "BEGIN": "starts|begins|starting|beginning",
        "EXCEPT": "except|exept|except for|apart from|other than|besides|only|but for",
    },
)
