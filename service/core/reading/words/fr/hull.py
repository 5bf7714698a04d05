"""French: the stern, the rudder, what she is built of and who she is."""

WORDS = {
    "TRANSOM": (
        "bord du tableau|arête du tableau|tableau|tableau arrière|arrière|poupe|tableaux|le tableau|"
        "cul du bateau|arrière du bateau|haut du tableau|haut du tableau arrière|dessus du tableau|"
        "bas du tableau|pied du tableau|bas du tableau arrière|inclinaison du tableau|angle du tableau|"
        "quête arrière|largeur du tableau|épaisseur du tableau|tableau inversé|arrière inversé|arrière inversée|"
        "tableau négatif|tableaux arrière|panneau arrière|face arrière|cul|l'arrière du bateau|arrière tableau|"
        "arcasse|haut de l'arrière|bas de l'arrière|plan du tableau|face du tableau|tableau de poupe|"
        "tableau d'arcasse|le cul du bateau|sommet du tableau|rebord du tableau|épaisseur au tableau"
    ),
    "POST": "tête de l'étambot|haut de l'étambot|étambot|mèche arrière|tête d'étambot|l'étambot",
    "HULL": "échantillonnage|tôle|tôles|bordage|bordages|coque|bordé|la coque|stratification|bordés|peau",
    "BOAT": "bateau|voilier|yacht|mon voilier|sloop|ketch|cotre|dériveur|navire|unité|voiliers",
    "PLUMB": (
        "est droit|bien droit|vertical|verticale|droit|d'aplomb|à la verticale|verticaux|quasi vertical|"
        "presque vertical|tout droit|à plomb"
    ),
    "REVERSE": (
        "inversé|inversée|tableau inversé|arrière inversé|contre pente|arrière inversée|négatif|négative|"
        "tableau négatif|inclinaison négative|inversés"
    ),
    "COUNTER": (
        "voûte|arrière à voûte|tableau classique|classique|voûte arrière|à voûte|arrière classique|élancé|"
        "positif|positive"
    ),
    "SCOOP": (
        "plateforme intégrée|plateforme de bain intégrée|jupe|jupe arrière|à jupe|arrière à jupe|jupe moulée|"
        "avec jupe|marches moulées|jupe intégrée|marche moulée dans la coque"
    ),
    "OPEN": (
        "arrière ouvert|tableau ouvert|poupe ouverte|ouvert|tableau arrière ouvert|tableau basculant|"
        "arrière totalement ouvert|tableau qui bascule|sans tableau|tableau rabattable|tableau abattant|"
        "panneau qui bascule|cockpit ouvert"
    ),
    "DOUBLE": (
        "arrière pointu|norvégien|cul pointu|arrière canoë|double pointe|arrière norvégien|pointu aux deux bouts|"
        "à cul pointu|arrière canot|double ender|norvégienne|arrière en pointe"
    ),
    "RUDDER": (
        "safran|gouvernail|safrans|le safran|pelle|bi safran|double safran|deux safrans|pelle de safran|"
        "bord de fuite du safran|mèche de safran|axe du safran|mèche du safran|axe de safran|safran suspendu|"
        "safran sur aileron|safran sous la coque|safran sur skeg|safran extérieur|safran sur le tableau|"
        "safran accroché au tableau|safran de tableau|gouvernail extérieur"
    ),
    "HUNG_OUT": (
        "safran extérieur|safran sur le tableau|monté sur le tableau|safran accroché au tableau|"
        "accroché au tableau|sur aiguillots|suspendu au tableau|fixé au tableau|accroché au tableau arrière|"
        "sur le tableau arrière|fixé sur le tableau|extérieur|sur tableau|safran de tableau|sur ferrures|"
        "articulé sur le tableau|monté sur l'étambot|accroché à l'étambot|sur l'étambot|gouvernail extérieur|"
        "rapporté sur le tableau|suspendu au tableau arrière|fixé au tableau arrière|sur tableau arrière|"
        "est sur le tableau|sur le tableau"
    ),
    "HUNG_IN": (
        "semi suspendu|safran suspendu|suspendue|safran sur aileron|compensé|semi compensé|safran sous la coque|"
        "derrière la quille|sur skeg|safran sur skeg"
    ),
    "UNDER": (
        "sur la quille|sur quille|suspendu|sur aileron|sous la coque|sous le bateau|sous la voûte|sur skeg|"
        "aileron|skeg|sous coque|sous la carène|suspendus"
    ),
    "TRAILING": (
        "bord de fuite|bord arrière|arête arrière|partie la plus arrière|bord de fuite du safran|bord postérieur|"
        "extrémité arrière"
    ),
    "STOCK": "mèche|mèche de safran|axe du safran|mèche du safran|sa mèche|axe de safran|axe de mèche|jaumière",
    "GRP": "polyester|stratifié|résine|fibre de verre|plastique|verre|composite",
    "SOLID": (
        "pas de sandwich|sans sandwich|sans âme|monolithique|plein|stratifié plein|stratifié monolithique|pleine|"
        "polyester plein|stratifié massif|verre plein"
    ),
    "CORED": "sandwich|balsa|sandwich balsa|sandwich mousse|âme balsa|mousse|en sandwich|âme mousse",
    "WOOD": (
        "cp époxy|cp|contreplaqué époxy|ctp|bois|contreplaqué|bois moulé|acajou|contre plaqué|bordé classique|"
        "coque bois|en bois|petites lattes|strip planking|bois époxy|chêne"
    ),
    "ALU": "aluminium|alu|coque alu|coque aluminium|en alu|en aluminium",
    "STEEL": "acier|coque acier|en acier|tôle d'acier",
    "YEAR": (
        "an|de|année|construit en|datant de|millésime|construit|construite en|lancé en|mis à l'eau en|"
        "mise à l'eau|année de construction|de l'année|sorti en|daté de"
    ),
    "HULL_NUMBER": (
        "coque nº|nº de coque|numéro de coque|coque numéro|n de coque|numéro de la coque|coque n|no de coque"
    ),
    "BUILDER": "chantier|constructeur|constructeurs|construit par|chantier constructeur",
    "MODEL": "modèle|bateau|type|voilier|type de bateau|marque et modèle|mon bateau est un|modèle de bateau",
}
