"""French: what is measured, from where, which way and by what."""

WORDS = {
    "LENGTH": "hors tout|long|de long",
    "HEIGHT": (
        "hauteur|haut de|haut|haute|franc bord|hauteur sur l'eau|hauteurs|hauteur de|hauteur au dessus|élévation|"
        "en hauteur|hauts|hautes"
    ),
    "WIDTH": (
        "largeur|large|large de|en largeur|larg|largeur du tableau|largeurs|larges|d'un bord à l'autre|"
        "en travers|transversalement|de travers|bord à bord|de large|de largeur"
    ),
    "THICK": (
        "épaisseur|épais|d'épaisseur|épaisse|épaisseur du tableau|épaisseur de la coque|épaisseur de coque|"
        "épaisseurs|épaisses|épaisseur totale|d'ép|ép|épaisseur du bordé|épaisseur d'environ|épaisseur au tableau"
    ),
    "DEPTH": (
        "profondeur|profond|profonde|profondeur de|longue de|de profondeur|d'avant en arrière|"
        "de l'avant à l'arrière|dans le sens de la longueur|d'avant en arrière de"
    ),
    "LOA": (
        "longueur|longueur hors tout|longueur ht|lht|longueur totale|long hors tout|l h t|longueur de coque|loa|"
        "longueur totale de|longueur de la coque|longueur coque|l.h.t|long. h.t|longueur du bateau|hors tout|"
        "longueur maximale|longueur de pont|longueurs"
    ),
    "LWL": "longueur à la flottaison|longueur flottaison|lwl|lflot|flottaison longueur",
    "BEAM": (
        "bau|maître bau|largeur maxi|largeur du bateau|largeur hors tout|bau maximum|bau maxi|largeur max|"
        "largeur maximale|largeur maxi.|maître bau de|largeur de coque|bau max|maitre bau|bau de|l. maxi|"
        "largeur bateau|bmax"
    ),
    "DRAFT": (
        "t e|tirant d'eau|te|calaison|tirant d'eau maxi|tirant|tirants d'eau|tirant d'eau de|t.e|quillard de|"
        "tirant d eau|calant|calaison de|il cale|elle cale|cale|cale environ"
    ),
    "DISPLACEMENT": (
        "déplacement|poids|pèse|déplace|masse|poids en charge|pèse environ|déplacement en charge|"
        "déplacement lège|tonnage|pesée|grue|déplacements|pesait|pesé|poids à vide|poids lège|poids total|"
        "déplacement armé|en ordre de marche|à la grue|fait son poids|tonnes de déplacement|pesons|"
        "poids du bateau"
    ),
    "BALLAST": "lest|moteur|annexe|ballast|quille|moteur inboard|ancre|équipage",
    "RAKE": (
        "inclinaison|angle|incliné|inclinée|quête|inclinaison du tableau|élancement|pente|angle du tableau|"
        "quête arrière|angle avec la verticale|par rapport à la verticale|d'inclinaison|avec la verticale|"
        "sur la verticale|inclinaisons|pente du tableau|dévers|fruit|inclinaison de|hors d'aplomb"
    ),
    "LEAN": (
        "incliné vers l'avant|inclinée vers l'avant|penché vers l'avant|incliné sur l'avant|penche vers l'avant|"
        "incliné vers l'arrière|inclinée vers l'arrière|penché vers l'arrière|incliné sur l'arrière|"
        "penche vers l'arrière|incliné|inclinée|penche|penchée|s'incline|inclinés|fait un angle|tombe|oblique|"
        "penché|penchés|inclinées|fuit|incline|penchent|en pente|a de la pente|en biais|biaisé|part vers l'avant|"
        "part en avant|part sur l'avant|part vers la proue|part vers l'arrière|part en arrière|"
        "part sur l'arrière|part vers la poupe|s'incline vers l'avant|s'incline en avant|s'incline sur l'avant|"
        "s'incline vers la proue|s'incline vers l'arrière|s'incline en arrière|s'incline sur l'arrière|"
        "s'incline vers la poupe|tombe vers l'avant|tombe en avant|tombe sur l'avant|tombe vers la proue|"
        "tombe vers l'arrière|tombe en arrière|tombe sur l'arrière|tombe vers la poupe|penche en avant|"
        "penche sur l'avant|penche vers la proue|penche en arrière|penche sur l'arrière|penche vers la poupe|"
        "incliné en avant|incliné vers la proue|incliné en arrière|incliné vers la poupe|inclinée en avant|"
        "inclinée sur l'avant|inclinée vers la proue|inclinée en arrière|inclinée sur l'arrière|"
        "inclinée vers la poupe|fuit vers l'avant|fuit en avant|fuit sur l'avant|fuit vers la proue|"
        "fuit vers l'arrière|fuit en arrière|fuit sur l'arrière|fuit vers la poupe|s'en va vers l'avant|"
        "s'en va en avant|s'en va sur l'avant|s'en va vers la proue|s'en va vers l'arrière|s'en va en arrière|"
        "s'en va sur l'arrière|s'en va vers la poupe|va vers l'avant|va en avant|va sur l'avant|va vers la proue|"
        "va vers l'arrière|va en arrière|va sur l'arrière|va vers la poupe"
    ),
    "TURN": (
        "de chaque bord|débattement|angle de barre|de chaque côté|sur chaque bord|angle maxi|butée|"
        "de part et d'autre|angle maximum|angle maximal|débattement maxi|braquage|angle de braquage|"
        "de part et d'autre de l'axe|sur chaque côté|butées|course angulaire|débattement total|débat|en butée|"
        "angle de safran|débattement de|par bord|de chaque coté"
    ),
    "FORWARD": (
        "incliné vers l'avant|inclinée vers l'avant|penché vers l'avant|incliné sur l'avant|penche vers l'avant|"
        "en avant|vers l'avant|plus en avant|en avant du|devant|vers avant|plus avancé|sur l'avant|"
        "avant du tableau|plus à l'avant|en avant de|plus vers l'avant|à l'avant|sur l'avant du|vers la proue|"
        "vers l'intérieur|côté proue|devant le|sur l'avant de|plus avant|avançant|en avant par rapport|rentre|"
        "rentrant|vers l'étrave|en deçà|avant le tableau|en deçà du|part vers l'avant|part en avant|"
        "part sur l'avant|part vers la proue|s'incline vers l'avant|s'incline en avant|s'incline sur l'avant|"
        "s'incline vers la proue|tombe vers l'avant|tombe en avant|tombe sur l'avant|tombe vers la proue|"
        "penche en avant|penche sur l'avant|penche vers la proue|incliné en avant|incliné vers la proue|"
        "inclinée en avant|inclinée sur l'avant|inclinée vers la proue|fuit vers l'avant|fuit en avant|"
        "fuit sur l'avant|fuit vers la proue|s'en va vers l'avant|s'en va en avant|s'en va sur l'avant|"
        "s'en va vers la proue|va vers l'avant|va en avant|va sur l'avant|va vers la proue"
    ),
    "AFT": (
        "incliné vers l'arrière|inclinée vers l'arrière|penché vers l'arrière|incliné sur l'arrière|"
        "penche vers l'arrière|en arrière|vers l'arrière|plus en arrière|derrière|sur l'arrière|plus reculé|"
        "à l'arrière|plus à l'arrière|vers arrière|plus vers l'arrière|en retrait|en arrière de|en arrière du|"
        "recule|vers la poupe|côté poupe|plus sur l'arrière|plus en arrière que|derrière le|sur l'arrière de|"
        "vers l'extérieur|au delà du|au delà de|plus reculée|reculé|reculée|à l'extérieur|à l'arrière du|"
        "plus arrière|en arrière par rapport|part vers l'arrière|part en arrière|part sur l'arrière|"
        "part vers la poupe|s'incline vers l'arrière|s'incline en arrière|s'incline sur l'arrière|"
        "s'incline vers la poupe|tombe vers l'arrière|tombe en arrière|tombe sur l'arrière|tombe vers la poupe|"
        "penche en arrière|penche sur l'arrière|penche vers la poupe|incliné en arrière|incliné vers la poupe|"
        "inclinée en arrière|inclinée sur l'arrière|inclinée vers la poupe|fuit vers l'arrière|fuit en arrière|"
        "fuit sur l'arrière|fuit vers la poupe|s'en va vers l'arrière|s'en va en arrière|s'en va sur l'arrière|"
        "s'en va vers la poupe|va vers l'arrière|va en arrière|va sur l'arrière|va vers la poupe"
    ),
    "TOP": (
        "sa tête|"
        "tête d'étambot|tête de l'étambot|haut de l'étambot|bord du tableau|arête du tableau|jusqu'au pont|"
        "au niveau du pont|monte jusqu'à|s'élève à|culmine à|monte à|haut|bord supérieur|haut du tableau|sommet|"
        "partie haute|bord haut|arête supérieure|en haut|haut du tableau arrière|partie supérieure|"
        "dessus du tableau|bord du fond|bord du fond de cockpit|livet|arête haute|supérieur|haut de|"
        "point le plus haut|point haut|extrémité supérieure|rebord supérieur|arête du haut|bord du haut|"
        "côté haut|chant supérieur|au sommet|tout en haut|sommet du tableau|partie la plus haute|rebord|dessus|"
        "lisse|haut de l'arrière|crête|niveau du pont|haut du pont|rebord du tableau|tête du safran|"
        "tête de safran|haut du safran|tête de la pale|du pont|depuis le pont|le pont|niveau pont"
    ),
    "BOTTOM": (
        "descend à|descend jusqu'à|bas|bord inférieur|bas du tableau|en bas|partie basse|arête inférieure|"
        "partie inférieure|pied du tableau|bord bas|bas du tableau arrière|arête basse|inférieur|l'inférieur|"
        "point le plus bas|point bas|extrémité inférieure|rebord inférieur|arête du bas|bord du bas|côté bas|"
        "chant inférieur|tout en bas|pied|partie la plus basse|dessous du tableau|bas de l'arrière|base|"
        "base du tableau|dessous|bas du safran|pied du safran|talon du safran"
    ),
    "WATER": (
        "eau|l'eau|flottaison|ligne de flottaison|surface de l'eau|surface|niveau de l'eau|lf|franc bord|"
        "sous l'eau|sous la flottaison|en dessous de l'eau|en dessous de la flottaison|"
        "sous la ligne de flottaison|sous flottaison|au dessous de l'eau|dans l'eau|à fleur d'eau|"
        "au ras de l'eau|au niveau de l'eau|touche l'eau|juste à la flottaison|à la flottaison|"
        "au niveau de la flottaison|pile à la flottaison|hauteur sur l'eau|surface de flottaison|plan d'eau|"
        "ras de l'eau|niveau de flottaison|eau calme|la surface de l'eau|dwl|flottaisons|ligne d'eau|mer|"
        "niveau de la mer|du niveau de l'eau|flot|tirage|sous la surface|en dessous de la surface|de l'eau|"
        "immergé|immergée|immergés|à ras de l'eau|juste à l'eau"
    ),
    "AT_WATER": (
        "à fleur d'eau|au ras de l'eau|au niveau de l'eau|touche l'eau|juste à la flottaison|à la flottaison|"
        "au niveau de la flottaison|pile à la flottaison|à ras de l'eau|juste à l'eau"
    ),
    "JUST_TOUCH": "affleure|à fleur|au ras|effleure",
    "BELOW": (
        "sous l'eau|sous la flottaison|au dessous|immergé|immergée|en dessous de l'eau|"
        "en dessous de la flottaison|sous la ligne de flottaison|sous flottaison|au dessous de l'eau|dans l'eau|"
        "en dessous|sous la surface|en dessous de la surface|immergés|trempe de|trempe|plonge de|baigne de|plonge"
    ),
    "BOOTSTRIPE": "liseré|bande de flottaison|filet de flottaison",
    "TOERAIL": (
        "liston|rail de fargue|pavois|rail de fargues|cale pied|cale pieds|listel|fargue|fargues|plat bord|"
        "plat-bord|lisse de pavois|lisse en teck|cale-pieds|listeau|liston de teck"
    ),
    "COCKPIT": (
        "fond de cockpit|plancher du cockpit|cockpit|sole de cockpit|plancher de cockpit|bord du fond de cockpit|"
        "fond du cockpit|plancher|bord du plancher"
    ),
    "STEP": (
        "marche|jupe|marche de bain|marches|marche de la jupe|marche moulée|jupe moulée|jupe intégrée|"
        "jupe arrière|plateforme moulée|plateforme intégrée|plateforme de bain intégrée|jupe arrière intégrée|"
        "plage arrière intégrée"
    ),
    "ENDS": "s'arrête|se termine|finit|finissent|s'achève|finissant|s'interrompt|prend fin|s'arrêtent",
    "STICK_OUT": (
        "dépasse|dépassant|déborde|dépasse de|ressort|en saillie|saillie|débordant|dépassent|dépasse derrière|"
        "se prolonge|ressortir|déborde de|s'étend|dépassement|porte à faux|va au delà|va jusqu'à|va en arrière|"
        "dépasse en arrière"
    ),
    "M_TAPE": (
        "mètre ruban|au mètre ruban|ruban|mètre à ruban|mètre de menuisier|au mètre|réglet|double mètre|"
        "mètre pliant|mètre-ruban|au ruban|ruban à mesurer|décamètre|avec un mètre|mètre de couturière|"
        "au mètre pliant|mètre déroulant|mètre enrouleur|au décamètre"
    ),
    "M_PHONE": (
        "téléphone|niveau du téléphone|smartphone|appli|application|iphone|niveau de mon téléphone|appli niveau|"
        "application niveau|niveau du smartphone|avec le téléphone|avec mon téléphone|inclinomètre du téléphone|"
        "avec le portable|portable posé|au smartphone|niveau d'iphone|appli du téléphone"
    ),
    "M_INCL": "inclinomètre|niveau à bulle|rapporteur|niveau numérique|clinomètre",
    "M_LASER": "laser|télémètre",
    "M_DRAWING": (
        "plan|plans|dessin|dessins|plan de formes|sur plan|plan du chantier|plans du chantier|plan de voilure|"
        "plans d'origine|plan d'origine|plan d'ensemble|plans de formes|plan architecte|plans de l'architecte|"
        "dessin du chantier|d'après le plan|d'après les plans|sur les plans|sur le plan|plan de construction|"
        "plans de construction|relevé sur plan|du plan|plan côté|plan d'architecte|lignes d'eau du plan"
    ),
    "M_BROCHURE": (
        "brochure|fiche technique|catalogue|documentation|notice|données constructeur|selon le chantier|"
        "d'après le chantier|acte de francisation|fiche constructeur|d'après la brochure|selon la brochure|"
        "selon constructeur|d'après le constructeur|selon le constructeur|données du chantier|données chantier|"
        "plaquette|dans la brochure|dépliant|manuel du propriétaire|d'après la notice|fiche du bateau|"
        "papiers du bateau|selon la fiche|d'après la fiche|certificat de jauge|prospectus|selon le catalogue|"
        "d'après la doc|sur les papiers|carte de circulation"
    ),
    "M_GUESS": (
        "à vue d'œil|à l'œil|à vue de nez|estimé|estimée|estimation|j'estime|au jugé|à la louche|au pif|à vue|"
        "à vue d'oeil|à la grosse louche|estimée à l'œil|de mémoire|à l'estime|estimons|à peu de choses près|"
        "pifomètre|au pifomètre|j'évalue|au doigt mouillé|à l'oeil|estimés|estimer|on estime|doigt mouillé|"
        "au feeling|approximativement estimé|à la vue|jugé à l'œil|à la louche près"
    ),
    "M_PHOTO": "photo|photos|sur photo|d'après photo",
    "MEASURED": "mesuré|mesurée|mesures|mesure|relevé|cotes|cote|relevée|dimensions|relevés|mesurés",
    "PLUMB_LINE": (
        "fil à plomb|au fil à plomb|un fil à plomb|plomb|un plomb|ficelle plombée|fil plombé|ficelle|"
        "poids au bout d'une ficelle"
    ),
    "GIVE_TAKE": (
        "plus ou moins|à plus ou moins|avec une marge de|marge d'erreur de|à une marge de|tolérance de|"
        "avec une erreur de|incertitude de|avec une incertitude de|avec une tolérance de|plus/moins"
    ),
    "WITHIN": "près",
}
