# I nomi stanno da soli, dopo i due punti o tra parentesi: così nulla va concordato.

percent = { $number } %
or = { $first } o { $last }

# --- la lettera ---

reply-subject = Timone a vento per { $boat }
reply-subject-bare = La Sua richiesta di un timone a vento
reply-hello-name = Buongiorno { $name },
reply-hello = Buongiorno,
reply-thanks = { $whose ->
    [owner] grazie di averci scritto a proposito del Suo { $boat }.
   *[other] grazie di averci scritto a proposito di questa barca, { $boat }.
}
reply-thanks-bare = grazie di averci scritto.
reply-unsure = Non siamo ancora del tutto sicuri di quale modello si tratti.
reply-regards = Cordiali saluti,
reply-desk = L'ufficio vendite

heading-suggest = Che cosa proponiamo
heading-why = Perché
heading-sure = Quanto ne siamo sicuri
heading-buy = Che cosa procura Lei
heading-ask = Prima di spedire, ci dica per favore
heading-care = Da tenere presente
heading-nothing = Per ora non va bene nulla

reply-suggest = Proponiamo il timone a vento { $gear } sulla staffa inferiore { $lower } e sulla staffa superiore { $upper }, con l'asse { $shaft }.
reply-verdict = { $verdict ->
    [fits] Secondo le misure che abbiamo, ci sta.
    [tight] Secondo le misure che abbiamo, ci sta, ma di misura.
   *[undecided] Non si può ancora dire se ci sta: manca una misura da cui dipende, e nemmeno altre barche la danno.
}
reply-place = { $side ->
    [centre] Va montato in mezzeria
    [port] Va montato { $offset } a sinistra della mezzeria
   *[starboard] Va montato { $offset } a dritta della mezzeria
}, con l'asse { $aft } a poppavia del bordo superiore dello specchio e il centro dei due collari a { $lower } e { $upper } sopra l'acqua.
reply-trades = Ecco che cosa chiede alla barca:
trade-take-off = da smontare: { $thing }
trade-build-up = far rinforzare lo scafo dietro la { $bracket }

reply-sisters = { $count ->
    [0] Non abbiamo barche gemelle nei nostri archivi, perciò abbiamo guardato quelle più simili alla Sua.
    [one] Abbiamo una barca gemella nei nostri archivi.
   *[other] Abbiamo { $count } barche gemelle nei nostri archivi.
}
reply-same = { $same ->
    [0] Delle { $looked } barche guardate più da vicino, nessuna porta esattamente questo montaggio.
    [one] Delle { $looked } barche guardate più da vicino, una porta esattamente questo montaggio.
   *[other] Delle { $looked } barche guardate più da vicino, { $same } portano esattamente questo montaggio.
}
reply-tried = Lo abbiamo trovato provando i nostri pezzi uno a uno sulle Sue misure.
reply-likest = La barca più simile alla Sua è la numero { $record } dei nostri archivi. In che cosa differisce la Sua:
reply-alike = La barca più simile alla Sua è la numero { $record } dei nostri archivi; in tutto quello che sappiamo di entrambe sono uguali.
reply-differs = { $field }: là { $theirs }, sulla Sua { $ours }
reply-hers-only = { $field }: là { $theirs }
reply-ours-only = { $field }: sulla Sua { $ours }
contrast-fails = Con { $theirs } invece di { $ours } ({ $field }), questo montaggio non andrebbe bene.
contrast-moves = Con { $theirs } invece di { $ours } ({ $field }), l'asse si sposterebbe di { $aft } in senso longitudinale (+ verso poppa), il collare inferiore di { $lower } e quello superiore di { $upper } in altezza.

reply-chance = Stimiamo al { $chance } la probabilità che sulla Sua barca tutto passi libero.
reply-doubt = Il dubbio che resta dipende da:
reply-doubt-line = { $field }: { $share } del dubbio
reply-filled = { $source ->
    [sister_ships] Non indicato e preso da barche gemelle: { $fields }.
    [neighbours] Non indicato e preso da barche simili: { $fields }.
   *[prior] Non indicato e preso come di solito: { $fields }.
}

also = { $first }; { $last }
and-more = { $list } e altri { $count }
reply-nothing = Secondo le misure che abbiamo, nulla di ciò che produciamo va bene sulla barca così com'è. Il più vicino è il timone a vento { $gear } sulla staffa inferiore { $lower } e sulla staffa superiore { $upper }, con l'asse { $shaft }.
reply-miss = Che cosa lo impedisce: { $check }. Mancano { $amount }.
reply-cures = Abbiamo provato che cosa aiuterebbe:
reply-no-cure = Togliere una sola cosa o cambiare un solo pezzo non basta. Ci dica che cosa si può spostare e guarderemo di nuovo.
cure-without = senza questo: { $thing }
cure-shaft = l'asse { $code } al suo posto
cure-bracket = { $bracket }: { $code } al suo posto
reply-none = Quello che sappiamo della barca non basta ancora per proporre qualcosa.

