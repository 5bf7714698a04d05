# Namen staan op zichzelf, achter een dubbele punt of tussen haakjes: zo hoeft niets verbogen te worden.

percent = { $number } %
or = { $first } of { $last }

# --- de brief ---

reply-subject = Windvaanbesturing voor { $boat }
reply-subject-bare = Uw vraag over windvaanbesturing
reply-hello-name = Beste { $name },
reply-hello = Goedendag,
reply-thanks = { $whose ->
    [owner] Dank voor uw bericht over uw { $boat }.
   *[other] Dank voor uw bericht over de { $boat }.
}
reply-thanks-bare = Dank voor uw bericht.
reply-unsure = Welk type het precies is, weten we nog niet zeker.
reply-regards = Met vriendelijke groet,
reply-desk = De verkoopafdeling

heading-suggest = Ons voorstel
heading-why = Waarom
heading-sure = Hoe zeker we zijn
heading-buy = Waar u zelf voor zorgt
heading-ask = Voordat we verzenden, horen we graag van u
heading-care = Let op
heading-nothing = Er past nog niets

reply-suggest = We stellen de besturing { $gear } voor, op onderste beugel { $lower } en bovenste beugel { $upper }, met as { $shaft }.
reply-verdict = { $verdict ->
    [fits] Volgens de maten die we hebben, past hij.
    [tight] Volgens de maten die we hebben, past hij, maar net aan.
   *[undecided] Of hij past, is nog niet te zeggen: er ontbreekt een maat waar het van afhangt, en ook andere schepen geven die niet.
}
reply-place = { $side ->
    [centre] Hij zit op hartlijn
    [port] Hij zit { $offset } aan bakboord van de hartlijn
   *[starboard] Hij zit { $offset } aan stuurboord van de hartlijn
}, de as { $aft } achter de bovenrand van de spiegel, het hart van de twee lagerklemmen { $lower } en { $upper } boven water.
reply-trades = Aan het schip vraagt dit:
trade-take-off = eraf halen: { $thing }
trade-build-up = de romp achter de { $bracket } laten versterken

reply-sisters = { $count ->
    [0] We hebben geen zusterschip in ons archief; daarom hebben we gekeken naar de schepen die het meest op het uwe lijken.
    [one] We hebben één zusterschip in ons archief.
   *[other] We hebben { $count } zusterschepen in ons archief.
}
reply-same = { $same ->
    [0] Van de { $looked } schepen die we nader hebben bekeken, heeft er geen precies deze opstelling.
    [one] Van de { $looked } schepen die we nader hebben bekeken, heeft er één precies deze opstelling.
   *[other] Van de { $looked } schepen die we nader hebben bekeken, hebben er { $same } precies deze opstelling.
}
reply-tried = We vonden hem door onze onderdelen een voor een op uw maten te proberen.
reply-likest = Het schip dat het meest op het uwe lijkt, is nummer { $record } in ons archief. Wat er bij u anders is:
reply-alike = Het schip dat het meest op het uwe lijkt, is nummer { $record } in ons archief; in alles wat we van beide weten, zijn ze gelijk.
reply-differs = { $field }: daar { $theirs }, bij u { $ours }
reply-hers-only = { $field }: daar { $theirs }
reply-ours-only = { $field }: bij u { $ours }
contrast-fails = Met { $theirs } in plaats van { $ours } ({ $field }) zou deze opstelling niet gaan.
contrast-moves = Met { $theirs } in plaats van { $ours } ({ $field }) zou de as { $aft } in langsrichting verschuiven (+ is naar achteren), de onderste lagerklem { $lower } en de bovenste { $upper } in hoogte.

reply-chance = De kans dat op uw schip alles vrijloopt, schatten we op { $chance }.
reply-doubt = De twijfel die blijft, hangt af van:
reply-doubt-line = { $field }: { $share } ervan
reply-filled = { $source ->
    [sister_ships] Niet opgegeven en daarom van zusterschepen overgenomen: { $fields }.
    [neighbours] Niet opgegeven en daarom van vergelijkbare schepen overgenomen: { $fields }.
   *[prior] Niet opgegeven en daarom genomen zoals gebruikelijk: { $fields }.
}

