"""English: whose boat, what is put right, what is asked, and leave taken."""

WORDS = {
    "YES": "yes|yep|correct",
    "NOT": (
        "no|not|n a|none|without|doesn't|doesn't exist|never|isn't|nothing|nor|haven't|don't have|neither|"
        "neither nor|isn't any|don't|hasn't|has no|have no|have not|has not|there is no|aren't|wasn't|can't|"
        "cannot|not any|free of"
    ),
    "OTHER_BOAT": (
        "before her we had|before that we had|before this we had|previously we had|we used to have|"
        "we used to sail|before her i had|before that i had|berth is|box is|box of|slip is|width of the berth|"
        "pontoon is|"
        "his is|hers is|his has|his was|theirs|theirs is|neighbor*|neighbour*|dock mate|marina friend|neighbour|"
        "neighbor|next mooring|friend|friends|his boat|her boat|sister ship of mine|previous boat|old boat|"
        "last boat|brother|next berth|on his|berthed next|my mate|mate's|another boat|other boat|sister's|"
        "his one|previous yacht|last yacht|my last one|the one before|club member|brother in law|fellow member|"
        "his own boat|my father's|same anchorage|sister boat|friend of me|friend's boat|a friend's|"
        "in the next berth|on the next berth|on the next pontoon|my pal|pal's|marina neighbour|someone else's|"
        "colleague|on theirs|next door|neighbouring boat|neighboring boat|the boat next to us|boat alongside|"
        "the chap next door|my buddy|buddy's|a mate of mine|my cousin|my uncle|my father in law|the skipper of|"
        "another owner|other owner|her sister ship|a sister ship|sistership|sister ship|friend of mine|"
        "friend of ours|on his boat|on her boat|neighbour's|his transom|her previous boat|our previous boat|"
        "my previous boat|previous one|our old boat|my old boat|the boat before|one before her|guy next door|"
        "club mate|clubmate|dad's|my brother's|boat we had before|our former boat|former boat|my former|chum|"
        "crewmate|the other boat|his rudder|other yacht|"
        "not ours|isn't ours|is not ours|not mine|isn't mine|not our version|not our one"
    ),
    "WITHDRAW": (
        "don't use|do not use|leave out|pay no attention to|take no notice of|don't go by|forget|ignore|"
        "disregard|scrap|never mind the|take back|not valid|was wrong|is wrong|were wrong|was a mistake|nonsense|"
        "no longer valid|strike the|scrub|scratch|bin the|forget about|strike out|scrub what"
    ),
    "MEANT": (
        "reversed the digits|reversed the figures|reversed the numbers|digits reversed|transposed|"
        "swapped the digits|swapped the figures|meant|i mean|should be|should read|should have been|correction|"
        "meant to write|should say|i meant to say|instead of|corrected|correct is|the right figure is|actually|"
        "make that|typo|sorry"
    ),
    "OURS": (
        "sister and i|brother and i|friend and i|my mate and i|colleague and i|brother in law and i|ours|mine|"
        "our boat|our own|we have|i have|we now have|my own|our one|on mine|on ours|my boat|our own boat|"
        "on our boat"
    ),
    "ASK": (
        "what would i need|what do i need|would i need|what does it cost|what he needs|suggest|please quote|"
        "quote|quote request|please advise|advise|which bracket|which of your|which gear|would like to know|"
        "does it fit|will it fit|would it fit|can your gear|what fits|your gear|interested|how much|price|"
        "recommend|fits|fit|request|requests|what do you|what can you|need|looking for|offer|question of|"
        "is possible|answers below|i meant|everything else stands|measurements|suitable|which size|suit|"
        "could you|which model|what size|what model|would suit|will suit|what would you suggest|"
        "what would you recommend|what will fit|will it work|would it work|can you tell me|could you tell me|"
        "wonder|wondering|interesting for|i'm after|want a vane|want to know|information|please send|ask|asking|"
        "question|questions|get a price|prices|costs|enquiry|inquiry|enquire|inquire|estimate for|quotation|"
        "quotes|quoting|tell me|cost|do you have something"
    ),
    "GEAR": (
        "windvane|wind vane|self steering|selfsteering|vane gear|steering gear|vane|self steerer|vane steering|"
        "wind steering|wind self steering|auxiliary rudder|windvanes|wind vanes|vane gears|steering system|"
        "self steering gear|windvane gear|the gear"
    ),
    "ORDER": (
        "parts please|parts|bushes|pins|send me|please send me|spare|spares|spare part|spare parts|order|"
        "replacement|ship to|bushing|bushings|bolt kit|serial|serial number|send me a new|reorder|part number|"
        "new vane|new blade|new bushes|spares kit|service kit|a set of|sets of|sent out|postage|spare vane|"
        "spare blade|replace|worn|bent"
    ),
    "OWNED": (
        "one of your gears|had one of your|had your gear|never let me down|bought from you|works very well|"
        "we have your gear|fitted since|your gear has|my gear|our gear|installed in|for my self steering gear|"
        "serial|my windvane|bought in|purchased|supplied in|serial no|gear no|fitted in|your gear on|"
        "our windvane|one of yours|since i fitted"
    ),
    "THANKS": (
        "thanking you all|to thank you|thank you all|arrived in|made it to|could not be happier|"
        "couldn't be happier|so pleased|very pleased|no complaints|"
        "thank you|thanks|many thanks|arrived safely|just wanted to say|very happy|great service|works a treat|"
        "thank you so much|thanks again|big thank you|grateful|delighted|arrived|received|"
        "all the best to the team"
    ),
    "SIGN_OFF": (
        "thx|thnx|tnx|ta muchly|all best|cheerio|thanks a lot|thanks so much|regards|kind regards|best regards|"
        "best|best wishes|cheers|yours|yours faithfully|yours sincerely|thanks|thanks in advance|many thanks|"
        "thank you|with respect|ta|sincerely|fair winds|all the best|with kind regards|greetings|"
        "with best regards|with kindest regards|warm regards|warmest regards|best wishes from|yours truly|"
        "respectfully|kindest regards|many thanks in advance|thanks and regards|thank you in advance|"
        "looking forward|i wait your answer|rgds|br|cordially|with friendly greetings|friendly greetings|"
        "with thanks|ta very much|take care|kr|bw|warmly|respectfully yours|talk soon|all good things|yours aye|"
        "fair winds and|many regards|hugs|over and out|good wishes|until then|rgrds|sent from my|sent from|"
        "thanks a million|a million thanks|thanks a bunch|thanks heaps|many thanks indeed|thank you kindly|"
        "thanks ever so much|thanks and best|much obliged|much appreciated|thanks mate|thanks guys|thanks folks|"
        "thanks again"
    ),
    "CUSTOMER": (
        "customer|customers|client|clients|one of our customers|for a customer|another one for you|owner|"
        "end user|for the owner|on behalf of|behalf of|a client of ours|a customer of ours"
    ),
    "COMPANY": (
        "marine|chandlery|yachts|boatyard|supply|supplies|sales|ltd|llc|inc|boat works|yacht services|rigging|"
        "riggers|sailmakers|marine services|shipyard|chandlers|chandler|yacht agency|boatbuilders|boat builders|"
        "yacht brokers|rigging ltd|boat sales|yacht sales|marine electronics|boat services|brokerage|yachting|"
        "sailing ltd|& sons|and sons|marine supply|gmbh"
    ),
    "PHONE": (
        "tel|phone|mobile|mob|cell|call|t|m|ph|telephone|mobile number|whatsapp|ring me|call me|tel no|phone number"
    ),
    "FAX": "fax|f|co|company|reg|vat|no",
    "SELL": (
        "website|seo|ranking|traffic|marketing|newsletter|unsubscribe|webinar|backlinks|a month|our services|"
        "exhibitors|invoice attached|crypto|leads|rank higher|page 1|loan|investors|click here|special offer|"
        "limited offer|outsourcing|followers|lottery|inheritance"
    ),
    "INSTEAD": "instead of|rather than",
    "OOPS": (
        "no|no wait|wait|sorry|rather|or rather|i mean|pardon|correction|scratch that|scrap that|make that|"
        "make it|oops|excuse me|nonsense|my mistake|that is wrong"
    ),
}
