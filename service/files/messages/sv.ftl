# Namn står för sig, efter kolon eller inom parentes: då behöver inget böjas.

percent = { $number } %
or = { $first } eller { $last }

# --- brevet ---

reply-subject = Vindroder till { $boat }
reply-subject-bare = Din fråga om vindroder
reply-hello-name = Hej { $name },
reply-hello = Hej,
reply-thanks = { $whose ->
    [owner] Tack för att du skrev till oss om din { $boat }.
   *[other] Tack för att du skrev till oss om båten, { $boat }.
}
reply-thanks-bare = Tack för att du skrev till oss.
reply-unsure = Vi är ännu inte helt säkra på vilken båttyp det är.
reply-regards = Med vänliga hälsningar
reply-desk = Säljavdelningen

heading-suggest = Vårt förslag
heading-why = Varför
heading-sure = Hur säkra vi är
heading-buy = Det här ordnar du själv
heading-ask = Innan vi skickar behöver vi veta
heading-care = Tänk på
heading-nothing = Inget passar än

reply-suggest = Vi föreslår vindrodret { $gear } på undre fäste { $lower } och övre fäste { $upper }, med axel { $shaft }.
reply-verdict = { $verdict ->
    [fits] Enligt de mått vi har passar det.
    [tight] Enligt de mått vi har passar det, men nätt och jämnt.
   *[undecided] Om det passar går ännu inte att säga: ett mått som det hänger på saknas, och andra båtar ger det inte heller.
}
reply-place = { $side ->
    [centre] Det sitter midskepps
    [port] Det sitter { $offset } om babord från mittlinjen
   *[starboard] Det sitter { $offset } om styrbord från mittlinjen
}, axeln { $aft } akter om akterspegelns överkant, mitten av de två hylsorna { $lower } och { $upper } över vattnet.
reply-trades = Det här kräver det av båten:
trade-take-off = ta bort: { $thing }
trade-build-up = låt förstärka skrovet bakom { $bracket }

reply-sisters = { $count ->
    [0] Vi har ingen systerbåt i vårt register, så vi tittade på de båtar som är mest lika din.
    [one] Vi har en systerbåt i vårt register.
   *[other] Vi har { $count } systerbåtar i vårt register.
}
reply-same = { $same ->
    [0] Av de { $looked } båtar vi tittade närmare på har ingen just den här uppsättningen.
    [one] Av de { $looked } båtar vi tittade närmare på har en just den här uppsättningen.
   *[other] Av de { $looked } båtar vi tittade närmare på har { $same } just den här uppsättningen.
}
reply-tried = Vi hittade den genom att prova våra delar en efter en på dina mått.
reply-likest = Den båt som är mest lik din är nummer { $record } i vårt register. Så här skiljer sig din:
reply-alike = Den båt som är mest lik din är nummer { $record } i vårt register; i allt vi vet om båda är de lika.
reply-differs = { $field }: där { $theirs }, hos dig { $ours }
reply-hers-only = { $field }: där { $theirs }
reply-ours-only = { $field }: hos dig { $ours }
contrast-fails = Med { $theirs } i stället för { $ours } ({ $field }) skulle den här uppsättningen inte gå.
contrast-moves = Med { $theirs } i stället för { $ours } ({ $field }) skulle axeln flyttas { $aft } i långskeppsled (+ är akteröver), den undre hylsan { $lower } och den övre { $upper } i höjdled.

reply-chance = Chansen att allt går fritt på din båt bedömer vi till { $chance }.
reply-doubt = Det tvivel som finns beror på:
reply-doubt-line = { $field }: { $share } av tvivlet
reply-filled = { $source ->
    [sister_ships] Inte uppgivet och därför taget från systerbåtar: { $fields }.
    [neighbours] Inte uppgivet och därför taget från liknande båtar: { $fields }.
   *[prior] Inte uppgivet och därför taget som det brukar vara: { $fields }.
}