also = { $first }; { $last }
and-more = { $list } en nog { $count }
reply-nothing = Volgens de maten die we hebben, past niets van wat we maken op het schip zoals het is. Het dichtst in de buurt komt besturing { $gear } op onderste beugel { $lower } en bovenste beugel { $upper }, met as { $shaft }.
reply-miss = Wat in de weg zit: { $check }. Er ontbreekt { $amount }.
reply-cures = We hebben geprobeerd wat zou helpen:
reply-no-cure = Eén ding weghalen of één onderdeel wisselen helpt niet. Laat ons weten wat verplaatst kan worden, dan kijken we opnieuw.
cure-without = zonder dit: { $thing }
cure-shaft = as { $code } in plaats daarvan
cure-bracket = { $bracket }: { $code } in plaats daarvan
reply-none = Wat we van het schip weten, is nog niet genoeg voor een voorstel.

# --- waar de eigenaar voor zorgt ---

supply-bolts = { $bracket }: { $count } doorgaande bouten { $size } × { $length } met ringen en moeren
supply-bolts-open = { $bracket }: { $count } doorgaande bouten { $size } met ringen en moeren; de lengte volgt zodra de dikte van de romp gemeten is
supply-sealant = kit voor de boutgaten
supply-backing = contraplaten volgens tekening (rvs 316, aluminium of gelakt watervast multiplex)
supply-core = epoxy om de kern rond elk gat te vullen, of afstandsbussen
supply-insulate = isolatieringen en isolatiebussen tussen rvs en romp
supply-tube = een rechte buis met de diameter van de as, om alles te lood te stellen voordat er geboord wordt

# --- let op ---

caution-confirm = Dit is een advies, berekend uit wat ons is opgegeven. Controleer elke maat aan boord voordat er metaal besteld of een gat geboord wordt.
caution-holes = Gaten in de romp kunnen een schip doen zinken. Vraag de bouwer of een expert of daar geboord mag worden en hoe het aan de binnenkant ondersteund moet worden; plaatselijke regels en klasse gaan voor.
caution-plumb = Stel de as vóór het boren met een proefbuis in beide richtingen te lood: monteer eerst de onderste beugel.
caution-cored = De romp is sandwich: rond elk gat moet de kern weg en opgevuld, of er moet een bus in, anders wordt hij geplet en zuigt hij water op.
caution-metal = Rvs tegen een metalen romp laat de romp corroderen: isoleer elke bout, flens en plaat.
caution-moves = Er beweegt iets op de achterkant en we weten niet hoe ver: probeer het over de hele slag met de proefbuis op zijn plaats.
caution-low-hole = Het laagste boutgat zit { $height } boven water: laat een expert akkoord geven voordat daar geboord wordt.
caution-weak-skin = Volgens gebruikelijke waarden is de romp achter een beugel zwakker dan de krachten vragen: laat bouwer of expert zeggen hoe hij versterkt moet worden voordat er geboord wordt.
caution-shaking = Bij sommige snelheden kunnen wervels de as laten trillen: let er bij de eerste tocht op, en laat dan het vrije eind inkorten.
caution-tight = Het is krap: met de opgegeven maten gaat het, maar niet zeker. Meet nog eens na waar de twijfel van afhangt.

# --- hoe ver de ervaring reikt ---

backing-nothing = Er staat nog geen montage in het archief: de voorstellen berusten alleen op meetkunde en krachten, en wat monteurs zouden kiezen is niet bekend.
backing-no-like = Geen schip in het archief lijkt genoeg op dit om te vergelijken: de kansen zeggen alleen hoe vaak iets op welk schip dan ook gemonteerd is.
backing-nearest = { $known ->
    [yes] Er staat geen { $model } in het archief
   *[no] Het type is niet bekend, dus geen zusterschip kan meespreken
}: wat monteurs zouden kiezen, is beoordeeld naar andere schepen, waarvan het naaste voor { $like } overeenkomt.
backing-unlike = { $known ->
    [yes] Er staat geen { $model } in het archief
   *[no] Het type is niet bekend, dus geen zusterschip kan meespreken
}: wat monteurs zouden kiezen, is beoordeeld naar andere schepen, waarvan het naaste voor { $like } overeenkomt, en zelfs dat is een nogal ander schip.
backing-stern = { $count ->
    [0] Met deze achterkant ({ $stern }) staat geen schip in het archief
    [one] Met deze achterkant ({ $stern }) staat maar één schip in het archief
   *[other] Met deze achterkant ({ $stern }) staan maar { $count } schepen in het archief
}: wat andere voeren zegt hier weinig, de voorstellen berusten op meetkunde.
backing-tried = Niets van wat vergelijkbare schepen voeren gaat hier: het voorstel is gevonden door de catalogus op de maten te proberen.
stern-plumb = rechte spiegel
stern-raked = overhangende spiegel
stern-reverse = negatieve spiegel
stern-scoop = spiegel met trede
stern-open = open achterkant
stern-double_ended = spitsgat

# --- vragen ---

