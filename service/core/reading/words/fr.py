"""French."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary

VOCABULARY = Vocabulary(
    language="fr",
    common="le la les de des du et est un une je nous vous avec mon pour que qui dans sur au aux en pas ne votre notre "
    "j'ai bonjour peut pouvez merci son sa ce il elle plus cette ces par mes ses ont sommes êtes leur nos vos "
    "dont où cela bien si",
    numbers=Numbers(
        ones="zéro un/une deux trois quatre cinq six sept huit neuf dix onze douze treize quatorze quinze seize "
        "dix-sept dix-huit dix-neuf",
        tens="vingt trente quarante cinquante soixante soixante-dix quatre-vingt quatre-vingt-dix",
        joint="{ten} {one}|{ten} et {one}",
        hundred="cent",
        half="demi/demie",
        and_="et",
        whole="trois_quarts_de=0.75",
    ),
    concepts={
        "LENGTH": "hors tout|de long|long",
        "M_TAPE": "mètre ruban|au mètre ruban|ruban|mètre à ruban|mètre de menuisier|au mètre|réglet|double mètre",
        "DEPTH": "profondeur|profond|profonde|profondeur de|de profondeur|longue de",
        "TRANSOM": "bord du tableau|arête du tableau|"
        "tableau|tableau arrière|arrière|poupe|tableaux|le tableau|cul du bateau|arrière du bateau|"
        "haut du tableau|haut du tableau arrière|dessus du tableau|bas du tableau|pied du tableau|"
        "bas du tableau arrière|inclinaison du tableau|angle du tableau|quête arrière|largeur du tableau|"
        "épaisseur du tableau|tableau inversé|arrière inversé|arrière inversée|tableau négatif",
        "POST": "tête de l'étambot|haut de l'étambot|étambot|mèche arrière|tête d'étambot|l'étambot",
        "TOP": "tête d'étambot|tête de l'étambot|haut de l'étambot|"
        "bord du tableau|arête du tableau|"
        "jusqu'au pont|au niveau du pont|"
        "monte jusqu'à|s'élève à|culmine à|monte à|"
        "haut|bord supérieur|haut du tableau|sommet|partie haute|bord haut|arête supérieure|en haut|"
        "haut du tableau arrière|le haut|partie supérieure|dessus du tableau|le sommet|bord du fond|"
        "bord du fond de cockpit|livet|arête haute|supérieur|le supérieur|haut de",
        "BOTTOM": "descend à|descend jusqu'à|"
        "bas|bord inférieur|bas du tableau|en bas|partie basse|arête inférieure|le bas|partie inférieure|"
        "pied du tableau|bord bas|bas du tableau arrière|arête basse|inférieur|l'inférieur",
        "WATER": "eau|l'eau|flottaison|ligne de flottaison|de l'eau|la flottaison|surface de l'eau|surface|"
        "niveau de l'eau|lf|franc bord|sous l'eau|sous la flottaison|en dessous de l'eau|"
        "en dessous de la flottaison|sous la ligne de flottaison|sous flottaison|au dessous de l'eau|dans l'eau|"
        "à fleur d'eau|au ras de l'eau|au niveau de l'eau|touche l'eau|juste à la flottaison|à la flottaison|"
        "au niveau de la flottaison|pile à la flottaison|hauteur sur l'eau",
        "TOERAIL": "liston|rail de fargue|pavois|rail de fargues|cale pied|cale pieds|listel|fargue|fargues",
        "STEP": "marche|jupe|marche de bain|marches|marche de la jupe|marche moulée",
        "HULL": "échantillonnage|tôle|tôles|bordage|bordages|coque|bordé|la coque|stratification|bordés|peau",
        "BOAT": "bateau|voilier|yacht|mon voilier|sloop|ketch|cotre|dériveur|navire|unité|voiliers",
        "HEIGHT": "hauteur|haut de|haut|haute|franc bord|hauteur sur l'eau",
        "WIDTH": "largeur|large|large de|de large|en largeur|de largeur|larg|largeur du tableau",
        "THICK": "épaisseur|épais|d'épaisseur|épaisse|épaisseur du tableau|épaisseur de la coque|épaisseur de coque",
        "LOA": "longueur|"
        "longueur hors tout|longueur ht|lht|longueur totale|long hors tout|l h t|longueur de coque|loa|"
        "longueur totale de",
        "LWL": "longueur à la flottaison|longueur flottaison|lwl|lflot|flottaison longueur",
        "BEAM": "bau|maître bau|largeur maxi|largeur du bateau|largeur hors tout|bau maximum|bau maxi|largeur max",
        "DRAFT": "t e|tirant d'eau|te|calaison|tirant d'eau maxi|tirant",
        "DISPLACEMENT": "déplacement|poids|pèse|déplace|masse|poids en charge|pèse environ|déplacement en charge|"
        "déplacement lège|tonnage|pesée|grue",
        "BALLAST": "lest|moteur|annexe|ballast|quille|moteur inboard|ancre|équipage",
        "RAKE": "inclinaison|angle|incliné|inclinée|quête|inclinaison du tableau|élancement|pente|angle du tableau|"
        "quête arrière|angle avec la verticale",
        "LEAN": "incliné vers l'avant|inclinée vers l'avant|penché vers l'avant|incliné sur l'avant|"
        "penche vers l'avant|"
        "incliné vers l'arrière|inclinée vers l'arrière|penché vers l'arrière|incliné sur l'arrière|"
        "penche vers l'arrière|"
        "incliné|inclinée|penche|incliné vers|penchée|s'incline|inclinés|fait un angle|part vers|tombe|oblique",
        "FORWARD": "incliné vers l'avant|inclinée vers l'avant|penché vers l'avant|incliné sur l'avant|"
        "penche vers l'avant|"
        "en avant|vers l'avant|plus en avant|en avant du|devant|vers avant|plus avancé|sur l'avant|"
        "avant du tableau|plus à l'avant|en avant de|plus vers l'avant|à l'avant|sur l'avant du",
        "AFT": "incliné vers l'arrière|inclinée vers l'arrière|penché vers l'arrière|incliné sur l'arrière|"
        "penche vers l'arrière|"
        "en arrière|vers l'arrière|plus en arrière|derrière|sur l'arrière|plus reculé|à l'arrière|"
        "plus à l'arrière|vers arrière|plus vers l'arrière|en retrait|en arrière de|en arrière du|recule",
        "PLUMB": "est droit|bien droit|"
        "vertical|verticale|droit|d'aplomb|à la verticale|verticaux|quasi vertical|presque vertical|tout droit|"
        "à plomb",
        "REVERSE": "inversé|inversée|tableau inversé|arrière inversé|contre pente|arrière inversée|négatif|négative|"
        "tableau négatif|inclinaison négative|inversés",
        "COUNTER": "voûte|arrière à voûte|tableau classique|classique|voûte arrière|à voûte|arrière classique|élancé|"
        "positif|positive",
        "SCOOP": "plateforme intégrée|plateforme de bain intégrée|"
        "jupe|jupe arrière|à jupe|arrière à jupe|jupe moulée|avec jupe|marches moulées|jupe intégrée|"
        "marche moulée dans la coque",
        "OPEN": "arrière ouvert|tableau ouvert|poupe ouverte|ouvert|tableau arrière ouvert|tableau basculant|"
        "arrière totalement ouvert|tableau qui bascule|sans tableau|tableau rabattable|tableau abattant|"
        "panneau qui bascule|cockpit ouvert",
        "DOUBLE": "arrière pointu|norvégien|cul pointu|arrière canoë|double pointe|arrière norvégien|pointu aux deux bouts|"
        "à cul pointu|arrière canot|double ender|norvégienne|arrière en pointe",
        "RUDDER": "safran|gouvernail|safrans|le safran|pelle|bi safran|double safran|deux safrans|pelle de safran|"
        "bord de fuite du safran|mèche de safran|axe du safran|mèche du safran|axe de safran|safran suspendu|"
        "safran sur aileron|safran sous la coque|safran sur skeg|safran extérieur|safran sur le tableau|"
        "safran accroché au tableau|safran de tableau|gouvernail extérieur",
        "HUNG_OUT": "safran extérieur|safran sur le tableau|monté sur le tableau|safran accroché au tableau|"
        "accroché au tableau|sur aiguillots|suspendu au tableau|fixé au tableau|accroché au tableau arrière|"
        "sur le tableau arrière|fixé sur le tableau|extérieur|sur tableau|safran de tableau|sur ferrures|"
        "articulé sur le tableau|monté sur l'étambot|accroché à l'étambot|sur l'étambot|gouvernail extérieur|"
        "rapporté sur le tableau|suspendu au tableau arrière|fixé au tableau arrière|sur tableau arrière|"
        "est sur le tableau|sur le tableau",
        "HUNG_IN": "semi suspendu|safran suspendu|suspendue|safran sur aileron|compensé|semi compensé|safran sous la coque|"
        "derrière la quille|sur skeg|safran sur skeg",
        "UNDER": "sur la quille|sur quille|"
        "suspendu|sur aileron|sous la coque|sous le bateau|sous la voûte|sur skeg|aileron|skeg|sous coque|"
        "sous la carène|suspendus",
        "TRAILING": "bord de fuite|bord arrière|arête arrière|partie la plus arrière|bord de fuite du safran|bord postérieur|"
        "extrémité arrière",
        "STOCK": "mèche|mèche de safran|axe du safran|mèche du safran|sa mèche|axe de safran|axe de mèche|jaumière",
        "STICK_OUT": "dépasse|dépassant|déborde|dépasse de|ressort|en saillie|saillie|débordant|dépassent",
        "TURN": "de chaque bord|débattement|angle de barre|de chaque côté|sur chaque bord|angle maxi|butée|"
        "de part et d'autre",
        "GRP": "polyester|stratifié|résine|fibre de verre|plastique|verre|composite",
        "SOLID": "pas de sandwich|sans sandwich|sans âme|"
        "monolithique|plein|stratifié plein|stratifié monolithique|pleine|polyester plein|stratifié massif|"
        "verre plein",
        "CORED": "sandwich|balsa|sandwich balsa|sandwich mousse|âme balsa|mousse|en sandwich|âme mousse",
        "WOOD": "cp époxy|cp|contreplaqué époxy|ctp|"
        "bois|contreplaqué|bois moulé|acajou|contre plaqué|bordé classique|coque bois|en bois|petites lattes|"
        "strip planking|bois époxy|chêne",
        "ALU": "aluminium|alu|coque alu|coque aluminium|en alu|en aluminium",
        "STEEL": "acier|coque acier|en acier|tôle d'acier",
        "O_LADDER": "échelle|échelle de bain|échelles|échelle arrière|échelle de baignade",
        "O_PLATFORM": "plateforme|plage de bain|plateforme de bain|plateformes|plate forme|plateforme arrière|"
        "plateforme de baignade|plage arrière",
        "O_DAVITS": "bossoirs|bossoir|portemanteaux|portemanteau|bossoirs d'annexe|potences",
        "O_OUTBOARD": "hors bord|moteur hors bord|support de hors bord|chaise de hors bord|chaise moteur|chaise pour hors bord|"
        "moteur annexe sur chaise|hors bords|support moteur",
        "O_EXHAUST": "échappement|sortie d'échappement|l'échappement|échappement moteur",
        "O_RAIL": "balcon arrière|balcon|balcons arrière|balcons|filières arrière|rambarde",
        "O_STAY": "pataras|patte d'oie|bastaques|double pataras|étai arrière|pataras double|pataras dédoublé",
        "O_BOOM": "bôme d'artimon|bôme|bout de bôme|queue de malet",
        "O_ARCH": "portique|arceau|arche|portiques|portique arrière|arceau arrière|roll bar|portique inox",
        "O_PANELS": "panneaux solaires|panneau solaire|panneaux|solaires|panneaux photovoltaïques|photovoltaïque|panneau",
        "O_MAST": "mât radar|éolienne|mât d'éolienne|mâtereau|mât arrière|perche radar",
        "O_PASSERELLE": "passerelle|passerelles|la passerelle",
        "FOLD": "à replier|à rabattre|se rabattant|pivotante|"
        "repliable|rabattable|pliante|relevable|basculante|repliables|pliable|se replie|qui se replie|"
        "rabattables|se rabat|se relève|relevables|qui bascule|articulée|escamotable|pliant|rétractable|"
        "basculant|se plie",
        "FIXED": "fixe|soudé|soudée|boulonnée|fixes|boulonné|rigide|vissée|non repliable|à poste|à demeure|soudées",
        "REMOVE": "pourrais déposer|pourrions déposer|peux déposer|pouvons déposer|pourrais enlever|"
        "pourrais démonter|pourrions enlever|pourrions démonter|m'en passer|nous en passer|s'en passer|"
        "peut être déplacé|peut être déplacée|peut aller ailleurs|peuvent être déplacés|"
        "sera démonté|seront démontés|sera démontée|seront démontées|sera enlevé|sera enlevée|"
        "démontable|amovible|peut être enlevée|peut être démontée|peut être enlevé|démontables|amovibles|"
        "peut être retirée|peut être retiré|peut se démonter|peut s'enlever|enlever|démonter|peut partir|"
        "qu'on peut enlever|on peut l'enlever|peut être supprimée|peut être supprimé|que je peux démonter|"
        "peut disparaître|peut être déposée|peut être déposé|peut être démonté|peuvent être démontés|"
        "peut être ôté",
        "KEEP": "y tient|y tenons|y tiens|tient à le garder|tient à la garder|tenons à le garder|"
        "continuer à utiliser|continuer à s'en servir|reste utilisable|"
        "ne voulons pas enlever|ne veux pas enlever|ne souhaitons pas enlever|ne voulons pas démonter|"
        "que je garde|je garde|doit rester|à garder|je la garde|je le garde|souhaitons garder|souhaite garder|"
        "à conserver|conserver|garder|doivent rester|indispensable|nous gardons|veux garder|voulons garder|"
        "doit être conservé|doit être conservée|reste en place|restera|on la garde|on le garde|je tiens à|"
        "ne peut pas être démonté|impossible à déplacer|à conserver impérativement|nous y tenons|qui doit rester",
        "YES": "oui",
        "NOT": "pas de|pas|aucun|aucune|sans|ni|pas d'|n'a pas|n'y a pas|non|néant|nul|rien|jamais|n'ai pas|n'avons pas|"
        "il n'y a pas de|absence de",
        "PORT": "bâbord|à bâbord|bd|gauche|côté bâbord|sur bâbord|à gauche",
        "STARBOARD": "tribord|à tribord|td|droite|côté tribord|sur tribord|à droite",
        "CENTRE": "milieu|au milieu|centre|axe|au centre|de l'axe|dans l'axe|sur l'axe|central|centrale|l'axe|axial|"
        "ligne médiane|centrée|plein milieu|du milieu|de l'axe du bateau",
        "EACH_SIDE": "de chaque côté|des deux côtés|de part et d'autre|sur chaque bord|un de chaque côté",
        "PREFER": "souhaite un montage|souhaite le montage|souhaite l'installer|souhaite le monter|"
        "montage souhaité|préférerait|souhaiterait|"
        "on préfère|on préférerait|on aimerait|"
        "préfère|préférons|préférerais|de préférence|aimerais|aimerions|souhaiterais|souhaiterions|préférence|"
        "préférerions|plutôt|voudrais l'avoir|l'idéal serait|si possible",
        "OTHER_BOAT": "le sien|la sienne|le leur|la leur|"
        "voisin*|"
        "voisin|ami|ancien bateau|copain|voisins|voisine|un ami|copains|mon ami|précédent bateau|autre bateau|"
        "voisin de ponton|bateau précédent|ex bateau|un copain|mon frère|beau frère|collègue|du voisin",
        "BELOW": "sous l'eau|sous la flottaison|au dessous|immergé|immergée|en dessous de l'eau|"
        "en dessous de la flottaison|sous la ligne de flottaison|sous flottaison|au dessous de l'eau|dans l'eau|"
        "en dessous",
        "OURS": "frère et moi|ami et moi|copain et moi|beau frère et moi|"
        "le nôtre|notre|mon|nous avons|chez nous|le mien|sur le mien|sur le nôtre|j'ai un|nous avons un",
        "YEAR": "an|"
        "de|année|construit en|datant de|millésime|construit|construite en|lancé en|mis à l'eau en|mise à l'eau|"
        "année de construction|de l'année|sorti en|daté de",
        "HULL_NUMBER": "coque nº|nº de coque|"
        "numéro de coque|coque numéro|n de coque|numéro de la coque|coque n|no de coque",
        "BUILDER": "chantier|constructeur|constructeurs|construit par|chantier constructeur",
        "MODEL": "modèle|bateau|type|voilier|type de bateau|marque et modèle|mon bateau est un|modèle de bateau",
        "ASK": "pouvez vous me dire|peut s'y monter|devis|quel|quelle|prix|combien|conseiller|besoin|question|savoir|"
        "conviendrait|convient|convenir|cherchons|cherche|proposez|proposer|recommandez|conseillez|merci de|"
        "chiffrer|tarif|tarifs|coût|coûte|renseignements|demande|souhaite savoir|adapter|adapté|voudrais savoir|"
        "pouvez|pourriez|vous avez|nécessaire|faut il|faut|quels|quelles|délai|intéressé|intéressés",
        "GEAR": "régulateur|régulateur d'allure|pilote à vent|régulateurs|conservateur d'allure|pilote éolien|"
        "safran auxiliaire|régulateurs d'allure|régulateur d'allures",
        "ORDER": "pièce détachée|pièces détachées|commande|commander|numéro de série|pièces|pièce|rechange|"
        "pièces de rechange|bagues|bague|n° de série|commander des|remplacer|cassé|cassée|aérien neuf|usées|usé",
        "THANKS": "merci beaucoup|bien reçu|un grand merci|mille mercis|bien arrivé|satisfait|ravis|remercie|remercions|"
        "bien arrivés",
        "SIGN_OFF": "cordialement|merci d'avance|bien cordialement|salutations|bien à vous|merci|amicalement|"
        "sincères salutations|meilleures salutations|salutations distinguées|bien à toi|à bientôt|bonne journée|"
        "bonne réception|dans l'attente|en vous remerciant|merci par avance|avec mes remerciements|amitiés|cdlt|"
        "bonne navigation|salutations marines|avec mes salutations|respectueusement|d'avance merci",
        "CUSTOMER": "client|cliente|clients|un de nos clients|notre client|l'un de nos clients|propriétaire|"
        "pour le compte de|un client|armateur",
        "COMPANY": "sarl|nautique|marine|accastillage|chantier naval|sas|chantier|shipchandler|voilerie|gréement|yachting|"
        "nautic|services nautiques|eurl|mécanique marine|plaisance|accastilleur|atelier|sellerie",
        "PHONE": "tél|tel|portable|mobile|téléphone|gsm|tph|tél portable|mob|t",
        "FAX": "fax|siret|rcs",
        "M_PHONE": "téléphone|niveau du téléphone|smartphone|appli|application",
        "M_INCL": "inclinomètre|niveau à bulle|rapporteur|niveau numérique|clinomètre",
        "M_LASER": "laser|télémètre",
        "M_DRAWING": "plan|plans|dessin|dessins|plan de formes|sur plan|plan du chantier|plans du chantier",
        "M_BROCHURE": "brochure|fiche technique|catalogue|documentation|notice|données constructeur|selon le chantier|"
        "d'après le chantier|acte de francisation",
        "M_GUESS": "à vue d'œil|à l'œil|à vue de nez|estimé|estimée|estimation|j'estime|au jugé|à la louche|au pif|à vue",
        "M_PHOTO": "photo|photos|sur photo|d'après photo",
        "GIVE_TAKE": "plus ou moins|à plus ou moins",
        "WITHIN": "près",
        "BOOTSTRIPE": "liseré|bande de flottaison|filet de flottaison",
        "COCKPIT": "fond de cockpit|plancher du cockpit|cockpit|sole de cockpit|plancher de cockpit|bord du fond de cockpit|"
        "fond du cockpit",
        "O_BOOMKIN": "queue de mallet|bout dehors arrière",
        "O_STAFF": "hampe|mât de pavillon|hampe de pavillon",
        "O_LOCKER": "coffre arrière|bib|radeau|coffre à gaz",
        "SLIDE": "coulissante|coulissant|télescopique",
        "SWING": "pivotante|pivotant|orientable",
        "AVOID": "éviter|surtout pas|en aucun cas",
        "WITHDRAW": "oubliez|ne pas tenir compte|annule|erroné|erronée|était faux|faux",
        "MEANT": "je voulais dire|voulais dire|au lieu de|correction|rectification|erreur|en fait|lire|plutôt que|"
        "il fallait lire|et non|corrigé",
        "JUST_TOUCH": "affleure|à fleur|au ras|effleure",
        "OWNED": "mon régulateur|notre régulateur|acheté chez vous|acheté en|monté depuis|installé depuis",
        "SELL": "newsletter|désabonner|désinscrire|cliquez|exposants|remises|salon|tarif réduit|référencement|promotion|"
        "offre spéciale|ne plus recevoir|soldes",
        "INSTEAD": "au lieu de|au lieu des|plutôt que|et non",
        "PLUMB_LINE": "fil à plomb|au fil à plomb|un fil à plomb",
        "MEASURED": "mesuré|mesurée|mesures|mesure|relevé|cotes|cote|relevée|dimensions|relevés|mesurés",
        "AT_WATER": "à fleur d'eau|au ras de l'eau|au niveau de l'eau|touche l'eau|juste à la flottaison|à la flottaison|"
        "au niveau de la flottaison|pile à la flottaison",
        "OOPS": "non|pardon|enfin|plutôt|je veux dire|erreur|excusez moi|correction|mea culpa|je corrige",
        "GONE": "vendu|vendue|avons vendu|"
        "est démonté|est démontée|déjà démonté|déjà démontée|"
        "dans le coffre|dans un coffre|rangé|rangée|reste à terre|est rangé|est rangée|stocké|stockée|"
        "a été démontée|a été démonté|a été enlevée|a été enlevé|je l'ai enlevée|je l'ai enlevé|"
        "nous l'avons enlevée|nous l'avons enlevé|n'est plus là|ont été démontés|ont été enlevés|"
        "je l'ai démontée",
        "ENDS": "s'arrête|se termine|finit",
        "BESIDE": "à côté de|près de|près du|à côté du|au niveau de|au niveau du|à hauteur de|au droit de",
        "BEGIN": "commence|débute|à partir de",
        "EXCEPT": "sauf|à part|hormis|excepté|seulement",
    },
)