also = { $first }; { $last }
and-more = { $list } och { $count } till
reply-nothing = Enligt de mått vi har passar inget av det vi tillverkar på båten som den är. Närmast kommer vindrodret { $gear } på undre fäste { $lower } och övre fäste { $upper }, med axel { $shaft }.
reply-miss = Det som är i vägen: { $check }. Det fattas { $amount }.
reply-cures = Vi har provat vad som skulle hjälpa:
reply-no-cure = Att ta bort en enda sak eller byta en enda del hjälper inte. Berätta vad som går att flytta, så tittar vi igen.
cure-without = utan detta: { $thing }
cure-shaft = axel { $code } i stället
cure-bracket = { $bracket }: { $code } i stället
reply-none = Det vi vet om båten räcker ännu inte för ett förslag.

# --- det ägaren ordnar ---

supply-bolts = { $bracket }: { $count } genomgående bultar { $size } × { $length } med brickor och muttrar
supply-bolts-open = { $bracket }: { $count } genomgående bultar { $size } med brickor och muttrar; längden när skrovets tjocklek är uppmätt
supply-sealant = tätmassa till bulthålen
supply-backing = motplattor enligt ritning (syrafast 316, aluminium eller förseglad marinplywood)
supply-core = epoxi för att fylla kärnan runt varje hål, eller distanshylsor
supply-insulate = isolerbrickor och isolerhylsor mellan rostfritt och skrov
supply-tube = ett rakt rör med axelns diameter, för att ställa allt i lod innan du borrar

# --- att tänka på ---

caution-confirm = Det här är råd, uträknade ur det vi fått veta. Kontrollera varje mått på båten innan metall beställs eller ett hål borras.
caution-holes = Hål i skrovet kan sänka en båt. Fråga varvet eller en besiktningsman om skrovet får borras där och hur det ska förstärkas på insidan; lokala regler och klass går före.
caution-plumb = Ställ axeln i lod åt båda hållen med ett provrör innan du borrar: montera det undre fästet först.
caution-cored = Skrovet är sandwich: runt varje hål måste kärnan tas bort och fyllas, eller hylsas, annars kläms den ihop och drar vatten.
caution-metal = Rostfritt mot ett metallskrov fräter på skrovet: isolera varje bult, fläns och platta.
caution-moves = Något på aktern rör sig och vi vet inte hur långt: för det genom hela rörelsen med provröret på plats.
caution-low-hole = Det lägsta bulthålet sitter { $height } över vattnet: låt en besiktningsman godkänna innan du borrar där.
caution-weak-skin = Enligt vanliga värden är skrovet bakom ett fäste svagare än lasterna kräver: varvet eller en besiktningsman bör säga hur det ska förstärkas innan något borras.
caution-shaking = Vid vissa farter kan virvlar få axeln att skaka: håll ögonen på det vid första seglingen, och låt i så fall korta den fria änden.
caution-tight = Det är knappt: med de mått vi fått går det, men inte säkert. Mät om det som tvivlet beror på.

# --- hur långt erfarenheten räcker ---

backing-nothing = Ännu finns ingen montering i registret: förslagen vilar bara på geometri och laster, och vad montörer skulle välja vet ingen.
backing-no-like = Ingen båt i registret är tillräckligt lik denna för att jämföras: chanserna säger bara hur ofta något alls har monterats.
backing-nearest = { $known ->
    [yes] Ingen { $model } finns i registret
   *[no] Båttypen är inte känd, så ingen systerbåt kan vittna
}: vad montörer skulle välja bedöms efter andra båtar, av vilka den närmaste är { $like } lik.
backing-unlike = { $known ->
    [yes] Ingen { $model } finns i registret
   *[no] Båttypen är inte känd, så ingen systerbåt kan vittna
}: vad montörer skulle välja bedöms efter andra båtar, av vilka den närmaste är { $like } lik, och även den är en ganska annorlunda båt.
backing-stern = { $count ->
    [0] Ingen båt med den här aktern ({ $stern }) finns i registret
    [one] Bara en båt med den här aktern ({ $stern }) finns i registret
   *[other] Bara { $count } båtar med den här aktern ({ $stern }) finns i registret
}: vad andra har säger lite här, förslagen vilar på geometri.
backing-tried = Inget av det som liknande båtar har går här: förslaget hittades genom att prova katalogen på måtten.
stern-plumb = lodrät akterspegel
stern-raked = utfallande akterspegel
stern-reverse = negativ akterspegel
stern-scoop = akter med trappsteg
stern-open = öppen akter
stern-double_ended = spetsgattad

# --- frågor ---