# --- che cosa procura l'armatore ---

supply-bolts = { $bracket }: { $count } bulloni passanti { $size } × { $length } con rondelle e dadi
supply-bolts-open = { $bracket }: { $count } bulloni passanti { $size } con rondelle e dadi; la lunghezza, quando sarà misurato lo spessore dello scafo
supply-sealant = sigillante per i fori dei bulloni
supply-backing = contropiastre tagliate a disegno (inox 316, alluminio o compensato marino sigillato)
supply-core = resina epossidica per riempire l'anima attorno a ogni foro, oppure bussole distanziali
supply-insulate = rondelle e bussole isolanti tra l'inox e lo scafo
supply-tube = un tubo diritto del diametro dell'asse, per mettere tutto a piombo prima di forare

# --- avvertenze ---

caution-confirm = Questo è un consiglio calcolato da quanto ci è stato detto. Verifichi ogni misura sulla barca prima di ordinare metallo o di praticare un foro.
caution-holes = I fori nello scafo possono affondare una barca. Chieda al cantiere o a un perito se lì si può forare e come va rinforzato; le norme locali e la classe vengono prima.
caution-plumb = Prima di forare, metta l'asse a piombo nei due sensi con un tubo di prova: monti per prima la staffa inferiore.
caution-cored = Lo scafo è in sandwich: attorno a ogni foro l'anima va tolta e riempita, oppure serve una bussola, altrimenti si schiaccia e si inzuppa.
caution-metal = L'inox contro uno scafo di metallo corrode lo scafo: isoli ogni bullone, ogni flangia e ogni piastra.
caution-moves = A poppa c'è qualcosa che si muove e non sappiamo fin dove: lo provi per tutta la corsa con il tubo di prova al suo posto.
caution-low-hole = Il foro più basso sta a { $height } sopra l'acqua: prima di forare lì serve il benestare di un perito.
caution-weak-skin = Secondo i valori usuali lo scafo dietro una staffa è più debole di quanto chiedano i carichi: il cantiere o un perito deve dire come rinforzarlo prima di forare.
caution-shaking = A certe velocità i vortici possono far vibrare l'asse: lo osservi alla prima uscita e, se succede, faccia accorciare lo sbalzo.
caution-tight = È al limite: con le misure date passa, ma non con certezza. Misuri di nuovo ciò da cui dipende il dubbio.

# --- fin dove arriva l'esperienza ---

backing-nothing = Non è ancora registrato nessun montaggio: le proposte si basano solo su geometria e carichi, e non si sa che cosa sceglierebbero i montatori.
backing-no-like = Nessuna barca registrata somiglia abbastanza a questa: le probabilità dicono solo quante volte ogni montaggio è stato fatto su una barca qualsiasi.
backing-nearest = { $known ->
    [yes] Nessun { $model } è registrato
   *[no] Il modello non è noto, quindi nessuna barca gemella può dire la sua
}: che cosa monterebbero gli installatori è giudicato da altre barche, di cui la più vicina somiglia al { $like }.
backing-unlike = { $known ->
    [yes] Nessun { $model } è registrato
   *[no] Il modello non è noto, quindi nessuna barca gemella può dire la sua
}: che cosa monterebbero gli installatori è giudicato da altre barche, di cui la più vicina somiglia al { $like }, e anche quella è una barca piuttosto diversa.
backing-stern = { $count ->
    [0] Nessuna barca con questa poppa ({ $stern }) è registrata
    [one] Una sola barca con questa poppa ({ $stern }) è registrata
   *[other] Solo { $count } barche con questa poppa ({ $stern }) sono registrate
}: quello che portano le altre qui dice poco, le proposte si basano sulla geometria.
backing-tried = Nulla di ciò che portano barche simili va bene qui: la proposta è stata trovata provando il catalogo sulle misure.
stern-plumb = specchio verticale
stern-raked = specchio slanciato
stern-reverse = specchio rovescio
stern-scoop = poppa con gradino
stern-open = poppa aperta
stern-double_ended = poppa a punta

# --- domande ---

