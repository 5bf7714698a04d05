# Navn står for seg selv, etter kolon eller i parentes: da må ingenting bøyes.

percent = { $number } %
or = { $first } eller { $last }

# --- brevet ---

reply-subject = Vindror til { $boat }
reply-subject-bare = Spørsmålet ditt om vindror
reply-hello-name = Hei { $name },
reply-hello = Hei,
reply-thanks = { $whose ->
    [owner] Takk for at du skrev til oss om din { $boat }.
   *[other] Takk for at du skrev til oss om båten, { $boat }.
}
reply-thanks-bare = Takk for at du skrev til oss.
reply-unsure = Vi er ennå ikke helt sikre på hvilken båttype det er.
reply-regards = Med vennlig hilsen
reply-desk = Salgsavdelingen

heading-suggest = Forslaget vårt
heading-why = Hvorfor
heading-sure = Hvor sikre vi er
heading-buy = Dette ordner du selv
heading-ask = Før vi sender, trenger vi å vite
heading-care = Husk
heading-nothing = Ingenting passer ennå

reply-suggest = Vi foreslår vindroret { $gear } på nedre feste { $lower } og øvre feste { $upper }, med aksel { $shaft }.
reply-verdict = { $verdict ->
    [fits] Etter målene vi har, passer det.
    [tight] Etter målene vi har, passer det, men bare så vidt.
   *[undecided] Om det passer, kan ennå ikke sies: et mål det avhenger av, mangler, og andre båter gir det heller ikke.
}
reply-place = { $side ->
    [centre] Det sitter midtskips
    [port] Det sitter { $offset } om babord fra senterlinjen
   *[starboard] Det sitter { $offset } om styrbord fra senterlinjen
}, akselen { $aft } aktenfor akterspeilets overkant, midten av de to hylsene { $lower } og { $upper } over vannet.
reply-trades = Dette krever det av båten:
trade-take-off = ta av: { $thing }
trade-build-up = få skroget forsterket bak { $bracket }

reply-sisters = { $count ->
    [0] Vi har ingen søsterbåt i registeret vårt, så vi så på båtene som ligner mest på din.
    [one] Vi har én søsterbåt i registeret vårt.
   *[other] Vi har { $count } søsterbåter i registeret vårt.
}
reply-same = { $same ->
    [0] Av de { $looked } båtene vi så nærmere på, har ingen akkurat dette oppsettet.
    [one] Av de { $looked } båtene vi så nærmere på, har én akkurat dette oppsettet.
   *[other] Av de { $looked } båtene vi så nærmere på, har { $same } akkurat dette oppsettet.
}
reply-tried = Vi fant det ved å prøve delene våre én etter én på målene dine.
reply-likest = Båten som ligner mest på din, er nummer { $record } i registeret vårt. Slik skiller din seg ut:
reply-alike = Båten som ligner mest på din, er nummer { $record } i registeret vårt; i alt vi vet om begge, er de like.
reply-differs = { $field }: der { $theirs }, hos deg { $ours }
reply-hers-only = { $field }: der { $theirs }
reply-ours-only = { $field }: hos deg { $ours }
contrast-fails = Med { $theirs } i stedet for { $ours } ({ $field }) ville dette oppsettet ikke gå.
contrast-moves = Med { $theirs } i stedet for { $ours } ({ $field }) ville akselen flytte seg { $aft } langskips (+ er akterover), nedre hylse { $lower } og øvre { $upper } i høyden.

reply-chance = Sjansen for at alt går klar på båten din, anslår vi til { $chance }.
reply-doubt = Den tvilen som er igjen, henger på:
reply-doubt-line = { $field }: { $share } av tvilen
reply-filled = { $source ->
    [sister_ships] Ikke oppgitt og derfor tatt fra søsterbåter: { $fields }.
    [neighbours] Ikke oppgitt og derfor tatt fra lignende båter: { $fields }.
   *[prior] Ikke oppgitt og derfor tatt som vanlig: { $fields }.
}