ask-hull = Vilken båt är det exakt: { $names }? Årsmodell och varvsskylt skulle visa det.
ask-boat-model = Vilken båt är det: varv, modell och år?
ask-transom-top_height_mm = Hur högt över vattnet ligger akterspegelns överkant? På mittlinjen, i stiltje och lastad som ni seglar: från vattnet till det högsta stycke skrov som kan bära ett fäste, utan pulpit, list eller sarg. På { $exact } när räcker.
ask-transom-rake_deg = Hur mycket lutar akterspegeln från lodlinjen, och åt vilket håll? Håll ett vattenpass eller lod på mittlinjen och berätta om överkanten ligger längre akterut än underkanten (utfallande) eller längre förut (negativ). På { $exact } när räcker.
ask-transom-bottom_height_mm = Hur högt över vattnet slutar akterspegeln nedtill? På mittlinjen; med minustecken om den slutar under vattnet. På { $exact } när räcker.
ask-transom-width_top_mm = Hur bred är akterspegeln upptill? Hela bredden längs överkanten, på { $exact } när.
ask-transom-width_waterline_mm = Hur bred är akterspegeln vid vattenlinjen, eller vid underkanten om den ligger högre? Hela bredden, på { $exact } när.
ask-transom-thickness_mm = Hur tjockt är skrovet där bultarna går igenom? Mät vid en skrovgenomföring eller ett borrat hål: allt, kärnan inräknad, på { $exact } när.
ask-transom-camber_mm = Hur välvd är akterspegeln? Håll en rak ribba vågrätt mot överkanten så att den tar i på mitten, och ge oss halva summan av gliporna i båda ändar, på { $exact } när.
ask-transom-step_height_mm = Hur högt över vattnet ligger trappstegets ovansida? I stiltje, lastad som ni seglar, på { $exact } när.
ask-transom-step_depth_mm = Hur djupt är trappsteget? I långskeppsled, från den stående väggens fot till akterkanten, på { $exact } när.
ask-transom-step_width_mm = Hur brett är trappsteget, tvärskepps, där det är plant? På { $exact } när.
ask-transom-post_width_mm = Hur bred är akterstäven där fästena skulle gripa om den? Med skjutmått, på båda höjderna, på { $exact } när.
ask-main_rudder-hung = Hur sitter huvudrodret: under skrovet, eller utombords på akterspegeln eller akterstäven?
ask-main_rudder-trailing_edge_aft_mm = Hur långt akterut når huvudrodret? Häng ett lod från akterspegelns överkant och mät i långskeppsled till rodrets aktersta kant; med minustecken om den ligger för om lodet. På { $exact } när räcker.
ask-main_rudder-stock_aft_mm = Var sitter hjärtstocken? I långskeppsled från ett lod vid akterspegelns överkant; med minustecken föröver. På { $exact } när räcker.
ask-boat-displacement_kg = Vad väger båten, lastad som ni seglar? På { $exact } när räcker; skriv om siffran gäller tom eller lastad båt.
ask-boat-stern = Vilken form har aktern där det undre fästet skulle sitta: lodrät, utfallande, negativ, med inbyggt trappsteg, öppen eller spetsgattad? Ett foto från sidan säger mest.
ask-obstacle = Var sitter detta exakt: { $thing }? Från var till var akter om akterspegelns överkant, hur långt från mittlinjen, hur högt över vattnet? På { $exact } när räcker.
ask-obstacles = Vad sitter på aktern: stege, plattform, dävertar, utombordare, avgasrör, pulpit, stag, bommar, en båge? Berätta för var sak hur långt från mittlinjen den börjar och slutar, hur långt akterut och hur högt över vattnet den når (på { $exact } när räcker), om den fälls eller svänger, och om den får tas bort. Ett foto akterifrån hjälper.
ask-doubt-contradictory = { $field }: du uppger { $values }. Vilket mått stämmer?
ask-doubt-sign_unknown = { $field }: du skriver ”{ $text }”. Åt vilket håll: akterut eller förut, över eller under vattnet?
ask-doubt-unit_unknown = { $field }: du skriver ”{ $text }”. I vilken enhet?
ask-doubt-other_datum = { $field }: du har mätt från ett annat ställe än vi (”{ $text }”). Hur högt över vattnet är det, i stiltje och lastad som ni seglar?
ask-doubt-ambiguous = { $field }: ”{ $text }” går att läsa på mer än ett sätt. Vilket mått menar du?

