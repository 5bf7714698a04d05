# Les désignations restent seules, après deux-points ou entre parenthèses : rien à accorder.

percent = { $number } %
or = { $first } ou { $last }

# --- la lettre ---

reply-subject = Régulateur d'allure pour { $boat }
reply-subject-bare = Votre demande de régulateur d'allure
reply-hello-name = Bonjour { $name },
reply-hello = Bonjour,
reply-thanks = { $whose ->
    [owner] Merci de nous avoir écrit au sujet de votre { $boat }.
   *[other] Merci de nous avoir écrit au sujet de ce bateau, { $boat }.
}
reply-thanks-bare = Merci de nous avoir écrit.
reply-unsure = Nous ne sommes pas encore tout à fait sûrs du modèle exact.
reply-regards = Bien cordialement,
reply-desk = Le service commercial

heading-suggest = Ce que nous proposons
heading-why = Pourquoi
heading-sure = Notre degré de certitude
heading-buy = Ce que vous fournissez
heading-ask = Avant l'expédition, dites-nous encore
heading-care = À ne pas oublier
heading-nothing = Rien ne convient pour l'instant

reply-suggest = Nous proposons le régulateur { $gear } sur la ferrure inférieure { $lower } et la ferrure supérieure { $upper }, avec l'arbre { $shaft }.
reply-verdict = { $verdict ->
    [fits] D'après les cotes que nous avons, il convient.
    [tight] D'après les cotes que nous avons, il convient, mais de justesse.
   *[undecided] On ne peut pas encore dire s'il convient : il manque une cote dont cela dépend, et d'autres bateaux ne la donnent pas non plus.
}
reply-place = { $side ->
    [centre] Il se monte dans l'axe
    [port] Il se monte à { $offset } à bâbord de l'axe
   *[starboard] Il se monte à { $offset } à tribord de l'axe
}, l'arbre à { $aft } en arrière de l'arête supérieure du tableau, le milieu des deux colliers à { $lower } et { $upper } au-dessus de l'eau.
reply-trades = Ce que cela demande sur le bateau :
trade-take-off = à déposer : { $thing }
trade-build-up = faire renforcer la coque derrière la { $bracket }

reply-sisters = { $count ->
    [0] Nous n'avons aucun sister-ship dans nos dossiers ; nous avons donc regardé les bateaux les plus proches du vôtre.
    [one] Nous avons un sister-ship dans nos dossiers.
   *[other] Nous avons { $count } sister-ships dans nos dossiers.
}
reply-same = { $same ->
    [0] Sur les { $looked } bateaux regardés de plus près, aucun ne porte exactement ce montage.
    [one] Sur les { $looked } bateaux regardés de plus près, un porte exactement ce montage.
   *[other] Sur les { $looked } bateaux regardés de plus près, { $same } portent exactement ce montage.
}
reply-tried = Nous l'avons trouvé en essayant nos pièces une à une sur vos cotes.
reply-likest = Le bateau le plus proche du vôtre porte le numéro { $record } dans nos dossiers. Ce qui change chez vous :
reply-alike = Le bateau le plus proche du vôtre porte le numéro { $record } dans nos dossiers ; pour tout ce que nous savons des deux, ils sont identiques.
reply-differs = { $field } : { $theirs } chez lui, { $ours } chez vous
reply-hers-only = { $field } : { $theirs } chez lui
reply-ours-only = { $field } : { $ours } chez vous
contrast-fails = Avec { $theirs } au lieu de { $ours } ({ $field }), ce montage ne conviendrait pas.
contrast-moves = Avec { $theirs } au lieu de { $ours } ({ $field }), l'arbre serait décalé de { $aft } dans la longueur (+ vers l'arrière), le collier inférieur de { $lower } et le supérieur de { $upper } en hauteur.

reply-chance = Nous estimons à { $chance } la chance que tout passe sur votre bateau.
reply-doubt = Ce qui reste de doute tient à :
reply-doubt-line = { $field } : { $share } du doute
reply-filled = { $source ->
    [sister_ships] Non indiqué, donc repris de sister-ships : { $fields }.
    [neighbours] Non indiqué, donc repris de bateaux semblables : { $fields }.
   *[prior] Non indiqué, donc pris comme d'habitude : { $fields }.
}

also = { $first } ; { $last }
and-more = { $list } et { $count } autres
reply-nothing = D'après les cotes que nous avons, rien de ce que nous fabriquons ne convient au bateau tel qu'il est. Le plus proche serait le régulateur { $gear } sur la ferrure inférieure { $lower } et la ferrure supérieure { $upper }, avec l'arbre { $shaft }.
reply-miss = Ce qui s'y oppose : { $check }. Il manque { $amount }.
reply-cures = Nous avons essayé ce qui aiderait :
reply-no-cure = Déposer une seule chose ou changer une seule pièce ne suffit pas. Dites-nous ce qui peut être déplacé et nous regarderons de nouveau.
cure-without = sans ceci : { $thing }
cure-shaft = l'arbre { $code } à la place
cure-bracket = { $bracket } : { $code } à la place
reply-none = Ce que nous savons du bateau ne suffit pas encore pour proposer quelque chose.