ask-hull = Welk schip is het precies: { $names }? Bouwjaar en bouwplaatje vertellen het.
ask-boat-model = Welk schip is het: bouwer, type en bouwjaar?
ask-transom-top_height_mm = Hoe hoog zit de bovenrand van de spiegel boven water? Op hartlijn, bij vlak water en beladen zoals u vaart: van het water tot het hoogste stuk romp dat een beugel kan dragen, zonder hekstoel, lijst of opstaande rand. Op { $exact } nauwkeurig is goed.
ask-transom-rake_deg = Hoe ver staat de spiegel uit het lood, en welke kant op? Houd een waterpas of schietlood op hartlijn en laat ons weten of de bovenrand verder naar achteren zit dan de onderrand (overhangend) of verder naar voren (negatief). Op { $exact } nauwkeurig is goed.
ask-transom-bottom_height_mm = Hoe hoog boven water eindigt de spiegel aan de onderkant? Op hartlijn; met een minteken als hij onder water eindigt. Op { $exact } nauwkeurig is goed.
ask-transom-width_top_mm = Hoe breed is de spiegel bovenaan? De volle breedte langs de bovenrand, op { $exact } nauwkeurig.
ask-transom-width_waterline_mm = Hoe breed is de spiegel op de waterlijn, of aan de onderrand als die hoger zit? De volle breedte, op { $exact } nauwkeurig.
ask-transom-thickness_mm = Hoe dik is de romp waar de bouten doorheen gaan? Meet bij een huiddoorvoer of een geboord gat: alles bij elkaar, met kern, op { $exact } nauwkeurig.
ask-transom-camber_mm = Hoe bol is de spiegel? Houd een rechte lat waterpas tegen de bovenrand, zodat hij in het midden raakt, en geef ons de helft van de som van de kieren aan beide einden, op { $exact } nauwkeurig.
ask-transom-step_height_mm = Hoe hoog zit de bovenkant van de trede boven water? Bij vlak water, beladen zoals u vaart, op { $exact } nauwkeurig.
ask-transom-step_depth_mm = Hoe diep is de trede? In langsrichting, van de voet van de opstaande wand tot de achterrand, op { $exact } nauwkeurig.
ask-transom-step_width_mm = Hoe breed is de trede, dwarsscheeps, waar hij vlak is? Op { $exact } nauwkeurig.
ask-transom-post_width_mm = Hoe breed is de achtersteven waar de beugels hem zouden klemmen? Met een schuifmaat, op beide hoogten, op { $exact } nauwkeurig.
ask-main_rudder-hung = Hoe hangt het hoofdroer: onder de romp, of buiten aan de spiegel of achtersteven?
ask-main_rudder-trailing_edge_aft_mm = Hoe ver komt het hoofdroer naar achteren? Hang een schietlood aan de bovenrand van de spiegel en meet in langsrichting tot de achterste rand van het roer; met een minteken als die vóór het lood zit. Op { $exact } nauwkeurig is goed.
ask-main_rudder-stock_aft_mm = Waar zit de roerkoning? In langsrichting vanaf een schietlood aan de bovenrand van de spiegel; met een minteken naar voren. Op { $exact } nauwkeurig is goed.
ask-boat-displacement_kg = Wat weegt het schip, beladen zoals u vaart? Op { $exact } nauwkeurig is goed; zeg erbij of het getal leeg of beladen geldt.
ask-boat-stern = Welke vorm heeft de achterkant waar de onderste beugel zou zitten: recht, overhangend, negatief, met een trede in de romp, open of spitsgat? Een foto van opzij zegt het het best.
ask-obstacle = Waar zit dit precies: { $thing }? Van waar tot waar achter de bovenrand van de spiegel, hoe ver uit de hartlijn, hoe hoog boven water? Op { $exact } nauwkeurig is goed.
ask-obstacles = Wat staat er op de achterkant: trap, plateau, davits, buitenboordmotor, uitlaat, hekstoel, stagen, gieken, een beugel? Geef van elk aan hoe ver uit de hartlijn het begint en eindigt, tot hoe ver naar achteren en hoe hoog boven water het reikt (op { $exact } nauwkeurig is goed), of het klapt of zwenkt, en of het weg mag. Een foto van achteren helpt.
ask-doubt-contradictory = { $field }: u geeft { $values } op. Welke maat klopt?
ask-doubt-sign_unknown = { $field }: u schrijft ‘{ $text }’. Welke kant op: naar achteren of naar voren, boven of onder water?
ask-doubt-unit_unknown = { $field }: u schrijft ‘{ $text }’. In welke eenheid?
ask-doubt-other_datum = { $field }: u hebt vanaf een ander punt gemeten dan wij (‘{ $text }’). Hoe hoog is het boven water, bij vlak water en beladen zoals u vaart?
ask-doubt-ambiguous = { $field }: ‘{ $text }’ is op meer dan één manier te lezen. Welke maat bedoelt u?