bracket-lower = undre fästet
bracket-upper = övre fästet

# --- uppgifternas namn ---

field-other = en av dina uppgifter
field-boat-builder = varv
field-boat-model = modell
field-boat-year = byggår
field-boat-loa_mm = längd över allt
field-boat-lwl_mm = längd i vattenlinjen
field-boat-beam_mm = bredd
field-boat-draft_mm = djupgående
field-boat-displacement_kg = deplacement
field-boat-hull_material = skrovmaterial
field-boat-stern = akterns form
field-transom-top_height_mm = höjd över vattnet till akterspegelns överkant
field-transom-bottom_height_mm = höjd över vattnet till akterspegelns underkant
field-transom-rake_deg = akterspegelns lutning
field-transom-profile = profil på mittlinjen
field-transom-sections = vågräta snitt
field-transom-width_top_mm = akterspegelns bredd upptill
field-transom-width_waterline_mm = akterspegelns bredd vid vattenlinjen
field-transom-camber_mm = akterspegelns välvning
field-transom-thickness_mm = skrovets tjocklek
field-transom-core_mm = kärnans tjocklek
field-transom-step_height_mm = trappstegets höjd över vattnet
field-transom-step_depth_mm = trappstegets djup
field-transom-step_width_mm = trappstegets bredd
field-transom-lower_rake_deg = skrovets lutning under trappsteget
field-transom-post_width_mm = akterstävens bredd
field-main_rudder-hung = hur huvudrodret sitter
field-main_rudder-stock_aft_mm = hjärtstockens läge
field-main_rudder-leading_edge_aft_mm = huvudrodrets framkant
field-main_rudder-trailing_edge_aft_mm = huvudrodrets akterkant
field-main_rudder-top_height_mm = huvudroderbladets överkant över vattnet
field-main_rudder-bottom_height_mm = huvudroderbladets underkant över vattnet
field-main_rudder-max_deflection_deg = huvudrodrets utslag åt varje håll
field-obstacles = det som sitter på aktern
field-waterline = vattenlinje lastad
field-interactions = flera mått tillsammans

# --- det som kan sitta på aktern ---

thing-ladder = badstege
thing-platform = badplattform
thing-davits = dävertar
thing-outboard = utombordsmotor
thing-exhaust = avgasrör
thing-rail = akterpulpit
thing-stay = akterstag
thing-boom = bom
thing-boomkin = utliggare akterut
thing-arch = targabåge
thing-panels = solpaneler
thing-mast = mast
thing-staff = flaggspel
thing-passerelle = landgång
thing-locker = stuvfack
thing-other = annat beslag
thing-at = { $side ->
    [port] { $thing } (om babord)
    [starboard] { $thing } (om styrbord)
    [centre] { $thing } (midskepps)
    [both] { $thing } (på båda sidor)
   *[across] { $thing } (tvärs över)
}

word-plumb = lodrät
word-raked = utfallande
word-reverse = negativ
word-scoop = med trappsteg
word-open = öppen
word-double_ended = spetsgattad
word-inboard = under skrovet
word-transom = utombords på akterspegeln
word-frp_solid = massiv glasfiber
word-frp_cored = glasfiber med kärna
word-wood = trä
word-aluminium = aluminium
word-steel = stål

# --- det som kontrolleras ---

check-reach = räckvidd, { $bracket }
check-pad = mellanläggets tjocklek, { $bracket }
check-seat = friskt skrov under flänsen, { $bracket }
check-strut = stag, { $bracket }
check-gap = akterstävens bredd, { $bracket }
check-stands = höjd över trappsteget, { $bracket }
check-spacing = avstånd mellan fästena
check-overhang = axelns fria ände under det undre fästet
check-head = axelns längd över det övre fästet
check-foot = axelns längd vid det undre fästet
check-immersion = bladets djup i vattnet
check-root_depth = djup till bladets överkant
check-main_rudder = avstånd mellan vindrodret och huvudrodret
check-hull = avstånd mellan vindrodret och skrovet
check-displacement = deplacement för den här storleken
check-wake = fritt vatten bredvid huvudrodret
check-obstacle = avstånd till detta: { $thing }
check-load = hållfasthet hos axel och fästen
