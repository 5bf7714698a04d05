# Navne står for sig selv, efter kolon eller i parentes: så skal intet bøjes.

percent = { $number } %
or = { $first } eller { $last }

# --- brevet ---

reply-subject = Vindror til { $boat }
reply-subject-bare = Dit spørgsmål om vindror
reply-hello-name = Hej { $name },
reply-hello = Hej,
reply-thanks = { $whose ->
    [owner] Tak, fordi du skrev til os om din { $boat }.
   *[other] Tak, fordi du skrev til os om båden, { $boat }.
}
reply-thanks-bare = Tak, fordi du skrev til os.
reply-unsure = Vi er endnu ikke helt sikre på, hvilken bådtype det er.
reply-regards = Med venlig hilsen
reply-desk = Salgsafdelingen

heading-suggest = Vores forslag
heading-why = Hvorfor
heading-sure = Hvor sikre vi er
heading-buy = Det sørger du selv for
heading-ask = Før vi sender, vil vi gerne vide
heading-care = Husk
heading-nothing = Intet passer endnu

reply-suggest = Vi foreslår vindroret { $gear } på nederste beslag { $lower } og øverste beslag { $upper }, med aksel { $shaft }.
reply-verdict = { $verdict ->
    [fits] Efter de mål, vi har, passer det.
    [tight] Efter de mål, vi har, passer det, men kun lige.
   *[undecided] Om det passer, kan endnu ikke siges: et mål, som det afhænger af, mangler, og andre både giver det heller ikke.
}
reply-place = { $side ->
    [centre] Det sidder midtskibs
    [port] Det sidder { $offset } om bagbord fra midterlinjen
   *[starboard] Det sidder { $offset } om styrbord fra midterlinjen
}, akslen { $aft } agten for agterspejlets overkant, midten af de to bøsninger { $lower } og { $upper } over vandet.
reply-trades = Det kræver det af båden:
trade-take-off = tages af: { $thing }
trade-build-up = få skroget forstærket bag { $bracket }

reply-sisters = { $count ->
    [0] Vi har intet søsterskib i vores arkiv, så vi har set på de både, der ligner din mest.
    [one] Vi har ét søsterskib i vores arkiv.
   *[other] Vi har { $count } søsterskibe i vores arkiv.
}
reply-same = { $same ->
    [0] Af de { $looked } både, vi har set nærmere på, har ingen netop denne opstilling.
    [one] Af de { $looked } både, vi har set nærmere på, har én netop denne opstilling.
   *[other] Af de { $looked } både, vi har set nærmere på, har { $same } netop denne opstilling.
}
reply-tried = Vi fandt den ved at prøve vores dele én efter én på dine mål.
reply-likest = Den båd, der ligner din mest, er nummer { $record } i vores arkiv. Sådan skiller din sig ud:
reply-alike = Den båd, der ligner din mest, er nummer { $record } i vores arkiv; i alt, hvad vi ved om begge, er de ens.
reply-differs = { $field }: dér { $theirs }, hos dig { $ours }
reply-hers-only = { $field }: dér { $theirs }
reply-ours-only = { $field }: hos dig { $ours }
contrast-fails = Med { $theirs } i stedet for { $ours } ({ $field }) ville denne opstilling ikke gå.
contrast-moves = Med { $theirs } i stedet for { $ours } ({ $field }) ville akslen flytte sig { $aft } langskibs (+ er agterud), den nederste bøsning { $lower } og den øverste { $upper } i højden.

reply-chance = Chancen for, at alt går fri på din båd, anslår vi til { $chance }.
reply-doubt = Den tvivl, der er tilbage, afhænger af:
reply-doubt-line = { $field }: { $share } af tvivlen
reply-filled = { $source ->
    [sister_ships] Ikke oplyst og derfor taget fra søsterskibe: { $fields }.
    [neighbours] Ikke oplyst og derfor taget fra lignende både: { $fields }.
   *[prior] Ikke oplyst og derfor taget, som det plejer at være: { $fields }.
}