ask-hull = Quale barca è esattamente: { $names }? L'anno e la targhetta del cantiere lo direbbero.
ask-boat-model = Quale barca è: cantiere, modello e anno?
ask-transom-top_height_mm = A che altezza sopra l'acqua sta il bordo superiore dello specchio? In mezzeria, in calma piatta e con il carico da crociera: dall'acqua al punto più alto dello scafo che possa reggere una staffa, senza pulpito, capodibanda o mastra. Basta una precisione di { $exact }.
ask-transom-rake_deg = Di quanto lo specchio si scosta dalla verticale, e in che verso? Tenga una livella o un filo a piombo in mezzeria e ci dica se il bordo superiore sta più a poppa di quello inferiore (slanciato) o più a prua (rovescio). Basta una precisione di { $exact }.
ask-transom-bottom_height_mm = A che altezza sopra l'acqua finisce in basso lo specchio? In mezzeria; con il segno meno se finisce sott'acqua. Basta una precisione di { $exact }.
ask-transom-width_top_mm = Quanto è largo lo specchio in alto? Tutta la larghezza lungo il bordo superiore, con una precisione di { $exact }.
ask-transom-width_waterline_mm = Quanto è largo lo specchio al galleggiamento, o al bordo inferiore se questo sta più in alto? Tutta la larghezza, con una precisione di { $exact }.
ask-transom-thickness_mm = Quanto è spesso lo scafo dove passano i bulloni? Misurato a una presa a mare o a un foro: tutto, anima compresa, con una precisione di { $exact }.
ask-transom-camber_mm = Quanto è bombato lo specchio? Appoggi una riga diritta in orizzontale al bordo superiore, in modo che tocchi nel mezzo, e ci dia la metà della somma delle luci alle due estremità, con una precisione di { $exact }.
ask-transom-step_height_mm = A che altezza sopra l'acqua sta il piano del gradino? In calma piatta, con il carico da crociera, con una precisione di { $exact }.
ask-transom-step_depth_mm = Quanto è profondo il gradino? Per il lungo, dal piede dell'alzata al bordo di poppa, con una precisione di { $exact }.
ask-transom-step_width_mm = Quanto è largo il gradino, di traverso, dove è piano? Con una precisione di { $exact }.
ask-transom-post_width_mm = Quanto è largo il dritto di poppa dove lo stringerebbero le staffe? Con il calibro, alle due altezze, con una precisione di { $exact }.
ask-main_rudder-hung = Com'è montato il timone principale: sotto lo scafo, oppure fuori, sullo specchio o sul dritto di poppa?
ask-main_rudder-trailing_edge_aft_mm = Fin dove arriva verso poppa il timone principale? Appenda un filo a piombo al bordo superiore dello specchio e misuri per il lungo fino allo spigolo più a poppa del timone; con il segno meno se sta a proravia del filo. Basta una precisione di { $exact }.
ask-main_rudder-stock_aft_mm = Dove sta l'asta del timone? Per il lungo, da un filo a piombo appeso al bordo superiore dello specchio; con il segno meno verso prua. Basta una precisione di { $exact }.
ask-boat-displacement_kg = Quanto pesa la barca, con il carico da crociera? Basta una precisione di { $exact }; ci dica se la cifra è a vuoto o a pieno carico.
ask-boat-stern = Che forma ha la poppa dove andrebbe la staffa inferiore: verticale, slanciata, rovescia, con gradino stampato, aperta o a punta? Una foto di fianco lo dice meglio di tutto.
ask-obstacle = Dove sta esattamente questo: { $thing }? Da dove a dove a poppavia del bordo superiore dello specchio, a che distanza dalla mezzeria, a che altezza sopra l'acqua? Basta una precisione di { $exact }.
ask-obstacles = Che cosa c'è sulla poppa: scaletta, piattaforma, gruette, fuoribordo, scarico, pulpito, stralli, boma, un arco? Ci dica di ogni cosa a che distanza dalla mezzeria comincia e finisce, fin dove arriva a poppavia e a che altezza sopra l'acqua (basta una precisione di { $exact }), se si ripiega o gira, e se si può togliere. Una foto da poppa aiuta.
ask-doubt-contradictory = { $field }: Lei indica { $values }. Quale misura è giusta?
ask-doubt-sign_unknown = { $field }: Lei scrive «{ $text }». In che verso: a poppavia o a proravia, sopra o sotto l'acqua?
ask-doubt-unit_unknown = { $field }: Lei scrive «{ $text }». In quale unità?
ask-doubt-other_datum = { $field }: Lei ha misurato da un riferimento diverso dal nostro («{ $text }»). A che altezza sta sopra l'acqua, in calma piatta e con il carico da crociera?
ask-doubt-ambiguous = { $field }: «{ $text }» si può leggere in più modi. Quale misura intende?

