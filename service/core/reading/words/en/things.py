"""English: what stands on the stern, how it moves, where it is, whether it goes."""

WORDS = {
    "O_LADDER": (
        "ladder|boarding ladder|swim ladder|bathing ladder|stern ladder|swimming ladder|ladders|stern boarding ladder|"
        "transom ladder|telescopic ladder|bathing steps ladder|ladder for swimming|steps to the water|rope ladder|emergency ladder|"
        "swimmer's ladder|step ladder|dive ladder|climbing ladder|stainless ladder|stair for the bath|bath stair|"
        "stairs for the bath|stair for swimming|stair for bath|bathing stair|stair|stairs to swim|swimming stair"
    ),
    "O_PLATFORM": (
        "duckboard|duck board|duckboards|bathing board|swim grid|swimgrid|platform|bathing platform|swim platform|"
        "swimming platform|platform for bath|platforms|swimming deck|bathing deck|teak platform|swimplatform|diving platform|"
        "swim board|diving board|bathing platform extension|bathing boards|dive platform|swim deck|stern platform|transom platform|"
        "aft platform|teak grating|boarding platform|swimming board|bolt on platform|scoop extension|stern deck extension"
    ),
    "O_DAVITS": (
        "davits|davit|dinghy davits|dingy davits|dinghy crane|pair of davits|dinghy hoist|dinghy hoists|tender davits|stern davits|"
        "davit arms|dinghy lift|snap davits|dinghy crane arms|dinghy cranes"
    ),
    "O_OUTBOARD": (
        "support for the motor|motor support|support of motor|engine bracket|motor mount|support for the outboard|outboard|"
        "outboard bracket|outboard motor|outboard engine|outboard on a bracket|outboard well|outboard motor bracket|outboard mount|"
        "outboards|auxiliary outboard|hp outboard|motor bracket|outboard pad|auxiliary engine on a bracket|engine on the transom|"
        "motor on the transom|outboard hung|outboard board|lifting bracket|trolling motor|electric outboard|small outboard|"
        "dinghy motor|dinghy's motor|dinghy engine|tender motor|dinghy outboard|dinghy's engine"
    ),
    "O_EXHAUST": (
        "exhaust|exhaust outlet|exhaust pipe|exhaust skin fitting|wet exhaust|exhausts|engine exhaust|exhaust port|exhaust through|"
        "exhaust exit|exhaust flange|exhaust hole|exhaust fitting"
    ),
    "O_RAIL": (
        "taffrails|pushpit|pushpits|stern rail|stern pulpit|aft rail|pushpit rail|stern rails|taff rail|pulpit aft|aft pulpit|"
        "stern pulpits|stern railing|push pit|stern pushpit|rail round the stern|sternrail|seat pushpit|pushpit seats|"
        "split pushpit|two part pushpit"
    ),
    "O_STAY": (
        "backstay|backstays|split backstay|twin backstays|back stay|back stays|running backstays|twin backstay|split back stay|"
        "backstay chainplate|runners|bridle|backstay bridle|backstay plate|backstay adjuster|twin stays|after stay|aft stay|"
        "backstay tensioner|stay to the mast|stay is in two|stay in two|mast stay|stay at the back|stay behind"
    ),
    "O_BOOM": "mizzen boom|boom end|main boom|boom|mainsail boom|end of the boom|boom overhang|boom overhangs",
    "O_BOOMKIN": "boomkin|bumpkin|boomkins|bumkin|stern sprit|boumkin|bumpkins|stern bowsprit",
    "O_ARCH": (
        "arch|gantry|radar arch|targa|stern arch|stainless arch|goal post|goalpost|solar arch|davit arch|arches|stern gantry|"
        "portico|portico for solar panels|goalposts|aft arch|frame over the stern|rear arch|equipment arch|bimini frame|"
        "solar gantry|gantries|stainless gantry|targa bar|roll bar|rollbar"
    ),
    "O_PANELS": "solar panels|solar panel|solar|panels|solar array|pv panels|pv panel|solars|photovoltaic panels",
    "O_MAST": (
        "radar pole|radar mast|wind generator|antenna mast|aerial pole|radar post|wind turbine|wind genny|aerogen|windgen|"
        "radar on a pole|aerial mast|antenna pole|wind charger|wind gen|wind generator pole|pole for the radar|gps pole|"
        "mast for the wind generator|generator pole|gps antenna|gps mushroom|antenna stalk|aerial stalk|vhf aerial pole|"
        "pole with the gps|pole with the antenna|vhf pole|ais antenna|whip aerial|whip antenna|stub mast|antenna mount"
    ),
    "O_STAFF": (
        "ensign staff|flagstaff|flag pole|flagpole|flag staff|ensign pole|jackstaff|flagstaffs|ensign socket|flag socket"
    ),
    "O_PASSERELLE": (
        "passerella|passerelle|gangway|boarding plank|gangplank|pasarelle|passarelle|passerelles|gang plank|boarding gangway|"
        "gangways|gang way|passarella|gangplanks|stern gangway|boarding ramp"
    ),
    "O_LOCKER": (
        "stern locker|lazarette box|gas locker|gas bottle locker|liferaft locker|stern lockers|liferaft cradle|"
        "life raft on the stern|liferaft|life raft|gas box|gas bottle box|stern box|liferaft on the stern|liferaft bracket|"
        "raft cradle|gas bottle holder|aft locker on the transom|transom locker|life raft cradle|liferaft canister|raft canister"
    ),
    "O_OTHER": (
        "braai|the braai|charcoal grill|barbie|"
        "barbecue|bbq|barbeque|gas grill|grill|fishing rod holders|rod holders|rod holder|bike rack|stern anchor|kedge on a roller|"
        "stern anchor roller|stern roller"
    ),
    "EMPTY": (
        "empty|unladen|unloaded|boat light|when light|in light trim|light ship|nothing aboard|nothing on board|stripped out"
    ),
    "LADEN": (
        "below her marks|below her lines|down on her marks|below the marks|below her designed waterline|lower than drawn|"
        "deeper than drawn|below her drawn waterline|loaded|laden|fully loaded|stored up|in cruising trim|with stores|when full|"
        "full tanks|all loaded|loaded for cruising"
    ),
    "SINKS": (
        "deeper|lower in the water|sinks|sits down|goes down by|settles|squats|lower aft|further down|down by|below her marks|"
        "below her lines|down on her marks|below the marks|below her designed waterline|lower than drawn|deeper than drawn|"
        "below her drawn waterline"
    ),
    "CAMBER": (
        "camber|curvature|curve of the transom|crown of the transom|cambered|bulge|bow of the transom|sagitta|convex"
    ),
    "DROP": (
        "height between|height difference|difference in height|vertical distance|vertical height|vertical drop|drop of|of drop|"
        "the drop|straight down|measured down|measured straight down|from edge to edge|edge to edge|measured plumb|"
        "measured vertically|vertically measured|vertically|of height|from top to bottom edge|top to bottom edge|"
        "from the top to the bottom edge|between the top and bottom edges|between top and bottom|between top and bottom edge"
    ),
    "FOLD": (
        "folding|folds|foldable|folds up|hinged|hinges|fold|fold down|going down on hinges|drops down|which folds|fold away|"
        "folds away|folds down|collapsible|flip up|flips up|flip down|folding up|lifts up|lift up|hinging|tilting|tilts up|"
        "can be folded|swings up|pivots up|going up and down|drop down|it folds|hinge up|hinge down|hinges up|hinges down|"
        "hinges out|swing up|swing down|swings down|folds out|folds in two|folds in half|fold-up|fold-down|folding type|"
        "foldable type|flips down|fold flat|folds flat|tips up|pivoting up|drops into the water|lifts out of the water|swivels up|"
        "hinged up|hinged type|on hinges|flops down|can be raised|can be lifted|can be swung up|pulled up|folded up|folded away|"
        "folded down|folded"
    ),
    "FIXED": (
        "fixed|bolted|welded|rigid|permanent|not folding|non folding|bolted on|bolted through|bolted to|fastened|screwed on|"
        "fixed type|permanently mounted|permanently fixed|rigidly mounted|rigid type|fixed in place|permanently attached|"
        "does not fold|doesn't fold|will not fold|won't fold|cannot fold|can't fold|non-folding|welded on|bolted in place|"
        "solidly fixed|fixed mount|immovable|welded to|glassed in|fixed one|through-bolted|through bolted|not hinged|isn't hinged|"
        "unfolding"
    ),
    "SWING": (
        "swings|swinging|swing|swinging out|pivots|swivels|swings out|swings sideways|swivel|pivoting|swings aside|"
        "swings to the side|swings inboard|swung out|swings away|swing out|swung aside|swings in|sweeps|sweeping|sweeps across"
    ),
    "SLIDE": (
        "slides|sliding|telescopic|slide out|slides out|slides under|telescoping|retractable|extends from under|pulls out|"
        "telescopic ladder|slides in|slide-out|slides away|slides up|sliding type|telescopes|telescopic type|pull out|pull-out|"
        "slides into|slides down|slide in|pulls out of|like a drawer|slides up into|slides into its|into its own tube"
    ),
    "REMOVE": (
        "will be gone before then|will be gone by then|will be gone before we go|can move|could move|movable|can shift|will remove|"
        "to be removed|will be removed|plan to remove|planning to remove|going to remove|will take them off|will take it off|"
        "would remove|can go elsewhere|can be relocated|could be relocated|could go elsewhere|can live elsewhere|can take out|"
        "can take it out|can move it|can be moved away|can move it away|can put it away|can take it away|removable|can be removed|"
        "could go|can go|can come off|we could take off|could take off|could come off|may come off|can be taken off|"
        "could be removed|can be unbolted|could be unbolted|demountable|detachable|it can go|they can go|can be cut|could be moved|"
        "can be moved|may go|we can remove|i can remove|can easily come off|happy to lose|happy to remove|can take it off|"
        "can be dismounted|easily removed|would be removed|will come off|is coming off|can be shifted|could be shifted|"
        "may be removed|unbolts|lifts off|lift off|can be demounted|could be taken off|willing to remove|expendable|dispensable|"
        "not essential|no longer needed|is surplus|surplus to requirements|not needed any more|not needed|optional|is optional|"
        "are optional|can be sacrificed|need not stay|up for sale|for sale|on its way out|is going|are going|goes|will go|would go|"
        "to go|shall go|has to go|have to go|must go|don't need it|don't need them|no longer need|don't mind losing|wouldn't miss|"
        "would not miss|not precious|not sacred|bolt on|clip on|hook on|hooks on|quick release|un bolts|unships|lift out|lifts out|"
        "comes off|come away|comes away|unboltable|take off able|hang on|temporary|pulls out of its socket|lifts out of its socket|"
        "can live in the locker|can go in the locker|can go below|can go in the cockpit locker|just lifts off|which lifts off|"
        "slots out|slides out of its socket|can be stowed below|can stay ashore|can stay at home"
    ),
    "KEEP": (
        "would not part with|wouldn't part with|not parting with|must be left|left where it is|has to be left|should be left|"
        "want it left|must to stay|it should stay|want to go on using|still use it|keep using|be able to use|dont want to lose|"
        "wouldn't want to lose|would hate to lose|do not want to remove|don't want to remove|don't want to lose|"
        "do not want to lose|not want to take off|those stay|these stay|they stay|those must stay|they must stay|keep them|"
        "has to stay|have to stay|stays|must stay|keep|keep it|keep that|must remain|needs to stay|not for moving|must be kept|"
        "must keep|want to keep|has got to stay|staying put|is staying|we keep it|has to remain|cannot go|can't go|cannot be moved|"
        "can't be moved|cannot be removed|can't be removed|will stay|would like to keep|is to stay|are to stay|we need it|"
        "not negotiable|not moving|needs to remain|have to keep|need to keep|we want to keep|no way to remove|shall stay|"
        "to be kept|wish to keep|must not go|must not be moved|not to be moved|hang on to|like to keep|stay put|stay where|"
        "stays where|stay as it is|stays as it is|remains|remains in place|retain|retained|retaining|to be retained|leave it on|"
        "leave it alone|leave it where|leave it in place|leave them|leaving it|to stay|non negotiable|indispensable|"
        "can't do without|cannot do without|couldn't do without|can't live without|used daily|use it a lot|not to be touched|"
        "don't touch|do not touch|hands off|dear to us|sacred|not up for discussion|not for discussion|preserve|preserved|"
        "going nowhere|not going anywhere|here to stay|attached to it|won't part with|will not part with|vital|we rely on|"
        "i rely on|set on keeping|insist on keeping|insists on|won't part|wont part with|not part with|won't part with it|"
        "will not be parted|not be parted|isn't going anywhere|aren't going anywhere|we need them|i need it|i need them|"
        "they need it|need that one|we use it|we use that|fond of|rather fond of|we are fond of it|we like it|we love it|"
        "wouldn't be without|would not be without|love it dearly|quite attached to|maintain|need to maintain|want to maintain|"
        "keeping it|keeping them|keeping that|keeping those|keeping that one|staying|are staying|theyre staying|they're staying|"
        "it's staying|its staying|stays where it is|staying where it is|sooner hang on to|sooner keep|rather keep"
    ),
    "PORT": (
        "port|port side|port half|to port|port hand|left side|left hand side|on the left|port quarter|on port|the left side|"
        "portside|port of|to the left|portward|portwards|port hand side|on the port side|port-side|left of centre|left of center|"
        "larboard|left hand|on the port hand|left-hand side|port aft|port corner|left corner|to the port side|port end|"
        "left quarter"
    ),
    "STARBOARD": (
        "starboard|starboard side|stbd|starboard half|to starboard|to stbd|starboard hand|right side|right hand side|on the right|"
        "starboard quarter|on starboard|the right side|stb|sb side|starboardside|to the right|stb side|starboard-side|"
        "on the starboard side|right of centre|right of center|starboard hand side|stb'd|right hand|right-hand side|"
        "on the starboard hand|starboard aft|starboard corner|right corner|to the starboard side|starboard end|right quarter|"
        "starbrd|star board|strbd|stbd side"
    ),
    "CENTRE": (
        "centre|center|middle|centred|centered|centreline|centerline|off centre|off center|midships|center line|centre line|"
        "in the middle|amidships|dead centre|dead center|central|centrally|middle line|centreline of|on the centreline|"
        "in the centre|in the center|mid-line|midline|amidship|centerline of|boat's centreline|from the centreline|"
        "from the centerline|off the centreline|off the centerline|from centreline|from centerline|off centreline|off centerline|"
        "from the middle|off the middle|from amidships|smack in the middle|right in the middle|bang in the middle|c/l|"
        "fore and aft line|mid transom"
    ),
    "EACH_SIDE": (
        "each side|either side|both sides|both quarters|each quarter|on each quarter|port and starboard|on both sides|on each side|"
        "one each side|on either side|one on each side|one on either side|one per side|either quarter|on both quarters|"
        "on either quarter|one on each quarter|both sides of the centreline|port & starboard|port and stbd|port and starboard side|"
        "either side of the centreline|either side of the centre|left and right|either side of centre|each side of centre|"
        "either side of center|each side of center|each side of the centreline|to each side of centre|to each side|to either side|"
        "on each hand|to both sides|either side of the middle|each side from the center|each side from the centre"
    ),
    "PREFER": (
        "wants it to|want it to|wants it on|wants the gear to|wants the vane to|want the vane to|"
        "want the gear to|wants the gear on|wants the vane on|want the vane on|want the gear on|"
        "wants it fitted|"
        "ideally|if at all possible|want it off|i'd want it|we'd want it|prefer|would like it on|rather have it|"
        "would rather|i'd like it|preferably|preference|would like|favour|preferred|i would like it|would love it|best on|"
        "want it on|rather|my wish|wish it|i want it|we want it|if possible on|would like to have it|would prefer|she'd prefer|"
        "he'd prefer|they'd prefer|they would prefer|he would prefer|she would prefer|we'd prefer|i'd prefer|better on|i'd go for|"
        "our choice would be|favours|favor|favors|leaning towards|sooner have it|happier with|happiest with|we want the|i want the|"
        "like the gear|like it on|like it to|would suit me best|would suit us best|suits us best|suits me best|"
        "would suit best|works best for us|is best for us|"
        "better for me|better for us|would be better|works better for us|suits us better|suits me better|"
        "for choice|for preference|given the choice"
    ),
    "AVOID": "avoid|avoiding|don't want it|do not want it|not want|anywhere but|under no circumstances|on no account",
    "GONE": (
        "we sold|was sold|has been sold|is sold|have sold|came off|was taken off|has been taken off|long gone|went years ago|"
        "have taken off|lives in|lives below|stowed|is stowed|kept in|kept below|is kept|stored in|in a locker|in the locker|"
        "in the lazarette|in the cockpit locker|stays at home|stays ashore|kept ashore|has gone|have gone|is gone|are gone|"
        "took it off|took them off|taken off|was removed|were removed|have removed|has been removed|removed it|sold it|we removed|"
        "i removed|no longer there|not there any more|no more|were sold|got sold|went long ago|went last|went ashore|has been|"
        "is history|are history|is no more|are no more|used to have|used to be|once had|lives at home|lives ashore|"
        "lives in the garage|in the garage|in the shed|at home|in store|in storage|left ashore|left at home|below deck|below decks|"
        "on the foredeck|on the coachroof|on deck forward|in the forepeak|stowed away|put away|stows in|stow it|stow them|we stow|"
        "i stow|previous owner took|went with the previous owner|lost overboard|broke off|rotted away|fell off|we no longer have|"
        "no longer have|no longer has|no longer carry|no longer carries|no longer fitted|no longer exist|no longer exists|"
        "not fitted any more|given to the|given to a|went to the|passed on to|been given to|given to another|has moved on|"
        "have moved on|already gone|has already gone|have already gone|already sold|already off|long since gone|"
        "already been removed|already been sold|already removed|has now gone|have now gone|is off now|are off now|none sold|"
        "gone already|off already|sold already|no longer aboard|no longer on board|on order|not fitted yet|not yet fitted|"
        "yet to be fitted|to be fitted later|is planned|are planned|planned for later"
    ),
    "BESIDE": "next to|beside|near|near to|close to|at|by|through|just above|just below|hole for|where",
    "BEGIN": "starts|begins|starting|beginning|begins at|starts at",
    "EXCEPT": "except|exept|except for|apart from|other than|besides|only|but for",
    "OFF": (
        "remove|removing|unbolt|unbolting|unscrew|unscrewing|detach|detaching|demount|demounting|dismount|dismantle|dismantling|"
        "unship|unshipping|sacrifice|lose|relocate|relocating|unfasten|discard|ditch|scrap it|scrap them|do away with|get rid of|"
        "getting rid of|part with|forgo|sell|selling|dispense with|strip off|eliminate|do without|manage without|live without|"
        "give up|giving up|shift|shifting|shove|chuck|bin"
    ),
    "OFFED": (
        "removed|unbolted|detached|demounted|dismounted|dismantled|unshipped|unscrewed|sold|got rid of|gotten rid of|scrapped|"
        "cut off|ditched|discarded|sacrificed|landed|put ashore|left behind|given away|gave away|gave them away|gave it away|"
        "donated|binned|thrown away|threw away|chucked|chucked out|have cut away|cut away|has been cut|was cut off|were cut off|"
        "cut it off|cut them off|stripped off|rusted away|rotted|rotted through|torn off|broken off|swapped|disposed of|unfitted"
    ),
    "V_TAKE": (
        "take|takes|taking|come|comes|coming|get|getting|lift|lifting|move|moving|bring|pull|pulling|unscrew|clear|clearing|throw"
    ),
    "V_TOOK": "took|taken|came|gotten|lifted|brought|pulled|unscrewed|cleared|thrown|threw|cut|carried|put",
    "P_OFF": "off|away|ashore|out",
    "MAY": (
        "can|could|may|might|will|would|shall|should|must|to be|going|plan|planning|planned|happy|willing|able|easily|ready|"
        "prepared|intend|intending|want|wanted|'ll|we'll|i'll|they'll|it'll|i'd|we'd|gonna|about to|due|readily|need|needs|quickly|"
        "ought"
    ),
    "EASILY": (
        "without any trouble|without trouble|without any problem|without a problem|without problem|without problems|no problem|"
        "no trouble|not a problem|without fuss|without difficulty|no difficulty|in no time|not hard|not difficult|no big deal|"
        "without damage|without tools|no tears|no great loss|without regret|no regrets|without further ado|not in the way|"
        "not be in the way"
    ),
    "SHIFTED": "moved|relocated|shifted|repositioned",
    "STAY": "remain|stay on|stay in place|stay there|be left|be left on|carry on|be kept on|be there",
    "DOWNWARD": (
        "going down|go down|goes down|coming down|comes down|downwards|further down|lower down|down from the top|on the way down|"
        "moving down|down the transom"
    ),
    "EVEN": (
        "flush with|in line with|directly below|directly under|directly beneath|straight below|straight under|right under|"
        "right below|plumb with|plumb below|even with|exactly under|exactly below|vertically below|vertically under|"
        "in the same plane as|in the same vertical plane|lines up with|aligned with|lines up exactly with"
    ),
    "TAKE_THIS": (
        "take that|use that|take that one|use that one|go with that|go by that|work with that|take this one|use this one|"
        "that one counts|trust that one|use the latter|take the latter|go with the latter|that's the one to use|believe the tape|"
        "trust the tape|is the real one|is the true one|that's the true one|it is then"
    ),
    "AXIS": "axis|its axis|axle|post|shaft|spindle|its post|its stock",
    "LOATH": (
        "hate to|hate losing|loath to|loathe to|reluctant to|sorry to|rather not|sooner not|unwilling to|no wish to|sad to|"
        "hesitate to|don't fancy|do not fancy|not keen to|not keen on|would be a shame to|a shame to|a pity to"
    ),
    "LESS": "take that off|take it off that|to be taken off|deduct|subtract|less the|minus the|knock off",
    "ZERO": "nil|zero|nought",
}