bracket-lower = onderste beugel
bracket-upper = bovenste beugel

# --- namen van gegevens ---

field-other = een van uw gegevens
field-boat-builder = bouwer
field-boat-model = type
field-boat-year = bouwjaar
field-boat-loa_mm = lengte over alles
field-boat-lwl_mm = lengte waterlijn
field-boat-beam_mm = breedte
field-boat-draft_mm = diepgang
field-boat-displacement_kg = waterverplaatsing
field-boat-hull_material = bouwmateriaal van de romp
field-boat-stern = vorm van de achterkant
field-transom-top_height_mm = hoogte van de bovenrand van de spiegel boven water
field-transom-bottom_height_mm = hoogte van de onderrand van de spiegel boven water
field-transom-rake_deg = helling van de spiegel
field-transom-profile = profiel op hartlijn
field-transom-sections = horizontale doorsneden
field-transom-width_top_mm = breedte van de spiegel bovenaan
field-transom-width_waterline_mm = breedte van de spiegel op de waterlijn
field-transom-camber_mm = bolling van de spiegel
field-transom-thickness_mm = dikte van de romp
field-transom-core_mm = dikte van de kern
field-transom-step_height_mm = hoogte van de trede boven water
field-transom-step_depth_mm = diepte van de trede
field-transom-step_width_mm = breedte van de trede
field-transom-lower_rake_deg = helling van de romp onder de trede
field-transom-post_width_mm = breedte van de achtersteven
field-main_rudder-hung = hoe het hoofdroer hangt
field-main_rudder-stock_aft_mm = plaats van de roerkoning
field-main_rudder-leading_edge_aft_mm = voorkant van het hoofdroer
field-main_rudder-trailing_edge_aft_mm = achterkant van het hoofdroer
field-main_rudder-top_height_mm = bovenkant van het hoofdroerblad boven water
field-main_rudder-bottom_height_mm = onderkant van het hoofdroerblad boven water
field-main_rudder-max_deflection_deg = uitslag van het hoofdroer naar elke kant
field-obstacles = wat er op de achterkant staat
field-waterline = waterlijn beladen
field-interactions = verschillende maten samen

# --- wat er op de achterkant kan staan ---

thing-ladder = zwemtrap
thing-platform = zwemplatform
thing-davits = davits
thing-outboard = buitenboordmotor
thing-exhaust = uitlaat
thing-rail = hekstoel
thing-stay = achterstag
thing-boom = giek
thing-boomkin = papegaaistok
thing-arch = targaboog
thing-panels = zonnepanelen
thing-mast = mast
thing-staff = vlaggenstok
thing-passerelle = loopplank
thing-locker = bakskist
thing-other = ander beslag
thing-at = { $side ->
    [port] { $thing } (aan bakboord)
    [starboard] { $thing } (aan stuurboord)
    [centre] { $thing } (op hartlijn)
    [both] { $thing } (aan beide kanten)
   *[across] { $thing } (over de volle breedte)
}

word-plumb = recht
word-raked = overhangend
word-reverse = negatief
word-scoop = met trede
word-open = open
word-double_ended = spitsgat
word-inboard = onder de romp
word-transom = buiten, aan de spiegel
word-frp_solid = massief polyester
word-frp_cored = polyester sandwich
word-wood = hout
word-aluminium = aluminium
word-steel = staal

# --- wat er nagekeken wordt ---

check-reach = bereik van de { $bracket }
check-pad = dikte van het vulstuk onder de { $bracket }
check-seat = gave romp onder de { $bracket }
check-strut = schoren van de { $bracket }
check-gap = breedte van de achtersteven in de { $bracket }
check-stands = hoogte boven de trede van de { $bracket }
check-spacing = afstand tussen de beugels
check-overhang = vrij eind van de as onder de onderste beugel
check-head = lengte van de as boven de bovenste beugel
check-foot = lengte van de as bij de onderste beugel
check-immersion = diepte van het blad in het water
check-root_depth = diepte van de bovenkant van het blad
check-main_rudder = ruimte tussen besturing en hoofdroer
check-hull = ruimte tussen besturing en romp
check-displacement = waterverplaatsing voor deze maat besturing
check-wake = vrij water naast het hoofdroer
check-obstacle = ruimte tot dit: { $thing }
check-load = sterkte van as en beugels
