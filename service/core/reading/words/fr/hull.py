"""French: the stern, the rudder, what she is built of and who she is."""

WORDS = {
    "TRANSOM": (
        "bord du tableau|arête du tableau|tableau|tableau arrière|arrière|poupe|tableaux|cul du bateau|"
        "arrière du bateau|haut du tableau|haut du tableau arrière|dessus du tableau|bas du tableau|"
        "pied du tableau|bas du tableau arrière|inclinaison du tableau|angle du tableau|quête arrière|"
        "largeur du tableau|épaisseur du tableau|tableau inversé|arrière inversé|arrière inversée|"
        "tableau négatif|tableaux arrière|panneau arrière|face arrière|cul|l'arrière du bateau|arrière tableau|"
        "arcasse|haut de l'arrière|bas de l'arrière|plan du tableau|face du tableau|tableau de poupe|"
        "tableau d'arcasse|le cul du bateau|sommet du tableau|rebord du tableau|épaisseur au tableau|"
        "contremarche|contre marche"
    ),
    "POST": "tête de l'étambot|haut de l'étambot|étambot|mèche arrière|tête d'étambot|l'étambot",
    "HULL": "échantillonnage|tôle|tôles|bordage|bordages|coque|bordé|stratification|bordés|peau|la tôle",
    "BOAT": (
        "bateau|voilier|yacht|mon voilier|sloop|ketch|cotre|dériveur|navire|unité|voiliers|bateau en acier|"
        "bateau en alu|bateau en bois|voilier en acier|voilier en aluminium|voilier en bois"
    ),
    "PLUMB": (
        "est droit|bien droit|vertical|verticale|droit|d'aplomb|à la verticale|verticaux|quasi vertical|"
        "presque vertical|tout droit|à plomb|bien vertical|parfaitement vertical|pratiquement vertical|"
        "quasiment vertical|sans inclinaison|aucune inclinaison|verticales|presque droit|à peu près vertical|"
        "parfaitement droit|d'équerre|droite comme un i|droit comme un i|quasi verticale|presque verticale|"
        "zéro degré"
    ),
    "REVERSE": (
        "inversé|inversée|tableau inversé|arrière inversé|contre pente|arrière inversée|négatif|négative|"
        "tableau négatif|inclinaison négative|inversés|contre pentes|tableau à contre pente|tableau inversé de|"
        "pente inversée|inclinaison inverse|quête inverse|quête inversée|incliné en avant|négatifs|contrepente|"
        "tableau rentrant|en contre pente|retroussé|à l'envers|inverses|inverse"
    ),
    "COUNTER": (
        "voûte|arrière à voûte|tableau classique|classique|voûte arrière|à voûte|arrière classique|élancé|"
        "positif|positive|arrière traditionnel|tableau traditionnel|arrière élancé|poupe classique|poupe élancée|"
        "voûte prononcée|longue voûte|incliné en arrière|élancement arrière|tableau normal|positifs|"
        "arrière normal|à voûtes|petite voûte|tableau conventionnel"
    ),
    "SCOOP": (
        "moulée dans la coque|moulé dans la coque|intégrée à la coque|intégré à la coque|intégrée dans la coque|"
        "prise dans la coque|plateforme intégrée|plateforme de bain intégrée|jupe|jupe arrière|à jupe|"
        "arrière à jupe|jupe moulée|avec jupe|marches moulées|jupe intégrée|marche moulée dans la coque|"
        "jupe arrière intégrée|plage arrière intégrée|arrière jupe|marches intégrées|marches dans le tableau|"
        "jupe de bain|tableau à marches|arrière à marches|jupette|jupes|plateforme moulée|marches dans la jupe|"
        "plage de bain intégrée|avec une jupe|arrière sucrier|escalier moulé"
    ),
    "OPEN": (
        "arrière ouvert|tableau ouvert|poupe ouverte|ouvert|tableau arrière ouvert|tableau basculant|"
        "arrière totalement ouvert|tableau qui bascule|sans tableau|tableau rabattable|tableau abattant|"
        "panneau qui bascule|cockpit ouvert|arrière totalement dégagé|cockpit ouvert sur l'arrière|"
        "ouvert sur l'arrière|ouvert à l'arrière|tableau escamotable|tableau qui s'abaisse|arrière basculant|"
        "porte arrière basculante|tableau abaissable|pas de tableau|grand ouvert|sans tableau arrière|"
        "jupe basculante|plage basculante|tableau rabattant|tableau s'ouvre|tableau s'abat|complètement ouvert"
    ),
    "DOUBLE": (
        "arrière pointu|norvégien|cul pointu|arrière canoë|double pointe|arrière norvégien|pointu aux deux bouts|"
        "à cul pointu|arrière canot|double ender|norvégienne|arrière en pointe|cul de poule pointu|"
        "arrière norvégienne|deux bouts pointus|arrière effilé|poupe norvégienne|poupe pointue|double proue|"
        "doublender|arrière canoé|arrière en canoë|colin archer|arrière de canoë|pointu à l'arrière|"
        "arrière en canoé|poupe en pointe|poupe de canoë"
    ),
    "RUDDER": (
        "sa tête|"
        "safran|gouvernail|safrans|pelle|bi safran|double safran|deux safrans|pelle de safran|"
        "bord de fuite du safran|mèche de safran|axe du safran|mèche du safran|axe de safran|safran suspendu|"
        "safran sur aileron|safran sous la coque|safran sur skeg|safran extérieur|safran sur le tableau|"
        "safran accroché au tableau|safran de tableau|gouvernail extérieur|safran du bateau|pelle du safran|"
        "lame du safran|safran principal|gouvernails|du safran|safran d'origine|lame|safran rapporté|"
        "gouvernail sur tableau|safran relevable|safran arrière|safran accroché|safran à aileron|"
        "safrans suspendus|safran compensé|bas du safran|pied du safran|talon du safran|tête du safran|"
        "tête de safran|haut du safran|tête de la pale"
    ),
    "HUNG_OUT": (
        "safran extérieur|safran sur le tableau|monté sur le tableau|safran accroché au tableau|"
        "accroché au tableau|sur aiguillots|suspendu au tableau|fixé au tableau|accroché au tableau arrière|"
        "sur le tableau arrière|fixé sur le tableau|extérieur|sur tableau|safran de tableau|sur ferrures|"
        "articulé sur le tableau|monté sur l'étambot|accroché à l'étambot|sur l'étambot|gouvernail extérieur|"
        "rapporté sur le tableau|suspendu au tableau arrière|fixé au tableau arrière|sur tableau arrière|"
        "est sur le tableau|sur le tableau|safran rapporté|rapporté au tableau|pendu au tableau|"
        "accroché sur le tableau|accroché derrière|accroché à l'arrière|articulé au tableau|fixé derrière|"
        "fémelots|aiguillots|fémelots et aiguillots|sur aiguillots et fémelots|monté sur tableau|"
        "gouvernail sur tableau|suspendu à l'arrière|posé sur le tableau|safran relevable|safran arrière|"
        "est extérieur|monté au tableau|tient au tableau|au tableau arrière|porté par le tableau|safran accroché|"
        "en tableau|sur l'arrière du tableau|accroché dehors|accroché à l'extérieur"
    ),
    "HUNG_IN": (
        "accroché au skeg|pendu au skeg|suspendu au skeg|porté par un skeg|"
        "à l'arrière de la quille|pendu à la quille|suspendu à la quille|dans le prolongement de la quille|"
        "derrière la quille longue|porté par la quille|semi suspendu|safran suspendu|suspendue|"
        "safran sur aileron|compensé|semi compensé|safran sous la coque|derrière la quille|sur skeg|"
        "safran sur skeg|safran à aileron|derrière un aileron|derrière aileron|suspendus|sous la voûte arrière|"
        "bi-safrans suspendus|compensés|semi-compensé|derrière quille|sur quille longue|accroché à la quille|"
        "pendu sous la coque|safrans suspendus|talon de quille|derrière le skeg|sur un skeg|à skeg|"
        "protégé par un skeg|protégé par un aileron|mèche traversante|safran compensé|semi-suspendu|"
        "articulé sur la quille|monté sur la quille|monté sur skeg|accroché derrière la quille|"
        "au bout de la quille|derrière une quille longue|en bout de quille"
    ),
    "UNDER": (
        "sur la quille|sur quille|suspendu|sur aileron|sous la coque|sous le bateau|sous la voûte|sur skeg|"
        "aileron|skeg|sous coque|sous la carène|suspendus|planqué sous|bien en dessous|sous la jupe|"
        "sous le tableau|sous le cockpit|est dessous|est en dessous|sont dessous"
    ),
    "TRAILING": (
        "bord de fuite|bord arrière|arête arrière|partie la plus arrière|bord de fuite du safran|bord postérieur|"
        "extrémité arrière|arrière du safran|bord arrière du safran|bords de fuite|bout du safran|"
        "extrémité du safran|chant arrière|bordure arrière|arrête arrière|point le plus en arrière|"
        "partie arrière du safran|bord fuite|bout arrière|arrière de la pale|fin de la pale"
    ),
    "STOCK": (
        "mèche|mèche de safran|axe du safran|mèche du safran|sa mèche|axe de safran|axe de mèche|jaumière|"
        "axe de rotation du safran|mèche du gouvernail|axe de la mèche|centre de la mèche|axe du gouvernail|"
        "tube de jaumière|axe mèche|axe de rotation|mèches|l'axe du safran"
    ),
    "GRP": (
        "polyester|stratifié|résine|fibre de verre|plastique|verre|composite|polyester verre|fibre|"
        "verre polyester|gfk|plastique renforcé|stratifié verre|époxy|vinylester|frp|tissu de verre|roving"
    ),
    "SOLID": (
        "pas de sandwich|sans sandwich|sans âme|monolithique|plein|stratifié plein|stratifié monolithique|pleine|"
        "polyester plein|stratifié massif|verre plein|polyester massif|stratifié simple|monolithe|non sandwich|"
        "pas en sandwich|sans mousse|verre-polyester plein|plein polyester|polyester monolithique|"
        "stratifié verre plein|peau unique|pas sandwich|composite plein|pas de balsa|sans balsa"
    ),
    "CORED": (
        "sandwich|balsa|sandwich balsa|sandwich mousse|âme balsa|mousse|en sandwich|âme mousse|airex|divinycell|"
        "klégécell|mousse pvc|coeur balsa|cœur balsa|sandwich mousse pvc|nid d'abeille|construction sandwich|âme|"
        "sandwich bois|sandwich verre|âme en balsa|âme en mousse|sandwich verre balsa|en balsa|sandwich airex|"
        "balsa sandwich|sandwichs"
    ),
    "WOOD": (
        "voilier en bois|cp époxy|cp|contreplaqué époxy|ctp|bois|contreplaqué|bois moulé|acajou|contre plaqué|"
        "bordé classique|coque bois|en bois|petites lattes|strip planking|bois époxy|chêne|bois massif|"
        "bordés bois|bois classique|construction bois|bois moulé époxy|acajou sur chêne|contreplaqué marine|"
        "bois-époxy|coque en bois|bois/époxy|iroko|pin d'oregon|mélèze|en contreplaqué|à clins|teck|"
        "strip-planking|red cedar|bordages bois|bordé bois|bateau bois|bateau en bois|cèdre|bois collé|en acajou|"
        "en strip|de bois"
    ),
    "ALU": (
        "voilier en aluminium|aluminium|alu|coque alu|coque aluminium|en alu|en aluminium|coque en alu|"
        "coque en aluminium|bateau en alu|bateau alu|aluminium soudé|strongall|d'aluminium|dériveur alu|"
        "construction aluminium|construction alu|tôle d'alu|tout alu|tout aluminium|en alu soudé|voilier alu|"
        "alu soudé"
    ),
    "STEEL": (
        "voilier en acier|acier|coque acier|en acier|tôle d'acier|coque en acier|bateau acier|bateau en acier|"
        "d'acier|acier soudé|tôle acier|construction acier|acier corten|voilier acier|tout acier|ketch acier|"
        "cotre acier|sloop acier|en acier corten"
    ),
    "YEAR": (
        "an|de|année|construit en|datant de|millésime|construit|construite en|lancé en|mis à l'eau en|"
        "mise à l'eau|année de construction|de l'année|sorti en|daté de|construit à|construit chez|bâti en"
    ),
    "HULL_NUMBER": (
        "coque nº|nº de coque|numéro de coque|coque numéro|n de coque|numéro de la coque|coque n|no de coque"
    ),
    "BUILDER": "chantier|constructeur|constructeurs|construit par|chantier constructeur",
    "MODEL": "modèle|bateau|type|voilier|type de bateau|marque et modèle|mon bateau est un|modèle de bateau",
}