also = { $first }; { $last }
and-more = { $list } og { $count } til
reply-nothing = Etter målene vi har, passer ingenting av det vi lager på båten slik den er. Nærmest kommer vindroret { $gear } på nedre feste { $lower } og øvre feste { $upper }, med aksel { $shaft }.
reply-miss = Det som står i veien: { $check }. Det mangler { $amount }.
reply-cures = Vi har prøvd hva som ville hjelpe:
reply-no-cure = Å ta av én ting eller bytte én del hjelper ikke. Fortell oss hva som kan flyttes, så ser vi på det igjen.
cure-without = uten dette: { $thing }
cure-shaft = aksel { $code } i stedet
cure-bracket = { $bracket }: { $code } i stedet
reply-none = Det vi vet om båten, er ennå ikke nok til et forslag.

# --- det eieren ordner ---

supply-bolts = { $bracket }: { $count } gjennomgående bolter { $size } × { $length } med skiver og muttere
supply-bolts-open = { $bracket }: { $count } gjennomgående bolter { $size } med skiver og muttere; lengden når skrogtykkelsen er målt
supply-sealant = tetningsmasse til bolthullene
supply-backing = motplater etter tegning (syrefast 316, aluminium eller forseglet marinekryssfiner)
supply-core = epoksy til å fylle kjernen rundt hvert hull, eller avstandshylser
supply-insulate = isolerende skiver og hylser mellom rustfritt og skrog
supply-tube = et rett rør med akselens diameter, til å sette alt i lodd før du borer

# --- å huske på ---

caution-confirm = Dette er råd, regnet ut fra det vi har fått vite. Kontroller hvert mål på båten før metall bestilles eller et hull bores.
caution-holes = Hull i skroget kan senke en båt. Spør verftet eller en takstmann om skroget kan bores der, og hvordan det skal forsterkes på innsiden; lokale regler og klasse går foran.
caution-plumb = Sett akselen i lodd begge veier med et prøverør før du borer: monter nedre feste først.
caution-cored = Skroget er sandwich: rundt hvert hull må kjernen fjernes og fylles, eller få en hylse, ellers klemmes den sammen og trekker vann.
caution-metal = Rustfritt mot et metallskrog tærer på skroget: isoler hver bolt, flens og plate.
caution-moves = Noe på hekken beveger seg, og vi vet ikke hvor langt: kjør det gjennom hele bevegelsen med prøverøret på plass.
caution-low-hole = Det laveste bolthullet sitter { $height } over vannet: få en takstmann til å godkjenne før du borer der.
caution-weak-skin = Etter vanlige verdier er skroget bak et feste svakere enn lastene krever: verftet eller en takstmann bør si hvordan det skal forsterkes før noe bores.
caution-shaking = Ved enkelte farter kan virvler få akselen til å dirre: følg med på første tur, og få i så fall kortet inn den frie enden.
caution-tight = Det er knapt: med målene vi har fått, går det, men ikke sikkert. Mål om igjen det tvilen henger på.

# --- hvor langt erfaringen rekker ---

backing-nothing = Ingen montering står i registeret ennå: forslagene hviler bare på geometri og laster, og hva montører ville valgt, vet ingen.
backing-no-like = Ingen båt i registeret ligner nok på denne til å sammenlignes: sjansene sier bare hvor ofte noe i det hele tatt er montert.
backing-nearest = { $known ->
    [yes] Ingen { $model } står i registeret
   *[no] Båttypen er ikke kjent, så ingen søsterbåt kan vitne
}: hva montører ville valgt, er bedømt etter andre båter; den nærmeste er { $like } lik.
backing-unlike = { $known ->
    [yes] Ingen { $model } står i registeret
   *[no] Båttypen er ikke kjent, så ingen søsterbåt kan vitne
}: hva montører ville valgt, er bedømt etter andre båter; den nærmeste er { $like } lik, og selv den er en ganske annen båt.
backing-stern = { $count ->
    [0] Ingen båt med denne hekken ({ $stern }) står i registeret
    [one] Bare én båt med denne hekken ({ $stern }) står i registeret
   *[other] Bare { $count } båter med denne hekken ({ $stern }) står i registeret
}: hva andre har, sier lite her, forslagene hviler på geometri.
backing-tried = Ingenting av det lignende båter har, går her: forslaget ble funnet ved å prøve katalogen på målene.
stern-plumb = loddrett akterspeil
stern-raked = utoverhellende akterspeil
stern-reverse = negativt akterspeil
stern-scoop = hekk med trinn
stern-open = åpen hekk
stern-double_ended = spissgattet

# --- spørsmål ---