also = { $first }; { $last }
and-more = { $list } og { $count } mere
reply-nothing = Efter de mål, vi har, passer intet af det, vi laver, på båden, som den er. Nærmest kommer vindroret { $gear } på nederste beslag { $lower } og øverste beslag { $upper }, med aksel { $shaft }.
reply-miss = Det, der er i vejen: { $check }. Der mangler { $amount }.
reply-cures = Vi har prøvet, hvad der ville hjælpe:
reply-no-cure = Det hjælper ikke at tage en enkelt ting af eller skifte en enkelt del. Fortæl os, hvad der kan flyttes, så ser vi på det igen.
cure-without = uden dette: { $thing }
cure-shaft = aksel { $code } i stedet
cure-bracket = { $bracket }: { $code } i stedet
reply-none = Det, vi ved om båden, er endnu ikke nok til et forslag.

# --- det ejeren sørger for ---

supply-bolts = { $bracket }: { $count } gennemgående bolte { $size } × { $length } med skiver og møtrikker
supply-bolts-open = { $bracket }: { $count } gennemgående bolte { $size } med skiver og møtrikker; længden, når skrogets tykkelse er målt
supply-sealant = tætningsmasse til bolthullerne
supply-backing = modplader efter tegning (syrefast 316, aluminium eller forseglet marinekrydsfiner)
supply-core = epoxy til at fylde kernen omkring hvert hul, eller afstandsbøsninger
supply-insulate = isolerende skiver og bøsninger mellem rustfrit og skrog
supply-tube = et lige rør med akslens diameter til at sætte alt i lod, før du borer

# --- at huske på ---

caution-confirm = Dette er råd, regnet ud fra det, vi har fået at vide. Kontrollér hvert mål på båden, før metal bestilles, eller et hul bores.
caution-holes = Huller i skroget kan sænke en båd. Spørg værftet eller en skibsinspektør, om skroget må bores der, og hvordan det skal forstærkes på indersiden; lokale regler og klasse går forud.
caution-plumb = Sæt akslen i lod begge veje med et prøverør, før du borer: monter det nederste beslag først.
caution-cored = Skroget er sandwich: omkring hvert hul skal kernen fjernes og fyldes ud, eller have en bøsning, ellers klemmes den sammen og suger vand.
caution-metal = Rustfrit mod et metalskrog tærer skroget: isolér hver bolt, flange og plade.
caution-moves = Noget på hækken bevæger sig, og vi ved ikke hvor langt: før det gennem hele bevægelsen med prøverøret på plads.
caution-low-hole = Det laveste bolthul sidder { $height } over vandet: få en skibsinspektør til at godkende det, før du borer der.
caution-weak-skin = Efter sædvanlige værdier er skroget bag et beslag svagere, end lasterne kræver: værftet eller en skibsinspektør bør sige, hvordan det skal forstærkes, før noget bores.
caution-shaking = Ved nogle farter kan hvirvler få akslen til at dirre: hold øje med det på første tur, og få i så fald den frie ende kortet af.
caution-tight = Det er knebent: med de opgivne mål går det, men ikke sikkert. Mål det om, som tvivlen afhænger af.

# --- hvor langt erfaringen rækker ---

backing-nothing = Endnu står ingen montering i arkivet: forslagene hviler kun på geometri og laster, og hvad montører ville vælge, ved ingen.
backing-no-like = Ingen båd i arkivet ligner denne nok til at blive sammenlignet: chancerne siger kun, hvor tit noget i det hele taget er monteret.
backing-nearest = { $known ->
    [yes] Ingen { $model } står i arkivet
   *[no] Bådtypen er ikke kendt, så intet søsterskib kan vidne
}: hvad montører ville vælge, er bedømt efter andre både; den nærmeste er { $like } ens.
backing-unlike = { $known ->
    [yes] Ingen { $model } står i arkivet
   *[no] Bådtypen er ikke kendt, så intet søsterskib kan vidne
}: hvad montører ville vælge, er bedømt efter andre både; den nærmeste er { $like } ens, og selv den er en ret anderledes båd.
backing-stern = { $count ->
    [0] Ingen båd med denne hæk ({ $stern }) står i arkivet
    [one] Kun én båd med denne hæk ({ $stern }) står i arkivet
   *[other] Kun { $count } både med denne hæk ({ $stern }) står i arkivet
}: hvad andre har, siger kun lidt her, forslagene hviler på geometri.
backing-tried = Intet af det, lignende både har, går her: forslaget blev fundet ved at prøve kataloget på målene.
stern-plumb = lodret agterspejl
stern-raked = udfaldende agterspejl
stern-reverse = negativt agterspejl
stern-scoop = hæk med trin
stern-open = åben hæk
stern-double_ended = spidsgattet