bracket-lower = staffa inferiore
bracket-upper = staffa superiore

# --- nomi dei dati ---

field-other = uno dei Suoi dati
field-boat-builder = cantiere
field-boat-model = modello
field-boat-year = anno di costruzione
field-boat-loa_mm = lunghezza fuori tutto
field-boat-lwl_mm = lunghezza al galleggiamento
field-boat-beam_mm = larghezza
field-boat-draft_mm = pescaggio
field-boat-displacement_kg = dislocamento
field-boat-hull_material = materiale dello scafo
field-boat-stern = forma della poppa
field-transom-top_height_mm = altezza del bordo superiore dello specchio sopra l'acqua
field-transom-bottom_height_mm = altezza del bordo inferiore dello specchio sopra l'acqua
field-transom-rake_deg = inclinazione dello specchio
field-transom-profile = profilo in mezzeria
field-transom-sections = sezioni orizzontali
field-transom-width_top_mm = larghezza dello specchio in alto
field-transom-width_waterline_mm = larghezza dello specchio al galleggiamento
field-transom-camber_mm = bombatura dello specchio
field-transom-thickness_mm = spessore dello scafo
field-transom-core_mm = spessore dell'anima
field-transom-step_height_mm = altezza del gradino sopra l'acqua
field-transom-step_depth_mm = profondità del gradino
field-transom-step_width_mm = larghezza del gradino
field-transom-lower_rake_deg = inclinazione dello scafo sotto il gradino
field-transom-post_width_mm = larghezza del dritto di poppa
field-main_rudder-hung = montaggio del timone principale
field-main_rudder-stock_aft_mm = posizione dell'asta del timone
field-main_rudder-leading_edge_aft_mm = bordo d'entrata del timone principale
field-main_rudder-trailing_edge_aft_mm = bordo d'uscita del timone principale
field-main_rudder-top_height_mm = parte alta della pala del timone principale sopra l'acqua
field-main_rudder-bottom_height_mm = parte bassa della pala del timone principale sopra l'acqua
field-main_rudder-max_deflection_deg = quanto gira il timone principale per lato
field-obstacles = che cosa c'è a poppa
field-waterline = galleggiamento a pieno carico
field-interactions = più misure combinate

# --- che cosa può esserci a poppa ---

thing-ladder = scaletta
thing-platform = plancetta
thing-davits = gruette
thing-outboard = fuoribordo
thing-exhaust = scarico
thing-rail = pulpito di poppa
thing-stay = paterazzo
thing-boom = boma
thing-boomkin = buttafuori di poppa
thing-arch = arco di poppa
thing-panels = pannelli solari
thing-mast = albero
thing-staff = asta della bandiera
thing-passerelle = passerella
thing-locker = gavone
thing-other = altro accessorio
thing-at = { $side ->
    [port] { $thing } (a sinistra)
    [starboard] { $thing } (a dritta)
    [centre] { $thing } (in mezzeria)
    [both] { $thing } (ai due lati)
   *[across] { $thing } (da lato a lato)
}

word-plumb = verticale
word-raked = slanciato
word-reverse = rovescio
word-scoop = con gradino
word-open = aperto
word-double_ended = a punta
word-inboard = sotto lo scafo
word-transom = fuori, sullo specchio
word-frp_solid = vetroresina piena
word-frp_cored = vetroresina con anima
word-wood = legno
word-aluminium = alluminio
word-steel = acciaio

# --- che cosa si controlla ---

check-reach = portata della { $bracket }
check-pad = spessore della basetta sotto la { $bracket }
check-seat = scafo sano sotto la { $bracket }
check-strut = puntoni della { $bracket }
check-gap = larghezza del dritto di poppa nella { $bracket }
check-stands = altezza sopra il gradino della { $bracket }
check-spacing = distanza tra le staffe
check-overhang = sbalzo dell'asse sotto la staffa inferiore
check-head = lunghezza d'asse sopra la staffa superiore
check-foot = lunghezza d'asse alla staffa inferiore
check-immersion = immersione della pala
check-root_depth = profondità della parte alta della pala
check-main_rudder = spazio tra il timone a vento e il timone principale
check-hull = spazio tra il timone a vento e lo scafo
check-displacement = dislocamento per questa misura di timone a vento
check-wake = acqua libera accanto al timone principale
check-obstacle = spazio tra il timone a vento e questo: { $thing }
check-load = resistenza dell'asse e delle staffe