ask-hull = Hvilken båt er det nøyaktig: { $names }? Årsmodell og byggeskilt ville vise det.
ask-boat-model = Hvilken båt er det: verft, modell og år?
ask-transom-top_height_mm = Hvor høyt over vannet ligger akterspeilets overkant? På senterlinjen, i blikkstille og lastet slik dere seiler: fra vannet til det høyeste stykket skrog som kan bære et feste, uten pulpit, list eller karm. På { $exact } nær er nok.
ask-transom-rake_deg = Hvor mye heller akterspeilet fra loddlinjen, og hvilken vei? Hold et vater eller lodd på senterlinjen og fortell om overkanten ligger lenger akter enn underkanten (utoverhellende) eller lenger forut (negativt). På { $exact } nær er nok.
ask-transom-bottom_height_mm = Hvor høyt over vannet slutter akterspeilet nederst? På senterlinjen; med minustegn hvis det slutter under vann. På { $exact } nær er nok.
ask-transom-width_top_mm = Hvor bredt er akterspeilet øverst? Hele bredden langs overkanten, på { $exact } nær.
ask-transom-width_waterline_mm = Hvor bredt er akterspeilet i vannlinjen, eller ved underkanten hvis den ligger høyere? Hele bredden, på { $exact } nær.
ask-transom-thickness_mm = Hvor tykt er skroget der boltene går gjennom? Mål ved en skroggjennomføring eller et boret hull: alt, med kjernen, på { $exact } nær.
ask-transom-camber_mm = Hvor buet er akterspeilet? Hold en rett lekt vannrett mot overkanten så den tar i på midten, og gi oss halve summen av glipene i begge ender, på { $exact } nær.
ask-transom-step_height_mm = Hvor høyt over vannet ligger oversiden av trinnet? I blikkstille, lastet slik dere seiler, på { $exact } nær.
ask-transom-step_depth_mm = Hvor dypt er trinnet? Langskips, fra foten av den stående veggen til akterkanten, på { $exact } nær.
ask-transom-step_width_mm = Hvor bredt er trinnet, tverrskips, der det er plant? På { $exact } nær.
ask-transom-post_width_mm = Hvor bred er akterstevnen der festene ville gripe om den? Med skyvelær, i begge høyder, på { $exact } nær.
ask-main_rudder-hung = Hvordan er hovedroret montert: under skroget, eller utenpå akterspeilet eller akterstevnen?
ask-main_rudder-trailing_edge_aft_mm = Hvor langt akterover når hovedroret? Heng et lodd fra akterspeilets overkant og mål langskips til rorets akterste kant; med minustegn hvis den ligger foran loddet. På { $exact } nær er nok.
ask-main_rudder-stock_aft_mm = Hvor sitter rorstammen? Langskips fra et lodd ved akterspeilets overkant; med minustegn forover. På { $exact } nær er nok.
ask-boat-displacement_kg = Hva veier båten, lastet slik dere seiler? På { $exact } nær er nok; skriv om tallet gjelder tom eller lastet båt.
ask-boat-stern = Hvilken form har hekken der nedre feste ville sitte: loddrett, utoverhellende, negativ, med støpt trinn, åpen eller spissgattet? Et bilde fra siden sier mest.
ask-obstacle = Hvor sitter dette nøyaktig: { $thing }? Fra hvor til hvor aktenfor akterspeilets overkant, hvor langt fra senterlinjen, hvor høyt over vannet? På { $exact } nær er nok.
ask-obstacles = Hva sitter på hekken: stige, plattform, daviter, påhengsmotor, eksos, hekkstøtte, stag, bommer, en bøyle? Si for hver ting hvor langt fra senterlinjen den begynner og slutter, hvor langt akterut og hvor høyt over vannet den når (på { $exact } nær er nok), om den felles eller svinger, og om den kan fjernes. Et bilde aktenfra hjelper.
ask-doubt-contradictory = { $field }: du oppgir { $values }. Hvilket mål er riktig?
ask-doubt-sign_unknown = { $field }: du skriver «{ $text }». Hvilken vei: akterover eller forover, over eller under vannet?
ask-doubt-unit_unknown = { $field }: du skriver «{ $text }». I hvilken enhet?
ask-doubt-other_datum = { $field }: du har målt fra et annet sted enn vi («{ $text }»). Hvor høyt over vannet er det, i blikkstille og lastet slik dere seiler?
ask-doubt-ambiguous = { $field }: «{ $text }» kan leses på mer enn én måte. Hvilket mål mener du?