# --- spørgsmål ---

ask-hull = Hvilken båd er det helt præcist: { $names }? Årgang og byggeskilt ville vise det.
ask-boat-model = Hvilken båd er det: værft, model og år?
ask-transom-top_height_mm = Hvor højt over vandet ligger agterspejlets overkant? På midterlinjen, i blikstille og lastet, som I sejler: fra vandet til det højeste stykke skrog, der kan bære et beslag, uden pulpit, liste eller karm. På { $exact } nær er nok.
ask-transom-rake_deg = Hvor meget hælder agterspejlet fra lodret, og hvilken vej? Hold et vaterpas eller et lod på midterlinjen, og fortæl os, om overkanten ligger længere agter end underkanten (udfaldende) eller længere forude (negativt). På { $exact } nær er nok.
ask-transom-bottom_height_mm = Hvor højt over vandet slutter agterspejlet forneden? På midterlinjen; med minustegn, hvis det slutter under vandet. På { $exact } nær er nok.
ask-transom-width_top_mm = Hvor bredt er agterspejlet foroven? Hele bredden langs overkanten, på { $exact } nær.
ask-transom-width_waterline_mm = Hvor bredt er agterspejlet i vandlinjen, eller ved underkanten, hvis den ligger højere? Hele bredden, på { $exact } nær.
ask-transom-thickness_mm = Hvor tykt er skroget, hvor boltene går igennem? Mål ved en skroggennemføring eller et boret hul: det hele, med kerne, på { $exact } nær.
ask-transom-camber_mm = Hvor buet er agterspejlet? Hold en lige liste vandret mod overkanten, så den rører på midten, og giv os det halve af summen af mellemrummene i begge ender, på { $exact } nær.
ask-transom-step_height_mm = Hvor højt over vandet ligger trinnets overside? I blikstille, lastet, som I sejler, på { $exact } nær.
ask-transom-step_depth_mm = Hvor dybt er trinnet? Langskibs, fra foden af den stående væg til agterkanten, på { $exact } nær.
ask-transom-step_width_mm = Hvor bredt er trinnet, tværskibs, hvor det er plant? På { $exact } nær.
ask-transom-post_width_mm = Hvor bred er agterstævnen, hvor beslagene ville gribe om den? Med skydelære, i begge højder, på { $exact } nær.
ask-main_rudder-hung = Hvordan er hovedroret monteret: under skroget, eller udvendigt på agterspejlet eller agterstævnen?
ask-main_rudder-trailing_edge_aft_mm = Hvor langt agterud når hovedroret? Hæng et lod fra agterspejlets overkant, og mål langskibs til rorets agterste kant; med minustegn, hvis den ligger foran loddet. På { $exact } nær er nok.
ask-main_rudder-stock_aft_mm = Hvor sidder rorstammen? Langskibs fra et lod ved agterspejlets overkant; med minustegn fremefter. På { $exact } nær er nok.
ask-boat-displacement_kg = Hvad vejer båden, lastet, som I sejler? På { $exact } nær er nok; skriv, om tallet gælder tom eller lastet båd.
ask-boat-stern = Hvilken form har hækken, hvor det nederste beslag ville sidde: lodret, udfaldende, negativ, med støbt trin, åben eller spidsgattet? Et foto fra siden siger mest.
ask-obstacle = Hvor sidder dette helt præcist: { $thing }? Fra hvor til hvor agten for agterspejlets overkant, hvor langt fra midterlinjen, hvor højt over vandet? På { $exact } nær er nok.
ask-obstacles = Hvad sidder på hækken: stige, platform, davider, påhængsmotor, udstødning, hækstol, stag, bomme, en bøjle? Fortæl for hver ting, hvor langt fra midterlinjen den begynder og slutter, hvor langt agterud og hvor højt over vandet den når (på { $exact } nær er nok), om den klappes eller svinger, og om den må fjernes. Et foto agterfra hjælper.
ask-doubt-contradictory = { $field }: du opgiver { $values }. Hvilket mål er rigtigt?
ask-doubt-sign_unknown = { $field }: du skriver »{ $text }«. Hvilken vej: agterud eller fremefter, over eller under vandet?
ask-doubt-unit_unknown = { $field }: du skriver »{ $text }«. I hvilken enhed?
ask-doubt-other_datum = { $field }: du har målt fra et andet sted end vi (»{ $text }«). Hvor højt over vandet er det, i blikstille og lastet, som I sejler?
ask-doubt-ambiguous = { $field }: »{ $text }« kan læses på mere end én måde. Hvilket mål mener du?