# --- ce que fournit le propriétaire ---

supply-bolts = { $bracket } : { $count } boulons traversants { $size } × { $length } avec rondelles et écrous
supply-bolts-open = { $bracket } : { $count } boulons traversants { $size } avec rondelles et écrous ; leur longueur dès que l'épaisseur de la coque sera mesurée
supply-sealant = mastic d'étanchéité pour les trous de boulons
supply-backing = contre-plaques découpées selon le plan (inox 316L, aluminium ou contreplaqué marine imprégné)
supply-core = époxy pour remplir l'âme autour de chaque trou, ou entretoises tubulaires
supply-insulate = rondelles et canons isolants entre l'inox et la coque
supply-tube = un tube droit du diamètre de l'arbre, pour tout mettre d'aplomb avant de percer

# --- précautions ---

caution-confirm = Ceci est un conseil calculé d'après ce qu'on nous a dit. Vérifiez chaque cote sur le bateau avant de commander du métal ou de percer un trou.
caution-holes = Des trous dans une coque peuvent couler un bateau. Demandez au chantier ou à un expert si la coque peut être percée à cet endroit et comment la renforcer ; les règles locales et la classe passent avant.
caution-plumb = Avant de percer, mettez l'arbre d'aplomb dans les deux sens avec un tube d'essai : posez d'abord la ferrure inférieure.
caution-cored = La coque est en sandwich : autour de chaque trou, l'âme doit être retirée et remplie, ou tenue par une entretoise, sans quoi elle s'écrase et prend l'eau.
caution-metal = L'inox contre une coque en métal corrode la coque : isolez chaque boulon, chaque platine et chaque plaque.
caution-moves = Quelque chose bouge à l'arrière et nous ne savons pas jusqu'où : faites-lui faire toute sa course avec le tube d'essai en place.
caution-low-hole = Le trou de boulon le plus bas est à { $height } au-dessus de l'eau : obtenez l'accord d'un expert avant de percer là.
caution-weak-skin = D'après les valeurs courantes, la coque derrière une ferrure est plus faible que les efforts ne le demandent : le chantier ou un expert doit dire comment la renforcer avant tout perçage.
caution-shaking = À certaines vitesses, les remous peuvent faire vibrer l'arbre : surveillez-le à la première sortie et, si c'est le cas, faites raccourcir le porte-à-faux.
caution-tight = C'est juste : cela passe avec les cotes données, mais sans certitude. Mesurez de nouveau ce dont dépend le doute.

# --- ce que vaut l'expérience ---

backing-nothing = Aucun montage n'est encore enregistré : les propositions ne reposent que sur la géométrie et les efforts, et nul ne sait ce que choisiraient les monteurs.
backing-no-like = Aucun bateau enregistré n'est assez proche de celui-ci pour être comparé : les chances disent seulement combien de fois chaque montage a été posé.
backing-nearest = { $known ->
    [yes] Aucun { $model } n'est enregistré
   *[no] Le modèle n'est pas connu, aucun sister-ship ne peut donc témoigner
} : ce que poseraient les monteurs est jugé d'après d'autres bateaux, dont le plus proche ressemble à { $like }.
backing-unlike = { $known ->
    [yes] Aucun { $model } n'est enregistré
   *[no] Le modèle n'est pas connu, aucun sister-ship ne peut donc témoigner
} : ce que poseraient les monteurs est jugé d'après d'autres bateaux, dont le plus proche ressemble à { $like }, et c'est déjà un bateau assez différent.
backing-stern = { $count ->
    [0] Aucun bateau avec cet arrière ({ $stern }) n'est enregistré
    [one] Un seul bateau avec cet arrière ({ $stern }) est enregistré
   *[other] Seulement { $count } bateaux avec cet arrière ({ $stern }) sont enregistrés
} : ce que portent les autres dit peu de chose ici, les propositions reposent sur la géométrie.
backing-tried = Rien de ce que portent des bateaux semblables ne convient ici : la proposition a été trouvée en essayant le catalogue sur les cotes.
stern-plumb = tableau droit
stern-raked = tableau en voûte
stern-reverse = tableau inversé
stern-scoop = jupe arrière
stern-open = arrière ouvert
stern-double_ended = arrière pointu

# --- questions ---