bracket-lower = nedre feste
bracket-upper = øvre feste

# --- navn på opplysninger ---

field-other = en av opplysningene dine
field-boat-builder = verft
field-boat-model = modell
field-boat-year = byggeår
field-boat-loa_mm = lengde over alt
field-boat-lwl_mm = lengde i vannlinjen
field-boat-beam_mm = bredde
field-boat-draft_mm = dybde
field-boat-displacement_kg = deplasement
field-boat-hull_material = skrogmateriale
field-boat-stern = hekkens form
field-transom-top_height_mm = høyde over vannet til akterspeilets overkant
field-transom-bottom_height_mm = høyde over vannet til akterspeilets underkant
field-transom-rake_deg = akterspeilets helling
field-transom-profile = profil på senterlinjen
field-transom-sections = vannrette snitt
field-transom-width_top_mm = akterspeilets bredde øverst
field-transom-width_waterline_mm = akterspeilets bredde i vannlinjen
field-transom-camber_mm = akterspeilets bue
field-transom-thickness_mm = skrogets tykkelse
field-transom-core_mm = kjernens tykkelse
field-transom-step_height_mm = trinnets høyde over vannet
field-transom-step_depth_mm = trinnets dybde
field-transom-step_width_mm = trinnets bredde
field-transom-lower_rake_deg = skrogets helling under trinnet
field-transom-post_width_mm = akterstevnens bredde
field-main_rudder-hung = hvordan hovedroret er montert
field-main_rudder-stock_aft_mm = rorstammens plass
field-main_rudder-leading_edge_aft_mm = hovedrorets forkant
field-main_rudder-trailing_edge_aft_mm = hovedrorets akterkant
field-main_rudder-top_height_mm = hovedrorbladets overkant over vannet
field-main_rudder-bottom_height_mm = hovedrorbladets underkant over vannet
field-main_rudder-max_deflection_deg = hovedrorets utslag til hver side
field-obstacles = det som står på hekken
field-waterline = vannlinje lastet
field-interactions = flere mål sammen

# --- det som kan stå på hekken ---

thing-ladder = badeleider
thing-platform = badeplattform
thing-davits = daviter
thing-outboard = påhengsmotor
thing-exhaust = eksosutløp
thing-rail = hekkpulpit
thing-stay = hekkstag
thing-boom = bom
thing-boomkin = utligger akter
thing-arch = targabøyle
thing-panels = solcellepaneler
thing-mast = mast
thing-staff = flaggstang
thing-passerelle = landgang
thing-locker = stuverom
thing-other = annet beslag
thing-at = { $side ->
    [port] { $thing } (om babord)
    [starboard] { $thing } (om styrbord)
    [centre] { $thing } (midtskips)
    [both] { $thing } (på begge sider)
   *[across] { $thing } (tvers over)
}

word-plumb = loddrett
word-raked = utoverhellende
word-reverse = negativ
word-scoop = med trinn
word-open = åpen
word-double_ended = spissgattet
word-inboard = under skroget
word-transom = utenpå akterspeilet
word-frp_solid = massiv glassfiber
word-frp_cored = glassfiber med kjerne
word-wood = tre
word-aluminium = aluminium
word-steel = stål

# --- det som kontrolleres ---

check-reach = rekkevidde, { $bracket }
check-pad = mellomleggets tykkelse, { $bracket }
check-seat = friskt skrog under flensen, { $bracket }
check-strut = stag, { $bracket }
check-gap = akterstevnens bredde, { $bracket }
check-stands = høyde over trinnet, { $bracket }
check-spacing = avstand mellom festene
check-overhang = akselens frie ende under nedre feste
check-head = akselens lengde over øvre feste
check-foot = akselens lengde ved nedre feste
check-immersion = bladets dybde i vannet
check-root_depth = dybde til bladets overkant
check-main_rudder = avstand mellom vindroret og hovedroret
check-hull = avstand mellom vindroret og skroget
check-displacement = deplasement for denne størrelsen
check-wake = fritt vann ved siden av hovedroret
check-obstacle = avstand til dette: { $thing }
check-load = styrke i aksel og fester