bracket-lower = nederste beslag
bracket-upper = øverste beslag

# --- navne på oplysninger ---

field-other = en af dine oplysninger
field-boat-builder = værft
field-boat-model = model
field-boat-year = byggeår
field-boat-loa_mm = længde over alt
field-boat-lwl_mm = længde i vandlinjen
field-boat-beam_mm = bredde
field-boat-draft_mm = dybgang
field-boat-displacement_kg = deplacement
field-boat-hull_material = skrogmateriale
field-boat-stern = hækkens form
field-transom-top_height_mm = højde over vandet til agterspejlets overkant
field-transom-bottom_height_mm = højde over vandet til agterspejlets underkant
field-transom-rake_deg = agterspejlets hældning
field-transom-profile = profil på midterlinjen
field-transom-sections = vandrette snit
field-transom-width_top_mm = agterspejlets bredde foroven
field-transom-width_waterline_mm = agterspejlets bredde i vandlinjen
field-transom-camber_mm = agterspejlets bue
field-transom-thickness_mm = skrogets tykkelse
field-transom-core_mm = kernens tykkelse
field-transom-step_height_mm = trinnets højde over vandet
field-transom-step_depth_mm = trinnets dybde
field-transom-step_width_mm = trinnets bredde
field-transom-lower_rake_deg = skrogets hældning under trinnet
field-transom-post_width_mm = agterstævnens bredde
field-main_rudder-hung = hvordan hovedroret er monteret
field-main_rudder-stock_aft_mm = rorstammens plads
field-main_rudder-leading_edge_aft_mm = hovedrorets forkant
field-main_rudder-trailing_edge_aft_mm = hovedrorets agterkant
field-main_rudder-top_height_mm = hovedrorbladets overkant over vandet
field-main_rudder-bottom_height_mm = hovedrorbladets underkant over vandet
field-main_rudder-max_deflection_deg = hovedrorets udslag til hver side
field-obstacles = det, der står på hækken
field-waterline = vandlinje lastet
field-interactions = flere mål tilsammen

# --- det, der kan stå på hækken ---

thing-ladder = badestige
thing-platform = badeplatform
thing-davits = davider
thing-outboard = påhængsmotor
thing-exhaust = udstødning
thing-rail = hækpulpit
thing-stay = hækstag
thing-boom = bom
thing-boomkin = udligger agter
thing-arch = targabøjle
thing-panels = solpaneler
thing-mast = mast
thing-staff = flagspil
thing-passerelle = landgang
thing-locker = stuverum
thing-other = andet beslag
thing-at = { $side ->
    [port] { $thing } (om bagbord)
    [starboard] { $thing } (om styrbord)
    [centre] { $thing } (midtskibs)
    [both] { $thing } (på begge sider)
   *[across] { $thing } (tværs over)
}

word-plumb = lodret
word-raked = udfaldende
word-reverse = negativ
word-scoop = med trin
word-open = åben
word-double_ended = spidsgattet
word-inboard = under skroget
word-transom = udvendigt på agterspejlet
word-frp_solid = massiv glasfiber
word-frp_cored = glasfiber med kerne
word-wood = træ
word-aluminium = aluminium
word-steel = stål

# --- det, der kontrolleres ---

check-reach = rækkevidde, { $bracket }
check-pad = mellemlæggets tykkelse, { $bracket }
check-seat = sundt skrog under flangen, { $bracket }
check-strut = stræbere, { $bracket }
check-gap = agterstævnens bredde, { $bracket }
check-stands = højde over trinnet, { $bracket }
check-spacing = afstand mellem beslagene
check-overhang = akslens frie ende under det nederste beslag
check-head = akslens længde over det øverste beslag
check-foot = akslens længde ved det nederste beslag
check-immersion = bladets dybde i vandet
check-root_depth = dybde til bladets overkant
check-main_rudder = afstand mellem vindroret og hovedroret
check-hull = afstand mellem vindroret og skroget
check-displacement = deplacement for denne størrelse
check-wake = frit vand ved siden af hovedroret
check-obstacle = afstand til dette: { $thing }
check-load = styrke i aksel og beslag