ask-hull = De quel bateau s'agit-il exactement : { $names } ? L'année et la plaque du constructeur le diraient.
ask-boat-model = De quel bateau s'agit-il : chantier, modèle et année ?
ask-transom-top_height_mm = À quelle hauteur au-dessus de l'eau se trouve l'arête supérieure du tableau ? Dans l'axe, par calme plat et chargé comme en croisière : de l'eau au point le plus haut de la coque qui pourrait porter une ferrure, sans balcon, liston ni hiloire. À { $exact } près, c'est suffisant.
ask-transom-rake_deg = De combien le tableau s'écarte-t-il de la verticale, et dans quel sens ? Tenez un niveau ou un fil à plomb dans l'axe et dites-nous si l'arête supérieure est plus en arrière que le bas (voûte) ou plus en avant (inversé). À { $exact } près, c'est suffisant.
ask-transom-bottom_height_mm = À quelle hauteur au-dessus de l'eau le tableau finit-il en bas ? Dans l'axe ; avec un signe moins s'il finit sous l'eau. À { $exact } près, c'est suffisant.
ask-transom-width_top_mm = Quelle est la largeur du tableau en haut ? Toute la largeur le long de l'arête supérieure, à { $exact } près.
ask-transom-width_waterline_mm = Quelle est la largeur du tableau à la flottaison, ou à son arête inférieure si elle est plus haute ? Toute la largeur, à { $exact } près.
ask-transom-thickness_mm = Quelle est l'épaisseur de la coque là où passent les boulons ? Mesurée à un passe-coque ou à un trou percé : le tout, âme comprise, à { $exact } près.
ask-transom-camber_mm = De combien le tableau est-il bombé ? Tenez une règle droite à l'horizontale contre l'arête supérieure, en contact au milieu, et donnez-nous la moitié de la somme des jours aux deux bouts, à { $exact } près.
ask-transom-step_height_mm = À quelle hauteur au-dessus de l'eau est le dessus de la marche ? Par calme plat, chargé comme en croisière, à { $exact } près.
ask-transom-step_depth_mm = Quelle est la profondeur de la marche ? Dans la longueur, du pied de la contremarche au bord arrière, à { $exact } près.
ask-transom-step_width_mm = Quelle est la largeur de la marche, en travers, là où elle est plane ? À { $exact } près.
ask-transom-post_width_mm = Quelle est la largeur de l'étambot là où les ferrures le prendraient ? Au pied à coulisse, aux deux hauteurs, à { $exact } près.
ask-main_rudder-hung = Comment est monté le safran principal : sous la coque, ou dehors sur le tableau ou l'étambot ?
ask-main_rudder-trailing_edge_aft_mm = Jusqu'où le safran principal va-t-il vers l'arrière ? Laissez pendre un fil à plomb de l'arête supérieure du tableau et mesurez dans la longueur jusqu'au bord le plus en arrière du safran ; avec un signe moins s'il est en avant du fil. À { $exact } près, c'est suffisant.
ask-main_rudder-stock_aft_mm = Où est la mèche du safran ? Dans la longueur, à partir d'un fil à plomb pendu à l'arête supérieure du tableau ; avec un signe moins vers l'avant. À { $exact } près, c'est suffisant.
ask-boat-displacement_kg = Combien pèse le bateau, chargé comme en croisière ? À { $exact } près, c'est suffisant ; dites-nous si le chiffre est lège ou en charge.
ask-boat-stern = Quelle est la forme de l'arrière là où se poserait la ferrure inférieure : droit, en voûte, inversé, avec une marche moulée, ouvert ou pointu ? Une photo de côté le dit le mieux.
ask-obstacle = Où se trouve exactement ceci : { $thing } ? D'où à où en arrière de l'arête supérieure du tableau, à quelle distance de l'axe, à quelle hauteur au-dessus de l'eau ? À { $exact } près, c'est suffisant.
ask-obstacles = Qu'y a-t-il sur l'arrière : échelle, plateforme, bossoirs, hors-bord, échappement, balcon, étais, bômes, portique ? Dites-nous pour chacun à quelle distance de l'axe il commence et finit, jusqu'où il va en arrière et à quelle hauteur au-dessus de l'eau (à { $exact } près, c'est suffisant), s'il se replie ou pivote, et s'il peut être enlevé. Une photo prise de l'arrière aide beaucoup.
ask-doubt-contradictory = { $field } : vous indiquez { $values }. Quelle cote est la bonne ?
ask-doubt-sign_unknown = { $field } : vous écrivez « { $text } ». Dans quel sens : vers l'arrière ou vers l'avant, au-dessus de l'eau ou au-dessous ?
ask-doubt-unit_unknown = { $field } : vous écrivez « { $text } ». Dans quelle unité ?
ask-doubt-other_datum = { $field } : vous avez mesuré depuis un autre repère que nous (« { $text } »). À quelle hauteur est-ce au-dessus de l'eau, par calme plat et chargé comme en croisière ?
ask-doubt-ambiguous = { $field } : « { $text } » peut se lire de plusieurs façons. Quelle cote voulez-vous dire ?

bracket-lower = ferrure inférieure
bracket-upper = ferrure supérieure

# --- noms des cotes ---

field-other = une de vos indications
field-boat-builder = chantier
field-boat-model = modèle
field-boat-year = année de construction
field-boat-loa_mm = longueur hors tout
field-boat-lwl_mm = longueur à la flottaison
field-boat-beam_mm = largeur
field-boat-draft_mm = tirant d'eau
field-boat-displacement_kg = déplacement
field-boat-hull_material = matériau de la coque
field-boat-stern = forme de l'arrière
field-transom-top_height_mm = hauteur de l'arête supérieure du tableau au-dessus de l'eau
field-transom-bottom_height_mm = hauteur de l'arête inférieure du tableau au-dessus de l'eau
field-transom-rake_deg = inclinaison du tableau
field-transom-profile = profil dans l'axe
field-transom-sections = coupes horizontales
field-transom-width_top_mm = largeur du tableau en haut
field-transom-width_waterline_mm = largeur du tableau à la flottaison
field-transom-camber_mm = bombé du tableau
field-transom-thickness_mm = épaisseur de la coque
field-transom-core_mm = épaisseur de l'âme
field-transom-step_height_mm = hauteur de la marche au-dessus de l'eau
field-transom-step_depth_mm = profondeur de la marche
field-transom-step_width_mm = largeur de la marche
field-transom-lower_rake_deg = inclinaison de la coque sous la marche
field-transom-post_width_mm = largeur de l'étambot
field-main_rudder-hung = montage du safran principal
field-main_rudder-stock_aft_mm = position de la mèche
field-main_rudder-leading_edge_aft_mm = bord d'attaque du safran principal
field-main_rudder-trailing_edge_aft_mm = bord de fuite du safran principal
field-main_rudder-top_height_mm = haut du safran principal au-dessus de l'eau
field-main_rudder-bottom_height_mm = bas du safran principal au-dessus de l'eau
field-main_rudder-max_deflection_deg = débattement du safran principal de chaque côté
field-obstacles = ce qui se trouve à l'arrière
field-waterline = flottaison en charge
field-interactions = plusieurs cotes combinées

# --- ce qui peut se trouver à l'arrière ---

thing-ladder = échelle de bain
thing-platform = plateforme
thing-davits = bossoirs
thing-outboard = moteur hors-bord
thing-exhaust = échappement
thing-rail = balcon arrière
thing-stay = pataras
thing-boom = bôme
thing-boomkin = queue-de-malet
thing-arch = portique
thing-panels = panneaux solaires
thing-mast = mât
thing-staff = mât de pavillon
thing-passerelle = passerelle
thing-locker = coffre
thing-other = autre accessoire
thing-at = { $side ->
    [port] { $thing } (à bâbord)
    [starboard] { $thing } (à tribord)
    [centre] { $thing } (dans l'axe)
    [both] { $thing } (des deux côtés)
   *[across] { $thing } (sur toute la largeur)
}

word-plumb = droit
word-raked = en voûte
word-reverse = inversé
word-scoop = à jupe
word-open = ouvert
word-double_ended = pointu
word-inboard = sous la coque
word-transom = dehors, sur le tableau
word-frp_solid = polyester monolithique
word-frp_cored = polyester sandwich
word-wood = bois
word-aluminium = aluminium
word-steel = acier

# --- ce que l'on vérifie ---

check-reach = portée de la { $bracket }
check-pad = épaisseur de la cale sous la { $bracket }
check-seat = coque saine sous la { $bracket }
check-strut = jambes de force de la { $bracket }
check-gap = largeur de l'étambot dans la { $bracket }
check-stands = hauteur au-dessus de la marche de la { $bracket }
check-spacing = distance entre les ferrures
check-overhang = porte-à-faux de l'arbre sous la ferrure inférieure
check-head = longueur d'arbre au-dessus de la ferrure supérieure
check-foot = longueur d'arbre à la ferrure inférieure
check-immersion = immersion de la pale
check-root_depth = profondeur du haut de la pale
check-main_rudder = espace entre le régulateur et le safran principal
check-hull = espace entre le régulateur et la coque
check-displacement = déplacement pour cette taille de régulateur
check-wake = eau libre à côté du safran principal
check-obstacle = espace entre le régulateur et ceci : { $thing }
check-load = résistance de l'arbre et des ferrures
